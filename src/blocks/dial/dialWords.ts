import { workingDoubt } from "../../dial/dialFinding.js";
import type { DialChoice, DialFinding } from "../../dial/finding.js";
import { countedAs } from "../../dial/labelling.js";
import { blurs, isLong, strains } from "../../dial/legibility.js";
import { overOnDial } from "../../dial/overOnDial.js";
import { vernierWrongFrom } from "../../dial/vernier.js";
import type { HandwheelFinding } from "../../findings/findings.js";
import { isAcross } from "../../findings/roles.js";
import { withinTurnWords } from "../../findings/travelWords.js";
import { usesOf } from "../../findings/uses.js";
import type { Handwheel, Machine, Units } from "../../machine/machine.js";
import {
  capital,
  formatBound,
  formatLength,
  formatSize,
  MINUS,
  trimmed,
  trimmedSize,
  unitName,
} from "../../quantity/format.js";
import { fromMm, mmPer } from "../../quantity/length.js";
import { say } from "../../words/say.js";
import type { CellNumber } from "./cell.js";
import type { Inscription } from "./inscriptions.js";

type Scale = Pick<DialFinding, "chosen" | "labelUnit">;

/** What stands small on the dial itself, parted by " · ", the dearest first: the unit, or what its numbers count, always. */
export function dialLegend(
  { handwheel, feed, reading }: HandwheelFinding,
  dial: DialFinding,
  machine: Machine,
): string {
  const { unit, errorOverTravel } = dial.chosen;
  // A dial that was asked for though its feed is not known so well carries that where the eye is.
  const { doubt = 0, travel = 0 } = (feed && workingDoubt(dial.chosen, handwheel, feed)) ?? {};
  const { second } = dial;
  const upper = dial.chosen.divisionLabel;
  const divisions = second
    ? say("dials.upper lower", { upper, lower: second.chosen.divisionLabel })
    : say("dials.division", { division: upper });
  const scales = [dial, ...(second ? [second] : [])];
  // Who does not know what a 50 is can do nothing with the rest.
  const [numbers = "", others] = scales.map((scale) => countedAs(scale) ?? unitName(scale.chosen.unit));
  const counted = others === undefined ? numbers : say("dials.upper lower", { upper: numbers, lower: others });
  const [first, then] = scales.some(countedAs) ? [counted, divisions] : [divisions, ""];
  return [
    handwheel.reads === "diameter" ? `${first} ${say("dials.on diameter")}` : first,
    // So does one that was forced though its divisions do not fit.
    Math.abs(errorOverTravel) > dial.chosen.divisionValue && !dial.chosen.beginsAgain
      ? readsWrong(errorOverTravel, overWords(dial.chosen, unit), unit)
      : "",
    doubt > dial.chosen.divisionValue
      ? say("dials.off over", {
          doubt: formatBound(doubt, unit),
          travel: overOnDial({ ...dial.chosen, overTravel: travel }, (mm) => travelWords(mm, unit, 0)),
        })
      : "",
    then,
    ...revisionAndName(handwheel.name, machine),
    // A slide that makes round work thinner is met with either dial; the one that reads diameter says so itself.
    handwheel.reads === "travel" && usesOf(machine).includes("turning") && isAcross({ handwheel })
      ? say("dials.on travel")
      : "",
    reading && say("dials.a turn", { feed: formatLength(reading.perTurn, unit, unit === "mm" ? 3 : 4) }),
  ]
    .filter(Boolean)
    .join(" · ");
}

const readsWrong = (error: number, travel: string, units: Units): string =>
  error > 0
    ? say("dials.too much over", { error: amount(error, units), travel })
    : say("dials.too little over", { error: amount(error, units), travel });

/** What no dial may be without, for one that has no room for the legend: that it is read on diameter, revision and name. What its
 *  numbers count always has a place among them. */
export function dialEssentials({ handwheel }: HandwheelFinding, machine: Machine): Inscription[] {
  return [
    ...(handwheel.reads === "diameter" ? [{ words: say("dials.on diameter"), dear: { short: "ø" } }] : []),
    ...revisionAndName(handwheel.name, machine).map((words) => ({ words })),
  ];
}

const revisionAndName = (name: string, { revision }: Machine): string[] => [
  ...(revision === undefined ? [] : [say("dials.revision", { revision })]),
  name,
];

/** What must be known of a dial beyond the numbers beneath it; empty where nothing must. */
export function dialWords(finding: HandwheelFinding, dial: DialFinding, units: Units): string {
  const { second } = dial;
  const within = withinTurnWords(finding);
  const { unit } = dial.chosen;
  const own = [
    ...(unit === units ? [] : [say(`dials.reads in ${unit}`)]),
    ...scaleWords(dial, finding.handwheel, units),
  ];
  const lower = second ? scaleWords(second, finding.handwheel, units) : [];
  return [
    ...(second === undefined
      ? [capital(own.join("; "))]
      : [
          own.length > 0 && say("dials.upper scale", { scale: own.join("; ") }),
          lower.length > 0 && say("dials.lower scale", { scale: lower.join("; ") }),
        ]),
    dial.vernier && vernierWords(dial, units),
    within && capital(within),
    finding.handwheel.dial?.senseAssumed && say("dials.sense assumed"),
  ]
    .flatMap((words) => (words ? [`${words}.`] : []))
    .concat(sightWords(dial, units) || [], dial.wave ? say("dials.wave") : [])
    .join(" ");
}

