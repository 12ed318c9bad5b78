import { scaleLog } from "d3-scale";
import type { Mark } from "../../drawing/drawing.js";
import { circle, group, line, text } from "../../drawing/shapes.js";
import { textWidth, widestWord, wrapText } from "../../drawing/text.js";
import { nearlySame } from "../../drive/alike.js";
import type { SpeedFinding } from "../../drive/finding.js";
import { spread } from "../../drive/geometricStep.js";
import { nearestPreferred, preferredNumbers } from "../../drive/preferredNumbers.js";
import { stepRatio } from "../../drive/ratio.js";
import { rpmWords } from "../../drive/rpmWords.js";
import type { Findings } from "../../findings/findings.js";
import { fastestAllowed, heldByLimit, measureFirst } from "../../findings/limits.js";
import type { Drive, Limits } from "../../machine/machine.js";
import { largestOf, smallestOf } from "../../quantity/extremes.js";
import { formatFixed } from "../../quantity/format.js";
import { say, translated } from "../../words/say.js";
import { block, giving, type Run } from "../shared/block.js";
import { paragraph } from "../shared/paragraph.js";
import { signedBeyond } from "../shared/stepSigns.js";
import { axisLine, leading, objectLine, rowLine, size } from "../shared/style.js";
import { apart } from "./apart.js";

/** From one spindle speed to the next where there is room, mm. */
const ROW = 5.6;
const LEAST_ROW = 3.4;
const LOW_ROW = 4.4;
/** Of a page, so that what stands below has room on it. */
const TALLEST = 0.66;
/** Names closer than this run into each other. */
const LEAST_NAMED = size.source * 1.35;
/** Above the tree, for the names of stages. */
const top = 12;
/** Of a stage's name, and what is left free beside it, mm. */
const STAGE_LINES = 3;
const NAME_GAP = 1.5;
/** Of the width, for the names of positions. */
const NAMES = 0.3;
/** Rays need so much from motor to spindle to be told apart. */
const LEAST_RAYS = 36;

/** Every way from motor to spindle as rays over a scale of speed by ratio, with the gaps and overlaps between the spindle
 *  speeds, and the preferred numbers beside them where the paper has room. */
export const speedTree = giving(
  block({ height: 112 }, ({ findings: plain, settings, width, height }): Run[] => {
    const { findings, key } = signedBeyond(plain, NAMES * width);
    const { drive } = findings.machine;
    if (drive === undefined || findings.drive === undefined) return [];
    const { speeds } = findings.drive;
    const { room } = across(findings, speeds, width);
    const { names, key: stageKey } = stageNames(drive, (room.right - room.left) / drive.stages.length - NAME_GAP);
    const wanted = Math.max(settings.height, speeds.length * ROW + top + 4);
    // Low enough for what stands below, as long as the speeds can be told apart.
    const least = Math.min(settings.height, speeds.length * LOW_ROW + top + 4);
    const tall = Math.min(wanted, Math.max(least, TALLEST * height));
    return [
      { drawing: { width, height: tall, marks: tree(findings, drive, names, speeds, width, tall) } },
      ...paragraph(stageKey.join(" · "), width, { gap: 1 }),
      ...paragraph(key, width, { gap: 1 }),
      ...paragraph(signWords(speeds, findings.machine.limits), width, { size: size.source, gap: 2 }),
      ...(speeds.some(({ from }) => from === "unknown")
        ? []
        : paragraph(spreadWords(drive, speeds, findings.machine.limits), width, { gap: 1 })),
    ];
  }),
);

type Node = { readonly x: number; readonly y: number };

/** Columns right of the spindle, from its left edge: names, speeds, signs, ratios; all mm. */
type Columns = { readonly name: number; readonly speed: number; readonly ratio: number; readonly wide: number };

function columnsFor(speeds: readonly SpeedFinding[], limits: Limits, width: number): Columns {
  const widest = largestOf(speeds.map(({ position }) => textWidth(position.name, size.text, "bold")));
  const name = Math.min(widest, NAMES * width);
  const wide = (words: readonly string[]) => largestOf(words.map((one) => textWidth(one, size.text, "bold")));
  const speed = 8 + name + 2 + wide(["00000", ...speeds.map((one) => speedWords(one, limits))]);
  const ratio = speed + 3 + wide(["×", ...speeds.map((one) => signOf(one, limits))]);
  const word = Math.max(
    ...["gap", "overlap"].map((key) => textWidth(ratioWords(1.11, key === "gap", key !== "gap"), size.source, "bold")),
  );
  return { name, speed, ratio, wide: ratio + 1 + word };
}

