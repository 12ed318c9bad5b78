import { workingDoubt } from "../../dial/dialFinding.js";
import type { DialFinding } from "../../dial/finding.js";
import { countedAs } from "../../dial/labelling.js";
import { blurs, strains } from "../../dial/legibility.js";
import type { HandwheelFinding } from "../../findings/findings.js";
import { withinTurnWords } from "../../findings/travelWords.js";
import type { Machine, Units } from "../../machine/machine.js";
import { capital, formatBound, formatLength, formatSize, plural, trimmed } from "../../quantity/format.js";
import { fromMm, mmPer } from "../../quantity/length.js";
import type { Inscription } from "./inscriptions.js";

type Scale = Pick<DialFinding, "chosen" | "labelUnit">;

/** What stands small on the dial itself, parted by " · ", the dearest first: the unit always. */
export function dialLegend(
  { handwheel, feed, reading }: HandwheelFinding,
  dial: DialFinding,
  machine: Machine,
): string {
  const { unit, errorOverTravel } = dial.chosen;
  const onDiameter = handwheel.reads === "diameter" ? " on diameter" : "";
  // A dial that was asked for though its feed is not known so well carries that where the eye is.
  const { doubt = 0, travel = 0 } = (feed && workingDoubt(dial.chosen, handwheel, feed)) ?? {};
  const perTurn = reading && `${formatLength(reading.perTurn, unit, unit === "mm" ? 3 : 4)} a turn`;
  const divisions = dial.second
    ? `upper ${dial.chosen.divisionLabel}, lower ${dial.second.chosen.divisionLabel}${onDiameter}`
    : `1 div ${dial.chosen.divisionLabel}${onDiameter}`;
  return [
    divisions,
    // So does one that was forced though its divisions do not fit.
    Math.abs(errorOverTravel) > dial.chosen.divisionValue && !dial.chosen.beginsAgain
      ? `reads ${amount(errorOverTravel, unit)} too ${errorOverTravel > 0 ? "much" : "little"} over ${overWords(dial.chosen, unit)}`
      : "",
    doubt > dial.chosen.divisionValue
      ? `doubt ± ${formatBound(doubt, unit)} over ${trimmed(fromMm(travel, unit), unit === "mm" ? 0 : 1)} ${unit}`
      : "",
    [dial, ...(dial.second ? [dial.second] : [])].map(countedAs).filter(Boolean).join(", "),
    ...revisionAndName(handwheel.name, machine),
    perTurn,
  ]
    .filter(Boolean)
    .join(" · ");
}

/** What no dial may be without, for one that has no room for the legend: what its numbers count, that they are read on
 *  diameter, revision and name. */
export function dialEssentials({ handwheel }: HandwheelFinding, dial: DialFinding, machine: Machine): Inscription[] {
  const counted = [dial, ...(dial.second ? [dial.second] : [])].map(countedAs);
  return [
    ...counted.flatMap((words, index) => (words === undefined ? [] : [{ words, scale: index === 0 ? 0 : 1 } as const])),
    ...(handwheel.reads === "diameter" ? [{ words: "on diameter" }] : []),
    ...revisionAndName(handwheel.name, machine).map((words) => ({ words })),
  ];
}

const revisionAndName = (name: string, { revision }: Machine): string[] => [
  ...(revision === undefined ? [] : [`rev ${revision}`]),
  name,
];

/** What the chosen dial is, and what it costs: per turn, and over the working length. */
export function dialWords(finding: HandwheelFinding, dial: DialFinding, units: Units): string {
  const lower = dial.second ? ` Lower scale: ${scaleWords(dial.second, units)}.` : "";
  const vernier = dial.vernier ? ` ${vernierWords(dial, units)}.` : "";
  const first = scaleWords(dial, units);
  const upper = dial.second ? `Upper scale: ${first}` : capital(first);
  return `${upper}.${lower}${vernier} Numbers grow as the wheel is turned ${dial.increases}. ${sightWords(dial, units)}${waveWords(dial)}${withinWords(finding)}`.trim();
}

