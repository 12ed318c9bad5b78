import type { FeedFinding } from "../../feed/finding.js";
import { type ReadingsPlan, readingsPlan } from "../../feed/readingsPlan.js";
import type { HandwheelFinding } from "../../findings/findings.js";
import { powerOffFirst } from "../../findings/powerOff.js";
import { movesQuill } from "../../findings/roles.js";
import { isDrill } from "../../findings/uses.js";
import type { Machine, Units } from "../../machine/machine.js";
import { formatBound, formatDoubted, formatFixed, formatLength, trimmed, unitName } from "../../quantity/format.js";
import { fromMm, inMm } from "../../quantity/length.js";
import { say } from "../../words/say.js";
import { block, type Run } from "../shared/block.js";
import { paragraph } from "../shared/paragraph.js";
import { goingOn, heightOf, lowered, together } from "../shared/runs.js";
import { size } from "../shared/style.js";
import { approachPicture, type Moved } from "./approachPicture.js";
import { blanks } from "./blanks.js";
import { dialBlank, dialEntry } from "./dialBlank.js";
import { fileNumber } from "./fileText.js";
import { type FormColumn, formGrid } from "./formGrid.js";
import { numbered } from "./numbered.js";
import { stack } from "./stack.js";

/** Where the sheet says nothing else. mm. */
const usual = { within: 0.01, travel: 50, nominal: 2, gauge: 0.01 };

type Settings = { within: number; travel: number; nominal: number; gauge: number; reach: number };

/** A page for each handwheel to write readings on, with the turns already filled in; one blank page where the file has no
 *  handwheel. Settings in mm: `within`: how far the feed may be out over the travel; `travel`, `nominal`, `gauge`: assumed
 *  where the file does not say, and said to be; `reach` of the gauge, 0 for the whole travel. */
export const handwheelForm = block<Settings>(
  { ...usual, reach: 0 },
  ({ handwheels, findings, settings, width, height }): Run[] => {
    const { machine } = findings;
    const about = handwheels.length > 0 ? handwheels : [undefined];
    return about.flatMap((finding) => {
      // A drill has its quill, whether the file has a wheel for it yet or not.
      const quill = finding === undefined ? isDrill(findings.machine) : movesQuill(finding, findings);
      const moved = quill ? "quill" : "slide";
      return page(finding, moved, settings, machine, width, height);
    });
  },
);

/** The same in a file in inches: half a thou wanted, 2 in of travel, ten turns to the inch, a gauge of half a thou. mm. */
const inchUsual = {
  within: inMm(0.0005, "in"),
  travel: inMm(2, "in"),
  nominal: inMm(0.1, "in"),
  gauge: inMm(0.0005, "in"),
};

/** What a sheet sets otherwise than usual holds for either unit. */
const assumedIn = (settings: Settings, units: Units): typeof usual => ({
  ...settings,
  ...(units === "in" &&
    Object.fromEntries(
      Object.entries(inchUsual).filter(
        ([key]) => settings[key as keyof typeof usual] === usual[key as keyof typeof usual],
      ),
    )),
});

/** What the form is made for, and which of it is assumed. */
export function formBasis(finding: HandwheelFinding | undefined, settings: Settings, units: Units) {
  const usual = assumedIn(settings, units);
  const { handwheel, feed } = finding ?? {};
  const held = handwheel?.feed?.from === "readings" ? handwheel.feed : undefined;
  const known = { feed: feed?.perTurn ?? feed?.nominal, travel: handwheel?.travel, gauge: held?.gauge };
  const turn = known.feed ?? usual.nominal;
  const travel = known.travel ?? usual.travel;
  const wish = {
    feed: turn,
    travel,
    gauge: known.gauge ?? usual.gauge,
    within: usual.within,
    ends: Math.max(Math.min(turn, travel / 10), 3 * Math.abs(feed?.lostMotion?.travel ?? 0)),
    ...(feed?.fit && { scatter: feed.fit.residualDeviation }),
    ...(settings.reach > 0 && { reach: settings.reach }),
  };
  const assumed = (["feed", "travel", "gauge"] as const).filter((key) => known[key] === undefined);
  return { wish, assumed, plan: readingsPlan(wish) };
}

/** Room between the rows and what stands beside them, mm. */
const ALLEY = 6;
/** So many rows stay with what is at the foot. */
const LAST = 4;
/** Below the head. */
const GAP = 3;
/** Least width beside the rows for words, and the most that rows are wide. */
const leastBeside = 66;
const mostGrid = 140;
/** Room to write a reading in, down and across. */
const leastRow = 4.5;
const mostRow = 8;
const leastGrid = 108;

