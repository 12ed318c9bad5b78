import { feedPerRevolution } from "../../cutting/feeds.js";
import { cutMinutes, handFeed } from "../../cutting/handFeed.js";
import { sourceTitle } from "../../cutting/sources.js";
import type { Findings, HandwheelFinding } from "../../findings/findings.js";
import { heldByLimit } from "../../findings/limits.js";
import { speedDoubt } from "../../findings/speedDoubt.js";
import { formatFixed, formatLength, trimmed } from "../../quantity/format.js";
import { mmPer } from "../../quantity/length.js";
import { block, type Run } from "../shared/block.js";
import { heading, kept, lowered, whole } from "../shared/runs.js";
import { size } from "../shared/style.js";
import { type Cell, type Column, paragraph, table } from "../shared/table.js";

const words = ["fine", "medium", "coarse"] as const;

/** For each position: turns a minute, seconds a turn and what to count, for three feeds per revolution, and how long a cut
 *  takes. `mm` and `in`: the feeds, by the file's unit; `length`: of the cut. */
export const handFeedTables = block(
  { mm: [0.05, 0.1, 0.2], in: [0.002, 0.004, 0.008], lengthMm: 50, lengthIn: 2 },
  ({ handwheels, findings, settings, width, height }): Run[] => {
    const { drive, machine } = findings;
    if (drive === undefined) return [];
    const { units } = machine;
    const feeds = settings[units].map((feed) => feed * mmPer[units]);
    const length = units === "mm" ? settings.lengthMm : settings.lengthIn;
    const known = drive.speeds.filter(({ from }) => from !== "unknown");
    const doubt = speedDoubt(findings).flatMap((words) => paragraph(words, width, { ink: "accent", weight: "bold" }));
    if (known.length === 0) return doubt;
    const tables = handwheels.flatMap((finding): Run[] => {
      if (finding.feed === undefined) return [];
      const { perTurn } = finding.feed;
      const divisions = finding.dial?.chosen.divisionsPerTurn;
      const columns: Column[] = [
        { heading: ["position"], align: "start", stretch: 0 },
        { heading: ["rpm"], align: "decimal", stretch: 0 },
        ...feeds.flatMap((feed, index): Column[] => [
          {
            heading: [words[index] ?? "feed", `${trimmed(feed / mmPer[units], 4)} ${units}`, "turns/min"],
            align: "decimal",
          },
          { heading: ["s a turn"], align: "decimal" },
          { heading: ["count"], align: "start" },
          { heading: [`min for`, `${length} ${units}`], align: "decimal" },
        ]),
      ];
      const rows = known.map((speed): Cell[] => [
        { text: speed.position.name, weight: "bold" },
        heldByLimit(speed, machine.limits)
          ? { text: formatFixed(speed.rpm, 0), ink: "accent", note: "beyond the limit" }
          : { text: formatFixed(speed.rpm, 0) },
        ...feeds.flatMap((feed): Cell[] => {
          const { turnsPerMinute, secondsPerTurn, count } = handFeed(feed, speed.rpm, perTurn, divisions);
          const able = count !== "too fast by hand";
          return [
            { text: formatFixed(turnsPerMinute, turnsPerMinute < 1 ? 2 : turnsPerMinute < 10 ? 1 : 0), weight: "bold" },
            { text: formatFixed(secondsPerTurn, secondsPerTurn < 10 ? 1 : 0) },
            { text: count, ink: able ? "black" : "accent" },
            { text: formatFixed(cutMinutes(length * mmPer[units], feed, speed.rpm), 1) },
          ];
        }),
      ]);
      const runs = [
        ...heading(finding.handwheel.name, width, 6, size.title),
        ...kept(paragraph(headWords(finding, perTurn, units), width, { size: size.small, gap: 0.5 })),
        ...lowered(table(columns, rows, { width, size: size.small, ruleEvery: 1 }), 1.5),
      ];
      return whole(runs, height);
    });
    return [...doubt, ...tables];
  },
);

/** What the sources print for the file's materials: above all for big lathes. */
export const publishedFeedLines = block({}, ({ findings, width }): Run[] => {
  const { machine } = findings;
  const { units } = machine;
  const { materials } = machine.work;
  const unit = mmPer[units];
  const show = (from: number, to: number) =>
    from === to
      ? trimmed(to / unit, units === "mm" ? 2 : 4)
      : `${trimmed(from / unit, units === "mm" ? 2 : 4)}–${trimmed(to / unit, units === "mm" ? 2 : 4)}`;
  const found = materials.flatMap((material) => {
    const finishing = feedPerRevolution(material, "finishing");
    const roughing = feedPerRevolution(material, "roughing");
    if (finishing === undefined || roughing === undefined) return [];
    return [
      {
        words: `${material} ${show(finishing.from, finishing.to)} finishing, ${show(roughing.from, roughing.to)} roughing`,
        sources: [...finishing.sources, ...roughing.sources],
      },
    ];
  });
  const parting = feedPerRevolution("mild steel", "parting");
  if (found.length === 0 || parting === undefined) return [];
  const sources = [...new Set([...found.flatMap(({ sources }) => sources), ...parting.sources])].map(sourceTitle);
  return paragraph(
    `Published feeds per revolution, ${units}, for full-size lathes, so the roughing ones are a light machine's most: ${found.map(({ words }) => words).join("; ")}; parting ${show(parting.from, parting.to)}. From: ${sources.join("; ")}.`,
    width,
    { size: size.tiny, gap: 3 },
  );
});

function headWords(
  { handwheel, dial }: HandwheelFinding,
  perTurn: number,
  units: Findings["machine"]["units"],
): string {
  const division = dial === undefined ? "" : `; one division of its dial is ${dial.chosen.divisionLabel}`;
  const how = handwheel.reads === "diameter" ? "moves the slide" : "moves";
  return `One turn ${how} ${formatLength(perTurn, units, units === "mm" ? 3 : 4)}${division}. Count seconds aloud, and turn evenly.`;
}
