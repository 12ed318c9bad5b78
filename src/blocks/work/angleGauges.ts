import { group, line, polyline, text } from "../../drawing/shapes.js";
import { toDegrees } from "../../quantity/angle.js";
import { formatFixed, formatSize } from "../../quantity/format.js";
import { inMm } from "../../quantity/length.js";
import { block, type Run } from "../shared/block.js";
import { cutLine, fine, size } from "../shared/style.js";
import { paragraph } from "../shared/table.js";

/** A paper wedge of each of the file's half angles, at true size: its two long edges differ by just that angle. */
export const angleGauges = block({ length: 120, height: 10 }, ({ findings, settings, width }): Run[] => {
  const tapers = findings.machine.tapers ?? [];
  const { units } = findings.machine;
  // A round length to set dividers to.
  const wanted = units === "mm" ? settings.length : inMm(Math.max(1, Math.round(settings.length / 25)), units);
  const length = Math.min(wanted, width - 2);
  return tapers.flatMap(({ name, halfAngle }): Run[] => {
    const rise = length * Math.tan(halfAngle);
    // A steep wedge is drawn shorter, so that it stays on the page.
    const run = rise > 70 ? 70 / Math.tan(halfAngle) : length;
    const high = run * Math.tan(halfAngle);
    const bottom = high + settings.height;
    const edge = [
      { x: 0.5, y: bottom },
      { x: 0.5, y: high },
      { x: 0.5 + run, y: 0 },
      { x: 0.5 + run, y: bottom },
    ];
    const label = `${name}: half angle ${formatFixed(toDegrees(halfAngle), 3)}°`;
    const marks = [
      group({ x: 0, y: 0 }, [polyline(edge, { pen: cutLine }, true)], { name: "cut" }),
      text(label, { x: 3, y: bottom - 3 }, { size: size.small }),
      line({ x: 3, y: bottom - 1.5 }, { x: 0.5 + run - 3, y: bottom - 1.5 }, fine),
    ];
    return [
      { drawing: { width, height: bottom, marks }, gap: 4, keepWithNext: true },
      ...paragraph(
        `right edge ${formatSize(high, units)} higher than the left over ${formatSize(run, units)}; scissors are good to about a tenth of a degree, so prove it with an indicator`,
        width,
        { size: size.tiny, gap: 0.6 },
      ),
    ];
  });
});
