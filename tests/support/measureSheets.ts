import { readdirSync, readFileSync } from "node:fs";
import { blocks } from "../../src/blocks/registry.js";
import type { Block, Run } from "../../src/blocks/shared/block.js";
import { materialCautions } from "../../src/blocks/shared/materialCautions.js";
import type { Mark } from "../../src/drawing/drawing.js";
import type { Print } from "../../src/drawing/page.js";
import type { Findings } from "../../src/findings/findings.js";
import { arrange } from "../../src/sheets/arrange.js";
import { bind } from "../../src/sheets/binder.js";
import { readTemplate } from "../../src/sheets/readTemplate.js";
import type { Template } from "../../src/sheets/template.js";
import { say } from "../../src/words/say.js";
import { extent } from "./boxes.js";
import { type Flat, flatten } from "./flatMarks.js";
import { bodyExtent, type Fault, measureFlat } from "./measurePage.js";

/** A fault with its sheet and page, counted from 1. */
export type SheetFault = Fault & { readonly sheet: string; readonly page: number };
export type Measured = {
  readonly faults: readonly SheetFault[];
  readonly pages: number;
  readonly prints: readonly Print[];
  /** Sheets that were not made, and why. */
  readonly refused: readonly { readonly sheet: string; readonly why: string }[];
};

let known: readonly Template[] | undefined;

/** Every sheet that comes with the program, as its template stands now. */
export function templates(): readonly Template[] {
  known ??= readdirSync("templates/sheets").map((file) => {
    const name = file.replace(/\.yaml$/, "");
    const { template, problems } = readTemplate(readFileSync(`templates/sheets/${file}`, "utf8"), name);
    if (template === undefined) throw new Error(problems.join("\n"));
    return template;
  });
  return known;
}

/** All faults of all sheets of a machine and a job, and of the binder's own pages. */
export function measureSheets(findings: Findings, only?: readonly string[]): Measured {
  const faults: SheetFault[] = [];
  const refused: { sheet: string; why: string }[] = [];
  const prints: Print[] = [];
  const absent: { title: string; why: string }[] = [];
  for (const template of templates()) {
    if (only && !only.includes(template.name) && !only.includes("binder")) continue;
    try {
      const result = arrange(findings, template);
      if ("missing" in result) {
        refused.push({ sheet: template.name, why: result.missing });
        absent.push({ title: template.title, why: result.missing });
      } else prints.push(result.print);
    } catch (error) {
      faults.push({ sheet: template.name, page: 0, ...thrown(error) });
    }
  }
  const measured = prints.filter(({ sheet }) => !only || only.includes(sheet));
  if (!only || only.includes("binder"))
    try {
      const whole = bind(findings, prints, absent);
      const own = whole.sections?.[0]?.page ?? whole.pages.length;
      measured.push({ ...whole, pages: whole.pages.slice(0, own) });
    } catch (error) {
      faults.push({ sheet: "binder", page: 0, ...thrown(error) });
    }
  for (const print of measured) faults.push(...measurePrint(print, findings));
  return { faults, pages: measured.reduce((sum, { pages }) => sum + pages.length, 0), prints: measured, refused };
}

const thrown = (error: unknown): Fault => ({
  kind: "throws",
  what: error instanceof Error ? `${error.message} ${error.stack?.split("\n")[1]?.trim() ?? ""}` : String(error),
  at: { x: 0, y: 0 },
});

export function measurePrint(print: Print, findings: Findings): SheetFault[] {
  const { sheet, pages, outlines: engraved = false } = print;
  const flats = pages.map(({ drawing }) => flatten(drawing));
  return [
    ...pages.flatMap(({ drawing }, index) =>
      measureFlat(drawing, flats[index] as Flat, engraved).map((fault) => ({ ...fault, sheet, page: index + 1 })),
    ),
    ...emptyPages(print, flats).map((fault) => ({ ...fault, sheet })),
    ...pages.flatMap(({ drawing }, index) =>
      isCautionsAlone(drawing.marks, findings)
        ? [
            {
              kind: "cautions alone" as const,
              what: "nothing but cautions",
              at: { x: 0, y: 0 },
              sheet,
              page: index + 1,
            },
          ]
        : [],
    ),
  ];
}

const LEAST_USED = 1 / 4;
/** Between what is on a page and what might join it, mm. */
const GAP = 4;

