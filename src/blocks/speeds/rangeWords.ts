import { drillSizes } from "../../cutting/drillSizes.js";
import { makesHoles } from "../../findings/drills.js";
import type { Findings } from "../../findings/findings.js";
import { largestDiameter, roundedServed, type Served } from "../../findings/servedDiameters.js";
import { trimmed } from "../../quantity/format.js";
import { fromMm, inMm } from "../../quantity/length.js";
import { say } from "../../words/say.js";

/** Diameters that one position serves, as told: "20–31", "47+", "to 14", "all". */
export type Range = { readonly words: string; readonly served: Served };

/** How fine the ends of a range are told, by how large they are, in the file's unit: about as a rule or a caliper is read at a
 *  glance. Own choice. */
const work = {
  mm: [
    { below: 5, step: 0.1 },
    { below: 10, step: 0.5 },
    { below: 100, step: 1 },
    { below: Number.POSITIVE_INFINITY, step: 5 },
  ],
  in: [
    { below: 0.5, step: 0.01 },
    { below: 4, step: 0.05 },
    { below: Number.POSITIVE_INFINITY, step: 0.25 },
  ],
} as const;
/** Drills are sold by tenths. */
const drills = [
  { below: 10, step: 0.1 },
  { below: Number.POSITIVE_INFINITY, step: 0.5 },
];

/** Finer ones in turn, for a range that else would vanish: a caliper's, a micrometer's. */
const finer = { mm: [0.1, 0.01], in: [0.01, 0.001] } as const;

/** The ranges in words, each at its position. */
export function rangesTold(pieces: readonly Served[], operation: string, findings: Findings): Range[] {
  const { units } = findings.machine;
  const holes = makesHoles(operation);
  const most = largestDiameter(operation, findings);
  const fractions = holes && units === "in";
  const steps = holes && units === "mm" ? drills : work[units];
  // How often each end was made finer.
  const fineness = new Map<number, number>();
  const rounded = (diameter: number, round: (value: number) => number, slack: number) => {
    const value = fromMm(diameter, units);
    const coarse = fractions ? 1 / 64 : (steps.find(({ below }) => value < below)?.step ?? 1);
    const step = Math.min(coarse, finer[units][(fineness.get(diameter) ?? 0) - 1] ?? coarse);
    return inMm(round(value / step + slack) * step, units);
  };
  const toldNow = () =>
    roundedServed(
      pieces,
      // An end that only the last digit of a double keeps from its step is on it.
      (diameter) => rounded(diameter, Math.floor, 1e-9),
      (diameter) => rounded(diameter, Math.ceil, -1e-9),
    );
  const lostEnds = () => {
    const kept = new Set(told.map(({ speed }) => speed));
    const lost = pieces.filter(({ speed }) => speed !== undefined && !kept.has(speed));
    const ends = new Set(lost.flatMap(({ from, to }) => [from, to]));
    return [...ends].filter((end) => (fineness.get(end) ?? 0) < finer[units].length);
  };
  let told = toldNow();
  for (let ends = lostEnds(); ends.length > 0; ends = lostEnds()) {
    for (const end of ends) fineness.set(end, (fineness.get(end) ?? 0) + 1);
    told = toldNow();
  }
  const figure = (diameter: number) => {
    const fraction = fractions ? drillSizes("fraction", diameter - 1e-6, diameter + 1e-6)[0]?.name : undefined;
    if (fraction !== undefined) return fraction;
    if (units === "mm") return trimmed(fromMm(diameter, units), 2);
    // As inch drawings have it: without the nought before the point.
    return trimmed(fromMm(diameter, units), 3).replace(/^0(?=\.)/, "");
  };
  return told.map((served) => {
    const { from, to } = served;
    const [first, last] = [from <= 0, to >= most - 1e-9];
    const words =
      first && last
        ? say("belt card.all")
        : first
          ? say("belt card.to", { to: figure(to) })
          : last
            ? say("belt card.from", { from: figure(from) })
            : say("belt card.range", { from: figure(from), to: figure(to) });
    return { words, served };
  });
}
