import type { Drawing, Mark } from "../../drawing/drawing.js";
import type { Findings, HandwheelFinding } from "../../findings/findings.js";
import { angleScalesOf, scalesOf } from "../../findings/ofWheels.js";
import type { AngleScale, LinearScale, Machine } from "../../machine/machine.js";
import { trimmedSize } from "../../quantity/format.js";
import { say } from "../../words/say.js";
import { block, type LeftOut, type Run } from "../shared/block.js";
import { NoRoom } from "../shared/noRoom.js";
import { paragraph } from "../shared/paragraph.js";
import { heightOf, joined, kept, together } from "../shared/runs.js";
import { angleSet } from "./angleScales.js";
import { cellFoot } from "./cell.js";
import { bleed } from "./cutMarks.js";
import { areaOf, type CutOut, cutOutPages } from "./cutOuts.js";
import { type DialSet, type DialSettings, dialCutOuts, dialSet, missingOn, setOf } from "./dialCutOuts.js";
import { dialNote, type Note } from "./dialNotes.js";
import { numberedBands } from "./dialPiece.js";
import { dialInPlace } from "./dialPlace.js";
import { dialStyle } from "./dialStyle.js";
import { scaleSet } from "./linearScales.js";

export { dialPlan } from "./dialCutOuts.js";

type Context = {
  readonly findings: Findings;
  readonly handwheels: readonly HandwheelFinding[];
  readonly width: number;
  readonly height: number;
};

type Room = { readonly width: number; readonly height: number };

/** Copies of each kind; absent: none of it. */
type Wanted = {
  readonly dials?: DialSettings & { readonly places: boolean };
  readonly scales?: number;
  readonly angles?: number;
};

/** Everything of the machine that is cut out and stuck on, as one set: pieces first, each with its numbers beneath; the pictures of the
 *  dials in their places among them; all words in one note below or beside them. */
export const piecesToCut = block(
  { copies: 2, index: true, blank: false, places: true, scales: 1 },
  ({ settings, ...context }) => setRuns(context, { dials: settings, scales: settings.scales, angles: settings.scales }),
);

/** The dials alone. */
export const dialPieces = block({ copies: 2, index: true, blank: false, places: true }, ({ settings, ...context }) =>
  setRuns(context, { dials: settings }),
);

/** The straight scales alone. */
export const linearScales = block({ copies: 1 }, ({ settings, ...context }) =>
  setRuns(context, { scales: settings.copies }),
);

/** The scales of degrees alone. */
export const angleScales = block({ copies: 1 }, ({ settings, ...context }) =>
  setRuns(context, { angles: settings.copies }),
);

/** Under a name that tells it apart from a dial, or another scale, of the same name: pieces lie loose on the bench. */
function toldApart<S extends LinearScale | AngleScale>(scale: S, machine: Machine): S {
  const { handwheels, scales = [], angleScales: swivels = [] } = machine;
  const alike = [...handwheels, ...scales, ...swivels].filter(({ name }) => name === scale.name);
  if (alike.length < 2) return scale;
  const { name } = scale;
  if (!("part" in scale)) return { ...scale, name: say("scales.called", { name }) };
  const swings = scale.part === "spindle" ? "plate" : "swivel";
  return { ...scale, name: say(`angle scales.called ${swings}`, { name }) };
}

function setRuns({ findings, handwheels, width, height }: Context, wanted: Wanted): Run[] {
  const { machine } = findings;
  const { units } = machine;
  const room = { width, height };
  const { dials: settings, scales: copies = 0, angles = 0 } = wanted;
  const dials = settings ? handwheels.flatMap((finding) => dialSet(finding, machine, room) ?? []) : [];
  // A template that names a handwheel means it alone, as the command line does.
  const asked = {
    ...findings,
    handwheels,
    ...(settings && handwheels.length < findings.handwheels.length && { onlyWheels: true as const }),
  };
  const scales = (copies > 0 ? scalesOf(asked) : []).map((scale) =>
    scaleSet(toldApart(scale, machine), findings, width),
  );
  const degrees = (angles > 0 ? angleScalesOf(asked) : []).map((scale) => toldApart(scale, machine));
  const swivels = degrees.map((one) => angleSet(one, machine, angles, room));
  const cut = [
    ...(settings ? dials.flatMap((set) => dialCutOuts(set, settings, units, width)) : []),
    ...(settings?.places ? places(dials, width) : []),
    ...scales.flatMap((one, index) =>
      Array.from({ length: copies }, (_, copy) =>
        of(`scale ${index}`, one.cut).map((cut) => ({ ...cut, set: setOf(copy) })),
      ).flat(),
    ),
    ...swivels.flatMap((one, index) => of(`swivel ${index}`, one.cut)),
  ];
  const notes = [
    ...dials.map((set) => dialNote(set, units)),
    ...scales.flatMap(({ note }) => note ?? []),
    ...swivels.map(({ note }) => note),
  ];
  const dialsRound = dials.filter(({ plan, pieces }) => plan.flat.kind === "ring" && pieces !== undefined);
  const flatAngles = degrees.filter(({ shape }) => shape === "face");
  const common = {
    over: trimmedSize(bleed, units),
    rings: dialsRound.length + flatAngles.length > 0,
    wholeRings:
      dialsRound.some(({ dial }) => dial.shape === "face") || flatAngles.some(({ part }) => part === "spindle"),
    missing:
      dials.some(({ pieces }) => missingOn(pieces ?? []).length > 0) ||
      scales.some((one) => one.missing) ||
      swivels.some((one) => one.missing),
    unknown: dials.flatMap(({ finding, dial }) =>
      dial.chosen.doubtOverTravel === undefined ? [finding.handwheel.name] : [],
    ),
    swivels: degrees.some(({ part }) => part !== "spindle"),
    arrows:
      scales.length + degrees.length > 0 ||
      dials.some(({ pieces = [] }) => pieces.some(({ drawing }) => drawing.marks.some(isArrow))),
  };
  if (cut.length === 0 && notes.length === 0) return [];
  const leftOut = notes.flatMap((note) => note.leftOut ?? []);
  if (notes.length > 0 && leftOut.length === notes.length && cut.length === 0) throw noRoomFor(leftOut);
  const [first, ...more] = withWords(cut, room, (measure) =>
    foot(notes, cut.length > 0, { width: measure, height }, common),
  );
  return first === undefined ? [] : [leftOut.length > 0 ? { ...first, leftOut } : first, ...more];
}

