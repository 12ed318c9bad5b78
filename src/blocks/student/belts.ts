import type { Drawing, Mark, Weight } from "../../drawing/drawing.js";
import { group, text } from "../../drawing/shapes.js";
import { textWidth, wrapText } from "../../drawing/text.js";
import type { Findings } from "../../findings/findings.js";
import { drivenBy } from "../../findings/powerOff.js";
import type { Drive, Machine, Step } from "../../machine/machine.js";
import { beltSteps } from "../../student/words.js";
import { say, translated } from "../../words/say.js";
import { type Part, pictureParts, shaftsOf } from "../shared/drivePicture.js";
import { gearPairs } from "../shared/gearPairs.js";
import { fewLines } from "../shared/shortened.js";
import { stepPulleys } from "../shared/stepPulleys.js";
import { withSigns } from "../shared/stepSigns.js";
import { size } from "../shared/style.js";
import { ideas, plugOut, stack } from "./parts.js";

/** Between two pictures side by side, and between a picture and its name, mm. */
const between = 5;
const nameHeight = 4.4;
const NAME_LINES = 2;
const nameStep = size.source * 1.25;
/** A belt's picture at its least, and how much wider than that it may get. */
const LEAST = 30;
const WIDER = 1.7;
const plugWidth = 32;
/** Steps that stand beside the plug. */
const besidePlug = 3;

/** Every belt and the gears, with the shafts between motor and spindle by name, as they lie at the slowest speed; then what is done
 *  one after the other. `grown`: how much larger than at their least. */
export function beltPanel(findings: Findings, width: number, grown: number): Drawing[] {
  const slowest = findings.drive?.astray ? undefined : findings.drive?.speeds[0];
  // Names that have no room on a pulley are called there as on the belt card, and told below.
  const { findings: signed, key } = withSigns(findings) ?? { findings, key: "" };
  const { drive } = signed.machine;
  const chosen = slowest && signed.drive?.speeds[0]?.position.steps;
  const picture = drive && everyStage(drive, chosen, width, LEAST * grown);
  const said =
    slowest === undefined || picture === undefined ? "" : say("student.slowest", { position: slowest.position.name });
  return [
    ...(picture ? [picture] : []),
    ...(key === "" || picture === undefined ? [] : [middleLines(key, width, "regular")]),
    ...(said === "" ? [] : [middleLines(said, width, "bold")]),
    whatIsDone(findings.machine, width),
  ];
}

/** As many side by side as there is width for, the spindle's end first. */
function everyStage(
  drive: Drive,
  chosen: readonly Step[] | undefined,
  width: number,
  height: number,
): Drawing | undefined {
  const rows = inRows(wideEnough(drive, width), width);
  if (rows.length === 0) return undefined;
  const drawn = rows.map((row): Drawing => {
    const least = row.reduce((sum, part) => sum + part.least.width, 0);
    const room = width - between * (row.length - 1);
    const wider = Math.min(WIDER, room / least);
    let x = (width - least * wider - between * (row.length - 1)) / 2;
    let lines = 1;
    const marks = row.flatMap(({ stage, index, belt, least }): Mark[] => {
      const own = { width: least.width * wider, height };
      const step = chosen?.[index];
      const drawing = belt ? stepPulleys(stage, step, own, shaftsOf(drive, index)) : gearPairs(stage, step, own);
      const at = x;
      x += own.width + between;
      if (drawing === undefined) return [];
      // Gears say themselves what they are.
      const name = belt
        ? fewLines(translated(stage.name), NAME_LINES, own.width + between - 1, size.source, "regular")
        : [];
      lines = Math.max(lines, name.length);
      return [
        group({ x: at, y: 0 }, drawing.marks),
        ...name.map((words, line) =>
          text(
            words,
            { x: at + own.width / 2, y: height + 3 + line * nameStep },
            { size: size.source, anchor: "middle" },
          ),
        ),
      ];
    });
    return { width, height: height + nameHeight + (lines - 1) * nameStep, marks };
  });
  return stack(drawn, width, 1);
}

/** All parts, each as wide as the names of its shafts. */
const wideEnough = (drive: Drive, width: number): Part[] =>
  pictureParts(drive, { every: true }).map((part) => {
    const shafts = part.belt ? Object.values(shaftsOf(drive, part.index)) : [];
    const names = shafts.map((name) => textWidth(name, size.text, "regular") + 0.5);
    return { ...part, least: { ...part.least, width: Math.min(width, Math.max(part.least.width, ...names)) } };
  });

function inRows(parts: readonly Part[], width: number): Part[][] {
  const rows: Part[][] = [];
  let used = Number.POSITIVE_INFINITY;
  for (const part of parts) {
    used += between + part.least.width;
    if (used <= width) rows.at(-1)?.push(part);
    else {
      rows.push([part]);
      used = part.least.width;
    }
  }
  return rows;
}

/** What is done one after the other; where there is a plug, it stands beside what is done first. */
function whatIsDone(machine: Machine, width: number): Drawing {
  const steps = beltSteps(machine);
  return drivenBy(machine) === "motor" ? besideThePlug(steps, width) : ideas(steps, width, "number");
}

function besideThePlug(steps: readonly string[], width: number): Drawing {
  const plug = plugOut(12);
  const told = wrapText(say("student.plug out first"), plugWidth - 2, size.text, "bold");
  const step = size.text * 1.25;
  const first = ideas(steps.slice(0, besidePlug), width - plugWidth, "number");
  const rest = ideas(steps.slice(besidePlug), width, "number", besidePlug + 1);
  const high = Math.max(plug.height + told.length * step, first.height);
  return {
    width,
    height: high + rest.height,
    marks: [
      ...first.marks,
      group({ x: width - plugWidth + 2, y: 0 }, plug.marks),
      ...told.map((part, row) =>
        text(
          part,
          { x: width - plugWidth / 2, y: plug.height + (row + 0.8) * step },
          { size: size.text, weight: "bold", anchor: "middle" },
        ),
      ),
      group({ x: 0, y: high }, rest.marks),
    ],
  };
}

function middleLines(words: string, width: number, weight: Weight): Drawing {
  const step = size.text * 1.25;
  const lines = wrapText(words, width, size.text, weight);
  return {
    width,
    height: lines.length * step,
    marks: lines.map((part, row) =>
      text(part, { x: width / 2, y: (row + 0.9) * step }, { size: size.text, weight, anchor: "middle" }),
    ),
  };
}
