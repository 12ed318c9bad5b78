import { materialName } from "../../cutting/materials.js";
import { toolName } from "../../cutting/tools.js";
import { rectangle, text } from "../../drawing/shapes.js";
import { textWidth, wrapText } from "../../drawing/text.js";
import { aimWords } from "../../findings/aimWords.js";
import { dialToRead } from "../../findings/dialToRead.js";
import type { HandwheelFinding } from "../../findings/findings.js";
import { powerOff } from "../../findings/powerOff.js";
import { travelWords } from "../../findings/travelWords.js";
import type { Job } from "../../job/job.js";
import type { Machine, Units } from "../../machine/machine.js";
import { MEASURED, TOUCHED } from "../../plan/doubt.js";
import { isDrawnOut } from "../../plan/drawnOut.js";
import type { Finding } from "../../plan/finding.js";
import { ENTERED } from "../../plan/holes.js";
import { isRefused, isRefusedStep, type Plan } from "../../plan/plan.js";
import { beforeTheFirstChip, beltSlip } from "../../plan/start.js";
import { type Show, showIn } from "../../plan/words.js";
import { capital, trimmedSize } from "../../quantity/format.js";
import { grouped as byHole } from "../../quantity/grouped.js";
import { say } from "../../words/say.js";
import { block, type Run, warning } from "../shared/block.js";
import { paragraph } from "../shared/paragraph.js";
import { heading, kept } from "../shared/runs.js";
import { leading, objectLine, size } from "../shared/style.js";
import { type DrawnStage, drawnStages } from "./drawnStages.js";
import { holesBeside } from "./holesBeside.js";
import { partDrawing } from "./partDrawing.js";
import { sumRules } from "./planWords.js";
import { sharedNotes } from "./sharedNotes.js";
import { beltKeyOf, thePlan } from "./thePlan.js";

/** What is made of what, what stands against it, the part drawn to scale, and what is seen to before the first chip. */
export const planHead = warning(
  block({}, ({ findings, width, height }): Run[] => {
    const plan = thePlan(findings);
    if (plan === undefined) return [];
    const { job, steps } = plan;
    const { machine } = findings;
    const show = showIn(machine, job);
    const wheels = new Set(
      steps.flatMap(({ depthWheel, places }) => [
        ...(depthWheel ? [depthWheel] : []),
        ...places.map(({ wheel }) => wheel),
      ]),
    );
    const small = { size: size.text, gap: 0.5 };
    return [
      // The head of the page cuts a long name short.
      ...(textWidth(job.name, size.card, "bold") > width / 2
        ? paragraph(job.name, width, { size: size.card, weight: "bold", gap: 2 })
        : []),
      ...paragraph(jobWords(job, show), width, { weight: "bold", gap: 2 }),
      ...drawn(plan, show, width, height),
      ...paragraph(howToRead(plan, [...wheels], beltKeyOf(findings), machine), width, { gap: 1 }),
      ...worstWords(plan, machine.units).flatMap((words) => paragraph(words, width, { gap: 1 })),
      ...sumRules([...wheels]).flatMap((words) => paragraph(words, width, { gap: 1, weight: "bold" })),
      ...against(plan, width),
      ...(steps.some(({ speed }) => speed?.band.nearest !== undefined)
        ? paragraph(aimWords(machine.work).join(" "), width, small)
        : []),
      ...[...wheels].flatMap((wheel) =>
        travelWords(wheel, machine.units).flatMap((words) =>
          paragraph(words, width, { size: size.text, weight: "bold", gap: 0.8 }),
        ),
      ),
      ...forSeveral(plan, width),
      ...ticked(say("plan.before the first chip"), beforeTheFirstChip(job, steps, findings), width),
      ...paragraph(beltSlip(), width, { size: size.text, gap: 1 }),
    ];
  }),
  (findings) => {
    const plan = thePlan(findings);
    if (plan === undefined || !isRefused(plan)) return [];
    const numbers = plan.steps
      .filter(({ stage }) => plan.findings.some(({ kind, step }) => kind === "refused" && step === stage.index))
      .map(({ number }) => number);
    return [
      numbers.length === 0
        ? say("plan.refused all the same")
        : say("plan.refused all the same, for", { steps: stepsWords(numbers) }),
    ];
  },
);

