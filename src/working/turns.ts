import { beyondTravel } from "../findings/beyondTravel.js";
import type { Findings, HandwheelFinding } from "../findings/findings.js";
import { doubtToRead, oldSettingToRead, settingToRead } from "../findings/settings.js";
import { settingWords } from "../findings/settingWords.js";
import type { Machine } from "../machine/machine.js";
import { asGiven } from "../machine/written.js";
import { formatLength, plural } from "../quantity/format.js";
import { inMm } from "../quantity/length.js";
import { feedSource } from "./feed.js";
import { leftWords } from "./left.js";
import type { Subject, Working } from "./working.js";

/** Turns and divisions for each distance that the file asks of a handwheel, or for one and ten units, as far as it goes, where it asks none. */
export function explainTurns({ machine, handwheels }: Findings): Subject[] {
  const { units } = machine;
  return handwheels.flatMap((finding, index): Subject[] => {
    const { name, distances = [] } = finding.handwheel;
    const { reading } = finding;
    const round = [1, 10].map((value) => inMm(value, units));
    const reached = round.filter((mm) => !reading || beyondTravel(finding, mm / reading.perTurn, units) === undefined);
    const asked = distances.length > 0 ? distances : reached.length > 0 ? reached : round.slice(0, 1);
    return asked.map((distance, place) => ({
      name: `${name}, ${asGiven(distance, machine)}`,
      explain: () => working(finding, index, distance, distances.length > 0 ? place : undefined, machine),
    }));
  });
}

function working(
  finding: HandwheelFinding,
  index: number,
  distance: number,
  place: number | undefined,
  machine: Machine,
): Working | { missing: string } {
  const { units } = machine;
  const { handwheel, feed, reading, dial } = finding;
  const setting = settingToRead(finding, distance);
  if (feed === undefined || reading === undefined || setting === undefined)
    return { missing: `the feed of the ${handwheel.name.toLowerCase()} is not given` };
  const { turns, divisions, error } = setting;
  const old = oldSettingToRead(finding, distance);
  const doubt = doubtToRead(finding, distance);
  const beyond = beyondTravel(finding, turns, units);
  return {
    title: `${handwheel.name}: turns for ${asGiven(distance, machine)} of ${handwheel.reads}`,
    formula: "turns = distance ÷ p; its whole part, and what the dial then reads to a tenth of a division",
    inputs: [
      {
        name: "distance",
        value: distance,
        unit: "mm",
        source:
          place === undefined
            ? { from: "assumed", why: "a round one: the file asks for none" }
            : { from: "stated", path: ["handwheels", index, "distances", place] },
      },
      { name: "p, read in one turn", value: reading.perTurn, unit: "mm/turn", source: feedSource(feed, index) },
    ],
    result: { name: "turns", value: turns, unit: "turns" },
    ...(doubt !== undefined && { uncertainty: doubt / reading.perTurn }),
    notes: [
      ...(divisions === undefined || dial === undefined
        ? []
        : [`that is ${settingWords(finding, setting)}, ${leftWords(error, units, doubt)}`]),
      ...(beyond === undefined ? [] : [beyond]),
      ...(old === undefined
        ? []
        : [
            `on the old dial: ${plural(old.wholeTurns, "whole turn")}, then its reading of ${formatLength(old.reading, handwheel.oldDial?.unit ?? units)}`,
          ]),
    ],
  };
}
