import { veeLines } from "../drive/veeLine.js";
import type { Machine } from "../machine/machine.js";
import { formatFixed, formatSize } from "../quantity/format.js";
import { say, translated } from "../words/say.js";

/** Where the neutral line of a vee belt was taken to run and what another edition says: a line for each section. */
export const veeWords = ({ drive, units }: Pick<Machine, "drive" | "units">): string[] =>
  (drive === undefined ? [] : veeLines(drive)).map(({ section, used, other, most }) =>
    say("drive notes.vee line", {
      section,
      depth: formatSize(used.depth, units),
      source: translated(used.source),
      other: translated(other.source),
      otherDepth: formatSize(other.depth, units),
      most: formatFixed(100 * most, 1),
    }),
  );
