import { lowered, mirrored, moved, type Outline, type Stretch } from "../../part/outline.js";
import { endsOf, shifted, turnedRound, type Workpiece } from "../../part/workpiece.js";
import type { Stage } from "../../plan/stage.js";

/** How places of one set-up lie in the first one: `sign` · z + `offset`, mm from the first end's finished face. */
export type Frame = { readonly sign: 1 | -1; readonly offset: number };

/** One for each stage. Work that is turned round counts from its other end; what stood at the end of the stage before lies, turned
 *  round, at its beginning. */
export function framesOf(stages: readonly Stage[]): Frame[] {
  let frame: Frame = { sign: 1, offset: 0 };
  return stages.map(({ step, after }, place) => {
    const last = stages[place - 1]?.after;
    if (step.do === "turn round" && last !== undefined) {
      const about = endsOf(last).to + endsOf(after).from;
      frame = { sign: frame.sign === 1 ? -1 : 1, offset: frame.sign * about + frame.offset };
    }
    return frame;
  });
}

export const placeIn = ({ sign, offset }: Frame, z: number): number => sign * z + offset;

const outlineIn = ({ sign, offset }: Frame, outline: Outline): Outline =>
  sign === 1 ? moved(outline, offset) : mirrored(outline, offset);

export const stretchesIn = (frame: Frame, stretches: readonly Stretch[]): Outline => outlineIn(frame, stretches);

export const workIn = ({ sign, offset }: Frame, work: Workpiece): Workpiece =>
  sign === 1 ? shifted(work, offset) : turnedRound(work, offset - endsOf(work).to);

/** A job may ask for a bore that is wider than the work: it is drawn no wider than that. */
export const walled = (work: Workpiece): Workpiece => ({ ...work, bore: work.outside.reduce(lowered, work.bore) });
