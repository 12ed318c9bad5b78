import type { JobStep } from "../../job/job.js";
import { asOnPaper } from "../../machine/written.js";
import { cylinder, diameterAt, diameterOf, greatest, HAIR, type Outline } from "../../part/outline.js";
import { endsOf, type Workpiece } from "../../part/workpiece.js";
import { isBlock } from "../../plan/block.js";
import type { Stage } from "../../plan/stage.js";
import { TAPER_END } from "../../plan/tapers.js";
import { threadOnPaper } from "../../thread/onPaper.js";
import { threadNamed } from "../../thread/thread.js";
import { say } from "../../words/say.js";
import { type Frame, framesOf, placeIn, stretchesIn, walled, workIn } from "./partFrame.js";
import { corners } from "./workView.js";

/** `places`: of a millimetre, fewer than a drawing may have. */
type Words = (mm: number, places?: number) => string;

/** What is said of one surface of the finished part; places in the first set-up, mm. */
export type Feature = {
  /** Index of the stage that makes it; absent where the bar's own surface is left. */
  readonly stage?: number;
  readonly kind: "outside" | "inside" | "face";
  /** Where it can be pointed at; a face has both alike. */
  readonly from: number;
  readonly to: number;
  /** Its size, or what is done to a face. */
  readonly words: string;
  /** Where it lies, for a list where nothing points at it. */
  readonly where: string;
};

/** A length along the part, from the end that its step counts from. */
export type Length = {
  readonly origin: number;
  readonly place: number;
  readonly words: string;
  readonly from: "first" | "other" | "end to end";
};

/** What a step makes that the finished part no longer shows. */
export type Gone = { readonly stage: number; readonly words: string };

/** A part with all that its drawing says. */
export type Part = {
  /** In the first set-up; its end at the chuck is broken off where nothing says where it ends. */
  readonly finished: Workpiece;
  readonly stock: Workpiece;
  readonly bounded: boolean;
  /** Nothing is known of the outside: a job of holes. */
  readonly block: boolean;
  readonly features: readonly Feature[];
  readonly gone: readonly Gone[];
  readonly lengths: readonly Length[];
};

const NEAR = 1e-6;

/** Places of a millimetre for the tip of a centre drill: one in 64ths of an inch has more decimals than anybody reads. */
const TOOL_PLACES = 3;

export function partOf(stages: readonly Stage[], words: Words): Part {
  const frames = framesOf(stages);
  const [first, last] = [stages[0], stages.at(-1)];
  const nothing: Workpiece = { outside: [], bore: [], surfaces: [] };
  if (first === undefined || last === undefined)
    return { finished: nothing, stock: nothing, bounded: true, block: false, features: [], gone: [], lengths: [] };
  const frameOf = (index: number): Frame => frames[index] ?? { sign: 1, offset: 0 };
  const stock = workIn(frameOf(0), first.before);
  const block = isBlock(stock);
  const whole = walled(workIn(frameOf(stages.length - 1), last.after));
  const finished = block ? shownBlock(whole) : whole;
  const bounded = !block && (last.step.do === "part" || !last.openEnded);
  const made = stages.flatMap((stage, index) => featureOf(stage, index, frameOf(index), finished, bounded, words));
  return {
    finished,
    stock,
    bounded,
    block,
    features: [...made, ...(block ? [] : untouched(stock, finished, bounded, words))],
    gone: stages.flatMap(({ step }, index) =>
      step.do === "part" && made.every(({ stage }) => stage !== index)
        ? [{ stage: index, words: say("plan.drawing parted", { length: words(step.length) }) }]
        : [],
    ),
    lengths: block ? [] : lengthsOf(stages, frames, finished, bounded, words),
  };
}

/** So much of a block as the holes need around them. */
export function shownBlock(work: Workpiece): Workpiece {
  const { from } = endsOf(work);
  const deepest = Math.max(from + 1, ...work.bore.map(({ to }) => to));
  const widest = Math.max(1, greatest(work.bore, from, deepest));
  return { ...work, outside: [cylinder(from, from + (deepest - from) * 1.25, widest * 3)] };
}

