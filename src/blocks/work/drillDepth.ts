import { feedPerRevolution } from "../../cutting/feeds.js";
import { handFeed } from "../../cutting/handFeed.js";
import { sourceTitle } from "../../cutting/sources.js";
import { burning, burns, DRILL_TO_THE_END } from "../../findings/chipFire.js";
import type { Findings, HandwheelFinding } from "../../findings/findings.js";
import { drillingWheel, wheelNamed } from "../../findings/roles.js";
import { sizeName } from "../../findings/sizeName.js";
import { speedToFeed } from "../../findings/speedChoice.js";
import { drillsOf } from "../../findings/uses.js";
import type { Units } from "../../machine/machine.js";
import { formatFixed, sizeFigure } from "../../quantity/format.js";
import { fromMm } from "../../quantity/length.js";
import { block, type Run } from "../shared/block.js";
import { heading, whole } from "../shared/runs.js";
import { size } from "../shared/style.js";
import { type Cell, type Column, paragraph, table } from "../shared/table.js";
import { turnsTold } from "./turnsTold.js";

/** Depth by eighths of a turn of the wheel that feeds the drill, over its travel (or so many turns where the file does not give
 *  that): the handwheel of that name, or the one that moves a barrel or a quill; and how fast to turn it for the file's drills in
 *  its first material. */
export const drillDepth = block({ handwheel: "", turns: 8 }, ({ findings, settings, width, height }): Run[] => {
  const { handwheels } = findings;
  const wheel = settings.handwheel === "" ? drillingWheel(handwheels) : wheelNamed(settings.handwheel, handwheels);
  if (wheel?.feed === undefined)
    return [
      ...paragraph(
        "Depth per turn: the file has no barrel or quill with a feed; give it one, say of its handwheel moves: barrel or quill, or name it in the sheet (handwheel:).",
        width,
        { size: size.small, gap: 3 },
      ),
      ...whereChipsBurn(findings, width),
    ];
  const name = wheel.handwheel.name.toLowerCase();
  return [
    ...heading(`Depth by turns of the ${name}`, width, 3, size.body),
    ...whole(depthTable(wheel, findings.machine.units, settings.turns, width), height),
    ...whole(drillFeed(findings, wheel, wheel.feed.perTurn, width), height),
    ...whereChipsBurn(findings, width),
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
    { heading: ["whole turns", "and"], align: "start", stretch: 0.4 },
    ...EIGHTHS.map((part): Column => ({ heading: [part, units], align: "decimal" })),
  ];
  const rows = turnsTold(wheel, usual, 0).map((turns): Cell[] => [
    { text: String(turns), weight: "bold" },
    ...EIGHTHS.map((_, eighths): Cell => {
      const depth = (turns + eighths / 8) * perTurn;
      return { text: depth > travel + 1e-9 ? "" : sizeFigure(depth, units) };
    }),
  ]);
  return table(columns, rows, { width, size: size.small, ruleEvery: 5 });
}

const whereChipsBurn = ({ machine }: Findings, width: number): Run[] =>
  burning(machine.work.materials).flatMap((material) =>
    paragraph(
      `Fine chips of ${material} burn. ${DRILL_TO_THE_END} Where the hand lags behind a coarse feed, take a slower position.`,
      width,
      { size: size.small, weight: "bold", ink: "accent", gap: 0.6 },
    ),
  );

function drillFeed(findings: Findings, { handwheel }: HandwheelFinding, perTurn: number, width: number): Run[] {
  const { machine, drive } = findings;
  const [material = ""] = machine.work.materials;
  if (drive === undefined) return [];
  const { units } = machine;
  const sizes = drillsOf(machine);
  const feedFigure = (mm: number) => formatFixed(fromMm(mm, units), units === "mm" ? 3 : 4);
  const rows = sizes.flatMap((diameter): Cell[][] => {
    const feed = feedPerRevolution(material, "drilling", diameter);
    if (feed === undefined) return [];
    const cut = { operation: "drilling", material, diameter };
    const rpm = speedToFeed(cut, { feed: feed.from, perTurn }, findings)?.rpm;
    if (rpm === undefined) return [];
    const { turnsPerMinute, count } = handFeed(feed.from, rpm, perTurn);
    return [
      [
        { text: sizeName("drilling", diameter, machine), weight: "bold" },
        { text: formatFixed(rpm, 0) },
        { text: feed.from === feed.to ? feedFigure(feed.to) : `${feedFigure(feed.from)}–${feedFigure(feed.to)}` },
        { text: formatFixed(turnsPerMinute, turnsPerMinute < 9.5 ? 1 : 0) },
        { text: count },
      ],
    ];
  });
  if (rows.length === 0) return [];
  const sources = [...new Set(sizes.flatMap((d) => feedPerRevolution(material, "drilling", d)?.sources ?? []))];
  const columns: Column[] = [
    { heading: ["drill", units], align: units === "mm" ? "decimal" : "end" },
    { heading: ["rpm"], align: "decimal" },
    { heading: ["feed per revolution", units], align: "middle" },
    {
      heading: [
        `turns of the ${handwheel.name.toLowerCase()}`,
        burns(material) ? "a minute" : "a minute, at the least feed",
      ],
      align: "decimal",
    },
    { heading: ["what to count"], align: "start" },
  ];
  return [
    ...heading(`Feeding the drill in ${material}`, width, 2, size.body),
    ...table(columns, rows, { width, size: size.small }),
    ...paragraph(
      `Feeds from ${sources.map(sourceTitle).join("; ")}${burns(material) ? ", the coarsest for each drill, and no speed at which a hand feeds more finely" : ". Ease off as the drill breaks through"}; draw it out to clear chips when the hole is three drills deep.`,
      width,
      { size: size.tiny, gap: 0.6 },
    ),
  ];
}
