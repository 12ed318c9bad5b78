import { scaleLog } from "d3-scale";
import type { CuttingSpeed } from "../../cutting/finding.js";
import { materialName } from "../../cutting/materials.js";
import { BY_USE, operationChoices } from "../../cutting/operations.js";
import { cuttingSpeedUnit, metresPerMinuteAt } from "../../cutting/rates.js";
import type { Drawing, Mark } from "../../drawing/drawing.js";
import { circle, group, line, rectangle, text } from "../../drawing/shapes.js";
import { textWidth } from "../../drawing/text.js";
import type { Findings } from "../../findings/findings.js";
import { sizeWords } from "../../findings/sizeName.js";
import { bandFor, speedFor } from "../../findings/speedChoice.js";
import { diametersFor, makesHoles } from "../../findings/uses.js";
import { largestOf, smallestOf } from "../../quantity/extremes.js";
import { formatFixed, unitName } from "../../quantity/format.js";
import { mmPer } from "../../quantity/length.js";
import { say } from "../../words/say.js";
import { block, type Run } from "../shared/block.js";
import { paragraph } from "../shared/paragraph.js";
import { heightOf } from "../shared/runs.js";
import { shortened } from "../shared/shortened.js";
import { signedBeyond } from "../shared/stepSigns.js";
import { objectLine, pen, size, weight } from "../shared/style.js";
import { table } from "../shared/table.js";
import { useHeading } from "../shared/useHeading.js";
import { bandNotes } from "./bandNotes.js";
import { type Band, bandMarks, barWidth, cutNames } from "./diagramBands.js";
import { labelRoom, lineMarks, type SpeedLine, speedLines } from "./diagramLines.js";
import { around, grid } from "./diagramScales.js";

/** Narrower paper has the list of speeds below the diagram, unless it takes no more than this share of the width. */
const WIDE = 220;
const SHARE = 0.25;
const listWide = 62;
/** Of the list, for the speeds. */
const speedsWide = 16;
/** Left of the bars: the numbers of the scale and what it is of. */
const numbersWide = 15;

/** Diameter against cutting speed, both by ratio: a line for every speed, a bar for every material, one example drawn. `leave`: kept
 *  free below it for what follows. */
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
    const example = exampleOf(findings, operation, bands);
    const notes = bandNotes(
      bands.map(({ band }) => band),
      machine.work,
      machine.units,
    );
    const below = ({ cut, left, further }: Unshown) => [
      ...paragraph(key, width, { gap: 2 }),
      ...(cut.length === 0
        ? []
        : paragraph(say("speed diagram.in full", { names: cut.join("; ") }), width, { gap: 2 })),
      ...(left.length === 0
        ? []
        : paragraph(say("speed diagram.lines left", { speeds: left.join(", ") }), width, { gap: 2 })),
      ...(further.length === 0
        ? []
        : paragraph(say("speed diagram.materials left", { materials: further.join(", ") }), width, { gap: 2 })),
      ...(lines.some(({ held }) => held) ? paragraph(say("hand feed.beyond"), width, { gap: 2 }) : []),
      ...paragraph(say("speed diagram.how to read"), width, { gap: 2 }),
      ...(example === undefined ? [] : paragraph(example.words, width, { gap: 0.6 })),
      ...paragraph(notes.join(" "), width, { size: size.source, gap: 1 }),
    ];
    const alone = height - heightOf(head) - 2;
    const drawnWith = (unshown: Unshown) => {
      const words = heightOf(below(unshown));
      const { tall, beside, list } = placed(lines, width, alone, alone + 2 - settings.leave - words, words);
      const plot = { width: beside === 0 ? width : width - beside - 6, height: tall };
      return { tall, beside, list, ...diagram(findings, operation, lines, bands, example, plot) };
    };
    // What is told below takes of the diagram's height, so that there is room for fewer names and lines in it yet.
    let told: Unshown = { cut: [], left: [], further: [] };
    let drawn = drawnWith(told);
    while (countOf(drawn) > countOf(told)) {
      told = drawn;
      drawn = drawnWith(told);
    }
    const { tall, beside, list, marks: own } = drawn;
    const marks = beside === 0 ? own : [...own, group({ x: width - beside, y: 0 }, stacked(list))];
    return [...head, { drawing: { width, height: tall, marks } }, ...(beside === 0 ? list : []), ...below(told)];
  },
  { operation: operationChoices },
);

/** Names that it shows in part, speeds and materials for which it has no room. */
type Unshown = {
  readonly cut: readonly string[];
  readonly left: readonly string[];
  readonly further: readonly string[];
};
const countOf = ({ cut, left, further }: Unshown): number => cut.length + left.length + further.length;

/** Of the diagram's width, for the bars. */
const MOST_BARS = 0.3;

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
  const longest = largestOf(lines.map(({ name }) => textWidth(name, size.text, "regular")));
  const own = width < WIDE ? Math.min(listWide, Math.max(LEAST_LIST, speedsWide + longest + 2)) : listWide;
  const narrow = listOf(lines, own, false);
  const mayStandBeside = width >= WIDE || own <= SHARE * width;
  const beside = (tall: number) => ({ tall, beside: own, list: narrow });
  if (mayStandBeside && room >= LOWEST && heightOf(narrow) <= room) return beside(room);
  const list = listOf(lines, width, true);
  const below = (tall: number) => ({ tall, beside: 0, list });
  if (room - listHeight(list) >= LOWEST) return below(room - listHeight(list));
  // Words that fill a page of their own leave this one to diagram and list; of fewer the list keeps them company.
  if (mayStandBeside && words >= OWN_PAGE * alone && heightOf(narrow) <= alone) return beside(alone);
  return below(Math.max(LOWEST, alone - listHeight(list)));
}

