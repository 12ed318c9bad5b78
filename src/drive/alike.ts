/** Speeds no farther apart than a step of R40 are as good as one: a cutting speed is not known to so little. Own choice. */
const NEARLY = 1.06;

export const nearlySame = (rpm: number, other: number): boolean => Math.max(rpm / other, other / rpm) < NEARLY;
