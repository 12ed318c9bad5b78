import { scaleLog } from "d3-scale";
import type { Mark } from "../../drawing/drawing.js";
import { circle, group, line, text } from "../../drawing/shapes.js";
import { textWidth } from "../../drawing/text.js";
import type { SpeedFinding } from "../../drive/finding.js";
import { spread } from "../../drive/geometricStep.js";
import { nearestPreferred, preferredNumbers } from "../../drive/preferredNumbers.js";
import { stepRatio } from "../../drive/ratio.js";
import type { Findings } from "../../findings/findings.js";
import { choiceDoubt, heldByLimit } from "../../findings/limits.js";
import type { Drive, Limits } from "../../machine/machine.js";
import { formatFixed } from "../../quantity/format.js";
import { block, type Run } from "../shared/block.js";
import { fine, heavy, medium, pen, size } from "../shared/style.js";
import { paragraph } from "../shared/table.js";

/** Every way from motor to spindle as rays over a scale of speed by ratio, with the gaps and overlaps between the spindle
 *  speeds, and the preferred numbers beside them. */
export const speedTree = block({ height: 150 }, ({ findings, settings, width, height }): Run[] => {
  const { drive } = findings.machine;
  if (drive === undefined || findings.drive === undefined) return [];
  const { speeds } = findings.drive;
  const tall = Math.min(Math.max(settings.height, speeds.length * 3 + 20), height - 20);
  return [
    { drawing: { width, height: tall, marks: tree(findings, drive, speeds, width, tall) } },
    ...(speeds.some(({ from }) => from === "unknown")
      ? []
      : paragraph(spreadWords(speeds), width, { size: size.small, gap: 2 })),
  ];
});

type Node = { readonly rpm: number; readonly x: number; readonly y: number };

function tree(
  { machine }: Findings,
  drive: Drive,
  speeds: readonly SpeedFinding[],
  width: number,
  height: number,
): Mark[] {
  const { stages, motor } = drive;
  const levels = levelsOf(drive);
  const all = [...levels.flat(), ...speeds.map(({ rpm }) => rpm)];
  const y = scaleLog()
    .domain([Math.min(...all) / 1.06, Math.max(...all) * 1.06])
    .range([height - 4, 12]);
  const widest = Math.max(...speeds.map(({ position }) => textWidth(position.name, size.body, "bold")));
  const room = { left: 16, right: width - 60 - Math.min(widest, 0.25 * width) };
  const x = (level: number) => room.left + ((room.right - room.left) * level) / stages.length;
  const rays: Mark[] = [];
  const nodes: Mark[] = [];
  const node = (at: Node, strong: boolean) =>
    circle(at, strong ? 1 : 0.7, { fill: strong ? "black" : "white", pen: medium });

  for (const [level, stage] of stages.entries()) {
    rays.push(line({ x: x(level), y: 12 }, { x: x(level), y: height - 4 }, fine));
    const middle = (x(level) + x(level + 1)) / 2;
    nodes.push(text(stage.name, { x: middle, y: 6 }, { size: size.small, anchor: "middle", weight: "bold" }));
    const last = level === stages.length - 1;
    for (const rpm of levels[level] ?? []) {
      const from = { rpm, x: x(level), y: y(rpm) };
      if (!last)
        for (const step of stage.steps) {
          const to = rpm * stepRatio(step);
          rays.push(line(from, { x: x(level + 1), y: y(to) }, medium));
        }
      nodes.push(node(from, false));
    }
    if (!last) continue;
    for (const { position, rpm } of speeds) {
      const before = position.steps.slice(0, -1).reduce((sum, step) => sum * stepRatio(step), motor.fastestRpm);
      rays.push(line({ x: x(level), y: y(before) }, { x: x(level + 1), y: y(rpm) }, medium));
    }
  }
  rays.push(line({ x: room.right, y: 12 }, { x: room.right, y: height - 4 }, fine));
  const source = { x: room.left - 1.6, y: y(motor.fastestRpm) };
  nodes.push(
    text(
      formatFixed(motor.fastestRpm, 0),
      { x: source.x, y: source.y + 0.2 },
      { size: size.body, anchor: "end", weight: "bold" },
    ),
    text(motor.by ?? "motor", { x: source.x, y: source.y + 2.8 }, { size: size.tiny, anchor: "end" }),
    text("spindle", { x: room.right, y: 6 }, { size: size.small, anchor: "middle", weight: "bold" }),
  );
  return [
    group({ x: 0, y: 0 }, rays, { name: "rays" }),
    group({ x: 0, y: 0 }, nodes, { name: "speeds" }),
    ...spindle(speeds, room.right, y, machine.limits, height - 4),
    ...series(width - 10, y, Math.min(...all), Math.max(...all)),
  ];
}

