import { bandOf } from "../../dial/development.js";
import { farthestReading, USUAL_DISTANCE } from "../../dial/legibility.js";
import { travelWords } from "../../findings/travelWords.js";
import type { Units } from "../../machine/machine.js";
import { formatSize } from "../../quantity/format.js";
import { fromMm, inMm } from "../../quantity/length.js";
import { say } from "../../words/say.js";
import type { LeftOut } from "../shared/block.js";
import type { DialSet } from "./dialCutOuts.js";
import { bandsOf, dialStyle, leastNumberedBand } from "./dialStyle.js";
import { dialWords } from "./dialWords.js";
import { digitHeight } from "./scaleMarks.js";

/** What must be known of one dial before it is stuck on. `warnings`: what its travel lacks. `leftOut`: it is larger than the paper. */
export type Note = {
  readonly about: string;
  readonly words: string;
  readonly warnings: readonly string[];
  readonly leftOut?: LeftOut;
};

export function dialNote(set: DialSet, units: Units): Note {
  const { finding, dial, pieces } = set;
  const { name } = finding.handwheel;
  return {
    about: name,
    words: [
      dialWords(finding, dial, units),
      ...(pieces === undefined
        ? [say("dials.too large")]
        : [
            ...(pieces.length > 1 ? [say("dials.in pieces", { n: pieces.length })] : []),
            crampedWords(set, units),
            figureWords(set, units),
          ]),
    ]
      .filter(Boolean)
      .join(" "),
    warnings: travelWords(finding, units),
    ...(pieces === undefined && { leftOut: { name } }),
  };
}

function crampedWords({ plan: { flat, dial } }: DialSet, units: Units): string {
  const bands = bandsOf(dial).length;
  const each = bandOf(flat) / bands;
  return each < leastNumberedBand(flat) ? say("dials.cramped", { n: bands, height: formatSize(each, units, 1) }) : "";
}

/** Figures too low for the distance that one reads from are told of, with that distance. */
function figureWords({ plan }: DialSet, units: Units): string {
  const heights = dialStyle(plan).bands.flatMap(({ number }) => (number > 0 ? [number * digitHeight] : []));
  const least = Math.min(USUAL_DISTANCE, ...heights.map(farthestReading));
  if (least >= USUAL_DISTANCE) return "";
  const far =
    units === "mm"
      ? formatSize(10 * Math.floor(least / 10), units, 0)
      : formatSize(inMm(Math.floor(fromMm(least, units)), units), units, -1);
  return say("dials.read from", { far });
}
