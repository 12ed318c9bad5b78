import type { Units } from "../../machine/machine.js";
import type { Compromise } from "../../plan/belts.js";
import { HANDLING, type Minutes } from "../../plan/minutes.js";
import type { Plan } from "../../plan/plan.js";
import { setsThePost } from "../../plan/toolPost.js";
import { formatFixed, plural } from "../../quantity/format.js";
import { block, type Run } from "../shared/block.js";
import { heading, kept } from "../shared/runs.js";
import { size } from "../shared/style.js";
import { type Cell, type Column, paragraph, table } from "../shared/table.js";
import { minutesWords, within } from "./planWords.js";
import { thePlan } from "./thePlan.js";

/** The parts after the first: what stays set, what is touched off again, how often the belt moves, how long it all takes. */
export const planBatch = block({}, ({ findings, width }): Run[] => {
  const plan = thePlan(findings);
  if (plan === undefined) return [];
  const { job } = plan;
  return [
    ...(job.parts > 1 ? nextPart(plan, width) : []),
    ...beltsAndTime(plan, width),
    ...(job.parts > 1 ? partRows(plan, findings.machine.units, width) : []),
  ];
});

const small = { size: size.small, gap: 0.6 };

function nextPart({ job, steps }: Plan, width: number): Run[] {
  const posted = steps.filter(setsThePost);
  const tools = [...new Set(posted.map(({ tool }) => tool))];
  const swung = steps.filter(({ first }) => first.length > 0).map(({ number }) => number);
  const lines = [
    ...lengthLines(job, steps),
    ...(tools.length > 1
      ? [
          `${tools.length} tools follow each other in the post (${tools.join("; ")}). A tool that is taken out and put back is touched off again, unless its holder comes back to just the same place.`,
        ]
      : tools.length === 1
        ? [
            "One tool does it all: as long as it is not moved, nothing is touched off again. Every part gets the same readings.",
          ]
        : []),
    ...(swung.length > 0
      ? [
          `What is swung for step ${swung.join(", ")} and set back takes every zero along: do that step on all parts in one go, or touch off again for each part.`,
        ]
      : []),
    steps.some(({ anew }) => anew.across)
      ? "Where a tool is touched off anew measure before the last cut on every part. What keeps its zero goes to the readings that the first part taught: measure the first, the third, then one in ten."
      : "From the second part on no cut is measured half way: go to the readings that the first part taught. Measure the first, the third, then one in ten, and whenever a tool was touched.",
    ...(job.batch === "operation"
      ? [
          "By operation: each step on all parts, then the next. A chuck never takes a part back quite true, so that steps which must run true to each other stay in one clamping.",
        ]
      : steps.some(({ stage }) => stage.step.do === "turn round")
        ? [
            "Part by part up to where it is turned round, for all parts; then part by part from there: what is cut in one holding runs true to itself.",
          ]
        : ["Part by part: each from the first step to the last, so that its surfaces run true to each other."]),
  ];
  return [
    ...heading(`${job.parts} parts alike`, width, 5),
    ...lines.flatMap((words) => paragraph(words, width, small)),
  ];
}

/** What becomes of the length zeros from part to part, in each holding. */
function lengthLines({ bar, spindleStop }: Plan["job"], steps: Plan["steps"]): string[] {
  if (bar === undefined) return ["Clamp each part against the same stops."];
  const centred = steps.some(({ stage }) => stage.holding.held === "between centres");
  const fresh =
    "each stands out a little differently: touch its raw end and set the length zero anew on every part, or hold it against a stop";
  const lines =
    bar.length === undefined
      ? [
          `Bar through the spindle: draw it out by the same length each time, against a block or a stop that is then taken away. Without one ${fresh}.`,
        ]
      : [
          spindleStop
            ? "Push each blank against the stop in the spindle and close the chuck the same way: the length zeros hold for every part."
            : `Blanks without a stop in the spindle (spindleStop: true): ${fresh}.`,
        ];
  if (steps.some(({ stage }) => stage.step.do === "turn round"))
    lines.push(
      spindleStop
        ? "Turned round, the stop is set anew once; then these length zeros hold for every part as well."
        : "Turned round, the same holds for the other end.",
    );
  if (centred)
    lines.push(
      "Between centres each part lies as deep as its centre holes are: touch its face and set the length zero anew on every part, whatever stop there is.",
    );
  return lines;
}

