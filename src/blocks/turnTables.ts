import { readingPerTurn } from "../dial/choices.js";
import type { DialFinding } from "../dial/finding.js";
import type { FeedFinding } from "../feed/finding.js";
import type { HandwheelFinding } from "../findings/findings.js";
import type { Units } from "../machine/machine.js";
import { formatFixed, formatUncertain, trimmed } from "../quantity/format.js";
import { mmPer } from "../quantity/length.js";
import { block, type Run } from "./block.js";
import { size } from "./style.js";
import { type Cell, type Column, paragraph, table } from "./table.js";

/** Round distances to turns and divisions, then whole turns to distances, for each handwheel. */
export const turnTables = block(
  {
    turns: 10,
    mm: [0.1, 0.2, 0.5, 1, 2, 3, 4, 5, 6, 8, 10, 12, 16, 20, 25, 30, 40, 50],
    in: [0.005, 0.01, 0.02, 0.05, 0.1, 0.125, 0.25, 0.375, 0.5, 0.75, 1, 1.5, 2],
  },
  ({ handwheels, findings, settings, width }) =>
    handwheels.flatMap((finding): Run[] => {
      const { handwheel, feed, dial } = finding;
      if (feed === undefined) return [];
      const { units } = findings.machine;
      const distances = settings[units]
        .map((value) => value * mmPer[units])
        .filter((mm) => handwheel.travel === undefined || mm <= handwheel.travel * readingFactor(finding));
      return [
        ...paragraph(handwheel.name, width, { size: size.title, weight: "bold", gap: 5 }).map((run) => ({
          ...run,
          keepWithNext: true,
        })),
        ...paragraph(feedWords(finding, units), width, { size: size.small, gap: 0.5 }).map((run) => ({
          ...run,
          keepWithNext: true,
        })),
        ...spaced(distanceTable(finding, feed, dial, distances, units, width)),
        ...spaced(turnsTable(finding, feed, settings.turns, units, width)),
      ];
    }),
);

const spaced = (runs: Run[]): Run[] => runs.map((run, index) => (index === 0 ? { ...run, gap: 3 } : run));

const readingFactor = ({ handwheel }: HandwheelFinding): number => (handwheel.reads === "diameter" ? 2 : 1);
const placesOf: Record<Units, number> = { mm: 3, in: 4 };
const inUnit = (mm: number, units: Units): string => formatFixed(mm / mmPer[units], placesOf[units]);

/** Feed, its doubt, where it comes from, and what the maker meant. */
export function feedWords({ handwheel, feed, dial }: HandwheelFinding, units: Units): string {
  if (feed === undefined) return "Feed per turn not given.";
  const value =
    feed.uncertainty === undefined
      ? `${inUnit(feed.perTurn, units)} ${units}`
      : (({ value, uncertainty }) => `${value} ± ${uncertainty} ${units} (95 %)`)(
          formatUncertain(feed.perTurn / mmPer[units], feed.uncertainty / mmPer[units]),
        );
  const parts = [`One turn moves the slide ${value}, ${feedOrigin[feed.from]}`, `the dial reads ${handwheel.reads}`];
  if (dial) parts.push(`one division is ${dial.chosen.divisionLabel}`);
  if (feed.lostMotion)
    parts.push(
      `lost motion ${inUnit(feed.lostMotion.travel, units)} ${units}, ${formatFixed(feed.lostMotion.turn, 2)} of a turn`,
    );
  if (feed.nominal !== undefined) parts.push(`the maker meant ${inUnit(feed.nominal, units)} ${units}`);
  return `${parts.join("; ")}.`;
}

export const feedOrigin = {
  readings: "measured",
  stated: "as stated in the file",
  screw: "by its nominal screw, not measured",
  rack: "by its nominal rack, not measured",
} as const;

function distanceTable(
  finding: HandwheelFinding,
  feed: FeedFinding,
  dial: DialFinding | undefined,
  distances: readonly number[],
  units: Units,
  width: number,
): Run[] {
  const perTurn = readingPerTurn(feed, finding.handwheel.reads);
  const columns: Column[] = [
    { heading: [`for ${finding.handwheel.reads}`, units], align: "decimal" },
    { heading: ["whole turns"], align: "decimal" },
    ...(dial ? [{ heading: ["and divisions", `of ${dial.chosen.divisionLabel}`], align: "decimal" } as const] : []),
    { heading: ["all in turns"], align: "decimal" },
    ...(feed.nominal === undefined
      ? []
      : [
          { heading: ["by the nominal dial", `gives, ${units}`], align: "decimal" } as const,
          { heading: ["wrong by", units], align: "decimal" } as const,
        ]),
    ...(feed.uncertainty === undefined ? [] : [{ heading: ["doubt ±", units], align: "decimal" } as const]),
  ];
  const rows = distances.map((distance): Cell[] => {
    const turns = distance / perTurn;
    // A hair under a whole turn (0.9999999) is that whole turn.
    const whole = Math.floor(turns + 1e-9);
    const nominal = feed.nominal === undefined ? undefined : (distance * feed.perTurn) / feed.nominal;
    return [
      { text: trimmed(distance / mmPer[units], 4), weight: "bold" },
      { text: String(whole) },
      ...(dial ? [{ text: formatFixed(divisionsFor(Math.max(0, turns - whole), dial, perTurn), 1) }] : []),
      { text: formatFixed(turns, 3) },
      ...(nominal === undefined ? [] : [{ text: inUnit(nominal, units) }, { text: inUnit(nominal - distance, units) }]),
      ...(feed.uncertainty === undefined
        ? []
        : [{ text: inUnit((distance * feed.uncertainty) / feed.perTurn, units) }]),
    ];
  });
  return table(columns, rows, { width, ruleEvery: 3 });
}

/** Divisions for a part of a turn: equal parts on an even dial, the division's own worth on a true one. */
const divisionsFor = (part: number, { chosen }: DialFinding, perTurn: number): number =>
  chosen.closure === "even" ? part * chosen.divisions : (part * perTurn) / chosen.divisionValue;

function turnsTable(finding: HandwheelFinding, feed: FeedFinding, count: number, units: Units, width: number): Run[] {
  const factor = readingFactor(finding);
  const other: Units = units === "mm" ? "in" : "mm";
  const columns: Column[] = [
    { heading: ["turns"], align: "decimal" },
    { heading: ["travel", units], align: "decimal" },
    { heading: ["travel", other], align: "decimal" },
    ...(factor === 2 ? [{ heading: ["on diameter", units], align: "decimal" } as const] : []),
    ...(feed.nominal === undefined
      ? []
      : [
          { heading: ["nominal says", units], align: "decimal" } as const,
          { heading: ["wrong by", units], align: "decimal" } as const,
        ]),
    ...(feed.uncertainty === undefined ? [] : [{ heading: ["doubt ±", units], align: "decimal" } as const]),
  ];
  const rows = Array.from({ length: count }, (_, index): Cell[] => {
    const turns = index + 1;
    const travel = turns * feed.perTurn;
    return [
      { text: String(turns), weight: "bold" },
      { text: inUnit(travel, units) },
      { text: inUnit(travel, other) },
      ...(factor === 2 ? [{ text: inUnit(travel * 2, units) }] : []),
      ...(feed.nominal === undefined
        ? []
        : [
            { text: inUnit(turns * feed.nominal, units) },
            { text: inUnit(turns * (feed.nominal - feed.perTurn), units) },
          ]),
      ...(feed.uncertainty === undefined ? [] : [{ text: inUnit(turns * feed.uncertainty, units) }]),
    ];
  });
  return table(columns, rows, { width, ruleEvery: 5 });
}
