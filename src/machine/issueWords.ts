import type * as z from "zod/mini";
import { closest } from "./closest.js";
import { FAULT_PARTS } from "./fields.js";
import type { Path, Remark } from "./problem.js";
import { keysAt } from "./schemaPath.js";

/** A remark about a key rather than its value carries the key, and the one that was most likely meant. */
export type KeyRemark = Remark & { readonly key?: string; readonly meant?: string };

/** Our own words for what a schema found in a file of this kind. */
export const issueRemarks = (issue: z.core.$ZodIssue, root: z.core.$ZodType, noun: string): KeyRemark[] =>
  wordsFor(issue, [], root, noun);

type Issue = z.core.$ZodIssue;

/** Our own words for what the schema found. */
function wordsFor(issue: Issue, base: Path, root: z.core.$ZodType, noun: string): KeyRemark[] {
  const path = [...base, ...issue.path.map((part) => (typeof part === "symbol" ? String(part) : part))];
  const name = nameOf(path);
  const remark = (code: string, what: string, remedy: string) => [
    { severity: "error" as const, code, path, what, remedy },
  ];
  switch (issue.code) {
    case "unrecognized_keys":
      return issue.keys.map((key) => {
        const known = keysAt(path, root);
        const lostSpace = withLostSpace(key, known);
        if (lostSpace) return { severity: "error" as const, code: "unknown-key", path, key, ...lostSpace };
        const nearest = closest(key, known);
        const what = `"${key}" is not a key of ${path.length === 0 ? `a ${noun}` : name}`;
        return {
          severity: "error" as const,
          code: "unknown-key",
          path,
          key,
          ...(nearest && { meant: nearest }),
          what,
          remedy: nearest
            ? `did you mean "${nearest}"?`
            : `${pulleysOf(key, issue.input)}known are ${known.join(", ")}`,
        };
      });
    case "invalid_type":
      if (issue.input === undefined) return remark("missing", `${name} is missing`, "add it");
      return remark(
        "wrong-kind",
        `${name} cannot be ${shown(issue.input)}`,
        asList(issue.input, [issue.expected], path) ??
          `it must be ${kinds[issue.expected] ?? issue.expected}${example(path, issue.input)}`,
      );
    case "invalid_value":
      return suggestion(issue, path);
    case "invalid_union":
      return bestBranch(issue, path, root, noun);
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
      const [what = "", remedy = ""] = issue.message.split(FAULT_PARTS);
      return remark("bad-value", `${name}: ${what}`, remedy);
    }
    default:
      return remark("bad-value", `${name} cannot be ${shown(issue.input)}`, "see the starter file for an example");
  }
}

/** A step written as its name with both pulleys. */
function pulleysOf(key: string, input: unknown): string {
  const value = (input as Readonly<Record<string, unknown>> | undefined)?.[key];
  const [, driver, driven] =
    typeof value === "string" ? (/^(\d+(?:\.\d+)?)\s*[/:x]\s*(\d+(?:\.\d+)?)$/.exec(value) ?? []) : [];
  return driver === undefined ? "" : `write  { label: ${key}, driver: ${driver}, driven: ${driven} }; `;
}

/** A key that swallowed what a space should have parted from it. */
function withLostSpace(key: string, known: readonly string[]): { what: string; remedy: string } | undefined {
  const [, name, value] = /^([A-Za-z]+):(.+)$/.exec(key) ?? [];
  if (name !== undefined && known.includes(name))
    return { what: `there is no space after "${name}:"`, remedy: `write  ${name}: ${value}` };
  return /^-\S/.test(key)
    ? { what: "there is no space after the dash", remedy: `write  - ${key.slice(1)}` }
    : undefined;
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
function bestBranch(
  issue: Extract<Issue, { code: "invalid_union" }>,
  path: Path,
  root: z.core.$ZodType,
  noun: string,
): KeyRemark[] {
  const branches = issue.errors.map((issues) => issues.map((inner) => ({ inner, whole: refusesWhole(inner) })));
  const choice = inOne(branches.flat().map(({ inner }) => inner));
  if (choice && issue.input !== undefined) return suggestion({ ...choice, input: issue.input }, path);
  const meant = branches.filter((branch) => !branch.some(({ whole }) => whole)).sort((a, b) => a.length - b.length)[0];
  if (meant) return meant.flatMap(({ inner }) => wordsFor(inner, path, root, noun));
  if (issue.input === undefined)
    return [{ severity: "error", code: "missing", path, what: `${nameOf(path)} is missing`, remedy: "add it" }];
  const expected = [...new Set(branches.flat().flatMap(({ inner }) => expectedKinds(inner)))];
  return [
    {
      severity: "error",
      code: "wrong-kind",
      path,
      what: `${nameOf(path)} cannot be ${shown(issue.input)}`,
      remedy:
        asList(
          issue.input,
          expected.map((kind) => (kind === kinds.array ? "array" : kind)),
          path,
        ) ?? `it must be ${expected.join(" or ")}${example(path, issue.input)}`,
    },
  ];
}

/** Of several forms that are nothing but values, one choice of all; a bare number that is among them with its unit is named with it. */
function inOne(issues: readonly Issue[]): Extract<Issue, { code: "invalid_value" }> | undefined {
  const [first] = issues;
  const choices = issues.flatMap((issue) => (issue.code === "invalid_value" ? [issue.values] : []));
  if (first?.code !== "invalid_value" || choices.length < issues.length) return undefined;
  const all = choices.flat();
  const words = all.map(String);
  return { ...first, values: all.filter((value) => !words.some((word) => word.startsWith(`${String(value)} `))) };
}

/** Numbers in a row are the list that was meant. */
function asList(input: unknown, expected: readonly string[], path: Path): string | undefined {
  if (!expected.includes("array") || typeof input !== "string" || input.length > 60) return undefined;
  const numbers = input.trim().split(/[\s;]+/);
  if (numbers.length < 2 || !numbers.every((one) => /^-?\d+(\.\d+)?$/.test(one))) return undefined;
  return `write  ${nameOf(path)}: [${numbers.join(", ")}]`;
}

/** How one writes what is most often written as a bare number or word. */
function example(path: Path, input: unknown): string {
  const name = path.at(-1);
  if (name === "motor" && path.length === 2)
    return `: motor: { speed: ${typeof input === "number" ? input : 1425} rpm }`;
  return path.at(-2) === "steps" && path[0] === "drive" ? ": { label: A, driver: 50, driven: 80 }" : "";
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
  if (typeof value === "number" && !Number.isFinite(value)) return Number.isNaN(value) ? ".nan" : "without end";
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
