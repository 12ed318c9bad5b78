import type { Setting } from "../../dial/setting.js";
import { dialToRead } from "../../findings/dialToRead.js";
import type { Findings, HandwheelFinding } from "../../findings/findings.js";
import { wheelFor } from "../../findings/roles.js";
import { settingToMove } from "../../findings/settings.js";
import { dialTurnWords, figureUnit } from "../../findings/settingWords.js";
import type { TaperWish, Units } from "../../machine/machine.js";
import { formatFixed, sizeFigure, trimmedSize, unitName } from "../../quantity/format.js";
import { fromMm } from "../../quantity/length.js";
import { centresBear, pinDifference, riseAlongSlide, setOver } from "../../taper/taper.js";
import { say, withinSentence } from "../../words/say.js";
import type { Run } from "../shared/block.js";
import { paragraph } from "../shared/paragraph.js";
import { heading } from "../shared/runs.js";
import { size } from "../shared/style.js";
import { type Cell, type Column, table } from "../shared/table.js";
import { turnsAndReading } from "./turnsAndReading.js";

/** How far the swivelled slide goes for one taper of known length, what its wheel is set to, and whether it goes so far at all; mm. */
type Cut = {
  readonly along: number;
  readonly turns: number;
  readonly setting: Setting | undefined;
  readonly goesIn: number;
  readonly tooLong: boolean;
};

/** A column, and its cell for each taper. */
type Part = {
  readonly shown?: boolean;
  readonly column: Column;
  readonly cell: (taper: TaperWish, cut: Cut | undefined) => Cell;
};

/** The turns of this machine for each of the file's tapers, a gauge of two pins, and the tailstock set over instead. */
export function ownTapers(
  { machine, handwheels }: Findings,
  tapers: readonly TaperWish[],
  over: number,
  width: number,
): Run[] {
  const { units } = machine;
  const top = wheelFor("swivelled", handwheels);
  const unit = unitName(units);
  const fine = (mm: number) => formatFixed(fromMm(mm, units), units === "mm" ? 3 : 4);
  const between = over / 2;
  const cuts = tapers.map((taper) => cutOf(taper, top));
  const told = cuts.some((cut) => cut !== undefined);
  const steep = tapers.some(({ halfAngle }) => !centresBear(halfAngle));
  const all: readonly Part[] = [
    {
      column: { heading: [say("tapers.taper")], align: "start", key: true },
      cell: ({ name }) => ({ text: name, weight: "bold" }),
    },
    {
      shown: tapers.some(({ large, small }) => large !== undefined && small !== undefined),
      column: { heading: [say("tapers.sizes"), unit], align: "end", optional: true },
      cell: ({ large, small }) => ({
        text: large === undefined || small === undefined ? "" : `${sized(large, units)}, ${sized(small, units)}`,
      }),
    },
    {
      shown: told,
      column: {
        heading: [say("tapers.turns of", { wheel: withinSentence(top?.handwheel.name ?? "") })],
        align: "decimal",
      },
      cell: (_, cut) =>
        cut === undefined
          ? { text: "" }
          : {
              text: formatFixed(cut.turns, 2),
              weight: "bold",
              size: size.card,
              ...(cut.tooLong
                ? { note: say("tapers.settings") }
                : top &&
                  dialToRead(top) &&
                  cut.setting && { note: `${turnsAndReading(top, cut.setting)} ${figureUnit(top)}` }),
            },
    },
    {
      shown: told,
      column: { heading: [say("tapers.along"), unit], align: "decimal" },
      cell: (_, cut) => ({ text: cut === undefined ? "" : sized(cut.along, units) }),
    },
    {
      shown: told,
      column: { heading: [say("tapers.goes in"), unit], align: "decimal" },
      cell: (_, cut) => ({ text: cut === undefined ? "" : sized(cut.goesIn, units) }),
    },
    {
      column: { heading: [say("tapers.pins", { length: trimmedSize(between, units) }), unit], align: "decimal" },
      cell: ({ halfAngle }) => ({ text: fine(pinDifference(2 * halfAngle, between)) }),
    },
    {
      column: {
        heading: [say("tapers.over"), say("tapers.of work", { unit, length: trimmedSize(over, units) })],
        align: "decimal",
      },
      cell: ({ halfAngle }) => ({ text: centresBear(halfAngle) ? fine(setOver(halfAngle, over)) : "–" }),
    },
  ];
  const shown = all.filter(({ shown = true }) => shown);
  const rows = tapers.map((taper, index) => shown.map(({ cell }) => cell(taper, cuts[index])));
  const travel = top?.handwheel.travel;
  const notes = [
    ...(travel !== undefined && cuts.some((cut) => cut?.tooLong)
      ? [say("tapers.too long", { travel: trimmedSize(travel, units) })]
      : []),
    ...(top && cuts.some((cut) => cut?.setting !== undefined && !cut.tooLong) ? zeroOfSlope(top) : []),
    ...(steep ? [say("tapers.too steep")] : []),
  ];
  return [
    ...heading(say("tapers.cut"), width, 5),
    ...table(
      shown.map(({ column }) => column),
      rows,
      { width },
    ),
    ...notes.flatMap((words, index) => paragraph(words, width, { gap: index === 0 ? 1 : 0 })),
    ...paragraph(say("tapers.how cut"), width, { size: size.source, gap: 1 }),
  ];
}

/** From where the small figures count that stand below the turns: without a dial there are none. */
function zeroOfSlope(top: HandwheelFinding): string[] {
  const dial = dialToRead(top);
  if (dial === undefined) return [];
  return [dial.fixed ? say("tapers.dial goes on", { turn: dialTurnWords(top) ?? "" }) : say("tapers.dial from 0")];
}

const sized = (mm: number, units: Units): string => sizeFigure(mm, units);

/** Undefined where the file gives no length, or nothing swivels that has a feed. */
function cutOf({ length, halfAngle }: TaperWish, top: HandwheelFinding | undefined): Cut | undefined {
  if (length === undefined || top?.feed === undefined) return undefined;
  const along = length / Math.cos(halfAngle);
  const { travel } = top.handwheel;
  return {
    along,
    turns: along / top.feed.perTurn,
    setting: settingToMove(top, along),
    goesIn: riseAlongSlide(halfAngle, along),
    tooLong: travel !== undefined && along > travel,
  };
}
