import { closingWords } from "../../dial/closing.js";
import { paperPerRadian } from "../../dial/development.js";
import type { DialChoice } from "../../dial/finding.js";
import { graduations } from "../../dial/graduations.js";
import { growthOf } from "../../dial/growth.js";
import type { HandwheelFinding } from "../../findings/findings.js";
import type { Machine, Units } from "../../machine/machine.js";
import { TURN } from "../../quantity/angle.js";
import { capital, formatFixed, formatSize } from "../../quantity/format.js";
import { mmPer } from "../../quantity/length.js";
import { block, type Run } from "../shared/block.js";
import { heading, kept, together } from "../shared/runs.js";
import { fine, size } from "../shared/style.js";
import { paragraph } from "../shared/table.js";
import { costWords } from "./dialWords.js";
import { type ScaleStyle, scaleMarks } from "./scaleMarks.js";
import { stripSurface } from "./surface.js";

/** The ways to divide each dial, best first: what each costs, and how it looks about its zero at true size. */
export const dialChoices = block({ most: 6 }, ({ handwheels, findings, settings, width }) =>
  handwheels.flatMap((finding): Run[] => {
    const { handwheel, dial } = finding;
    if (dial === undefined) return [];
    const { units } = findings.machine;
    return [
      ...heading(handwheel.name, width, 5),
      ...kept(paragraph(turnAndClosings(finding, units), width, { size: size.small, gap: 0.3 })),
      ...dial.choices
        .slice(0, Math.max(1, settings.most))
        .flatMap((choice, index) => choiceRuns(choice, index, finding, findings.machine, width)),
    ];
  }),
);

/** The turn, and after how few turns the plainest division comes nearest to closing. */
export function turnAndClosings({ handwheel, reading, dial }: HandwheelFinding, units: Units): string {
  const said = `One turn reads ${formatFixed((reading?.perTurn ?? 0) / mmPer[units], units === "mm" ? 4 : 5)} ${units}${handwheel.reads === "diameter" ? " on diameter" : ""}.`;
  if (dial === undefined) return said;
  return `${said} Divisions of ${dial.chosen.divisionLabel} come round: ${closingWords(dial.closings, units)}.`;
}

function choiceRuns(
  choice: DialChoice,
  index: number,
  finding: HandwheelFinding,
  machine: Machine,
  width: number,
): Run[] {
  const { dial } = finding;
  const chosen = dial?.chosen === choice;
  const kind = choice.rows > 1 ? ` in ${choice.rows} rows` : `, ${choice.closure}`;
  const title = `${index + 1}. ${choice.divisions} × ${choice.divisionLabel}${kind}${chosen ? (dial?.forced ? ": as the file asks" : ": chosen") : ""}`;
  const words = `${costWords(choice, machine.units)}. ${/apart/.test(others(choice)) ? "" : `Marks ${formatSize(choice.spacing, machine.units)} apart. `}${others(choice)}`;
  const picture = excerpt(choice, finding, Math.min(width, 120));
  return together([
    ...paragraph(title, width, { size: size.body, weight: chosen ? "bold" : "regular", gap: 2.6 }),
    ...paragraph(capital(words), width, { size: size.small }),
    ...(picture ? [{ drawing: { ...picture, width }, gap: 0.8 }] : []),
  ]);
}

/** What the cost does not say already. */
function others({ remarks }: DialChoice): string {
  const rest = remarks.filter((remark) => !/closes|reads .* too|the feed itself|starts again/.test(remark));
  return rest.length === 0 ? "" : `${capital(rest.join("; "))}.`;
}

/** The marks about the zero, at true size on the dial's reading circle, laid straight. */
function excerpt(choice: DialChoice, { reading, dial }: HandwheelFinding, room: number) {
  const flat = dial?.flat;
  if (flat === undefined || dial === undefined || reading === undefined) return undefined;
  const rows = graduations(choice, reading.perTurn);
  if (rows.length === 0) return undefined;
  const perRadian = paperPerRadian(flat);
  const span = Math.min(TURN, room / perRadian);
  const from = span < TURN ? -0.3 * span : 0;
  const height = 5.2;
  const surface = stripSurface(perRadian, height * rows.length, { from, to: from + span, growth: growthOf(dial) });
  const marks = rows.flatMap((row, index) => {
    const here = row.flatMap((mark) =>
      [mark.angle - TURN, mark.angle]
        .filter((angle) => angle >= from && angle <= from + span)
        .map((angle) => ({ ...mark, angle })),
    );
    const style: ScaleStyle = { across: index * height, marks: [2.6, 2, 1.4], number: 1.9 };
    return [surface.rule(index * height, fine), ...scaleMarks(surface, here, style)];
  });
  return { width: surface.width, height: surface.height, marks };
}
