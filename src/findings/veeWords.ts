import { veeLines } from "../drive/veeLine.js";
import type { Machine } from "../machine/machine.js";
import { formatFixed, formatSize } from "../quantity/format.js";

/** Where the neutral line of a vee belt was taken to run and what another edition says: a line for each section. */
export const veeWords = ({ drive, units }: Pick<Machine, "drive" | "units">): string[] =>
  (drive === undefined ? [] : veeLines(drive)).map(
    ({ section, used, other, most }) =>
      `vee belt ${section} taken to run ${formatSize(used.depth, units)} inside the rim (${used.source}); ${other.source} says ${formatSize(other.depth, units)}, by which speeds differ by up to ${formatFixed(100 * most, 1)} %`,
  );
