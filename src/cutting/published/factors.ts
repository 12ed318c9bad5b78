import { carbide, carbonSteel } from "./source.js";

/** How one operation or tool stands to another, as published. */
export type PublishedFactor = {
  readonly from: number;
  readonly to: number;
  readonly source: string;
  readonly where: string;
  readonly confidence: "read" | "memory";
};

const common = { source: "COMMON", where: "common practice", confidence: "memory" } as const;
const tc9 = { source: "TC9-524", confidence: "memory" } as const;

/** Where an operation has no figures of its own: the operation it is taken from, and how it stands to that. */
export const operationFactors: Readonly<
  Record<string, { readonly of: string; readonly rows: readonly PublishedFactor[] }>
> = {
  "finish turning": { of: "turning", rows: [{ from: 1, to: 1, ...common }] },
  facing: { of: "turning", rows: [{ from: 1, to: 1, ...common }] },
  boring: { of: "turning", rows: [{ from: 0.75, to: 1, ...common }] },
  parting: {
    of: "turning",
    rows: [
      { from: 1, to: 1, source: "TM1-420", where: "par. 32d", confidence: "read" },
      { from: 0.5, to: 0.67, ...common },
    ],
  },
  forming: { of: "turning", rows: [{ from: 0.5, to: 0.75, ...common }] },
  threading: { of: "turning", rows: [{ from: 0.25, to: 0.5, ...common }] },
  reaming: {
    of: "drilling",
    rows: [{ from: 0.5, to: 0.5, source: "TM1-420", where: "par. 37a(1)", confidence: "read" }],
  },
  countersinking: { of: "drilling", rows: [{ from: 0.5, to: 0.5, ...tc9, where: "ch. 4, countersinking" }] },
  "threading by die": { of: "tapping", rows: [{ from: 1, to: 1, ...common }] },
};

const navy = { source: "NAVY14345", where: "drill section", confidence: "read" } as const;

/** Tool against high-speed steel, by what the operation is most like. */
export const toolFactors: Readonly<
  Record<string, { readonly turning: readonly PublishedFactor[]; readonly drilling: readonly PublishedFactor[] }>
> = {
  // The source says it of drills; for turning tools it is common practice.
  [carbonSteel]: { turning: [{ from: 0.5, to: 0.5, ...navy }], drilling: [{ from: 0.5, to: 0.5, ...navy }] },
  [carbide]: {
    turning: [
      { from: 3, to: 6, source: "TUT17", where: "note under table 2", confidence: "read" },
      { from: 2, to: 3, ...tc9, where: "ch. 7" },
    ],
    drilling: [{ from: 2, to: 3, ...navy }],
  },
};

/** Knurling goes by spindle speed, whatever the diameter. */
export const knurling = { slowestRpm: 60, fastestRpm: 80, ...tc9, where: "ch. 7, knurling" } as const;
