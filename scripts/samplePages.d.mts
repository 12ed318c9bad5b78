/** Writes every page of the demo and its job, and the details, into a folder. */
export function writeSamples(out: string): void;
