import type { HandwheelFinding } from "../../findings/findings.js";
import {
  correctedSetting,
  doubtToRead,
  farthestTold,
  oldSettingToRead,
  settingToRead,
} from "../../findings/settings.js";
import { figureUnit, settingFigures, shownAt } from "../../findings/settingWords.js";
import { lostMotionWords, startsOver, startWords, travelWords, withinTurnWords } from "../../findings/travelWords.js";
import type { Machine, Units } from "../../machine/machine.js";
import { isFarFromNominal } from "../../machine/nominalSlip.js";
import { figureAsGiven } from "../../machine/written.js";
import { formatDoubted, formatFixed, trimmed, trimmedSize } from "../../quantity/format.js";
import { fromMm, inMm } from "../../quantity/length.js";
import { block, type Run } from "../shared/block.js";
import { heading, kept } from "../shared/runs.js";
import { size } from "../shared/style.js";
import { type Cell, type Column, paragraph, table } from "../shared/table.js";
import { turnsTold } from "./turnsTold.js";

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

/** For each handwheel: round distances (the file's unit, then the other, and any of the file's own) to turns and divisions;
 *  then whole turns to distances, with what dial zero stands for at each. */
export const turnTables = block(
  { turns: 12, mm: roundMm as number[], in: roundInches as number[], both: true },
  ({ handwheels, findings, settings, width }) =>
    handwheels.flatMap((finding): Run[] => {
      const { handwheel, reading } = finding;
      if (reading === undefined) return [];
      const { machine } = findings;
      const { units } = machine;
      const reach = reading.overTravel ?? Number.POSITIVE_INFINITY;
      const within = (list: readonly number[], unit: Units) =>
        list.map((value) => inMm(value, unit)).filter((mm) => mm <= reach + 1e-9);
      const other: Units = units === "mm" ? "in" : "mm";
      const own = handwheel.distances ?? [];
      return [
        ...heading(handwheel.name, width, 5, size.title),
        ...kept(paragraph(feedWords(finding, units), width, { size: size.small, gap: 0.5 })),
        ...travelWords(finding, units).flatMap((words) =>
          kept(paragraph(words, width, { size: size.small, weight: "bold", ink: "accent", gap: 0.5 })),
        ),
        ...(own.length > 0 ? [...part("Your distances", width), ...distanceTable(finding, own, machine, width)] : []),
        ...part(`Round distances, ${units === "mm" ? "millimetres" : "inches"}`, width),
        ...distanceTable(finding, within(settings[units], units), { units }, width),
        ...(settings.both
          ? [
              ...part(`Round distances, ${other === "mm" ? "millimetres" : "inches"}`, width),
              ...distanceTable(finding, within(settings[other], other), { units: other }, width),
            ]
          : []),
        ...(turnsTold(finding, settings.turns).length === 0
          ? []
          : [...part("Whole turns", width), ...wholeTurns(finding, settings.turns, units, width)]),
        ...correctedTable(finding, [...new Set([...own, ...within(settings[units], units)])], machine, width),
      ];
    }),
);

const part = (words: string, width: number): Run[] => heading(words, width, 3, size.body);
const places: Record<Units, number> = { mm: 3, in: 4 };
const show = (mm: number, units: Units): string => formatFixed(fromMm(mm, units), places[units]);

/** A doubt is never a bare nought: what is less than the last place is told as one of it. */
const showDoubt = (mm: number, units: Units): string => show(Math.max(mm, inMm(10 ** -places[units], units)), units);