/** The part in its stock, with the numbers of the steps; of holes beside each other each by itself. */
function drawn(plan: Plan, show: Show, width: number, height: number): Run[] {
  const { drawn, left } = drawnStages(plan);
  const room = { width, height: height * 0.52 };
  const drawing = (some: readonly DrawnStage[], own: typeof room) =>
    partDrawing({
      stages: some.map(({ stage }) => stage),
      numbers: some.map(({ number }) => number),
      show: (mm, places) => show(mm, places).replace(/ \(.*\)$/, ""),
      unit: plan.job.units,
      ...own,
    });
  const holes = [...byHole(drawn, ({ stage }) => stage.hole?.begunBy).values()];
  return [
    ...(holes.length < 2 ? [{ drawing: drawing(drawn, room), gap: 3 }] : holesBeside(holes, room, drawing)),
    ...(left.length === 0
      ? []
      : paragraph(say("plan.drawn without", { steps: stepsWords(left) }), width, { weight: "bold", gap: 1 })),
  ];
}

function jobWords(job: Job, show: Show): string {
  const { bar, parts, material, tool } = job;
  const held = bar && [
    bar.bore === undefined
      ? say("plan.bar", { diameter: show(bar.diameter) })
      : say("plan.tube", { diameter: show(bar.diameter), bore: show(bar.bore) }),
    ...(bar.length === undefined ? [] : [say("plan.bar long", { length: show(bar.length) })]),
    say("plan.bar out", { out: show(bar.out) }),
    ...(bar.held === "chuck" ? [] : [say(`plan.bar held ${bar.held}`)]),
    ...stopWords(job),
  ];
  return `${[say("plan.parts", { n: parts }), materialName(material), ...(held ?? [])].join(", ")}; ${toolName(tool)}.`;
}

/** What rests against the stop in the spindle: the work from the beginning, or what was parted off a bar. */
function stopWords(job: Job): string[] {
  if (!job.spindleStop) return [];
  if (!isDrawnOut(job)) return [say("plan.bar against a stop")];
  return job.steps.some(({ do: verb }) => verb === "turn round") ? [say("plan.bar turned against a stop")] : [];
}

/** "step 3", "steps 3, 4 and 7". */
export const stepsWords = (numbers: readonly number[]): string =>
  say("plan.steps", {
    n: numbers.length,
    steps:
      numbers.length < 2
        ? String(numbers[0] ?? "")
        : say("units and numbers.list and", { list: numbers.slice(0, -1).join(", "), last: numbers.at(-1) ?? "" }),
  });

/** What is alike at several steps stands once. */
function grouped(findings: readonly Finding[], plan: Plan): string[] {
  const alike = new Map<string, number[]>();
  for (const { step, what, remedy } of findings) {
    const number = plan.steps.find(({ stage }) => stage.index === step)?.number;
    const words = `${what}; ${remedy}.`;
    alike.set(words, [...(alike.get(words) ?? []), ...(number === undefined ? [] : [number])]);
  }
  return [...alike].map(([words, numbers]) =>
    numbers.length === 0 ? capital(words) : `${capital(stepsWords(numbers))}: ${words}`,
  );
}

function against(plan: Plan, width: number): Run[] {
  const { findings, remarks, reordered } = plan;
  const order = reordered ? paragraph(say("plan.reordered"), width, { gap: 1 }) : [];
  if (findings.length + remarks.length === 0)
    return [...order, ...paragraph(say("plan.nothing against"), width, { gap: 1.5 })];
  const of = (wanted: Finding["kind"]) => findings.filter(({ kind }) => kind === wanted);
  const [refused, careful] = [of("refused"), of("take care")];
  const list = (words: readonly string[]) =>
    words.flatMap((one) => paragraph(one, width, { weight: "bold", gap: 0.5 }));
  return [
    ...order,
    ...(refused.length > 0 ? [...heading(say("plan.refused"), width, 3), ...list(grouped(refused, plan))] : []),
    ...(careful.length + remarks.length > 0 ? heading(say("plan.take care"), width, 3) : []),
    ...list(remarks),
    ...list(grouped(careful, plan)),
  ];
}

