import type { HandwheelFinding } from "../findings/findings.js";
import { largestDrill } from "../findings/uses.js";
import type { JobStep, Wanted } from "../job/job.js";
import { asOnPaper } from "../machine/written.js";
import { diameterAt } from "../part/outline.js";
import { boreOver, endsOf, openOver, outsideOver } from "../part/workpiece.js";
import { formatFixed } from "../quantity/format.js";
import { say } from "../words/say.js";
import type { Bench } from "./bench.js";
import { lastCut, mayScrape, wetWords } from "./chips.js";
import { alike, atMost, MEASURED, TOUCHED } from "./doubt.js";
import { begun, benchFor, endZero, fedStep, type Making, placeAlong, type Step, zeroOr } from "./making.js";
import { passes } from "./passes.js";
import type { PlannedSize, SizedPass } from "./plannedStep.js";
import { depthOfFace } from "./shape.js";
import { readingAt, type Zero } from "./zero.js";

/** Faces, turns and shoulders without being taken out. */
const knife = (): string => say("plan.knife tool");

/** Cuts of a face leave this much for the last, mm. Common practice. */
const lastFacingCut = 0.1;

export function faced(making: Making<Extract<JobStep, { do: "face" }>>): Step {
  const { stage, step, wheels, job, show } = making;
  const { before, after } = stage;
  const start = endsOf(before).from;
  const to = endsOf(after).from;
  const depth = depthOfFace(step, before);
  const bench = benchFor(making, knife());
  const { facing, along, across } = wheels;
  const parted = facing !== along;
  // The slide that sets the depth begins at the raw end, whatever else was zeroed there before.
  const { zero, touched } = zeroOr(
    parted ? undefined : bench.along,
    facing && { wheel: facing, of: "raw end", at: start },
  );
  const diameter = step.diameter ?? outsideOver(before, start, to);
  const { fed, chips } = fedStep(making, { operation: "facing", diameter, fed: "finishing" }, across);
  const cuts = { from: start - (zero?.at ?? start), to: to - (zero?.at ?? start), cut: step.cut };
  const made = passes({ ...cuts, finish: lastCut(lastFacingCut, job), spring: false }, facing);
  // With the slide of the depth locked where it stands, the other's zero is this face.
  const lengths: Zero | undefined = parted && along ? { wheel: along, of: "end", at: to } : zero;
  const held = parted ? bench.along : undefined;
  return {
    made: {
      ...begun(
        step.length === undefined
          ? say("plan.face off", { depth: show(depth) })
          : say("plan.face to length", { length: show(step.length) }),
        knife(),
      ),
      ...fed,
      zeros: touched,
      zerosAfter: parted && lengths && held === undefined ? [lengths] : [],
      ...(facing && { depthWheel: facing }),
      ...(zero && { depthZero: zero }),
      passes: made.map((pass) => ({ ...pass, size: (zero?.at ?? start) + pass.travel })),
      sizes: step.length === undefined ? [] : [facedSize(step.length, making, made)],
      notes: [
        parted && along
          ? held
            ? say("plan.face with slide back", { wheel: along.handwheel.name, facing: facing?.handwheel.name ?? "" })
            : say("plan.face with slide close", { wheel: along.handwheel.name, facing: facing?.handwheel.name ?? "" })
          : say("plan.face and lock"),
        say("plan.face counts"),
        ...(step.length === undefined ? [] : [say("plan.face measured")]),
        ...chips,
      ],
      stroke: diameter / 2,
    },
    bench: { ...bench, ...(lengths && { along: lengths }) },
  };
}

type ReduceStep = Extract<JobStep, { do: "turn" | "shoulder" | "bore" }>;

