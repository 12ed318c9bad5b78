import { type DrillSystem, drillSizes, drillSystems } from "../../cutting/drillSizes.js";
import { coolant, materialName } from "../../cutting/materials.js";
import { findOperation, isThreaded, operationName, operationWords } from "../../cutting/operations.js";
import { fastestThreadedRpm, handReversesRpm } from "../../cutting/powerTapping.js";
import { toolName } from "../../cutting/tools.js";
import type { Drawing } from "../../drawing/drawing.js";
import { group, text } from "../../drawing/shapes.js";
import { textWidth, wrapText } from "../../drawing/text.js";
import { rpmWords } from "../../drive/rpmWords.js";
import { byHandOnly, drillsOf, largestDrill } from "../../findings/drills.js";
import type { Findings } from "../../findings/findings.js";
import { sameSpeed, withoutNearlyAlike } from "../../findings/nearlyAlike.js";
import { powerOff } from "../../findings/powerOff.js";
import { largestDiameter, servedDiameters } from "../../findings/servedDiameters.js";
import { sizeName } from "../../findings/sizeName.js";
import { speedDoubt } from "../../findings/speedDoubt.js";
import { usualThreads } from "../../findings/usualThreads.js";
import type { Machine } from "../../machine/machine.js";
import { capital, formatFixed, sizeFigure, unitName } from "../../quantity/format.js";
import { say } from "../../words/say.js";
import { block, type Run } from "../shared/block.js";
import { paragraph } from "../shared/paragraph.js";
import { accompanying, heading, heightOf, lowered, together, whole } from "../shared/runs.js";
import { LONG_POSITION, signedBeyond } from "../shared/stepSigns.js";
import { leading, size } from "../shared/style.js";
import { bandNotes, bandText } from "./bandNotes.js";
import { type Axis, axisDrawing, axisOf, type Sized } from "./barAxis.js";
import { barDrawing, cutsShown, disc, discRadius, type Keys, keysOf } from "./barDrawing.js";
import { type Bar, barOf, signOf } from "./barPieces.js";

/** A bar for each material over the diameters of the drills, cut where the belt changes, for each operation in turn. `sizes`: the file's
 *  drills, or where it names none those of its unit (work); those of its unit (drills: metric, or fractions of an inch); or one
 *  system of drills; from `least` to `most` mm. A tap's are its threads. What goes by hand alone is said in one line. */
export const drillBars = block(
  { operations: ["drilling"], sizes: "work", least: 1, most: 13, coolant: false },
  ({ findings: plain, settings, width, height }): Run[] => {
    const { findings: all, key } = signedBeyond(plain, LONG_POSITION);
    const { machine, drive } = all;
    if (drive === undefined) return [];
    // Of speeds that are nearly one, two would leave a sliver of a bar.
    const { findings, alike, covered } = withoutNearlyAlike(all);
    const asked = settings.operations.map((word) => findOperation(word)?.name ?? word);
    const byHand = asked.filter((operation) => byHandOnly(operation, machine));
    const tooFast = asked.filter((operation) => !byHand.includes(operation) && tooFastToReverse(operation, findings));
    const doubt = speedDoubt(findings).flatMap((line) => paragraph(line, width, { weight: "bold", gap: 0.5 }));
    const powered = asked.filter((operation) => ![...byHand, ...tooFast].includes(operation));
    const drawn = powered.flatMap((operation, index) =>
      lowered(
        whole(
          section(
            { ...settings, operation, first: index === 0, key },
            findings,
            index === 0 ? doubt : [],
            width,
            height,
          ),
          height,
        ),
        index === 0 ? 0 : 5,
      ),
    );
    const namesOf = (operations: readonly string[]) => operations.map(operationName).join(", ");
    const told = [
      ...(byHand.length === 0
        ? []
        : [say("drilling card.by hand", { off: powerOff(machine), operations: namesOf(byHand) })]),
      ...(tooFast.length === 0
        ? []
        : [say("drilling card.by hand, too fast", { off: powerOff(machine), operations: namesOf(tooFast) })]),
    ];
    const positions = sameSpeed(alike)
      .map((own) => own.map(({ position }) => position.name).join(" / "))
      .join(", ");
    const others = covered.map(({ position }) => position.name).join(", ");
    const omitted = [
      ...(alike.length === 0 ? [] : [say("belt card.omitted", { positions })]),
      ...(covered.length === 0 ? [] : [say("belt card.covered", { positions: others })]),
    ];
    return [
      ...drawn,
      ...(omitted.length === 0 || drawn.length === 0
        ? []
        : accompanying(together(paragraph(omitted.join(" "), width, { gap: 1.4 })))),
      ...told.flatMap((words) => accompanying(together(paragraph(words, width, { weight: "bold", gap: 2.5 })))),
    ];
  },
  { operations: operationWords, sizes: ["work", "drills", ...drillSystems] },
);

