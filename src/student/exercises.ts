import { hazardOf } from "../cutting/hazards.js";
import type { DialFinding } from "../dial/finding.js";
import type { Setting } from "../dial/setting.js";
import type { Findings, HandwheelFinding } from "../findings/findings.js";
import { choiceDoubt } from "../findings/limits.js";
import { drillingWheel, isAcross, wheelFor, wheelToLearnOn } from "../findings/roles.js";
import { settingToRead } from "../findings/settings.js";
import { shownAt } from "../findings/settingWords.js";
import { sizeWords } from "../findings/sizeName.js";
import { speedFor } from "../findings/speedChoice.js";
import { diametersFor, type Use } from "../findings/uses.js";
import { usualThreads } from "../findings/usualThreads.js";
import type { Units } from "../machine/machine.js";
import { formatFixed, formatLength, plural, trimmed } from "../quantity/format.js";
import { fromMm, inMm, MM_PER_INCH } from "../quantity/length.js";
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
export function exercises(findings: Findings, use: Use): Exercise[] {
  const { machine, handwheels } = findings;
  const throws = dice(`${machine.name} ${machine.revision ?? ""}`);
  const learnt = wheelToLearnOn(handwheels, use);
  const along = use === "turning" ? wheelFor("along", handwheels) : undefined;
  const quill = use === "drilling" ? drillingWheel(handwheels) : undefined;
  return [
    ...(learnt ? dialExercises(learnt, findings, throws) : []),
    ...(along && along !== learnt ? lengthExercise(along, findings, throws) : []),
    ...(quill ? depthExercise(quill, findings, throws) : []),
    ...speedExercises(findings, use, throws),
    ...(use === "drilling" ? [CLAMP] : []),
    ...threadExercise(machine.units, throws),
  ];
}

