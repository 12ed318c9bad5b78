import type { HandwheelFinding } from "../../findings/findings.js";
import type { Units } from "../../machine/machine.js";
import { formatDoubted, formatSize } from "../../quantity/format.js";
import { say } from "../../words/say.js";
import { block } from "../shared/block.js";
import { paragraph } from "../shared/paragraph.js";
import { size } from "../shared/style.js";
import { type Column, table } from "../shared/table.js";

/** What each handwheel does, number first: how far a turn goes, what a division is worth, what it loses on the way back. */
export const wheelList = block({}, ({ findings, handwheels, width }) => {
  if (handwheels.length === 0) return [];
  const { units } = findings.machine;
  const columns: readonly Column[] = [
    { heading: [say("front.handwheel")], align: "start" },
    { heading: [say("front.a turn")], align: "start" },
    { heading: [say("front.division")], align: "start" },
    { heading: [say("front.dial reads")], align: "start" },
    { heading: [say("front.numbers grow")], align: "start", optional: true },
    { heading: [say("front.lost motion")], align: "end" },
  ];
  const unmeasured = handwheels.some(notMeasured);
  const rows = handwheels.map((finding) => wheelRow(finding, units));
  // A column of which nothing is known only takes room from the others.
  const told = columns.map((_, index) => rows.some((row) => row[index]?.text !== ""));
  return [
    ...table(
      columns.filter((_, index) => told[index]),
      rows.map((row) => row.filter((_, index) => told[index])),
      { width, ruled: true },
    ),
    ...(unmeasured ? paragraph(`~ ${say("front.not measured")}`, width, { size: size.source, gap: 1 }) : []),
  ];
});

const notMeasured = ({ feed }: HandwheelFinding): boolean => feed !== undefined && feed.from !== "readings";

function wheelRow(finding: HandwheelFinding, units: Units) {
  const { handwheel, feed, study, dial, miscounted } = finding;
  const lost = feed?.lostMotion?.travel;
  const turn =
    feed === undefined
      ? say(miscounted ? "front.miscounted" : "front.not given")
      : formatDoubted(feed.perTurn, feed.uncertainty, units, units === "mm" ? 4 : 5);
  return [
    { text: handwheel.name, weight: "bold" as const },
    { text: notMeasured(finding) ? `${turn} ~` : turn },
    { text: dial?.chosen.divisionLabel ?? "" },
    { text: say(handwheel.reads === "diameter" ? "front.diameter" : "front.travel") },
    {
      text:
        handwheel.dial === undefined
          ? ""
          : say(handwheel.dial.increases === "clockwise" ? "front.clockwise" : "front.anticlockwise"),
    },
    { text: lost !== undefined ? formatSize(lost, units, 3) : study?.back ? say("front.scatters") : "" },
  ];
}
