import { type DocumentKind, kindOfFile, LARGEST, sizeWords } from "../inside.js";
import { add, type Desk } from "./desk.js";
import type { View } from "./view.js";

/** Opens files of the reader's; what is none of ours is refused and said, before it can fill the page. What takes the place of
 *  another says so, since that is only an undo away. */
export async function open(desk: Desk, view: View, files: FileList | null | undefined): Promise<void> {
  const said: string[] = [];
  const kinds = new Set<DocumentKind>();
  let machine: string | undefined;
  for (const file of [...(files ?? [])]) {
    const name = safeName(file.name);
    const shown = plainName(file.name);
    const text = file.size > LARGEST ? undefined : await textOf(file);
    if (file.size > LARGEST)
      said.push(`“${shown}” has ${sizeWords(file.size)}: no file of more than ${sizeWords(LARGEST)} is opened.`);
    else if (text === undefined)
      said.push(`“${shown}” is no text: open a machine’s file, a job, or a CSV with readings.`);
    else {
      const kind = kindOfFile(name, text);
      const why = notOurs(kind, text) ?? (kind === "machine" && machine !== undefined ? second(machine) : undefined);
      if (why !== undefined) said.push(`“${shown}” was not taken: ${why}.`);
      else {
        said.push(...taken(desk, name, text));
        kinds.add(kind);
        if (kind === "machine") machine = shown;
      }
    }
  }
  desk.refused.value = said;
  // Who opens a job alone wants to see it.
  if (kinds.size === 1 && kinds.has("job")) view.go("Job");
}

const second = (machine: string): string =>
  `one machine lies on the desk at a time, and “${machine}” was opened with it and came first; to go over to this one, open it alone`;

/** Lays a file on the desk; what is to be said of that. */
function taken(desk: Desk, name: string, text: string): string[] {
  const kind = kindOfFile(name, text);
  const before = desk.documents
    .peek()
    .find((one) => one.kind === kind && (kind === "machine" || one.name.peek() === name));
  const [oldName, oldText] = [before?.name.peek(), before?.text.peek() ?? ""];
  const laid = add(desk, kind, name, text);
  if (kind === "job") desk.openJob(laid);
  return [
    ...(oldText.trim() === "" || oldText === text
      ? []
      : [
          `“${name}” stands in the place of “${oldName}”: until this page is closed, “undo” beside its name brings back what stood there.`,
        ]),
  ];
}

/** Why a text is none of our files, by its first words; undefined where it may be one. What is wrong in one that is, is told of it. */
function notOurs(kind: DocumentKind, text: string): string | undefined {
  if (text.trim() === "") return undefined;
  const head = text.split("\n").find((line) => line.trim() !== "") ?? "";
  if (kind === "readings" && !/turn|rev/i.test(head))
    return "it is no table of readings, whose first line names its columns, as  turns;travel;return";
  if (kind === "machine" && !/^["']?[\p{L}][\p{L} ]*["']?\s*:|^\s*\{/mu.test(text))
    return "it is neither a machine’s file nor a job nor a sheet, which are lines such as  name: My bench lathe";
  return undefined;
}

/** A file's text; undefined where it cannot be read, or holds what no text does. Letters of another encoding than UTF-8 become the
 *  sign for what is unknown, as on the command line: a browser's own `text()` goes by what stands at the start of a file instead. */
async function textOf(file: File): Promise<string | undefined> {
  try {
    const text = new TextDecoder().decode(await file.arrayBuffer());
    return /[^\P{Cc}\s\x85]/u.test(text) ? undefined : text;
  } catch {
    return undefined;
  }
}

/** The name that a reader gives a file of these, under an ending that it is read by again. */
export function givenName(name: string): string {
  const safe = safeName(name);
  return /\.ya?ml$/i.test(safe) ? safe : `${safe}.yaml`;
}

/** A name that leads nowhere: without folders, and signs that a system keeps for itself or that turn text about. */
const plainName = (name: string): string =>
  (name.split(/[/\\]/).at(-1) ?? "").replace(/[\p{Cc}\p{Cf}\p{Cs}<>:"|?*]/gu, "").trim() || "file";

/** One that can be written on every system, with an ending of ours, since what is taken away bears it again. */
export function safeName(name: string): string {
  const last = plainName(name);
  const ending = /\.(?:ya?ml|csv|tsv|txt)$/i.exec(last)?.[0] ?? "";
  const stem = last.slice(0, last.length - ending.length).replace(/^[. ]+|[. ]+$/g, "");
  return `${[...stem].slice(0, 80).join("") || "file"}${ending || ".yaml"}`;
}
