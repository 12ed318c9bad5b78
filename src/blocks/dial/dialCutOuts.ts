import type { DialFinding } from "../../dial/finding.js";
import { growthOf } from "../../dial/growth.js";
import type { Drawing } from "../../drawing/drawing.js";
import type { HandwheelFinding } from "../../findings/findings.js";
import type { Machine, Units } from "../../machine/machine.js";
import { type Measure, measureOfPiece, measuresOf } from "../../paper/measuredPiece.js";
import { TURN } from "../../quantity/angle.js";
import { formatSize, sizeFigure } from "../../quantity/format.js";
import { say } from "../../words/say.js";
import { markRoom } from "../shared/cut.js";
import { type CellNumber, cellFoot } from "./cell.js";
import { indexSticker, vernierSticker } from "./companion.js";
import { type CutOut, cellHeight, withCutRoom } from "./cutOuts.js";
import { cross, type DialPiece, type DialPlan, piecesOf } from "./dialPiece.js";
import { dialEssentials, dialLegend, errorNumber, leastCount, vernierLimit } from "./dialWords.js";
import { seamView } from "./seamView.js";
import { dialSurface, type Surface } from "./surface.js";

export type WholePlan = DialPlan & { readonly dial: DialFinding };

/** A dial with all that is printed of it; its pieces are undefined where the paper is too small even for small ones. */
export type DialSet = {
  readonly finding: HandwheelFinding;
  readonly dial: DialFinding;
  readonly plan: WholePlan;
  readonly pieces: readonly DialPiece[] | undefined;
};

export function dialPlan(finding: HandwheelFinding, machine: Machine): WholePlan | undefined {
  const { handwheel, dial } = finding;
  const wish = handwheel.dial;
  if (dial === undefined || wish === undefined) return undefined;
  const { flat } = dial;
  if (flat === undefined || dial.rows.length === 0) return undefined;
  return {
    dial,
    flat,
    legend: dialLegend(finding, dial, machine),
    essentials: dialEssentials(finding, machine),
    ...(wish.lap !== undefined && { lap: wish.lap }),
    ...(wish.index !== undefined && { index: wish.index }),
  };
}

/** Room tried below a piece for what stands there, mm: what is not needed there is left for larger pieces. */
const footRooms = [15, 20, 25, 30, 36, 42, 50] as const;

export function dialSet(
  finding: HandwheelFinding,
  machine: Machine,
  { width, height }: { readonly width: number; readonly height: number },
): DialSet | undefined {
  const plan = dialPlan(finding, machine);
  if (plan === undefined || finding.dial === undefined) return undefined;
  const set = { finding, dial: finding.dial, plan };
  const { cutRoom } = surfaceOf(plan);
  const within = (room: number, foot: number) =>
    piecesOf(plan, { width: width - 2 * room, height: height - foot - 2 * room });
  for (const foot of footRooms) {
    // A whole ring asks less room for its cut marks than a part of one, so that is tried first.
    const first = within(cutRoom, foot);
    const pieces = first && first.length > 1 ? within(markRoom, foot) : first;
    if (pieces === undefined) break;
    const cells = pieces.map((piece) => dialCutOut({ ...set, pieces }, piece, 1, machine.units, width));
    if (cells.every((cell) => cellHeight(cell) <= height)) return { ...set, pieces };
  }
  return { ...set, pieces: undefined };
}

const surfaceOf = ({ flat, dial, lap = 0 }: DialPlan): Surface =>
  dialSurface(flat, { from: 0, to: TURN, tab: lap, growth: growthOf(dial) });

export type DialSettings = { readonly copies: number; readonly index: boolean; readonly blank: boolean };

/** What tells the pieces of one copy from those of the next; the first is 0. */
export const setOf = (copy: number): string => `copy ${copy + 1}`;

/** Every piece of a dial, in cells: the copies, the index line or vernier, a blank where one is asked for. */
export function dialCutOuts(set: DialSet, settings: DialSettings, units: Units, most: number): CutOut[] {
  const { finding, pieces } = set;
  if (pieces === undefined) return [];
  const copies = Math.max(1, settings.copies);
  const { name } = finding.handwheel;
  return [
    ...Array.from({ length: copies }, (_, copy) =>
      pieces.map((piece) => ({
        ...dialCutOut(set, piece, copies > 1 ? copy + 1 : undefined, units, most),
        set: setOf(copy),
      })),
    ).flat(),
    ...(settings.index ? [companionCutOut(set, most)] : []),
    ...(settings.blank && pieces.length === 1 ? [blankCutOut(name, set.plan, most)] : []),
  ].map((cut) => ({ ...cut, besides: name }));
}

/** Each is drawn once for all copies. */
const seams = new WeakMap<DialPiece, Drawing>();
function seamOf(plan: WholePlan, piece: DialPiece): Drawing {
  const drawn = seams.get(piece) ?? seamView(plan, piece.joint);
  seams.set(piece, drawn);
  return drawn;
}

