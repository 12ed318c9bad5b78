import { kindOfFile, LARGEST, sizeWords } from "../inside.js";
import { add, type Desk } from "./desk.js";

/** Opens files of the reader's; what is none of ours is refused and said, before it can fill the page. */
export async function open(desk: Desk, files: FileList | null | undefined): Promise<void> {
  const refused: string[] = [];
  for (const file of [...(files ?? [])]) {
    const name = safeName(file.name);
    const text = file.size > LARGEST ? undefined : await textOf(file);
    if (file.size > LARGEST)
      refused.push(`“${name}” has ${sizeWords(file.size)}: no file of more than ${sizeWords(LARGEST)} is opened.`);
    else if (text === undefined)
      refused.push(`“${name}” is no text: open a machine’s file, a job, or a CSV with readings.`);
    else add(desk, kindOfFile(name, text), name, text);
  }
  desk.refused.value = refused;
}

/** A file's text; undefined where it cannot be read, or holds what no text does. Letters of another encoding than UTF-8 become the
 *  sign for what is unknown, as on the command line. */
async function textOf(file: File): Promise<string | undefined> {
  try {
    const text = await file.text();
    return /[^\P{Cc}\s\x85]/u.test(text) ? undefined : text;
  } catch {
    return undefined;
  }
}

/** A name that leads nowhere and can be written on every system: without folders, signs that a system keeps for itself or that turn
 *  text about, and with an ending of ours, since what is taken away bears it again. */
export function safeName(name: string): string {
  const last = (name.split(/[/\\]/).at(-1) ?? "").replace(/[\p{Cc}\p{Cf}\p{Cs}<>:"|?*]/gu, "").trim();
  const ending = /\.(?:ya?ml|csv|tsv|txt)$/i.exec(last)?.[0] ?? "";
  const stem = last.slice(0, last.length - ending.length).replace(/^[. ]+|[. ]+$/g, "");
  return `${[...stem].slice(0, 80).join("") || "file"}${ending || ".yaml"}`;
}