/** Pages of several that use less than a quarter of their height. One with pieces to cut may, where what is on it found no room
 *  on another page. */
export function emptyPages(
  { pages }: Pick<Print, "pages">,
  flats = pages.map(({ drawing }) => flatten(drawing)),
): (Fault & { page: number })[] {
  if (pages.length < 2) return [];
  const heights = flats.map((flat, index) => {
    const own = bodyExtent(flat);
    const room = roomOf(flat, pages[index]?.drawing.height ?? 0);
    return { used: own ? own.bottom - own.top : 0, room, pieces: flat.cuts.some((cut) => !cut.card) };
  });
  return heights.flatMap(({ used, room, pieces }, index) => {
    if (used >= LEAST_USED * room) return [];
    const fitsElsewhere = heights.some((other, at) => at !== index && other.used + used + GAP <= other.room);
    if (pieces && !fitsElsewhere) return [];
    const what = `${used.toFixed(0)} mm used of ${room.toFixed(0)}`;
    return [{ kind: "page nearly empty" as const, what, at: { x: 0, y: 0 }, page: index + 1 }];
  });
}

/** Height that a sheet may fill: of its cards, else from the head of the page to its foot. */
function roomOf(flat: Flat, height: number): number {
  const cards = extent(flat.cuts.flatMap((cut) => (cut.card ? cut.outlines.flat() : [])));
  if (cards.bottom > cards.top) return cards.bottom - cards.top;
  const MARGIN = 10;
  const upright = flat.texts.filter(({ body, whole }) => !body && Math.abs(Math.sin(whole.turn)) < 0.1);
  const [head, foot] = [
    upright.flatMap(({ extent: { bottom } }) => (bottom < height / 5 ? [bottom] : [])),
    upright.flatMap(({ extent: { top } }) => (top > (height * 4) / 5 ? [top] : [])),
  ];
  return Math.min(height - MARGIN, ...foot) - Math.max(MARGIN, ...head);
}

/** Whether all that a page says stands in a caution. */
export function isCautionsAlone(marks: readonly Mark[], { machine, job }: Findings): boolean {
  const said = marks.flatMap((mark) => (mark.kind === "group" && mark.name === undefined ? wordsOf(mark.marks) : []));
  if (said.length === 0) return false;
  const sentences = cautionsOf([...machine.work.materials, ...(job ? [job.material] : [])]);
  return said.every((words) => sentences.includes(words));
}

const sentencesFor = new Map<string, string>();

function cautionsOf(materials: readonly string[]): string {
  // Sentences of another language are other sentences.
  const key = [say("cautions.eyes"), ...materials].join("\n");
  const made = sentencesFor.get(key);
  if (made !== undefined) return made;
  const wide = 100_000;
  const block = blocks.cautions as unknown as Block;
  // A lathe has every caution.
  const findings = { machine: { kind: "lathe" } } as Findings;
  const context = { findings, handwheels: [], use: "turning" as const, width: wide, height: wide };
  const runs: Run[] = [
    ...(block.allowed.of ?? []).flatMap((of) => block.draw({ ...context, settings: { of } })),
    ...(["mm", "in"] as const).flatMap((units) => materialCautions(materials, wide, { units })),
  ];
  const sentences = runs.flatMap(({ drawing }) => wordsOf(drawing.marks)).join("\n");
  sentencesFor.set(key, sentences);
  return sentences;
}

const wordsOf = (marks: readonly Mark[]): string[] =>
  marks.flatMap((mark) => (mark.kind === "text" ? [mark.text] : mark.kind === "group" ? wordsOf(mark.marks) : []));

/** One line of a report. */
export const faultLine = ({ sheet, page, kind, what, at }: SheetFault): string =>
  `${sheet} ${page}: ${kind}: ${what} at ${at.x.toFixed(1)}, ${at.y.toFixed(1)}`;

/** Faults counted by sheet and kind, most first, each with its first example. */
export function summary(faults: readonly SheetFault[]): string[] {
  const groups = new Map<string, SheetFault[]>();
  for (const fault of faults) {
    const key = `${fault.sheet}: ${fault.kind}`;
    groups.set(key, [...(groups.get(key) ?? []), fault]);
  }
  return [...groups]
    .sort(([, a], [, b]) => b.length - a.length)
    .map(([key, list]) => `${String(list.length).padStart(6)}  ${key}; as ${faultLine(list[0] as SheetFault)}`);
}