export function reduced(making: Making<ReduceStep>): Step {
  const { stage, step, wheels, show } = making;
  const { before, shaping } = stage;
  const bore = step.do === "bore";
  const tool = bore ? say("plan.boring tool") : knife();
  const bench = benchFor(making, tool);
  const begins = bore
    ? openOver(before, Math.max(shaping.from, endsOf(before).from), Math.min(shaping.to, endsOf(before).to))
    : outsideOver(before, shaping.from, shaping.to);
  // A bore is touched at its mouth; further in it may still be the cone of a drill, which is what the first cuts take.
  const touched = bore ? diameterAt(before.bore, Math.max(step.at, endsOf(before).from), 1) || begins : begins;
  const across = zeroOr(
    bench.across,
    wheels.across && { wheel: wheels.across, of: bore ? "bore" : "diameter", at: touched },
  );
  const along = zeroOr(bench.along, endZero(making));
  const operation = bore ? "boring" : "turning";
  const { fed, chips } = fedStep(
    making,
    { operation, diameter: bore ? step.to.aim : begins, fed: "finishing" },
    wheels.along,
  );
  const radially = travelTo(across.zero, begins);
  const cuts = depthsOf(making, radially(begins), radially(step.to.aim));
  const sized = sizedBy(passes(cuts, wheels.across), across.zero, begins);
  const end = step.at + step.length;
  return {
    made: {
      ...begun(reducedTitle(step, show), tool),
      ...fed,
      zeros: [...across.touched, ...along.touched],
      ...(wheels.across && { depthWheel: wheels.across }),
      ...(across.zero && { depthZero: across.zero }),
      passes: sized,
      places: [
        ...(step.at > 0 ? placeAlong(along.zero, "begin", step.at) : []),
        ...placeAlong(along.zero, "stop", end),
      ],
      sizes: [diameterSize(step.to, making, sized), lengthSize(end, along.zero, end)],
      notes: [
        ...comeToWords(wheels.across, bore ? say("plan.outward") : say("plan.inward")),
        ...shoulderWords(step.do),
        ...finishWords(bore, touched > begins + 1e-6),
        ...chips,
      ],
      stroke: step.length,
    },
    bench: kept(bench, across.zero, along.zero),
  };
}

function reducedTitle(step: ReduceStep, show: (mm: number) => string): string {
  const size = wantedWords(step.to, show);
  const [from, to, length] = [show(step.at), show(step.at + step.length), show(step.length)];
  if (step.do === "bore")
    return step.at > 0 ? say("plan.bore from to", { size, from, to }) : say("plan.bore deep", { size, depth: length });
  return step.at > 0
    ? say(`plan.${step.do} from to`, { size, from, to })
    : say(`plan.${step.do} long`, { size, length });
}

/** A whole length is measured before the last cut, as a diameter is. */
function facedSize(
  aim: number,
  { wheels: { facing }, findings }: Making,
  list: ReturnType<typeof passes>,
): PlannedSize {
  const last = list.findLast(({ kind }) => kind === "finish");
  const over = facing && last && atMost(facing, last.depth);
  return {
    ...{ what: "length", aim },
    ...(over !== undefined && { doubt: MEASURED[findings.machine.units] + over }),
  };
}

const kept = (bench: Bench, across: Zero | undefined, along: Zero | undefined): Bench => ({
  ...bench,
  ...(across && { across }),
  ...(along && { along }),
});

/** "12 h7 (11.982 to 12)": as the drawing has it, and the limits. */
export function wantedWords({ aim, least, most, words }: Wanted, show: (mm: number) => string): string {
  if (least === undefined || most === undefined) return show(aim);
  return words === undefined
    ? show(aim)
    : say("plan.size with limits", { size: asOnPaper(words), least: show(least), most: show(most) });
}

/** Travel of the slide across from its zero to a diameter: inward is forward. */
const travelTo =
  (zero: Zero | undefined, otherwise: number) =>
  (diameter: number): number =>
    ((zero?.at ?? otherwise) - diameter) / 2;

const sizedBy = (list: ReturnType<typeof passes>, zero: Zero | undefined, otherwise: number): SizedPass[] =>
  list.map((pass) => ({ ...pass, size: (zero?.at ?? otherwise) - 2 * pass.travel }));

function depthsOf({ step, job }: Making<ReduceStep | Extract<JobStep, { do: "taper" }>>, from: number, to: number) {
  return { from, to, cut: step.cut, finish: lastCut(step.finish, job), spring: mayScrape(job) };
}

/** A size reached by measuring before the last cut: the gauge, then both readings and the slide over what was left. Where nothing is
 *  left to measure, as one that is fed in to at once. */
function diameterSize(to: Wanted, { wheels: { across }, findings }: Making, list: readonly SizedPass[]): PlannedSize {
  const last = list.findLast(({ kind }) => kind === "finish");
  if (last === undefined || list.every(({ kind }) => kind !== "rough")) {
    const size = dialSize(to, across, last?.travel);
    // What the first part had by the touch alone, the next ones have by a zero that was mended since.
    return size.alike === undefined ? size : { ...size, alike: size.alike + 2 * TOUCHED };
  }
  const over = across && atMost(across, last.depth);
  const same = across && alike(across);
  return {
    what: "diameter",
    ...to,
    ...(over !== undefined && { doubt: MEASURED[findings.machine.units] + 2 * over }),
    ...(same !== undefined && { alike: 2 * same }),
  };
}

