import { type BlockName, blocks } from "../blocks/registry.js";
import type { Block } from "../blocks/shared/block.js";
import { uses } from "../findings/uses.js";
import { guideOf, type SettingGuide } from "../sheets/blockGuide.js";
import { usualMargin } from "../sheets/margins.js";
import { needs } from "../sheets/template.js";
import { wrapped } from "./wrapped.js";

/** Lines of YAML, each with what may stand there. A line without effect begins with #, for its sign to be taken out. */
export type SettingLine = readonly [yaml: string, comment: string];

const across = 80;

/** Every key of a sheet but its blocks. */
export function sheetKeys(): SettingLine[] {
  const { binding, other } = usualMargin;
  return [
    ["title: My sheet", "must be given"],
    ["needs: nothing", `without it the sheet is not made: ${needs.join(", ")}`],
    ["# for: turning", `only on machines with that use: ${uses.join(" or ")} (kind: in the machine file)`],
    [
      "orientation: portrait",
      "or landscape; or either: upright where so more pieces to cut stay whole, or fewer pages do",
    ],
    [
      `margin: { binding: ${binding}, other: ${other} }`,
      "binding: the left of an upright page, the top of one that lies across; one length is for all edges. A bare number is mm; any length may carry its unit: 10 mm, 0.5 in",
    ],
    [
      "# card: { width: 5 in, height: 180 mm, corner: 3 }",
      "a card to trim instead of the whole page; with needs: drive the machine's own drive.cover goes before it",
    ],
    ["# each: handwheel", "a run of pages for each"],
    [
      "# checkBars: true",
      "lengths to lay a rule on; left out: where a block has pieces to cut, so write false to do without",
    ],
    ["bare: false", "true: no head, no foot, letters as outlines"],
    ["uncorrected: false", "true: without the printer's correction"],
    ["onRequest: false", "true: only when asked for by name"],
  ];
}

/** Every key of a sheet, then every block with every setting, all as it is when left out: a template that can be read as it
 *  stands. */
export function everySetting(): string[] {
  const blocksKey: SettingLine[] = [
    ["blocks:", ""],
    ["  # Each block also takes  for: turning  or  for: drilling.", ""],
  ];
  return [
    ...[...sheetKeys(), ...blocksKey].flatMap((line) => told(line, "")),
    ...Object.keys(blocks).flatMap((name) => ["", ...blockSettings(name as BlockName)]),
  ];
}

/** One block with every setting, to be pasted into a template's list of blocks. */
export function blockSettings(name: BlockName): string[] {
  const lines = settingsOf(name);
  return [
    ...wrapped(blockAbout(name), across - 4).map((line) => `  # ${line}`),
    `  - ${name}${lines.length === 0 ? "" : ":"}`,
    ...lines.flatMap((line) => told(line, "      ")),
  ];
}

/** What a block shows, and what it needs for that. */
export function blockAbout(name: BlockName): string {
  const { shows, needs } = guideOf(name);
  return `${shows}${needs === "" ? "" : `; needs ${needs}`}`;
}

/** Every setting of a block. */
export function settingsOf(name: BlockName): SettingLine[] {
  const { defaults, allowed } = blocks[name] as Block;
  const { wheels, settings } = guideOf(name);
  const own = Object.entries(defaults).map(([key, value]): SettingLine => {
    const words = allowed[key];
    const shown = settings[key]?.needed ?? (value === "" && words?.[0] !== undefined ? words[0] : value);
    const unit = settings[key]?.is === "length" ? " mm" : "";
    return [`${key}: ${asYaml(shown)}${unit}`, `${settings[key]?.says}${mayBe(value, words, settings[key])}`];
  });
  return [
    ...own,
    ...(wheels && !Object.hasOwn(defaults, "handwheel")
      ? [["# handwheel: Cross slide", "this one alone; left out: all"] as const]
      : []),
  ];
}

/** The comment behind its line where there is room, else above it. */
function told([yaml, comment]: SettingLine, indent: string): string[] {
  const behind = `${indent}${yaml}`.padEnd(indent.length + 24);
  if (comment === "") return [`${indent}${yaml}`];
  if (behind.length + 3 + comment.length <= across) return [`${behind} # ${comment}`];
  // A list may go over several lines, those after the first further in.
  const [first = "", ...rest] = wrapped(yaml, across - indent.length - 2);
  return [
    ...wrapped(comment, across - indent.length - 2).map((line) => `${indent}# ${line}`),
    `${indent}${first}`,
    ...rest.map((line) => `${indent}  ${line}`),
  ];
}

function mayBe(value: unknown, allowed: readonly string[] | undefined, guide: SettingGuide | undefined): string {
  if (allowed !== undefined) return `: ${Array.isArray(value) ? "any of " : ""}${allowed.join(", ")}`;
  if (guide?.is === "length") return "; a length";
  if (guide?.is === "count") return "; a whole number";
  if (Array.isArray(value)) return "; a list of numbers";
  return { number: "; a number", boolean: "; true or false" }[typeof value as string] ?? "";
}

const asYaml = (value: unknown): string =>
  Array.isArray(value) ? `[${value.map(asYaml).join(", ")}]` : value === "" ? '""' : String(value);
