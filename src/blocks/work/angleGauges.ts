import type { Point } from "../../drawing/drawing.js";
import { group, polyline, text } from "../../drawing/shapes.js";
import { textWidth } from "../../drawing/text.js";
import type { TaperWish } from "../../machine/machine.js";
import { toDegrees, toRadians } from "../../quantity/angle.js";
import { formatFixed, formatSize, trimmed } from "../../quantity/format.js";
import { inMm } from "../../quantity/length.js";
import { say } from "../../words/say.js";
import { block, type Run } from "../shared/block.js";
import { paragraph } from "../shared/paragraph.js";
import { heading, kept } from "../shared/runs.js";
import { cutLine, size } from "../shared/style.js";

/** Where a wedge is steep it is drawn shorter, so that it stays on the page; mm. */
const HIGHEST = 45;
/** Clear of every cut, mm. */
const CLEAR = 3;

/** A paper wedge of each of the file's half angles, at true size: its two long edges differ by just that angle. Only of those
 *  that scissors can show. Its outline is drawn, unlike that of other pieces to cut out: it carries no marks, and it is the gauge. */
export const angleGauges = block({ length: 120, height: 10, least: 3 }, ({ findings, settings, width }): Run[] => {
  const { tapers = [], units } = findings.machine;
  // A round length to set dividers to.
  const wanted = units === "mm" ? settings.length : inMm(Math.max(1, Math.round(settings.length / 25)), units);
  const longest = Math.min(wanted, width - 2);
  const isShown = ({ halfAngle }: TaperWish) => halfAngle >= toRadians(settings.least) - 1e-9;
  const left = tapers.filter((taper) => !isShown(taper));
  const gauges = tapers.filter(isShown).flatMap(({ name, halfAngle }): Run[] => {
    const run = Math.min(longest, HIGHEST / Math.tan(halfAngle));
    const high = run * Math.tan(halfAngle);
    const bottom = high + settings.height;
    const edge: readonly Point[] = [
      { x: 0.5, y: bottom },
      { x: 0.5, y: high },
      { x: 0.5 + run, y: 0 },
      { x: 0.5 + run, y: bottom },
    ];
    const angle = formatFixed(toDegrees(halfAngle), 3);
    const fits = (words: string) => textWidth(words, size.text, "regular") <= run - 2 * CLEAR;
    // What does not fit inside stands below the cut alone.
    const label = [say("tapers.gauge", { name, angle }), say("tapers.gauge alone", { angle })].find(fits);
    const marks = [
      group({ x: 0, y: 0 }, [polyline(edge, { pen: cutLine }, true)], { name: "cut" }),
      ...(label === undefined ? [] : [text(label, { x: 0.5 + CLEAR, y: bottom - CLEAR }, { size: size.text })]),
    ];
    const rises = say("tapers.gauge rises", {
      name: label?.startsWith(name) ? say("tapers.gauge alone", { angle }) : say("tapers.gauge", { name, angle }),
      rise: formatSize(high, units),
      length: formatSize(run, units),
    });
    return [
      { drawing: { width, height: bottom, marks }, gap: 4, keepWithNext: true },
      ...paragraph(rises, width, { size: size.source, gap: 0.6 }),
    ];
  });
  const names = left.map(({ name, halfAngle }) => `${name} (${formatFixed(toDegrees(halfAngle), 3)}°)`).join(", ");
  const without = left.length === 0 ? "" : say("tapers.no gauge", { names, least: trimmed(settings.least, 1) });
  return [
    ...(gauges.length > 0
      ? [...heading(say("tapers.gauges"), width, 5), ...kept(paragraph(say("tapers.cut gauge"), width))]
      : []),
    ...gauges,
    ...(without === "" ? [] : paragraph(without, width, { gap: 3 })),
  ];
});
