import { drillSizes } from "../cutting/drillSizes.js";
import type { Machine } from "../machine/machine.js";
import { figureAsGiven } from "../machine/written.js";
import type { DrillName } from "../quantity/drill.js";
import { unitName } from "../quantity/format.js";
import { say } from "../words/say.js";
import { makesHoles } from "./drills.js";

/** A diameter that an operation is told for, without its unit: as the file gives it, by number or letter too; a drill of an inch machine that the file does
 *  not give by the fraction that is stamped on it. */
export function sizeName(operation: string, mm: number, machine: Machine): string {
  const { units, written } = machine;
  const stamped = stampedOn(operation, mm, machine);
  if (stamped !== undefined) return typeof stamped === "number" ? numberDrill(stamped) : stamped;
  const fraction =
    makesHoles(operation) && units === "in" && !written?.has(mm)
      ? drillSizes("fraction", mm - 1e-6, mm + 1e-6)[0]
      : undefined;
  return fraction?.name ?? figureAsGiven(mm, machine);
}

/** The same with its unit: "5 mm", "3/8 in", "letter F"; a size that the file gives in the other unit has that. */
export function sizeWords(operation: string, mm: number, machine: Machine): string {
  const stamped = stampedOn(operation, mm, machine);
  if (stamped !== undefined) return drillOnPaper(stamped);
  const name = sizeName(operation, mm, machine);
  return /[a-z"]$/i.test(name) ? name : `${name} ${unitName(machine.units)}`;
}

/** "no. 21", "letter F". */
export const drillOnPaper = (stamped: DrillName): string =>
  typeof stamped === "number" ? numberDrill(stamped) : say("drilling card.letter drill", { letter: stamped });

const stampedOn = (operation: string, mm: number, { work }: Machine): DrillName | undefined =>
  makesHoles(operation) ? work.drillNames?.get(mm) : undefined;

const numberDrill = (number: number): string => say("drilling card.number drill", { number });
