import { paperPerRadian } from "../../dial/development.js";
import type { DialChoice } from "../../dial/finding.js";
import { graduations } from "../../dial/graduations.js";
import { growthOf } from "../../dial/growth.js";
import type { Mark } from "../../drawing/drawing.js";
import { group, text } from "../../drawing/shapes.js";
import { wrapText } from "../../drawing/text.js";
import type { HandwheelFinding } from "../../findings/findings.js";
import type { Machine } from "../../machine/machine.js";
import { TURN } from "../../quantity/angle.js";
import { trimmedSize } from "../../quantity/format.js";
import { say } from "../../words/say.js";
import { block, type Run } from "../shared/block.js";
import { paragraph } from "../shared/paragraph.js";
import { goingOn, heading, kept } from "../shared/runs.js";
import { leading, rowLine, size, weight } from "../shared/style.js";
import { choiceLines } from "./choiceLines.js";
import { comesRound, turnLine } from "./comesRound.js";
import { numbersApart } from "./numbersApart.js";
import { type ScaleStyle, scaleMarks } from "./scaleMarks.js";
import { stripSurface } from "./surface.js";

/** The words beside a drawn dial, and the space between the two, mm. */
const wordsWide = 58;
const between = 4;
/** Room for the number of a choice, mm. */
const indent = 7;
/** Of one drawn row: its marks, and the number below them. */
const rowHeight = 6.8;
const marks = [4, 2.8, 2] as const;

/** The ways to divide each dial, best first: how it looks about its zero at true size, and beside it what it costs. */
export const dialChoices = block({ most: 6 }, ({ handwheels, findings, settings, width }) =>
  handwheels
    .filter(({ dial }) => dial !== undefined)
    .flatMap((finding, index): Run[] => {
      const { handwheel, dial } = finding;
      if (dial === undefined) return [];
      const { machine } = findings;
      const runs = [
        ...heading(handwheel.name, width, 7),
        ...kept([
          ...turnLine(finding, machine.units, width),
          ...paragraph(say("dial choices.signs"), width, { size: size.text }),
        ]),
        ...dial.choices
          .slice(0, Math.max(1, settings.most))
          .map((choice, place) => choiceRun(choice, place, finding, machine, width)),
        ...comesRound(finding, machine.units, width),
      ];
      return goingOn(runs, handwheel.name, width).map((run, place) =>
        place === 0 && index > 0 ? { ...run, startsPage: "unless it fits" as const } : run,
      );
    }),
);

function choiceRun(choice: DialChoice, place: number, finding: HandwheelFinding, machine: Machine, width: number): Run {
  const { dial } = finding;
  const chosen = dial?.chosen === choice;
  const wide = Math.min(wordsWide, 0.42 * width);
  const step = size.text * leading;
  const title = `${choice.divisions} × ${trimmedSize(choice.divisionValue, choice.unit, 5)}`;
  const said = [
    ...wrapText(title, wide - indent, size.text, "bold").map((words) => ({ words, weight: "bold" as const })),
    ...choiceLines(choice, chosen ? (dial?.forced ? "as asked" : "chosen") : undefined, finding, machine.units).flatMap(
      (line) =>
        wrapText(line, wide - indent, size.text, "regular").map((words) => ({ words, weight: "regular" as const })),
    ),
  ];
  const picture = excerpt(choice, finding, width - wide - between);
  const height = Math.max(said.length * step, picture?.height ?? 0);
  const words: Mark[] = said.map(({ words, weight }, line) =>
    text(words, { x: indent, y: (line + 0.76) * step }, { size: size.text, weight }),
  );
  const number = text(String(place + 1), { x: 0, y: 0.8 * step }, { size: size.card, weight: "bold" });
  return {
    drawing: {
      width,
      height,
      marks: [number, ...words, ...(picture ? [group({ x: wide + between, y: 0 }, picture.marks)] : [])],
    },
    gap: 3,
  };
}

/** The marks about the zero, at true size on the dial's reading circle, laid straight. */
function excerpt(choice: DialChoice, { reading, dial }: HandwheelFinding, room: number) {
  const flat = dial?.flat;
  if (flat === undefined || dial === undefined || reading === undefined) return undefined;
  const rows = graduations(choice, reading.perTurn);
  if (rows.length === 0) return undefined;
  const perRadian = paperPerRadian(flat);
  const span = Math.min(TURN, room / perRadian);
  const from = -0.3 * span;
  const part = { from, to: from + span, growth: growthOf(dial) };
  const surface = stripSurface(perRadian, rowHeight * rows.length, part);
  const drawn = rows.flatMap((row, index) => {
    const here = row.flatMap((mark) =>
      [mark.angle - TURN, mark.angle]
        .filter((angle) => angle >= from && angle <= from + span)
        .map((angle) => ({ ...mark, angle })),
    );
    const style: ScaleStyle = {
      across: index * rowHeight,
      marks,
      // Marks that would melt into one are drawn as thin as a pen can.
      spacing: Math.max(choice.spacing, 2 * weight.axis),
      number: size.source,
    };
    const numbered = numbersApart(here, perRadian, size.source, { from, to: from + span });
    return [surface.rule(index * rowHeight, rowLine), ...scaleMarks(surface, numbered, style)];
  });
  return { width: surface.width, height: surface.height, marks: drawn };
}