function page(
  finding: HandwheelFinding | undefined,
  moved: Moved,
  settings: Settings,
  machine: Machine,
  width: number,
  height: number,
): Run[] {
  const { units, measured } = machine;
  const basis = formBasis(finding, settings, units);
  const { wish, plan } = basis;
  const top = headOf(finding, basis, units, measured, width);
  const words = steps(moved, plan, wish.travel, wish.ends / 2, machine);
  const dial = finding?.handwheel.dial;
  const worn = finding?.feed?.measured?.uneven?.most !== undefined;
  const foot = (across: number) => footOf(moved, { ...plan, worn }, wish, dial?.shape ?? "drum", units, across);
  const rows = plan.turns.map((turns) => [
    trimmed(turns, 4),
    formatFixed(fromMm(turns * wish.feed, units), fine(units)),
  ]);
  const grid = (across: number, high: number) => lowered(formGrid(columnsOf(plan.runs, units), rows, across, high), 3);

  const left = Math.min(mostGrid, width - ALLEY - leastBeside);
  const right = width - ALLEY - left;
  const shown: Run = { drawing: approachPicture(moved, left) };
  const side = [...dialBlank(dial, units, right), { drawing: numbered(words, right), gap: 4 }];
  // Where the rows are many, what is at the foot stands beside them too.
  for (const [beside, below] of [
    [side, foot(width)],
    [[...side, ...lowered(foot(right), 4)], []],
  ] as const) {
    const room = height - heightOf([...top, ...below]) - GAP;
    const spare = room - heightOf([shown, ...grid(left, leastRow)]);
    if (left < leastGrid || spare < 0 || heightOf(beside) > room) continue;
    const table = stack([shown, ...grid(left, Math.min(mostRow, leastRow + spare / rows.length))], left);
    const words = stack(beside, right);
    const placed = { kind: "group" as const, at: { x: left + ALLEY, y: 0 }, marks: words.marks };
    const drawing = { width, height: Math.max(table.height, words.height), marks: [...table.marks, placed] };
    return [{ drawing: stack([...top, { drawing, gap: GAP }, ...below], width), startsPage: "always" }];
  }
  // Small paper: one below the other, and the rows break over pages, the last of them never alone.
  const long = grid(width, leastRow + 0.4);
  const runs = [
    ...top,
    { drawing: approachPicture(moved, width), gap: GAP },
    { drawing: numbered(words, width, width >= 150 ? 2 : 1), gap: 2 },
    ...lowered(dialBlank(dial, units, width), 2),
    ...long.slice(0, -LAST),
    ...together([...long.slice(-LAST), ...foot(width)]),
  ];
  const name = finding?.handwheel.name;
  return (name === undefined ? runs : goingOn(runs, name, width)).map((run, index) =>
    index === 0 ? { ...run, startsPage: "always" } : run,
  );
}

const fine = (units: Units): number => (units === "mm" ? 2 : 3);

const columnsOf = (runs: number, units: Units): FormColumn[] => [
  { heading: [say("measuring form.turns")], share: 0.75 },
  { heading: [say("measuring form.about"), unitName(units)], share: 0.95 },
  ...Array.from({ length: runs }, (_, index): FormColumn[] => {
    const run = index + 1;
    return [
      { heading: [say("measuring form.run", { run }), say("measuring form.out")], share: 1.5, arrow: "down" },
      { heading: [say("measuring form.run", { run }), say("measuring form.return")], share: 1.5, arrow: "up" },
    ];
  }).flat(),
];

type Basis = ReturnType<typeof formBasis>;

function headOf(
  finding: HandwheelFinding | undefined,
  { wish, assumed }: Basis,
  units: Units,
  measured: string | undefined,
  width: number,
): Run[] {
  const name = finding?.handwheel.name;
  const told = (key: (typeof assumed)[number], length: string) =>
    assumed.includes(key) ? say("measuring form.assumed", { length }) : length;
  const held =
    finding?.feed === undefined ? say("measuring form.nothing held") : heldWords(finding.feed, units, measured);
  const turn = say("measuring form.one turn", { turn: told("feed", formatLength(wish.feed, units)) });
  const madeFor = say("measuring form.made for", {
    travel: told("travel", formatLength(wish.travel, units, units === "mm" ? 0 : 2)),
    gauge: told("gauge", formatLength(wish.gauge, units)),
  });
  return [
    ...(name === undefined
      ? blanks([{ before: say("measuring form.handwheel"), room: 60 }], width * 0.7, 0)
      : paragraph(name, width, { size: size.card, weight: "bold" })),
    ...paragraph(
      [
        held,
        ...(finding?.feed === undefined ? [turn] : []),
        madeFor,
        ...(assumed.length > 0 ? [say("measuring form.put right")] : []),
      ].join(" "),
      width,
      { gap: 0.8 },
    ),
    ...blanks(
      [
        { before: say("measuring form.date") },
        { before: say("measuring form.by"), room: 34 },
        { before: say("measuring form.temperature"), behind: "°C", room: 12 },
        { before: say("measuring form.gauge"), room: 30 },
        { before: say("measuring form.graduation"), behind: unitName(units), room: 14 },
        { before: say("measuring form.error limit"), behind: unitName(units), room: 14 },
      ],
      width,
      0.5,
    ),
  ];
}

