import { gatheredError } from "../../dividing/compound.js";
import { writeDegrees } from "../../dividing/degrees.js";
import { movementWritten, type RingIndexing, readingError } from "../../dividing/ringCutting.js";
import type { HandwheelFinding } from "../../findings/findings.js";
import type { Machine } from "../../machine/machine.js";
import { TURN } from "../../quantity/angle.js";
import { formatFixed, unitName } from "../../quantity/format.js";
import { fromMm } from "../../quantity/length.js";
import { inDecimals, say } from "../../words/say.js";

type Hole = { readonly turns?: number; readonly holes: number; readonly circle: number };

/** How to come from mark to mark with what is at hand, a line for each way. `equal`: how many equal divisions the ring has. */
export function indexingLines(
  finding: HandwheelFinding,
  equal: number | undefined,
  indexing: RingIndexing,
  machine: Machine,
): string[] {
  return [...byCrank(finding, equal, indexing, machine), ...byGears(indexing, machine)];
}

function byCrank(
  { reading }: HandwheelFinding,
  equal: number | undefined,
  indexing: RingIndexing,
  { dividing, units }: Machine,
): string[] {
  if (dividing === undefined || reading === undefined) return [];
  const { ratio } = dividing;
  const reads = (crank: number) =>
    `${formatFixed(fromMm(Math.abs(readingError(crank, ratio, reading.perTurn)), units), units === "mm" ? 5 : 6)} ${unitName(units)}`;
  const angle = (crank: number) => inDecimals(writeDegrees(Math.abs(crank / ratio) * TURN));
  const { simple, compound, differential, nearest } = indexing;
  const said: string[] = [];
  if (equal !== undefined) {
    const turns = inDecimals(movementWritten(ratio, equal));
    said.push(
      simple.length > 0
        ? say("ring cutting.simple", { ratio, turns, ways: simple.map(holesWords).join(say("ring cutting.or")) })
        : say("ring cutting.not simple", { ratio, turns }),
    );
  }
  for (const move of compound.slice(0, 2)) {
    const { first, second, divisionsAtOnce, error } = move;
    const way = second.holes > 0 ? "forward" : "back";
    const holes = {
      first: holesWords(first),
      second: holesWords({ ...second, holes: Math.abs(second.holes) }),
      round: divisionsAtOnce > 1 ? say("ring cutting.round", { divisions: divisionsAtOnce }) : "",
    };
    said.push(
      error === 0
        ? say(`ring cutting.compound exact ${way}`, holes)
        : say(`ring cutting.compound ${way}`, {
            ...holes,
            angle: angle(error),
            reading: reads(gatheredError(move, equal ?? 1)),
          }),
    );
  }
  for (const { ratio: plate, drivers, driven, ...hole } of differential.slice(0, 1))
    said.push(
      say(plate.numerator > 0 ? "ring cutting.differential with" : "ring cutting.differential against", {
        holes: holesWords(hole),
        drivers: andWords(drivers),
        driven: andWords(driven),
      }),
    );
  if (nearest)
    said.push(
      say("ring cutting.nearest", {
        circle: nearest.circle,
        angle: angle(nearest.worst),
        reading: reads(nearest.worst),
      }),
    );
  return said;
}

function byGears(indexing: RingIndexing, { dividing, gears }: Machine): string[] {
  const said = indexing.gears
    .slice(0, 2)
    .map(({ teeth, step, detents }) =>
      detents > 1
        ? say("ring cutting.gear detents", { teeth, detents, n: step })
        : step === 1
          ? say("ring cutting.gear", { teeth })
          : say("ring cutting.gear step", { teeth, step }),
    );
  const move = (n: number) => say(n < 0 ? "ring cutting.teeth back" : "ring cutting.teeth forward", { n: Math.abs(n) });
  for (const { gears: pair, first, second } of indexing.gearPairs.slice(0, 1))
    said.push(
      say("ring cutting.gear pair", { first: pair[0], second: pair[1], one: move(first), other: move(second) }),
    );
  if (dividing === undefined && indexing.gears.length === 0)
    said.push(say(gears === undefined ? "ring cutting.give dividing" : "ring cutting.no gear"));
  return said;
}

const holesWords = ({ turns = 0, holes, circle }: Hole): string =>
  turns > 0
    ? say("ring cutting.turns and holes", { n: turns, holes, circle })
    : say("ring cutting.holes", { holes, circle });

const andWords = (numbers: readonly number[]): string =>
  numbers.map(String).reduce((one, other) => say("ring cutting.and", { one, other }));
