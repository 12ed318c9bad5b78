/** Writes every page of the demo and its job, and the details, into a folder. */
export function writeSamples(out: string): void;
/** The demo's machine in a folder, as for whatever printer; its path. */
export function demoForAnyPrinter(folder: string): string;
/** How far down a page, mm, the words of the groups of that name reach. */
export function lowestWords(page: string, name: string): number;
