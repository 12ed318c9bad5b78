import type { Mark } from "../../drawing/drawing.js";
import { group, line, rectangle, text } from "../../drawing/shapes.js";
import { textWidth } from "../../drawing/text.js";
import type { SpeedFinding } from "../../drive/finding.js";
import { coveredPositions } from "../../findings/coveredPositions.js";
import { fastestAllowed, heldByLimit } from "../../findings/limits.js";
import type { Limits } from "../../machine/machine.js";
import { formatFixed } from "../../quantity/format.js";
import { axisLine, objectLine, pen, size, weight } from "../shared/style.js";
import { apart } from "./apart.js";
import type { Frame, Range, Scale } from "./diagramScales.js";

/** One line of the diagram: a spindle speed, and the positions that give it. `held`: beyond the limit; `turnedDown`: a variable motor
 *  gives more there, and may not. */
export type SpeedLine = {
  readonly name: string;
  readonly rpm: number;
  readonly held: boolean;
  readonly turnedDown: boolean;
  /** With a variable motor: the other end of what its position gives, rpm. */
  readonly other?: number;
};

/** Whether it is the line of the slower end. */
export const isLower = ({ rpm, other }: SpeedLine): boolean => other !== undefined && other > rpm;

/** What every known position gives, slowest first; of a variable motor its slowest too, and no position that others cover.
 *  Positions of one and the same speed share a line. */
export function speedLines(speeds: readonly SpeedFinding[], limits: Limits): SpeedLine[] {
  const covered = new Set(coveredPositions(speeds, limits));
  const lines = speeds.flatMap((speed): SpeedLine[] => {
    if (speed.from === "unknown" || covered.has(speed)) return [];
    const { position, rpm, slowestRpm } = speed;
    const { name } = position;
    const allowed = fastestAllowed(speed, limits);
    const fastest = {
      ...{ name, rpm: allowed ?? rpm, held: allowed === undefined },
      turnedDown: heldByLimit(speed, limits) === "in part",
    };
    return slowestRpm < fastest.rpm * 0.999
      ? [
          { ...fastest, rpm: slowestRpm, other: fastest.rpm },
          { ...fastest, other: slowestRpm },
        ]
      : [fastest];
  });
  const found: SpeedLine[] = [];
  for (const one of lines.sort((a, b) => a.rpm - b.rpm)) {
    const before = found.at(-1);
    if (
      before !== undefined &&
      one.other === undefined &&
      before.held === one.held &&
      before.turnedDown === one.turnedDown &&
      one.rpm / before.rpm < 1.001
    )
      found[found.length - 1] = { ...before, name: `${before.name}, ${one.name}` };
    else found.push(one);
  }
  return found;
}

/** How far numbers stand out of the frame. */
export const labelRoom = 4;

/** `share`: cutting speed over diameter × rpm, in the units of the scales. */
type Scales = { readonly across: Range; readonly up: Range; readonly share: number };

/** The diameters over which a speed's line is in sight; undefined where it is not, or in a corner alone. */
export function spanOf(rpm: number, { across, up, share }: Scales): Range | undefined {
  const from = Math.max(across[0], up[0] / (share * rpm));
  const to = Math.min(across[1], up[1] / (share * rpm));
  return to > from * 1.02 ? [from, to] : undefined;
}

/** The lines, and each one's speed at the frame where it leaves it, clear of every line; and those `left` out, since a line that does not
 *  say its speed is none to go by. `keep`: the speed of the line that the example goes by. */
export function lineMarks(
  lines: readonly SpeedLine[],
  x: Scale,
  y: Scale,
  { keep, ...scales }: Scales & { readonly keep: number | undefined },
  frame: Frame,
): { readonly marks: readonly Mark[]; readonly left: readonly string[] } {
  // Where one position ends and the next begins it is one line.
  const ends = lines.filter(({ rpm, held }, at) => {
    const before = lines[at - 1];
    return before === undefined || before.held !== held || rpm / before.rpm >= 1.001;
  });
  const all = ends.flatMap(({ rpm, held }) => {
    const span = spanOf(rpm, scales);
    if (span === undefined) return [];
    const spot = (d: number) => ({ x: x(d), y: y(scales.share * d * rpm) });
    return [{ words: formatFixed(rpm, 0), rpm, held, from: spot(span[0]), to: spot(span[1]) }];
  });
  const isKept = ({ rpm }: { readonly rpm: number }) => keep !== undefined && Math.abs(rpm / keep - 1) < 1e-3;
  const sideRow = size.text * 1.15;
  const widest = Math.max(0, ...all.map(({ words }) => textWidth(words, size.text, "bold")));
  const atTop = fewEnough(
    all.filter(({ to }) => to.y < frame.top + 0.01).reverse(),
    (frame.right - frame.left - widest) / (widest + 1.4) + 1,
    isKept,
  );
  const atSide = fewEnough(
    all.filter(({ to }) => to.y >= frame.top + 0.01).reverse(),
    (frame.bottom - frame.top - 2.5) / sideRow + 1,
    isKept,
  );
  const tops = apart(
    atTop.map(({ to }) => to.x),
    widest + 1.4,
    frame.left + widest / 2,
    frame.right - widest / 2,
  );
  const sides = apart(
    atSide.map(({ to }) => to.y),
    sideRow,
    frame.top + 1.5,
    frame.bottom - 1,
  );
  const drawn = new Set([...atTop, ...atSide]);
  const left = all.flatMap((one) => (drawn.has(one) ? [] : [one.words]));
  const marks = [
    ...[...drawn].map(({ from, to, held }) =>
      group({ x: 0, y: 0 }, [line(from, to, held ? pen(weight.object, "black", [1.2, 1.2]) : objectLine)], {
        name: "position",
      }),
    ),
    ...atTop.flatMap(({ words, to }, index): Mark[] => {
      const at = tops[index] ?? to.x;
      return [
        line(to, { x: at, y: frame.top - labelRoom + 0.6 }, axisLine),
        text(words, { x: at, y: frame.top - labelRoom }, { size: size.text, weight: "bold", anchor: "middle" }),
      ];
    }),
    ...atSide.flatMap(({ words, to }, index): Mark[] => {
      const at = sides[index] ?? to.y;
      return [
        line(to, { x: frame.right + labelRoom - 0.6, y: at }, axisLine),
        text(words, { x: frame.right + labelRoom, y: at + size.text * 0.36 }, { size: size.text, weight: "bold" }),
      ];
    }),
  ];
  return { marks, left };
}

