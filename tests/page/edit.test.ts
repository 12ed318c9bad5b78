import { readdirSync, readFileSync } from "node:fs";
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { parse, stringify } from "yaml";
import { type Way, withEntry, without, withSwapped, withValue } from "../../src/page/file/edit.js";
import { type Plain, scalarText } from "../../src/page/file/yamlText.js";

type Value = unknown;
const isObject = (value: Value): value is Record<string, Value> => typeof value === "object" && value !== null;

/** The same in plain data. */
function put(root: Value, [step, ...rest]: Way, value: Value): Value {
  if (step === undefined) return value;
  const base = isObject(root) ? root : typeof step === "number" ? [] : {};
  const between = Array.isArray(base) ? Array.from({ length: Number(step) - base.length }, () => "") : [];
  const copy: Value = Array.isArray(base) ? [...base, ...between] : { ...base };
  (copy as Record<string | number, Value>)[step] = put((base as Record<string | number, Value>)[step], rest, value);
  return copy;
}

/** A field's words as YAML reads them: what looks like a number is one. */
const asRead = (value: Plain): Value =>
  typeof value === "string"
    ? parse(`key: ${scalarText(value, "block")}`).key
    : Array.isArray(value)
      ? value.map(asRead)
      : isObject(value)
        ? Object.fromEntries(Object.entries(value).map(([key, one]) => [key, asRead(one as Plain)]))
        : value;

/** Every way to something in a file. */
function ways(value: Value, way: Way = []): Way[] {
  const own = way.length === 0 ? [] : [way];
  if (!isObject(value)) return own;
  const entries = Array.isArray(value) ? value.map((one, index) => [index, one] as const) : Object.entries(value);
  return [...own, ...entries.flatMap(([step, one]) => ways(one, [...way, step]))];
}

