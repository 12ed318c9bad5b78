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

/** Inches as the trade says them: halves of halves up to an inch, then whole and half ones. */
const INCHES: readonly { readonly at: number; readonly label: string }[] = [
  ...[64, 32, 16, 8, 4, 2].map((part) => ({ at: 1 / part, label: `1/${part}` })),
  ...[3 / 32, 3 / 16, 3 / 8, 3 / 4].map((at) => ({ at, label: fractionOf(at) })),
  ...[1, 1.5, 2, 3, 4, 6, 8, 12, 16, 24, 32, 48].map((at) => ({ at, label: at === 1.5 ? "1 1/2" : String(at) })),
].sort((a, b) => a.at - b.at);

function fractionOf(value: number): string {
  for (let parts = 2; parts <= 64; parts *= 2)
    if (Math.abs(value * parts - Math.round(value * parts)) < 1e-9) return `${Math.round(value * parts)}/${parts}`;
  return trimmed(value, 3);
}

/** Lines at R20, numbers at R10 where they do not crowd, across of an inch machine its fractions; those of the scale upwards stand left of `numbersAt`. */
export function grid(
  x: Scale,
  y: Scale,
  { across, up, inches }: { readonly across: Range; readonly up: Range; readonly inches: boolean },
  frame: Frame,
  numbersAt: number,
): Mark[] {
  const numbered = (range: Range) => preferredNumbers("R10", range[0], range[1]);
  const stroke = (value: number, range: Range) =>
    isDecade(value) ? rowLine : pen(weight.axis, numbered(range).includes(value) ? "grey" : "pale");
  const marks: Mark[] = [];
  // Of inches a line for each figure, halves heavier.
  const own = inches ? INCHES.filter(({ at }) => at >= across[0] * 0.999 && at <= across[1] * 1.001) : undefined;
  for (const { at } of own ?? [])
    marks.push(
      line({ x: x(at), y: frame.top }, { x: x(at), y: frame.bottom }, at === 1 ? rowLine : pen(weight.axis, "grey")),
    );
  for (const d of own ? [] : preferredNumbers("R20", ...across))
    marks.push(line({ x: x(d), y: frame.top }, { x: x(d), y: frame.bottom }, stroke(d, across)));
  for (const v of preferredNumbers("R20", ...up))
    marks.push(line({ x: frame.left, y: y(v) }, { x: frame.right, y: y(v) }, stroke(v, up)));
  let right = Number.NEGATIVE_INFINITY;
  const labelled = own ?? numbered(across).map((at) => ({ at, label: trimmed(at, 4) }));
  for (const { at: d, label } of labelled) {
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
