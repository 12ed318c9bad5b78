import { group } from "../../drawing/shapes.js";
import type { Machine } from "../../machine/machine.js";
import { say } from "../../words/say.js";
import { block, type Run } from "../shared/block.js";
import { NoRoom } from "../shared/noRoom.js";
import { heightOf, lowered } from "../shared/runs.js";
import { printerMarks } from "./printerMarks.js";
import { rules } from "./printerRule.js";
import { printerRecord, printerSteps } from "./printerWords.js";
import { stack } from "./stack.js";

/** Combs along the bars, numbers included, and what the diagonals take of a corner down the page; mm. */
const combDepth = 9;
const cornerDepth = 25.5;
const footDepth = 19;
/** From a side, what keeps clear of the combs at its lower corner. */
const beside = 22;
/** From the cross in the middle. */
const CLEAR = 4;
/** Of the foot, which stands between the bars where they reach so far down, its notes may lie beside the corners; the
 *  numbers of a corner's comb reach 4.5 mm further down, and keep clear of the title block. */
const besideFoot = 5.5;

/** The most that the bars are long, and how near to the paper's edge one may come, mm. */
export const usualBars = { across: 200, down: 250, edge: 5 };

type On = { readonly left: number; readonly top: number; readonly width: number; readonly height: number };

/** How long the bars are, mm, that stand in a room on the paper: the most that are wished, in whole tens or whole inches. `round`: what
 *  they may come round, where that is the whole paper. */
export function barsIn(
  { units }: Pick<Machine, "units">,
  most: { readonly across: number; readonly down: number; readonly edge: number },
  room: { readonly width: number; readonly height: number },
  round?: Pick<On, "top" | "width">,
): { readonly across: number; readonly down: number } {
  const rule = rules[units];
  // 200 mm may as well be 8 in where the paper has room.
  const whole = (most: number, room: number) =>
    rule.bar * Math.floor(Math.min(rule.bar * Math.round(most / rule.bar), room) / rule.bar + 1e-9);
  return {
    across: whole(most.across, round ? round.width - 2 * most.edge : room.width),
    down: whole(most.down, round ? round.top + room.height + besideFoot - most.edge : room.height),
  };
}

/** A rectangle whose top and left sides are the bars to measure and whose corners carry the diagonals. Where it is higher than what
 *  head and foot leave it stands round them, as near to the paper's edge as `edge`. `across`, `down`: the most, mm; whole
 *  tens, or whole inches. */
export const printerCheck = block(usualBars, ({ findings: { machine }, settings, width, height, paper }): Run[] => {
  const rule = rules[machine.units];
  const { edge } = settings;
  const on: On = paper ?? { left: 0, top: 0, width, height };
  const { across, down } = barsIn(machine, settings, { width, height }, paper);
  if (across < 3 * rule.bar || down < 3 * rule.bar) throw new NoRoom(say("no room.bars"));
  const within = down <= height;
  const middle = (on.width - across) / 2;
  // Its top left corner, on the paper. Round the head its left comb stands beside it.
  const left = within ? middle : Math.max(edge, Math.min(middle, on.left - combDepth));
  const top = within ? on.top : edge;

  const from = Math.max(left + combDepth + 3, on.left);
  const to = Math.min(left + across - combDepth - 3, on.left + width);
  const first = Math.max(top + cornerDepth, on.top + 2);
  const centre = top + down / 2;
  const last = top + down - footDepth;
  const nominal = { across, down, diagonal: Math.hypot(across, down) };
  // Below, either as wide as above or narrower and down between the combs.
  const lower = [
    { x: from, width: to - from, room: last - centre - CLEAR },
    { x: left + beside, width: across - 2 * beside, room: top + down - 3 - centre - CLEAR },
  ];
  for (const { above, rest } of printerSteps(machine, nominal, to - from)) {
    if (heightOf(above) > centre - CLEAR - first) continue;
    for (const { x, width: wide, room } of lower) {
      const below = printerRecord(machine, nominal, wide)
        .map((record) => [...rest(wide), ...lowered(record, 2)])
        .find((runs) => heightOf(runs) <= room);
      if (below === undefined) continue;
      const marks = [
        group({ x: left - on.left, y: top - on.top }, printerMarks(rule, { across, down, bottom: within })),
        group({ x: from - on.left, y: first - on.top }, stack(above, to - from).marks),
        group({ x: x - on.left, y: centre + CLEAR - on.top }, stack(below, wide).marks),
      ];
      return [{ drawing: { width, height: within ? down : height, marks } }];
    }
  }
  throw new NoRoom(say("no room.words of bars"));
});
