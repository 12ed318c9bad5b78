import { scaleLog } from "d3-scale";
import type { CuttingSpeed } from "../../cutting/finding.js";
import { hazardOf } from "../../cutting/hazards.js";
import { materialName } from "../../cutting/materials.js";
import { BY_USE, operationChoices } from "../../cutting/operations.js";
import { cuttingSpeedUnit, metresPerMinuteAt } from "../../cutting/rates.js";
import type { Drawing, Mark, Point } from "../../drawing/drawing.js";
import { circle, group, rectangle, text } from "../../drawing/shapes.js";
import { textWidth } from "../../drawing/text.js";
import { rpmWords } from "../../drive/rpmWords.js";
import { coveredPositions } from "../../findings/coveredPositions.js";
import { diametersFor, makesHoles } from "../../findings/drills.js";
import type { Findings } from "../../findings/findings.js";
import { sizeWords } from "../../findings/sizeName.js";
import { bandFor, speedFor } from "../../findings/speedChoice.js";
import { largestOf, smallestOf } from "../../quantity/extremes.js";
import { formatFixed, unitName } from "../../quantity/format.js";
import { grouped } from "../../quantity/grouped.js";
import { mmPer } from "../../quantity/length.js";
import { say } from "../../words/say.js";
import { block, type Run } from "../shared/block.js";
import { paragraph } from "../shared/paragraph.js";
import { heightOf, together } from "../shared/runs.js";
import { shortened } from "../shared/shortened.js";
import { signedBeyond } from "../shared/stepSigns.js";
import { objectLine, size } from "../shared/style.js";
import { table } from "../shared/table.js";
import { useHeading } from "../shared/useHeading.js";
import { bandNotes } from "./bandNotes.js";
import { barlessWords } from "./barless.js";
import { hasFigures } from "./beltCard.js";
import { type Band, bandMarks, barWidth, cutNames } from "./diagramBands.js";
import {
  type Box,
  isLower,
  joinMarks,
  labelRoom,
  lineMarks,
  type SpeedLine,
  spanOf,
  speedLines,
} from "./diagramLines.js";
import { around, grid } from "./diagramScales.js";

/** Narrower paper has the list of speeds below the diagram, unless it takes no more than this share of the width. */
const WIDE = 220;
const SHARE = 0.25;
const listWide = 62;
/** Of the list, for the speeds. */
const speedsWide = 16;
/** Left of the bars: the numbers of the scale and what it is of. */
const numbersWide = 15;

/** Diameter against cutting speed, both by ratio: a line for every speed, a bar for every material, one example drawn. More materials
 *  than one is read with have several, the slow ones first. `leave`: kept free below it for what follows. */
