import { hazardOf } from "../cutting/hazards.js";
import { materialName } from "../cutting/materials.js";
import type { DialFinding } from "../dial/finding.js";
import type { Setting } from "../dial/setting.js";
import type { Findings, HandwheelFinding } from "../findings/findings.js";
import { choiceDoubt } from "../findings/limits.js";
import { drillingWheel, isAcross, wheelFor, wheelToLearnOn } from "../findings/roles.js";
import { doubtToRead, settingToRead } from "../findings/settings.js";
import { shownAt, unitsAt } from "../findings/settingWords.js";
import { sizeWords } from "../findings/sizeName.js";
import { speedFor } from "../findings/speedChoice.js";
import type { Use } from "../findings/uses.js";
import { usualThreads } from "../findings/usualThreads.js";
import type { Units } from "../machine/machine.js";
import { formatFixed, formatLength, trimmed, unitName } from "../quantity/format.js";
import { fromMm, inMm, MM_PER_INCH } from "../quantity/length.js";
import { threadOnPaper } from "../thread/onPaper.js";
import { threadNamed, turnsFor, turnsWritten } from "../thread/thread.js";
import { say, withinSentence } from "../words/say.js";
import { type Dice, dice } from "./dice.js";
import { goingBack, wordsOfWheel } from "./goingBack.js";
import { learntSizes } from "./learntSizes.js";
import { nearestLine } from "./nearestLine.js";
import { type Wanted, wantedLength, wantedOn, wantedPosition, wantedTurns } from "./wanted.js";

/** `lines`: where the index stands in the drawing of the dial that goes with it. */
export type Exercise = {
  readonly question: string;
  readonly answer: string;
  readonly lines?: number;
  readonly dial?: DialFinding;
  /** What a right answer comes to; absent where only a person can tell. */
  readonly wanted?: Wanted;
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
    ...(learnt ? dialExercises(learnt, use, findings, throws) : []),
    ...(along && along !== learnt ? lengthExercise(along, findings, throws) : []),
    ...(quill ? depthExercise(quill, findings, throws) : []),
    ...speedExercises(findings, use, throws),
    ...(use === "drilling" ? [clampExercise()] : []),
    ...threadExercise(machine.units, throws),
  ];
}

const placesShown = (units: Units): number => (units === "mm" ? 2 : 3);
/** Half of the last place that an answer is printed to, mm. */
const shownTo = (units: Units): number => inMm(0.5 * 10 ** -placesShown(units), units);