/** Where the rays stand, left of the columns, and whether the preferred numbers have room at the right. */
function across({ machine }: Findings, speeds: readonly SpeedFinding[], width: number) {
  const columns = columnsFor(speeds, machine.limits, width);
  const seriesWide = 16;
  const left = 14;
  const withSeries = width - left - columns.wide - seriesWide >= LEAST_RAYS;
  return { columns, withSeries, room: { left, right: width - columns.wide - (withSeries ? seriesWide : 0) } };
}

function tree(
  findings: Findings,
  drive: Drive,
  names: readonly string[],
  speeds: readonly SpeedFinding[],
  width: number,
  height: number,
): Mark[] {
  const { machine } = findings;
  const { stages, motor } = drive;
  const levels = levelsOf(drive);
  const all = [...levels.flat(), ...speeds.map(({ rpm }) => rpm)];
  const floor = height - 4;
  const y = scaleLog()
    .domain([smallestOf(all) / 1.06, largestOf(all) * 1.06])
    .range([floor, top]);
  const { columns, withSeries, room } = across(findings, speeds, width);
  const x = (level: number) => room.left + ((room.right - room.left) * level) / stages.length;
  const rays: Mark[] = [];
  const nodes: Mark[] = [];
  for (const [level, stage] of stages.entries()) {
    rays.push(line({ x: x(level), y: top }, { x: x(level), y: floor }, rowLine));
    nodes.push(...stageName(names[level] ?? "", (x(level) + x(level + 1)) / 2, x(level + 1) - x(level) - NAME_GAP));
    const last = level === stages.length - 1;
    for (const rpm of levels[level] ?? []) {
      const from = { x: x(level), y: y(rpm) };
      if (!last)
        for (const step of stage.steps)
          rays.push(line(from, { x: x(level + 1), y: y(rpm * stepRatio(step)) }, objectLine));
      nodes.push(circle(from, 0.7, { fill: "white", pen: rowLine }));
    }
    if (!last) continue;
    for (const { position, rpm } of speeds) {
      const before = position.steps.slice(0, -1).reduce((sum, step) => sum * stepRatio(step), motor.fastestRpm);
      rays.push(line({ x: x(level), y: y(before) }, { x: x(level + 1), y: y(rpm) }, objectLine));
    }
  }
  rays.push(line({ x: room.right, y: top }, { x: room.right, y: floor }, rowLine));
  const source = { x: room.left - 1.6, y: y(motor.fastestRpm) };
  nodes.push(
    text(
      formatFixed(motor.fastestRpm, 0),
      { x: source.x, y: source.y + 0.6 },
      { size: size.text, anchor: "end", weight: "bold" },
    ),
    text(
      say(`speed tree.by ${motor.by ?? "motor"}`),
      { x: source.x, y: source.y + 3.6 },
      { size: size.source, anchor: "end" },
    ),
    text(say("speed tree.spindle"), { x: room.right + 2, y: top - 3 }, { size: size.text, weight: "bold" }),
  );
  return [
    group({ x: 0, y: 0 }, rays, { name: "rays" }),
    group({ x: 0, y: 0 }, nodes, { name: "speeds" }),
    ...spindle(speeds, between(drive, speeds, machine.limits), room.right, {
      y,
      limits: machine.limits,
      floor,
      columns,
    }),
    ...(withSeries ? series(width - 12, y, smallestOf(all), largestOf(all)) : []),
  ];
}

/** What stands over the rays of each stage: its name, or where that has no room there a number, and what it stands for. */
function stageNames({ stages }: Drive, room: number): { names: string[]; key: string[] } {
  const called = stages.map(({ name }) => translated(name));
  const isLong = (name: string) =>
    wrapText(name, room, size.source, "bold").length > STAGE_LINES || widestWord(name, size.source, "bold") > room;
  const names = called.map((name, index) => (isLong(name) ? `(${index + 1})` : name));
  const key = called.flatMap((name, index) =>
    isLong(name) ? [say("belt card.sign", { sign: names[index] ?? "", name })] : [],
  );
  return { names, key };
}

