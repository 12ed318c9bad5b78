import { closingWords } from "../dial/closing.js";
import type { DialChoice, DialFinding } from "../dial/finding.js";
import { isLong } from "../dial/legibility.js";
import { overOnDial } from "../dial/overOnDial.js";
import type { Findings, HandwheelFinding } from "../findings/findings.js";
import { lostMotionWords } from "../findings/travelWords.js";
import type { Units } from "../machine/machine.js";
import { largestOf } from "../quantity/extremes.js";
import { formatFixed, formatSize, plural } from "../quantity/format.js";
import { fromMm } from "../quantity/length.js";

/** What `check --choices` shows of each handwheel: lost motion, strip, and every way to divide its dial with what that costs. */
export const choiceLines = ({ machine, handwheels }: Findings): string[] =>
  handwheels.flatMap((finding) => (finding.feed ? ["", ...handwheelLines(finding, machine.units)] : []));

function handwheelLines(finding: HandwheelFinding, units: Units): string[] {
  const { handwheel, feed, study, dial } = finding;
  if (!feed) return [];
  const show = (mm: number, extra = 0) =>
    `${formatFixed(fromMm(mm, units), (units === "mm" ? 3 : 4) + extra)} ${units}`;
  const lines = [`${handwheel.name}, whose dial reads ${handwheel.reads}`];
  const { lostMotion, nominal } = feed;
  if (lostMotion)
    lines.push(
      `  lost motion ${show(lostMotion.travel)}, ${formatFixed(lostMotion.turn, 3)} of a turn${lostMotion.worst ? `, where it is largest; down to ${show(lostMotion.worst.least)} elsewhere` : ""}`,
    );
  else if (study?.back) lines.push(`  ${lostMotionWords(study.back)}`);
  if (nominal !== undefined) {
    const factor = finding.reading?.factor ?? 1;
    lines.push(
      `  nominal ${show(nominal, 1)} per turn: a dial made for that reads ${wrong((nominal - feed.perTurn) * factor, (mm) => show(mm, 1))}${factor === 2 ? " on diameter" : ""} each turn`,
    );
  }
  if (!dial) return lines;
  const { chosen, closings } = dial;
  return [
    ...lines,
    ...dialLines(dial, show, units),
    `  ${chosen.divisionLabel} comes round ${closingWords(closings, units)}`,
  ];
}

type Show = (mm: number, extra?: number) => string;

/** An error of no last place is none: it is neither too much nor too little. */
const wrong = (error: number, show: Show): string => {
  const shown = show(Math.abs(error));
  return shown === show(0)
    ? `right to ${show(0).replace(/0(?= )/, "1")}`
    : `${shown} too ${error > 0 ? "much" : "little"}`;
};

function dialLines(
  { choices, chosen, stripLength, forced, second, vernier }: DialFinding,
  show: Show,
  units: Units,
): string[] {
  const lines = stripLength === undefined ? [] : [`  strip ${formatSize(stripLength, units)} once round`];
  const best = choices.slice(0, 6);
  const shown = best.map((choice) => {
    const rows = choice.rows > 1 ? ` in ${plural(choice.rows, "row")}` : "";
    return { choice, what: `${choice.closure}${rows}`, how: `${choice.divisions} × ${choice.divisionLabel}` };
  });
  const width = (key: "what" | "how") => largestOf(shown.map((line) => line[key].length));
  const [what, how] = [width("what"), width("how")];
  for (const { choice, ...line } of shown) {
    const mark = choice === chosen ? (forced ? "as told →" : "chosen  →") : "         ";
    const gap = `marks ${formatSize(choice.spacing, units)} apart`;
    lines.push(
      `  ${mark} ${line.what.padEnd(what)}  ${line.how.padEnd(how)}  ${gap}`,
      `              ${cost(choice, show)}`,
    );
  }
  if (second) {
    const { divisions, divisionLabel, closure } = second.chosen;
    lines.push(`  second scale ${closure}, ${divisions} × ${divisionLabel}: ${cost(second.chosen, show)}`);
  }
  if (vernier)
    lines.push(`  vernier ${vernier.parts} over ${vernier.spans} divisions: reads ${show(vernier.leastCount, 1)}`);
  return lines;
}

/** What a choice costs, as long as the dial is read as printed. */
function cost(choice: DialChoice, show: Show): string {
  if (choice.beginsAgain && choice.onceRound) return "exact: the travel ends before the dial has gone once round";
  if (choice.closure === "true" && Math.abs(choice.leftOver) > 1e-6)
    return `exact, last division ${isLong(choice) ? "long" : "short"} (${show(choice.last ?? choice.leftOver, 1)}): count whole turns`;
  if (Math.abs(choice.errorPerTurn) < 1e-6) return "closes exactly";
  const { errorPerTurn, errorOverTravel } = choice;
  return `reads ${wrong(errorPerTurn, (mm) => show(mm, 1))} each turn, ${show(Math.abs(errorOverTravel))} over ${overOnDial(choice, (mm) => show(mm, -2))}${choice.measuredOnly ? ", as far as was measured" : ""}`;
}
