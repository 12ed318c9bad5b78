import type { DialFinding } from "../dial/finding.js";
import { overOnDial } from "../dial/overOnDial.js";
import { readsPerTurn } from "../dial/setting.js";
import type { Units } from "../machine/machine.js";
import { formatFixed, formatSize } from "../quantity/format.js";
import { fromMm } from "../quantity/length.js";
import type { HandwheelFinding } from "./findings.js";

/** What is told apart of a dial once it is printed and stuck on. Lengths mm, those of the reading in what it reads. */
export type DialFacts = {
  readonly wheel: string;
  /** How it is divided: "250 × 0.02 mm, even, growing clockwise". */
  readonly marks: string;
  /** What one turn truly moved, as it was known then. */
  readonly perTurn: number;
  /** What its own numbers go on by in one turn. */
  readonly readsPerTurn: number;
  /** Its length between the cut ends, or round its outer edge; null for a cone that its sizes do not make. */
  readonly length: number | null;
};

/** Of a handwheel with a dial; undefined of others. */
export function dialFacts({ handwheel, reading, dial }: HandwheelFinding): DialFacts | undefined {
  if (reading === undefined || dial === undefined) return undefined;
  const { chosen, flat } = dial;
  return {
    wheel: handwheel.name,
    marks: marksOf(dial),
    perTurn: reading.perTurn,
    readsPerTurn: readsPerTurn(chosen, reading.perTurn),
    length: flat === undefined ? null : flat.kind === "strip" ? flat.length : flat.outer * flat.sweep,
  };
}

/** How a dial is divided. `more`: divisions that true marks are said to have besides. */
function marksOf({ chosen, second, increases, vernier, wave }: DialFinding, more = 0): string {
  const divided = [chosen, ...(second ? [second.chosen] : [])].map(
    ({ divisions, divisionLabel, closure, rows }) =>
      `${divisions + (closure === "true" ? more : 0)} × ${divisionLabel}, ${closure}${rows > 1 ? ` in ${rows} rows` : ""}`,
  );
  return [
    ...divided,
    `growing ${increases}`,
    ...(vernier ? [`vernier of ${vernier.parts}`] : []),
    ...(wave
      ? [
          `once-per-turn error of ${formatFixed(wave.share * 100, 3)} % of a turn from ${formatFixed(wave.crest, 3)} built in`,
        ]
      : []),
  ].join("; ");
}

/** Whether a dial bears the marks that were recorded. Of true marks the last stands wherever the turn ends, is left out where it would print
 *  as one with the zero, and was once counted even so: one more or less is no other dial. */
const sameMarks = (was: string, now: DialFinding): boolean => [0, 1, -1].some((more) => was === marksOf(now, more));

/** As a dial's marks are recorded, which stays the same for what was printed before; here as one would say it. */
const marksInWords = (marks: string): string =>
  marks
    .replace(/, rows in (\d+) rows/g, ", in $1 rows")
    .replace(/; growing (clockwise|anticlockwise|counterclockwise)/, ", numbers growing $1");

/** A dial that is stuck on, against what is known today: whether it must be replaced, and why. `gone`: there is none to put in its
 *  place, and `why` says what to do instead. Undefined where nothing about it
 *  changed. `now`: its handwheel today, where there still is one. */
export function dialChange(
  was: DialFacts,
  now: HandwheelFinding | undefined,
  units: Units,
): { readonly replace: boolean; readonly why: string; readonly gone?: true } | undefined {
  const is = now && dialFacts(now);
  if (now === undefined || is === undefined)
    return {
      replace: true,
      gone: true,
      why:
        now === undefined
          ? "no handwheel of the file has this name any more: take its dial off, or give it its name"
          : "no dial can be made for it as the file now stands: take off the one that is on it",
    };
  const size = (mm: number) => formatSize(mm, units);
  if (now.dial && !sameMarks(was.marks, now.dial))
    return { replace: true, why: `it is divided ${marksInWords(was.marks)}; it should be ${marksInWords(is.marks)}` };
  const off = Math.abs((was.length ?? 0) - (is.length ?? 0));
  if (was.length !== null && is.length !== null && off > LEAST_LENGTH) {
    const words = `it is ${size(was.length)} long; it should be ${size(is.length)}`;
    // The ends then miss one another by so much, as when a printer is untrue by as little.
    return off <= (now.dial?.chosen.spacing ?? 0) / 5
      ? { replace: false, why: `${words}, less than a fifth of a division: it may stay` }
      : { replace: true, why: words };
  }
  if (was.perTurn === is.perTurn) return undefined;
  const { overTravel } = now.dial?.chosen ?? { overTravel: 0 };
  const over = overTravel * (now.reading?.factor ?? 1);
  const wrong = ((was.readsPerTurn - is.perTurn) / is.perTurn) * over;
  const turn = (mm: number) => `${formatFixed(fromMm(mm, units), units === "mm" ? 4 : 6)}`;
  // What is known today decides: how well the feed is known over that way, and what an eye reads of a division.
  const { doubtOverTravel = 0 } = now.dial?.chosen ?? {};
  const doubt = doubtOverTravel + (now.dial?.divisionWorth ?? 0) / 10;
  const words = `it was made for ${turn(was.perTurn)} ${units} per turn, which is now ${turn(is.perTurn)}`;
  const reads = `it now reads ${formatSize(Math.abs(wrong), units, 3)} too ${wrong > 0 ? "much" : "little"} over ${now.dial ? overOnDial(now.dial.chosen, size) : size(over)}`;
  if (Math.abs(wrong) <= doubt)
    return { replace: false, why: `${words}: ${reads}, within what is in doubt: it may stay` };
  // Equal divisions are the same whatever the feed: a new print would bring nothing.
  if (is.readsPerTurn === was.readsPerTurn)
    return { replace: false, why: `${words}: ${reads}, and a new one with these divisions would too` };
  return { replace: true, why: `${words}: ${reads}` };
}

/** A change of a paper's length that nobody can cut or see, mm. */
const LEAST_LENGTH = 0.01;
