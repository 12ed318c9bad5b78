import type { Print } from "../drawing/page.js";
import type { Machine, Printer } from "../machine/machine.js";
import type { Format } from "../output/formats.js";
import { render, type Tools } from "../output/render.js";

/** A file as it is written: its name, and what it holds. */
export type PrintedFile = { readonly name: string; readonly bytes: Uint8Array | string };

/** The printer that the machine's paper is printed on, as far as it was measured. */
export const printerOf = ({ paper, printers }: Pick<Machine, "paper" | "printers">): Printer | undefined =>
  paper.printer === undefined ? undefined : printers[paper.printer];

/** The files of prints, corrected for the printer that the machine file names. `stem`: what all their names begin with. */
export async function filesOf(
  prints: readonly Print[],
  { paper, printers }: Pick<Machine, "paper" | "printers">,
  { stem, format, tools }: { readonly stem: string; readonly format: Format; readonly tools: Tools },
): Promise<PrintedFile[]> {
  const printer = printerOf({ paper, printers });
  const files: PrintedFile[] = [];
  for (const print of prints)
    for (const { ending, bytes } of await render(print, format, printer, tools))
      files.push({
        name: `${[stem, print.sheet, ...(print.of === undefined ? [] : [print.of])].join("-")}${ending}`,
        bytes,
      });
  return files;
}
