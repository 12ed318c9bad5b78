/** What one can measure at a pulley, mm (or teeth), each the way to its effective diameter: where the belt's neutral line
 *  runs. `string` is a length once round the pulley, `stringOver` once round the belt lying on it. */
export type PulleyMeasure =
  | { readonly by: "effective" | "outside" | "overBelt" | "string" | "stringOver"; readonly size: number }
  | { readonly by: "teeth"; readonly size: number };

/** What the belt on it is. `size`: thickness of a flat belt, diameter of a round one, pitch of a toothed one. */
export type BeltOnPulley = {
  readonly kind: "round" | "vee" | "flat" | "toothed";
  readonly size?: number;
  readonly section?: VeeSection;
};

export type VeeSection = "Z" | "A" | "B" | "C";

/** From the rim (or the belt's back, which lies flush with it) down to the neutral line of a vee belt, mm, as one source
 *  prints it. */
export type VeeDepth = { readonly depth: number; readonly source: string };

/** 0.125, 0.175 and 0.200 in: read, with the column taken for groove top to pitch line. */
const inches = (depth: number): VeeDepth => ({ depth: depth * 25.4, source: "a belt maker's inch groove table" });
/** Least values of the datum line, from memory. */
const iso = (depth: number): VeeDepth => ({ depth, source: "ISO 4183:1995 (from memory)" });

/** The first one is gone by: on old machines the belts are of inch sections. */
const veeDepths: Readonly<Record<VeeSection, readonly [VeeDepth, ...VeeDepth[]]>> = {
  Z: [iso(2)],
  A: [inches(0.125), iso(2.75)],
  B: [inches(0.175), iso(3.5)],
  C: [inches(0.2), iso(4.8)],
};
export const veeSections = Object.keys(veeDepths) as VeeSection[];

/** Where a section's neutral line runs: what is gone by, then what another edition says. */
export const veeDepthsOf = (section: VeeSection): readonly [VeeDepth, ...VeeDepth[]] => veeDepths[section];

/** Effective diameter, mm, or in words what the file lacks to know it. A flat pulley's outside plus the belt's thickness is
 *  as in J. Rose, Modern Machine-Shop Practice, cone examples 2 and 3; the others are geometry.
 *  @example effectiveDiameter({ by: "outside", size: 299.212 }, { kind: "flat", size: 5.588 })   // 304.8 */
export function effectiveDiameter(measure: PulleyMeasure, belt: BeltOnPulley | undefined): number | { lacks: string } {
  if (measure.by === "effective") return measure.size;
  if (measure.by === "teeth")
    return belt?.kind === "toothed" && belt.size !== undefined
      ? (measure.size * belt.size) / Math.PI
      : { lacks: "the pitch of a toothed belt, as in belt: toothed, 5 mm" };
  const rounds = measure.by === "string" || measure.by === "stringOver";
  const across = rounds ? measure.size / Math.PI : measure.size;
  const over = measure.by === "overBelt" || measure.by === "stringOver";
  if (belt === undefined) return { lacks: "the kind of belt, as in belt: flat, 2 mm" };
  const outward = neutralLine(belt, over);
  return typeof outward === "number" ? across + 2 * outward : outward;
}

/** How far outside the measured surface the neutral line lies, mm; negative inside it. */
function neutralLine({ kind, size, section }: BeltOnPulley, over: boolean): number | { lacks: string } {
  if (kind === "vee")
    return section === undefined
      ? { lacks: "the section of a vee belt, as in belt: vee, A" }
      : -veeDepths[section][0].depth;
  if (kind === "toothed") return { lacks: "the teeth of the pulley: a toothed belt runs by teeth and pitch" };
  if (size === undefined) return { lacks: `the thickness of the belt, as in belt: ${kind}, 5 mm` };
  if (over) return -size / 2;
  if (kind === "round") return { lacks: "the diameter over the belt as it lies in its groove" };
  return size / 2;
}