/** Of a page, for words without the list. */
const OWN_PAGE = 0.4;
/** For its headings, mm. */
const LEAST_LIST = 30;

/** Of a list in its columns with the heading over them, mm. */
function listHeight(list: readonly Run[]): number {
  const [first] = list;
  if (first === undefined) return 0;
  const heading = first.heading?.height ?? 0;
  return heading + Math.ceil(list.length / (first.list?.columns ?? 1)) * (heightOf(list) / list.length);
}

/** Speeds and their positions, fastest first. */
function listOf(lines: readonly SpeedLine[], width: number, list: boolean): Run[] {
  return table(
    [
      { heading: [say("speed diagram.rpm")], align: "end", key: true },
      { heading: [say("speed diagram.position")], align: "start" },
    ],
    [...lines]
      .reverse()
      .map(({ name, rpm, held }) => [
        { text: formatFixed(rpm, 0), weight: "bold" as const },
        { text: held ? `${name} ×` : name },
      ]),
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
function bandsOf(findings: Findings, operation: string): { material: string; band: CuttingSpeed }[] {
  const diameters = diametersFor(operation, findings.machine);
  const { materials } = findings.machine.work;
  const usual = Math.sqrt(smallestOf(diameters) * largestOf(diameters));
  return materials.flatMap((material) => {
    const band = bandFor({ operation, material, diameter: usual }, findings);
    return band === undefined || band.rpm ? [] : [{ material, band }];
  });
}

type Example = { readonly diameter: number; readonly rpm: number; readonly words: string };

/** One way through the diagram: a diameter of the file near the middle whose position lies in the material's band. */
function exampleOf(
  findings: Findings,
  operation: string,
  bands: readonly { readonly band: CuttingSpeed }[],
): Example | undefined {
  const { machine } = findings;
  const diameters = [...diametersFor(operation, machine)].sort((a, b) => a - b);
  const middle = (diameters.length - 1) / 2;
  const places = diameters.map((_, index) => index).sort((a, b) => Math.abs(a - middle) - Math.abs(b - middle));
  for (const place of places)
    for (const material of machine.work.materials) {
      const diameter = diameters[place] as number;
      const choice = speedFor({ operation, material, diameter }, findings);
      if (choice?.verdict !== "in the band" || choice.speed === undefined || choice.rpm === undefined) continue;
      // Of a variable motor it may be set between two lines.
      if (Math.abs(choice.rpm / choice.speed.rpm - 1) > 1e-6) continue;
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

function diagram(
  findings: Findings,
  operation: string,
  lines: readonly SpeedLine[],
  materials: readonly { material: string; band: CuttingSpeed }[],
  example: Example | undefined,
  { width, height }: Omit<Drawing, "marks">,
): { readonly marks: readonly Mark[] } & Unshown {
  const { machine } = findings;
  const speedUnit = cuttingSpeedUnit[machine.units];
  const all = merged(
    materials.map(({ material, band }) => ({
      material: materialName(material),
      least: band.slowest / speedUnit.metresPerMinute,
      most: band.most / speedUnit.metresPerMinute,
    })),
  );
  const bands = all.slice(0, Math.max(5, Math.floor((MOST_BARS * width) / barWidth(all.length))));
  const further = all.slice(bands.length).map(({ material }) => material);
  const unit = mmPer[machine.units];
  const across = around(
    diametersFor(operation, machine).map((mm) => mm / unit),
    1.25,
  );
  const up = around(bands.length > 0 ? bands.flatMap(({ least, most }) => [least, most]) : [10, 100], 1.25);
  const bars = bands.length * barWidth(bands.length) + (bands.length > 0 ? 1 : 0);
  const frame = { left: numbersWide + bars, right: width - labelRoom - 9, top: labelRoom + 4, bottom: height - 11 };
  const x = scaleLog().domain(across).range([frame.left, frame.right]);
  const y = scaleLog().domain(up).range([frame.bottom, frame.top]);
  // Cutting speed is π · d · n.
  const share = (unit * Math.PI) / 1000 / speedUnit.metresPerMinute;
  const middle = (frame.top + frame.bottom) / 2;
  const diameterWords = say(makesHoles(operation) ? "speed diagram.drill" : "speed diagram.work", {
    unit: unitName(machine.units),
  });
  const ways = lineMarks(lines, x, y, { across, up, share, keep: example?.rpm }, frame);
  const marks = [
    group({ x: 0, y: 0 }, grid(x, y, { across, up, inches: machine.units === "in" }, frame, numbersWide), {
      name: "grid",
    }),
    ...bandMarks(bands, y, numbersWide + 0.5, frame),
    ...ways.marks,
    ...(example === undefined ? [] : wayThrough(example, x, y, unit, share, frame.bottom)),
    rectangle({ x: frame.left, y: frame.top }, frame.right - frame.left, frame.bottom - frame.top, { pen: objectLine }),
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
  return { marks, cut: cutNames(bands, y, frame), left: ways.left, further };
}

/** Up from the diameter to the line of the speed. */
function wayThrough(
  { diameter, rpm }: Example,
  x: (value: number) => number,
  y: (value: number) => number,
  unit: number,
  share: number,
  bottom: number,
): Mark[] {
  const d = diameter / unit;
  const at = { x: x(d), y: y(share * d * rpm) };
  return [
    group(
      { x: 0, y: 0 },
      [
        line({ x: at.x, y: bottom }, at, pen(2.4 * weight.object, "black", [0.1, 1.6])),
        circle(at, 1.6, { fill: "black" }),
      ],
      { name: "example" },
    ),
  ];
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
