import { bandOf } from "../../dial/development.js";
import type { DialChoice } from "../../dial/finding.js";
import { blurs, isLong, strains } from "../../dial/legibility.js";
import { overOnDial } from "../../dial/overOnDial.js";
import { LEAST_ROW_HEIGHT, MOST_MARKS } from "../../dial/penalty.js";
import type { HandwheelFinding } from "../../findings/findings.js";
import type { Units } from "../../machine/machine.js";
import { formatSize, MINUS, sizeAmount, trimmedSize } from "../../quantity/format.js";
import { say } from "../../words/say.js";

/** What a way to divide a dial is and costs, a line for each. */
export function choiceLines(
  choice: DialChoice,
  state: "chosen" | "as asked" | undefined,
  { reading, dial }: HandwheelFinding,
  units: Units,
): string[] {
  const { closure, rows, spacing, divisions, divisionValue } = choice;
  const kind =
    rows > 1
      ? say("dial choices.rows", { n: rows })
      : say(closure === "even" ? "dial choices.even" : "dial choices.true");
  const high = dial?.flat === undefined ? Number.POSITIVE_INFINITY : bandOf(dial.flat) / rows;
  return [
    state === undefined ? kind : `${kind} · ${say(`dial choices.marked ${state}`)}`,
    ...cost(choice, units),
    say(
      blurs(spacing) ? "dial choices.apart blur" : strains(spacing) ? "dial choices.apart close" : "dial choices.apart",
      {
        size: formatSize(spacing, units),
      },
    ),
    ...(rows > 1 && high < LEAST_ROW_HEIGHT ? [say("dial choices.row low", { size: formatSize(high, units, 1) })] : []),
    ...(divisions > MOST_MARKS ? [say("dial choices.too many")] : []),
    ...(reading && divisionValue > reading.perTurn ? [say("dial choices.more than a turn")] : []),
  ];
}

function cost(choice: DialChoice, units: Units): string[] {
  if (choice.beginsAgain && choice.onceRound) return [say("dials.once round")];
  if (choice.beginsAgain)
    return [
      say(isLong(choice) ? "dial choices.begins again, long" : "dial choices.begins again", {
        size: sizeAmount(choice.last ?? choice.leftOver, choice.unit),
      }),
    ];
  if (choice.errorPerTurn === 0) return [say("dial choices.closes")];
  return [
    ...(choice.closes ? [say("dial choices.closes within")] : []),
    say("dial choices.each turn", { out: signed(choice.errorPerTurn, units) }),
    say("dial choices.over travel", {
      out: signed(choice.errorOverTravel, units),
      travel: overOnDial(choice, (mm) => trimmedSize(mm, units, 1)),
    }),
  ];
}

const signed = (mm: number, units: Units): string => `${mm < 0 ? MINUS : "+"}${sizeAmount(mm, units)}`;
