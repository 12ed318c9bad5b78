import type { RawStep, StepKey } from "../../../job/stepKeys.js";

const workThere = "and what the steps before leave when left out";

/** What a key asks of one kind of step, where the file's own words for it speak of several kinds. */
const words: Readonly<Partial<Record<RawStep["do"], Readonly<Partial<Record<StepKey, string>>>>>> = {
  face: {
    depth: "How much comes off; or say the length instead",
    length: "How long the work is then; or say the depth instead",
    diameter: `Of the work where it is faced, ${workThere}`,
  },
  "centre drill": { diameter: "Of its pilot; how deep it goes follows from that" },
  drill: {
    diameter: "Of the drill, or its name: no. 21, letter F",
    depth: "Of the full diameter; the point goes deeper",
  },
  ream: { diameter: "Of the reamer: 8, or 8 H7", depth: "Of the full diameter" },
  bore: { depth: "Of the bore, from the finished face" },
  groove: { width: "Of the groove, along the work", blade: "Width of the grooving blade" },
  knurl: { length: "Along the work", width: "Of the knurling wheel, along the work" },
  taper: { length: "Along the work" },
  turn: { length: "Along the work" },
  shoulder: { length: "Along the work" },
  die: { length: "Of the thread, along the work" },
  tap: { depth: "Of the thread" },
  part: {
    length: "Of what is parted off",
    diameter: `Of the work at the blade, ${workThere}`,
    blade: "Width of the parting blade",
  },
};

export const stepWords = (kind: string, key: string): string | undefined =>
  (words as Readonly<Record<string, Readonly<Record<string, string>> | undefined>>)[kind]?.[key];
