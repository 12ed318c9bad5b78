import { BY_USE } from "../cutting/operations.js";
import type { HandwheelFinding } from "../findings/findings.js";
import { usesOf } from "../findings/uses.js";
import type { Machine } from "../machine/machine.js";
import { noSuchWheel } from "../machine/noSuchWheel.js";
import type { Template, TemplateBlock } from "./template.js";

const same = (a: string, b: string): boolean => a.toLowerCase() === b.toLowerCase();

/** A handwheel that a block is to be about and that this machine has not; a template is read before any machine. */
export function unknownWheel(
  { blocks }: Template,
  { handwheels }: Machine,
): { readonly missing: string; readonly at: string } | undefined {
  const known = handwheels.map(({ name }) => name);
  const stray = blocks.find(({ handwheel }) => handwheel && !known.some((name) => same(name, handwheel.name)));
  if (stray?.handwheel === undefined) return undefined;
  const { name, at } = stray.handwheel;
  const { what, remedy } = noSuchWheel(name, known);
  return { missing: `${what}; ${remedy}`, at };
}

/** Of these the one that a block is about; all where it names none. */
export const wheelsOf = (
  { handwheel }: TemplateBlock,
  handwheels: readonly HandwheelFinding[],
): readonly HandwheelFinding[] =>
  handwheel === undefined ? handwheels : handwheels.filter((one) => same(one.handwheel.name, handwheel.name));

/** A block's settings as they are for this machine: the handwheel's name as its file spells it, an operation by what it is used for. */
export const settingsFor = (
  { settings, handwheel, for: use }: TemplateBlock,
  machine: Machine,
): Readonly<Record<string, unknown>> => ({
  ...settings,
  ...(handwheel !== undefined &&
    Object.hasOwn(settings, "handwheel") && {
      handwheel: machine.handwheels.find(({ name }) => same(name, handwheel.name))?.name ?? "",
    }),
  ...(settings.operation === BY_USE && { operation: use ?? usesOf(machine)[0] }),
});
