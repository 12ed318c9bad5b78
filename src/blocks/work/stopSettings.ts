import { settingToMove } from "../../findings/settings.js";
import { figureUnit, settingFigures, settingWords } from "../../findings/settingWords.js";
import { type Repeat, repeats } from "../../findings/stops.js";
import { noFeedWords, travelWords } from "../../findings/travelWords.js";
import { figureWithin, formatBound, formatFixed, formatLength, plural } from "../../quantity/format.js";
import { fromMm, inMm } from "../../quantity/length.js";
import { block, type Run } from "../shared/block.js";
import { heading, kept } from "../shared/runs.js";
import { size } from "../shared/style.js";
import { type Cell, type Column, paragraph, table } from "../shared/table.js";
import { correctedLines } from "./corrected.js";

/** For each stop of the file: turns and divisions, the steps, and what tolerance the machine can hold. */
export const stopSettings = block({}, ({ findings, width }): Run[] => {
  const { machine } = findings;
  const { units } = machine;
  const given = (mm: number, tolerance?: number) =>
    machine.written?.get(mm) ?? `${figureWithin(mm, tolerance, units)} ${units}`;
  const show = (mm: number) => formatLength(mm, units, units === "mm" ? 2 : 4);
  return repeats(findings).flatMap(({ stop, wheel, repeat }): Run[] => {
    const title = `${stop.name}: ${given(stop.length, stop.tolerance)} by the ${stop.handwheel.toLowerCase()}${stop.parts === undefined ? "" : `, ${plural(stop.parts, "part")}`}`;
    const head = paragraph(title, width, { size: size.heading, weight: "bold", gap: 5 });
    if (wheel === undefined || repeat === undefined)
      return [
        ...head,
        ...paragraph(wheel ? noFeedWords(wheel) : "This handwheel is not in the file.", width, { ink: "accent" }),
      ];
    const { setting } = repeat;
    const steps = [
      setting.divisions === undefined
        ? "Touch the work lightly with the tool, coming forward, and mark the handwheel there. Do not turn back past it."
        : "Touch the work lightly with the tool, coming forward, and set the dial to 0. Do not turn back past it.",
      `Go on ${settingWords(wheel, setting)}. Clamp the stop against the slide there, without moving it.`,
      "Draw back more than the lost motion, come forward to the stop with the same light hand: it must feel solid and stand where it stood.",
      "Cut one part, measure it, move the stop by the difference (a feeler or the dial tells how much), then cut the rest.",
    ];
    const verdicts = [
      repeat.byStop === undefined
        ? "How alike parts come was not measured: read the same places in two runs or more, or measure every part."
        : `Alike to ± ${formatBound(repeat.byStop, units)} against the stop${repeat.byDial === undefined ? "" : `, ± ${formatBound(repeat.byDial, units)} by the dial alone`}, come to from one side.`,
      repeat.lostMotion === undefined
        ? "Lost motion was not measured: come from one side only."
        : `Coming from either side would add the lost motion, ${show(repeat.lostMotion)}: never do.`,
      ...correctedLines(wheel, stop.length, units),
      ...(repeat.lengthDoubt === undefined
        ? []
        : [
            `The length itself is in doubt by ${formatBound(repeat.lengthDoubt, units)} until the first part is measured.`,
          ]),
    ];
    const serves = stop.tolerance === undefined ? [] : verdict(given(stop.tolerance, stop.tolerance), repeat);
    const beyond = repeat.beyondTravel
      ? [
          `${given(stop.length, stop.tolerance)} is beyond this slide's travel: set the stop in two steps or move the work.`,
        ]
      : [];
    return [
      ...head,
      ...numbered(steps, width),
      ...travelWords(wheel, units).flatMap((words) =>
        paragraph(words, width, { size: size.small, weight: "bold", ink: "accent", gap: 0.6 }),
      ),
      ...verdicts.flatMap((words) => paragraph(words, width, { size: size.small, gap: 0.6 })),
      ...[...serves.filter(({ bad }) => !bad).map(({ words }) => words)].flatMap((words) =>
        paragraph(words, width, { size: size.small, weight: "bold", gap: 0.6 }),
      ),
      ...[...serves.filter(({ bad }) => bad).map(({ words }) => words), ...beyond].flatMap((words) =>
        paragraph(words, width, { size: size.small, weight: "bold", ink: "accent", gap: 0.6 }),
      ),
    ];
  });
});