export const speedDiagram = block(
  { operation: BY_USE as string, leave: 16 },
  ({ findings: plain, settings, use, width, height }): Run[] => {
    const { findings, key } = signedBeyond(plain, listWide - speedsWide);
    const { machine, drive } = findings;
    const { operation } = settings;
    if (drive === undefined || diametersFor(operation, machine).length === 0) return [];
    const head = useHeading(machine, use, width);
    const bands = bandsOf(findings, operation);
    const lines = speedLines(drive.speeds, machine.limits);
    const variable = lines.some(({ other }) => other !== undefined);
    const covered = coveredPositions(drive.speeds, machine.limits).map(({ position }) => position.name);
    const groups = inGroups(bands, Math.floor((MOST_BARS * width) / barWidth));
    const without = barless(findings, operation);
    const drawn = groups.map((some) => drawingOf(findings, operation, lines, some));
    const shown = new Set(drawn.flatMap(({ inSight }) => inSight));
    const unseen = lines.filter((line) => !shown.has(line)).map(({ rpm }) => formatFixed(rpm, 0));
    const notes = bandNotes(
      bands.map(({ band }) => band),
      machine.work,
      machine.units,
    );
    // What is said of diagrams whose page has no room for it, and whether that tells of a limit.
    const later = { examples: [] as string[], held: false, turnedDown: false };
    return drawn.flatMap(({ draw, example, inSight }, at) => {
      const listed = drawn.length === 1 || variable ? lines : inSight;
      const last = at === drawn.length - 1;
      const said = (words: string, names: readonly string[], gap = 2) =>
        names.length === 0 ? [] : paragraph(words, width, { gap });
      const held = listed.some((line) => line.held);
      const turnedDown = listed.some((line) => line.turnedDown);
      const below = ({ cut, left }: Unshown) => [
        ...paragraph(key, width, { gap: 2 }),
        ...said(say("speed diagram.in full", { names: cut.join("; ") }), cut),
        ...said(say("speed diagram.lines left", { speeds: left.join(", ") }), left),
        ...(last ? said(say("speed diagram.out of sight", { speeds: unseen.join(", ") }), unseen) : []),
        ...(last ? said(without.join(" "), without) : []),
        ...(held || (last && later.held) ? paragraph(say("hand feed.beyond"), width, { gap: 2 }) : []),
        ...(turnedDown || (last && later.turnedDown)
          ? paragraph(say("hand feed.turn no higher"), width, { gap: 2 })
          : []),
        ...said(say("belt card.covered", { positions: covered.join(", ") }), covered),
        ...paragraph(say(variable ? "speed diagram.how to read, variable" : "speed diagram.how to read"), width, {
          gap: 2,
        }),
        ...[...(last ? later.examples : []), ...(example === undefined ? [] : [example.words])].flatMap((words) =>
          paragraph(words, width, { gap: 0.6 }),
        ),
        ...(last ? paragraph(notes.join(" "), width, { size: size.source, gap: 1 }) : []),
      ];
      const alone = height - heightOf(head) - 2;
      const drawnWith = (unshown: Unshown) => {
        const words = heightOf(below(unshown));
        const free = last ? settings.leave : 0;
        const { tall, beside, list } = placed(listed, width, alone, alone + 2 - free - words, words);
        const plot = { width: beside === 0 ? width : width - beside - 6, height: tall };
        return { tall, beside, list, ...draw(plot) };
      };
      // What is told below takes of the diagram's height, so that there is room for fewer names and lines in it yet.
      let told: Unshown = { cut: [], left: [] };
      let made = drawnWith(told);
      while (countOf(made) > countOf(told)) {
        told = made;
        made = drawnWith(told);
      }
      const { tall, beside, list, marks: plot } = made;
      const marks = beside === 0 ? plot : [...plot, group({ x: width - beside, y: 0 }, stacked(list))];
      const first: Run = { drawing: { width, height: tall, marks }, ...(at > 0 && { startsPage: "always" as const }) };
      // Without the list a speed names no belt.
      const withList = beside === 0 ? [first, ...list] : [first];
      const own = beside === 0 ? tall + listHeight(list) : tall;
      const words = below(made);
      // A few lines that hold for all of them would have a page of their own before the next diagram.
      const apart = !last && countOf(made) === 0 && own + heightOf(words) > alone + 2;
      if (apart) {
        if (example !== undefined) later.examples.push(example.words);
        later.held ||= held;
        later.turnedDown ||= turnedDown;
      }
      const onOne = tall + listHeight(list) <= alone + 1e-9;
      return [...(at === 0 ? head : []), ...(onOne ? together(withList) : withList), ...(apart ? [] : words)];
    });
  },
  { operation: operationChoices },
);

/** Names that it shows in part, and speeds for which it has no room. */
type Unshown = { readonly cut: readonly string[]; readonly left: readonly string[] };
const countOf = ({ cut, left }: Unshown): number => cut.length + left.length;

/** Of the diagram's width, for the bars. */
const MOST_BARS = 0.3;
/** Bars that are still told apart on one diagram. */
const MOST_TOGETHER = 8;

type Banded = { readonly material: string; readonly band: CuttingSpeed };

/** As they stand in the file where one diagram holds so many; else by speed, evenly over as many diagrams as that takes. */
function inGroups(bands: readonly Banded[], most: number): (readonly Banded[])[] {
  const bars = asBars(bands);
  const diagrams = Math.ceil(bars.length / Math.max(5, Math.min(MOST_TOGETHER, most)));
  if (diagrams <= 1) return [bands];
  const middle = ([first]: readonly Banded[]) => (first === undefined ? 0 : first.band.slowest * first.band.most);
  const sorted = [...bars].sort((a, b) => middle(a) - middle(b));
  return Array.from({ length: diagrams }, (_, at) =>
    sorted.slice(Math.round((at * bars.length) / diagrams), Math.round(((at + 1) * bars.length) / diagrams)).flat(),
  );
}

