import { MM_PER_INCH } from "../quantity/length.js";

/** A feed further from what the maker meant than this was most likely not measured so: the worst screws are out by some per cent.
 *  Common practice. */
const FAR = 0.2;
/** How near to a slip's factor a feed must lie for the slip to be named. */
const NEAR = 0.1;

type Slip = { readonly code: "unit-mix" | "far-from-nominal"; readonly what: string; readonly remedy: string };

const slips: readonly { readonly factor: number; readonly words: string }[] = [
  {
    factor: 2,
    words:
      "it is twice as much: two turns counted as one, change of diameter measured, or a screw of two starts given by its pitch",
  },
  {
    factor: 1 / 2,
    words: "it is half as much: half turns counted as turns, or nominal is what the dial reads on diameter",
  },
  { factor: 10, words: "it is ten times as much: look for a slipped decimal point" },
  { factor: 1 / 10, words: "it is a tenth of it: look for a slipped decimal point" },
];

/** Whether a feed lies further from the nominal one than screws are out. */
export const isFarFromNominal = (perTurn: number, nominal: number): boolean => Math.abs(perTurn / nominal - 1) > FAR;

/** What a feed that lies far from the nominal one (both mm, > 0) looks like; undefined where they agree. `swapped`: the feed that
 *  its readings would give with turns and travel changed about, where it was measured. */
export function nominalSlip(perTurn: number, nominal: number, swapped?: number): Slip | undefined {
  const ratio = perTurn / nominal;
  const near = (value: number, factor: number, within: number) => Math.abs(value / factor - 1) <= within;
  if (!isFarFromNominal(perTurn, nominal)) return undefined;
  if (near(ratio, MM_PER_INCH, FAR) || near(ratio, 1 / MM_PER_INCH, FAR))
    return {
      code: "unit-mix",
      what: "feed and nominal differ by about 25.4",
      remedy: "one of them seems to be in inches: write the unit beside it",
    };
  const likely = [
    ...slips.filter(({ factor }) => near(ratio, factor, NEAR)).map(({ words }) => words),
    ...(swapped !== undefined && near(swapped / nominal, 1, NEAR)
      ? ["turns and travel seem changed about: the other way round they fit"]
      : []),
  ];
  return {
    code: "far-from-nominal",
    what: `the feed is ${ratio < 1 ? `only ${Math.round(ratio * 100)} %` : `${ratio < 10 ? ratio.toFixed(2) : Math.round(ratio)} times`} what nominal says`,
    remedy:
      likely.length > 0
        ? likely.join("; or ")
        : "count the turns again, mind the unit, and give nominal what the maker meant for one whole turn, of the slide and not on diameter",
  };
}
