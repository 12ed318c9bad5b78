import { rectangle, text } from "../../drawing/shapes.js";
import { wrapText } from "../../drawing/text.js";
import { aimWords } from "../../findings/aimWords.js";
import { travelWords } from "../../findings/travelWords.js";
import type { Job } from "../../job/job.js";
import type { Finding } from "../../plan/finding.js";
import { isRefused, type Plan } from "../../plan/plan.js";
import { BELT_SLIP, beforeTheFirstChip } from "../../plan/start.js";
import { type Show, showIn } from "../../plan/words.js";
import { capital, plural } from "../../quantity/format.js";
import { block, type Run, warning } from "../shared/block.js";
import { heading, kept } from "../shared/runs.js";
import { leading, medium, size } from "../shared/style.js";
import { paragraph } from "../shared/table.js";
import { partDrawing } from "./partDrawing.js";
import { sumRules } from "./planWords.js";
import { thePlan } from "./thePlan.js";

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
    const small = { size: size.small, gap: 0.5 };
    return [
      ...paragraph(job.name, width, { size: size.title, weight: "bold", gap: 4 }),
      ...paragraph(jobWords(job, show), width, { gap: 0.5 }),
      ...drawn(plan, show, width, height),
      ...(job.bar === undefined && job.steps.filter(({ do: verb }) => verb === "centre drill").length > 1
        ? paragraph("Of the holes beside each other the last is drawn; every step has its own picture.", width, {
            size: size.small,
            gap: 1,
          })
        : []),
      ...paragraph(
        "Dial readings are those of the dials printed for this machine: they are stuck on before it starts. A count in feeding is one second, as one says “one and two and”.",
        width,
        { size: size.small, gap: 1 },
      ),
      ...sumRules([...wheels]).flatMap((words) => paragraph(words, width, { gap: 1, weight: "bold" })),
      ...against(plan, width),
      ...(steps.some(({ speed }) => speed?.band.nearest !== undefined)
        ? paragraph(aimWords(machine.work).join(" "), width, small)
        : []),
      ...[...wheels].flatMap((wheel) =>
        travelWords(wheel, machine.units).flatMap((words) =>
          paragraph(words, width, { size: size.small, weight: "bold", ink: "accent", gap: 0.8 }),
        ),
      ),
      ...ticked("Before the first chip", beforeTheFirstChip(job, steps, findings), width),
      ...paragraph(BELT_SLIP, width, { size: size.small, gap: 1 }),
    ];
  }),
  (findings) => {
    const plan = thePlan(findings);
    if (plan === undefined || !isRefused(plan)) return [];
    const numbers = plan.steps
      .filter(({ stage }) => plan.findings.some(({ kind, step }) => kind === "refused" && step === stage.index))
      .map(({ number }) => number);
    const which = numbers.length === 0 ? "" : `, for step${numbers.length > 1 ? "s" : ""} ${numbers.join(", ")}`;
    return [
      `This job is refused and was printed all the same${which}; the first page says why. Do not cut by it until that is mended.`,
    ];
  },
);

/** The part in its stock, with the numbers of the steps. */
function drawn({ job, steps }: Plan, show: Show, width: number, height: number): Run[] {
  return [
    {
      drawing: partDrawing({
        stages: steps.map(({ stage }) => stage),
        numbers: steps.map(({ number }) => number),
        show: (mm) => show(mm).replace(/ \(.*\)$/, ""),
        unit: job.units,
        width,
        height: height * 0.42,
      }),
      gap: 3,
    },
  ];
}

function jobWords({ bar, parts, material, tool, spindleStop }: Job, show: Show): string {
  const held =
    bar === undefined
      ? ""
      : `, ${bar.bore === undefined ? "bar" : "tube"} ${show(bar.diameter)}${bar.bore === undefined ? "" : ` by ${show(bar.bore)}`}${bar.length === undefined ? "" : `, ${show(bar.length)} long`}, ${show(bar.out)} out${{ chuck: "", "chuck and centre": ", its end held by a centre", "between centres": " between centres" }[bar.held]}${spindleStop ? ", against a stop in the spindle" : ""}`;
  return `${plural(parts, "part")}, ${material}${held}; ${tool}.`;
}

/** What is alike at several steps stands once. */
function grouped(findings: readonly Finding[], plan: Plan): string[] {
  const alike = new Map<string, number[]>();
  for (const { step, what, remedy } of findings) {
    const number = plan.steps.find(({ stage }) => stage.index === step)?.number;
    const words = `${what}; ${remedy}.`;
    alike.set(words, [...(alike.get(words) ?? []), ...(number === undefined ? [] : [number])]);
  }
  return [...alike].map(([words, numbers]) =>
    numbers.length === 0 ? capital(words) : `Step${numbers.length > 1 ? "s" : ""} ${numbers.join(", ")}: ${words}`,
  );
}

function against(plan: Plan, width: number): Run[] {
  const { findings, remarks, reordered } = plan;
  const order = reordered
    ? paragraph(
        "Some steps are done in another order than the job's file has them: so the belt is moved less often, and nothing else changes.",
        width,
        { gap: 1 },
      )
    : [];
  if (findings.length + remarks.length === 0)
    return [...order, ...paragraph("Nothing stands against this job, as far as the files tell.", width, { gap: 1.5 })];
  const of = (wanted: Finding["kind"]) => findings.filter(({ kind }) => kind === wanted);
  const [refused, careful] = [of("refused"), of("take care")];
  const list = (words: readonly string[]) => words.flatMap((one) => paragraph(one, width, { ink: "accent", gap: 0.5 }));
  return [
    ...order,
    ...(refused.length > 0 ? [...heading("Refused", width, 3), ...list(grouped(refused, plan))] : []),
    ...(careful.length + remarks.length > 0 ? heading("Take care", width, 3) : []),
    ...list(remarks),
    ...list(grouped(careful, plan)),
  ];
}

/** One box to tick for each line. */
export function ticked(title: string, lines: readonly string[], width: number): Run[] {
  const side = 3.2;
  const step = size.body * leading;
  const rows = lines.map((words): Run => {
    const parts = wrapText(words, width - side - 3, size.body, "regular");
    return {
      drawing: {
        width,
        height: Math.max(step * parts.length, side + 0.6),
        marks: [
          rectangle({ x: 0.2, y: 0.3 }, side, side, { pen: medium }),
          ...parts.map((part, row) => text(part, { x: side + 2.5, y: step * (row + 0.76) }, { size: size.body })),
        ],
      },
      gap: 0.7,
    };
  });
  return [...heading(title, width, 4), ...kept(rows.slice(0, -1)), ...rows.slice(-1)];
}
