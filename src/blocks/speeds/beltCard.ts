import { hazardOf } from "../../cutting/hazards.js";
import { materialName } from "../../cutting/materials.js";
import { findOperation } from "../../cutting/operations.js";
import type { SpeedFinding } from "../../drive/finding.js";
import { rpmWords } from "../../drive/rpmWords.js";
import { diametersFor } from "../../findings/drills.js";
import type { Findings } from "../../findings/findings.js";
import { beginWith, heldByLimit, limitSetting, measureFirst, overLimit } from "../../findings/limits.js";
import { sameSpeed, withoutNearlyAlike } from "../../findings/nearlyAlike.js";
import { largestDiameter, servedDiameters } from "../../findings/servedDiameters.js";
import { speedFor } from "../../findings/speedChoice.js";
import type { Limits, Machine, Stage } from "../../machine/machine.js";
import { smallestOf } from "../../quantity/extremes.js";
import { formatFixed, trimmed } from "../../quantity/format.js";
import { grouped } from "../../quantity/grouped.js";
import { fromMm } from "../../quantity/length.js";
import { say } from "../../words/say.js";
import type { BeltCell, BeltColumn, BeltRow, Labels } from "./beltMeasure.js";
import { type Range, rangesTold } from "./rangeWords.js";

/** What a belt card says, before it is laid out. */
export type BeltCard = {
  readonly rows: readonly BeltRow[];
  readonly columns: readonly BeltColumn[];
  /** Over the materials. */
  readonly title: string;
  readonly shortTitle: string;
  /** The row that one begins with, of all or of those of one card. */
  readonly begin?: number;
  readonly beginOf: (rows: readonly number[]) => SpeedFinding | undefined;
  /** Materials of the file that were not asked for. */
  readonly further: readonly string[];
  /** What the card explains of these rows and columns at its foot. */
  readonly notes: (rows: readonly number[], columns: readonly number[]) => string[];
};

/** Positions fast at the top, each way of the drive apart, those of nearly the same speed in one row, with the diameters that each
 *  serves: with a column for each material, and, where some are served alike by every position, with those in one. `materials`: the
 *  first so many; `noted`: of positions that share a row all but one are named at the foot, where names take no room from materials. */
