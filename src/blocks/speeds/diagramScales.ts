import type { Mark } from "../../drawing/drawing.js";
import { line, text } from "../../drawing/shapes.js";
import { textWidth } from "../../drawing/text.js";
import { nearestPreferred, preferredNumbers } from "../../drive/preferredNumbers.js";
import { largestOf, smallestOf } from "../../quantity/extremes.js";
import { trimmed } from "../../quantity/format.js";
import { pen, rowLine, size, weight } from "../shared/style.js";

export type Scale = (value: number) => number;
export type Range = [number, number];
export type Frame = { readonly left: number; readonly right: number; readonly top: number; readonly bottom: number };

/** A little more than the values span, from one preferred number to another, and no less than half a decade. */
export function around(values: readonly number[], more: number): Range {
  let [least, most] = [smallestOf(values) / more, largestOf(values) * more];
  const wider = Math.sqrt(Math.max(1, 3.2 / (most / least)));
  [least, most] = [least / wider, most * wider];
  return [nearestPreferred("R10", least), nearestPreferred("R10", most)];
}

/** Lines at R20, numbers at R10 where they do not crowd; those of the scale upwards stand left of `numbersAt`. */
export function grid(x: Scale, y: Scale, across: Range, up: Range, frame: Frame, numbersAt: number): Mark[] {
  const numbered = (range: Range) => preferredNumbers("R10", range[0], range[1]);
  const stroke = (value: number, range: Range) =>
    isDecade(value) ? rowLine : pen(weight.axis, numbered(range).includes(value) ? "grey" : "pale");
  const marks: Mark[] = [];
  for (const d of preferredNumbers("R20", ...across))
    marks.push(line({ x: x(d), y: frame.top }, { x: x(d), y: frame.bottom }, stroke(d, across)));
  for (const v of preferredNumbers("R20", ...up))
    marks.push(line({ x: frame.left, y: y(v) }, { x: frame.right, y: y(v) }, stroke(v, up)));
  let right = Number.NEGATIVE_INFINITY;
  for (const d of numbered(across)) {
    const label = trimmed(d, 4);
    const half = textWidth(label, size.text, "regular") / 2;
    if (x(d) - half < right + 1) continue;
    right = x(d) + half;
    marks.push(text(label, { x: x(d), y: frame.bottom + 4 }, { size: size.text, anchor: "middle" }));
  }
  let above = Number.POSITIVE_INFINITY;
  for (const v of numbered(up)) {
    if (y(v) > above - size.text * 1.1) continue;
    above = y(v);
    marks.push(
      text(trimmed(v, 3), { x: numbersAt - 1.2, y: y(v) + size.text * 0.36 }, { size: size.text, anchor: "end" }),
    );
  }
  return marks;
}

const isDecade = (value: number): boolean => Math.abs(Math.log10(value) - Math.round(Math.log10(value))) < 1e-9;