type Piece = { readonly from: number; readonly to: number };

/** A length cut wherever one of the outlines bends. */
function pieces(from: number, to: number, outlines: readonly Outline[]): Piece[] {
  const places = outlines
    .flatMap((outline) => outline.flatMap((stretch) => [stretch.from, stretch.to]))
    .filter((z) => z > from + HAIR && z < to - HAIR)
    .sort((a, b) => a - b);
  const all = [from, ...places, to];
  return all.slice(1).flatMap((end, index) => {
    const begin = all[index] ?? end;
    return end - begin > 10 * HAIR ? [{ from: begin, to: end }] : [];
  });
}

function joined(list: readonly Piece[]): Piece[] {
  const result: Piece[] = [];
  for (const next of list) {
    const last = result.at(-1);
    if (last !== undefined && Math.abs(last.to - next.from) < NEAR)
      result[result.length - 1] = { ...last, to: next.to };
    else result.push(next);
  }
  return result;
}

const longest = (list: readonly Piece[]): Piece | undefined =>
  list.reduce<Piece | undefined>(
    (best, next) => (best === undefined || next.to - next.from > best.to - best.from + NEAR ? next : best),
    undefined,
  );

/** Where a step cut, and its surface is what is left. */
function leftOf(stage: Stage, frame: Frame, finished: Workpiece): Piece[] {
  const before = workIn(frame, stage.before);
  const { from, to } = endsOf(finished);
  const of = (side: "outside" | "inside"): Piece[] => {
    const [was, is] = side === "inside" ? [before.bore, finished.bore] : [before.outside, finished.outside];
    return stretchesIn(frame, stage.shaping[side]).flatMap((cut) =>
      pieces(Math.max(cut.from, from), Math.min(cut.to, to), [was, is]).filter((piece) => {
        const middle = (piece.from + piece.to) / 2;
        const own = diameterOf(cut, middle);
        const stood = diameterAt(was, middle);
        const cuts = side === "inside" ? stood < own - NEAR : stood > own + NEAR;
        return cuts && Math.abs(diameterAt(is, middle) - own) < NEAR;
      }),
    );
  };
  return joined([...of("outside"), ...of("inside")]);
}

const wordsOfSize = (
  aim: number,
  given: { readonly least?: number; readonly most?: number; readonly words?: string } | undefined,
  words: Words,
): string => {
  if (given?.words !== undefined) return `ø${asOnPaper(given.words.trim())}`;
  const { least, most } = given ?? {};
  return `ø${words(aim)}${least === undefined || most === undefined ? "" : ` ± ${words(tidy((most - least) / 2))}`}`;
};

/** Where a step ends. Its length alone stays as it was given, to be found again in the file's own words. */
const ending = (at: number, length: number): number => (at === 0 ? length : tidy(at + length));

/** Without what binary fractions leave behind. */
const tidy = (mm: number): number => Math.round(mm * 1e7) / 1e7;

function featureOf(
  stage: Stage,
  index: number,
  frame: Frame,
  finished: Workpiece,
  bounded: boolean,
  words: Words,
): Feature[] {
  const { step } = stage;
  const ends = endsOf(finished);
  const face = (z: number, named: string): Feature[] => {
    const at = placeIn(frame, z);
    const there = Math.abs(at - ends.from) < NEAR || (bounded && Math.abs(at - ends.to) < NEAR);
    return there ? [{ stage: index, kind: "face", from: at, to: at, words: named, where: "" }] : [];
  };
  if (step.do === "face") {
    const named =
      step.length === undefined
        ? say("plan.drawing face")
        : say("plan.drawing face to", { length: words(step.length) });
    return stage.shaping.removed > 0 ? face(stage.shaping.to, named) : [];
  }
  if (step.do === "part") return face(step.length, say("plan.drawing parted", { length: words(step.length) }));
  const side =
    step.do === "tap" || (stage.shaping.inside.length > 0 && stage.shaping.outside.length === 0) ? "inside" : "outside";
  const marks = step.do === "tap" || step.do === "die" || step.do === "knurl";
  const all = marks ? markedOver(stage, frame, finished) : leftOf(stage, frame, finished);
  // A thread's name stands instead of the diameter that it is cut on, wherever some of that is not to be seen.
  const plain = marks ? all : all.flatMap((piece) => withoutThreads(piece, finished, side));
  const target = longest(plain) ?? longest(all);
  if (target === undefined) return [];
  const threaded = !marks && plain.length === 0;
  return [{ stage: index, kind: side, ...target, ...said(step, stage, frame, finished, bounded, threaded, words) }];
}

