import { crossSlide } from "../../findings/roles.js";
import type { TaperWish, Units } from "../../machine/machine.js";
import { toDegrees, toRadians } from "../../quantity/angle.js";
import { formatFixed, trimmed, trimmedSize, unitName } from "../../quantity/format.js";
import { inSixtyFourths } from "../../quantity/fraction.js";
import { fromMm, inMm } from "../../quantity/length.js";
import { standardTapers } from "../../taper/standard.js";
import { diameterError, halfAngleOfTaper, riseAlongAxis, sineBarStack, taperOfHalfAngle } from "../../taper/taper.js";
import { say, withinSentence } from "../../words/say.js";
import { block, type Run } from "../shared/block.js";
import { paragraph } from "../shared/paragraph.js";
import { heading } from "../shared/runs.js";
import { size } from "../shared/style.js";
import { type Cell, type Column, table } from "../shared/table.js";
import { ownTapers } from "./ownTapers.js";

/** The file's own tapers, then the standard and the usual ones: what to set, and how to prove the setting. */
export const taperTable = block(
  { ratios: [8, 10, 12, 16, 20, 30, 50], standard: true, over: 100, bar: 100 },
  ({ findings, settings, width }): Run[] => {
    const { units, tapers: own = [] } = findings.machine;
    const rounded = (mm: number) => (units === "mm" ? mm : inMm(Math.max(1, Math.round(mm / 25)), "in"));
    const over = rounded(settings.over);
    const perTurn = crossSlide(findings.handwheels)?.feed?.perTurn;
    const setting = { units, over, bar: rounded(settings.bar), ...(perTurn !== undefined && { perTurn }) };
    const cross = crossSlide(findings.handwheels)?.handwheel.name ?? "";
    const usual: TaperWish[] = [
      ...(settings.standard
        ? standardTapers.map(({ name, taper, confidence }) => ({
            name: `${standardName(name)}${confidence === "memory" ? "*" : ""}`,
            halfAngle: halfAngleOfTaper(taper),
          }))
        : []),
      ...settings.ratios.map((n) => ({ name: say("tapers.one in", { n }), halfAngle: halfAngleOfTaper(1 / n) })),
      { name: say("tapers.lathe centre"), halfAngle: toRadians(30) },
    ];
    const notes = [say("tapers.how"), ...(settings.standard ? [say("tapers.sources")] : [])];
    return [
      ...(own.length > 0
        ? [
            ...heading(say("tapers.yours"), width, 4),
            ...angles(own, setting, cross, width, size.card),
            ...ownTapers(findings, own, over, width),
          ]
        : []),
      ...heading(say("tapers.usual"), width, 6),
      // A heading over a single row looks lost.
      ...angles(usual, setting, cross, width).map((run, index) => (index < 2 ? { ...run, keepWithNext: true } : run)),
      ...notes.flatMap((words, index) => paragraph(words, width, { size: size.source, gap: index === 0 ? 1.5 : 0 })),
    ];
  },
);

/** Where a standard taper has a name in words rather than of a maker's series. */
const standardName = (name: string): string => (name.startsWith("taper pin") ? say("tapers.taper pin") : name);

type Setting = { readonly units: Units; readonly over: number; readonly bar: number; readonly perTurn?: number };

/** `hand`: em of what is set, where that is not the table's: the file's own tapers, which keep their sine bar on any paper. */
function angles(
  tapers: readonly TaperWish[],
  { units, over, bar, perTurn }: Setting,
  cross: string,
  width: number,
  hand: number = size.text,
): Run[] {
  const length = (mm: number) => formatFixed(fromMm(mm, units), units === "mm" ? 3 : 4);
  const unit = unitName(units);
  const inLength = say("tapers.per length", { unit, length: trimmedSize(over, units) });
  const foot = units === "in";
  const columns: Column[] = [
    { heading: [say("tapers.taper")], align: "start", key: true },
    { heading: [say("tapers.ratio")], align: "decimal" },
    ...(foot ? [{ heading: [say("tapers.per foot"), say("tapers.in per foot")], align: "decimal" } as const] : []),
    { heading: [say("tapers.included"), "°"], align: "decimal" },
    { heading: [say("tapers.swing"), "°"], align: "decimal" },
    { heading: [say("tapers.swing"), "° ′ ″"], align: "end", optional: true },
    { heading: [say("tapers.indicator"), inLength], align: "decimal" },
    ...(perTurn === undefined
      ? []
      : [
          {
            heading: [say("tapers.turns of", { wheel: withinSentence(cross) }), say("tapers.for rise")],
            align: "decimal",
          } as const,
        ]),
    {
      heading: [say("tapers.sine bar", { length: trimmedSize(bar, units) }), unit],
      align: "decimal",
      optional: hand === size.text,
    },
    { heading: [say("tapers.wrong"), inLength], align: "decimal", optional: true },
  ];
  const rows = tapers.map(({ name, halfAngle }): Cell[] => {
    const taper = taperOfHalfAngle(halfAngle);
    const rise = riseAlongAxis(halfAngle, over);
    return [
      { text: name, weight: "bold" },
      { text: formatFixed(1 / taper, 3) },
      ...(foot ? [perFoot(taper * 12)] : []),
      { text: formatFixed(2 * toDegrees(halfAngle), 3) },
      { text: formatFixed(toDegrees(halfAngle), 3), weight: "bold", size: hand },
      { text: sexagesimal(halfAngle) },
      { text: length(rise) },
      ...(perTurn === undefined ? [] : [{ text: formatFixed(rise / perTurn, 2) }]),
      { text: length(sineBarStack(halfAngle, bar)) },
      { text: length(diameterError(halfAngle, toRadians(0.1), over)) },
    ];
  });
  return table(columns, rows, { width });
}

/** As decimals, and as the fraction that drawings give where it is one. */
function perFoot(inches: number): Cell {
  const exact = inSixtyFourths(inches);
  return { text: formatFixed(inches, 4), ...(exact?.includes("/") && { note: exact }) };
}

/** Degrees, minutes and whole seconds. */
function sexagesimal(angle: number): string {
  const seconds = Math.round(toDegrees(angle) * 3600);
  const two = (value: number) => String(value).padStart(2, "0");
  return `${trimmed(Math.floor(seconds / 3600), 0)}° ${two(Math.floor(seconds / 60) % 60)}′ ${two(seconds % 60)}″`;
}
