import {
  isMap,
  isScalar,
  isSeq,
  LineCounter,
  type Node,
  type Pair,
  parseDocument,
  type Scalar,
  visit,
  type YAMLMap,
} from "yaml";
import type * as z from "zod/mini";
import { misreadings } from "./asWritten.js";
import { MOST } from "./bounds.js";
import { inUnitsOf } from "./fields.js";
import { hiddenSign } from "./hiddenSign.js";
import { issueRemarks, type KeyRemark } from "./issueWords.js";
import type { Path, Places, Problem, Remark } from "./problem.js";
import { soundParts, startsWith } from "./soundParts.js";
import { yamlFault } from "./yamlWords.js";

export type DocumentReading<T> = { readonly value?: T; readonly problems: readonly Problem[]; readonly places: Places };

/** What kind of file it is. */
export type DocumentKind = {
  /** For messages: "machine file", and a first line to begin with. */
  readonly noun: string;
  readonly begin: string;
  /** Keys that it must have and that nothing else is judged by, with a value that stands in for a faulty one. */
  readonly standIns: Readonly<Record<string, string>>;
  /** Another kind of file that is given for it by mistake: keys of which it has two or more, and what to do then. */
  readonly mistaken: readonly { readonly keys: readonly string[]; readonly noun: string; readonly remedy: string }[];
};

const mostProblems = 50;

/** Reads a YAML file against a schema, then lets `assemble` judge the whole: the only place that knows YAML and line numbers.
 *  All problems come at once, in the file's order; `value` is there when none of them is an error. Never throws. */
export function readDocument<S extends z.ZodMiniType, T>(
  text: string,
  schema: S,
  kind: DocumentKind,
  assemble: (file: z.output<S>, report: (remark: Remark) => void) => T,
): DocumentReading<T> {
  if (text.length > MOST.letters)
    return refuse("too-large", `the file has more than ${MOST.letters} letters`, `name the ${kind.noun} itself`);
  if (text.includes("\u0000"))
    return refuse(
      "not-text",
      "the file is not plain text in UTF-8",
      "save it again as plain text, with encoding UTF-8",
    );
  const lines = new LineCounter();
  const document = parseDocument(text, {
    lineCounter: lines,
    strict: true,
    uniqueKeys: false, // judged below: yaml compares every key with every other
    maxAliasCount: 0,
    logLevel: "error",
  } as Parameters<typeof parseDocument>[1]);
  const foreign = text.indexOf("\uFFFD");
  const at = (offset: number) => {
    const { line, col } = lines.linePos(offset);
    return { line: Math.max(1, line), column: Math.max(1, col) };
  };
  if (foreign >= 0)
    return {
      problems: [
        problemAt(
          at(foreign),
          "not-text",
          "a letter here is not in UTF-8",
          "save the file again with encoding UTF-8, then look at its °, µ, ½ and letters with accents",
        ),
      ],
      places: () => ({ line: 1, column: 1 }),
    };
  if (document.errors.length > 0)
    return { problems: yamlProblems(document.errors), places: () => ({ line: 1, column: 1 }) };
  const root = document.contents;
  const places: Places = (path) => {
    const { offset, leftOut } = offsetOf(root, path);
    return { ...at(offset), ...(leftOut && { leftOut }) };
  };
  const problems: Problem[] = [];
  const report = (remark: Remark) => problems.push({ ...remark, ...at(offsetOf(root, remark.path).offset) });

  visit(document, {
    Map: (_, map) => {
      for (const key of repeatedKeys(map))
        problems.push(
          problemAt(at(key.range?.[0] ?? 0), "yaml", `the key "${keyText(key)}" stands twice`, "keep one of them"),
        );
    },
    Alias: (_, node) =>
      void problems.push(
        problemAt(
          at(node.range?.[0] ?? 0),
          "alias",
          "the file refers back to an earlier part (*name)",
          "write the values out",
        ),
      ),
    Scalar: (_, { value, range }) => {
      const hidden = typeof value === "string" ? hiddenSign(value) : undefined;
      if (hidden !== undefined)
        problems.push(
          problemAt(at(range?.[0] ?? 0), "hidden-sign", `${hidden} stands in this text`, "type the text anew"),
        );
    },
  });
  if (problems.length > 0) return { problems: limited(problems), places };
  if (!isMap(root))
    return refuse(
      "not-a-machine",
      `this is not a ${kind.noun}: it must be keys and values`,
      `begin with a line such as  ${kind.begin}`,
    );

  const garbled = /Ã[\u0080-\u00BF]|Â[\u0080-\u00BF]|â€/.exec(text);
  if (garbled)
    problems.push({
      ...problemAt(
        at(garbled.index),
        "not-text",
        `"${garbled[0]}" looks like a sign that was saved in one encoding and read in another`,
        "write the sign anew and save the file as UTF-8",
      ),
      severity: "warning",
    });
  const keys = root.items.flatMap(({ key }) => (isScalar(key) ? [keyText(key)] : []));
  const other = kind.mistaken.find((one) => one.keys.filter((key) => keys.includes(key)).length > 1);
  if (other !== undefined) return refuse("other-file", `this is a ${other.noun}, not a ${kind.noun}`, other.remedy);

  for (const { offset, ...misreading } of misreadings(root, text, schema))
    problems.push({ ...misreading, ...at(offset) });
  const file: unknown = document.toJS({ maxAliasCount: 0 });
  const parsed = schema.safeParse(file, { reportInput: true });
  if (!parsed.success) {
    const units = document.get("units") === "in" ? "in" : "mm";
    const remarks = parsed.error.issues
      .flatMap((issue) => issueRemarks(issue, schema, kind.noun))
      .map((one) => ({ ...one, remedy: inUnitsOf(units, one.remedy) }));
    for (const { key, meant: _, ...remark } of remarks) {
      const { path } = remark;
      // An unknown key is shown at the key, not at its value.
      if (key === undefined) report(remark);
      else problems.push({ ...remark, path: [...path, key], ...places([...path, keyMark + key]) });
    }
    // Every fault would be told twice over where there are very many.
    if (remarks.length <= mostProblems) judgeRest(remarks);
    return { problems: limited(problems), places };
  }
  const value = assemble(parsed.data, report);
  const failed = problems.some(({ severity }) => severity === "error");
  return failed ? { problems: limited(problems), places } : { value, problems: limited(problems), places };

  /** Faults of the whole, as far as they do not follow from those of single values. */
  function judgeRest(remarks: readonly KeyRemark[]): void {
    const rest = soundParts(file, remarks, schema, kind.standIns);
    // Without its unit no number of the file means anything.
    if (rest === undefined || remarks.some(({ path }) => path[0] === "units")) return;
    assemble(rest.file, (remark) => {
      const follows =
        remark.severity === "warning" ||
        (remark.code.startsWith("unknown-") && mayBeOut(remark.code, rest.touched)) ||
        rest.touched.some((path) => startsWith(path, remark.path) || startsWith(remark.path, path));
      if (!follows) report({ ...remark, path: rest.original(remark.path) });
    });
  }

  function yamlProblems(errors: typeof document.errors): Problem[] {
    const first = new Map<number, Problem>();
    for (const { code, message, pos } of errors.slice(0, mostProblems)) {
      const { offset, what, remedy } = yamlFault(text, code, message, pos[0]);
      const place = at(offset);
      // The parser stumbles on after a fault: of one line the first tells it.
      if (!first.has(place.line)) first.set(place.line, problemAt(place, "yaml", what, remedy));
    }
    return limited([...first.values()]);
  }
}

