import { hazardOf } from "../../cutting/hazards.js";
import { materialName } from "../../cutting/materials.js";
import type { Drawing } from "../../drawing/drawing.js";
import { group, line, text } from "../../drawing/shapes.js";
import { textWidth, wrapText } from "../../drawing/text.js";
import type { Findings, HandwheelFinding } from "../../findings/findings.js";
import { choiceDoubt } from "../../findings/limits.js";
import { isAcross, wheelToLearnOn } from "../../findings/roles.js";
import { unitsAt } from "../../findings/settingWords.js";
import { sizeWords } from "../../findings/sizeName.js";
import { speedFor } from "../../findings/speedChoice.js";
import { speedDoubt } from "../../findings/speedDoubt.js";
import { plainTravelWords } from "../../findings/travelWords.js";
import type { Use } from "../../findings/uses.js";
import { formatFixed, formatLength } from "../../quantity/format.js";
import { type Exercise, exercises } from "../../student/exercises.js";
import { goingBack, wordsOfWheel } from "../../student/goingBack.js";
import { learntSizes } from "../../student/learntSizes.js";
import { askLines, lostMotionLines, never } from "../../student/words.js";
import { say, withinSentence } from "../../words/say.js";
import { block, type Run } from "../shared/block.js";
import { unlessNoRoom } from "../shared/noRoom.js";
import { accompanying, heightOf, joined, lowered } from "../shared/runs.js";
import { objectLine, rowLine, size } from "../shared/style.js";
import { type Cell, table } from "../shared/table.js";
import { useHeading } from "../shared/useHeading.js";
import { beltPanel } from "./belts.js";
import { comingOn, dialWindow, ideas, panel, readSize, stack } from "./parts.js";

const columnGap = 8;
const panelGap = 5;

/** The first side: this machine's dial, lost motion, the belt, speeds, what never to do, whom to ask. Fills one page. */
export const studentSide = block({ materials: 4 }, ({ findings, settings, use, width, height }): Run[] => {
  const head = useHeading(findings.machine, use, width).map((run) => ({ ...run, startsPage: "always" as const }));
  const room = height - heightOf(head);
  const column = (width - columnGap) / 2;
  const nevers = never(use, findings.machine);
  const half = Math.ceil(nevers.length / 2);
  const crossed = [nevers.slice(0, half), nevers.slice(half)].map((lines) => ideas(lines, column, "cross"));
  const lower = stack(
    [
      joined(
        panel(say("student.panel never"), [beside(crossed[0] as Drawing, crossed[1] as Drawing, width)], width),
        width,
      ),
      joined(askPanel(width), width),
    ],
    width,
    3,
  );
  // Pictures as large as the page has room for, of each column by itself.
  const upper = [0, 1].map((at) => {
    const grownTo = (grown: number) => {
      const all = panels(findings, use, settings.materials, column, grown);
      const own = all.slice(2 * at, 2 * at + 2).map((panel) => joined(panel, column));
      return stack(own, column, panelGap);
    };
    // A table may be too wide for half the page.
    return unlessNoRoom(() => largest(grownTo, ({ height }) => height + panelGap + lower.height <= room));
  });
  const [left, right] = upper;
  if (left && right) {
    const side = stack([beside(left, right, width), lower], width, panelGap);
    return [...head, { drawing: { ...side, height: room } }];
  }
  // On small paper one below the other, over as many pages as it takes.
  const allGrown = (grown: number): Run[][] => [
    ...panels(findings, use, settings.materials, width, grown),
    panel(say("student.panel never"), [ideas(nevers, width, "cross")], width),
    // Whom to ask is no page of its own.
    accompanying(askPanel(width)),
  ];
  const fewest = pagesOf(allGrown(LEAST_GROWN), room, height);
  const all = largest(allGrown, (panels) => pagesOf(panels, room, height) <= fewest) ?? allGrown(LEAST_GROWN);
  return [...head, ...all.flatMap((panel) => lowered(panel, panelGap))];
});

/** Of their usual size, pictures that still are read. */
const LEAST_GROWN = 0.9;

/** What is made with the largest pictures that are well, of their usual size; undefined where none are. */
function largest<T>(made: (grown: number) => T, well: (made: T) => boolean): T | undefined {
  for (const grown of [1.6, 1.45, 1.3, 1.15, 1, LEAST_GROWN]) {
    const tried = made(grown);
    if (well(tried)) return tried;
  }
  return undefined;
}

/** How many pages panels below one another fill, the first of them with so much room. */
function pagesOf(panels: readonly (readonly Run[])[], first: number, others: number): number {
  let [pages, left] = [1, first];
  for (const panel of panels) {
    const height = heightOf(panel);
    const needed = height + (left === first && pages === 1 ? 0 : panelGap);
    if (needed > left) [pages, left] = [pages + 1, others - height];
    else left -= needed;
  }
  return pages;
}

