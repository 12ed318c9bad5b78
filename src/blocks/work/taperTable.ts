import type { HandwheelFinding } from "../../findings/findings.js";
import { crossSlide, wheelFor } from "../../findings/roles.js";
import type { Machine, TaperWish } from "../../machine/machine.js";
import { toDegrees, toRadians } from "../../quantity/angle.js";
import { formatFixed, formatLength, trimmed } from "../../quantity/format.js";
import { fromMm, inMm } from "../../quantity/length.js";
import { standardTapers } from "../../taper/standard.js";
import {
  centresBear,
  diameterError,
  halfAngleOfTaper,
  pinDifference,
  riseAlongAxis,
  riseAlongSlide,
  setOver,
  sineBarStack,
  TOO_STEEP_FOR_CENTRES,
  taperOfHalfAngle,
} from "../../taper/taper.js";
import { block, type Run } from "../shared/block.js";
import { heading } from "../shared/runs.js";
import { size } from "../shared/style.js";
import { type Cell, type Column, paragraph, table } from "../shared/table.js";

/** The file's own tapers, then the standard and the usual ones: what to set, and how to prove the setting. */
export const taperTable = block(
  { ratios: [8, 10, 12, 16, 20, 30, 50], standard: true, over: 100, bar: 100 },
  ({ findings, settings, width }): Run[] => {
    const { machine } = findings;
    const over = machine.units === "mm" ? settings.over : inMm(Math.max(1, Math.round(settings.over / 25)), "in");
    const bar = machine.units === "mm" ? settings.bar : inMm(Math.max(1, Math.round(settings.bar / 25)), "in");
    const own = machine.tapers ?? [];
    const usual: TaperWish[] = [
      ...(settings.standard
        ? standardTapers.map(({ name, taper, confidence }) => ({
            name: confidence === "memory" ? `${name} *` : name,
            halfAngle: halfAngleOfTaper(taper),
          }))
        : []),
      ...settings.ratios.map((ratio) => ({ name: `1 in ${ratio}`, halfAngle: halfAngleOfTaper(1 / ratio) })),
      { name: "lathe centre, 60°", halfAngle: toRadians(30) },
    ];
    const cross = crossSlide(findings.handwheels);
    return [
      ...(own.length > 0 ? titled("Your tapers", angles(own, machine, over, bar, cross, width), width) : []),
      ...own.flatMap((taper) => [
        ...ownWords(taper, findings.handwheels, machine, width),
        ...proofWords(taper, machine, over, width),
      ]),
      ...titled("Standard and usual tapers", angles(usual, machine, over, bar, cross, width), width),
      ...paragraph(
        "Swivel = half the included angle. Rise: what an indicator in the tool post shows when the carriage moves along a test bar or finished taper; along the axis, not along the slide. Standard tapers from: Dimensions of Standard Tapers (vintagemachinery.org), johnfsworkshop.org, Lobben p. 477, US Army OD1645. * last figure from memory.",
        width,
        { size: size.tiny, gap: 1.5 },
      ),
    ];
  },
);

const titled = (title: string, runs: Run[], width: number): Run[] => [...heading(title, width, 4), ...runs];