export function beltCardsOf(
  all: Findings,
  settings: { operation: string; materials: number; noted?: boolean },
): [BeltCard, ...BeltCard[]] {
  // Of two that are nearly one each would serve a sliver of diameters, and drilling's own card names the one.
  const { findings, alike: merged, covered } = withoutNearlyAlike(all);
  const { machine, drive } = findings;
  const operation = findOperation(settings.operation)?.name ?? settings.operation;
  const speeds = inOrder(drive?.speeds ?? [], machine.drive?.stages ?? []);
  const materials = machine.work.materials.slice(0, settings.materials);
  const known = speeds.some(({ from }) => from !== "unknown");
  const found = known
    ? materials.map((material) => ({
        material,
        told: toldOf(material, operation, findings),
      }))
    : [];
  const own = found.flatMap(({ material, told }) =>
    told?.some(({ served }) => served.speed)
      ? [
          {
            name: materialName(material),
            materials: [material],
            cells: speeds.map((speed) => cellOf(speed, told)),
            bearsMore: bearsMore(material, operation, findings),
            ...endOf(told, speeds),
          },
        ]
      : [],
  );
  const listed = (of: (told: readonly Range[] | undefined) => boolean) =>
    found.filter(({ told }) => of(told)).map(({ material }) => materialName(material));
  const figureless = found.filter(({ told }) => told === undefined).map(({ material }) => material);
  const without = figureless.filter((material) => hazardOf(material) === undefined).map(materialName);
  // Its caution would take the card, which has nothing to cut it by: the card names a sheet that has it.
  const hazardous = figureless.filter((material) => hazardOf(material) !== undefined).map(materialName);
  const tooFast = listed((told) => told?.every(({ served }) => served.speed === undefined) === true);
  const nameIn = (speed: SpeedFinding) => positionName(speed, machine.drive?.stages ?? []);
  const first = beginWith(drive?.speeds ?? [], machine.limits);
  const rows = speeds.map((speed) =>
    rowOf(speed, settings.noted ? [] : merged.flatMap((one) => (one.as === speed ? [one.speed] : [])), machine),
  );
  const eitherOf = (shown: readonly number[]): string[] => {
    const names = shown.flatMap((index) => {
      const own = sameSpeed(merged).find(([as]) => as === speeds[index]);
      return own === undefined ? [] : [own.map(nameIn).join(" / ")];
    });
    return names.length === 0 ? [] : [say("belt card.omitted", { positions: names.join(", ") })];
  };
  const withColumns = (columns: readonly BeltColumn[]): BeltCard => ({
    rows,
    columns,
    title: titleOf(operation, findings),
    shortTitle: say("belt card.diameters", { unit: say(`belt card.unit ${machine.units}`) }),
    further: machine.work.materials.slice(settings.materials),
    ...(first && { begin: speeds.indexOf(first) }),
    beginOf: (shown) => {
      const own = new Set(shown.map((index) => speeds[index]));
      // From the slowest on.
      return beginWith(drive?.speeds.filter((speed) => own.has(speed)) ?? [], machine.limits);
    },
    notes: (shown, across) => {
      const signs = new Set(shown.map((index) => rows[index]?.sign));
      const unknown = shown.some((index) => rows[index]?.rpm === undefined);
      const set = across.some((column) => shown.some((row) => columns[column]?.cells[row]?.set !== undefined));
      const blank = shown.some(
        (row) =>
          rows[row]?.forbidden === undefined && across.some((column) => columns[column]?.cells[row]?.words === ""),
      );
      // Where one range ends the next begins: an end is rounded so that the row up to it serves it, as every other sheet says.
      const ranges = (column: number) =>
        shown.filter((row) => rows[row]?.forbidden === undefined && columns[column]?.cells[row]?.words !== "");
      const meeting = across.some((column) => ranges(column).length > 1);
      return [
        ...(signs.has("~") ? [say("belt card.by ratio")] : []),
        ...(signs.has("!") ? [say("belt card.measure first")] : []),
        ...(signs.has("?") ? [say("belt card.reading doubtful")] : []),
        ...(signs.has("max") ? [say("belt card.turn no higher")] : []),
        ...(unknown ? [say("belt card.unknown")] : []),
        ...(set ? [say("belt card.set")] : []),
        ...(shown.some((index) => rows[index]?.also.length) ? [say("belt card.either")] : []),
        ...(settings.noted ? eitherOf(shown) : []),
        ...(covered.length > 0 && shown.includes(0)
          ? [say("belt card.covered", { positions: covered.map(nameIn).join(", ") })]
          : []),
        ...(blank ? [say("belt card.blank")] : []),
        ...(meeting ? [say("belt card.in two rows")] : []),
        ...(across.some((column) => columns[column]?.bearsMore) ? [say("belt card.more speed")] : []),
        ...(across.some((column) => shown.includes(columns[column]?.endsAt ?? -1))
          ? [say("belt card.larger too fast")]
          : []),
        ...(without.length > 0 ? [say("belt card.no figures", { materials: without.join(", ") })] : []),
        ...(hazardous.length > 0 ? [say("belt card.caution elsewhere", { materials: hazardous.join(", ") })] : []),
        ...(tooFast.length > 0 ? [say("belt card.too fast", { materials: tooFast.join(", ") })] : []),
      ];
    },
  });
  const shared = alike(own);
  return shared.length < own.length ? [withColumns(own), withColumns(shared)] : [withColumns(own)];
}

/** Neighbours or not, materials that every position serves alike share a column. */
function alike(columns: readonly BeltColumn[]): BeltColumn[] {
  const groups = grouped(columns, ({ cells, bearsMore, endsAt }) => JSON.stringify([cells, bearsMore, endsAt]));
  return [...groups.values()].map((group) => ({
    ...(group[0] as BeltColumn),
    name: group.map(({ name }) => name).join(", "),
    materials: group.flatMap(({ materials }) => materials),
  }));
}

/** Name of a position as its card writes it. */
export const positionName = (speed: SpeedFinding, stages: readonly Stage[]): string => {
  const { belts, way } = labelsOf(speed, stages);
  return [...belts, way].filter((words) => words !== "").join(" ");
};

/** Belts first: where the hand lays them; then what it shifts. */
function labelsOf({ position }: SpeedFinding, stages: readonly Stage[]): Labels {
  if (position.labels.length === 0) return { belts: [say("belt card.only")], way: "" };
  const chosen = position.steps.filter(({ label }, index) => (stages[index]?.steps.length ?? 0) > 1 && label !== "");
  const named = (belts: boolean) => chosen.filter(({ kind }) => (kind === "belt") === belts).map(({ label }) => label);
  return { belts: named(true), way: named(false).join(" ") };
}

