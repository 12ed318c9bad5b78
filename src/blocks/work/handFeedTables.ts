import { feedPerRevolution, leastFeed } from "../../cutting/feeds.js";
import { cutMinutes, type HandFeed, handFeed, handFeedAtLeast } from "../../cutting/handFeed.js";
import { materialName } from "../../cutting/materials.js";
import { sourceTitle } from "../../cutting/sources.js";
import type { SpeedFinding } from "../../drive/finding.js";
import { burning, feedWords, leastFeedWords } from "../../findings/chipFire.js";
import type { HandwheelFinding } from "../../findings/findings.js";
import { fastestAllowed, heldByLimit, measureFirst } from "../../findings/limits.js";
import { speedDoubt } from "../../findings/speedDoubt.js";
import type { Limits, Units } from "../../machine/machine.js";
import { formatFixed, formatLength, trimmed, unitName } from "../../quantity/format.js";
import { mmPer } from "../../quantity/length.js";
import { say } from "../../words/say.js";
import { block, type Run } from "../shared/block.js";
import { paragraph } from "../shared/paragraph.js";
import { heightOf, kept } from "../shared/runs.js";
import { LONG_POSITION, signedBeyond } from "../shared/stepSigns.js";
import { size } from "../shared/style.js";
import type { Cell, Column } from "../shared/table.js";
import { secondsSign, secondsWords } from "./countCell.js";
import { type Group, sideBySide } from "./sideBySide.js";

/** "7 s" and "5 s" side by side are not read as one, mm. */
const APART = 1.4;
/** Beside a feed that is too fine for a material of the file. */
const NOT_FOR = "*";
const names = () => [say("hand feed.fine"), say("hand feed.medium"), say("hand feed.coarse")];

/** A line for each position, three feeds per revolution for each wheel side by side: what to count for a turn, and how long a cut takes.
 *  `mm` and `in`: the feeds, by the file's unit; `length`: of the cut. */
export const handFeedTables = block(
  { mm: [0.05, 0.1, 0.2], in: [0.002, 0.004, 0.008], lengthMm: 50, lengthIn: 2 },
  ({ handwheels, findings: plain, settings, width, height }): Run[] => {
    const { findings, key: beltKey } = signedBeyond(plain, LONG_POSITION);
    const { drive, machine } = findings;
    if (drive === undefined) return [];
    const { units, limits } = machine;
    const { materials } = machine.work;
    const feeds = offered(
      settings[units].map((feed) => feed * mmPer[units]),
      materials,
    );
    const length = units === "mm" ? settings.lengthMm : settings.lengthIn;
    const all = drive.speeds.filter(({ from }) => from !== "unknown");
    // What must not be run has no figures: it is named once, rather than in an empty row of every table.
    const run = all.filter((speed) => fastestAllowed(speed, limits) !== undefined);
    const known = run.length === 0 ? all : run;
    const forbidden = all.filter((speed) => !known.includes(speed));
    const not = [...new Set(feeds.flatMap(({ notFor }) => notFor.map(materialName)))].join(", ");
    const told = [
      ...speedDoubt(findings),
      ...burning(materials).map((material) => leastFeedWords(material, units)),
      ...(not === "" ? [] : [say("hand feed.not for", { sign: NOT_FOR, materials: not })]),
    ];
    const above = told.flatMap((words) => paragraph(words, width, { weight: "bold" }));
    const wheels = handwheels.filter(({ feed }) => feed !== undefined);
    if (known.length === 0) return above;
    if (wheels.length === 0 || feeds.length === 0) return wheels.length === 0 ? [] : above;
    const counted: HandFeed[] = [];
    const groups = wheels.map((wheel) => wheelGroup(wheel, feeds, known, limits, units, counted));
    const cut = say("hand feed.minutes", { length: `${trimmed(length, 4)} ${unitName(units)}` });
    const minutes: Group = {
      name: cut,
      about: [],
      columns: columnsOf(feeds, units),
      rows: known.map((speed) =>
        feeds.map(({ feed }): Cell => {
          const rpm = fastestAllowed(speed, limits);
          if (rpm === undefined) return { text: "" };
          const taken = cutMinutes(length * mmPer[units], feed, rpm);
          return { text: formatFixed(taken, taken < 9.95 ? 1 : 0) };
        }),
      ),
    };
    const key = {
      columns: [
        { heading: [say("hand feed.position")], align: "start" },
        { heading: [say("hand feed.rpm")], align: "end" },
      ] satisfies Column[],
      rows: known.map((speed): Cell[] => [
        { text: speed.position.name || say("hand feed.only position"), weight: "bold" },
        { text: `${formatFixed(fastestAllowed(speed, limits) ?? speed.rpm, 0)}${signOf(speed, limits)}` },
      ]),
    };
    // Before the first of the signs that they explain.
    const notes = kept([
      ...paragraph([...secondsWords(counted), say("hand feed.count aloud")].join(" "), width, { gap: 1.5 }),
      ...paragraph([...forbiddenWords(forbidden), ...signWords(known, limits)].join(" "), width, { gap: 0.5 }),
      ...(beltKey === "" ? [] : paragraph(beltKey, width, { gap: 0.5, weight: "bold" })),
    ]);
    const room = { width, height, gap: 2.5, before: heightOf([...above, ...notes]) };
    return [...above, ...notes, ...sideBySide(key, [...groups, minutes], room)];
  },
);