function angles(
  tapers: readonly TaperWish[],
  { units }: Machine,
  over: number,
  bar: number,
  cross: HandwheelFinding | undefined,
  width: number,
): Run[] {
  const places = units === "mm" ? 3 : 4;
  const length = (mm: number, more = 0) => formatFixed(fromMm(mm, units), places + more);
  const perTurn = cross?.feed?.perTurn;
  const columns: Column[] = [
    { heading: ["taper"], align: "start" },
    { heading: ["1 in"], align: "decimal" },
    { heading: ["on diameter,", "in per foot"], align: "decimal" },
    { heading: ["included", "degrees"], align: "decimal" },
    { heading: ["swivel", "degrees"], align: "decimal" },
    { heading: ["swivel", "° ′ ″"], align: "end", optional: true },
    { heading: [`rise in ${trimmed(fromMm(over, units), 2)}`, units], align: "decimal" },
    ...(perTurn === undefined ? [] : [{ heading: ["that rise,", "cross slide turns"], align: "decimal" } as const]),
    { heading: [`sine bar ${trimmed(fromMm(bar, units), 2)}`, units], align: "decimal" },
    { heading: ["0.1° wrong: on", `diameter, ${units}`], align: "decimal" },
  ];
  const rows = tapers.map(({ name, halfAngle }): Cell[] => {
    const taper = taperOfHalfAngle(halfAngle);
    const rise = riseAlongAxis(halfAngle, over);
    return [
      { text: name, weight: "bold" },
      { text: formatFixed(1 / taper, 3) },
      { text: formatFixed(taper * 12, 4) },
      { text: formatFixed(2 * toDegrees(halfAngle), 3) },
      { text: formatFixed(toDegrees(halfAngle), 3), weight: "bold" },
      { text: sexagesimal(halfAngle) },
      { text: length(rise) },
      ...(perTurn === undefined ? [] : [{ text: formatFixed(rise / perTurn, 2) }]),
      { text: length(sineBarStack(halfAngle, bar)) },
      { text: length(diameterError(halfAngle, toRadians(0.1), over)) },
    ];
  });
  return table(columns, rows, { width, size: size.small, ruleEvery: 3 });
}

/** Degrees, minutes and whole seconds. */
function sexagesimal(angle: number): string {
  const seconds = Math.round(toDegrees(angle) * 3600);
  const two = (value: number) => String(value).padStart(2, "0");
  return `${Math.floor(seconds / 3600)}° ${two(Math.floor(seconds / 60) % 60)}′ ${two(seconds % 60)}″`;
}

/** How far the swivelled slide must go for a taper of known length, in this machine's turns. */
function ownWords(taper: TaperWish, handwheels: readonly HandwheelFinding[], { units }: Machine, width: number): Run[] {
  const { length, large, small, halfAngle, name } = taper;
  const top = wheelFor("swivelled", handwheels);
  if (length === undefined || top?.feed === undefined) return [];
  const show = (mm: number) => formatLength(mm, units, units === "mm" ? 2 : 3);
  const along = length / Math.cos(halfAngle);
  const depth = riseAlongSlide(halfAngle, along);
  const short = top.handwheel.travel !== undefined && along > top.handwheel.travel;
  const ends = large !== undefined && small !== undefined ? `, ${show(large)} to ${show(small)}` : "";
  const words = short
    ? `${name}${ends}: the slide would have to go ${show(along)}, farther than its ${show(top.handwheel.travel ?? 0)}: turn it in two settings${centresBear(halfAngle) ? " or set the tailstock over" : ""}.`
    : `${name}${ends}: ${formatFixed(along / top.feed.perTurn, 2)} turns of the ${top.handwheel.name.toLowerCase()} (${show(along)} along the slide) take the side in by ${show(depth)}, twice that on diameter.`;
  return paragraph(words, width, { size: size.small, gap: 1, ...(short && { ink: "accent" as const }) });
}

/** A gauge of two pins, and the tailstock set over instead. */
function proofWords({ name, halfAngle }: TaperWish, { units }: Machine, over: number, width: number): Run[] {
  const show = (mm: number) => formatLength(mm, units, units === "mm" ? 3 : 4);
  const between = over / 2;
  const pins = pinDifference(2 * halfAngle, between);
  const byCentres = centresBear(halfAngle)
    ? `Between centres instead: tailstock over by ${show(setOver(halfAngle, over))} for each ${show(over)} of the work's whole length.`
    : TOO_STEEP_FOR_CENTRES;
  const words = `${name}: two pins with centres ${show(between)} apart, one ${show(pins)} thicker than the other, fill a gauge of this included angle. ${byCentres}`;
  return paragraph(words, width, { size: size.small, gap: 1 });
}