/** The signs of a step, once for all of them. */
const howToRead = (
  { beltChanges }: Plan,
  wheels: readonly HandwheelFinding[],
  beltKey: string,
  machine: Machine,
): string =>
  [
    ...(wheels.some(({ dial }) => dial !== undefined) ? [say("plan.readings are")] : []),
    say(wheels.some(dialToRead) ? "plan.turns are whole" : "plan.turns are"),
    say("plan.counts are"),
    ...(wheels.some((wheel) => dialToRead(wheel)?.old) ? [say("plan.readings on old dials")] : []),
    ...(beltChanges > 0 ? [say("plan.belt moved sign", { off: powerOff(machine) })] : []),
    ...(beltKey === "" ? [] : [say("plan.belts called", { key: beltKey })]),
  ].join(" ");

/** What every “comes out” and “alike” of the steps adds up, and what of it was measured by nobody; empty where no step promises. */
function worstWords(plan: Plan, units: Units): string[] {
  const steps = plan.steps.filter((step) => !isRefusedStep(plan, step));
  const promised = steps.flatMap(({ sizes }) => sizes.filter(({ doubt }) => doubt !== undefined));
  if (promised.length === 0) return [];
  const words = [
    say("plan.worst adds", { touch: trimmedSize(TOUCHED, units, 3), gauge: trimmedSize(MEASURED[units], units, 3) }),
    ...(promised.some(({ what }) => what === "depth")
      ? [say("plan.worst adds, depth", { entered: trimmedSize(ENTERED, units, 3) })]
      : []),
  ];
  return [words.join(" ")];
}

/** What several steps say alike, by its letter. */
function forSeveral(plan: Plan, width: number): Run[] {
  const shared = sharedNotes(plan);
  if (shared.length === 0) return [];
  const indent = 6;
  const rows = shared.map(({ sign, words, steps }): Run => {
    const lines = wrapText(`${words} (${stepsWords(steps)})`, width - indent, size.text, "regular");
    const step = size.text * leading;
    return {
      drawing: {
        width,
        height: step * lines.length,
        marks: [
          text(sign, { x: 0.4, y: step * 0.76 }, { size: size.text, weight: "bold" }),
          ...lines.map((part, row) => text(part, { x: indent, y: step * (row + 0.76) }, { size: size.text })),
        ],
      },
      gap: 0.7,
    };
  });
  return [...heading(say("plan.for several steps"), width, 4), ...rows];
}

/** Boxes to tick stand in two columns from this width on, mm. */
const twoColumns = 150;
const betweenColumns = 6;

/** One box to tick for each line. */
function ticked(title: string, lines: readonly string[], width: number): Run[] {
  const side = 3.2;
  const step = size.text * leading;
  const columns = width >= twoColumns ? 2 : 1;
  const own = (width - (columns - 1) * betweenColumns) / columns;
  const list = { columns, step: own + betweenColumns };
  const rows = lines.map((words): Run => {
    const parts = wrapText(words, own - side - 3, size.text, "regular");
    return {
      ...(columns > 1 && { list }),
      drawing: {
        width: own,
        height: Math.max(step * parts.length, side + 0.6),
        marks: [
          rectangle({ x: 0.2, y: 0.3 }, side, side, { pen: objectLine }),
          ...parts.map((part, row) => text(part, { x: side + 2.5, y: step * (row + 0.76) }, { size: size.text })),
        ],
      },
      gap: 0.7,
    };
  });
  return [...heading(title, width, 4), ...kept(rows.slice(0, -1)), ...rows.slice(-1)];
}