/** What is there is never told as nothing. */
function amount(mm: number, units: Units): string {
  const told = formatSize(Math.abs(mm), units, 4);
  return mm !== 0 && !/[1-9]/.test(told) ? formatBound(Math.abs(mm), units) : told;
}

const travelWords = (mm: number, units: Units, places: number): string =>
  `${trimmed(fromMm(mm, units), units === "mm" ? places : places + 1)} ${unitName(units)}`;

/** The travel over which a dial's error is told. */
const overWords = (chosen: Scale["chosen"], units: Units): string =>
  overOnDial(chosen, (mm) => travelWords(mm, units, 1));

/** Beneath a piece: what its reading is off over the travel; of two scales both. */
export function errorNumber(scales: readonly DialChoice[], units: Units): CellNumber {
  const begins = scales.every(({ beginsAgain, onceRound }) => beginsAgain && !onceRound);
  const value = scales
    .map(({ errorOverTravel, beginsAgain }) => {
      if (beginsAgain || errorOverTravel === 0) return "0";
      return `${errorOverTravel > 0 ? "+" : MINUS}${amount(errorOverTravel, units)}`;
    })
    .join(" / ");
  const travel = overWords(scales[0] as DialChoice, units);
  return { value, label: begins ? say("dials.begins again") : say("dials.error over", { travel }) };
}

function scaleWords({ chosen }: Scale, { reads }: Handwheel, units: Units): string[] {
  const onDiameter = reads === "diameter" ? ` ${say("dials.on diameter")}` : "";
  const over = overWords(chosen, units);
  const { rows, closure } = chosen;
  const doubt = chosen.doubtOverTravel;
  return [
    ...(closure === "rows" && rows > 1 ? [say("dials.rows", { rows })] : []),
    ...(chosen.beginsAgain && !chosen.onceRound
      ? [
          say(isLong(chosen) ? "dials.last long" : "dials.last short", {
            last: amount(chosen.last ?? chosen.leftOver, chosen.unit),
          }),
        ]
      : []),
    ...(chosen.beginsAgain || chosen.errorPerTurn === 0 || chosen.closes ? [] : [costWords(chosen, units)]),
    ...(doubt === undefined
      ? []
      : [say("dials.feed doubt", { off: `${formatBound(doubt, units)}${onDiameter}`, over })]),
    ...(chosen.measuredOnly ? [say("dials.measured only")] : []),
  ];
}

/** What the closing costs, per turn and over the working length. */
export function costWords(chosen: Scale["chosen"], units: Units): string {
  if (chosen.beginsAgain) return say("dials.nothing adds up");
  if (chosen.errorPerTurn === 0) return say("dials.closes exactly");
  const gaps = {
    turn: amount(chosen.errorPerTurn, units),
    error: amount(chosen.errorOverTravel, units),
    travel: overWords(chosen, units),
  };
  const reads = chosen.errorPerTurn > 0 ? say("dials.reads too much", gaps) : say("dials.reads too little", gaps);
  return `${chosen.closes ? say("dials.closes within") : say("dials.does not close")}: ${reads}`;
}

/** "Vernier of 10 over 9 divisions: reads 0.002 mm". */
function vernierWords(dial: DialFinding, units: Units): string {
  const { vernier, chosen } = dial;
  if (vernier === undefined) return "";
  const { parts, spans } = vernier;
  const ends = vernierLimit(dial);
  const over = say("dials.vernier of over", { parts, spans, count: leastCount({ vernier, chosen }) });
  const said = ends === undefined ? over : `${over}; ${ends}`;
  const doubtful = chosen.doubtOverTravel !== undefined && chosen.doubtOverTravel > vernier.leastCount;
  return doubtful ? `${said}, ${say("dials.finer than known", { travel: overWords(chosen, units) })}` : said;
}

/** Where a vernier must not be used; undefined where it may be everywhere. */
export function vernierLimit({ vernier, chosen }: Pick<DialFinding, "vernier" | "chosen">): string | undefined {
  const from = vernier && vernierWrongFrom(vernier, chosen);
  return from === undefined ? undefined : say("dials.vernier wrong", { from: trimmedSize(from, chosen.unit, 4) });
}

export function leastCount({ vernier, chosen }: Pick<DialFinding, "vernier" | "chosen">): string {
  const value = (vernier?.leastCount ?? 0) / mmPer[chosen.unit];
  return `${trimmed(Number(value.toPrecision(4)), 9)} ${unitName(chosen.unit)}`;
}

/** A warning with its remedy where the marks stand too close to be read (distances: see dial/penalty). */
function sightWords({ chosen, second }: DialFinding, units: Units): string {
  const least = Math.min(chosen.spacing, second?.chosen.spacing ?? chosen.spacing);
  const apart = formatSize(least, units);
  return blurs(least) ? say("dials.blur", { apart }) : strains(least) ? say("dials.close", { apart }) : "";
}
