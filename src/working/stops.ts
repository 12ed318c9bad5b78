import type { Findings } from "../findings/findings.js";
import { settingWords } from "../findings/settingWords.js";
import { repeats } from "../findings/stops.js";
import { formatBound } from "../quantity/format.js";
import { feedSource } from "./feed.js";
import { leftWords } from "./left.js";
import type { Subject } from "./working.js";

/** How each stop of the file is set, and how alike the parts can be. */
export function explainStop(findings: Findings): Subject[] {
  const { units } = findings.machine;
  return repeats(findings).map(({ stop, wheel, repeat }, index) => ({
    name: stop.name,
    explain: () => {
      if (wheel?.feed === undefined || wheel.reading === undefined || repeat === undefined)
        return { missing: `the feed of the ${stop.handwheel.toLowerCase()} is not given` };
      const { setting } = repeat;
      return {
        title: `${stop.name}: turns to the stop`,
        formula: "turns = length ÷ p; its whole part, and what the dial then reads to a tenth of a division",
        inputs: [
          {
            name: "length",
            value: stop.length,
            unit: "mm",
            source: { from: "stated", path: ["stops", index, "length"] },
          },
          {
            name: "p, read in one turn",
            value: wheel.reading.perTurn,
            unit: "mm/turn",
            source: feedSource(wheel.feed, findings.handwheels.indexOf(wheel)),
          },
        ],
        result: { name: "turns", value: setting.turns, unit: "turns" },
        notes: [
          ...(setting.divisions === undefined
            ? []
            : [`that is ${settingWords(wheel, setting)}, ${leftWords(setting.error, units, repeat.lengthDoubt)}`]),
          repeat.byStop === undefined
            ? "how alike parts come was not measured: no place was read twice"
            : `parts come out alike to ± ${formatBound(repeat.byStop, units)} against the stop (by the same places read again)${repeat.byDial === undefined ? "" : `, ± ${formatBound(repeat.byDial, units)} by the dial (and a tenth of a division by eye)`}; what a touch of the tool or of the stop adds is not in it`,
          ...(repeat.lengthDoubt === undefined
            ? []
            : [`the length itself is in doubt by ${formatBound(repeat.lengthDoubt, units)} until a part is measured`]),
        ],
      };
    },
  }));
}
