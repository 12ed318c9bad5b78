import { scaleLog } from "d3-scale";
import type { CuttingSpeed } from "../../cutting/finding.js";
import { findOperation, operationWords } from "../../cutting/operations.js";
import { cuttingSpeedUnit } from "../../cutting/rates.js";
import type { Mark } from "../../drawing/drawing.js";
import { group, line, polyline, rectangle, text } from "../../drawing/shapes.js";
import { textWidth } from "../../drawing/text.js";
import { nearestPreferred, preferredNumbers } from "../../drive/preferredNumbers.js";
import type { Findings } from "../../findings/findings.js";
import { heldByLimit } from "../../findings/limits.js";
import { bandFor } from "../../findings/speedChoice.js";
import { diametersFor } from "../../findings/uses.js";
import { formatFixed, trimmed } from "../../quantity/format.js";
import { mmPer } from "../../quantity/length.js";
import { block, type Run } from "../shared/block.js";
import { heightOf } from "../shared/runs.js";
import { heavy, medium, pen, size } from "../shared/style.js";
import { paragraph } from "../shared/table.js";
import { useHeading } from "../shared/useHeading.js";
import { bandNotes } from "./bandNotes.js";

/** Diameter against cutting speed, both by ratio: a line for every belt position, a band across for every material. */
export const speedDiagram = block(
  { operation: "turning", leave: 24 },
  ({ findings, settings, use, width, height }): Run[] => {
    if (findings.drive === undefined || diametersFor(settings.operation, findings.machine).length === 0) return [];
    const head = useHeading(findings.machine, use, width);
    const tall = Math.max(80, height - settings.leave - heightOf(head));
    const { work, units } = findings.machine;
    const notes = bandNotes(
      bandsOf(findings, settings.operation).map(({ band }) => band),
      work,
      units,
    );
    return [
      ...head,
      { drawing: { width, height: tall, marks: diagram(findings, settings.operation, width, tall) } },
      ...paragraph(notes.join(" "), width, { size: size.tiny, gap: 1 }),
    ];
  },
  { operation: operationWords },
);

/** Dashes by which bands are told apart without colour. */
const dashes: readonly (readonly number[] | undefined)[] = [
  undefined,
  [2.4, 1],
  [0.7, 0.7],
  [3, 0.8, 0.7, 0.8],
  [5, 1.5],
];

type Band = { readonly material: string; readonly least: number; readonly most: number };

/** Ranges that go by cutting speed, for a diameter in the middle of the file's. */
function bandsOf(findings: Findings, operation: string): { material: string; band: CuttingSpeed }[] {
  const diameters = diametersFor(operation, findings.machine);
  const { materials } = findings.machine.work;
  const usual = Math.sqrt(Math.min(...diameters) * Math.max(...diameters));
  return materials.flatMap((material) => {
    const band = bandFor({ operation, material, diameter: usual }, findings);
    return band === undefined || band.rpm ? [] : [{ material, band }];
  });
}

