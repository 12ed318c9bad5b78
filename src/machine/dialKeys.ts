import type { Raw } from "./context.js";

type RawDial = NonNullable<Raw<"handwheels">[number]["dial"]>;
export type DialKey = Exclude<keyof RawDial, "shape">;

/** The sizes that a dial of each shape needs, and those that it may have besides: of a drum, the diameter or the wrap. */
export const dialKeys: Readonly<Record<RawDial["shape"], { needs: readonly DialKey[]; may: readonly DialKey[] }>> = {
  drum: { needs: ["width"], may: ["diameter", "wrap"] },
  face: { needs: ["outside", "inside"], may: [] },
  bevel: { needs: ["diameter", "smallDiameter", "width"], may: [] },
};

/** Every size that depends on the shape. */
export const dialSizes: readonly DialKey[] = ["diameter", "wrap", "width", "outside", "inside", "smallDiameter"];
