import type { HandwheelFinding } from "../../findings/findings.js";
import { zeroWords } from "../../findings/travelWords.js";
import type { Units } from "../../machine/machine.js";
import { formatDoubted } from "../../quantity/format.js";
import { say } from "../../words/say.js";
import { block, type Run } from "../shared/block.js";
import { paragraph } from "../shared/paragraph.js";
import { goingOn, heading, lowered, together } from "../shared/runs.js";
import { size } from "../shared/style.js";
import { table } from "../shared/table.js";
import { blanks } from "./blanks.js";
import { reportFacts } from "./reportFacts.js";
import { reportPlots } from "./reportPlots.js";
import { budgetTable, readingsList, zoneTable } from "./reportTables.js";

/** What was measured on each handwheel and how good it is: what the readings say, plots, budget, the readings themselves. In the file's
 *  unit. Several handwheels share a page. */
export const measuredReport = block(
  { plotHeight: 46, readings: 240 },
  ({ handwheels, findings, settings, width }): Run[] => {
    const { units } = findings.machine;
    return handwheels.flatMap((finding): Run[] => {
      const { handwheel, study } = finding;
      const feed = finding.feed ?? finding.miscounted;
      if (feed?.fit === undefined || study === undefined || handwheel.feed?.from !== "readings") return [];
      const facts = table(
        [
          { heading: [], align: "start" },
          { heading: [], align: "start" },
        ],
        reportFacts(finding, units).map(({ about, says, small }) => [
          { text: about, weight: "bold" as const },
          { text: says, ...(small && { note: small }) },
        ]),
        { width, ruled: true },
      );
      const runs = [
        ...heading(headWords(finding, units), width, 5),
        ...together([...facts, ...reportPlots(finding, units, width, settings.plotHeight)]),
        ...(study.budget ? lowered(together(budgetTable(study.budget, feed.fit.runs > 1, units, width)), 4) : []),
        ...(study.shape.alongTravel?.real
          ? lowered(
              together([
                ...zoneTable(study.shape.alongTravel.found, units, width),
                ...paragraph(zeroWords(finding), width, { gap: 1 }),
              ]),
              4,
            )
          : []),
        ...readingsList(finding, units, width, settings.readings),
      ];
      return goingOn(runs, handwheel.name, width);
    });
  },
);

/** The number first: what the sheet is for. */
function headWords(finding: HandwheelFinding, units: Units): string {
  const { name } = finding.handwheel;
  if (finding.miscounted)
    return say(finding.study?.jump ? "measured report.jumps" : "measured report.miscounted", { name });
  const { feed } = finding;
  const turn = feed === undefined ? "" : formatDoubted(feed.perTurn, feed.uncertainty, units, units === "mm" ? 5 : 6);
  return say("measured report.a turn", { name, turn });
}

/** Who measured, and what the sheet is not. */
export const measuredFooting = block({}, ({ findings, width }): Run[] => {
  const { measured } = findings.machine;
  const day = measured === undefined ? say("measured report.no day") : say("measured report.day", { day: measured });
  const runs = [
    ...paragraph(day, width, { gap: 5 }),
    ...blanks(
      [
        { before: say("measured report.by"), room: 40 },
        { before: say("measured report.gauge"), room: 40 },
        { before: say("measured report.temperature"), behind: "°C", room: 12 },
      ],
      width,
      0.5,
    ),
    ...paragraph(say("measured report.own record"), width, { size: size.source, gap: 1.5 }),
  ];
  return together(runs).map((run, index) => (index === 0 ? { ...run, keepWithPrevious: true } : run));
});
