import { feedPerRevolution } from "../../cutting/feeds.js";
import { type HandFeed, handFeed, handFeedAtLeast } from "../../cutting/handFeed.js";
import { materialName } from "../../cutting/materials.js";
import { sourceTitle } from "../../cutting/sources.js";
import { burning, burns, drillToTheEnd } from "../../findings/chipFire.js";
import { drillsOf } from "../../findings/drills.js";
import type { Findings, HandwheelFinding } from "../../findings/findings.js";
import { withoutNearlyAlike } from "../../findings/nearlyAlike.js";
import { drillingWheel, wheelNamed } from "../../findings/roles.js";
import { sizeName } from "../../findings/sizeName.js";
import { speedToFeed } from "../../findings/speedChoice.js";
import type { Units } from "../../machine/machine.js";
import { formatFixed, sizeFigure, unitName } from "../../quantity/format.js";
import { fromMm } from "../../quantity/length.js";
import { say, withinSentence } from "../../words/say.js";
import { block, type Run } from "../shared/block.js";
import { paragraph } from "../shared/paragraph.js";
import { accompanying, heading, keyed, keyOf, whole } from "../shared/runs.js";
import { size } from "../shared/style.js";
import { type Cell, type Column, table } from "../shared/table.js";
import { countSign, countWords } from "./countCell.js";
import { turnsTold } from "./turnsTold.js";

/** Depth by eighths of a turn of the wheel that feeds the drill, over its travel (or so many turns where the file does not give
 *  that): the handwheel of that name, or the one that moves a barrel or a quill; and how fast to turn it for the file's drills in
 *  its first material. */
export const drillDepth = block({ handwheel: "", turns: 8 }, ({ findings, settings, width, height }): Run[] => {
  const { handwheels } = findings;
  const wheel = settings.handwheel === "" ? drillingWheel(handwheels) : wheelNamed(settings.handwheel, handwheels);
  if (wheel?.feed === undefined)
    return accompanying([
      ...paragraph(say("drilling card.no barrel"), width, { gap: 3 }),
      ...whereChipsBurn(findings, width),
    ]);
  const name = withinSentence(wheel.handwheel.name);
  return [
    ...heading(say("drilling card.depth", { wheel: name }), width, 4),
    // A long one begins on the page of the bars.
    ...whole(depthTable(wheel, findings.machine.units, settings.turns, width), 0.6 * height),
    // By the positions of the bars.
    ...whole(drillFeed(withoutNearlyAlike(findings).findings, wheel, wheel.feed.perTurn, width), height),
    ...accompanying(whereChipsBurn(findings, width)),
  ];
});

const EIGHTHS = ["0", "1/8", "1/4", "3/8", "1/2", "5/8", "3/4", "7/8"];

/** A row for each whole turn; no depth beyond the travel. */
function depthTable(wheel: HandwheelFinding, units: Units, usual: number, width: number): Run[] {
  const { feed, handwheel } = wheel;
  if (feed === undefined) return [];
  const { perTurn } = feed;
  const travel = handwheel.travel ?? usual * perTurn;
  const columns: Column[] = [
    { heading: [say("drilling card.whole turns"), say("drilling card.and")], align: "start" },
    ...EIGHTHS.map((part): Column => ({ heading: [part, unitName(units)], align: "decimal" })),
  ];
  const rows = turnsTold(wheel, usual, 0).map((turns): Cell[] => [
    { text: String(turns), weight: "bold" },
    ...EIGHTHS.map((_, eighths): Cell => {
      const depth = (turns + eighths / 8) * perTurn;
      return { text: depth > travel + 1e-9 ? "" : sizeFigure(depth, units) };
    }),
  ]);
  return table(columns, rows, { width });
}

const whereChipsBurn = ({ machine }: Findings, width: number): Run[] =>
  burning(machine.work.materials).flatMap((material) =>
    paragraph(say("drilling card.chips burn", { material: materialName(material), end: drillToTheEnd() }), width, {
      weight: "bold",
      gap: 0.6,
    }),
  );

/** Below it two places of a millimetre would be one digit, mm. */
const FINE = 0.03;

function drillFeed(findings: Findings, { handwheel }: HandwheelFinding, perTurn: number, width: number): Run[] {
  const { machine, drive } = findings;
  const [material = ""] = machine.work.materials;
  if (drive === undefined) return [];
  const { units } = machine;
  const sizes = drillsOf(machine);
  // The sources have thousandths of an inch: a third place in millimetres would be an invention, but for the finest.
  const feedFigure = (mm: number) => formatFixed(fromMm(mm, units), units === "in" ? 4 : mm < FINE ? 3 : 2);
  const counted: HandFeed[] = [];
  const rows = sizes.flatMap((diameter): Cell[][] => {
    const feed = feedPerRevolution(material, "drilling", diameter);
    if (feed === undefined) return [];
    const cut = { operation: "drilling", material, diameter };
    const rpm = speedToFeed(cut, { feed: feed.from, perTurn }, findings)?.rpm;
    if (rpm === undefined) return [];
    const fed = (burns(material) ? handFeedAtLeast : handFeed)(feed.from, rpm, perTurn);
    counted.push(fed);
    return [
      [
        { text: sizeName("drilling", diameter, machine), weight: "bold" },
        { text: formatFixed(rpm, 0) },
        { text: feed.from === feed.to ? feedFigure(feed.to) : `${feedFigure(feed.from)}–${feedFigure(feed.to)}` },
        { text: countSign(fed), weight: "bold" },
      ],
    ];
  });
  if (rows.length === 0) return [];
  const sources = [...new Set(sizes.flatMap((d) => feedPerRevolution(material, "drilling", d)?.sources ?? []))];
  const unit = unitName(units);
  const columns: Column[] = [
    { heading: [say("drilling card.drill"), unit], align: units === "mm" ? "decimal" : "end" },
    { heading: [say("drilling card.rpm")], align: "decimal" },
    { heading: [say("drilling card.feed"), unit], align: "middle" },
    {
      heading: burns(material)
        ? [say("drilling card.count")]
        : [say("drilling card.count"), say("drilling card.at least feed")],
      align: "middle",
    },
  ];
  const counting = keyOf(countWords(counted).join(" "), width);
  const from = { sources: sources.map(sourceTitle).join("; ") };
  return [
    ...heading(
      say("drilling card.feeding", { material: materialName(material), wheel: withinSentence(handwheel.name) }),
      width,
      4,
    ),
    ...keyed(table(columns, rows, { width, list: true }), () => [counting]),
    ...paragraph(
      burns(material) ? say("drilling card.feeds that burn", from) : say("drilling card.feeds", from),
      width,
      { size: size.source, gap: 0.6 },
    ),
  ];
}