type Settings = {
  readonly operation: string;
  readonly sizes: string;
  readonly least: number;
  readonly most: number;
  readonly coolant: boolean;
  /** What signs in the names of positions stand for. */
  readonly key: string;
  /** Says what holds for the others too. */
  readonly first: boolean;
};

/** Of a page's height. */
const MOST_KEYS = 0.3;

/** Of a tap or a die: no position is slow enough for any material of which something is known. */
function tooFastToReverse(operation: string, findings: Findings): boolean {
  const { machine, drive } = findings;
  if (!isThreaded(operation) || drive?.astray) return false;
  const served = machine.work.materials.flatMap((material) => servedDiameters(material, operation, findings) ?? []);
  return served.length > 0 && served.every(({ speed }) => speed === undefined);
}

/** `doubt`: what is to be known of the speeds before one trusts them. */
function section(settings: Settings, findings: Findings, doubt: readonly Run[], width: number, height: number): Run[] {
  const { machine, drive } = findings;
  const { operation } = settings;
  const { tool, materials } = machine.work;
  const unit = unitName(machine.units);
  const title = isThreaded(operation)
    ? say("drilling card.by thread", { operation: capital(operationName(operation)), tool: toolName(tool) })
    : say("drilling card.by diameter", { operation: capital(operationName(operation)), tool: toolName(tool), unit });
  const head = [...heading(title, width, 0), ...doubt.map((run) => ({ ...run, keepWithNext: true }))];
  const told = (words: string) => paragraph(words, width, { weight: "bold", gap: 0.5 });
  // Bars of nothing would hide why.
  if (drive?.astray) return [...head, ...told(say("drilling card.no speed"))];
  const most = largestDiameter(operation, findings);
  const sizes = sizesOf(settings, machine).filter(({ diameter }) => diameter <= most + 1e-9);
  if (sizes.length === 0) return [...head, ...told(say("drilling card.no drills"))];
  const axis = axisOf(sizes, most, width);
  const found = [...new Set(materials)].map((material) => ({
    material,
    bar: barOf(material, operation, axis, findings),
  }));
  const bars = found.flatMap(({ bar }) => bar ?? []);
  const without = found.filter(({ bar }) => bar === undefined).map(({ material }) => materialName(material));
  const lacking =
    without.length === 0
      ? []
      : paragraph(say("drilling card.no figures", { materials: without.join(", ") }), width, { gap: 1.5 });
  if (bars.length === 0) return [...head, ...lacking];
  const labels = machine.drive?.stages.flatMap(({ steps }) => steps.map(({ label }) => label)) ?? [];
  const keys = keysOf(bars, axis, labels);
  const list = [...paragraph(settings.key, width, { gap: 0.6 }), ...keyList(keys, findings, width)];
  // At the head of every page, unless that would leave little of it for the bars.
  const repeated = heightOf(list) <= MOST_KEYS * height;
  const top = stacked(repeated ? list : [], axisDrawing(axis));
  const apart = repeated ? [] : list;
  const runs: Run[] = bars.map((bar, index) => ({
    drawing: barDrawing(bar, aboutOf(bar, settings, machine), axis, keys),
    gap: index === 0 ? 1 : 1.6,
    ...(index > 0 && { heading: top }),
  }));
  const notes = [
    ...bandNotes(
      bars.flatMap(({ band }) => band ?? []),
      machine.work,
      machine.units,
    ),
  ].join(" ");
  return keepNotes(
    [
      ...head,
      ...apart,
      { drawing: top, gap: 0.6, keepWithNext: true },
      ...runs,
      ...accompanying([
        ...lacking,
        ...paragraph(signWords(bars, axis, settings).join(" "), width, { gap: 1.4 }),
        ...paragraph(notes, width, { size: size.source, gap: 0.8 }),
      ]),
    ],
    head.length + apart.length + 1 + runs.length,
    height,
  );
}

/** Words under the bars do not stand on a page without one. */
const keepNotes = (runs: readonly Run[], from: number, height: number): Run[] => {
  const notes = runs.slice(from);
  const tall = notes.reduce((sum, { drawing, gap = 0 }) => sum + gap + drawing.height, 0);
  if (tall > height / 2) return [...runs];
  return runs.map((run, index) =>
    index >= from - 1 && index < runs.length - 1 ? { ...run, keepWithNext: true } : run,
  );
};

function aboutOf({ material, band }: Bar, settings: Settings, { units }: Machine): string {
  const wet = settings.coolant ? coolant(material)?.words : undefined;
  return [...(band ? [bandText(band, units)] : []), ...(wet === undefined ? [] : [wet])].join(" · ");
}

