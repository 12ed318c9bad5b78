import { isMap, isScalar, isSeq, LineCounter, type Node, type Pair, parseDocument, visit } from "yaml";
import type * as z from "zod";
import { assemble } from "./assemble.js";
import { closest } from "./closest.js";
import type { Machine } from "./machine.js";
import type { Path, Places, Problem, Remark } from "./problem.js";
import { machineFile } from "./schema.js";

export type MachineReading = {
  readonly machine?: Machine;
  readonly problems: readonly Problem[];
  readonly places: Places;
};

/** A larger file is no machine file; it would only keep the user waiting. */
const largestFile = 4_000_000;
const mostProblems = 50;

/** Reads a machine file: the only place that knows YAML and line numbers. All problems come at once, in the file's order;
 *  `machine` is there when none of them is an error. Never throws, whatever the text. */
export function readMachine(text: string): MachineReading {
  if (text.length > largestFile)
    return refuse("too-large", "the file is larger than 4 MB", "name the machine file itself");
  if (text.includes("\u0000")) return refuse("not-text", "the file is not text", "save it as plain text, UTF-8");
  const lines = new LineCounter();
  const document = parseDocument(text, {
    lineCounter: lines,
    strict: true,
    uniqueKeys: true,
    maxAliasCount: 0,
    logLevel: "error",
  } as Parameters<typeof parseDocument>[1]);
  const at = (offset: number) => {
    const { line, col } = lines.linePos(offset);
    return { line: Math.max(1, line), column: Math.max(1, col) };
  };
  if (document.errors.length > 0) {
    const problems = document.errors.map((error) => ({
      ...problemAt(at(error.pos[0]), "yaml", yamlWords(error.code, error.message), yamlRemedy(error.code)),
    }));
    return { problems: limited(problems), places: () => ({ line: 1, column: 1 }) };
  }
  const root = document.contents;
  const places: Places = (path) => at(offsetOf(root, path));
  const problems: Problem[] = [];
  const report = ({ path, ...remark }: Remark) => problems.push({ ...remark, ...places(path) });

  visit(document, {
    Alias: (_, node) =>
      void problems.push(
        problemAt(
          at(node.range?.[0] ?? 0),
          "alias",
          "the file refers back to an earlier part (*name)",
          "write the values out",
        ),
      ),
  });
  if (problems.length > 0) return { problems: limited(problems), places };
  if (!isMap(root))
    return refuse(
      "not-a-machine",
      "this is not a machine file: it must be keys and values",
      "begin with a line such as  name: Bench lathe",
    );

  const parsed = machineFile.safeParse(document.toJS({ maxAliasCount: 0 }), { reportInput: true });
  if (!parsed.success) {
    for (const issue of parsed.error.issues) for (const remark of remarks(issue, [])) report(atKey(remark));
    return { problems: limited(problems), places };
  }
  const machine = assemble(parsed.data, report);
  const failed = problems.some(({ severity }) => severity === "error");
  return failed ? { problems: limited(problems), places } : { machine, problems: limited(problems), places };
}

/** `file:line:column: what is wrong; what would be right`. */
export function formatProblem({ line, column, what, remedy, severity }: Problem, fileName: string): string {
  return `${fileName}:${line}:${column}: ${severity === "warning" ? "mind: " : ""}${what}; ${remedy}`;
}

