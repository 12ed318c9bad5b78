import type { Drawing, Mark } from "../../drawing/drawing.js";
import { group } from "../../drawing/shapes.js";
import { textWidth } from "../../drawing/text.js";
import type { Drive, Stage, Step } from "../../machine/machine.js";
import { say } from "../../words/say.js";
import { gearPairs, gearRoom } from "./gearPairs.js";
import { beltSteps, leastWidth, type Room, type Shafts, stepPulleys } from "./stepPulleys.js";
import { size } from "./style.js";

/** One stage, and the least room for its picture. */
export type Part = { readonly stage: Stage; readonly index: number; readonly belt: boolean; readonly least: Room };

/** A pair of cones needs so much in height, names of the shafts included; more is used up to `MOST`, mm. */
const LEAST = 2 * size.text * 1.25 + 19.5;
const MOST = 56;
const partGap = 2.2;
const acrossGap = 6;

/** Where a hand lays a belt, and the gears that it shifts: the spindle's end first. Single pulleys only where there is nothing else,
 *  or where `every` belt is asked for. */
export function pictureParts(drive: Drive, { every = false } = {}): Part[] {
  const { stages } = drive;
  const parts = stages.map((stage, index): Part | undefined => {
    const gears = gearRoom(stage);
    if (beltSteps(stage).length > 0)
      return {
        stage,
        index,
        belt: true,
        least: { width: Math.max(leastWidth(stage), named(drive, index)), height: LEAST },
      };
    return gears && { stage, index, belt: false, least: gears };
  });
  const all = parts.flatMap((part) => part ?? []).reverse();
  if (every) return all;
  const chosen = all.filter(({ stage, belt }) => !belt || stage.steps.length > 1);
  return chosen.some(({ belt }) => belt) ? chosen : all;
}

/** What the names of a stage's two shafts take across. */
function named(drive: Drive, index: number): number {
  const { driver, driven } = shaftsOf(drive, index);
  return Math.max(...[driver, driven].map((words) => textWidth(words, size.text, "regular")));
}

/** Least room for all parts below one another, or side by side. */
export function pictureRoom(drive: Drive, across: boolean): Room {
  const rooms = pictureParts(drive).map(({ least }) => least);
  const sum = (of: (room: Room) => number, gap: number) =>
    rooms.reduce((total, room) => total + of(room), 0) + gap * Math.max(0, rooms.length - 1);
  const most = (of: (room: Room) => number) => Math.max(0, ...rooms.map(of));
  return across
    ? { width: sum(({ width }) => width, acrossGap), height: most(({ height }) => height) }
    : { width: most(({ width }) => width), height: sum(({ height }) => height, partGap) };
}

/** Every cone pulley once, every shaft named (a countershaft in either picture: it bears another cone in each, where another belt lies), belts on the steps of `chosen`, and gears in mesh where they are (one step a stage, motor end first). Spindle above or
 *  left, motor below or right. */
export function drivePicture(drive: Drive, chosen: readonly Step[] | undefined, room: Room, across: boolean): Drawing {
  const parts = pictureParts(drive);
  const least = pictureRoom(drive, across);
  const belts = parts.filter(({ belt }) => belt).length;
  const marks: Mark[] = [];
  let [x, y, height, width] = [0, 0, 0, 0];
  for (const { stage, index, belt, least: own } of parts) {
    const more = belt ? Math.max(0, room.height - least.height) / (across ? 1 : belts) : 0;
    const size: Room = across
      ? { width: own.width, height: belt ? Math.min(MOST, room.height) : own.height }
      : { width: room.width, height: Math.min(MOST, own.height + more) };
    const step = chosen?.[index];
    const drawing = belt ? stepPulleys(stage, step, size, shaftsOf(drive, index)) : gearPairs(stage, step, size);
    if (drawing === undefined) continue;
    marks.push(group({ x, y }, drawing.marks));
    [width, height] = [Math.max(width, x + size.width), Math.max(height, y + size.height)];
    if (across) x += size.width + acrossGap;
    else y += size.height + partGap;
  }
  return { width, height, marks };
}

/** What the two shafts of a stage are called, by where it stands between motor and spindle. */
export function shaftsOf({ stages, motor }: Drive, index: number): Shafts {
  // Switching a motor's speeds, or passing straight through, joins no shaft.
  const moves = (stage: Stage) => stage.steps.some(({ kind }) => kind === "belt" || kind === "gears");
  // Gears that come back to the axis they began on, as a back gear does.
  const returns = ({ steps }: Stage) =>
    steps.every((step) => step.kind === "direct" || (step.kind === "gears" && step.pairs.length % 2 === 0));
  const before = stages.slice(0, index).filter(moves).length;
  const between = stages
    .slice(0, -1)
    .filter((stage, at) => moves(stage) && !stages.slice(at + 1).every(returns)).length;
  const name = (shaft: number): string => {
    if (shaft === 0) return say(motor.by === undefined ? "belt card.motor" : motorNames[motor.by]);
    if (shaft > between) return say("belt card.spindle");
    return between === 1 ? say("belt card.countershaft") : say("belt card.countershaft number", { n: shaft });
  };
  return { driver: name(before), driven: name(before + 1) };
}

const motorNames = { treadle: "belt card.treadle", hand: "belt card.crank" } as const;