/** A diameter that is gone to by the dial alone, so much travel from where the outside was touched. */
function dialSize(to: Wanted, wheel: HandwheelFinding | undefined, travel: number | undefined): PlannedSize {
  const moved = wheel && travel !== undefined ? atMost(wheel, travel) : undefined;
  const same = wheel && alike(wheel);
  return {
    what: "diameter",
    ...to,
    ...(moved !== undefined && { doubt: 2 * (TOUCHED + moved) }),
    ...(same !== undefined && { alike: 2 * same }),
  };
}

/** A length by a dial from a touched face. */
function lengthSize(aim: number, zero: Zero | undefined, at: number): PlannedSize {
  const moved = zero && atMost(zero.wheel, at - zero.at);
  const same = zero && alike(zero.wheel);
  return {
    ...{ what: "length", aim },
    ...(moved !== undefined && { doubt: TOUCHED + moved }),
    ...(same !== undefined && { alike: same }),
  };
}

/** From which side every reading is come to. */
function comeToWords(wheel: HandwheelFinding | undefined, sense: string): string[] {
  const turn = wheel?.feed?.lostMotion?.turn;
  if (turn === undefined || turn <= 0) return [say("plan.come to, lost motion unknown", { sense })];
  const lost = formatFixed(turn, 2);
  return [turn > 0.4 ? say("plan.come to, whole turn back", { sense, lost }) : say("plan.come to", { sense, lost })];
}

const shoulderWords = (verb: string): string[] => (verb === "shoulder" ? [say("plan.shoulder edge")] : []);

const finishWords = (bore: boolean, cone: boolean): string[] => [
  ...(cone ? [say("plan.bore first cuts")] : []),
  ...(bore ? [say("plan.bore dial backwards")] : []),
];

/** How far a blade goes on into a hole, mm on the radius. */
const OVERRUN = 0.5;

export function parted(making: Making<Extract<JobStep, { do: "part" }>>): Step {
  const { stage, step, wheels, job, show } = making;
  const { before } = stage;
  const [from, to] = [step.length, step.length + step.blade];
  const tool = say("plan.blade", { width: show(step.blade) });
  const bench = benchFor(making, tool);
  const diameter = outsideOver(before, from, to);
  const across = zeroOr(bench.across, wheels.across && { wheel: wheels.across, of: "diameter", at: diameter });
  const along = zeroOr(bench.along, endZero(making));
  const { fed, chips } = fedStep(making, { operation: "parting", diameter, fed: "parting" }, wheels.across);
  const hole = openOver(before, from, to);
  // A little into the hole, or a skin is left.
  const inTo = Math.max(0, hole - 2 * OVERRUN);
  const through = across.zero && readingAt(across.zero.wheel, (across.zero.at - inTo) / 2);
  return {
    made: {
      ...begun(say("plan.part off", { length: show(step.length) }), tool),
      ...fed,
      zeros: [...across.touched, ...along.touched],
      places: [
        ...placeAlong(along.zero, "plunge", to),
        ...(across.zero && through
          ? [{ what: "depth" as const, wheel: across.zero.wheel, at: inTo, reading: through }]
          : []),
      ],
      sizes: [lengthSize(step.length, along.zero, to)],
      notes: [say("plan.part note", { diameter: show(diameter), wet: wetWords(job) }), ...chips],
      stroke: (diameter - hole) / 2,
    },
    bench: kept(bench, across.zero, along.zero),
  };
}

export function grooved(making: Making<Extract<JobStep, { do: "groove" }>>): Step {
  const { stage, step, wheels, job, show } = making;
  const tool = say("plan.blade", { width: show(step.blade) });
  const bench = benchFor(making, tool);
  const begins = outsideOver(stage.before, step.at, step.at + step.width);
  const across = zeroOr(bench.across, wheels.across && { wheel: wheels.across, of: "diameter", at: begins });
  const along = zeroOr(bench.along, endZero(making));
  const { fed, chips } = fedStep(making, { operation: "parting", diameter: begins, fed: "parting" }, wheels.across);
  const plunges = Math.max(1, Math.ceil(step.width / step.blade - 1e-9));
  const stepBy = plunges === 1 ? 0 : (step.width - step.blade) / (plunges - 1);
  const bottom = across.zero && readingAt(across.zero.wheel, (across.zero.at - step.to.aim) / 2);
  return {
    made: {
      ...begun(
        say("plan.groove", {
          width: show(step.width),
          size: wantedWords(step.to, show),
          from: show(step.at),
          to: show(step.at + step.width),
        }),
        tool,
      ),
      ...fed,
      zeros: [...across.touched, ...along.touched],
      places: [
        ...Array.from({ length: plunges }, (_, index) =>
          placeAlong(along.zero, "plunge", step.at + step.blade + index * stepBy),
        ).flat(),
        ...(across.zero && bottom
          ? [{ what: "depth" as const, wheel: across.zero.wheel, at: step.to.aim, reading: bottom }]
          : []),
      ],
      sizes: [dialSize(step.to, across.zero?.wheel, across.zero && (across.zero.at - step.to.aim) / 2)],
      notes: [say("plan.groove note", { wet: wetWords(job) }), ...chips],
      stroke: ((begins - step.to.aim) / 2) * plunges,
    },
    bench: kept(bench, across.zero, along.zero),
  };
}

