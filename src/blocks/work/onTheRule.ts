import type { Stretch } from "../../findings/byPlace.js";
import type { Units } from "../../machine/machine.js";
import { formatFixed, MINUS } from "../../quantity/format.js";
import { inSixtyFourths } from "../../quantity/fraction.js";
import { fromMm } from "../../quantity/length.js";
import { say } from "../../words/say.js";

/** More columns of stretches have no room beside each other. */
export const MOST_COLUMNS = 8;

/** A stretch of a slide as a rule shows it: whole millimetres, sixteenths of an inch. */
export const onTheRule = ({ from, to }: Stretch, units: Units): string =>
  say("turns.rule from to", { from: mark(from, units), to: mark(to, units) });

const mark = (mm: number, units: Units): string => {
  const value = Math.abs(fromMm(mm, units));
  const figure = (units === "in" ? inSixtyFourths(value) : undefined) ?? formatFixed(value, units === "in" ? 2 : 0);
  return mm < -1e-6 ? `${MINUS}${figure}` : figure;
};