const askPanel = (width: number): Run[] =>
  panel(say("student.panel ask"), [ideas(askLines(), width), blank(say("student.I ask"), width)], width);

function panels(
  findings: Findings,
  use: Use,
  materials: number,
  width: number,
  grown: number,
): [Run[], Run[], Run[], Run[]] {
  const wheel = wheelToLearnOn(findings.handwheels, use);
  const told = wordsOfWheel(wheel, use, findings);
  const back = goingBack(wheel, told);
  const dial =
    wheel === undefined ? [ideas([say("student.ask how far")], width)] : dialPanel(wheel, findings, told, width, grown);
  const lost = [
    comingOn(back, width, grown),
    ideas([...lostWords(wheel, findings), ...lostMotionLines(told, wheel?.dial !== undefined, back)], width),
  ];
  return [
    panel(
      say(wheel !== undefined && wheel.dial === undefined ? "student.panel turns" : "student.panel dial"),
      dial,
      width,
    ),
    panel(say("student.panel one side"), lost, width),
    panel(say("student.panel belt"), beltPanel(findings, width, grown), width),
    panel(say("student.panel speed"), speeds(findings, use, materials, width), width),
  ];
}

/** The second side: exercises of this machine's own numbers, with their answers upside down at the foot (or on a page of their
 *  own, for the teacher). */
export const studentExercises = block(
  { answers: "upside down" },
  ({ findings, settings, use, width, height }): Run[] => {
    const list = exercises(findings, use);
    const title = stack(
      [
        {
          width,
          height: 6,
          marks: [text(say("student.try it"), { x: 0, y: 4.6 }, { size: size.card, weight: "bold" })],
        },
        ideas([say("student.work these out")], width),
        blank(say("student.name"), width),
      ],
      width,
      1,
    );
    const questions = list.map((exercise, index) => question(exercise, index + 1, width));
    const answers = answerLines(list, width);
    const upside = settings.answers === "upside down";
    const foot = (page: number) => group({ x: width, y: page }, answers.marks, { turn: Math.PI, name: "answers" });
    const apart: Run = {
      drawing: upside
        ? { width, height: answers.height, marks: [foot(answers.height)] }
        : { ...answers, height: Math.max(height, answers.height) },
      gap: 6,
    };
    const needed = [title, ...questions, ...(upside ? [answers] : [])].reduce((sum, part) => sum + part.height, 12);
    const between = Math.min(12, (height - needed) / Math.max(1, questions.length));
    // On small paper the exercises go on over the page.
    if (between < 0)
      return [{ drawing: title, keepWithNext: true }, ...questions.map((drawing): Run => ({ drawing, gap: 3 })), apart];
    const stacked = stack(questions, width, between);
    const side: Run = {
      drawing: {
        width,
        height,
        marks: [...title.marks, group({ x: 0, y: title.height + 6 }, stacked.marks), ...(upside ? [foot(height)] : [])],
      },
    };
    return upside ? [side] : [side, apart];
  },
  { answers: ["upside down", "teacher"] },
);

function beside(left: Drawing, right: Drawing, width: number): Drawing {
  const at = { x: (width + columnGap) / 2, y: 0 };
  return { width, height: Math.max(left.height, right.height), marks: [...left.marks, group(at, right.marks)] };
}

const blank = (words: string, width: number): Drawing => ({
  width,
  height: 7,
  marks: [
    text(words, { x: 0, y: 5 }, { size: readSize, weight: "bold" }),
    line({ x: textWidth(words, readSize, "bold") + 3, y: 5.6 }, { x: width, y: 5.6 }, rowLine),
  ],
});

/** What a dial that reads travel shows. */
function showsWords(handwheel: HandwheelFinding["handwheel"], use: Use): string {
  if (use === "drilling") return say("student.dial shows depth");
  return say(isAcross({ handwheel }) ? "student.dial shows travel across" : "student.dial shows travel");
}

function dialPanel(wheel: HandwheelFinding, { machine }: Findings, use: Use, width: number, grown: number): Drawing[] {
  const { handwheel, reading, dial } = wheel;
  const units = unitsAt(wheel, machine.units);
  const uneven = plainTravelWords(wheel, units);
  if (reading === undefined) return [];
  const show = (mm: number) => formatLength(mm, units, units === "mm" ? 2 : 4);
  const named = { wheel: withinSentence(handwheel.name) };
  const thins = handwheel.reads === "diameter";
  const told = { ...named, distance: show(reading.perTurn) };
  if (dial === undefined) {
    const none = say(handwheel.oldDial === undefined ? "student.no dial" : "student.old dial", named);
    const turn = say(thins ? "student.one turn, thinner" : "student.one turn", told);
    return [ideas([none, turn, ...(uneven ? [uneven] : [])], width)];
  }
  const turn = say(thins ? "student.one turn on the dial" : "student.one turn", told);
  const lines = Math.min(13, Math.floor(dial.chosen.divisionsPerTurn) - 1);
  return [
    dialWindow(width, lines, dial, { grown, value: show(lines * dial.chosen.divisionValue) }),
    ideas(
      [
        say("student.one line", { division: dial.chosen.divisionLabel }),
        turn,
        thins ? say("student.dial shows thinner") : showsWords(handwheel, use),
        ...(dial.chosen.rows > 1 ? [say("student.rows", { rows: dial.chosen.rows })] : []),
        ...(uneven ? [uneven] : []),
        say(handwheel.dial?.fixed ? "student.touch and count on" : "student.touch and count"),
      ],
      width,
    ),
  ];
}