/** A larger countersink than this, mm, is not at hand, and grabs. Common practice. */
const LARGEST_COUNTERSINK = 13;

/** A broken edge wider than this, mm, is cut in several goes: the whole slant is in the metal at once. Common practice. */
const WIDE_EDGE = 0.5;

export function chamfered(making: Making<Extract<JobStep, { do: "chamfer" }>>): Step {
  const { stage, step, wheels, show } = making;
  const { from, to } = stage.shaping;
  const inside = step.side === "bore";
  const diameter = inside ? boreOver(stage.after, from, to) : outsideOver(stage.before, from, to);
  const bore = inside && diameter <= Math.min(LARGEST_COUNTERSINK, largestDrill(making.findings.machine.limits));
  const tool = bore ? say("plan.countersink") : inside ? say("plan.boring tool at 45°") : say("plan.45° tool");
  const wheel = bore ? wheels.barrel : wheels.along;
  // So small an edge is cut like any other turning; the whole width of a forming tool is not in it.
  const { fed, chips } = fedStep(making, { operation: bore ? "countersinking" : "turning", diameter }, wheel);
  const sense = to > step.at + 1e-9 ? 1 : -1;
  const zero: Zero | undefined = wheel && { wheel, of: "corner", at: step.at };
  const goes = Math.max(1, Math.ceil(step.size / WIDE_EDGE - 1e-9));
  const edge = step.at === 0 ? say("plan.edge at the end") : say("plan.edge at", { at: show(step.at) });
  return {
    made: {
      ...begun(
        inside
          ? say("plan.chamfer in bore", { size: show(step.size), edge })
          : say("plan.chamfer", { size: show(step.size), edge }),
        tool,
      ),
      ...fed,
      zeros: zero ? [zero] : [],
      places: Array.from({ length: goes }, (_, go) =>
        placeAlong(zero, "stop", step.at + (sense * step.size * (go + 1)) / goes),
      ).flat(),
      notes: [
        bore
          ? say("plan.countersink note")
          : sense > 0
            ? say("plan.chamfer towards chuck")
            : say("plan.chamfer from chuck"),
        ...chips,
      ],
      stroke: step.size,
    },
    // A countersink in the tailstock leaves what stands in the post alone.
    bench: bore ? making.bench : { tool },
  };
}

/** A knurl of a pitch stands about half of it above the diameter that it was rolled on, on diameter. Common practice. */
const knurlRise = (pitch: number): number => pitch / 2;

export function knurled(making: Making<Extract<JobStep, { do: "knurl" }>>): Step {
  const { stage, step, wheels, show } = making;
  const tool = step.pinched ? say("plan.pinching knurling tool") : say("plan.knurling tool");
  const bench = benchFor(making, tool);
  const diameter = outsideOver(stage.before, step.at, step.at + step.length);
  const { fed, chips } = fedStep(making, { operation: "knurling", diameter }, wheels.along);
  const along = zeroOr(bench.along, endZero(making));
  return {
    made: {
      ...begun(
        step.at > 0
          ? say("plan.knurl from to", { pitch: show(step.pitch), from: show(step.at), to: show(step.at + step.length) })
          : say("plan.knurl long", { pitch: show(step.pitch), length: show(step.length) }),
        tool,
      ),
      ...fed,
      zeros: along.touched,
      places: [
        ...(step.wheel !== undefined && step.wheel < step.length
          ? placeAlong(along.zero, "begin", step.at + step.wheel)
          : []),
        ...placeAlong(along.zero, "stop", step.at + step.length),
      ],
      notes: [
        step.wheel === undefined ? say("plan.knurl places, begin", { at: show(step.at) }) : say("plan.knurl places"),
        say("plan.knurl rise", { rise: show(knurlRise(step.pitch)) }),
        say("plan.knurl oil"),
        ...chips,
      ],
      stroke: step.length,
    },
    bench: kept(bench, undefined, along.zero),
  };
}