/** Feed, its doubt, where it comes from, and what the maker meant. */
function feedWords(finding: HandwheelFinding, units: Units): string {
  const { handwheel, feed, study, dial } = finding;
  if (feed === undefined) return "Feed per turn not given.";
  const value = `${formatDoubted(feed.perTurn, feed.uncertainty, units)}${feed.uncertainty === undefined ? "" : " (95 %)"}`;
  const parts = [`One turn moves the slide ${value}, ${feedOrigin[feed.from]}`, `the dial reads ${handwheel.reads}`];
  if (dial) parts.push(`one division is ${dial.chosen.divisionLabel}`);
  if (feed.lostMotion)
    parts.push(
      `lost motion ${show(feed.lostMotion.travel, units)} ${units}, ${formatFixed(feed.lostMotion.turn, 2)} of a turn`,
    );
  else if (study?.back) parts.push(lostMotionWords(study.back));
  if (feed.nominal !== undefined)
    parts.push(
      `the maker meant ${show(feed.nominal, units)} ${units}${isFarFromNominal(feed.perTurn, feed.nominal) ? ", too far from this: measure again before you trust it" : ""}`,
    );
  if (handwheel.oldDial !== undefined)
    parts.push(
      `the old dial shows ${show(handwheel.oldDial.perTurn, handwheel.oldDial.unit)} ${handwheel.oldDial.unit} of ${handwheel.oldDial.reads} in a turn`,
    );
  else if (feed.nominal !== undefined)
    parts.push("what the old dial reads is not given (oldDial:), so it is not corrected");
  if (feed.uncertainty !== undefined)
    parts.push(
      `${beyondMeasured(finding, units)}doubt ± holds the feed${feed.fit ? ", the scatter of a position" : ""}${dial ? ", a tenth of a division read by eye" : ""}, come to from one side: from either side ${feed.lostMotion ? "the lost motion" : "lost motion, which was not measured,"} is added`,
    );
  const within = withinTurnWords(finding);
  if (within !== undefined) parts.push(within);
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
  distances: readonly number[],
  sizes: Pick<Machine, "units" | "written">,
  width: number,
): Run[] {
  const { feed, reading, dial, handwheel } = finding;
  const { units } = sizes;
  if (feed === undefined || reading === undefined) return [];
  const other: Units = units === "mm" ? "in" : "mm";
  const { oldDial } = handwheel;
  const columns: Column[] = [
    { heading: [`for ${handwheel.reads}`, units], align: units === "in" ? "end" : "decimal" },
    { heading: ["that is", other], align: "decimal" },
    { heading: ["whole", "turns"], align: "decimal" },
    ...(dial
      ? [
          {
            heading: ["then the dial", `reads, ${figureUnit(finding)}`],
            align: "decimal",
          } as const,
          ...(dial.chosen.rows > 1 ? [{ heading: ["on row"], align: "decimal" } as const] : []),
          { heading: ["leaves", units], align: "decimal", optional: true } as const,
        ]
      : []),
    { heading: ["all in", "turns"], align: "decimal", optional: true },
    ...(oldDial === undefined
      ? []
      : [
          { heading: ["or the old dial:", "turns"], align: "decimal" } as const,
          { heading: [`and its reading,`, `${oldDial.reads}, ${oldDial.unit}`], align: "decimal" } as const,
          { heading: ["uncorrected, it", `is wrong by, ${oldDial.unit}`], align: "decimal", optional: true } as const,
        ]),
    ...(feed.uncertainty === undefined
      ? []
      : [{ heading: ["doubt ±", units], align: "decimal", optional: true } as const]),
  ];
  const rows = distances.map((distance): Cell[] => {
    const setting = settingToRead(finding, distance);
    if (setting === undefined) return [];
    const shown = shownAt(finding, setting);
    const old = oldSettingToRead(finding, distance);
    const doubt = doubtToRead(finding, distance);
    const told = distance / reading.factor <= farthestTold(finding);
    return [
      { text: sizeText(distance, sizes), weight: "bold" },
      { text: show(distance, other) },
      { text: String(setting.wholeTurns), weight: "bold" },
      ...(shown === undefined
        ? []
        : [
            { text: shown.figure, weight: "bold" } as const,
            ...(shown.row === undefined ? [] : [{ text: String(shown.row), weight: "bold" } as const]),
            { text: show(setting.error, units) },
          ]),
      { text: formatFixed(setting.turns, 3) },
      ...(old === undefined || oldDial === undefined
        ? []
        : [
            { text: String(old.wholeTurns) },
            { text: show(old.reading, oldDial.unit) },
            { text: show(old.wrongBy, oldDial.unit) },
          ]),
      ...(doubt === undefined ? [] : [{ text: told ? showDoubt(doubt, units) : "–" }]),
    ];
  });
  return table(columns, rows, { width, size: size.small, ruleEvery: 3 });
}

/** Where the working travel is much longer than what was measured. */
function beyondMeasured({ feed, handwheel }: HandwheelFinding, units: Units): string {
  const { travel } = handwheel;
  if (feed?.measured === undefined || travel === undefined) return "";
  const read = (feed.measured.to - feed.measured.from) * feed.perTurn;
  return travel <= farthestTold({ feed })
    ? ""
    : `measured over ${trimmedSize(read, units, 1)} alone of ${trimmedSize(travel, units, 1)}, and nothing is told of error or doubt beyond twice that (–): measure further; `;
}

/** As the file gives it; a sixty-fourth of an inch as the fraction that it is. */
const sizeText = (mm: number, sizes: Pick<Machine, "units" | "written">): string =>
  sizes.units === "in" && !sizes.written?.has(mm) ? inches(fromMm(mm, "in")) : figureAsGiven(mm, sizes, 4);