/** Over the rays of its stage. */
function stageName(name: string, middle: number, room: number): Mark[] {
  const lines = wrapText(name, room, size.source, "bold");
  return lines.map((part, index) =>
    text(
      part,
      { x: middle, y: top - 3 - (lines.length - 1 - index) * size.source * 1.2 },
      { size: size.source, anchor: "middle", weight: "bold" },
    ),
  );
}

function shorter(words: string, room: number): string {
  let kept = words;
  while (kept.length > 1 && textWidth(`${kept}…`, size.source, "bold") > room) kept = kept.slice(0, -1);
  return `${kept.trimEnd()}…`;
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

/** How fast a position may be run; of a variable motor from its slowest on. */
const speedWords = (speed: SpeedFinding, limits: Limits): string =>
  rpmWords({ ...speed, rpm: fastestAllowed(speed, limits) ?? speed.rpm });

/** What a speed's sign says; signs are explained once below. */
function signOf(speed: SpeedFinding, limits: Limits): string {
  const held = heldByLimit(speed, limits);
  if (held) return held === "wholly" ? "×" : say("hand feed.max");
  if (measureFirst(speed, limits) || speed.doubtful) return "!";
  return speed.from === "slip" || speed.from === "ratio" ? "~" : "";
}

function signWords(speeds: readonly SpeedFinding[], limits: Limits): string {
  const used = new Set(speeds.map((speed) => signOf(speed, limits)));
  return [
    ...(used.has("~") ? [say("speed tree.by ratio")] : []),
    ...(used.has("!") ? [say("speed tree.measure first")] : []),
    ...(used.has("×") ? [say("speed tree.beyond")] : []),
    ...(used.has(say("hand feed.max")) ? [say("speed tree.turned down")] : []),
    say("speed tree.shafts"),
  ].join(" · ");
}

const isVariable = ({ motor }: Drive): boolean => motor.slowestRpm < motor.fastestRpm;

/** What lies between a speed and the next faster one. */
type Between = { readonly ratio: number; readonly gap: boolean; readonly overlap: boolean };

/** After each speed but the last. With a variable motor there is nothing between positions of which one begins where the other ends, or
 *  before. */
function between(drive: Drive, speeds: readonly SpeedFinding[], limits: Limits): readonly (Between | undefined)[] {
  if (isVariable(drive))
    return speeds.slice(1).map(({ slowestRpm }, index) => {
      const ends = fastestAllowed(speeds[index] as SpeedFinding, limits);
      return ends !== undefined && slowestRpm > ends && !nearlySame(slowestRpm, ends)
        ? { ratio: slowestRpm / ends, gap: true, overlap: false }
        : undefined;
    });
  const { ratios, gaps, overlaps } = spread(speeds.map(({ rpm }) => rpm));
  return ratios.map((ratio, index) => ({ ratio, gap: gaps.includes(index), overlap: overlaps.includes(index) }));
}

/** Where the spindle's names and speeds stand, and by what scale. */
type Room = {
  readonly y: (rpm: number) => number;
  readonly limits: Limits;
  readonly floor: number;
  readonly columns: Columns;
};

/** Name and speed of every position, pushed apart where they would touch, and between them the ratio of the two. */
function spindle(
  speeds: readonly SpeedFinding[],
  between: readonly (Between | undefined)[],
  left: number,
  { y, limits, floor, columns }: Room,
): Mark[] {
  const rising = [...speeds].reverse().map(({ rpm }) => y(rpm));
  const rows = apart(rising, ROW, top + 1, floor).reverse();
  const step = Math.min(...rows.slice(1).map((row, index) => (rows[index] ?? 0) - row), ROW);
  const em = step < size.text * leading ? size.source : size.text;
  const roomy = step >= LEAST_ROW;
  // Where there are too many, every other name, or fewer; the speed diagram lists them all.
  const every = Math.max(1, Math.ceil(LEAST_NAMED / step));
  return speeds.flatMap((speed, index): Mark[] => {
    const row = rows[index] ?? 0;
    // Where the ray ends, which no limit bends.
    const dot = circle(
      { x: left, y: y(speed.rpm) },
      1,
      heldByLimit(speed, limits) ? { fill: "white", pen: rowLine } : { fill: "black" },
    );
    if (index % every !== 0) return [dot];
    const base = row + em * 0.36;
    const at: Node = { x: left, y: y(speed.rpm) };
    const name = wrapText(speed.position.name, columns.name, em, "bold");
    const marks: Mark[] = [
      dot,
      line({ x: left + 1.2, y: at.y }, { x: left + 7, y: row }, axisLine),
      text(
        name.length > 1 ? shorter(`${name[0]}`, columns.name) : (name[0] ?? ""),
        { x: left + 8, y: base },
        { size: em, weight: "bold" },
      ),
      text(
        speedWords(speed, limits),
        { x: left + columns.speed, y: base },
        { size: em, anchor: "end", weight: "bold" },
      ),
      text(signOf(speed, limits), { x: left + columns.speed + 0.8, y: base }, { size: em, weight: "bold" }),
    ];
    const next = rows[index + 1];
    const told = between[index];
    if (next === undefined || told === undefined || !roomy) return marks;
    const { ratio, gap, overlap } = told;
    const bar = left + columns.ratio;
    return [
      ...marks,
      line({ x: bar, y: row - 0.5 }, { x: bar, y: next + 0.5 }, gap || overlap ? objectLine : axisLine),
      text(
        ratioWords(ratio, gap, overlap),
        { x: bar + 1, y: (row + next) / 2 + size.source * 0.36 },
        { size: size.source, weight: gap || overlap ? "bold" : "regular" },
      ),
    ];
  });
}

const ratioWords = (ratio: number, gap: boolean, overlap: boolean): string =>
  [`× ${formatFixed(ratio, 2)}`, ...(gap ? [say("speed tree.gap")] : overlap ? [say("speed tree.overlap")] : [])].join(
    " ",
  );

/** The preferred numbers as a scale of their own: R20 ticks, numbers where there is room. */
function series(left: number, y: (rpm: number) => number, least: number, most: number): Mark[] {
  const marks: Mark[] = [text("R20", { x: left, y: top - 3 }, { size: size.text, anchor: "middle", weight: "bold" })];
  let above = Number.POSITIVE_INFINITY;
  for (const rpm of preferredNumbers("R20", least / 1.06, most * 1.06)) {
    marks.push(line({ x: left - 2, y: y(rpm) }, { x: left, y: y(rpm) }, axisLine));
    if (y(rpm) > above - size.source * 1.15) continue;
    above = y(rpm);
    marks.push(
      text(
        formatFixed(rpm, rpm < 100 && rpm % 1 !== 0 ? 1 : 0),
        { x: left + 1, y: y(rpm) + size.source * 0.36 },
        { size: size.source },
      ),
    );
  }
  return [group({ x: 0, y: 0 }, marks, { name: "series" })];
}

function spreadWords(drive: Drive, speeds: readonly SpeedFinding[], limits: Limits): string {
  const rpms = speeds.map(({ rpm }) => rpm);
  const names = (index: number) =>
    say("speed tree.pair", {
      slower: speeds[index]?.position.name ?? "",
      faster: speeds[index + 1]?.position.name ?? "",
    });
  const told = between(drive, speeds, limits);
  const pairs = (which: "gap" | "overlap") => few(told.flatMap((one, index) => (one?.[which] ? [names(index)] : [])));
  const [gaps, overlaps] = [pairs("gap"), pairs("overlap")];
  const gapWords = gaps === "" ? [] : [say("speed tree.gaps", { pairs: gaps })];
  if (isVariable(drive)) {
    const ends = speeds.flatMap((speed) => fastestAllowed(speed, limits) ?? []);
    if (ends.length === 0) return "";
    const range = { slowest: formatFixed(speeds[0]?.slowestRpm ?? 0, 0), fastest: formatFixed(largestOf(ends), 0) };
    return [say(gaps === "" ? "speed tree.every speed" : "speed tree.variable", range), ...gapWords].join(" ");
  }
  if (rpms.length < 2) return say("speed tree.one speed");
  const { step } = spread(rpms);
  return [
    say("speed tree.even", {
      n: rpms.length,
      slowest: formatFixed(rpms[0] ?? 0, 0),
      fastest: formatFixed(rpms.at(-1) ?? 0, 0),
      step: formatFixed(step, 2),
      preferred: formatFixed(nearestPreferred("R40", step), 2),
    }),
    ...gapWords,
    ...(overlaps === "" ? [] : [say("speed tree.overlaps", { pairs: overlaps })]),
  ].join(" ");
}

const few = (names: readonly string[]): string =>
  names.length <= 3
    ? names.join("; ")
    : say("speed tree.and more", { names: names.slice(0, 3).join("; "), n: names.length - 3 });
