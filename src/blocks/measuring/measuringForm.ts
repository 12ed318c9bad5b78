import { type ReadingsPlan, readingsPlan } from "../../feed/readingsPlan.js";
import type { HandwheelFinding } from "../../findings/findings.js";
import type { Units } from "../../machine/machine.js";
import { capital, formatDoubted, formatFixed, formatLength, plural, trimmed } from "../../quantity/format.js";
import { fromMm, inMm } from "../../quantity/length.js";
import { block, type Run } from "../shared/block.js";
import { lowered } from "../shared/runs.js";
import { size } from "../shared/style.js";
import { paragraph } from "../shared/table.js";
import { type FormColumn, formGrid } from "./formGrid.js";

type Settings = { within: number; travel: number; nominal: number; gauge: number; reach: number };

/** A page for each handwheel to write readings on, with the turns already filled in; one blank page where the file has no
 *  handwheel. Settings in mm: `within`: how far the feed may be out over the travel; `travel`, `nominal`, `gauge`: assumed
 *  where the file does not say, and said to be; `reach` of the gauge, 0 for the whole travel. */
export const handwheelForm = block<Settings>(
  { within: 0.01, travel: 50, nominal: 2, gauge: 0.01, reach: 0 },
  ({ handwheels, findings, settings, width, height }): Run[] => {
    const { units, measured } = findings.machine;
    const about = handwheels.length > 0 ? handwheels : [undefined];
    return about.flatMap((finding) => page(finding, settings, units, measured, width, height));
  },
);

/** Assumed in a file in inches: half a thou wanted, 2 in of travel, ten turns to the inch, a gauge of half a thou. mm. */
const inchUsual = {
  within: inMm(0.0005, "in"),
  travel: inMm(2, "in"),
  nominal: inMm(0.1, "in"),
  gauge: inMm(0.0005, "in"),
};