function diagram(findings: Findings, operation: string, width: number, height: number): Mark[] {
  const { machine, drive } = findings;
  const { units, limits } = machine;
  const speedUnit = cuttingSpeedUnit[units];
  const bands = merged(
    bandsOf(findings, operation).map(({ material, band }) => ({
      material,
      least: band.slowest / speedUnit.metresPerMinute,
      most: band.most / speedUnit.metresPerMinute,
    })),
  );
  const unit = mmPer[units];
  const across = around(
    diametersFor(operation, findings.machine).map((mm) => mm / unit),
    1.25,
  );
  const speeds = (drive?.speeds ?? []).filter(({ from }) => from !== "unknown");
  const up = around(bands.length > 0 ? bands.flatMap(({ least, most }) => [least, most]) : [10, 100], 1.25);
  const bar = Math.min(6, 36 / Math.max(1, bands.length));
  const box = { left: 13, right: width - bands.length * (bar + 0.6) - 3, top: 7, bottom: height - 12 };
  const x = scaleLog().domain(across).range([box.left, box.right]);
  const y = scaleLog().domain(up).range([box.bottom, box.top]);
  const marks: Mark[] = [];

  marks.push(group({ x: 0, y: 0 }, grid(x, y, across, up, box), { name: "grid" }));
  const barLeft = (index: number) => box.right + 1.2 + index * (bar + 0.6);
  for (const [index, band] of bands.entries()) {
    const edge = pen(0.18, "black", dashes[index % dashes.length]);
    for (const v of band.least === band.most ? [band.most] : [band.least, band.most])
      marks.push(line({ x: box.left, y: y(v) }, { x: barLeft(index) + bar, y: y(v) }, edge));
  }
  // Bars over all edges: another material's edge must not cross a bar.
  for (const [index, band] of bands.entries()) {
    const left = barLeft(index);
    const high = Math.max(0.4, y(band.least) - y(band.most));
    marks.push(rectangle({ x: left, y: y(band.most) }, bar, high, { pen: medium, fill: "white" }));
    marks.push(...barName(band.material, left + bar / 2, y(band.most), high, box.top));
  }
  const lines = speeds.flatMap((speed) => {
    const { position, rpm, slowestRpm } = speed;
    return [
      ...(slowestRpm < rpm * 0.999
        ? [{ name: `${position.name} slowest`, rpm: slowestRpm, held: heldByLimit(speed, limits) === "wholly" }]
        : []),
      { name: position.name, rpm, held: heldByLimit(speed, limits) !== undefined },
    ];
  });
  const drawn = sharing(lines);
  const crowded = drawn.length > 12;
  const names: Mark[] = [];
  let place = 0;
  let lastRpm = 0;
  for (const { name, rpm, held } of drawn) {
    const ends = clipped(rpm, across, up, (unit * Math.PI) / 1000 / speedUnit.metresPerMinute);
    if (ends === undefined) continue;
    const [from, to] = ends.map(({ d, v }) => ({ x: x(d), y: y(v) }));
    if (from === undefined || to === undefined) continue;
    const stroke = held ? pen(0.25, "black", [1.2, 1.2]) : crowded ? pen(0.3) : heavy;
    marks.push(group({ x: 0, y: 0 }, [line(from, to, stroke)], { name: "position" }));
    // Labels of lines that run close together stand one behind the other.
    place = lastRpm > 0 && rpm / lastRpm < 1.18 ? (place + 1) % 4 : 0;
    lastRpm = rpm;
    names.push(...lineName(`${name}  ${formatFixed(rpm, 0)}${held ? ", beyond the limit" : ""}`, from, to, place));
  }
  marks.push(...names);
  marks.push(rectangle({ x: box.left, y: box.top }, box.right - box.left, box.bottom - box.top, { pen: medium }));
  const below = box.bottom + 9;
  marks.push(
    text(
      `${findOperation(operation)?.diameter ?? "diameter"}, ${units}`,
      { x: (box.left + box.right) / 2, y: below },
      { size: size.body, anchor: "middle", weight: "bold" },
    ),
    text(
      `cutting speed, ${speedUnit.name}`,
      { x: 2.4, y: (box.top + box.bottom) / 2 },
      { size: size.body, anchor: "middle", weight: "bold", turn: -Math.PI / 2 },
    ),
  );
  return marks;
}

type Line = { readonly name: string; readonly rpm: number; readonly held: boolean };

/** Slowest first. Positions of one and the same speed share a line. */
function sharing(lines: readonly Line[]): Line[] {
  const found: Line[] = [];
  for (const one of [...lines].sort((a, b) => a.rpm - b.rpm)) {
    const before = found.at(-1);
    if (before !== undefined && before.held === one.held && one.rpm / before.rpm < 1.001)
      found[found.length - 1] = { ...before, name: `${before.name}, ${one.name}` };
    else found.push(one);
  }
  return found;
}

/** Materials of one and the same band share a bar. */
function merged(bands: readonly Band[]): Band[] {
  const found = new Map<string, Band>();
  for (const band of bands) {
    const key = `${band.least} ${band.most}`;
    const known = found.get(key);
    found.set(key, known === undefined ? band : { ...known, material: `${known.material}, ${band.material}` });
  }
  return [...found.values()];
}

type Scale = (value: number) => number;
type Range = [number, number];
type Spot = { readonly x: number; readonly y: number };

/** A little more than the values span, from one preferred number to another, and no less than half a decade. */
function around(values: readonly number[], more: number): Range {
  let [least, most] = [Math.min(...values) / more, Math.max(...values) * more];
  const wider = Math.sqrt(Math.max(1, 3.2 / (most / least)));
  [least, most] = [least / wider, most * wider];
  return [nearestPreferred("R10", least), nearestPreferred("R10", most)];
}