function dialExercises(wheel: HandwheelFinding, use: Use, findings: Findings, throws: Dice): Exercise[] {
  const { machine } = findings;
  const { handwheel, reading, dial } = wheel;
  if (reading === undefined) return [];
  const units = unitsAt(wheel, machine.units);
  const show = (mm: number, places = placesShown(units)) => formatLength(mm, units, places);
  // Nothing is asked that the slide cannot do: turns of its whole travel.
  const farthest = (handwheel.travel ?? Number.POSITIVE_INFINITY) / (reading.perTurn / reading.factor) + 1e-9;
  const turns = Math.min(throws.whole(2, 4), Math.floor(farthest));
  const asked = {
    wheel: withinSentence(handwheel.name),
    moved: say(handwheel.reads === "diameter" ? "student.how much thinner" : "student.how far"),
  };
  const moved = Math.max(turns, 0.5) * reading.perTurn;
  // Nobody can tell it better than the dial is read and the feed is known; a turn miscounted is always told.
  const toldTo = Math.max(shownTo(units), (dial?.divisionWorth ?? 0) / 2, doubtToRead(wheel, moved) ?? 0);
  const whole: Exercise = {
    question: turns < 1 ? say("student.turn half", asked) : say("student.turn whole", { n: turns, ...asked }),
    answer: show(moved),
    wanted: wantedLength(moved, units, Math.min(toldTo, reading.perTurn / 4), { of: "turn", worth: reading.perTurn }),
  };
  const wholes = Math.max(turns, 0.5) <= farthest ? [whole] : [];
  if (dial === undefined) return wholes;
  const { chosen } = dial;
  // What one reads off it: as it is printed.
  const worth = chosen.divisionValue;
  const lines = Math.floor(chosen.divisionsPerTurn);
  const division = dial.divisionWorth / reading.perTurn;
  const reached = Math.floor(farthest / division);
  const read = Math.min(throws.whole(3, Math.max(4, Math.min(30, lines - 1))), reached);
  const step = inMm(units === "mm" ? 0.5 : 0.02, units);
  const distance = Math.min(throws.whole(2, 9), Math.floor((farthest * reading.perTurn) / step)) * step;
  const setting = settingToRead(wheel, distance);
  const over = throws.whole(2, 4);
  const more = throws.whole(4, 12);
  const linesMore = handwheel.reads === "diameter" ? more : more / 2;
  const wanted = inMm(throws.whole(10, 30) / (units === "mm" ? 1 : 32), units);
  // Which line was meant is nobody's business on paper: the first one of the second turn, or one half way where there is no such.
  const second = chosen.rows === 1 ? 1 : Math.ceil(1 / division - 1e-9) * division;
  const meant = second + over * division <= farthest ? second : Math.floor(reached / 2) * division;
  const tooFar = meant + over * division;
  if (read < 1 || distance < step) return wholes;
  return [
    {
      question: say(`student.turn to arrow ${units}${handwheel.reads === "diameter" ? ", diameter" : ""}`),
      answer: say("student.lines make", { n: read, distance: show(read * worth) }),
      lines: read,
      dial,
      wanted: {
        ...wantedLength(read * worth, units, shownTo(units), { of: "line", worth }),
        shownBy: { wheel: handwheel.name, turns: read * division },
      },
    },
    ...wholes,
    {
      question: fromZero(
        wheel,
        say(chosen.rows > 1 ? "student.on the dial, which row" : "student.on the dial", {
          distance: show(distance, units === "mm" ? 1 : 3),
        }),
      ),
      answer: setting === undefined ? "" : settingAnswer(wheel, setting, distance),
      ...(setting && wantedOn(wheel, setting.turns)),
    },
    ...(isAcross(wheel)
      ? [
          {
            question: say(handwheel.reads === "diameter" ? "student.lines more" : "student.lines more, both sides", {
              measured: show(wanted + more * worth),
              wanted: show(wanted),
            }),
            answer: say("student.lines", { n: linesMore }),
            wanted: {
              by: "number",
              of: "lines",
              value: linesMore,
              within: 0.05,
              step: { of: "line", worth: 1 },
            } as const,
          },
        ]
      : []),
    {
      question: say("student.went too far", { lines: over }),
      answer: say(`student.went back ${goingBack(wheel, wordsOfWheel(wheel, use, findings))}`),
      ...(meant > 0 && tooFar <= farthest ? wantedOn(wheel, meant, tooFar) : {}),
    },
  ];
}

/** A dial that cannot be set to 0 is only counted from there where it stands there. */
const fromZero = ({ handwheel }: HandwheelFinding, question: string): string =>
  handwheel.dial?.fixed ? say("student.as the dial stands at 0", { question }) : question;

/** Whole turns, then what stands on the dial: the line nearest to it too, where it lies between two. */
function settingAnswer(wheel: HandwheelFinding, setting: Setting, distance: number): string {
  // What a beginner reads is the new dial; without it he counts turns.
  const shown = wheel.dial && shownAt(wheel, setting);
  if (shown === undefined) return say("turns.turns alone", { turns: formatFixed(setting.turns, 2) });
  const { figure, row } = shown;
  const says = row === undefined ? say("student.dial says", { figure }) : say("student.row says", { row, figure });
  const { wholeTurns: n } = setting;
  const turned = n === 0 ? say("student.no whole turn", { says }) : say("student.turns, then", { n, says });
  const nearest = nearestLine(wheel, setting, distance);
  const line = nearest && shownAt(wheel, nearest, false, 1)?.figure;
  return line === undefined ? turned : say("student.nearest line", { turned, line });
}