/** What the bars' signs mean: those that there are. */
function signWords(bars: readonly Bar[], axis: Axis, settings: Settings): string[] {
  const pieces = bars.flatMap((bar) => bar.pieces);
  const has = (sign: string) => pieces.some((piece) => piece.sign === sign);
  const cuts = cutsShown(bars, axis);
  const cautions =
    settings.coolant && settings.first ? bars.flatMap(({ material }) => coolant(material)?.caution ?? []) : [];
  return [
    ...(cuts.any ? [say(cuts.withSizes ? "drilling card.sizes at a cut" : "drilling card.at a cut")] : []),
    ...(cuts.any ? [say("drilling card.on a cut")] : []),
    ...(cuts.without ? [say("drilling card.cut alone")] : []),
    ...(bars.some(({ set }) => set) ? [say("drilling card.set")] : []),
    ...(has("~") ? [say("drilling card.by ratio")] : []),
    ...(has("!") ? [say("drilling card.measure first")] : []),
    ...(has("?") ? [say("drilling card.reading doubtful")] : []),
    ...(pieces.some(({ none }) => none === "too fast") ? [say("drilling card.black")] : []),
    ...(bars.some(({ slow }) => slow) && axis.sizes.length > 1 ? [say("drilling card.more speed")] : []),
    ...new Set(cautions),
    ...(settings.operation === "tapping" ? tapWords(bars) : []),
  ];
}

/** A hand that must reverse in time is told of where a bar is held to it: the file's own speeds are not. */
function tapWords(bars: readonly Bar[]): string[] {
  const bands = bars.flatMap(({ band }) => band ?? []);
  const held = bands.filter((band) => Number.isFinite(fastestThreadedRpm(band)));
  return [
    say("drilling card.tap stop"),
    ...(held.length === 0 ? [] : [say("drilling card.tap reversed", { rpm: formatFixed(handReversesRpm, 0) })]),
    ...(held.length === 0 || held.length === bands.length ? [] : [say("drilling card.tap by own speed")]),
  ];
}

function sizesOf({ operation, sizes, least, most }: Settings, machine: Machine): Sized[] {
  const { units, work } = machine;
  if (isThreaded(operation)) return usualThreads(units);
  if (sizes === "work" && work.drills !== undefined)
    return drillsOf(machine).map((diameter) => {
      const name = sizeName(operation, diameter, machine);
      return { name, diameter, owned: true, ...(!isNumber(name) && { decimals: decimalsOf(diameter, machine) }) };
    });
  const own: DrillSystem = units === "mm" ? "metric" : "fraction";
  const system = drillSystems.find((one) => one === sizes) ?? own;
  return drillSizes(system, least, Math.min(most, largestDrill(machine.limits))).map(({ name, diameter }) => ({
    name,
    diameter,
    // Metric drills are called by their millimetres.
    ...((system !== "metric" || units !== "mm") && { decimals: decimalsOf(diameter, machine) }),
  }));
}

const decimalsOf = (diameter: number, { units }: Machine): string =>
  sizeFigure(diameter, units, units === "mm" ? 2 : 3);
const isNumber = (words: string): boolean => /^[\d.,]+$/.test(words);

/** Each sign with the speed and the name that it stands for, in columns: a run for each row. */
function keyList(keys: Keys, { drive, machine }: Findings, width: number): Run[] {
  const entries = [...keys].map(([name, sign]) => {
    const speed = drive?.speeds.find(({ position }) => (position.name || say("drilling card.only position")) === name);
    return {
      sign,
      words: speed === undefined ? name : `${name}  ${rpmWords(speed)}${signOf(speed, machine.limits)}`,
    };
  });
  if (entries.length === 0) return [];
  const left = 2 * discRadius + 1.2;
  const gap = 5;
  const widest = Math.max(...entries.map(({ words }) => textWidth(words, size.text, "regular"))) + left + 0.1;
  const columns = Math.max(1, Math.min(entries.length, Math.floor((width + gap) / (widest + gap))));
  const room = Math.min(widest, width) - left;
  const step = size.text * leading;
  return Array.from({ length: Math.ceil(entries.length / columns) }, (_, row): Run => {
    const cells = entries.slice(row * columns, (row + 1) * columns).map(({ sign, words }) => ({
      sign,
      lines: wrapText(words, room, size.text, "regular"),
    }));
    const height = Math.max(2 * discRadius + 0.5, ...cells.map(({ lines }) => lines.length * step + 0.6));
    const marks = cells.map(({ sign, lines }, column) =>
      group({ x: column * (widest + gap), y: 0 }, [
        ...disc(sign, { x: discRadius, y: discRadius }),
        ...lines.map((part, line) =>
          text(part, { x: left, y: discRadius + size.text * 0.36 + line * step }, { size: size.text }),
        ),
      ]),
    );
    return { drawing: { width, height, marks }, gap: row === 0 ? 0.6 : 0 };
  });
}

/** One below the other. */
function stacked(runs: readonly Run[], below: Drawing): Drawing {
  let y = 0;
  const marks = [...runs, { drawing: below }].map(({ drawing }) => {
    const mark = group({ x: 0, y }, drawing.marks);
    y += drawing.height;
    return mark;
  });
  return { width: below.width, height: y, marks };
}