/** Lower than this a diagram is not read off, mm. */
const LOWEST = 52;

/** How high the diagram is, and the list beside it, so wide, or below it (0). `alone`, `room`: what the page has for both without the
 *  words below and with them, mm. */
function placed(
  lines: readonly SpeedLine[],
  width: number,
  alone: number,
  room: number,
  words: number,
): { readonly tall: number; readonly beside: number; readonly list: readonly Run[] } {
  const longest = largestOf(lines.map((one) => textWidth(signedName(one), size.text, "regular")));
  const speeds = Math.max(speedsWide, 4 + largestOf(lines.map((one) => textWidth(spanWords(one), size.text, "bold"))));
  const own = width < WIDE ? Math.min(listWide, Math.max(LEAST_LIST, speeds + longest + 2)) : listWide;
  const narrow = listOf(lines, own, false);
  const mayStandBeside = width >= WIDE || own <= SHARE * width;
  const beside = (tall: number) => ({ tall, beside: own, list: narrow });
  const list = listOf(lines, width, true);
  const below = (tall: number) => ({ tall, beside: 0, list });
  // Of a diagram that is higher than wide the lines would stand too close to say their speeds.
  const tooNarrow = width < WIDE && width - own < room && room - listHeight(list) >= LOWEST;
  if (mayStandBeside && !tooNarrow && room >= LOWEST && heightOf(narrow) <= room) return beside(room);
  if (room - listHeight(list) >= LOWEST) return below(room - listHeight(list));
  // Words that fill a page of their own leave this one to diagram and list; of fewer the list keeps them company.
  if (mayStandBeside && words >= OWN_PAGE * alone && heightOf(narrow) <= alone) return beside(alone);
  // The list keeps the diagram company, which is read off by it; on the lowest paper list and words have the next page.
  const left = alone - listHeight(list);
  return below(left < LOWEST && words + listHeight(list) >= OWN_PAGE * alone ? alone : Math.max(LOWEST, left));
}

/** Of a page, for words without the list. */
const OWN_PAGE = 0.4;
/** For its headings, mm. */
const LEAST_LIST = 30;

/** Of a list in its columns with the heading over them, mm. */
function listHeight(list: readonly Run[]): number {
  const columns = list[0]?.list?.columns ?? 1;
  const deep = Math.ceil(list.length / columns);
  // The first row has it drawn over it, the first of each column after it gets its own.
  const tall = Array.from({ length: columns }, (_, column) => {
    const rows = list.slice(column * deep, (column + 1) * deep);
    return heightOf(rows) + (column === 0 ? 0 : (rows[0]?.heading?.height ?? 0));
  });
  return largestOf(tall);
}

const spanWords = ({ rpm, other }: SpeedLine): string => rpmWords({ rpm, slowestRpm: other ?? rpm });
const signedName = ({ name, held, turnedDown }: SpeedLine): string =>
  held ? `${name} ×` : turnedDown ? `${name} ${say("hand feed.max")}` : name;

/** Speeds and their positions, fastest first. */
function listOf(lines: readonly SpeedLine[], width: number, list: boolean): Run[] {
  return table(
    [
      { heading: [say("speed diagram.rpm")], align: "end", key: true },
      { heading: [say("speed diagram.position")], align: "start" },
    ],
    [...lines]
      .reverse()
      .filter((one) => !isLower(one))
      .map((one) => [{ text: spanWords(one), weight: "bold" as const }, { text: signedName(one) }]),
    { width, list },
  );
}

function stacked(runs: readonly Run[]): Mark[] {
  let y = 0;
  return runs.map(({ drawing, gap = 0 }, index) => {
    y += index === 0 ? 0 : gap;
    const mark = group({ x: 0, y }, drawing.marks);
    y += drawing.height;
    return mark;
  });
}