/** Speeds of every shaft before the spindle's, by ratio; the motor's own first. Equal ones count once. */
function levelsOf({ stages, motor }: Drive): number[][] {
  const levels = [[motor.fastestRpm]];
  for (const stage of stages.slice(0, -1)) {
    const next = (levels.at(-1) ?? []).flatMap((rpm) => stage.steps.map((step) => rpm * stepRatio(step)));
    levels.push([...new Map(next.map((rpm) => [rpm.toFixed(6), rpm])).values()]);
  }
  return levels;
}

const known = { measured: "measured", slip: "less slip", ratio: "by ratio", unknown: "not known" } as const;

/** Name and speed of every position, pushed apart where they would touch, and between them the ratio of the two. */
function spindle(
  speeds: readonly SpeedFinding[],
  left: number,
  y: (rpm: number) => number,
  limits: Limits,
  floor: number,
): Mark[] {
  const { ratios, gaps, overlaps } = spread(speeds.map(({ rpm }) => rpm));
  const least = Math.min(size.body * 1.9, (floor - 12) / speeds.length);
  const em = Math.max(size.tiny, Math.min(size.body, least * 0.72));
  const rows = within(
    apart(
      speeds.map(({ rpm }) => y(rpm)),
      least,
    ),
    12,
    floor,
    least,
  );
  const widest = Math.max(...speeds.map(({ position }) => textWidth(position.name, em, "bold")));
  const number = left + 8 + widest + 2 + textWidth("0000", em, "bold");
  const notes = speeds.map((speed) =>
    heldByLimit(speed, limits) ? "beyond the limit" : choiceDoubt(speed, limits) || known[speed.from],
  );
  const bar = number + 1.2 + Math.max(14.8, 0.8 + Math.max(...notes.map((n) => textWidth(n, size.tiny, "regular"))));
  return speeds.flatMap((speed, index): Mark[] => {
    const row = rows[index] ?? 0;
    const base = row + em * 0.35;
    const at = { x: left, y: y(speed.rpm) };
    const note = notes[index] ?? "";
    const marks: Mark[] = [
      circle(at, 1, { fill: "black" }),
      line({ x: left + 1.2, y: at.y }, { x: left + 7, y: row }, fine),
      text(speed.position.name, { x: left + 8, y: base }, { size: em, weight: "bold" }),
      text(
        speed.from === "unknown" ? "?" : formatFixed(speed.rpm, 0),
        { x: number, y: base },
        { size: em, anchor: "end", weight: "bold" },
      ),
      text(
        note,
        { x: number + 1.2, y: base },
        { size: size.tiny, ink: note === known[speed.from] ? "black" : "accent" },
      ),
    ];
    const next = rows[index + 1];
    const ratio = ratios[index];
    if (next === undefined || ratio === undefined) return marks;
    const word = gaps.includes(index) ? "  gap" : overlaps.includes(index) ? "  overlap" : "";
    const strong = word !== "";
    return [
      ...marks,
      line({ x: bar, y: row - 0.5 }, { x: bar, y: next + 0.5 }, strong ? heavy : fine),
      text(
        `× ${formatFixed(ratio, 2)}${word}`,
        { x: bar + 1, y: (row + next) / 2 + 0.65 },
        { size: size.tiny, weight: strong ? "bold" : "regular" },
      ),
    ];
  });
}