function dialExercises(wheel: HandwheelFinding, { machine }: Findings, throws: Dice): Exercise[] {
  const { handwheel, reading, dial } = wheel;
  if (reading === undefined) return [];
  const { units } = machine;
  const show = (mm: number, places = units === "mm" ? 2 : 3) => formatLength(mm, units, places);
  const name = handwheel.name.toLowerCase();
  const within = Math.floor((handwheel.travel ?? Number.POSITIVE_INFINITY) / (reading.perTurn / reading.factor) + 1e-9);
  const turns = Math.min(throws.whole(2, 4), within);
  const moved = handwheel.reads === "diameter" ? "How much thinner does the part get?" : "How far does it move?";
  const whole = {
    question:
      turns < 1
        ? `Turn the ${name} half a turn. ${moved}`
        : `Turn the ${name} ${plural(turns, "whole turn")}. ${moved}`,
    answer: show(Math.max(turns, 0.5) * reading.perTurn),
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
      question: `You start at 0 and turn to the arrow. What is that in ${units === "mm" ? "mm" : "inches"}?`,
      answer: `${read} lines: ${show(read * worth)}`,
      lines: read,
      dial,
    },
    whole,
    {
      question: `You want ${show(distance, units === "mm" ? 1 : 3)} on the dial. How many turns? Then what does the dial say${chosen.rows > 1 ? ", and on which row" : ""}?`,
      answer: setting === undefined ? "" : settingAnswer(wheel, setting),
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

/** Whole turns, then what stands on the dial. */
function settingAnswer(wheel: HandwheelFinding, setting: Setting): string {
  const shown = shownAt(wheel, setting);
  if (shown === undefined) return `${formatFixed(setting.turns, 2)} turns`;
  const says = `${shown.row === undefined ? "the dial" : `row ${shown.row}`} says ${shown.figure}`;
  return setting.wholeTurns === 0 ? `No whole turn: ${says}` : `${plural(setting.wholeTurns, "turn")}, then ${says}`;
}

function lengthExercise(wheel: HandwheelFinding, { machine }: Findings, throws: Dice): Exercise[] {
  const { handwheel } = wheel;
  const { units } = machine;
  const length = inMm(throws.whole(4, 12) / (units === "mm" ? 1 : 32), units);
  const setting = settingToRead(wheel, length);
  if (setting === undefined) return [];
  return [
    {
      question: `A step is ${trimmed(fromMm(length, units), 4)} ${units} long. How do you turn the ${handwheel.name.toLowerCase()}?`,
      answer: settingAnswer(wheel, setting),
    },
  ];
}

/** What a drill does that grabs loose work. */
const CLAMP: Exercise = {
  question: "The drill grabs and the part spins. What was forgotten? What do you do?",
  answer: "The clamp. Switch off. Never reach for the part.",
};

/** By eighths of a turn, as the drilling card tells depths; what stands beyond the nearest eighth is told too. */
function depthExercise(wheel: HandwheelFinding, { machine }: Findings, throws: Dice): Exercise[] {
  const { feed, handwheel } = wheel;
  if (feed === undefined) return [];
  const { units } = machine;
  const deepest = handwheel.travel ?? 4 * feed.perTurn;
  const step = inMm(units === "mm" ? 1 : 1 / 16, units);
  const most = Math.min(Math.floor(deepest / step), 30);
  if (most < 3) return [];
  const depth = throws.whole(3, most) * step;
  const eighths = Math.min(Math.round((depth / feed.perTurn) * 8), Math.floor((deepest / feed.perTurn) * 8 + 1e-9));
  const [turns, parts] = [Math.floor(eighths / 8), eighths % 8];
  const words = [
    ...(turns > 0 ? [plural(turns, "turn")] : []),
    ...(parts > 0 || turns === 0 ? [plural(parts, "eighth")] : []),
  ];
  const off = (eighths / 8) * feed.perTurn - depth;
  const places = units === "mm" ? 1 : 3;
  const left = formatFixed(Math.abs(fromMm(off, units)), places);
  const rest = Number(left) === 0 ? "" : `: ${left} ${units} too ${off > 0 ? "deep" : "little"}`;
  return [
    {
      question: `A hole is to be ${trimmed(fromMm(depth, units), 4)} ${units} deep. How far do you turn the ${handwheel.name.toLowerCase()}, in eighths of a turn?`,
      answer: `${words.join(" and ")}${rest}`,
    },
  ];
}

function speedExercises(findings: Findings, use: Use, throws: Dice): Exercise[] {
  const { drive, machine } = findings;
  const [first, ...rest] = machine.work.materials.filter((material) => !hazardOf(material)?.notAlone);
  const [small, ...larger] = diametersFor(use, machine);
  if (drive === undefined || first === undefined || small === undefined) return [];
  const asked = [throws.pick([first, ...rest]), throws.pick([first, ...rest])];
  return [...new Set(asked)].flatMap((material): Exercise[] => {
    const diameter = throws.pick([small, ...larger]);
    const choice = speedFor({ operation: use, material, diameter }, findings);
    // An exercise must not teach a speed that is to be measured first.
    if (choice === undefined || choiceDoubt(choice.speed, machine.limits) !== "") return [];
    const { speed, rpm, verdict } = choice;
    const size = sizeWords(use, diameter, machine);
    return [
      {
        question: `You ${use === "drilling" ? `drill ${material}. The drill is ${size}` : `turn ${material}, ${size} thick`}. Look at the speed card. Where does the belt go?`,
        answer:
          speed && rpm
            ? `${speed.position.name}, ${formatFixed(rpm, 0)} rpm`
            : `Nowhere: ${verdict === "no speed is known" ? "no speed is known" : "too fast"}. Ask.`,
      },
    ];
  });
}

const sixteenthsWritten = (count: number): string => {
  const [over, under] =
    count % 8 === 0
      ? [count / 8, 2]
      : count % 4 === 0
        ? [count / 4, 4]
        : count % 2 === 0
          ? [count / 2, 8]
          : [count, 16];
  return `${over}/${under}`;
};

/** So many of the smallest usual ones a hand turns with ease. */
const EASY_THREADS = 5;

function threadExercise(units: Units, throws: Dice): Exercise[] {
  const names = usualThreads(units)
    .slice(0, EASY_THREADS)
    .map(({ name }) => name);
  const [first, ...rest] = names;
  if (first === undefined) return [];
  const thread = threadNamed(throws.pick([first, ...rest]));
  if (thread === undefined) return [];
  if (units === "in") {
    const sixteenths = throws.whole(4, 10);
    return [
      {
        question: `Cut a ${thread.designation} thread ${sixteenthsWritten(sixteenths)} in deep, by hand. It has ${trimmed(MM_PER_INCH / thread.pitch, 1)} turns to the inch. How many turns?`,
        answer: `${trimmed(turnsFor(inMm(sixteenths / 16, "in"), thread.pitch), 1)} turns`,
      },
    ];
  }
  const depth = throws.whole(6, 12);
  return [
    {
      question: `Cut an ${thread.name} thread ${depth} mm deep, by hand. One turn goes ${trimmed(thread.pitch, 2)} mm in. How many turns?`,
      answer: `${trimmed(turnsFor(depth, thread.pitch), 1)} turns`,
    },
  ];
}
