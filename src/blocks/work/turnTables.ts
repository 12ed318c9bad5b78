import { withinATurn } from "../../dial/reading.js";
import type { HandwheelFinding } from "../../findings/findings.js";
import { doubtToRead } from "../../findings/settings.js";
import { noFeedWords } from "../../findings/travelWords.js";
import type { Machine, Units } from "../../machine/machine.js";
import { inMm } from "../../quantity/length.js";
import { say } from "../../words/say.js";
import { block, type Run } from "../shared/block.js";
import { paragraph } from "../shared/paragraph.js";
import { accompanying, goingOn, heading, heightOf, kept, lowered, titledAgain, together } from "../shared/runs.js";
import { size } from "../shared/style.js";
import { gearsInstead, rowsInstead } from "../shared/withoutStartReadings.js";
import { correctedTable } from "./corrected.js";
import { distanceTable, oldDialStrip } from "./distanceTables.js";
import { turnsHead, whatDoubtHolds } from "./turnsHead.js";
import { inPair, listed, type Room, withThird } from "./turnsLayout.js";
import { isOpen, wholeTurns } from "./wholeTurns.js";

const roundMm = [0.05, 0.1, 0.2, 0.5, 1, 2, 3, 4, 5, 6, 8, 10, 12, 15, 20, 25, 30, 40, 50, 75, 100];
const roundInches = [
  0.001,
  0.005,
  0.01,
  0.025,
  1 / 32,
  1 / 16,
  3 / 32,
  1 / 8,
  3 / 16,
  1 / 4,
  5 / 16,
  3 / 8,
  1 / 2,
  5 / 8,
  3 / 4,
  1,
  1.5,
  2,
];

/** What the block may be told to leave out. */
const tables = ["distances", "whole turns", "start readings"] as const;

const defaults = {
  turns: 12,
  mm: roundMm as number[],
  in: roundInches as number[],
  both: true,
  tables: [...tables] as string[],
};
type Settings = typeof defaults;

/** What the cautions over the first wheel take, mm. */
const strip = 16;
/** What the first rows of a table take with its heading, mm. */
const LEAST_TABLE = 24;
/** Less of a page than this is not worth one. */
const LEAST_LEFT = 0.3;

/** For each handwheel: any distances of the file's own, then round ones in its unit and beside them in the other, to turns and reading;
 *  the same on the old dial; whole turns to distances, and where a dial begins again each turn what would do without. A wheel that has no room below the last begins a page. */
export const turnTables = block(
  defaults,
  ({ handwheels, findings, settings, width, height }) => {
    const told = handwheels
      .filter(({ reading }) => reading !== undefined)
      .flatMap((finding, index) =>
        overleaf(
          wheelRuns(finding, findings.machine, settings, {
            ...{ width, page: height },
            height: index === 0 ? height - strip : height,
          }),
          finding.handwheel.name,
          { width, height },
        ).map((run, place): Run => (place === 0 && index > 0 ? { ...run, startsPage: "unless it fits" } : run)),
      );
    return told.length === 0 ? [] : [...told, ...notHere(handwheels, width)];
  },
  { tables },
);

/** Wheels of which no turn can be told, and why. */
const notHere = (handwheels: readonly HandwheelFinding[], width: number): Run[] =>
  accompanying(
    together(
      handwheels
        .filter(({ reading }) => reading === undefined)
        .flatMap((finding, index) =>
          paragraph(say("turns.not here", { wheel: finding.handwheel.name, why: noFeedWords(finding) }), width, {
            size: size.text,
            gap: index === 0 ? 3 : 0.5,
          }),
        ),
    ),
  );

/** `page`: what an empty page or card holds, mm. */
type WheelRoom = Room & { readonly page: number };

