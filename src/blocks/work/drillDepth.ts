import { drillSizes } from "../../cutting/drillSizes.js";
import { feedPerRevolution } from "../../cutting/feeds.js";
import { handFeed } from "../../cutting/handFeed.js";
import { sourceTitle } from "../../cutting/sources.js";
import { burning, burns, DRILL_TO_THE_END } from "../../findings/chipFire.js";
import type { Findings, HandwheelFinding } from "../../findings/findings.js";
import { drillingWheel, wheelNamed } from "../../findings/roles.js";
import { speedToFeed } from "../../findings/speedChoice.js";
import type { Units } from "../../machine/machine.js";
import { formatFixed, trimmed } from "../../quantity/format.js";
import { fromMm, inMm, mmPer } from "../../quantity/length.js";
import { block, type Run } from "../shared/block.js";
import { heading, whole } from "../shared/runs.js";
import { size } from "../shared/style.js";
import { type Cell, type Column, paragraph, table } from "../shared/table.js";

/** Depth by turns of the wheel that feeds the drill: the handwheel of that name, or the one that is a barrel or a quill;
 *  and how fast to turn it for a few drills in the file's first material. */
export const drillDepth = block(
  { handwheel: "", turns: 8, drillsMm: [2, 4, 6, 8, 10, 12], drillsIn: [1 / 16, 1 / 8, 3 / 16, 1 / 4, 3 / 8, 1 / 2] },
  ({ findings, settings, width, height }): Run[] => {
    const { machine } = findings;
    const { handwheels } = findings;
    const wheel = settings.handwheel === "" ? drillingWheel(handwheels) : wheelNamed(settings.handwheel, handwheels);
    if (wheel?.feed === undefined)
      return [
        ...paragraph(
          "Depth per turn: the file has no handwheel named as a barrel or a quill with a feed; give it one, or name it in the sheet (handwheel:).",
          width,
          { size: size.small, gap: 3 },
        ),
        ...whereChipsBurn(findings, width),
      ];
    const unit = mmPer[machine.units];
    const { perTurn } = wheel.feed;
    const places = machine.units === "mm" ? 2 : 3;
    const turns = Array.from({ length: settings.turns }, (_, index) => index + 1);
    const columns: Column[] = [
      { heading: ["turns"], align: "start", stretch: 0.4 },
      ...turns.map((count): Column => ({ heading: [String(count)], align: "middle" })),
    ];
    const depths: Cell[] = [
      { text: `depth, ${machine.units}`, weight: "bold" },
      ...turns.map((count): Cell => ({ text: formatFixed((count * perTurn) / unit, places) })),
    ];
    return [
      ...heading(`Depth by turns of the ${wheel.handwheel.name.toLowerCase()}`, width, 3, size.body),
      ...table(columns, [depths], { width, size: size.small }),
      ...whole(
        drillFeed(findings, wheel, perTurn, machine.units === "mm" ? settings.drillsMm : settings.drillsIn, width),
        height,
      ),
      ...whereChipsBurn(findings, width),
    ];
  },
);

const whereChipsBurn = ({ machine }: Findings, width: number): Run[] =>
  burning(machine.work.materials).flatMap((material) =>
    paragraph(
      `Fine chips of ${material} burn. ${DRILL_TO_THE_END} Where the hand lags behind a coarse feed, take a slower position.`,
      width,
      { size: size.small, weight: "bold", ink: "accent", gap: 0.6 },
    ),
  );

function drillFeed(
  findings: Findings,
  { handwheel }: HandwheelFinding,
  perTurn: number,
  drills: readonly number[],
  width: number,
): Run[] {
  const { machine, drive } = findings;
  const [material = ""] = machine.work.materials;
  if (drive === undefined) return [];
  const { units } = machine;
  const sizes = drills.map((drill) => inMm(drill, units));
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
        { text: drillName(diameter, units), weight: "bold" },
        { text: formatFixed(rpm, 0) },
        { text: feed.from === feed.to ? feedFigure(feed.to) : `${feedFigure(feed.from)}–${feedFigure(feed.to)}` },
        { text: formatFixed(turnsPerMinute, 0) },
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

/** Inch drills are called by their fractions. */
const drillName = (mm: number, units: Units): string =>
  (units === "in" && drillSizes("fraction", mm - 1e-6, mm + 1e-6)[0]?.name) || trimmed(fromMm(mm, units), 3);