/** The part of the file that a name refers to. */
const refersTo: Readonly<Record<string, string>> = {
  "unknown-printer": "printers",
  "unknown-handwheel": "handwheels",
  "unknown-turn": "handwheels",
  "unknown-position": "drive",
  "unknown-label": "drive",
};

/** What a name refers to may be what was taken out. */
function mayBeOut(code: string, touched: readonly Path[]): boolean {
  const part = Object.hasOwn(refersTo, code) ? refersTo[code] : undefined;
  return part === undefined || touched.some((path) => path[0] === part);
}

function refuse(code: string, what: string, remedy: string): DocumentReading<never> {
  return { problems: [problemAt({ line: 1, column: 1 }, code, what, remedy)], places: () => ({ line: 1, column: 1 }) };
}

const problemAt = (place: { line: number; column: number }, code: string, what: string, remedy: string): Problem => ({
  severity: "error",
  code,
  ...place,
  what,
  remedy,
});

function limited(problems: readonly Problem[]): Problem[] {
  const sorted = [...problems].sort((a, b) => a.line - b.line || a.column - b.column);
  if (sorted.length <= mostProblems) return sorted;
  const rest = sorted.length - mostProblems;
  const last = sorted[mostProblems] as Problem;
  return [
    ...sorted.slice(0, mostProblems),
    { ...last, code: "more", what: `${rest} more problems from here on`, remedy: "mend those above first" },
  ];
}

/** Where the value at a path begins; where there is none, where its nearest ancestor does, and that it was left out: also of a single
 *  value that stands for a whole map, as `feed: 10 tpi` does. `keyMark` asks for the key itself. */
function offsetOf(root: unknown, path: Path): { readonly offset: number; readonly leftOut?: true } {
  let node = root;
  let offset = (root as Node | null)?.range?.[0] ?? 0;
  for (const part of path) {
    if (typeof part === "string" && part.startsWith(keyMark)) {
      const pair = findPair(node, part.slice(keyMark.length));
      return { offset: (pair?.key as Node | undefined)?.range?.[0] ?? offset };
    }
    if (isMap(node)) {
      const pair = findPair(node, String(part));
      if (pair === undefined) return { offset, leftOut: true };
      node = pair.value;
      offset = (node as Node | null)?.range?.[0] ?? (pair.key as Node).range?.[0] ?? offset;
    } else if (isSeq(node)) {
      node = node.items[Number(part)];
      offset = (node as Node | null | undefined)?.range?.[0] ?? offset;
    } else return { offset, leftOut: true };
  }
  return { offset };
}

const keyMark = "\u0000key:";
const pairsOf = new WeakMap<YAMLMap, Map<string, Pair>>();

/** The pair of a key, by a list made once for each map: a file of many faults asks often. */
function findPair(node: unknown, key: string): Pair | undefined {
  if (!isMap(node)) return undefined;
  let pairs = pairsOf.get(node);
  if (pairs === undefined) {
    pairs = new Map((node.items as Pair[]).flatMap((pair) => (isScalar(pair.key) ? [[keyText(pair.key), pair]] : [])));
    pairsOf.set(node, pairs);
  }
  return pairs.get(key);
}

/** As a key of a plain object reads it: no value is the empty word. */
export const keyText = (key: Scalar): string => (key.value === null ? "" : String(key.value));

export function repeatedKeys(map: YAMLMap): Scalar[] {
  const seen = new Set<string>();
  return map.items.flatMap(({ key }) => {
    if (!isScalar(key)) return [];
    const text = keyText(key);
    if (seen.has(text)) return [key];
    seen.add(text);
    return [];
  });
}