/** Ranges that go by cutting speed, for a diameter in the middle of the file's. */
function bandsOf(findings: Findings, operation: string): Banded[] {
  const diameters = diametersFor(operation, findings.machine);
  const { materials } = findings.machine.work;
  const usual = Math.sqrt(smallestOf(diameters) * largestOf(diameters));
  return materials.flatMap((material) => {
    const band = bandFor({ operation, material, diameter: usual }, findings);
    return band === undefined || band.rpm ? [] : [{ material, band }];
  });
}

/** A sentence for each reason why materials of the file have no bar. */
function barless(findings: Findings, operation: string): string[] {
  const shown = new Set(bandsOf(findings, operation).map(({ material }) => material));
  const others = [...new Set(findings.machine.work.materials)].filter((material) => !shown.has(material));
  const known = others.flatMap((material) => barlessWords(material, operation, findings) ?? []);
  const unknown = others.filter((material) => !hasFigures(material, operation, findings));
  const hazardous = (material: string) => hazardOf(material) !== undefined;
  const said = (materials: readonly string[], words: (names: { materials: string }) => string) =>
    materials.length === 0 ? [] : [words({ materials: materials.map(materialName).join(", ") })];
  return [
    ...(known.length === 0 ? [] : [say("speed diagram.no bar", { materials: known.join("; ") })]),
    ...said(
      unknown.filter((material) => !hazardous(material)),
      (names) => say("belt card.no figures", names),
    ),
    // Its caution would take the page, which has nothing to cut it by.
    ...said(unknown.filter(hazardous), (names) => say("belt card.caution elsewhere", names)),
  ];
}

/** A material without figures has its caution on the sheet that is named for it. */
export const namedOnDiagram = (
  findings: Findings,
  { operation }: Readonly<Record<string, unknown>>,
): readonly string[] =>
  findings.machine.work.materials.filter((material) => hasFigures(material, operation as string, findings));

type Example = { readonly diameter: number; readonly rpm: number; readonly words: string };

/** One way through the diagram: a diameter of the file near the middle whose position lies in the material's band. */
function exampleOf(findings: Findings, operation: string, bands: readonly Banded[]): Example | undefined {
  const { machine } = findings;
  const shown = bands.map(({ material }) => material);
  const diameters = [...diametersFor(operation, machine)].sort((a, b) => a - b);
  const middle = (diameters.length - 1) / 2;
  const places = diameters.map((_, index) => index).sort((a, b) => Math.abs(a - middle) - Math.abs(b - middle));
  for (const place of places)
    for (const material of shown) {
      const diameter = diameters[place] as number;
      const choice = speedFor({ operation, material, diameter }, findings);
      if (choice?.verdict !== "in the band" || choice.speed === undefined || choice.rpm === undefined) continue;
      // At another diameter a source may say more or less than what is drawn.
      const speed = metresPerMinuteAt(choice.rpm, diameter);
      if (!bands.some(({ band }) => band.slowest <= speed && speed <= band.most)) continue;
      const words = say("speed diagram.example", {
        diameter: sizeWords(operation, diameter, machine),
        material: materialName(material),
        rpm: formatFixed(choice.rpm, 0),
        position: choice.speed.position.name,
      });
      return { diameter, rpm: choice.rpm, words };
    }
  return undefined;
}