function beltsAndTime(plan: Plan, width: number): Run[] {
  const { job, minutes, beltChanges, compromises } = plan;
  const byOperation = job.bar === undefined || job.bar.length !== undefined;
  const ways: readonly (readonly [string, Minutes])[] =
    job.parts > 1 && byOperation
      ? [
          ["part by part", minutes.part],
          ["by operation", minutes.operation],
        ]
      : [[job.parts > 1 ? "part by part" : "one part", minutes.part]];
  const columns: Column[] = [
    { heading: ["way of working"], align: "start", stretch: 1 },
    { heading: ["belt", "changes"], align: "end" },
    { heading: ["under the tool", "minutes"], align: "end" },
    { heading: ["handling", "minutes"], align: "end" },
    { heading: ["tools and", "holding"], align: "end" },
    { heading: ["belts", "minutes"], align: "end" },
    { heading: ["all", ""], align: "end" },
  ];
  const rows = ways.map(([words, time]): Cell[] => [
    { text: words, weight: (words === "by operation") === (job.batch === "operation") ? "bold" : "regular" },
    { text: String(time.beltChanges) },
    { text: formatFixed(time.cutting * job.parts, 0) },
    { text: formatFixed(time.handling * job.parts, 0) },
    { text: formatFixed(time.tools + time.holding, 0) },
    { text: formatFixed(time.belts, 0) },
    { text: minutesWords(time.batch), weight: "bold" },
  ]);
  const uncounted = minutes[job.batch].uncounted;
  return [
    ...heading("Belts and time", width, 5),
    ...kept(
      paragraph(
        `${beltChanges === 0 ? "The belt stays where it is from the first step to the last." : `${plural(beltChanges, "belt change")} from the first step to the last; each is a hand under the cover, plug out.`}`,
        width,
        small,
      ),
    ),
    ...compromises.flatMap((one) => paragraph(compromiseWords(one, plan), width, { ...small, weight: "bold" })),
    ...table(columns, rows, { width, size: size.small }),
    ...paragraph(
      `Reckoned with the least feed in print at the speeds above${uncounted > 0 ? ` (${plural(uncounted, "step")} without a feed or a speed left out)` : ""}, and with own figures for unhurried handling: ${HANDLING.belt} minutes a belt change, ${HANDLING.tool} a tool set and touched off, ${HANDLING.part} a part held, ${HANDLING.pass} a pass, ${HANDLING.measure} a measurement. The first part takes longer; a trial tells better.`,
      width,
      small,
    ),
  ];
}

function compromiseWords({ steps, position, rpm, more, saved }: Compromise, { job }: Plan): string {
  const names = steps.map(({ number }) => number);
  const which = names.length === 1 ? `step ${names[0]}` : `steps ${names.slice(0, -1).join(", ")} and ${names.at(-1)}`;
  return `Slower is allowed: ${which} at ${position} (${formatFixed(rpm, 0)} rpm) too costs ${minutesWords(more)} more under the tool for one part and saves ${plural(saved, "belt change")}${job.parts > 1 && job.batch === "part" ? `, ${more * job.parts < saved * HANDLING.belt * job.parts ? "less time in all when you work part by part" : "but not time"}` : ""}.`;
}

/** More sizes than these are measured by their steps. */
const mostColumns = 6;
/** More rows than these go on another sheet. */
const mostRows = 40;

/** A row for each part: what was measured, and a box when it is done. */
function partRows({ job, steps }: Plan, units: Units, width: number): Run[] {
  const sizes = steps
    .flatMap(({ number, sizes, stage }) =>
      sizes
        .filter(({ what }) => what === "diameter" || ["face", "part"].includes(stage.step.do))
        .map((one) => ({ ...one, number })),
    )
    // Those with limits first, in the order of work.
    .sort((a, b) => Number(a.least === undefined) - Number(b.least === undefined) || a.number - b.number)
    .slice(0, mostColumns)
    .sort((a, b) => a.number - b.number);
  const columns: Column[] = [
    { heading: ["part"], align: "middle", stretch: 0 },
    ...sizes.map(
      ({ number, aim, least, most }): Column => ({
        heading: [
          `step ${number}`,
          least === undefined || most === undefined ? `${formatSizeShort(aim, units)}` : within(least, most, units),
        ],
        align: "middle",
      }),
    ),
    { heading: ["done"], align: "middle", stretch: 0 },
  ];
  const rows = Array.from({ length: Math.min(job.parts, mostRows) }, (_, index): Cell[] => [
    { text: String(index + 1), weight: "bold" },
    ...sizes.map((): Cell => ({ text: "", drawn: "line" })),
    { text: "", drawn: "box" },
  ]);
  const more = job.parts > mostRows ? `, parts 1 to ${mostRows}; the others on another sheet` : "";
  return [...heading(`Measured${more}`, width, 5), ...table(columns, rows, { width, size: size.heading })];
}

const formatSizeShort = (mm: number, units: Units): string => within(mm, mm, units).split(" to ")[1] ?? "";
