import type * as z from "zod/mini";
import type { KeyRemark } from "./issueWords.js";
import type { Path } from "./problem.js";

/** What is left of a faulty file, so that the whole is judged in the same round as its parts. */
export type SoundParts<T> = {
  readonly file: T;
  /** Values that were taken out, and those that were read under the key that was meant. */
  readonly touched: readonly Path[];
  /** Where a path of what is left stands in the file as it was written. */
  readonly original: (path: Path) => Path;
};

type Parent = Record<string | number, unknown>;
const removed = Symbol("removed");
/** Each round takes out what the last one laid bare: a part that lacks what it needs. */
const mostRounds = 12;

/** Takes the faulty values out, and what cannot be without them; a mistyped key is read as the one that was meant. Undefined
 *  where nothing is left that could be judged. `copy`: plain data of the file, which is changed. `standIns`: for what no file
 *  can be without, and nothing else is judged by. */
export function soundParts<S extends z.ZodMiniType>(
  copy: unknown,
  faults: readonly KeyRemark[],
  schema: S,
  standIns: Readonly<Record<string, string>>,
): SoundParts<z.output<S>> | undefined {
  const touched: Path[] = [];
  const renamed: { readonly at: Path; readonly key: string }[] = [];
  const parentOf = (path: Path): Parent | undefined =>
    path.slice(0, -1).reduce<unknown>((node, part) => (node as Parent | undefined)?.[part], copy) as Parent | undefined;

  function takeOut(path: Path): boolean {
    const last = path.at(-1);
    if (last === undefined) return false;
    const standIn = path.length === 1 && Object.hasOwn(standIns, last) ? standIns[last] : undefined;
    if (standIn !== undefined && typeof copy === "object" && copy !== null) {
      (copy as Parent)[last] = standIn;
      touched.push(path);
      return true;
    }
    const parent = parentOf(path);
    if (typeof parent !== "object" || parent === null || !Object.hasOwn(parent, last))
      return takeOut(path.slice(0, -1));
    // A list of values is judged as one; of a list of parts only the faulty part goes.
    if (Array.isArray(parent) && parent.some((one) => one !== removed && (typeof one !== "object" || one === null)))
      return takeOut(path.slice(0, -1));
    touched.push(path);
    if (Array.isArray(parent)) (parent as Parent)[last] = removed;
    else delete parent[last];
    return true;
  }

  function rename(path: Path, key: string, meant: string | undefined): void {
    const holder = parentOf([...path, key]);
    if (typeof holder !== "object" || holder === null) return;
    const value = holder[key];
    delete holder[key];
    touched.push([...path, key]);
    if (meant === undefined || Object.hasOwn(holder, meant)) return;
    holder[meant] = value;
    touched.push([...path, meant]);
    renamed.push({ at: [...path, meant], key });
  }

  for (const { path, key, meant } of faults) {
    if (key !== undefined) rename(path, key, meant);
    else if (!takeOut(path)) return undefined;
  }
  for (let round = 0; round < mostRounds; round++) {
    const places = new Map<string, number[]>();
    const parsed = schema.safeParse(compact(copy, [], places));
    const original = (path: Path): Path => asWritten(inFile(path, places), renamed);
    if (parsed.success) return { file: parsed.data, touched, original };
    for (const { path } of parsed.error.issues)
      if (!takeOut(inFile(path as (string | number)[], places))) return undefined;
  }
  return undefined;
}

/** Lists without what was taken out of them; `places`: where the entries of each list that was shortened stood. */
function compact(node: unknown, path: Path, places: Map<string, number[]>): unknown {
  if (Array.isArray(node)) {
    if (!node.some((item) => typeof item === "object" || item === removed)) return node;
    const kept = node.flatMap((item, index) => (item === removed ? [] : [index]));
    if (kept.length < node.length) places.set(JSON.stringify(path), kept);
    return kept.map((index) => compact(node[index], [...path, index], places));
  }
  if (typeof node !== "object" || node === null) return node;
  return Object.fromEntries(Object.entries(node).map(([key, value]) => [key, compact(value, [...path, key], places)]));
}

const inFile = (path: Path, places: ReadonlyMap<string, number[]>): Path =>
  path.map((part, depth) => {
    const list = path.slice(0, depth);
    // Lists are known by where they stood in the file.
    const kept = typeof part === "number" ? places.get(JSON.stringify(inFile(list, places))) : undefined;
    return kept?.[part as number] ?? part;
  });

const asWritten = (path: Path, renamed: readonly { readonly at: Path; readonly key: string }[]): Path =>
  renamed.reduce<Path>(
    (found, { at, key }) =>
      startsWith(path, at) ? [...found.slice(0, at.length - 1), key, ...found.slice(at.length)] : found,
    path,
  );

export const startsWith = (path: Path, beginning: Path): boolean =>
  beginning.every((part, index) => path[index] === part);