/** What the form is made for, and which of it is assumed. */
export function formBasis(finding: HandwheelFinding | undefined, settings: Settings, units: Units) {
  const usual = units === "mm" ? settings : inchUsual;
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

function page(
  finding: HandwheelFinding | undefined,
  settings: Settings,
  units: Units,
  measured: string | undefined,
  width: number,
  height: number,
): Run[] {
  const { wish, assumed, plan } = formBasis(finding, settings, units);
  const name = finding?.handwheel.name;
  const mm = (value: number, places?: number) => formatLength(value, units, places);
  // A short table leaves room for larger words.
  const em = plan.turns.length <= 20 && height > 200 ? size.body : size.small;
  const lines = (words: string, gap: number) => paragraph(words, width, { size: em, gap });
  const told = [
    `one turn ${mm(wish.feed)}${assumed.includes("feed") ? " (assumed)" : ""}`,
    `travel ${mm(wish.travel, units === "mm" ? 0 : 2)}${assumed.includes("travel") ? " (assumed)" : ""}`,
    `gauge ${mm(wish.gauge)}${assumed.includes("gauge") ? " (assumed)" : ""}`,
  ].join(", ");
  const head: Run[] = [
    ...paragraph(name ?? "Handwheel: ______________________________", width, { size: size.title, weight: "bold" }),
    ...lines("Date: __________________   Measured by: __________________________   Temperature: ________ °C", 3),
    ...lines(
      `Gauge: __________________   its graduation: __________   its error limit, if known: __________ ${units}`,
      2,
    ),
    ...lines(
      `Made for: ${told}.${assumed.length > 0 ? " What is assumed here, put right in the file and print the form again." : ""}`,
      2.5,
    ),
    ...lines(heldWords(finding, units, measured), 0.6),
    ...steps(wish.travel, wish.ends / 2, units).flatMap((words, index) =>
      lines(`${index + 1}.  ${words}`, index === 0 ? 2.5 : 0.6),
    ),
  ];
  const foot: Run[] = [
    ...lines(whyWords(plan, wish.within, wish.travel, units), 2.5),
    ...lines(
      `Into the file, under this handwheel: ${readingsEntry(fromMm(wish.gauge, units), { turns: "0, …", travel: "out, …", back: "return, …" })}, the turns as in this table, each return beside its out, and one run after the other; or readings: a CSV file with the columns turns, travel, return.`,
      1,
    ),
  ];
  const used = [...head, ...foot].reduce((sum, { drawing, gap }) => sum + drawing.height + (gap ?? 0), 0);
  const spare = (height - used - 14) / plan.turns.length;
  const rowHeight = Math.min(8, Math.max(4.6, spare));
  const { runs } = plan;
  const columns: FormColumn[] = [
    { heading: ["turns"], share: 0.7 },
    { heading: [`about, ${units}`], share: 0.9 },
    ...Array.from({ length: runs }, (_, run): FormColumn[] => [
      { heading: [`run ${run + 1}`, "out, down the page"], share: 1.6 },
      { heading: [`run ${run + 1}`, "return, up the page"], share: 1.6 },
    ]).flat(),
  ];
  const rows = plan.turns.map((turns) => [
    trimmed(turns, 4),
    formatFixed(fromMm(turns * wish.feed, units), units === "mm" ? 2 : 3),
  ]);
  const grid = formGrid(columns, rows, width, rowHeight);
  return [...head, ...lowered(grid, 2.5), ...foot].map((run, index) =>
    index === 0 ? { ...run, startsPage: true } : run,
  );
}

/** `free`: kept free at either end, mm. */
const steps = (travel: number, free: number, units: Units): string[] => {
  const enough = formatLength(free, units, units === "mm" ? 1 : 2);
  return [
    "Motor off and plug out. Adjust and oil the slide as it is to be used, and lock the other slides.",
    `Set the gauge on something that stands still, its spindle along the travel. It should reach ${formatLength(travel, units, units === "mm" ? 0 : 2)}. A dial indicator that reaches less is moved on with gauge blocks, or measures only so far: then give its reach in the template of this form.`,
    `Take up the lost motion: begin at the very end of the travel, turn the wheel so that the slide moves ${enough} or more, stop with its mark on the index, and set the gauge to zero there.`,
    "Go one way only. At each number of turns bring the mark to the index and write down the gauge under “out”. Gone too far? Never turn back to it: go back a whole turn and come up again.",
    `After the last, run past the end by ${enough} or more and come back. Write under “return” at the same marks, from the bottom row up, again one way only.`,
    "Run past zero, take up the lost motion again, and go through it once more as run 2. A second run shows what the first cannot: whether it repeats.",
  ];
};

/** How many readings, and why just so many. */
function whyWords(plan: ReadingsPlan, within: number, travel: number, units: Units): string {
  const fine = units === "mm" ? 3 : 5;
  const over = `over ${formatLength(travel, units, units === "mm" ? 0 : 2)}`;
  const result = plan.enough
    ? `the feed is then known to ${formatLength(plan.doubtOverTravel, units, fine)} ${over}, in 95 cases of 100 (wanted: ${formatLength(within, units, fine)})`
    : `even so the feed is known only to ${formatLength(plan.doubtOverTravel, units, fine)} ${over}, in 95 cases of 100 (wanted: ${formatLength(within, units, fine)}): that needs a finer gauge`;
  const places = `${plan.turns.length} places, one ${everyWords(plan.every)}, ${plan.runs} runs`;
  const wear =
    plan.wearShown === undefined
      ? "So few places never show a worn stretch: no bend that they can follow tells it from scatter."
      : `A worn stretch that throws the slide out by ${formatLength(plan.wearShown, units, fine)} or more shows in 80 cases of 100.`;
  return `Why so many: ${places}: ${result}. ${wear} ${plan.why.map((words) => `${capital(words)}.`).join(" ")}`;
}

const everyWords = (turns: number): string =>
  turns === 1 ? "every turn" : turns < 1 ? `every ${trimmed(turns, 4)} of a turn` : `every ${plural(turns, "turn")}`;

/** What to write under the handwheel, lists left open. `gauge` in the file's unit. */
export const readingsEntry = (gauge: number, lists: { turns: string; travel: string; back: string }): string =>
  `feed: { readings: { gauge: ${trimmed(gauge, 4)}, turns: [${lists.turns}], travel: [${lists.travel}], return: [${lists.back}] } }`;

function heldWords(finding: HandwheelFinding | undefined, units: Units, measured: string | undefined): string {
  const { feed } = finding ?? {};
  if (feed === undefined) return "The file holds no feed for it yet.";
  const from = {
    stated: "as stated",
    screw: "from the screw's pitch",
    rack: "from rack and pinion",
    readings: `from ${feed.fit?.readings} readings${measured ? `, ${measured}` : ""}`,
  }[feed.from];
  const lost = feed.lostMotion ? `; lost motion ${formatLength(feed.lostMotion.travel, units)}` : "";
  return `In the file now, ${from}: ${formatDoubted(feed.perTurn, feed.uncertainty, units)} a turn${lost}.`;
}