function markedOver({ step }: Stage, frame: Frame, finished: Workpiece): Piece[] {
  const name = step.do === "knurl" ? "knurl" : step.do === "tap" || step.do === "die" ? step.thread : "";
  const side = step.do === "tap" ? "inside" : "outside";
  const [at, length] =
    step.do === "knurl" ? [step.at, step.length] : step.do === "tap" || step.do === "die" ? [0, step.depth] : [0, 0];
  const [a, b] = [placeIn(frame, at), placeIn(frame, at + length)];
  const [from, to] = [Math.min(a, b), Math.max(a, b)];
  return finished.surfaces.flatMap((surface) =>
    surface.name === name && surface.side === side && surface.from < to - NEAR && surface.to > from + NEAR
      ? [{ from: Math.max(from, surface.from), to: Math.min(to, surface.to) }]
      : [],
  );
}

function withoutThreads(piece: Piece, { surfaces }: Workpiece, side: "outside" | "inside"): Piece[] {
  return surfaces
    .filter((surface) => surface.kind === "thread" && surface.side === side)
    .reduce<Piece[]>(
      (left, { from, to }) =>
        left.flatMap((part) =>
          [
            { from: part.from, to: Math.min(part.to, from) },
            { from: Math.max(part.from, to), to: part.to },
          ].filter((rest) => rest.to - rest.from > NEAR),
        ),
      [piece],
    );
}

function said(
  step: JobStep,
  stage: Stage,
  frame: Frame,
  finished: Workpiece,
  bounded: boolean,
  threaded: boolean,
  words: Words,
): Pick<Feature, "words" | "where"> {
  const over = (at: number, length: number) =>
    say("plan.drawing over", { from: words(at), to: words(ending(at, length)) });
  const { from, to } = endsOf(finished);
  const deep = (depth: number) =>
    bounded && depth >= to - from - NEAR
      ? say("plan.drawing through")
      : say("plan.drawing deep", { depth: words(depth) });
  // A hole's depth counts from its mouth, which may be at the other end.
  const mouth = frame.sign === 1 ? "" : say("plan.drawing at the other end");
  switch (step.do) {
    case "turn":
    case "shoulder":
      return {
        words: threaded ? "" : wordsOfSize(step.to.aim, step.to, words),
        where: threaded ? "" : over(step.at, step.length),
      };
    case "bore": {
      const depth =
        step.at > 0
          ? say("plan.drawing from to", { from: words(step.at), to: words(ending(step.at, step.length)) })
          : deep(step.length);
      return { words: `${wordsOfSize(step.to.aim, step.to, words)}, ${depth}`, where: mouth };
    }
    case "groove":
      return {
        words: say("plan.drawing wide", { size: wordsOfSize(step.to.aim, step.to, words), width: words(step.width) }),
        where: say("plan.drawing at", { at: words(step.at) }),
      };
    case "chamfer":
      return { words: `${words(step.size)} × 45°`, where: say("plan.drawing at", { at: words(step.at) }) };
    case "taper":
      return {
        words: say("plan.drawing taper", { large: words(step.large, TAPER_END), small: words(step.small, TAPER_END) }),
        where: over(step.at, step.length),
      };
    case "knurl":
      return { words: say("plan.drawing knurl", { pitch: words(step.pitch) }), where: over(step.at, step.length) };
    case "die":
      return { words: threadWords(step.thread), where: over(0, step.depth) };
    case "tap":
      return { words: `${threadWords(step.thread)}, ${deep(step.depth)}`, where: mouth };
    case "drill":
    case "ream":
      return {
        words: `${wordsOfSize(step.diameter, step.wanted?.words ? step.wanted : undefined, words)}, ${deep(step.depth)}`,
        where: mouth,
      };
    case "centre drill": {
      const pilot = step.pilot ?? stage.shaping.inside.at(-1)?.start ?? 0;
      return { words: say("plan.drawing centre", { pilot: words(pilot, TOOL_PLACES) }), where: mouth };
    }
    default:
      return { words: "", where: "" };
  }
}

