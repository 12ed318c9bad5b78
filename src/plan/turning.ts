import type { HandwheelFinding } from "../findings/findings.js";
import type { JobStep } from "../job/job.js";
import { diameterAt } from "../part/outline.js";
import { endsOf, openOver, outsideOver } from "../part/workpiece.js";
import { formatFixed } from "../quantity/format.js";
import { say } from "../words/say.js";
import { kept } from "./bench.js";
import { lastCut, mayScrape } from "./chips.js";
import { begun, benchFor, endZero, fedStep, type Making, placeAlong, type Step, zeroOr } from "./making.js";
import { passes } from "./passes.js";
import type { SizedPass } from "./plannedStep.js";
import { diameterSize, lengthSize, wantedWords } from "./reached.js";
import { knife } from "./toolPost.js";
import type { Zero } from "./zero.js";

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
      sizes: [diameterSize(step.to, making, sized), lengthSize(end, along.zero, end, making.findings.machine.units)],
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

/** Travel of the slide across from its zero to a diameter: inward is forward. */
const travelTo =
  (zero: Zero | undefined, otherwise: number) =>
  (diameter: number): number =>
    ((zero?.at ?? otherwise) - diameter) / 2;

const sizedBy = (list: ReturnType<typeof passes>, zero: Zero | undefined, otherwise: number): SizedPass[] =>
  list.map((pass) => ({ ...pass, size: (zero?.at ?? otherwise) - 2 * pass.travel }));

function depthsOf({ step, job }: Making<ReduceStep>, from: number, to: number) {
  return { from, to, cut: step.cut, finish: lastCut(step.finish, job), spring: mayScrape(job) };
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