/** As numbered in the picture. `free`: kept free at either end, mm. */
function steps(
  moved: Moved,
  plan: ReadingsPlan,
  travel: number,
  free: number,
  machine: Pick<Machine, "units" | "drive">,
): string[] {
  const { units } = machine;
  const off = powerOffFirst(machine);
  const quill = moved === "quill";
  const enough = formatLength(free, units, units === "mm" ? 1 : 2);
  return [
    say(quill ? "measuring form.step plug quill" : "measuring form.step plug", { off }),
    say(quill ? "measuring form.step take up quill" : "measuring form.step take up", { enough }),
    [
      say(quill ? "measuring form.step zero quill" : "measuring form.step zero", {
        travel: formatLength(travel, units, units === "mm" ? 0 : 2),
      }),
      ...(plan.unit === 1 ? [] : [say("measuring form.rim", { parts: Math.round(1 / plan.unit) })]),
    ].join(" "),
    plan.unit === 1 ? say("measuring form.step out") : say("measuring form.step out parts", { enough }),
    say("measuring form.step end", { enough }),
    say("measuring form.step return"),
    say("measuring form.step again"),
  ];
}

/** `worn`: what was found of the slide before, which scatters the readings as no gauge does. */
type PlanOfWorn = ReadingsPlan & { readonly worn: boolean };

/** How many readings and why just so many, where that comes from; and the lines of the file. */
function footOf(
  moved: Moved,
  plan: PlanOfWorn,
  wish: Basis["wish"],
  shape: Parameters<typeof dialEntry>[0],
  units: Units,
  width: number,
): Run[] {
  const entry = readingsEntry(fromMm(wish.gauge, units), { turns: "0, …", travel: "…", back: "…" }, moved);
  return [
    ...paragraph(whyWords(plan, wish.within, wish.travel, units), width, { size: size.source, gap: 2 }),
    ...paragraph(say("measuring form.into the file"), width, { gap: 1 }),
    ...paragraph(entry, width, { weight: "bold" }),
    ...paragraph(dialEntry(shape), width, { weight: "bold" }),
  ];
}

function whyWords(plan: PlanOfWorn, within: number, travel: number, units: Units): string {
  const gaps = {
    doubt: formatBound(plan.doubtOverTravel, units),
    over: formatLength(travel, units, units === "mm" ? 0 : 2),
    within: formatBound(within, units),
  };
  return [
    say("measuring form.places", { places: plan.turns.length, n: plan.every, runs: plan.runs }),
    say(plan.enough ? "measuring form.enough" : plan.worn ? "measuring form.worn" : "measuring form.not enough", gaps),
    plan.wearShown === undefined
      ? say("measuring form.no wear shown")
      : say("measuring form.wear shown", { depth: formatBound(plan.wearShown, units) }),
    ...plan.why.map((reason) => say(`measuring form.why ${reason}`)),
  ].join(" ");
}

/** What to write under the handwheel, lists left open. `gauge` in the file's unit. */
export const readingsEntry = (
  gauge: number,
  lists: { turns: string; travel: string; back: string },
  moved: Moved = "slide",
): string =>
  `feed: { readings: { gauge: ${fileNumber(gauge)}, zeroAt: ${say(moved === "quill" ? "measuring form.line on quill" : "measuring form.line")}, turns: [${lists.turns}], travel: [${lists.travel}], return: [${lists.back}] } }`;

function heldWords(feed: FeedFinding, units: Units, measured: string | undefined): string {
  const turn = formatDoubted(feed.perTurn, feed.uncertainty, units);
  const lost = feed.lostMotion
    ? ` ${say("measuring form.held lost", { lost: formatLength(feed.lostMotion.travel, units) })}`
    : "";
  const held =
    feed.from === "readings"
      ? measured === undefined
        ? say("measuring form.held readings", { n: feed.fit?.readings ?? 0, turn })
        : say("measuring form.held readings of", { n: feed.fit?.readings ?? 0, turn, day: measured })
      : say(`measuring form.held ${feed.from}`, { turn });
  return held + lost;
}
