import { hazardOf } from "../../cutting/hazards.js";
import type { Drawing, Mark } from "../../drawing/drawing.js";
import { group, line, text } from "../../drawing/shapes.js";
import type { Findings, HandwheelFinding } from "../../findings/findings.js";
import { choiceDoubt } from "../../findings/limits.js";
import { isAcross, wheelToLearnOn } from "../../findings/roles.js";
import { sizeWords } from "../../findings/sizeName.js";
import { speedFor } from "../../findings/speedChoice.js";
import { speedDoubt } from "../../findings/speedDoubt.js";
import { plainTravelWords } from "../../findings/travelWords.js";
import { diametersFor, type Use } from "../../findings/uses.js";
import { formatFixed, formatLength } from "../../quantity/format.js";
import { type Exercise, exercises } from "../../student/exercises.js";
import { askLines, beltSteps, lostMotionLines, never } from "../../student/words.js";
import { block, type Run } from "../shared/block.js";
import { heightOf } from "../shared/runs.js";
import { stepPulleys } from "../shared/stepPulleys.js";
import { fine, medium, size } from "../shared/style.js";
import { type Cell, table } from "../shared/table.js";
import { useHeading } from "../shared/useHeading.js";
import { comingOn, dialWindow, ideas, panel, plugOut, readSize, stack } from "./parts.js";

const columnGap = 8;

/** The first side: this machine's dial, lost motion, the belt, speeds, what never to do, whom to ask. Fills one page. */
export const studentSide = block({ materials: 4 }, ({ findings, settings, use, width, height }): Run[] => {
  const head = useHeading(findings.machine, use, width).map((run) => ({ ...run, startsPage: true }));
  const room = height - heightOf(head);
  const column = (width - columnGap) / 2;
  const [dial, lost, belt, speed] = panels(findings, use, settings.materials, column);
  const nevers = never[use];
  const upper = beside(stack([dial, lost], column, 5), stack([belt, speed], column, 5), width);
  const half = Math.ceil(nevers.length / 2);
  const crossed = [nevers.slice(0, half), nevers.slice(half)].map((lines) => ideas(lines, column, "cross"));
  const lower = stack(
    [panel("5  Never", [beside(crossed[0] as Drawing, crossed[1] as Drawing, width)], width), askPanel(width)],
    width,
    3,
  );
  const side = stack([upper, lower], width, 5);
  if (side.height <= room) return [...head, { drawing: { ...side, height: room } }];
  // On small paper one below the other, over as many pages as it takes.
  const all = [
    ...panels(findings, use, settings.materials, width),
    panel("5  Never", [ideas(nevers, width, "cross")], width),
    askPanel(width),
  ];
  return [...head, ...all.map((drawing): Run => ({ drawing, gap: 5 }))];
});

const askPanel = (width: number): Drawing => panel("6  Ask", [ideas(askLines, width), blank("I ask:", width)], width);

function panels(findings: Findings, use: Use, materials: number, width: number): [Drawing, Drawing, Drawing, Drawing] {
  const wheel = wheelToLearnOn(findings.handwheels, use);
  const dial = wheel === undefined ? [ideas(["Ask how far one turn goes."], width)] : dialPanel(wheel, findings, width);
  const lost = [comingOn(width), ideas([...lostWords(wheel, findings), ...lostMotionLines], width)];
  return [
    panel("1  Read the dial", dial, width),
    panel("2  Come on from one side", lost, width),
    panel("3  Change the belt", [beltDrawing(findings, width), ideas(beltSteps, width, "number")], width),
    panel("4  Choose a speed", speeds(findings, use, materials, width), width),
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
        { width, height: 6, marks: [text("Try it", { x: 0, y: 4.6 }, { size: size.title, weight: "bold" })] },
        ideas(["Work these out. Write the answer on the line. These are numbers of this machine."], width),
        blank("Name:", width),
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
    const between = Math.min(4, (height - needed) / Math.max(1, questions.length));
    // On small paper the exercises go on over the page.
    if (between < 0) return [{ drawing: title }, ...questions.map((drawing): Run => ({ drawing, gap: 3 })), apart];
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
    line({ x: 16, y: 5.6 }, { x: width, y: 5.6 }, fine),
  ],
});

function dialPanel(wheel: HandwheelFinding, { machine }: Findings, width: number): Drawing[] {
  const { handwheel, reading, dial } = wheel;
  const uneven = plainTravelWords(wheel, machine.units);
  if (reading === undefined) return [];
  const show = (mm: number) => formatLength(mm, machine.units, machine.units === "mm" ? 2 : 4);
  const name = handwheel.name.toLowerCase();
  const turn = `One turn of the ${name} is ${show(reading.perTurn)}${handwheel.reads === "diameter" ? " on the dial" : ""}.`;
  if (dial === undefined)
    return [ideas([`The ${name} has no dial. Count the turns.`, turn, ...(uneven ? [uneven] : [])], width)];
  const lines = Math.min(13, Math.floor(dial.chosen.divisionsPerTurn) - 1);
  return [
    dialWindow(width, lines, dial, show(lines * dial.divisionWorth)),
    ideas(
      [
        `One line is ${dial.chosen.divisionLabel}.`,
        turn,
        handwheel.reads === "diameter"
          ? "The dial shows how much thinner the part gets."
          : `The dial shows how far the slide moves.${isAcross({ handwheel }) ? " A round part gets thinner by twice that." : ""}`,
        ...(dial.chosen.rows > 1 ? [`It has ${dial.chosen.rows} rows. Use the next row after each turn.`] : []),
        ...(uneven ? [uneven] : []),
        "Touch the part. Set the dial to 0. Then count.",
      ],
      width,
    ),
  ];
}

