import { feedPerRevolution, leastFeed } from "../../cutting/feeds.js";
import { cutMinutes, handFeed } from "../../cutting/handFeed.js";
import { sourceTitle } from "../../cutting/sources.js";
import { burning, feedWords, leastFeedWords } from "../../findings/chipFire.js";
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
    const { materials } = machine.work;
    const feeds = offered(
      settings[units].map((feed) => feed * mmPer[units]),
      materials,
    );
    const length = units === "mm" ? settings.lengthMm : settings.lengthIn;
    const known = drive.speeds.filter(({ from }) => from !== "unknown");
    const told = [...speedDoubt(findings), ...burning(materials).map((material) => leastFeedWords(material, units))];
    const head = told.flatMap((words) => paragraph(words, width, { ink: "accent", weight: "bold" }));
    if (known.length === 0) return head;
    const tables = handwheels.flatMap((finding): Run[] => {
      if (finding.feed === undefined) return [];
      const { perTurn } = finding.feed;
      const divisions = finding.dial?.chosen.divisionsPerTurn;
      const columns: Column[] = [
        { heading: ["position"], align: "start", stretch: 0 },
        { heading: ["rpm"], align: "decimal", stretch: 0 },
        ...feeds.flatMap(({ feed, name, notFor }): Column[] => [
          {
            heading: [name, ...notFor, feedWords(feed, units), "turns/min"],
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
        ...feeds.flatMap(({ feed }): Cell[] => {
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
    return [...head, ...tables];
  },
);

/** A feed per revolution, mm; `notFor`: words for the materials whose fine chips burn at it. */
type Offer = { readonly feed: number; readonly name: string; readonly notFor: readonly string[] };

/** The wished feeds, finest first. Where a material's fine chips burn, the coarsest is raised to the least that is published for
 *  it, and the finer ones are not for it; where all materials are such they are left out. */
function offered(wished: readonly number[], materials: readonly string[]): Offer[] {
  const fires = burning(materials);
  const coarsest = Math.max(...wished, ...fires.map((material) => leastFeed(material)?.from ?? 0));
  const last = wished.length - 1;
  return wished.flatMap((wish, index): Offer[] => {
    const feed = index === last ? coarsest : wish;
    const fine = fires.filter((material) => feed < (leastFeed(material)?.from ?? coarsest) * (1 - 1e-9));
    if (fine.length > 0 && fine.length === new Set(materials).size) return [];
    const short = fine.length === 1 && (fine[0]?.length ?? 0) <= 12 ? fine[0] : "what burns";
    return [{ feed, name: words[index] ?? "feed", notFor: fine.length === 0 ? [] : [`not ${short}`] }];
  });
}

/** What the sources print for the file's materials: above all for big lathes. */
export const publishedFeedLines = block({}, ({ findings, width }): Run[] => {
  const { machine } = findings;
  const { units } = machine;
  const { materials } = machine.work;
  const unit = mmPer[units];
  const show = (from: number, to: number) => {
    const [least, most] = [from, to].map((feed) => trimmed(feed / unit, units === "mm" ? 2 : 4));
    return least === most ? most : `${least}–${most}`;
  };
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
  const fires = burning(materials);
  const sources = [...new Set([...found.flatMap(({ sources }) => sources), ...parting.sources])].map(sourceTitle);
  return paragraph(
    `Published feeds per revolution, ${units}, for full-size lathes, so the roughing ones are a light machine's most: ${found.map(({ words }) => words).join("; ")}; parting ${show(parting.from, parting.to)}${fires.length === 0 ? "" : `, but not ${fires.join(", ")}`}. From: ${sources.join("; ")}.`,
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