/** `all`: takes what was counted, for the words below. */
function wheelGroup(
  { handwheel, feed: own, dial }: HandwheelFinding,
  feeds: readonly Offer[],
  known: readonly SpeedFinding[],
  limits: Limits,
  units: Units,
  all: HandFeed[],
): Group {
  const perTurn = own?.perTurn ?? Number.NaN;
  const turn = { travel: formatLength(perTurn, units, units === "mm" ? 3 : 4) };
  return {
    name: handwheel.name,
    about: [
      handwheel.reads === "diameter" ? say("hand feed.turn of slide", turn) : say("hand feed.turn", turn),
      ...(dial === undefined ? [] : [say("hand feed.division", { division: dial.chosen.divisionLabel })]),
    ],
    columns: columnsOf(feeds, units).map((column) => ({ ...column, apart: APART })),
    rows: known.map((speed) =>
      feeds.map(({ feed, least }): Cell => {
        const rpm = fastestAllowed(speed, limits);
        if (rpm === undefined) return { text: "" };
        const fed = least
          ? handFeedAtLeast(feed, rpm, perTurn)
          : handFeed(feed, rpm, perTurn, dial?.chosen.divisionsPerTurn);
        all.push(fed);
        return { text: secondsSign(fed, least), weight: "bold" };
      }),
    ),
  };
}

const columnsOf = (feeds: readonly Offer[], units: Units): Column[] =>
  feeds.map(({ feed, name, notFor }) => ({
    heading: [notFor.length === 0 ? name : `${name}${NOT_FOR}`, feedWords(feed, units)],
    align: "middle",
  }));

function signOf(speed: SpeedFinding, limits: Limits): string {
  const held = heldByLimit(speed, limits);
  return [
    held === "wholly" ? " ×" : held === "in part" ? ` ${say("hand feed.max")}` : "",
    measureFirst(speed, limits) ? " !" : speed.doubtful ? " ?" : speed.from === "measured" ? "" : " ~",
  ].join("");
}

const forbiddenWords = (speeds: readonly SpeedFinding[]): string[] => {
  const positions = speeds.map(({ position, rpm }) =>
    say("hand feed.forbidden", { position: position.name, rpm: formatFixed(rpm, 0) }),
  );
  return positions.length === 0 ? [] : [say("hand feed.do not use", { positions: positions.join(", ") })];
};

/** What the signs beside the speeds mean: of those that there are. */
function signWords(known: readonly SpeedFinding[], limits: Limits): string[] {
  const signs = known.map((speed) => signOf(speed, limits));
  const has = (sign: string) => signs.some((one) => one.includes(sign));
  return [
    ...(has("×") ? [say("hand feed.beyond")] : []),
    ...(has(say("hand feed.max")) ? [say("hand feed.turn no higher")] : []),
    ...(has("!") ? [say("hand feed.measure first")] : []),
    ...(has("?") ? [say("hand feed.reading doubtful")] : []),
    ...(has("~") ? [say("hand feed.by ratio")] : []),
  ];
}

/** A feed per revolution, mm; `least`: none finer may come out of counting; `notFor`: the materials whose fine chips burn at it. */
type Offer = {
  readonly feed: number;
  readonly least: boolean;
  readonly name: string;
  readonly notFor: readonly string[];
};

/** The wished feeds, finest first. Where a material's fine chips burn, the coarsest is raised to the least that is published for
 *  it, and the finer ones are not for it; where all materials are such they are left out. */
function offered(wished: readonly number[], materials: readonly string[]): Offer[] {
  const fires = burning(materials);
  const coarsest = Math.max(...wished, ...fires.map((material) => leastFeed(material)?.from ?? 0));
  const last = wished.length - 1;
  return wished.flatMap((wish, index): Offer[] => {
    const feed = index === last ? coarsest : wish;
    const fine = fires.filter((material) => feed < (leastFeed(material)?.from ?? coarsest) * (1 - 1e-9));
    if (fine.length > 0 && fine.length === new Set(materials).size) return [];
    return [
      {
        ...{ feed, name: names()[index] ?? say("hand feed.feed") },
        least: index === last && fires.length > 0,
        notFor: fine,
      },
    ];
  });
}

/** What the sources print for the file's materials: above all for big lathes. */
export const publishedFeedLines = block({}, ({ findings, width }): Run[] => {
  const { machine } = findings;
  const { units } = machine;
  const { materials } = machine.work;
  const unit = mmPer[units];
  const show = (from: number, to: number) => {
    const [least, most] = [from, to].map((feed) => trimmed(feed / unit, units === "mm" ? 2 : 4));
    return least === most ? `${most}` : `${least}–${most}`;
  };
  const found = materials.flatMap((material) => {
    const finishing = feedPerRevolution(material, "finishing");
    const roughing = feedPerRevolution(material, "roughing");
    if (finishing === undefined || roughing === undefined) return [];
    return [
      {
        words: say("hand feed.published for", {
          material: materialName(material),
          finishing: show(finishing.from, finishing.to),
          roughing: show(roughing.from, roughing.to),
        }),
        sources: [...finishing.sources, ...roughing.sources],
      },
    ];
  });
  const parting = feedPerRevolution("mild steel", "parting");
  if (found.length === 0 || parting === undefined) return [];
  const fires = burning(materials);
  const sources = [...new Set([...found.flatMap(({ sources }) => sources), ...parting.sources])].map(sourceTitle);
  const words = say("hand feed.published", {
    unit: unitName(units),
    feeds: found.map(({ words }) => words).join("; "),
    parting: show(parting.from, parting.to),
    not: fires.length === 0 ? "" : say("hand feed.published not", { materials: fires.map(materialName).join(", ") }),
    sources: sources.join("; "),
  });
  return paragraph(words, width, { size: size.source, gap: 2 });
});
