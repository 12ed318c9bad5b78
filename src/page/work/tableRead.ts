import { readCsv } from "../../machine/csv.js";
import type { LengthText } from "../../machine/fields.js";
import { trimmed } from "../../quantity/format.js";
import type { AnswerTo, Asked, Files } from "./protocol.js";

/** A CSV's readings in the words in which the machine's file would have them; nothing where it cannot be read. */
export function tableRead({ readings }: Files, { name, units }: Asked<"table">): AnswerTo<"table"> {
  const text = readings.find((one) => one.name === name)?.text;
  const read = text === undefined ? undefined : readCsv(text, name).readings;
  if (read === undefined) return { there: text !== undefined, rows: [] };
  const words = ({ value, unit }: LengthText): string =>
    unit === "file" || unit === units ? trimmed(value, PLACES) : `${trimmed(value, PLACES)} ${unit}`;
  return {
    there: true,
    rows: read.turns.map((turn, row) => {
      const [out, back] = [read.travel[row], read.back?.[row]];
      return { turns: trimmed(turn, PLACES), travel: out ? words(out) : "", ...(back && { return: words(back) }) };
    }),
  };
}

/** Finer than any gauge, and than halves of thirds of a turn are told. */
const PLACES = 6;
