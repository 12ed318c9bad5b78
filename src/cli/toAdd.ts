import type { Findings } from "../findings/findings.js";
import { inColumns, type Row } from "./inColumns.js";

/** What a file could say next, each with the sheets that it makes; the parts that most machines have. */
export const nextParts = {
  drive: {
    what: "drive:",
    words: "motor and pulleys",
    sheets: ["belt-card", "speed-diagram", "speed-tree", "drilling-card", "hand-feed", "student"],
  },
  feed: {
    what: "handwheels: feed:",
    words: "readings, a screw, or what one turn moves",
    sheets: ["turns", "stops", "student"],
  },
  dial: { what: "dial: beside feed:", words: "shape and size", sheets: ["dial"] },
  readings: { what: "readings: in feed:", words: "travel by an indicator", sheets: ["measured-report"] },
} as const;
type Part = keyof typeof nextParts;

/** Empty where the file has all of them. */
export function toAdd({ drive, handwheels }: Findings): string[] {
  const any = (has: (finding: Findings["handwheels"][number]) => boolean) => handwheels.some(has);
  const lacks: Record<Part, boolean> = {
    drive: drive === undefined,
    // A miscounted feed or a doubtful dial is there, and told as what it is.
    feed: !any(({ feed, miscounted }) => feed !== undefined || miscounted !== undefined),
    dial: !any(({ handwheel }) => handwheel.dial !== undefined),
    readings: !any(({ study }) => study !== undefined),
  };
  const rows = (Object.keys(nextParts) as Part[])
    .filter((part) => lacks[part])
    .map((part): Row => {
      const { what, words, sheets } = nextParts[part];
      return [what, `${words}, for ${sheets.join(", ")}`];
    });
  if (rows.length === 0) return [];
  return [
    "",
    "To add next, with the sheets that it makes:",
    ...inColumns(rows),
    "  print --sheet measuring-form makes a form to take to the machine.",
  ];
}
