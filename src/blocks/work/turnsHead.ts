import { dialToRead } from "../../findings/dialToRead.js";
import type { HandwheelFinding } from "../../findings/findings.js";
import { farthestTold } from "../../findings/settings.js";
import { lostMotionWords, travelWords, withinTurnWords } from "../../findings/travelWords.js";
import type { Units } from "../../machine/machine.js";
import { formatDoubted, formatFixed, formatLength, trimmedSize } from "../../quantity/format.js";
import { say } from "../../words/say.js";
import type { Run } from "../shared/block.js";
import { paragraph } from "../shared/paragraph.js";
import { kept } from "../shared/runs.js";
import { size } from "../shared/style.js";

/** What stands over a handwheel's tables: what a turn is, what the slide is known to do besides, and what is wrong with it. */
export function turnsHead(finding: HandwheelFinding, units: Units, width: number): Run[] {
  const line = (items: readonly string[], weight: "bold" | "regular"): Run[] =>
    items.length === 0 ? [] : paragraph(items.join(" · "), width, { size: size.text, weight });
  return kept([
    ...line(theTurn(finding, units), "bold"),
    ...line(besides(finding, units), "regular"),
    ...travelWords(finding, units).flatMap((words) =>
      paragraph(words, width, { size: size.text, weight: "bold", gap: 0.5 }),
    ),
  ]);
}

function theTurn({ handwheel, feed, dial }: HandwheelFinding, units: Units): string[] {
  if (feed === undefined) return [];
  const value = formatDoubted(feed.perTurn, feed.uncertainty, units);
  return [
    say(`turns.feed ${feed.from}`, { feed: value }),
    say(`turns.reads ${handwheel.reads}`),
    ...(dial ? [say("turns.division", { size: trimmedSize(dial.chosen.divisionValue, dial.chosen.unit, 5) })] : []),
  ];
}

function besides({ handwheel, feed, study }: HandwheelFinding, units: Units): string[] {
  if (feed === undefined) return [];
  const { lostMotion, nominal } = feed;
  const { oldDial } = handwheel;
  return [
    ...(lostMotion
      ? [
          say(lostMotion.worst ? "turns.lost motion most" : "turns.lost motion", {
            length: formatLength(lostMotion.travel, units),
            part: formatFixed(lostMotion.turn, 2),
          }),
        ]
      : study?.back
        ? [lostMotionWords(study.back)]
        : []),
    ...(nominal === undefined ? [] : [say("turns.maker", { length: formatLength(nominal, units) })]),
    ...(oldDial
      ? [say(`turns.old dial ${oldDial.reads}`, { length: formatLength(oldDial.perTurn, oldDial.unit) })]
      : nominal === undefined
        ? []
        : [say("turns.old dial unknown")]),
  ];
}

/** Beneath the tables, of `distances` where they are told: what a dial made for another feed is out by, what ± holds and how far it is told. Nothing where neither stands in them. */
export function whatDoubtHolds(finding: HandwheelFinding, units: Units, width: number, distances: boolean): Run[] {
  const { feed, dial, handwheel } = finding;
  const said = [
    ...(!distances || (feed?.nominal === undefined && handwheel.oldDial === undefined)
      ? []
      : [say(`turns.out by ${handwheel.reads}`)]),
    ...(feed?.uncertainty === undefined
      ? []
      : [
          say("turns.holds", {
            parts: [
              say("turns.holds feed"),
              ...(feed.fit ? [say("turns.holds scatter")] : []),
              ...(dial ? [say("turns.holds tenth")] : []),
            ].join(", "),
          }),
          ...(dialToRead(finding)?.old ? [say("turns.old dial on top")] : []),
          feed.lostMotion ? say("turns.one side") : say("turns.one side unknown"),
          ...beyondMeasured(finding, units),
        ]),
    ...[withinTurnWords(finding) ?? []].flat().map((words) => `${words.charAt(0).toUpperCase()}${words.slice(1)}.`),
  ];
  return said.length === 0 ? [] : paragraph(said.join(" "), width, { size: size.source, gap: 1.5 });
}

/** Where the working travel is much longer than what was measured. */
function beyondMeasured({ feed, handwheel }: HandwheelFinding, units: Units): string[] {
  const { travel } = handwheel;
  if (feed?.measured === undefined || travel === undefined || travel <= farthestTold({ feed })) return [];
  const read = (feed.measured.to - feed.measured.from) * feed.perTurn;
  return [say("turns.beyond", { read: trimmedSize(read, units, 1), travel: trimmedSize(travel, units, 1) })];
}