function lengthExercise(wheel: HandwheelFinding, { machine }: Findings, throws: Dice): Exercise[] {
  const { handwheel, feed } = wheel;
  const units = unitsAt(wheel, machine.units);
  const [least, most] = [4, 12];
  const thrown = throws.whole(least, most);
  const step = inMm(units === "mm" ? 1 : 1 / 32, units);
  const askedOf = (length: number) => ({
    length: trimmedLength(length, units),
    wheel: withinSentence(handwheel.name),
  });
  if (wheel.dial === undefined) {
    if (feed === undefined) return [];
    const count = servingFrom(thrown, least, most, (one) => eighthsServe(wheel, one * step, feed.perTurn));
    if (count === undefined) return [];
    const length = count * step;
    return [
      {
        question: say("student.step long, eighths", askedOf(length)),
        ...inEighths(wheel, length, feed.perTurn, units, "far"),
      },
    ];
  }
  const length = thrown * step;
  const setting = settingToRead(wheel, length);
  if (setting === undefined) return [];
  return [
    {
      question: fromZero(wheel, say("student.step long", askedOf(length))),
      answer: settingAnswer(wheel, setting, length),
      ...wantedOn(wheel, setting.turns),
    },
  ];
}

/** What a drill does that grabs loose work. */
const clampExercise = (): Exercise => ({
  question: say("student.drill grabs"),
  answer: say("student.clamp forgotten"),
});

const trimmedLength = (mm: number, units: Units): string => `${trimmed(fromMm(mm, units), 4)} ${unitName(units)}`;

/** By the dial where there is one; else by eighths of a turn, as the drilling card tells depths. */
function depthExercise(wheel: HandwheelFinding, { machine }: Findings, throws: Dice): Exercise[] {
  const { feed, handwheel } = wheel;
  if (feed === undefined) return [];
  const units = unitsAt(wheel, machine.units);
  const deepest = handwheel.travel ?? 4 * feed.perTurn;
  const step = inMm(units === "mm" ? 1 : 1 / 16, units);
  const most = Math.min(Math.floor(deepest / step), 30);
  if (most < 3) return [];
  const thrown = throws.whole(3, most);
  const askedOf = (depth: number) => ({ depth: trimmedLength(depth, units), wheel: withinSentence(handwheel.name) });
  const depth = thrown * step;
  const setting = wheel.dial && settingToRead(wheel, depth);
  if (setting)
    return [
      {
        question: fromZero(wheel, say("student.hole deep", askedOf(depth))),
        answer: settingAnswer(wheel, setting, depth),
        ...wantedOn(wheel, setting.turns),
      },
    ];
  const count = servingFrom(thrown, 3, most, (one) => eighthsServe(wheel, one * step, feed.perTurn));
  if (count === undefined) return [];
  return [
    {
      question: say("student.hole deep, eighths", askedOf(count * step)),
      ...inEighths(wheel, count * step, feed.perTurn, units, "deep"),
    },
  ];
}

/** The first that serves, from the one that was thrown on and round again. */
function servingFrom(
  thrown: number,
  least: number,
  most: number,
  serves: (one: number) => boolean,
): number | undefined {
  const count = most - least + 1;
  return Array.from({ length: count }, (_, on) => least + ((thrown - least + on) % count)).find(serves);
}

/** The nearest eighths of a turn that the travel has. */
function nearestEighths({ handwheel }: HandwheelFinding, distance: number, perTurn: number): number {
  const farthest = handwheel.travel ?? Number.POSITIVE_INFINITY;
  return Math.min(Math.round((distance / perTurn) * 8), Math.floor((farthest / perTurn) * 8 + 1e-9));
}

