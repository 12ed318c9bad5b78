import { readingPerTurn } from "../dial/choices.js";
import type { DialFinding } from "../dial/finding.js";
import type { Drawing } from "../drawing/drawing.js";
import { group, line, rectangle } from "../drawing/shapes.js";
import type { HandwheelFinding } from "../findings/findings.js";
import type { Machine, Units } from "../machine/machine.js";
import { formatFixed, plural } from "../quantity/format.js";
import { mmPer } from "../quantity/length.js";
import { block, type Run } from "./block.js";
import { stripPieces } from "./dialStrip.js";
import { cutLine, pen, size } from "./style.js";
import { paragraph } from "./table.js";

/** The strips of every drum dial, at true size, with spare copies and an index line. */
export const dialStrips = block({ copies: 2, index: true }, ({ handwheels, findings, settings, width }) =>
  handwheels.flatMap((finding): Run[] => {
    const { handwheel, dial } = finding;
    if (dial === undefined || dial.stripLength === undefined || handwheel.dial?.shape !== "drum") return [];
    const length = dial.stripLength;
    const plan = { dial, length, width: handwheel.dial.width, legend: legend(finding, dial, findings.machine) };
    const pieces = stripPieces(plan, width - 1);
    const head = [
      ...paragraph(handwheel.name, width, { size: size.title, weight: "bold", gap: 7 }),
      ...paragraph(dialWords(dial, findings.machine.units), width, { size: size.small, gap: 0.5 }),
      ...paragraph(
        measureWords(
          length,
          pieces.map((piece) => piece.length),
          dial,
        ),
        width,
        { size: size.small },
      ),
    ].map((run) => ({ ...run, keepWithNext: true }));
    const strips = Array.from({ length: Math.max(1, settings.copies) }, (_, copy) =>
      pieces.flatMap(({ drawing, piece, pieces }): Run[] => [
        { drawing: inset(drawing, width), gap: 4, keepWithNext: true },
        ...paragraph(
          `copy ${copy + 1}${pieces > 1 ? `, piece ${piece} of ${pieces}` : ""}: ${formatFixed(drawing.width, 2)} mm between the cut ends`,
          width,
          { size: size.tiny, gap: 0.6 },
        ),
      ]),
    ).flat();
    return [...head, ...strips, ...(settings.index ? indexSticker(handwheel.dial.width, width) : [])];
  }),
);

/** Half a millimetre in from the left, so that the cut line keeps its whole width. */
const inset = (drawing: Drawing, width: number): Drawing => ({
  width,
  height: drawing.height,
  marks: [group({ x: 0.5, y: 0 }, drawing.marks, { name: "strip" })],
});

function legend({ handwheel, feed }: HandwheelFinding, dial: DialFinding, machine: Machine): string {
  const unit = dial.chosen.unit;
  const perTurn =
    feed === undefined
      ? ""
      : `${formatFixed(readingPerTurn(feed, handwheel.reads) / mmPer[unit], unit === "mm" ? 3 : 4)} ${unit} a turn`;
  return [
    `1 div ${dial.chosen.divisionLabel}${handwheel.reads === "diameter" ? " on diameter" : ""}`,
    ...(dial.labelUnit === undefined ? [] : [`numbers: ${dial.labelUnit}`]),
    perTurn,
    handwheel.name,
    ...(machine.revision === undefined ? [] : [`rev ${machine.revision}`]),
  ].join(" · ");
}

/** What the chosen dial is, and what it costs. */
export function dialWords({ chosen, increases }: DialFinding, units: Units): string {
  const per = (mm: number) => `${formatFixed(Math.abs(mm) / mmPer[units], units === "mm" ? 4 : 5)} ${units}`;
  const closure = {
    even: `${plural(chosen.divisions, "even division")} of ${chosen.divisionLabel}`,
    true: `exact divisions of ${chosen.divisionLabel}, the last one short: count whole turns and start each from the turn table`,
    rows: `divisions of ${chosen.divisionLabel} in ${chosen.rows} rows, one for each turn, then over again`,
  }[chosen.closure];
  const negligible = Math.abs(chosen.errorPerTurn) < 5e-7;
  const error = negligible
    ? "closes exactly"
    : `reads ${per(chosen.errorPerTurn)} too ${chosen.errorPerTurn > 0 ? "much" : "little"} each turn, ${per(chosen.errorOverTravel)} over ${formatFixed(chosen.overTravel / mmPer[units], 0)} ${units}`;
  const doubt =
    chosen.doubtOverTravel === undefined
      ? "the feed's own doubt is not known"
      : `over ${formatFixed(chosen.overTravel / mmPer[units], 0)} ${units} the feed itself is in doubt by ${per(chosen.doubtOverTravel)}`;
  return `${closure}; ${error}; ${doubt}. Numbers grow ${increases}.`;
}

function measureWords(length: number, pieces: readonly number[], dial: DialFinding): string {
  const slack = length / Math.max(1, dial.chosen.divisions / dial.chosen.rows) / 5;
  const whole = `The strip must measure ${formatFixed(length, 2)} mm between its cut ends, give or take ${formatFixed(Math.max(0.05, slack), 2)} mm`;
  return `${whole}${pieces.length > 1 ? ` (in ${pieces.length} pieces)` : ""}. If it does not, print again with the printer's correction. Butt the ends; the dashes must run on across the joint.`;
}

/** The fixed mark: a small label with one line, stuck beside the dial. */
function indexSticker(height: number, width: number): Run[] {
  const marks = [
    group({ x: 0.5, y: 0 }, [
      group({ x: 0, y: 0 }, [rectangle({ x: 0, y: 0 }, 8, height, { pen: cutLine })], { name: "cut" }),
      group({ x: 0, y: 0 }, [line({ x: 4, y: 0.3 }, { x: 4, y: height - 0.3 }, pen(0.22))], { name: "index" }),
    ]),
  ];
  return [
    { drawing: { width, height, marks }, gap: 4, keepWithNext: true },
    ...paragraph("index line, for the fixed part beside the dial", width, { size: size.tiny, gap: 0.6 }),
  ];
}
