import { scaleLog } from "d3-scale";
import type { CuttingSpeed } from "../../cutting/finding.js";
import { materialName } from "../../cutting/materials.js";
import { operationWords } from "../../cutting/operations.js";
import { cuttingSpeedUnit, metresPerMinuteAt } from "../../cutting/rates.js";
import type { Drawing, Mark } from "../../drawing/drawing.js";
import { circle, group, line, rectangle, text } from "../../drawing/shapes.js";
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
import { type Band, bandMarks, barWidth } from "./diagramBands.js";
import { labelRoom, lineMarks, type SpeedLine, speedLines } from "./diagramLines.js";
import { around, grid } from "./diagramScales.js";

/** Narrower paper has the list of speeds below the diagram. */
const WIDE = 220;
const listWide = 62;
/** Of the list, for the speeds. */
const speedsWide = 16;
/** Left of the bars: the numbers of the scale and what it is of. */
const numbersWide = 15;

/** Diameter against cutting speed, both by ratio: a line for every speed, a bar for every material, one example drawn. `leave`: kept
 *  free below it for what follows. */
export const speedDiagram = block(
  { operation: "turning", leave: 16 },
  ({ findings: plain, settings, use, width, height }): Run[] => {
    const { findings, key } = signedBeyond(plain, listWide - speedsWide);
    const { machine, drive } = findings;
    const { operation } = settings;
    if (drive === undefined || diametersFor(operation, machine).length === 0) return [];
    const head = useHeading(machine, use, width);
    const bands = bandsOf(findings, operation);
    const lines = speedLines(drive.speeds, machine.limits);
    const list = listOf(lines, width < WIDE ? width : listWide, width < WIDE);
    const example = exampleOf(findings, operation, bands);
    const notes = bandNotes(
      bands.map(({ band }) => band),
      machine.work,
      machine.units,
    );
    const below = [
      ...paragraph(key, width, { gap: 2 }),
      ...paragraph(say("speed diagram.how to read"), width, { gap: 2 }),
      ...(example === undefined ? [] : paragraph(example.words, width, { gap: 0.6 })),
      ...paragraph(notes.join(" "), width, { size: size.source, gap: 1 }),
    ];
    const room = height - settings.leave - heightOf([...head, ...below]);
    const beside = width >= WIDE && heightOf(list) <= room;
    const wanted = Math.max(LOWEST, beside || width >= WIDE ? room : room - heightOf(list) / 2);
    const tall = Math.min(wanted, height - heightOf(head) - 2);
    const plot = { width: beside ? width - listWide - 6 : width, height: tall };
    const drawn = diagram(findings, operation, lines, bands, example, plot);
    const marks = beside ? [...drawn, group({ x: width - listWide, y: 0 }, stacked(list))] : drawn;
    return [...head, { drawing: { width, height: tall, marks } }, ...(beside ? [] : list), ...below];
  },
  { operation: operationWords },
);

/** Lower than this a diagram is not read off, mm. */
const LOWEST = 52;

/** Speeds and their positions, fastest first. */
function listOf(lines: readonly SpeedLine[], width: number, list: boolean): Run[] {
  return table(
    [
      { heading: [say("speed diagram.rpm")], align: "end", key: true },
      { heading: [say("speed diagram.position")], align: "start" },
    ],
    [...lines].reverse().map(({ name, rpm, held }) => [
      { text: formatFixed(rpm, 0), weight: "bold" as const },
      { text: name, ...(held && { note: say("speed diagram.beyond") }) },
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
): Mark[] {
  const { machine } = findings;
  const speedUnit = cuttingSpeedUnit[machine.units];
  const bands = merged(
    materials.map(({ material, band }) => ({
      material: materialName(material),
      least: band.slowest / speedUnit.metresPerMinute,
      most: band.most / speedUnit.metresPerMinute,
    })),
  );
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
  return [
    group({ x: 0, y: 0 }, grid(x, y, { across, up, inches: machine.units === "in" }, frame, numbersWide), {
      name: "grid",
    }),
    ...bandMarks(bands, y, numbersWide + 0.5, frame),
    ...lineMarks(lines, x, y, { across, up, share }, frame),
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
