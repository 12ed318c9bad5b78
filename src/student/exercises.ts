import { hazardOf } from "../cutting/hazards.js";
import type { DialChoice, DialFinding } from "../dial/finding.js";
import type { Setting } from "../dial/setting.js";
import type { Findings, HandwheelFinding } from "../findings/findings.js";
import { choiceDoubt } from "../findings/limits.js";
import { isAcross, wheelFor, wheelToLearnOn } from "../findings/roles.js";
import { settingToRead } from "../findings/settings.js";
import { speedFor } from "../findings/speedChoice.js";
import { formatFixed, formatLength, plural, trimmed } from "../quantity/format.js";
import { fromMm, inMm } from "../quantity/length.js";
import { threads } from "../thread/data.js";
import { threadNamed, turnsFor } from "../thread/thread.js";
import { type Dice, dice } from "./dice.js";

/** `lines`: where the index stands in the drawing of the dial that goes with it. */
export type Exercise = {
  readonly question: string;
  readonly answer: string;
  readonly lines?: number;
  readonly dial?: DialFinding;
};

/** Exercises made of this machine's numbers, the same for all who have its file at this revision. Kinds that the file has no
 *  data for are left out. Pure. */
export function exercises(findings: Findings): Exercise[] {
  const { machine, handwheels } = findings;
  const throws = dice(`${machine.name} ${machine.revision ?? ""}`);
  const across = wheelToLearnOn(handwheels);
  const along = wheelFor("along", handwheels);
  return [
    ...(across ? dialExercises(across, findings, throws) : []),
    ...(along && along !== across ? lengthExercise(along, findings, throws) : []),
    ...speedExercises(findings, throws),
    ...threadExercise(throws),
  ];
}

function dialExercises(wheel: HandwheelFinding, { machine }: Findings, throws: Dice): Exercise[] {
  const { handwheel, reading, dial } = wheel;
  if (reading === undefined) return [];
  const { units } = machine;
  const show = (mm: number, places = units === "mm" ? 2 : 3) => formatLength(mm, units, places);
  const name = handwheel.name.toLowerCase();
  const turns = throws.whole(2, 4);
  const moved = handwheel.reads === "diameter" ? "How much thinner does the part get?" : "How far does it move?";
  const whole = {
    question: `Turn the ${name} ${turns} whole turns. ${moved}`,
    answer: show(turns * reading.perTurn),
  };
  if (dial === undefined) return [whole];
  const { chosen } = dial;
  const worth = dial.divisionWorth;
  const lines = Math.floor(chosen.divisionsPerTurn);
  const read = throws.whole(3, Math.max(4, Math.min(30, lines - 1)));
  const distance = inMm(throws.whole(2, 9) * (units === "mm" ? 0.5 : 0.02), units);
  const setting = settingToRead(wheel, distance);
  const over = throws.whole(2, 4);
  const more = throws.whole(4, 12);
  const wanted = inMm(throws.whole(10, 30) / (units === "mm" ? 1 : 32), units);
  return [
    {
      question: `You start at 0 and turn to the arrow. What is that in ${units}?`,
      answer: `${read} lines: ${show(read * worth)}`,
      lines: read,
      dial,
    },
    whole,
    {
      question: `You want ${show(distance, units === "mm" ? 1 : 3)} on the dial. ${chosen.rows > 1 ? "How many turns? Then which row, and what does it say?" : "How many turns and lines?"}`,
      answer: setting === undefined ? "" : settingWords(setting, chosen),
    },
    ...(isAcross(wheel)
      ? [
          {
            question: `The part measures ${show(wanted + more * worth)}. You want ${show(wanted)}. How many lines more${handwheel.reads === "diameter" ? "" : "? Think: both sides get thinner"}?`,
            answer: `${trimmed(handwheel.reads === "diameter" ? more : more / 2, 1)} lines`,
          },
        ]
      : []),
    {
      question: `You went ${over} lines too far. What do you do?`,
      answer: "Back half a turn, then come on again to the right line.",
    },
  ];
}

/** Turns and lines; on a dial of several rows the lines do not begin at 0, so its own numbers are read there. */
function settingWords({ wholeTurns, divisions = 0, row, reading }: Setting, { unit, rows }: DialChoice): string {
  const turns = wholeTurns === 0 ? "" : plural(wholeTurns, "turn");
  if (row !== undefined && reading !== undefined && rows > 1) {
    const says = `row ${row} says ${trimmed(fromMm(reading, unit), unit === "mm" ? 2 : 4)} ${unit}`;
    return turns === "" ? `No whole turn: ${says}` : `${turns}, then ${says}`;
  }
  const lines = `${trimmed(divisions, 1)} lines`;
  return turns === "" ? lines : `${turns} and ${lines}`;
}

function lengthExercise(wheel: HandwheelFinding, { machine }: Findings, throws: Dice): Exercise[] {
  const { handwheel, dial } = wheel;
  const { units } = machine;
  const length = inMm(throws.whole(4, 12) / (units === "mm" ? 1 : 32), units);
  const setting = settingToRead(wheel, length);
  if (setting === undefined) return [];
  return [
    {
      question: `A step is ${trimmed(fromMm(length, units), 4)} ${units} long. How do you turn the ${handwheel.name.toLowerCase()}?`,
      answer: dial === undefined ? `${formatFixed(setting.turns, 2)} turns` : settingWords(setting, dial.chosen),
    },
  ];
}

function speedExercises(findings: Findings, throws: Dice): Exercise[] {
  const { drive, machine } = findings;
  const [first, ...rest] = machine.work.materials.filter((material) => !hazardOf(material)?.notAlone);
  const [small, ...larger] = machine.work.diameters;
  if (drive === undefined || first === undefined || small === undefined) return [];
  const asked = [throws.pick([first, ...rest]), throws.pick([first, ...rest])];
  return [...new Set(asked)].flatMap((material): Exercise[] => {
    const diameter = throws.pick([small, ...larger]);
    const choice = speedFor({ operation: "turning", material, diameter }, findings);
    // An exercise must not teach a speed that is to be measured first.
    if (choice === undefined || choiceDoubt(choice.speed, machine.limits) !== "") return [];
    const { speed, rpm, verdict } = choice;
    const size = `${trimmed(fromMm(diameter, machine.units), 3)} ${machine.units}`;
    return [
      {
        question: `You turn ${material}, ${size} thick. Look at the speed card. Where does the belt go?`,
        answer:
          speed && rpm
            ? `${speed.position.name}, ${formatFixed(rpm, 0)} rpm`
            : `Nowhere: ${verdict === "no speed is known" ? "no speed is known" : "too fast"}. Ask.`,
      },
    ];
  });
}

const usual = ["M3", "M4", "M5", "M6", "M8"];

function threadExercise(throws: Dice): Exercise[] {
  const names = threads.map(({ name }) => name).filter((name) => usual.includes(name));
  const [first, ...rest] = names;
  if (first === undefined) return [];
  const thread = threadNamed(throws.pick([first, ...rest]));
  if (thread === undefined) return [];
  const depth = throws.whole(6, 12);
  return [
    {
      question: `Cut an ${thread.name} thread ${depth} mm deep, by hand. One turn goes ${trimmed(thread.pitch, 2)} mm in. How many turns?`,
      answer: `${trimmed(turnsFor(depth, thread.pitch), 1)} turns`,
    },
  ];
}