function lostWords(wheel: HandwheelFinding | undefined, { machine }: Findings): string[] {
  const lost = wheel?.feed?.lostMotion;
  if (wheel === undefined || lost === undefined || lost.turn <= 0) return [];
  const much = formatLength(lost.travel, machine.units, machine.units === "mm" ? 2 : 3);
  return [`Here the ${wheel.handwheel.name.toLowerCase()} loses about ${much}.`];
}

/** The plug out, and the pulleys with the belt at the slowest speed. */
function beltDrawing({ drive, machine }: Findings, width: number): Drawing {
  const height = 24;
  const plug = plugOut(height);
  const slowest = drive?.astray ? undefined : drive?.speeds[0];
  const stage =
    machine.drive?.stages.findIndex(({ steps }) => steps.length > 1 && steps.some(({ kind }) => kind === "belt")) ?? -1;
  const chosen = slowest?.position.steps[stage];
  const choice = machine.drive?.stages[stage];
  const pulleys = choice && chosen ? stepPulleys(choice, chosen, { width: width - 46, height: height - 3 }) : undefined;
  const marks: Mark[] = [
    ...plug.marks,
    text("plug out first", { x: 1, y: height - 0.6 }, { size: 3, weight: "bold" }),
    ...(pulleys === undefined || slowest === undefined
      ? []
      : [
          group({ x: 42, y: 0 }, pulleys.marks),
          text(
            `slowest: ${slowest.position.name}`,
            { x: 42 + (width - 46) / 2, y: height },
            { size: 2.7, anchor: "middle" },
          ),
        ]),
  ];
  return { width, height: height + 1, marks };
}

function speeds(findings: Findings, use: Use, most: number, width: number): Drawing[] {
  const { drive, machine } = findings;
  if (drive === undefined) return [ideas(["This sheet knows no speeds. Ask before you start."], width)];
  const { materials } = machine.work;
  const diameters = diametersFor(use, machine);
  const sizes = [...new Set([diameters[1], diameters[Math.floor(diameters.length / 2)], diameters.at(-1)])].filter(
    (mm) => mm !== undefined,
  );
  const rows = materials.slice(0, most).map((material): Cell[] => [
    { text: material, weight: "bold" },
    ...sizes.map((diameter): Cell => {
      const choice = hazardOf(material)?.notAlone
        ? undefined
        : speedFor({ operation: use, material, diameter }, findings);
      if (choice?.speed === undefined || choice.rpm === undefined) return { text: "ask", ink: "accent" };
      const doubt = choiceDoubt(choice.speed, machine.limits);
      const note = `${formatFixed(choice.rpm, 0)} rpm`;
      return doubt === ""
        ? { text: choice.speed.position.name, note }
        : { text: choice.speed.position.name, note: `${note}, ${doubt}`, ink: "accent" };
    }),
  ]);
  const columns = [
    { heading: ["material"], align: "start", stretch: 0 } as const,
    ...sizes.map((mm) => ({ heading: [sizeWords(use, mm, machine)], align: "middle" }) as const),
  ];
  const runs = table(columns, rows, { width, size: size.body, ruleEvery: 1 });
  return [
    ideas(
      [
        use === "drilling"
          ? "How big is the drill? What is the part made of?"
          : "How thick is the part? What is it made of?",
        "Find the place of the belt:",
      ],
      width,
    ),
    stack(
      runs.map(({ drawing }) => drawing),
      width,
      0,
    ),
    ideas(
      [...speedDoubt(findings), drive.astray ? "No speed is known. Ask." : "In doubt? Take the slower one."],
      width,
    ),
  ];
}

function question({ question, lines, dial }: Exercise, number: number, width: number): Drawing {
  const said = ideas([question], width - 10);
  const words =
    lines === undefined || dial === undefined
      ? said
      : stack([said, dialWindow(width * 0.5, lines, dial)], width - 10, 1);
  return {
    width,
    height: words.height + 7.5,
    marks: [
      text(String(number), { x: 0, y: readSize * 1.03 }, { size: 3.8, weight: "bold" }),
      group({ x: 10, y: 0 }, words.marks),
      line({ x: 10, y: words.height + 6.6 }, { x: width * 0.62, y: words.height + 6.6 }, fine),
    ],
  };
}

function answerLines(list: readonly Exercise[], width: number): Drawing {
  const step = size.small * 1.6;
  const column = width / 2;
  const rows = Math.ceil(list.length / 2);
  return {
    width,
    height: 6 + rows * step,
    marks: [
      line({ x: 0, y: 0.3 }, { x: width, y: 0.3 }, medium),
      text("Answers", { x: 0, y: 4 }, { size: size.small, weight: "bold" }),
      ...list.map(({ answer }, index) =>
        text(
          `${index + 1}  ${answer}`,
          { x: Math.floor(index / rows) * column, y: 5 + ((index % rows) + 0.8) * step },
          { size: size.small },
        ),
      ),
    ],
  };
}
