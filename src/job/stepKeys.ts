import type { JobFile } from "./schema.js";

export type RawStep = JobFile["steps"][number];
export type StepKey = Exclude<keyof RawStep, "do">;

/** Those whose diameter only tells what stands there, or the size of a tool's tip: nothing is made to a tolerance. */
export const plainDiameters: ReadonlySet<RawStep["do"]> = new Set(["face", "centre drill", "part"]);

/** Where the work is clamped, holes lie beside each other. */
export const ofHoles = ["hole", "holes"] as const satisfies readonly StepKey[];

/** What each step needs, and may have besides. */
export const stepKeys: Readonly<Record<RawStep["do"], { needs: readonly StepKey[]; may: readonly StepKey[] }>> = {
  face: { needs: [], may: ["depth", "length", "cut", "diameter"] },
  "centre drill": { needs: [], may: ["diameter", ...ofHoles] },
  drill: { needs: ["diameter", "depth"], may: [...ofHoles] },
  bore: { needs: ["to", "depth"], may: ["at", "from", "cut", "finish", "tolerance"] },
  ream: { needs: ["diameter", "depth"], may: [...ofHoles] },
  turn: { needs: ["to", "length"], may: ["at", "from", "cut", "finish", "tolerance"] },
  shoulder: { needs: ["to", "length"], may: ["at", "from", "cut", "finish", "tolerance"] },
  groove: { needs: ["at", "width", "to", "blade"], may: ["tolerance"] },
  chamfer: { needs: ["size"], may: ["at", "side", ...ofHoles] },
  taper: {
    needs: ["length"],
    may: ["at", "large", "small", "ratio", "included", "half", "smallAt", "by", "cut", "finish"],
  },
  knurl: { needs: ["length", "pitch"], may: ["at", "pinched", "width"] },
  die: { needs: ["thread", "length"], may: [] },
  tap: { needs: ["thread", "depth"], may: [...ofHoles] },
  part: { needs: ["length", "blade"], may: ["diameter"] },
  hold: { needs: ["out"], may: ["held"] },
  "turn round": { needs: ["out"], may: ["held"] },
};