/** What a diagram of these materials is of, whatever its size. */
function drawingOf(
  findings: Findings,
  operation: string,
  lines: readonly SpeedLine[],
  materials: readonly Banded[],
): {
  readonly example: Example | undefined;
  readonly inSight: readonly SpeedLine[];
  readonly draw: (plot: Omit<Drawing, "marks">) => { readonly marks: readonly Mark[] } & Unshown;
} {
  const { machine } = findings;
  const speedUnit = cuttingSpeedUnit[machine.units];
  const bands = asBars(materials).map((some): Band => {
    const { slowest, most } = (some[0] as Banded).band;
    return {
      material: some.map(({ material }) => materialName(material)).join(", "),
      least: slowest / speedUnit.metresPerMinute,
      most: most / speedUnit.metresPerMinute,
    };
  });
  const unit = mmPer[machine.units];
  const across = around(
    diametersFor(operation, machine).map((mm) => mm / unit),
    1.25,
  );
  const up = around(bands.length > 0 ? bands.flatMap(({ least, most }) => [least, most]) : [10, 100], 1.25);
  // Cutting speed is π · d · n.
  const share = (unit * Math.PI) / 1000 / speedUnit.metresPerMinute;
  const scales = { across, up, share };
  const example = exampleOf(findings, operation, materials);
  const draw = ({ width, height }: Omit<Drawing, "marks">) => {
    const bars = bands.length * barWidth + (bands.length > 0 ? 1 : 0);
    const frame = { left: numbersWide + bars, right: width - labelRoom - 9, top: labelRoom + 4, bottom: height - 11 };
    const x = scaleLog().domain(across).range([frame.left, frame.right]);
    const y = scaleLog().domain(up).range([frame.bottom, frame.top]);
    const middle = (frame.top + frame.bottom) / 2;
    const diameterWords = say(makesHoles(operation) ? "speed diagram.drill" : "speed diagram.work", {
      unit: unitName(machine.units),
    });
    const ways = lineMarks(lines, x, y, { ...scales, keep: example?.rpm }, frame);
    const marks = [
      group({ x: 0, y: 0 }, grid(x, y, { across, up, inches: machine.units === "in" }, frame, numbersWide), {
        name: "grid",
      }),
      ...bandMarks(bands, y, numbersWide + 0.5, frame),
      ...ways.marks,
      ...joinMarks(
        lines,
        x,
        y,
        scales,
        frame,
        example === undefined ? [] : boxesOf(spotOf(example, x, y, unit, share), frame.bottom),
      ),
      ...(example === undefined ? [] : wayThrough(spotOf(example, x, y, unit, share), frame.bottom)),
      rectangle({ x: frame.left, y: frame.top }, frame.right - frame.left, frame.bottom - frame.top, {
        pen: objectLine,
      }),
      text(
        diameterWords,
        { x: (frame.left + frame.right) / 2, y: frame.bottom + 9 },
        { size: size.text, anchor: "middle", weight: "bold" },
      ),
      text(
        shortened(
          say("speed diagram.cutting speed", { unit: speedUnit.name }),
          2 * Math.min(middle, height - middle),
          size.text,
          "bold",
        ),
        { x: 3, y: middle },
        { size: size.text, anchor: "middle", weight: "bold", turn: -Math.PI / 2 },
      ),
    ];
    return { marks, cut: cutNames(bands, y, frame), left: ways.left };
  };
  return { example, inSight: lines.filter(({ rpm }) => spanOf(rpm, scales) !== undefined), draw };
}

/** Radius of the spot where the example ends, of a dot on the way to it, and from one dot to the next, mm. */
const SPOT = 1.6;
const DOT = 0.42;
const DOT_STEP = 1.7;

/** Round in every format, as no dash of a pen is. */
const dotsUp = (x: number, bottom: number, top: number) =>
  Array.from({ length: Math.ceil((bottom - top) / DOT_STEP) }, (_, at) => ({ x, y: bottom - at * DOT_STEP }));

/** Where the example's diameter meets the line of its speed. */
function spotOf(
  { diameter, rpm }: Example,
  x: (value: number) => number,
  y: (value: number) => number,
  unit: number,
  share: number,
): Point {
  const d = diameter / unit;
  return { x: x(d), y: y(share * d * rpm) };
}

/** The room that the way to it takes. */
const boxesOf = ({ x, y }: Point, bottom: number): Box[] => [
  { left: x - SPOT, right: x + SPOT, top: y - SPOT, bottom: y + SPOT },
  { left: x - DOT, right: x + DOT, top: y, bottom },
];

/** Up from the diameter to the line of the speed. */
function wayThrough(at: Point, bottom: number): Mark[] {
  return [
    group(
      { x: 0, y: 0 },
      [
        ...dotsUp(at.x, bottom, at.y).map((dot) => circle(dot, DOT, { fill: "black" })),
        circle(at, SPOT, { fill: "black" }),
      ],
      { name: "example" },
    ),
  ];
}

/** Materials of one and the same band share a bar. */
const asBars = (materials: readonly Banded[]): (readonly Banded[])[] => [
  ...grouped(materials, ({ band }) => `${band.slowest} ${band.most}`).values(),
];