function lostWords(wheel: HandwheelFinding | undefined, { machine }: Findings): string[] {
  const lost = wheel?.feed?.lostMotion;
  if (wheel === undefined || lost === undefined || lost.turn <= 0) return [];
  const units = unitsAt(wheel, machine.units);
  // As the dial counts it, where there is one: on diameter twice what the slide does.
  const read = lost.travel * ((wheel.dial && wheel.reading?.factor) ?? 1);
  const told = {
    wheel: withinSentence(wheel.handwheel.name),
    much: formatLength(read, units, units === "mm" ? 2 : 3),
  };
  const n = Math.round(read / (wheel.dial?.divisionWorth ?? Number.POSITIVE_INFINITY));
  return [n === 0 ? say("student.loses", told) : say("student.loses, lines", { ...told, n })];
}

function speeds(findings: Findings, use: Use, most: number, width: number): Drawing[] {
  const { drive, machine } = findings;
  if (drive === undefined) return [ideas([say("student.no speeds")], width)];
  const { materials } = machine.work;
  const sizes = learntSizes(use, machine);
  const rows = materials.slice(0, most).map((material): Cell[] => [
    { text: materialName(material), weight: "bold" },
    ...sizes.map((diameter): Cell => {
      const choice = hazardOf(material)?.notAlone
        ? undefined
        : speedFor({ operation: use, material, diameter }, findings);
      if (choice?.speed === undefined || choice.rpm === undefined) return { text: say("student.ask"), weight: "bold" };
      const doubt = choiceDoubt(choice.speed, machine.limits);
      const note = `${formatFixed(choice.rpm, 0)} ${say("units and numbers.rpm")}`;
      return doubt === ""
        ? { text: choice.speed.position.name, note }
        : { text: choice.speed.position.name, note: `${note}, ${doubt}`, weight: "bold" };
    }),
  ]);
  const columns = [
    { heading: [say("student.material")], align: "start" } as const,
    ...sizes.map((mm) => ({ heading: [sizeWords(use, mm, machine)], align: "start" }) as const),
  ];
  const runs = table(columns, rows, { width, size: size.text, ruled: true });
  return [
    ideas([say(`student.how big ${use}`), say("student.find the belt")], width),
    stack(
      runs.map(({ drawing }) => drawing),
      width,
      0,
    ),
    ideas([...speedDoubt(findings), say(drive.astray ? "student.no speed known" : "student.take the slower")], width),
  ];
}

function question({ question, lines, dial }: Exercise, number: number, width: number): Drawing {
  const said = ideas([question], width - 10);
  const words =
    lines === undefined || dial === undefined
      ? said
      : stack([said, dialWindow(width * 0.62, lines, dial, { grown: 1.3 })], width - 10, 1);
  return {
    width,
    height: words.height + 7.5,
    marks: [
      text(String(number), { x: 0, y: readSize * 1.03 }, { size: size.text, weight: "bold" }),
      group({ x: 10, y: 0 }, words.marks),
      line({ x: 10, y: words.height + 6.6 }, { x: width * 0.62, y: words.height + 6.6 }, rowLine),
    ],
  };
}

/** In two columns, each answer as high as it takes. */
function answerLines(list: readonly Exercise[], width: number): Drawing {
  const column = (width - columnGap) / 2;
  const step = size.text * 1.3;
  const answers = list.map(({ answer }, index): Drawing => {
    const lines = wrapText(`${index + 1}  ${answer}`, column, size.text, "regular");
    const marks = lines.map((part, row) => text(part, { x: 0, y: (row + 0.8) * step }, { size: size.text }));
    return { width: column, height: lines.length * step, marks };
  });
  const half = Math.ceil(list.length / 2);
  const columns = [answers.slice(0, half), answers.slice(half)].map((some) => stack(some, column, 0.8));
  const both = beside(columns[0] as Drawing, columns[1] as Drawing, width);
  return {
    width,
    height: 6.5 + both.height,
    marks: [
      line({ x: 0, y: 0.3 }, { x: width, y: 0.3 }, objectLine),
      text(say("student.answers"), { x: 0, y: 4 }, { size: size.text, weight: "bold" }),
      group({ x: 0, y: 5.5 }, both.marks),
    ],
  };
}