function verdict(tolerance: string, { dialServes, stopServes }: Repeat): { words: string; bad: boolean }[] {
  const within = `Wanted within ${tolerance}:`;
  if (dialServes) return [{ words: `${within} stop and dial both hold it.`, bad: false }];
  if (stopServes) return [{ words: `${within} use the stop; the dial alone does not hold it.`, bad: false }];
  if (stopServes === undefined)
    return [
      {
        words: `${within} whether this slide holds it was not measured${dialServes === false ? ", and the dial alone does not" : ""}. Measure each part.`,
        bad: true,
      },
    ];
  return [
    {
      words: `${within} this slide does not hold it as measured. Leave a little, measure each part, finish by hand.`,
      bad: true,
    },
  ];
}

/** Steps in their order, one idea each. */
export function numbered(steps: readonly string[], width: number): Run[] {
  return steps.flatMap((step, index) =>
    paragraph(`${index + 1}.  ${step}`, width, { size: size.body, gap: index === 0 ? 1.5 : 0.6 }),
  );
}

/** A block or drill shank of known size between stop and slide shortens the travel by just that: the turns it stands for. */
export const gaugeBlocks = block(
  { mm: [1, 2, 3, 5, 6, 8, 10, 12, 20], in: [0.0625, 0.125, 0.25, 0.375, 0.5, 0.75] },
  ({ findings, settings, width }): Run[] => {
    const { units } = findings.machine;
    const wheels = findings.handwheels.filter(({ feed }) => feed !== undefined);
    if (wheels.length === 0) return [];
    const sizes = settings[units].map((value) => inMm(value, units));
    const columns: Column[] = [
      { heading: ["between", units], align: "decimal" },
      ...wheels.map(
        (wheel): Column => ({
          heading: [wheel.handwheel.name, wheel.dial ? `turns + dial, ${figureUnit(wheel)}` : "turns"],
          align: "middle",
        }),
      ),
    ];
    const rows = sizes.map((mm): Cell[] => [
      { text: formatFixed(fromMm(mm, units), units === "mm" ? 1 : 4), weight: "bold" },
      ...wheels.map((wheel): Cell => {
        const setting = settingToMove(wheel, mm);
        return { text: setting === undefined ? "" : settingFigures(wheel, setting) };
      }),
    ]);
    return [
      ...heading("A gauge block or drill shank between stop and slide", width, 5),
      ...kept(
        paragraph(
          "Measure the shank with a micrometer, not by its name. Take it out and the slide goes on by just its size: two lengths or depths from one stop.",
          width,
          { size: size.small },
        ),
      ),
      ...table(columns, rows, { width, size: size.small, ruleEvery: 3 }),
    ];
  },
);

/** Bar through the spindle against a stop inside it: the order of work that makes parts alike. */
export const spindleStop = block({}, ({ width }): Run[] => [
  ...heading("Parts alike from bar, with a stop inside the spindle", width, 5),
  ...numbered(
    [
      "Stop and isolate the machine. Lock the stop in the spindle's bore so that it cannot creep: a plug with a drawbolt, or a rod held at the far end.",
      "Push the blank against it, close the chuck or collet, and pull: a jaw that draws the work shifts it off the stop, always by about the same if you close it the same way.",
      "Face the first part and set the dial to 0 there, coming forward. All lengths count from this face.",
      "Cut every shoulder from the same side to the same reading, and measure the first, the third, then one in ten.",
      "Bar must not stand out behind the spindle: unsupported it bends and whips. Cut blanks that end inside.",
    ],
    width,
  ),
]);
