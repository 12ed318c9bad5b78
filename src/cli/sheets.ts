import { blockAbout, blockSettings, everySetting } from "../answers/blockSettings.js";
import { type BlockName, blocks } from "../blocks/registry.js";
import type { Block } from "../blocks/shared/block.js";
import type { Findings } from "../findings/findings.js";
import { closest } from "../machine/closest.js";
import { arrange } from "../sheets/arrange.js";
import { builtIn } from "../sheets/builtIn.generated.js";
import { needWords, type Template } from "../sheets/template.js";
import { inColumns, type Row } from "./inColumns.js";
import { type Io, Refusal, writeNew } from "./io.js";
import { load } from "./load.js";
import { packageText } from "./packageFiles.js";
import { report } from "./report.js";
import { builtInTemplate, isFile } from "./templates.js";

export type SheetsArgs = {
  /** A machine file, or where a copy goes. */
  readonly file: string | undefined;
  readonly copy: string | undefined;
  /** A block's name; empty for every block. */
  readonly blocks: string | undefined;
};

/** Tells of the sheets and the blocks that they are made of, or gives one to change. */
export async function sheets({ file, copy, blocks: asked }: SheetsArgs, io: Io): Promise<number> {
  if (copy !== undefined && asked !== undefined)
    throw new Refusal("--copy and --blocks do not go together; take one", 2);
  if (copy !== undefined) return copyTo(copy, file, io);
  if (asked !== undefined) {
    if (file !== undefined)
      throw new Refusal(`--blocks takes no file, and one block at a time; "${file}" is one word too many`, 2);
    for (const line of asked === "" ? everySetting() : blockSettings(blockNamed(asked))) io.out(line);
    return 0;
  }
  if (file === undefined) {
    for (const line of everySheet()) io.out(line);
    return 0;
  }
  if (builtIn.some(({ name }) => name === file))
    throw new Refusal(
      `${file} is a sheet, not a machine file; for its template: witnessmark sheets --copy ${file} mine.yaml`,
    );
  const { findings, problems } = await load(file);
  report(problems, file, io);
  if (findings === undefined) return 1;
  for (const line of sheetsOf(findings)) io.out(line);
  return 0;
}

function copyTo(sheet: string, file: string | undefined, io: Io): number {
  const { name, needs } = builtInTemplate(sheet);
  if (file === undefined)
    throw new Refusal(`say where the copy goes; for example: witnessmark sheets --copy ${name} mine.yaml`, 2);
  if (!isFile(file))
    throw new Refusal(`${file}: let its name end in .yaml; that is how print --sheet knows a file from a sheet`);
  const print = `witnessmark print lathe.yaml${needs === "job" ? " --job job.yaml" : ""} --sheet ${quoted(file)}`;
  writeNew(
    file,
    `${templateText(name).trimEnd()}\n# Print it:   ${print}\n# Other blocks and settings:   witnessmark sheets --blocks\n`,
  );
  io.out(`${file} written. Change it, then: ${print}`);
  return 0;
}

const quoted = (path: string): string => (/\s/.test(path) ? `"${path}"` : path);
const templateText = (name: string): string => packageText("templates", "sheets", `${name}.yaml`);

/** What a sheet shows is the first line of its template, a comment. */
const shownBy = (name: string): string => /^# (.+)/.exec(templateText(name))?.[1] ?? "";

function blockNamed(name: string): BlockName {
  if (Object.hasOwn(blocks, name)) return name as BlockName;
  const names = Object.keys(blocks);
  const nearest = closest(name, names);
  throw new Refusal(
    `there is no block "${name}"; ${nearest ? `did you mean ${nearest}?` : `there are ${names.join(", ")}`}`,
  );
}

const blockNames = Object.keys(blocks) as BlockName[];
const usual = builtIn.filter(({ onRequest }) => !onRequest);
const onRequest = builtIn.filter((one) => one.onRequest);

function everySheet(): string[] {
  const row = ({ name, needs, for: use }: Template): Row =>
    [
      name,
      `${shownBy(name)}${needs === "nothing" ? "" : ` Needs ${needWords[needs]}.`}${use === undefined ? "" : ` For ${use} only.`}`,
    ] as const;
  return [
    "Sheets, made when the file has what they need",
    ...inColumns(usual.map(row)),
    "",
    "Only when asked for by name: witnessmark print lathe.yaml --sheet NAME",
    ...inColumns(onRequest.map(row)),
    "",
    "Blocks, of which sheets are made",
    ...inColumns(blockNames.map(blockRow)),
    "",
    "Which of them a machine gets:   witnessmark sheets lathe.yaml",
    "A sheet to change:              witnessmark sheets --copy belt-card mine.yaml",
    'Every setting of a block:       witnessmark sheets --blocks "drill bars"',
  ];
}

const blockRow = (name: BlockName): Row => [name, blockAbout(name)];

/** Which sheets and blocks this machine gets, and why not the others. */
function sheetsOf(findings: Findings): string[] {
  const results = builtIn.map((template) => ({ template, result: arrange(findings, template) }));
  const made = results.filter(({ result }) => "print" in result).map(({ template }) => template);
  const absent = results.flatMap(({ template: { name }, result }) =>
    "missing" in result ? [[name, result.missing] as const] : [],
  );
  const row = ({ name }: Template): Row => [name, shownBy(name)];
  const empty = blockNames.filter((name) => "missing" in arrange(findings, sheetOf(name)));
  const part = (head: string, rows: readonly Row[]) => (rows.length === 0 ? [] : ["", head, ...inColumns(rows)]);
  return [
    `${findings.machine.name}: ${made.length} of ${builtIn.length} sheets`,
    ...part("Made", made.filter((one) => !one.onRequest).map(row)),
    ...part("When asked for by name", made.filter((one) => one.onRequest).map(row)),
    ...part("Not made", absent),
    ...part("Blocks that have nothing to show", empty.map(blockRow)),
  ];
}

/** A sheet of that block alone, with the first of what must be chosen. */
function sheetOf(block: BlockName): Template {
  const { defaults, allowed } = blocks[block] as Block;
  const chosen = Object.entries(allowed).flatMap(([key, words]) =>
    defaults[key] === "" && words ? [[key, words[0]]] : [],
  );
  return {
    ...{ name: block, title: block, needs: "nothing", orientation: "portrait" },
    ...{ checkBars: false, bare: false, uncorrected: false, onRequest: false },
    blocks: [
      { block, settings: { ...defaults, ...(block === "words" && { text: block }), ...Object.fromEntries(chosen) } },
    ],
  };
}
