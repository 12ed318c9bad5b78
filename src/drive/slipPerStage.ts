import type { Drive } from "../machine/machine.js";
import type { StageSlip } from "./finding.js";
import { leastSquares } from "./leastSquares.js";
import { positions } from "./positions.js";
import { average, placeOf, rpmsByPlace } from "./readings.js";

export type WildReading = {
  readonly name: string;
  readonly rpm: number;
  /** What the other readings lead one to expect there. */
  readonly expectedRpm: number;
};

export type SlipFinding = {
  readonly stages: readonly StageSlip[];
  readonly wild: readonly WildReading[];
  /** Speed left by slip through these steps, a fraction of the speed by ratio. */
  readonly left: (usesBelt: readonly boolean[]) => number;
};

/** A reading is wild when the others, fitted without it, foretell it worse than this share and four times worse than
 *  they foretell one another. Own choice; a hand tachometer reads to better than 1 %. */
export const WILD_SHARE = 0.03;
const WILD_TIMES = 4;

/** What a fit takes from one position's reading, or from several through the same belts: y is the logarithm of measured
 *  speed over speed by ratio. */
type Readings = {
  readonly belts: readonly boolean[];
  readonly count: number;
  /** Σ y */
  readonly sum: number;
};
type Row = Readings & { readonly name: string; readonly rpm: number; readonly byRatio: number };

/** Slip of each belt from the tachometer readings, by least squares over the positions: the logarithm of measured speed
 *  over speed by ratio is the sum of the logarithms of (1 − slip) of the belts in use. Gears do not slip. Undefined
 *  without a reading of the spindle. */
export function slipPerStage(drive: Drive): SlipFinding | undefined {
  const read = rpmsByPlace(drive.tachometer);
  const all = positions(drive).flatMap((position): Row[] => {
    const here = read.get(placeOf(position));
    if (here === undefined) return [];
    const belts = position.steps.map(({ kind }) => kind === "belt");
    const byRatio = drive.motor.fastestRpm * position.ratio;
    const rpm = average(here);
    return [{ name: position.name, rpm, byRatio, belts, count: 1, sum: Math.log(rpm / byRatio) }];
  });
  if (all.length === 0) return undefined;
  const wild: WildReading[] = [];
  let rows = all;
  for (let worst = wildest(rows); worst !== undefined; worst = wildest(rows)) {
    const { row, expectedRpm } = worst;
    wild.push({ name: row.name, rpm: row.rpm, expectedRpm });
    rows = rows.filter((other) => other !== row);
  }
  const fitted = fitSlips(rows);
  const stages = fitted.groups.map((group, index) => ({
    stages: group.map((stage) => drive.stages[stage]?.name ?? ""),
    slip: 1 - Math.exp(fitted.logs[index] ?? 0),
  }));
  return { stages, wild, left: (belts) => Math.exp(foretold(belts, fitted)) };
}

/** `groups`: indices of the stages that are fitted together; `logs`: their ln(1 − slip). */
type Fit = { readonly groups: readonly (readonly number[])[]; readonly logs: readonly number[] };

function fitSlips(rows: readonly Readings[]): Fit {
  const stages = rows[0]?.belts.map((_, index) => index) ?? [];
  const pattern = (stage: number) => rows.map(({ belts }) => (belts[stage] ? "1" : "0")).join("");
  const used = stages.filter((stage) => pattern(stage).includes("1"));
  const patterns = [...new Set(used.map(pattern))];
  const groups = patterns.map((own) => used.filter((stage) => pattern(stage) === own));
  // Readings through the same belts count as their mean, with the weight of their number.
  const logs = leastSquares(
    rows.map(({ belts, count }) => groups.map(([first = 0]) => (belts[first] ? Math.sqrt(count) : 0))),
    rows.map(({ sum, count }) => sum / Math.sqrt(count)),
  );
  if (logs !== undefined) return { groups, logs };
  // Too few readings to part the stages: all that is known is the mean over the whole drive.
  return used.length === 0
    ? { groups: [], logs: [] }
    : { groups: [used], logs: [total(rows, "sum") / total(rows, "count")] };
}

/** A group counts where any of its belts carries the power. */
const foretold = (belts: readonly boolean[], { groups, logs }: Fit): number =>
  groups.reduce((sum, group, index) => sum + (group.some((stage) => belts[stage]) ? (logs[index] ?? 0) : 0), 0);

const residual = ({ belts, sum }: Row, fitted: Fit): number => sum - foretold(belts, fitted);

/** The reading that the others contradict most, if any does. Three at least must be left to judge it by. */
function wildest(rows: readonly Row[]): { row: Row; expectedRpm: number } | undefined {
  if (rows.length < 4) return undefined;
  let worst: { row: Row; expectedRpm: number; off: number } | undefined;
  for (const row of suspects(rows)) {
    const others = rows.filter((other) => other !== row);
    const fitted = fitSlips(others);
    const off = Math.abs(residual(row, fitted));
    const usual = Math.sqrt(average(others.map((other) => residual(other, fitted) ** 2)));
    if (off <= Math.max(WILD_SHARE, WILD_TIMES * usual) || off <= (worst?.off ?? 0)) continue;
    worst = { row, off, expectedRpm: row.byRatio * Math.exp(foretold(row.belts, fitted)) };
  }
  return worst;
}

/** Those that the others foretell badly, near enough. Readings through the same belts are taken together, so that hundreds
 *  are looked through quickly; most drives have no suspect at all. */
function suspects(rows: readonly Row[]): Row[] {
  const together = new Map<string, Readings>();
  const keyOf = ({ belts }: Readings) => belts.join();
  for (const row of rows) {
    const { count = 0, sum = 0 } = together.get(keyOf(row)) ?? {};
    together.set(keyOf(row), { belts: row.belts, count: count + 1, sum: sum + row.sum });
  }
  return rows.filter((row) => {
    const own = together.get(keyOf(row));
    const others = [...together.values()]
      .map((all) => (all === own ? { ...all, count: all.count - 1, sum: all.sum - row.sum } : all))
      .filter(({ count }) => count > 0);
    return Math.abs(residual(row, fitSlips(others))) > 0.99 * WILD_SHARE;
  });
}

const total = (rows: readonly Readings[], key: "count" | "sum"): number => rows.reduce((all, row) => all + row[key], 0);