function wheelRuns(finding: HandwheelFinding, machine: Machine, settings: Settings, room: WheelRoom): Run[] {
  const { width, page } = room;
  const { handwheel, reading } = finding;
  const { units } = machine;
  const reach = reading?.overTravel ?? Number.POSITIVE_INFINITY;
  // Less than a division, or a vernier's part of one, is estimated, not set.
  const { divisionWorth = 0, vernier } = finding.dial ?? {};
  const least = divisionWorth / (vernier?.parts ?? 1) - 1e-9;
  const within = (unit: Units) =>
    settings[unit]
      .map((value) => inMm(value, unit))
      .filter((mm) => mm <= reach + 1e-9 && mm >= least && mm > (doubtToRead(finding, mm) ?? 0));
  const other: Units = units === "mm" ? "in" : "mm";
  const shows = (one: (typeof tables)[number]) => settings.tables.includes(one);
  const own = shows("distances") ? (handwheel.distances ?? []) : [];
  const inFile = shows("distances") ? within(units) : [];
  const all = [...new Set([...own, ...inFile])].sort((a, b) => a - b);
  // What stands among the file's own distances is not told again right below them.
  const isNew = (mm: number) => own.every((one) => Math.abs(one - mm) > 1e-6);
  const round = inFile.filter(isNew);
  const foreign = shows("distances") && settings.both ? within(other).filter(isNew) : [];
  const part = (words: string, runs: readonly Run[]): Run[] =>
    runs.length === 0 ? [] : [...heading(words, width, 4, size.text), ...titledAgain(runs, words, width)];
  const rounds = [
    { distances: round, sizes: { units } },
    { distances: foreign, sizes: { units: other } },
  ].flatMap(({ distances, sizes }) => (distances.length === 0 ? [] : [distanceTable(finding, distances, sizes)]));
  const turns = shows("whole turns") ? wholeTurns(finding, settings.turns, units) : undefined;
  const add = turns && isOpen(finding) ? paragraph(say("turns.add"), width, { size: size.text, gap: 2 }) : [];
  const none = [
    ...(rounds.length > 0 && finding.dial && withinATurn(reading) ? [say("turns.within a turn")] : []),
    ...(rounds.length === 0 && own.length === 0 && turns === undefined ? [say("turns.nothing")] : []),
  ];
  const about = [
    ...turnsHead(finding, units, width),
    ...(none.length === 0 ? [] : paragraph(none.join(" "), width, { size: size.text })),
  ];
  const title = heading(handwheel.name, width, 7, size.card);
  // On a small card numbers come first: no card holds words alone.
  const low = heightOf([...title, ...about]) + LEAST_TABLE > page;
  const head = [
    ...(low ? heading(handwheel.name, width, 0, size.text) : [...title, ...about]),
    ...(own.length === 0 ? [] : part(say("turns.your distances"), listed(distanceTable(finding, own, machine), width))),
  ];
  const whole = (three: readonly Run[] | undefined): Run[] => [
    ...head,
    ...lowered(three ?? inPair(rounds, width), low ? 1 : 3),
    ...(three ? add : []),
    ...part(say("turns.old dial"), oldDialStrip(finding, all, machine, width)),
    ...(three || !turns ? [] : part(say("turns.whole turns"), [...kept(add), ...listed(turns, width)])),
    ...(shows("start readings")
      ? [...rowsInstead(finding, machine, say("turns.zero is"), width), ...gearsInstead(finding, machine, width)]
      : []),
    ...correctedTable(finding, all, machine, width),
    ...(low ? together(lowered(about, 1.5)) : []),
    ...accompanying(whatDoubtHolds(finding, units, width, rounds.length > 0 || own.length > 0)),
  ];
  const three = turns && withThird(rounds, turns, room);
  const runs = whole(three);
  // What would be left for another page, before or behind, is too little for one: broken tables share it out better.
  const over = heightOf(runs) - room.height;
  const apart = three && heightOf(head) + heightOf(three) > room.height;
  return apart || (three && over > 0 && over < LEAST_LEFT * room.height) ? whole(undefined) : runs;
}

/** Lower than this, mm, a card has no line to spare for its wheel's name: all its cards come from one cut. */
const LOW = 60;

/** Whose turns they are stands at the head of every page that they go on to. */
const overleaf = (runs: readonly Run[], name: string, { width, height }: { width: number; height: number }): Run[] =>
  height < LOW ? [...runs] : goingOn(runs, name, width);
