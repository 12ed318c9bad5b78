import { TURN } from "../quantity/angle.js";
import type { DialChoice, Graduation, Vernier } from "./finding.js";
import { divisionWorth } from "./setting.js";

/** Below this distance of the main marks the extended form is drawn, mm: one does not see which of two neighbours meets. */
const CLOSE_MARKS = 1.4;

/** Longest vernier that a fixed part beside a handwheel has room for, and a small sheet of paper with its cut marks, mm, and the largest part of the dial's circle. */
const LONGEST = 100;
const LARGEST_PART = 0.5;

/** The vernier for a dial whose marks are read on a circle of `circle` mm round: extended where it should be and fits,
 *  else direct; undefined where not even that fits beside the dial. */
export function dialVernier(division: number, spacing: number, parts: number, circle: number): Vernier | undefined {
  return vernierWithin(division, spacing, parts, Math.min(LONGEST, LARGEST_PART * circle));
}

/** The same within so many mm. */
export function vernierWithin(division: number, spacing: number, parts: number, room: number): Vernier | undefined {
  return [vernier(division, spacing, parts), form(division, parts, false)].find(({ spans }) => spans * spacing <= room);
}

/** Vernier of a scale with divisions worth `division`, drawn `spacing` mm apart. Least count = division ÷ parts
 *  (any text on verniers; checked against published examples in tests/published). `parts` a whole number > 1. */
export function vernier(division: number, spacing: number, parts: number): Vernier {
  return form(division, parts, spacing < CLOSE_MARKS);
}

function form(division: number, parts: number, extended: boolean): Vernier {
  const spans = extended ? 2 * parts - 1 : parts - 1;
  return { parts, extended, spans, leastCount: division / parts, step: spans / parts };
}

/** The vernier's marks as angles from its zero, which is the index line, growing with the reading of the main scale.
 *  `pitch`: angle of one main division, radians. Numbers count least counts, at the ends and the middle. */
export function vernierMarks({ parts, step, leastCount }: Vernier, pitch: number): Graduation[] {
  return Array.from({ length: parts + 1 }, (_, index) => {
    const numbered = index % (parts % 2 === 0 ? parts / 2 : parts) === 0;
    return {
      angle: index * step * pitch,
      rank: numbered ? 1 : parts % 5 === 0 && index % 5 === 0 ? 2 : 3,
      value: index * leastCount,
      ...(numbered && { label: String(index) }),
    };
  });
}

/** From which reading, in mm, the vernier reaches over a short last division and shows a wrong figure; undefined where there is none. */
export function vernierWrongFrom(
  { spans }: Vernier,
  { beginsAgain, divisions, divisionValue }: Pick<DialChoice, "beginsAgain" | "divisions" | "divisionValue">,
): number | undefined {
  return beginsAgain ? Math.max(0, divisions - 1 - spans) * divisionValue : undefined;
}

/** Which vernier mark meets a main mark for a reading, and what one then reads: main reading + mark · least count. */
export function readVernier(
  { parts, leastCount }: Vernier,
  division: number,
  reading: number,
): { main: number; mark: number; read: number } {
  const counts = Math.round(reading / leastCount);
  const mark = counts % parts;
  const main = Math.round(counts / parts - mark / parts) * division;
  return { main, mark, read: main + mark * leastCount };
}

/** Part of a turn between neighbouring marks of a dial, radians. */
export function pitchAngle(choice: DialChoice, turn: number): number {
  return (divisionWorth(choice, turn) / turn) * TURN;
}