const noRoomFor = (leftOut: readonly LeftOut[]): NoRoom => {
  const remedies = [...new Set(leftOut.flatMap(({ remedy }) => remedy ?? []))];
  const message = say("no room.pieces", { names: leftOut.map(({ name }) => name).join(", ") });
  return new NoRoom(message, remedies.length > 0 ? remedies.join("; ") : undefined);
};

/** Pieces with what is said of them in lines of some length: below them or beside them on one of their pages, else on a page more. */
function withWords(cut: readonly CutOut[], room: Room, said: (measure: number) => Run[]): Run[] {
  const { width, height } = room;
  const full = said(width);
  if (cut.length === 0) return full;
  const lengths = [width, ...shorter.filter((measure) => measure < width)];
  const words = lengths.map((measure) => once(() => joined(measure === width ? full : said(measure), measure)));
  const packed = cutOutPages(cut, room, { words, below: STRIP });
  if (packed.hasWords) return [...packed.runs];
  // Few words take the last pieces with them to their page, where it holds both and that leaves no page nearly empty.
  const { runs } = packed;
  const last = runs.at(-1) as Run;
  const fills = (lines: readonly Run[]) => heightOf(lines) >= LEAST_PART * height;
  const along = [...runs.slice(0, -1), ...kept([last]), ...full];
  const left = (packed.heights.at(-1) ?? 0) - last.drawing.height;
  const taken = (left <= 0 || left >= LEAST_PART * height) && last.drawing.height + heightOf(full) + STRIP <= height;
  if (taken && !fills(full)) return along;
  const aside = asideWith(words, cut, room, packed.heights.length);
  if (aside !== undefined) return aside;
  // Where nothing has room beside them many words fill a page, and fewer do in short lines.
  const alone = taken ? undefined : [width, ...measures].map((one) => said(Math.min(width, one))).find(fills);
  return alone === undefined ? along : [...runs, ...alone];
}

const once = <T>(made: () => T): (() => T) => {
  let known: { readonly value: T } | undefined;
  return () => {
    known ??= { value: made() };
    return known.value;
  };
};

/** Words on a page of their own would lie there alone: beside them the pieces of a wheel, a copy to spare, or what is small, above all the
 *  pictures that belong to them, where the others take no more pages than all do. */
function asideWith(
  words: readonly (() => Drawing)[],
  cut: readonly CutOut[],
  room: Room,
  most: number,
): Run[] | undefined {
  const bySize = [...cut].sort((one, other) => areaOf(one) - areaOf(other));
  const pictures = bySize.filter(({ name }) => name === "place");
  const small = bySize.filter(({ name }) => name === "place" || name === "companion");
  const wheels = [...new Set(bySize.flatMap(({ besides }) => besides ?? []))];
  const sets = [
    ...wheels.map((wheel) => cut.filter(({ besides }) => besides === wheel)),
    ...wheels.map((wheel) => cut.filter(({ besides, set }) => besides === wheel && set === SPARE)),
    ...[small, pictures, pictures.slice(0, 1), small.slice(0, 1), bySize.slice(0, 1)],
  ];
  for (const aside of sets.filter(({ length }) => length > 0)) {
    const last = cutOutPages(aside, room, { words, below: STRIP });
    if (!last.hasWords || last.heights.length > 1) continue;
    const before = cutOutPages(
      cut.filter((one) => !aside.includes(one)),
      room,
    );
    if (before.heights.length > most) continue;
    return [
      ...before.runs,
      ...last.runs.map((run, index) => (index === 0 ? { ...run, startsPage: "always" as const } : run)),
    ];
  }
  return undefined;
}