const comments = (text: string): string[] => text.match(/(?<=^|\s)# [^\n]*/gm) ?? [];

const files = [
  ...["templates/machines", "templates/jobs", "tests/machine/sound"].flatMap((folder) =>
    readdirSync(folder)
      .filter((file) => file.endsWith(".yaml"))
      .map((file) => `${folder}/${file}`),
  ),
].map((file) => [file, readFileSync(file, "utf8")] as const);

const typed = fc.oneof(
  fc.constantFrom(
    "1/2 in",
    "1,25",
    "16 tpi",
    "12.5",
    "1 in 20",
    "yes",
    "null",
    "~",
    "true",
    "0x1f",
    "a: b",
    "# no",
    "- x",
    "[1",
    "{",
    "é ¼ µ",
    " lead",
    "trail ",
    "'",
    '"',
    "*a",
    "&b",
    "!t",
    "%d",
    "@",
    "`",
    "? x",
    "1e3",
    "2026-11-01",
    "x #y",
    "x:",
    "<script>",
    "",
    "a\nb",
    "\u2028",
    "\u202e",
  ),
  fc.string({ unit: "grapheme", maxLength: 12 }),
  fc.integer({ min: -1000, max: 100000 }),
  fc.boolean(),
);
const record = fc.dictionary(fc.constantFrom("name", "shape", "diameter", "feed"), typed, { minKeys: 1, maxKeys: 4 });
const value: fc.Arbitrary<Plain> = fc.oneof(
  typed,
  fc.array(typed, { maxLength: 4 }),
  record,
  fc.array(record, { minLength: 1, maxLength: 3 }),
  fc.record({ name: typed, dial: record, readings: fc.array(fc.integer(), { maxLength: 3 }) }),
);

describe("words of a field are read as they were typed", () => {
  test.each(["block", "flow"] as const)("%s", (surroundings) =>
    fc.assert(
      fc.property(typed, (words) => {
        const source = scalarText(words, surroundings);
        const read = surroundings === "flow" ? parse(`{ k: ${source}, e: 1 }`) : parse(`k: ${source}\ne: 1\n`);
        expect(read.e).toBe(1);
        if (typeof words !== "string") expect(read.k).toBe(words);
        else if (typeof read.k === "number") expect(source).toBe(words);
        else expect(read.k).toBe(words);
      }),
      { numRuns: 2000 },
    ),
  );
  test.each([
    ["12 tpi", "12 tpi"],
    ["1,25", "1,25"],
    ["12.50", "12.50"],
    ["yes", "yes"],
    ["true", '"true"'],
    ["2 # two", '"2 # two"'],
  ])("%s is written %s", (words, source) => expect(scalarText(words, "block")).toBe(source));
  test("a comma within brackets is quoted", () => expect(scalarText("1,25", "flow")).toBe('"1,25"'));
});

describe("a value put into a file is there, and nothing else has changed", () => {
  const edits = fc.constantFrom(...files).chain(([name, text]) => {
    const data = parse(text) as Value;
    const existing = ways(data);
    const lists = existing.filter((way) => Array.isArray(get(data, way)));
    const maps = [[] as Way, ...existing].filter((way) => {
      const at = get(data, way);
      return isObject(at) && !Array.isArray(at);
    });
    const placed: fc.Arbitrary<Way>[] = [
      fc.constantFrom(...existing),
      fc
        .tuple(fc.constantFrom(...maps), fc.constantFrom("fresh", "paper", "limits", "a b", "1"))
        .map(([way, key]) => [...way, key]),
      fc
        .tuple(fc.constantFrom(...maps), fc.constantFrom("fresh", "other"), fc.constantFrom("deep", 0, 3))
        .map(([way, key, step]) => [...way, key, step]),
    ];
    if (lists.length > 0)
      placed.push(
        fc
          .tuple(fc.constantFrom(...lists), fc.nat(3))
          .map(([way, past]) => [...way, (get(data, way) as unknown[]).length + past]),
      );
    return fc.record({ name: fc.constant(name), text: fc.constant(text), way: fc.oneof(...placed), value });
  });

  test("whatever it is and wherever", () =>
    fc.assert(
      fc.property(edits, ({ text, way, value }) => {
        const data = parse(text) as Value;
        // A way through a single value, or by a name through a list, is no way.
        fc.pre(passable(data, way));
        const edited = withValue(text, way, value, ["name", "units", "limits", "drive", "handwheels", "paper", "work"]);
        expect(parse(edited)).toEqual(put(data, way, asRead(value)));
        const replacedComments = isObject(get(data, way));
        if (!replacedComments)
          expect(comments(edited).filter((one) => comments(text).includes(one)).length).toBeGreaterThanOrEqual(
            comments(text).length,
          );
      }),
      { numRuns: 800 },
    ));

  test("one line changes where one value does", () => {
    const [, text = ""] = files[0] ?? [];
    const edited = withValue(text, ["name"], "Attic lathe");
    const changed = edited.split("\n").filter((line, index) => line !== text.split("\n")[index]);
    expect(changed).toEqual(["name: Attic lathe"]);
  });

  test.each([
    ["an empty file", "", ["name"], "L", "name: L\n"],
    ["a file of comments", "# mine\n", ["limits", "chuck"], "2000 rpm", "# mine\nlimits: { chuck: 2000 rpm }\n"],
    [
      "by the order of keys",
      "name: L\nwork:\n  tool: x\n",
      ["handwheels", 0],
      { name: "A", feed: "2" },
      "name: L\nhandwheels:\n  - name: A\n    feed: 2\nwork:\n  tool: x\n",
    ],
    ["before all others", "work: { tool: x }\n", ["name"], "L", "name: L\nwork: { tool: x }\n"],
    [
      "into a flow map",
      "dial: { shape: drum } # mine\n",
      ["dial", "width"],
      "1,5",
      'dial: { shape: drum, width: "1,5" } # mine\n',
    ],
    [
      "behind a comment at the end of a line",
      "a:\n  - b: 1 # one\n# end\n",
      ["a", 0, "c"],
      "2",
      "a:\n  - b: 1 # one\n    c: 2\n# end\n",
    ],
    [
      "behind a key with nothing",
      "name: L\nlimits:\nwork: 1\n",
      ["limits", "chuck"],
      "9",
      "name: L\nlimits: { chuck: 9 }\nwork: 1\n",
    ],
  ] as const)("%s", (_, text, way, value, wanted) =>
    expect(withValue(text, way, value, ["name", "handwheels", "work"])).toBe(wanted),
  );

  test("text that is no YAML is told, not guessed at", () => expect(() => withValue("a: [1", ["b"], "2")).toThrow());
});

describe("what is taken out is gone, and nothing else", () => {
  const cuts = fc
    .constantFrom(...files)
    .chain(([, text]) => fc.record({ text: fc.constant(text), way: fc.constantFrom(...ways(parse(text))) }));
  const drop = (data: Value, [step, ...rest]: Way): Value => {
    if (!isObject(data) || step === undefined) return data;
    const inner = rest.length > 0 ? drop((data as Record<string | number, Value>)[step], rest) : undefined;
    const gone =
      rest.length === 0 ||
      (isEmpty(inner) && typeof rest[0] === "number") ||
      (isEmpty(inner) && typeof step === "string");
    if (Array.isArray(data))
      return gone
        ? data.filter((_, index) => index !== step)
        : data.map((one, index) => (index === step ? inner : one));
    return Object.fromEntries(
      Object.entries(data).flatMap(([key, one]) => (key !== step ? [[key, one]] : gone ? [] : [[key, inner]])),
    );
  };
  const isEmpty = (one: Value) => isObject(one) && Object.keys(one).length === 0;

  test("wherever it stood", () =>
    fc.assert(
      fc.property(cuts, ({ text, way }) => {
        const left = parse(without(text, way)) ?? {};
        const wanted = drop(parse(text), way);
        // What is left empty goes too, save an item of a list.
        expect(stringify(left)).toBe(stringify(wanted));
      }),
      { numRuns: 1500 },
    ));

  test.each([
    ["the first key of an item", "a:\n  - b: 1\n    c: 2\n", ["a", 0, "b"], "a:\n  - c: 2\n"],
    ["with its own comment, not with the next one's", "a: 1 # one\n# two\nb: 2\n", ["a"], "# two\nb: 2\n"],
    ["from a flow map", "a: { b: 1, c: 2, d: 3 }\n", ["a", "c"], "a: { b: 1, d: 3 }\n"],
    ["the last of a flow map", "a: { b: 1, c: 2 }\n", ["a", "c"], "a: { b: 1 }\n"],
    ["the only one", "n: 1\na: { b: 1 }\n", ["a", "b"], "n: 1\n"],
    ["an item", "a:\n  - 1\n  # two\n  - 2\n", ["a", 0], "a:\n  # two\n  - 2\n"],
    ["what is not there", "a: 1\n", ["b", "c"], "a: 1\n"],
  ] as const)("%s", (_, text, way, wanted) => expect(without(text, way)).toBe(wanted));
});

function get(data: Value, way: Way): Value {
  return way.reduce<Value>(
    (at, step) => (isObject(at) ? (at as Record<string | number, Value>)[step] : undefined),
    data,
  );
}

function passable(data: Value, way: Way): boolean {
  for (let depth = 0; depth < way.length; depth++) {
    const at = get(data, way.slice(0, depth));
    if (at === undefined) return true;
    if (!isObject(at)) return depth === way.length;
    const step = way[depth];
    if (Array.isArray(at) !== (typeof step === "number")) return false;
  }
  return true;
}

describe("entries of a list change places, and others come between", () => {
  const job = `name: Pin
steps:
  # first of all
  - { do: face, depth: 0.5 } # clean
  # then

  - do: turn
    to: 12
  - do: part
# the end
`;
  test("with the remarks above them, save what heads the list, and behind them; and back, to the letter", () => {
    const swapped = withSwapped(job, ["steps"], 0);
    expect(swapped).toBe(`name: Pin
steps:
  # first of all
  # then

  - do: turn
    to: 12
  - { do: face, depth: 0.5 } # clean
  - do: part
# the end
`);
    expect(withSwapped(withSwapped(job, ["steps"], 1), ["steps"], 1)).toBe(job);
  });
  test.each([0, 1, 2])("an empty one before entry %i", (index) => {
    const steps = parse(withEntry(job, ["steps"], index, {})).steps;
    expect(steps[index]).toEqual({});
    expect(steps.filter((_: unknown, at: number) => at !== index)).toEqual(parse(job).steps);
    expect(withEntry(job, ["steps"], index, {})).toContain("# first of all");
  });
  test("in brackets, on one line, and at the end of a text without a last line's end", () => {
    expect(withSwapped("steps: [{ do: a }, { do: b }, c] # so", ["steps"], 0)).toBe(
      "steps: [{ do: b }, { do: a }, c] # so",
    );
    expect(withEntry("steps: [a, b]", ["steps"], 1, {})).toBe("steps: [a, {}, b]");
    expect(withSwapped("steps:\n- a\n- b", ["steps"], 0)).toBe("steps:\n- b\n- a");
    expect(parse(withSwapped("x:\n  - - a\n    - b\n", ["x", 0], 0))).toEqual({ x: [["b", "a"]] });
    expect(parse(withEntry("x:\n  - - a\n    - b\n", ["x", 0], 0, "n"))).toEqual({ x: [["n", "a", "b"]] });
  });
  const entry = fc.oneof(
    fc.record({ do: fc.constantFrom("turn", "face"), to: fc.integer({ min: 1, max: 99 }) }),
    fc.array(fc.integer({ min: 0, max: 9 }), { maxLength: 3 }),
    fc.constantFrom("a", "b c"),
  );
  test("whatever they are, and in whatever they lie", () => {
    fc.assert(
      fc.property(fc.array(entry, { minLength: 2, maxLength: 5 }), fc.nat(), fc.boolean(), (list, at, block) => {
        const index = at % (list.length - 1);
        const text = stringify({ name: "n", steps: list, last: 1 }, { collectionStyle: block ? "block" : "any" });
        const expected = list.map((one, i) => (i === index ? list[index + 1] : i === index + 1 ? list[index] : one));
        expect(parse(withSwapped(text, ["steps"], index))).toEqual({ name: "n", steps: expected, last: 1 });
        expect(parse(withEntry(text, ["steps"], index, {}))).toEqual({
          name: "n",
          steps: [...list.slice(0, index), {}, ...list.slice(index)],
          last: 1,
        });
      }),
    );
  });
});