/** Lines at R20, numbers at R10 where they do not crowd. */
function grid(
  x: Scale,
  y: Scale,
  across: Range,
  up: Range,
  box: { left: number; right: number; top: number; bottom: number },
): Mark[] {
  const numbered = (range: Range) => preferredNumbers("R10", range[0], range[1]);
  const stroke = (value: number, range: Range) =>
    isDecade(value) ? medium : numbered(range).includes(value) ? pen(0.13, "grey") : pen(0.07, "grey");
  const marks: Mark[] = [];
  for (const d of preferredNumbers("R20", ...across))
    marks.push(line({ x: x(d), y: box.top }, { x: x(d), y: box.bottom }, stroke(d, across)));
  for (const v of preferredNumbers("R20", ...up))
    marks.push(line({ x: box.left, y: y(v) }, { x: box.right, y: y(v) }, stroke(v, up)));
  let right = Number.NEGATIVE_INFINITY;
  for (const d of numbered(across)) {
    const label = trimmed(d, 4);
    const half = textWidth(label, size.small, "regular") / 2;
    if (x(d) - half < right + 1) continue;
    right = x(d) + half;
    marks.push(text(label, { x: x(d), y: box.bottom + 3.6 }, { size: size.small, anchor: "middle" }));
  }
  let above = Number.POSITIVE_INFINITY;
  for (const v of numbered(up)) {
    if (y(v) > above - size.small * 1.1) continue;
    above = y(v);
    marks.push(
      text(trimmed(v, 3), { x: box.left - 1.2, y: y(v) + size.small * 0.36 }, { size: size.small, anchor: "end" }),
    );
  }
  return marks;
}

const isDecade = (value: number): boolean => Math.abs(Math.log10(value) - Math.round(Math.log10(value))) < 1e-9;

/** Where v = `share` · d · n leaves the box, both ends, in the units of its scales. Undefined where it misses the box. */
function clipped(rpm: number, across: Range, up: Range, share: number): { d: number; v: number }[] | undefined {
  const speed = (d: number) => share * d * rpm;
  const diameter = (v: number) => v / (share * rpm);
  const from = Math.max(across[0], diameter(up[0]));
  const to = Math.min(across[1], diameter(up[1]));
  if (!(to > from * 1.02)) return undefined;
  return [from, to].map((d) => ({ d, v: speed(d) }));
}

/** Along the line, above it, near its upper end. */
function lineName(words: string, from: Spot, to: Spot, place: number): Mark[] {
  const long = Math.hypot(to.x - from.x, to.y - from.y);
  const width = textWidth(words, size.small, "bold");
  if (long < width + 4)
    return [text(words, { x: from.x - 1.5, y: from.y - 1 }, { size: size.small, weight: "bold", anchor: "end" })];
  const back = Math.min(2.5 + place * (width + 4), long - width - 1);
  const along = (share: number): Spot => ({ x: to.x + (from.x - to.x) * share, y: to.y + (from.y - to.y) * share });
  const turn = Math.atan2(to.y - from.y, to.x - from.x);
  const at = along((back + width) / long);
  const lift = 0.9;
  const above = (spot: Spot, high: number): Spot => ({
    x: spot.x + Math.sin(turn) * high,
    y: spot.y - Math.cos(turn) * high,
  });
  const end = along(back / long);
  // White under the words, so that a neighbouring line does not strike them out.
  const ground = [above(at, 0.4), above(end, 0.4), above(end, 2.6), above(at, 2.6)];
  return [
    polyline(ground, { fill: "white" }, true),
    text(words, above(at, lift), { size: size.small, weight: "bold", turn }),
  ];
}

/** Inside the bar where it fits, else beside its upper end. */
function barName(name: string, middle: number, top: number, high: number, roof: number): Mark[] {
  const long = textWidth(name, size.small, "regular");
  const turn = -Math.PI / 2;
  const style = { size: size.small, turn } as const;
  const x = middle + size.small * 0.36;
  if (long + 2 <= high) return [text(name, { x, y: top + high / 2 }, { ...style, anchor: "middle" })];
  // White under the words, as edges of other bands pass there.
  const outside = (upper: number, at: number, anchor: "start" | "end") => [
    rectangle({ x: middle - size.small * 0.6, y: upper }, size.small * 1.2, long, { fill: "white" }),
    text(name, { x, y: at }, { ...style, anchor }),
  ];
  if (top - 1 - long >= roof - 6) return outside(top - 1 - long, top - 1, "start");
  return outside(top + high + 1, top + high + 1, "end");
}