/** The second copy. */
const SPARE = setOf(1);

/** Pieces of one scale, which need no name but their own. */
const of = (besides: string, cut: readonly CutOut[]): CutOut[] => cut.map((piece) => ({ ...piece, besides }));

/** Lengths of line that are easily read, mm. */
const measures = [135, 100, 75, 55] as const;
/** As they stand beside pieces, mm. */
const shorter = [190, 180, 170, 160, 150, 140, 130, 120, 110, 100, 90, 80, 70] as const;
/** What a strip of cautions takes below the words, mm. */
const STRIP = 14;

/** Of a page, that something may stand alone on it. */
const LEAST_PART = 0.38;

/** Each dial in its place on the wheel; those that look alike share one. */
function places(dials: readonly DialSet[], most: number): CutOut[] {
  const alike = new Map<string, { picture: Drawing; names: string[] }>();
  for (const { finding, dial, plan, pieces } of dials) {
    if (pieces === undefined) continue;
    const style = dialStyle(plan);
    const bands = numberedBands(plan, style).map(({ marks }) => marks);
    const picture = dialInPlace({ ...plan, shape: dial.shape, sideways: style.sideways, bands });
    // Alike is what is drawn alike to the last number.
    const look = JSON.stringify(picture);
    const known = alike.get(look);
    const { name } = finding.handwheel;
    if (known) known.names.push(name);
    else alike.set(look, { picture, names: [name] });
  }
  return [...alike.values()].map(({ picture, names }) => ({
    besides: names[0] as string,
    drawing: picture,
    name: "place",
    caption: cellFoot({ title: placeTitle(names), numbers: [] }, picture.width, most),
    explains: { aside: cellFoot({ title: placeTitle(names), numbers: [] }, 0, most) },
  }));
}

/** More names than these would make a list of what is a picture. */
const MOST_NAMES = 3;

const placeTitle = (names: readonly string[]): string =>
  names.length <= MOST_NAMES
    ? say("dials.in place", { names: names.join(", ") })
    : say("dials.many in place", { name: names[0] as string, n: names.length - 1 });

type Common = {
  readonly rings: boolean;
  /** What marks run over the edge. */
  readonly over: string;
  readonly wholeRings: boolean;
  readonly missing: boolean;
  /** Dials of whose feed nothing tells how well it is known. */
  readonly unknown: readonly string[];
  readonly swivels: boolean;
  /** Whether any piece has one beside it. */
  readonly arrows: boolean;
};

const isArrow = (mark: Mark): boolean => mark.kind === "group" && mark.name === "arrow" && mark.marks.length > 0;

/** What is said once of all pieces, then of single ones. */
function foot(
  notes: readonly Note[],
  pieces: boolean,
  { width, height }: { readonly width: number; readonly height: number },
  common: Common,
): Run[] {
  const { rings, wholeRings, missing, unknown, swivels, over } = common;
  const general = [
    say(common.arrows ? "dials.cutting" : "dials.cutting without arrow"),
    ...(rings ? [say("dials.round", { over })] : []),
    ...(wholeRings ? [say("dials.centre")] : []),
    say("dials.measure"),
    ...(missing ? [say("dials.no room")] : []),
    say("dials.grain"),
  ].join(" ");
  const last = [
    ...(unknown.length > 0 ? [say("dials.feed not given", { names: unknown.join(", ") })] : []),
    ...(swivels ? [say("angle scales.prove")] : []),
  ].join(" ");
  const parts = [
    ...(pieces ? [paragraph(general, width, { gap: 3 })] : []),
    ...notes.map(({ about, words, warnings }) => [
      ...(words === "" ? [] : paragraph(`${about}: ${words}`, width, { gap: 0.8 })),
      ...warnings.flatMap((line) => paragraph(line, width, { weight: "bold", gap: 0.3 })),
    ]),
    ...(last === "" ? [] : [paragraph(last, width, { gap: 0.8 })]),
  ].filter((part) => part.length > 0);
  return evenly(parts, 0.85 * height);
}

/** On one page, or on pages that are filled alike. A part that is broken has two lines at least on either page. */
function evenly(parts: readonly (readonly Run[])[], height: number): Run[] {
  const all = heightOf(parts.flat());
  const pages = Math.ceil(all / height);
  const filled: Run[][] = [[]];
  let gone = 0;
  for (const part of parts)
    for (const [at, run] of part.entries()) {
      const mayBegin = at === 0 || (at >= 2 && at <= part.length - 2);
      if (mayBegin && gone >= (filled.length * all) / pages) filled.push([{ ...run, startsPage: "always" }]);
      else filled.at(-1)?.push(run);
      gone += heightOf([run]);
    }
  return filled.flatMap(together);
}