/** Sixty-fourths as the fractions that they are, other inches as decimals. */
function inches(value: number): string {
  const parts = value * 64;
  if (Math.abs(parts - Math.round(parts)) > 1e-9) return trimmed(value, 4);
  let over = Math.round(parts);
  let under = 64;
  while (over % 2 === 0 && under > 1) {
    over /= 2;
    under /= 2;
  }
  const whole = Math.floor(over / under);
  const rest = over - whole * under;
  return rest === 0 ? String(whole) : `${whole > 0 ? `${whole} ` : ""}${rest}/${under}`;
}

/** `dial 0 stands for` is the start reading of each turn on a dial that does not close. */
function wholeTurns(finding: HandwheelFinding, most: number, units: Units, width: number): Run[] {
  const { feed, reading, dial } = finding;
  if (feed === undefined || reading === undefined) return [];
  const { factor } = reading;
  const other: Units = units === "mm" ? "in" : "mm";
  const open = dial !== undefined && dial.chosen.closes === false;
  const told = (travel: number) => travel <= farthestTold(finding);
  const columns: Column[] = [
    { heading: ["turns"], align: "decimal" },
    { heading: ["travel", units], align: "decimal" },
    { heading: ["travel", other], align: "decimal" },
    ...(factor === 2 ? [{ heading: ["on diameter", units], align: "decimal" } as const] : []),
    ...(open ? [{ heading: ["dial 0 now", `stands for, ${units}`], align: "decimal" } as const] : []),
    ...(feed.nominal === undefined
      ? []
      : [
          { heading: [`nominal${factor === 2 ? ", on diameter," : ""}`, `says, ${units}`], align: "decimal" } as const,
          { heading: ["and is wrong", `by, ${units}`], align: "decimal" } as const,
        ]),
    ...(feed.uncertainty === undefined
      ? []
      : [
          {
            heading: [factor === 2 ? "doubt ± on" : "doubt ±", factor === 2 ? `diameter, ${units}` : units],
            align: "decimal",
          } as const,
        ]),
  ];
  const rows = turnsTold(finding, most).map((turns): Cell[] => {
    const travel = turns * feed.perTurn;
    return [
      { text: String(turns), weight: "bold" },
      { text: show(travel, units) },
      { text: show(travel, other) },
      ...(factor === 2 ? [{ text: show(travel * 2, units) }] : []),
      ...(open ? [{ text: show(travel * factor, units), weight: "bold" } as const] : []),
      ...(feed.nominal === undefined
        ? []
        : [
            { text: show(turns * feed.nominal * factor, units) },
            { text: told(travel) ? show(turns * (feed.nominal - feed.perTurn) * factor, units) : "–" },
          ]),
      ...(feed.uncertainty === undefined
        ? []
        : [{ text: told(travel) ? showDoubt(doubtToRead(finding, travel * factor) ?? 0, units) : "–" }]),
    ];
  });
  return table(columns, rows, { width, size: size.small, ruleEvery: 5 });
}

/** On a slide that was found worn or wavy: the turns for each distance by the curve that was measured, wherever it is begun. */
function correctedTable(
  finding: HandwheelFinding,
  distances: readonly number[],
  sizes: Pick<Machine, "units" | "written">,
  width: number,
): Run[] {
  const { units } = sizes;
  const starts = startsOver(finding);
  const { dial, handwheel } = finding;
  const rows = [...distances]
    .sort((a, b) => a - b)
    .flatMap((distance): Cell[][] => {
      const settings = starts.map((from) => correctedSetting(finding, distance, from));
      if (settings.every((setting) => setting === undefined)) return [];
      return [
        [
          { text: sizeText(distance, sizes), weight: "bold" },
          ...settings.map(
            (setting): Cell => ({
              text: setting === undefined ? "–" : settingFigures(finding, setting),
            }),
          ),
        ],
      ];
    });
  if (rows.length === 0) return [];
  const columns: Column[] = [
    { heading: [`for ${handwheel.reads}`, units], align: units === "in" ? "end" : "decimal" },
    ...starts.map((from): Column => ({ heading: ["begun", startWords(from)], align: "middle" })),
  ];
  return [
    ...part("Corrected over the stretch that was measured", width),
    ...kept(
      paragraph(
        `Turns${dial ? ` + what the dial then reads, ${figureUnit(finding)}` : ""}, counted from the turn of the readings at which the movement begins; – ends beyond what was measured.`,
        width,
        { size: size.small, gap: 0.5 },
      ),
    ),
    ...table(columns, rows, { width, size: size.small, ruleEvery: 3 }),
  ];
}