function refuse(code: string, what: string, remedy: string): MachineReading {
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

/** Where the value at a path begins; where there is none, where its nearest ancestor does. `keyMark` asks for the key itself. */
function offsetOf(root: unknown, path: Path): number {
  let node = root;
  let offset = (root as Node | null)?.range?.[0] ?? 0;
  for (const part of path) {
    if (typeof part === "string" && part.startsWith(keyMark)) {
      const pair = findPair(node, part.slice(keyMark.length));
      return (pair?.key as Node | undefined)?.range?.[0] ?? offset;
    }
    if (isMap(node)) {
      const pair = findPair(node, String(part));
      if (pair === undefined) return offset;
      node = pair.value;
      offset = (node as Node | null)?.range?.[0] ?? (pair.key as Node).range?.[0] ?? offset;
    } else if (isSeq(node)) {
      node = node.items[Number(part)];
      offset = (node as Node | null | undefined)?.range?.[0] ?? offset;
    } else return offset;
  }
  return offset;
}

const keyMark = "\u0000key:";
const findPair = (node: unknown, key: string): Pair | undefined =>
  isMap(node) ? (node.items as Pair[]).find((pair) => isScalar(pair.key) && String(pair.key.value) === key) : undefined;

/** An unknown key is shown at the key, not at its value. */
function atKey(remark: Remark & { readonly key?: string }): Remark {
  const { key, ...rest } = remark;
  return key === undefined ? rest : { ...rest, path: [...rest.path, keyMark + key] };
}

type Issue = z.core.$ZodIssue;

/** Our own words for what the schema found. */
function remarks(issue: Issue, base: Path): (Remark & { readonly key?: string })[] {
  const path = [...base, ...issue.path.map((part) => (typeof part === "symbol" ? String(part) : part))];
  const name = nameOf(path);
  const remark = (code: string, what: string, remedy: string) => [
    { severity: "error" as const, code, path, what, remedy },
  ];
  switch (issue.code) {
    case "unrecognized_keys":
      return issue.keys.map((key) => {
        const known = keysAt(path);
        const nearest = closest(key, known);
        const what = `"${key}" is not a key of ${path.length === 0 ? "a machine file" : name}`;
        return {
          severity: "error" as const,
          code: "unknown-key",
          path,
          key,
          what,
          remedy: nearest ? `did you mean "${nearest}"?` : `known are ${known.join(", ")}`,
        };
      });
    case "invalid_type":
      if (issue.input === undefined) return remark("missing", `${name} is missing`, "add it");
      return remark(
        "wrong-kind",
        `${name} cannot be ${shown(issue.input)}`,
        `it must be ${kinds[issue.expected] ?? issue.expected}`,
      );
    case "invalid_value":
      return suggestion(issue, path);
    case "invalid_union":
      return bestBranch(issue, path);
    case "too_small":
      return remark(
        "too-few",
        `${name} is ${Array.isArray(issue.input) ? "too short a list" : "too small"}`,
        `it needs at least ${issue.minimum}`,
      );
    case "too_big":
      return remark(
        "too-many",
        `${name} is ${Array.isArray(issue.input) ? "too long a list" : "too large"}`,
        `it may have at most ${issue.maximum}`,
      );
    case "custom": {
      const [what = "", remedy = ""] = issue.message.split("\u001f");
      return remark("bad-value", `${name}: ${what}`, remedy);
    }
    default:
      return remark("bad-value", `${name} cannot be ${shown(issue.input)}`, "see the starter file for an example");
  }
}

function suggestion(issue: Extract<Issue, { code: "invalid_value" }>, path: Path) {
  const values = issue.values.map(String);
  const nearest = typeof issue.input === "string" ? closest(issue.input, values) : undefined;
  const name = nameOf(path);
  if (issue.input === undefined)
    return [
      {
        severity: "error" as const,
        code: "missing",
        path,
        what: `${name} is missing`,
        remedy: `it is one of ${values.join(", ")}`,
      },
    ];
  return [
    {
      severity: "error" as const,
      code: "unknown-word",
      path,
      what: `${name} cannot be ${shown(issue.input)}`,
      remedy: nearest ? `did you mean "${nearest}"?` : `it is one of ${values.join(", ")}`,
    },
  ];
}

/** Of several forms that a value may have, the one that was evidently meant: not refused as a whole, with the fewest faults. */
function bestBranch(issue: Extract<Issue, { code: "invalid_union" }>, path: Path): Remark[] {
  const branches = issue.errors.map((issues) => issues.map((inner) => ({ inner, whole: refusesWhole(inner) })));
  const meant = branches.filter((branch) => !branch.some(({ whole }) => whole)).sort((a, b) => a.length - b.length)[0];
  if (meant) return meant.flatMap(({ inner }) => remarks(inner, path));
  if (issue.input === undefined)
    return [{ severity: "error", code: "missing", path, what: `${nameOf(path)} is missing`, remedy: "add it" }];
  const expected = [...new Set(branches.flat().flatMap(({ inner }) => expectedKinds(inner)))];
  return [
    {
      severity: "error",
      code: "wrong-kind",
      path,
      what: `${nameOf(path)} cannot be ${shown(issue.input)}`,
      remedy: `it must be ${expected.join(" or ")}`,
    },
  ];
}

const expectedKinds = (issue: Issue): string[] => {
  if (issue.code === "invalid_type") return [kinds[issue.expected] ?? issue.expected];
  return issue.code === "invalid_union" ? issue.errors.flat().flatMap(expectedKinds) : [];
};

/** True where the value as a whole is of another kind, rather than something inside it. */
const refusesWhole = (issue: Issue): boolean =>
  issue.path.length === 0 &&
  (issue.code === "invalid_type" ||
    (issue.code === "invalid_union" && issue.errors.every((branch) => branch.some(refusesWhole))));

const kinds: Readonly<Record<string, string>> = {
  string: "a word",
  number: "a number",
  array: "a list",
  object: "keys and values",
  tuple: "a list of two",
  record: "names with their values",
  boolean: "true or false",
};

function shown(value: unknown): string {
  if (value === null) return "empty";
  const text = JSON.stringify(value) ?? String(value);
  return text.length > 40 ? `${text.slice(0, 37)}…` : text;
}

/** The last key of a path, with the place in its list: "turns", "reading 3 of travel". */
function nameOf(path: Path): string {
  const last = path.at(-1);
  if (last === undefined) return "the file";
  if (typeof last === "string") return last;
  const list = path.slice(0, -1).findLast((part) => typeof part === "string");
  return `entry ${last + 1} of ${list ?? "the list"}`;
}

/** Keys that the schema knows at a path. */
function keysAt(path: Path): string[] {
  let schemas: z.core.$ZodType[] = [machineFile];
  for (const part of path) schemas = schemas.flatMap((schema) => step(schema, part));
  return [...new Set(schemas.flatMap((schema) => shapesOf(schema).flatMap((shape) => Object.keys(shape))))];
}

type Def = {
  type: string;
  shape?: Record<string, z.core.$ZodType>;
  innerType?: z.core.$ZodType;
  element?: z.core.$ZodType;
  options?: z.core.$ZodType[];
  valueType?: z.core.$ZodType;
  in?: z.core.$ZodType;
};
const defOf = (schema: z.core.$ZodType): Def => schema._zod.def as unknown as Def;

function shapesOf(schema: z.core.$ZodType): Record<string, z.core.$ZodType>[] {
  const def = defOf(schema);
  if (def.shape) return [def.shape];
  return [def.innerType, def.in, ...(def.options ?? [])].flatMap((inner) => (inner ? shapesOf(inner) : []));
}

function step(schema: z.core.$ZodType, part: string | number): z.core.$ZodType[] {
  const def = defOf(schema);
  if (typeof part === "number" && def.element) return [def.element];
  if (def.shape?.[part]) return [def.shape[part]];
  if (def.valueType) return [def.valueType];
  return [def.innerType, def.in, ...(def.options ?? [])].flatMap((inner) => (inner ? step(inner, part) : []));
}

function yamlWords(code: string, message: string): string {
  if (code === "DUPLICATE_KEY") return "a key stands twice";
  if (code === "TAB_AS_INDENT") return "a tab is used to indent";
  return message.split(" at line ")[0]?.split("\n")[0]?.replace(/[.:]$/, "") ?? "this is not YAML";
}

function yamlRemedy(code: string): string {
  if (code === "DUPLICATE_KEY") return "keep one of them";
  if (code === "TAB_AS_INDENT") return "indent with spaces";
  return "mind indentation, colons, brackets and quotes near here";
}