function dialCutOut(set: DialSet, piece: DialPiece, copy: number | undefined, units: Units, most: number): CutOut {
  const { finding, plan, pieces = [] } = set;
  const drawing = withCutRoom(piece.drawing, piece.cutRoom);
  const title = [
    finding.handwheel.name,
    ...(copy === undefined ? [] : [say(copy === 1 ? "dials.copy" : "dials.spare copy", { copy })]),
    ...(piece.pieces > 1 ? [say("dials.piece of", { piece: piece.piece, pieces: piece.pieces })] : []),
  ].join(", ");
  const joined = plan.flat.kind === "strip" || plan.flat.sweep < TURN - 1e-9;
  const missing = missingOn(pieces);
  const foot = {
    title,
    numbers: numbersOf(set, piece, units),
    ...(joined && { picture: seamOf(plan, piece) }),
    ...(missing.length > 0 && { lines: [say("dials.not on it", { words: missing.join(" · ") })] }),
  };
  return { drawing, name: plan.flat.kind, caption: cellFoot(foot, drawing.width, most) };
}

/** Division, sizes, and what the reading is off over the travel. */
function numbersOf({ dial, plan }: DialSet, piece: DialPiece, units: Units): CellNumber[] {
  const scales = [dial, ...(dial.second ? [dial.second] : [])];
  return [
    {
      value: scales.map(({ chosen }) => chosen.divisionLabel).join(" / "),
      label: say("dials.one of", { divisions: scales.map(({ chosen }) => chosen.divisions).join(" / ") }),
    },
    ...sizesOf(dial, plan, piece, units),
    errorNumber(
      scales.map(({ chosen }) => chosen),
      units,
    ),
  ];
}

function sizesOf(dial: DialFinding, { flat, lap = 0 }: DialPlan, piece: DialPiece, units: Units): CellNumber[] {
  const [whole, second] = measuresOf(dial, units);
  const give = ({ wanted, slack }: Measure) => `${sizeFigure(wanted, units)} ± ${formatSize(slack, units)}`;
  const parts = piece.pieces > 1;
  const first = parts ? measureOfPiece(dial, piece, units) : whole;
  if (first === undefined) return [];
  const own = give(first);
  // The corner marks stand about the tab as well.
  const tab = (label: string): CellNumber[] =>
    lap > 0
      ? [
          { value: own, label: say("dials.to tab") },
          { value: formatSize(piece.length + lap, units), label: say("dials.with tab") },
        ]
      : [{ value: own, label }];
  if (flat.kind === "strip") return tab(say("dials.between cuts"));
  const radii = {
    value: `${sizeFigure(flat.outer, units)} / ${formatSize(flat.inner, units)}`,
    label: say("dials.radii"),
  };
  const round = flat.sweep > TURN - 1e-9;
  if (round && !parts)
    return [
      { value: own, label: say("dials.across") },
      { value: formatSize(2 * flat.inner, units), label: say("dials.hole") },
    ];
  return [
    ...tab(say("dials.along arc")),
    // The chord of the whole is nowhere on a ring in pieces.
    ...(second && !parts
      ? [{ value: give(second), label: say(flat.sweep < Math.PI ? "dials.corner to corner" : "dials.across widest") }]
      : []),
    radii,
  ];
}

/** What is on none of the pieces, for a pencil. */
export function missingOn(pieces: readonly DialPiece[]): string[] {
  const [first, ...others] = pieces.map(({ left }) => left);
  return [...new Set(first)].filter((words) => others.every((left) => left.includes(words)));
}

function companionCutOut({ finding, dial, plan }: DialSet, most: number): CutOut {
  const { name } = finding.handwheel;
  const cell = (drawing: CutOut["drawing"], title: string, lines: readonly string[] = []): CutOut => ({
    drawing,
    name: "companion",
    caption: cellFoot({ title, numbers: [], lines }, drawing.width, most),
  });
  if (dial.vernier === undefined) return cell(indexSticker(plan.flat, 9), say("dials.index of", { name }));
  const [count, ends] = [leastCount(dial), vernierLimit(dial)];
  return cell(
    vernierSticker(plan.flat, dial.vernier, dial, say("dials.vernier", { count })),
    say("dials.vernier of", { name, count }),
    [say("dials.vernier zero"), ...(ends === undefined ? [] : [ends])],
  );
}

function blankCutOut(name: string, plan: DialPlan, most: number): CutOut {
  const surface = surfaceOf(plan);
  const { centre, width, height, cutRoom } = surface;
  const marks = [...surface.cuts(), ...(centre ? cross(centre, 6) : [])];
  const drawing = withCutRoom({ width, height, marks }, cutRoom);
  const title = say("dials.blank", { name });
  return { drawing, name: "blank", caption: cellFoot({ title, numbers: [] }, drawing.width, most) };
}
