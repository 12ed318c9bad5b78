import type { JobStep } from "../job/job.js";
import { between, diameterOf, greatest, type Stretch } from "../part/outline.js";
import { endsOf } from "../part/workpiece.js";
import { toDegrees } from "../quantity/angle.js";
import { largestOf } from "../quantity/extremes.js";
import { formatFixed } from "../quantity/format.js";
import { halfAngle, setOver } from "../taper/taper.js";
import { say } from "../words/say.js";
import { lastCut, mayScrape } from "./chips.js";
import { begun, benchFor, endZero, fedStep, type Making, placeAlong, type Step, zeroOr } from "./making.js";
import { passes } from "./passes.js";
import { taperSizes } from "./reached.js";
import type { Show } from "./words.js";
import { readingAt, type Zero } from "./zero.js";

type TaperStep = Extract<JobStep, { do: "taper" }>;

/** The tool starts at the end of the taper that is nearer to the free end, and goes along its slope. */
export function tapered(making: Making<TaperStep>): Step {
  const { stage, step, wheels, job, findings, show } = making;
  const { before, shaping } = stage;
  const angle = halfAngle(step.large, step.small, step.length);
  const slope = step.length / Math.cos(angle);
  const tool = say("plan.taper tool");
  const bench = benchFor(making, tool);
  const [line] = shaping.outside as [Stretch];
  // Touched just behind its beginning, where an edge may have been broken.
  const begins = Math.max(step.at, endsOf(before).from);
  const there = greatest(before.outside, begins, begins + Math.min(1, step.length));
  // Where the work itself is swung its slope lies along the bed and the slide meets it squarely: between two such slopes lies the
  // difference of the radii times the cosine. The top slide's slope is met aslant, by the difference itself.
  const perRadius = step.by === "top slide" ? 1 : Math.cos(angle);
  const across = zeroOr(undefined, wheels.across && { wheel: wheels.across, of: "diameter", at: there });
  const along = zeroOr(bench.along, endZero(making));
  const feeding = step.by === "top slide" ? wheels.angled : wheels.along;
  const { fed, chips } = fedStep(making, { operation: "turning", diameter: step.large, fed: "finishing" }, feeding);
  const proudBy = proud(before.outside, line);
  const travel = (diameter: number) => ((there - diameter) / 2) * perRadius;
  const cuts = {
    ...{ from: travel(line.start + proudBy), to: travel(line.start) },
    ...{ cut: step.cut, finish: lastCut(step.finish, job), spring: mayScrape(job) },
  };
  const sloping: Zero | undefined = feeding && { wheel: feeding, of: "begin", at: 0 };
  const stop = sloping && readingAt(sloping.wheel, slope);
  const swivelled = step.by === "top slide";
  const list = passes(cuts, wheels.across);
  const deepest = list.findLast(({ kind }) => kind !== "spring")?.travel;
  return {
    made: {
      ...begun(taperTitle(step, show), tool),
      ...fed,
      // The tip is brought to the beginning first: elsewhere along a slope the same touch means another depth.
      first: swingWords(step, angle, making),
      zeros: [
        ...(swivelled && wheels.along !== wheels.angled ? along.touched : []),
        ...(sloping ? [sloping] : []),
        ...across.touched,
      ],
      ...(wheels.across && { depthWheel: wheels.across }),
      ...(across.zero && { depthZero: across.zero }),
      passes: list.map((pass) => ({ ...pass, size: there - (2 * pass.travel) / perRadius })),
      places: [
        ...(swivelled && wheels.along !== wheels.angled ? placeAlong(along.zero, "begin", step.at) : []),
        ...(sloping && stop
          ? [{ what: "stop" as const, wheel: sloping.wheel, at: step.at + step.length, reading: stop }]
          : []),
      ],
      sizes: taperSizes(step, across.zero?.wheel, deepest, {
        ...{ along: along.zero, perRadius, units: findings.machine.units },
      }),
      notes: [
        ...(proudBy > there - line.start + 1e-6 ? [say("plan.taper back")] : []),
        say("plan.taper prove"),
        ...chips,
      ],
      stroke: slope,
    },
    // What was swung is set back before anything else is cut, and the tip has moved.
    bench: { tool },
  };
}

/** Places of a millimetre: an end that follows from an angle is no rounder number, and nobody measures it finer. */
export const TAPER_END = 3;

function taperTitle({ large, small, length, at, smallAt }: TaperStep, show: Show): string {
  const sizes = { large: show(large, TAPER_END), small: show(small, TAPER_END), length: show(length) };
  const towards = smallAt === "end" ? say("plan.thin towards the end") : say("plan.thin towards the chuck");
  return at > 0
    ? say("plan.taper from", { ...sizes, at: show(at), towards })
    : say("plan.taper", { ...sizes, towards });
}

/** By how much the metal stands above a slope at most, on diameter. */
function proud(outside: readonly Stretch[], line: Stretch): number {
  const above = between(outside, line.from, line.to).flatMap(({ from, to, start, end }) => [
    start - diameterOf(line, from),
    end - diameterOf(line, to),
  ]);
  return Math.max(0, largestOf(above));
}

/** What is done before anything is touched: swinging moves the tip, or the work. Seen from above, as on the tapers sheet. */
function swingWords({ by, smallAt, at }: TaperStep, angle: number, { stage, show }: Making): string[] {
  const degrees = formatFixed(toDegrees(angle), 3);
  const begin = at > 0 ? say("plan.tip from face", { at: show(at) }) : say("plan.tip at face");
  const clockwise = say("plan.clockwise");
  const anticlockwise = say("plan.anticlockwise");
  if (by === "top slide")
    return [say("plan.swing top slide", { sense: smallAt === "end" ? anticlockwise : clockwise, degrees, begin })];
  if (by === "headstock")
    return [say("plan.swing headstock", { sense: smallAt === "end" ? clockwise : anticlockwise, degrees, begin })];
  const { from, to } = endsOf(stage.before);
  const over = {
    over: show(setOver(angle, to - from)),
    towards: smallAt === "end" ? say("plan.towards you") : say("plan.away from you"),
    between: show(to - from),
  };
  return [say("plan.set tailstock over", { ...over, begin })];
}