/** Shifts rows (falling, `least` apart or more) back between top and floor; spread evenly where all are full. */
function within(rows: readonly number[], top: number, floor: number, least: number): number[] {
  const kept: number[] = [];
  for (const row of rows) kept.push(Math.min(row, (kept.at(-1) ?? floor + least) - least));
  for (let index = kept.length - 1; index >= 0; index--)
    kept[index] = Math.max(kept[index] ?? 0, index === kept.length - 1 ? top : (kept[index + 1] ?? 0) + least);
  return kept;
}

/** Pushes places apart to at least `least`, order kept (they fall with the index: faster stands higher), about where they were. */
function apart(places: readonly number[], least: number): number[] {
  const groups: { middle: number; count: number }[] = [];
  for (const place of places) {
    let own = { middle: place, count: 1 };
    for (let last = groups.at(-1); last !== undefined; last = groups.at(-1)) {
      if (last.middle - own.middle >= ((last.count + own.count) / 2) * least) break;
      groups.pop();
      const count = last.count + own.count;
      own = { middle: (last.middle * last.count + own.middle * own.count) / count, count };
    }
    groups.push(own);
  }
  return groups.flatMap(({ middle, count }) =>
    Array.from({ length: count }, (_, index) => middle + ((count - 1) / 2 - index) * least),
  );
}

/** The preferred numbers as a scale of their own: R20 ticks, R10 numbers where there is room. */
function series(left: number, y: (rpm: number) => number, least: number, most: number): Mark[] {
  const marks: Mark[] = [text("R20", { x: left, y: 6 }, { size: size.small, anchor: "middle", weight: "bold" })];
  const numbers = preferredNumbers("R20", least / 1.06, most * 1.06);
  let above = Number.POSITIVE_INFINITY;
  for (const rpm of numbers) {
    marks.push(line({ x: left - 2, y: y(rpm) }, { x: left, y: y(rpm) }, pen(0.13)));
    if (y(rpm) > above - size.tiny * 1.15) continue;
    above = y(rpm);
    marks.push(
      text(
        formatFixed(rpm, rpm < 100 && rpm % 1 !== 0 ? 1 : 0),
        { x: left + 1, y: y(rpm) + 0.65 },
        { size: size.tiny },
      ),
    );
  }
  return [group({ x: 0, y: 0 }, marks, { name: "series" })];
}

function spreadWords(speeds: readonly SpeedFinding[]): string {
  const rpms = speeds.map(({ rpm }) => rpm);
  const { step, gaps, overlaps } = spread(rpms);
  if (rpms.length < 2) return "One speed: nothing to spread.";
  const names = (index: number) => `${speeds[index]?.position.name} and ${speeds[index + 1]?.position.name}`;
  return [
    `Spread evenly by ratio, ${rpms.length} speeds from ${formatFixed(rpms[0] ?? 0, 0)} to ${formatFixed(rpms.at(-1) ?? 0, 0)} rpm would each be ${formatFixed(step, 2)} times the last; the nearest step of the preferred numbers is ${formatFixed(nearestPreferred("R40", step), 2)}.`,
    ...(gaps.length === 0 ? [] : [`Gap between ${few(gaps.map(names))}.`]),
    ...(overlaps.length === 0 ? [] : [`Nearly the same: ${few(overlaps.map(names))}.`]),
    "Shafts between motor and spindle are by ratio alone.",
  ].join(" ");
}

const few = (names: readonly string[]): string =>
  names.length <= 3 ? names.join("; ") : `${names.slice(0, 3).join("; ")} and ${names.length - 3} more`;