/** A dial with a wave built in looks wrong and is right: the paper says so. */
const waveWords = ({ wave }: DialFinding): string =>
  wave === undefined
    ? ""
    : ` Unevenly spaced on purpose: the measured once-per-turn error is built in. Its zero belongs where the wheel stood at turn 0 of the readings.`;

const withinWords = (finding: HandwheelFinding): string => {
  const within = withinTurnWords(finding);
  return within === undefined ? "" : ` ${capital(within)}.`;
};

/** What is there is never told as nothing. */
function amount(mm: number, units: Units): string {
  const told = formatSize(Math.abs(mm), units, 4);
  return mm !== 0 && !/[1-9]/.test(told) ? formatBound(Math.abs(mm), units) : told;
}

/** The travel over which a dial's error is told. */
const overWords = ({ overTravel }: Scale["chosen"], units: Units): string =>
  `${trimmed(fromMm(overTravel, units), units === "mm" ? 1 : 2)} ${units}`;

function scaleWords({ chosen }: Scale, units: Units): string {
  const over = overWords(chosen, units);
  const kind = {
    even: `${plural(chosen.divisions, "even division")} of ${chosen.divisionLabel}`,
    true: `exact divisions of ${chosen.divisionLabel}${chosen.beginsAgain ? `, the last only ${amount(chosen.leftOver, chosen.unit)}: count whole turns, and begin each from its start reading` : ""}`,
    rows: `divisions of ${chosen.divisionLabel} in ${chosen.rows} rows, read in order, one row a turn, then over again`,
  }[chosen.closure];
  const doubt =
    chosen.doubtOverTravel === undefined
      ? "how well the feed is known is not said"
      : `the feed itself leaves a doubt of ${formatBound(chosen.doubtOverTravel, units)} over ${over}`;
  const only = chosen.measuredOnly ? `; no more of its travel was measured, and nothing is told beyond` : "";
  return `${kind}; ${costWords(chosen, units)}; ${doubt}${only}`;
}

/** What the closing costs, per turn and over the working length. */
export function costWords(chosen: Scale["chosen"], units: Units): string {
  if (chosen.beginsAgain) return "begins again each turn, so that nothing adds up, but does not run on past zero";
  if (chosen.errorPerTurn === 0) return "closes exactly";
  const sense = chosen.errorPerTurn > 0 ? "much" : "little";
  const over = overWords(chosen, units);
  return `${chosen.closes ? "closes within the feed's doubt" : "does not close"}: reads ${amount(chosen.errorPerTurn, units)} too ${sense} each turn, ${amount(chosen.errorOverTravel, units)} over ${over}`;
}

/** "Vernier of 10 over 9 divisions: reads 0.002 mm". */
export function vernierWords({ vernier, chosen }: DialFinding, units: Units): string {
  if (vernier === undefined) return "";
  const doubtful = chosen.doubtOverTravel !== undefined && chosen.doubtOverTravel > vernier.leastCount;
  return `Vernier of ${vernier.parts} over ${vernier.spans} divisions: reads ${leastCount({ vernier, chosen })}${doubtful ? `, finer than the feed is known over ${overWords(chosen, units)}` : ""}`;
}

export function leastCount({ vernier, chosen }: Pick<DialFinding, "vernier" | "chosen">): string {
  const value = (vernier?.leastCount ?? 0) / mmPer[chosen.unit];
  return `${Number(value.toPrecision(4))} ${chosen.unit}`;
}

/** A warning with its remedy where the marks stand too close to be read (distances: see dial/penalty). */
function sightWords({ chosen, second }: DialFinding, units: Units): string {
  const least = Math.min(chosen.spacing, second?.chosen.spacing ?? chosen.spacing);
  if (!blurs(least) && !strains(least)) return "";
  const apart = `marks ${formatSize(least, units)} apart`;
  return blurs(least)
    ? `Too small for its divisions: ${apart} blur. Take a coarser division, a larger dial, or a coarser dial with a vernier.`
    : `Close: ${apart}. A coarser division, or a vernier on one, is easier on the eye.`;
}