/** What eighths leave of a distance may be this part of it: a coarse wheel does not set a short one. */
const LEFT_AT_MOST = 0.1;

/** Whether counting them is of use: there is one to turn, and it comes near. */
function eighthsServe(wheel: HandwheelFinding, distance: number, perTurn: number): boolean {
  const eighths = nearestEighths(wheel, distance, perTurn);
  return eighths >= 1 && Math.abs((eighths / 8) * perTurn - distance) < LEFT_AT_MOST * distance;
}

/** Where no dial tells it: turns and the nearest eighth that the travel has, and what is then too much or too little. */
function inEighths(
  wheel: HandwheelFinding,
  distance: number,
  perTurn: number,
  units: Units,
  over: "deep" | "far",
): Pick<Exercise, "answer" | "wanted"> {
  const eighths = nearestEighths(wheel, distance, perTurn);
  const [turns, parts] = [Math.floor(eighths / 8), eighths % 8];
  const words = [
    ...(turns > 0 ? [say("student.turns", { n: turns })] : []),
    ...(parts > 0 || turns === 0 ? [say("student.eighths", { n: parts })] : []),
  ];
  const turned =
    words.length > 1
      ? say("student.turns and eighths", { turns: words[0] ?? "", eighths: words[1] ?? "" })
      : (words[0] ?? "");
  const off = (eighths / 8) * perTurn - distance;
  const places = units === "mm" ? 1 : 3;
  const told = { turned, left: `${formatFixed(Math.abs(fromMm(off, units)), places)} ${unitName(units)}` };
  const exact = Math.abs(fromMm(off, units)) < 0.5 * 10 ** -places;
  return {
    answer: exact ? turned : off > 0 ? say(`student.too ${over}`, told) : say("student.too little", told),
    // All that comes to the same eighth.
    wanted: wantedTurns(eighths / 8, 1 / 16 - 1e-6, { of: "eighth", worth: 1 / 8 }),
  };
}

/** As many materials as the student's own table tells. */
const ON_EVERY_CARD = 4;

function speedExercises(findings: Findings, use: Use, throws: Dice): Exercise[] {
  const { drive, machine } = findings;
  // Of those that every card has room for: what is asked must stand on it.
  const [first, ...rest] = machine.work.materials
    .slice(0, ON_EVERY_CARD)
    .filter((material) => !hazardOf(material)?.notAlone);
  const [small, ...larger] = learntSizes(use, machine);
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
        question: say(`student.speed ${use}`, { material: materialName(material), size }),
        answer:
          speed && rpm
            ? say("student.position and speed", { position: speed.position.name, rpm: formatFixed(rpm, 0) })
            : say(verdict === "no speed is known" ? "student.nowhere, unknown" : "student.nowhere, too fast"),
        wanted: wantedPosition(choice, drive.speeds, machine.limits),
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
        question: say("student.thread by the inch", {
          thread: threadOnPaper(thread.designation),
          depth: `${sixteenthsWritten(sixteenths)} ${unitName("in")}`,
          perInch: trimmed(MM_PER_INCH / thread.pitch, 1),
        }),
        answer: say("turns.turns alone", { turns: turnsWritten(turnsFor(inMm(sixteenths / 16, "in"), thread.pitch)) }),
        wanted: wantedTurns(turnsFor(inMm(sixteenths / 16, "in"), thread.pitch), 0.05),
      },
    ];
  }
  const depth = throws.whole(6, 12);
  return [
    {
      question: say("student.thread", { thread: threadOnPaper(thread.name), depth, pitch: trimmed(thread.pitch, 2) }),
      answer: say("turns.turns alone", { turns: turnsWritten(turnsFor(depth, thread.pitch)) }),
      wanted: wantedTurns(turnsFor(depth, thread.pitch), 0.05),
    },
  ];
}
