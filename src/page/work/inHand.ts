import { doubtOver } from "../../feed/doubtOver.js";
import type { Findings, HandwheelFinding } from "../../findings/findings.js";
import { settingToRead, tenthOfDivision } from "../../findings/settings.js";
import { figureUnit, shownAt } from "../../findings/settingWords.js";
import { formatDoubted } from "../../quantity/format.js";
import type { DialSeen, WheelStanding } from "./protocol.js";

export const wheelNamed = (findings: Findings | undefined, name: string): HandwheelFinding | undefined =>
  findings?.handwheels.find(({ handwheel }) => handwheel.name === name);

/** The dial of a wheel, to be turned on the screen. */
export function dialSeen(findings: Findings | undefined, { wheel }: { readonly wheel: string }): { dial?: DialSeen } {
  const found = wheelNamed(findings, wheel);
  if (found?.dial === undefined) return {};
  const { rows, increases } = found.dial;
  return {
    dial: {
      rows: rows.map((row) =>
        row.map(({ angle, rank, label }) => ({ angle, rank, ...(label !== undefined && { label }) })),
      ),
      ...{ increases, unit: figureUnit(found) },
    },
  };
}

/** What a dial shows and how far its slide has gone, so many turns from zero. */
export function standing(
  findings: Findings | undefined,
  { wheel, turns }: { readonly wheel: string; readonly turns: number },
): WheelStanding | undefined {
  const found = wheelNamed(findings, wheel);
  if (findings === undefined || found?.feed === undefined || found.reading === undefined) return undefined;
  const setting = settingToRead(found, turns * found.reading.perTurn);
  const { units } = findings.machine;
  const doubt = doubtOver(turns, found.feed, tenthOfDivision(found));
  return {
    ...(setting && shownAt(found, setting)),
    travel: formatDoubted(turns * found.feed.perTurn, doubt, units, units === "mm" ? 3 : 4),
  };
}