/** With its system, where a name does not begin with a letter of its own: "M6", "1/2-20 UNF". */
function threadWords(name: string): string {
  const thread = threadNamed(name);
  if (thread === undefined) return name;
  const { designation, system } = thread;
  return /^[\d#]/.test(designation) && !designation.includes(system) && system !== "BA"
    ? `${designation} ${system}`
    : threadOnPaper(designation);
}

/** The bar's own surfaces, where no tool came. */
function untouched(stock: Workpiece, finished: Workpiece, bounded: boolean, words: Words): Feature[] {
  const { from, to } = endsOf(finished);
  const of = (kind: "outside" | "inside"): Feature[] => {
    const [was, is] = kind === "inside" ? [stock.bore, finished.bore] : [stock.outside, finished.outside];
    const diameter = was[0]?.start;
    if (diameter === undefined) return [];
    const all = joined(
      pieces(from, to, [was, is]).filter((piece) => {
        const middle = (piece.from + piece.to) / 2;
        return diameterAt(is, middle) > 0 && Math.abs(diameterAt(is, middle) - diameterAt(was, middle)) < NEAR;
      }),
    );
    // A bar that goes on into the chuck is pointed at where it stands out.
    const target = bounded ? longest(all.flatMap((piece) => withoutThreads(piece, finished, kind))) : all[0];
    return target === undefined ? [] : [{ kind, ...target, words: `ø${words(diameter)}`, where: "" }];
  };
  return [...of("outside"), ...of("inside")];
}

function lengthsOf(
  stages: readonly Stage[],
  frames: readonly Frame[],
  finished: Workpiece,
  bounded: boolean,
  words: Words,
): Length[] {
  const ends = endsOf(finished);
  const bends = corners(finished.outside);
  const edges = finished.surfaces.filter(({ side }) => side === "outside").flatMap(({ from, to }) => [from, to]);
  const inside = (z: number) => z > ends.from + NEAR && z < ends.to - NEAR;
  const found: Length[] = [];
  const add = (frame: Frame, at: number, among: readonly number[]) => {
    const place = placeIn(frame, at);
    if (at <= NEAR || !inside(place) || !among.some((z) => Math.abs(z - place) < NEAR)) return;
    if (found.some((other) => Math.abs(other.place - place) < NEAR)) return;
    found.push({ origin: placeIn(frame, 0), place, words: words(at), from: frame.sign === 1 ? "first" : "other" });
  };
  for (const [index, { step }] of stages.entries()) {
    const frame = frames[index];
    if (frame === undefined) continue;
    if (step.do === "turn" || step.do === "shoulder" || step.do === "taper") {
      add(frame, step.at, bends);
      add(frame, ending(step.at, step.length), bends);
    } else if (step.do === "groove") add(frame, step.at, bends);
    else if (step.do === "knurl") {
      add(frame, step.at, edges);
      add(frame, ending(step.at, step.length), edges);
    } else if (step.do === "die") add(frame, step.depth, edges);
  }
  if (!bounded) return found;
  const whole = tidy(ends.to - ends.from);
  const given = stages
    .flatMap(({ step }) =>
      (step.do === "part" || step.do === "face") && step.length !== undefined ? [step.length] : [],
    )
    .find((length) => Math.abs(length - whole) < NEAR);
  return [...found, { origin: ends.from, place: ends.to, words: words(given ?? whole), from: "end to end" }];
}