/** Where along its line a bar is tried, as a share of it: in the middle first. */
const tried = [0.5, 0.35, 0.65, 0.2, 0.8, 0.08, 0.92];

export type Box = { readonly left: number; readonly right: number; readonly top: number; readonly bottom: number };
const meet = (one: Box, other: Box): boolean =>
  one.left < other.right && other.left < one.right && one.top < other.bottom && other.top < one.bottom;

/** With a variable motor: a bar that joins the two lines of each position, with its name, since any speed between them is its own. Where a
 *  name finds no place clear of the others and of what is `taken`, the list beside the diagram has it. */
export function joinMarks(
  lines: readonly SpeedLine[],
  x: Scale,
  y: Scale,
  scales: Scales,
  frame: Frame,
  taken: readonly Box[],
): Mark[] {
  const names: Box[] = [];
  const bars: Box[] = [...taken];
  return lines.flatMap((upper): Mark[] => {
    const { name, rpm, other } = upper;
    if (other === undefined || isLower(upper)) return [];
    const span = spanOf(Math.sqrt(rpm * other), scales);
    if (span === undefined) return [];
    const wide = textWidth(name, size.text, "bold");
    const at = (share: number) => {
      const d = span[0] * (span[1] / span[0]) ** share;
      const [low, high] = [other, rpm].map((one) => y(scales.share * d * one)) as [number, number];
      const [top, bottom] = [Math.max(high, frame.top), Math.min(low, frame.bottom)];
      return { left: x(d) - 0.3, right: x(d) + 0.3, top, bottom };
    };
    const places = tried.map(at).flatMap((bar) =>
      [bar.right + 0.9, bar.left - 0.9 - wide].map((left) => {
        const middle = (bar.top + bar.bottom) / 2;
        const half = 0.75 * size.text;
        return { bar, name: { left: left - 0.5, right: left + wide + 0.5, top: middle - half, bottom: middle + half } };
      }),
    );
    const free = places.find(
      ({ bar, name: box }) =>
        box.left > frame.left + 0.3 &&
        box.right < frame.right - 0.3 &&
        box.top > frame.top + 0.3 &&
        box.bottom < frame.bottom - 0.3 &&
        !names.some((one) => meet(one, box) || meet(one, bar)) &&
        !bars.some((one) => meet(one, box)),
    );
    // A bar without its name goes where it hides none.
    const bar = free?.bar ?? tried.map(at).find((one) => !names.some((other) => meet(one, other)));
    if (bar === undefined) return [];
    bars.push(bar);
    const middle = (bar.left + bar.right) / 2;
    const drawn: Mark[] = [line({ x: middle, y: bar.top }, { x: middle, y: bar.bottom }, objectLine)];
    if (free !== undefined) {
      const { left, right, top, bottom } = free.name;
      names.push(free.name);
      drawn.push(
        rectangle({ x: left, y: top }, right - left, bottom - top, { fill: "white" }),
        text(name, { x: left + 0.5, y: (top + bottom) / 2 + 0.36 * size.text }, { size: size.text, weight: "bold" }),
      );
    }
    return [group({ x: 0, y: 0 }, drawn, { name: "between" })];
  });
}

/** As many as there is room for, evenly picked, the first and the last among them and the one that is kept; the list beside the diagram
 *  has them all. */
function fewEnough<T>(all: readonly T[], most: number, isKept: (one: T) => boolean): readonly T[] {
  const room = Math.max(1, Math.floor(most + 1e-9));
  if (all.length <= room) return all;
  const kept = all.findIndex(isKept);
  if (room === 1) return all.slice(Math.max(0, kept)).slice(0, 1);
  const picked = Array.from({ length: room }, (_, at) => Math.round((at * (all.length - 1)) / (room - 1)));
  if (kept >= 0 && !picked.includes(kept)) {
    // Instead of its nearest neighbour, but of none at an end where there are others.
    const nearest = (room > 2 ? picked.slice(1, -1) : picked).reduce((best, one) =>
      Math.abs(one - kept) < Math.abs(best - kept) ? one : best,
    );
    picked[picked.indexOf(nearest)] = kept;
  }
  return picked.map((index) => all[index] as T);
}
