import { doubtOver } from "../../feed/doubtOver.js";
import { beyondTravel } from "../../findings/beyondTravel.js";
import type { Findings, HandwheelFinding } from "../../findings/findings.js";
import { remarks } from "../../findings/remarks.js";
import { settingToRead, tenthOfDivision } from "../../findings/settings.js";
import { figureUnit, shownAt, unitsAt } from "../../findings/settingWords.js";
import { formatDoubted } from "../../quantity/format.js";
import type { Turned } from "../../student/marking.js";
import type { DialSeen, WheelStanding } from "./protocol.js";

export const wheelNamed = (findings: Findings | undefined, name: string): HandwheelFinding | undefined =>
  findings?.handwheels.find(({ handwheel }) => handwheel.name === name);

/** Turns of lost motion where nobody measured any, so that a dial is not believed whichever side one comes from. Own choice. */
const SUPPOSED_LOST = 0.1;

/** The dial of a wheel, to be turned on the screen. */
export function dialSeen(
  findings: Findings | undefined,
  { wheel }: { readonly wheel: string },
): { dial?: DialSeen; why?: string } {
  const found = wheelNamed(findings, wheel);
  if (findings === undefined || found === undefined) return {};
  if (found.dial === undefined || found.reading === undefined) return { why: whyNoDial(findings, found) };
  const { rows, increases, divisionWorth, chosen } = found.dial;
  const lost = found.feed?.lostMotion?.turn;
  return {
    dial: {
      rows: rows.map((row) =>
        row.map(({ angle, rank, label }) => ({ angle, rank, ...(label !== undefined && { label }) })),
      ),
      ...{ increases, unit: figureUnit(found) },
      division: divisionWorth / found.reading.perTurn,
      round: chosen.rows,
      ...(found.reading.overTravel !== undefined && { end: found.reading.overTravel / found.reading.perTurn }),
      lost:
        lost === undefined ? { turns: SUPPOSED_LOST, supposed: true } : { turns: Math.max(0, lost), supposed: false },
    },
  };
}

/** In the words in which it is told of the wheel in its file. */
function whyNoDial(findings: Findings, wheel: HandwheelFinding): string {
  const { name, dial, feed } = wheel.handwheel;
  if (feed === undefined || dial === undefined)
    return `${name} has no ${feed === undefined ? "feed" : "dial"} yet: give it ${feed === undefined ? "one, as its readings or its screw" : "one, with its sizes"}`;
  const at = findings.handwheels.indexOf(wheel);
  const told = remarks(findings).find(
    ({ path: [part, index], code }) => part === "handwheels" && index === at && NO_DIAL.includes(code),
  );
  return told === undefined ? "no dial can be made of it" : `${told.what}; ${told.remedy}`;
}

const NO_DIAL: readonly string[] = ["doubtful-dial", "no-dial", "miscounted", "jump"];

/** What a dial shows and how far its slide has gone: where it was turned back, not all the way until its lost motion is through. */
export function standing(
  findings: Findings | undefined,
  { wheel, turned: { turns, slack } }: { readonly wheel: string; readonly turned: Turned },
): WheelStanding | undefined {
  const found = wheelNamed(findings, wheel);
  if (findings === undefined || found?.feed === undefined || found.reading === undefined) return undefined;
  // Before its zero a dial shows what it shows a round later.
  const shown = turns < 0 ? turns + (found.dial?.chosen.rows ?? 0) : turns;
  const setting = shown < 0 ? undefined : settingToRead(found, shown * found.reading.perTurn);
  const units = unitsAt(found, findings.machine.units);
  const moved = turns + (found.feed.lostMotion === undefined ? 0 : slack);
  const beyond = beyondTravel(found, moved, units);
  const doubt = doubtOver(Math.abs(moved), found.feed, tenthOfDivision(found));
  return {
    ...(setting && shownAt(found, setting)),
    ...(beyond !== undefined && { beyond }),
    travel: formatDoubted(moved * found.feed.perTurn, doubt, units, units === "mm" ? 3 : 4),
  };
}