function inOrder(speeds: readonly SpeedFinding[], stages: readonly Stage[]): SpeedFinding[] {
  const groups = grouped(speeds, (speed) => labelsOf(speed, stages).way);
  const faster = (a: SpeedFinding, b: SpeedFinding) => b.rpm - a.rpm;
  return [...groups.values()]
    .map((group) => [...group].sort(faster))
    .sort(([a], [b]) => faster(a as SpeedFinding, b as SpeedFinding))
    .flat();
}

/** `alike`: of nearly the same speed. */
function rowOf(speed: SpeedFinding, alike: readonly SpeedFinding[], { limits, drive }: Machine): BeltRow {
  const held = heldByLimit(speed, limits);
  const shown = held === "in part" ? { ...speed, rpm: limitSetting(speed, limits) } : speed;
  const forbidden = held === "wholly" ? forbiddenWords(speed, limits) : undefined;
  return {
    ...labelsOf(speed, drive?.stages ?? []),
    also: alike.map((one) => labelsOf(one, drive?.stages ?? [])),
    ...(speed.from !== "unknown" && { rpm: rpmWords(shown) }),
    sign: signOf(speed, limits),
    ...(forbidden !== undefined && { forbidden }),
  };
}

/** Where the speed that is printed lies within the limit, the one that may be true is told. */
const forbiddenWords = (speed: SpeedFinding, limits: Limits): string =>
  speed.from === "unknown" || overLimit(speed.slowestRpm, limits)
    ? say("belt card.do not use")
    : say("belt card.may reach", { rpm: formatFixed(Math.ceil((speed.slowestRpm / speed.rpm) * speed.highestRpm), 0) });

/** The one that matters most: beside a number there is room for one. */
function signOf(speed: SpeedFinding, limits: Limits): string {
  if (speed.from === "unknown") return "";
  const held = heldByLimit(speed, limits);
  if (held === "in part") return "max";
  if (held === undefined && measureFirst(speed, limits)) return "!";
  if (speed.doubtful) return "?";
  return speed.from === "measured" ? "" : "~";
}

/** True where a card has a column for a material, or says why it has none. */
export const hasFigures = (material: string, operation: string, findings: Findings): boolean =>
  servedDiameters(material, findOperation(operation)?.name ?? operation, findings) !== undefined;

function toldOf(material: string, operation: string, findings: Findings): Range[] | undefined {
  const pieces = servedDiameters(material, operation, findings);
  return pieces && rangesTold(pieces, operation, findings);
}

function cellOf(speed: SpeedFinding, told: readonly Range[]): BeltCell {
  const own = told.filter(({ served }) => served.speed === speed);
  // What a variable motor is to be set to.
  const set = own.flatMap(({ served: { rpm } }) => {
    if (rpm === undefined || speed.slowestRpm > speed.rpm * (1 - 1e-6)) return [];
    const [at, end] = [Math.floor(rpm.at + 1e-9), Math.floor(rpm.end + 1e-9)];
    return [at === end ? formatFixed(at, 0) : `${formatFixed(at, 0)}–${formatFixed(end, 0)}`];
  });
  return { words: own.map(({ words }) => words).join(", "), ...(set.length > 0 && { set: set.join(", ") }) };
}

/** At which row a material ends below the largest diameter, as larger work is too fast for every position. */
function endOf(told: readonly Range[], speeds: readonly SpeedFinding[]): { readonly endsAt?: number } {
  if (told.at(-1)?.served.speed !== undefined) return {};
  const last = told.filter(({ served }) => served.speed).at(-1)?.served.speed;
  return last === undefined ? {} : { endsAt: speeds.indexOf(last) };
}

/** True where the thinnest work, or the thinnest drill, that the file names is turned below what its material bears. */
function bearsMore(material: string, operation: string, findings: Findings): boolean {
  const diameter = smallestOf(diametersFor(operation, findings.machine));
  if (!Number.isFinite(diameter)) return false;
  return speedFor({ material, operation, diameter }, findings)?.verdict === "slower than the band";
}

function titleOf(operation: string, findings: Findings): string {
  const { units } = findings.machine;
  const unit = say(`belt card.unit ${units}`);
  if (operation === "turning") return say("belt card.turn diameters", { unit });
  // Of drills the machine has a largest; how large work was looked at is no figure of its file.
  const most = trimmed(fromMm(largestDiameter(operation, findings), units), 2);
  if (operation === "drilling") return say("belt card.drill diameters", { unit, most });
  return say("belt card.other diameters", { operation, unit });
}
