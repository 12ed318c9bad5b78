import { readFileSync } from "node:fs";
import { expect, test } from "vitest";
import { isMap, isScalar, isSeq, LineCounter, type Node, type Pair, parseDocument } from "yaml";
import { readMachine } from "../../src/machine/read.js";
import { problemsOf } from "../support/problems.js";

/** The demo with each key and value on a line of its own. */
const block = () => {
  const document = parseDocument(readFileSync("templates/machines/boathouse.yaml", "utf8"));
  const plain = parseDocument(JSON.stringify(document.toJS()));
  const unflow = (node: unknown): void => {
    if (isMap(node)) {
      node.flow = false;
      for (const { value } of node.items as Pair[]) unflow(value);
    } else if (isSeq(node)) {
      // Lists of numbers are judged as one, and stay on one line.
      node.flow = node.items.every((item) => isScalar(item));
      for (const item of node.items) unflow(item);
    }
  };
  unflow(plain.contents);
  return plain.toString({ lineWidth: 0 });
};
const text = block();

/** Every single value, with the place where it stands. */
function leaves(): { from: number; to: number; line: number }[] {
  const lines = new LineCounter();
  const found: { from: number; to: number; line: number }[] = [];
  const walk = (node: unknown): void => {
    if (isMap(node)) for (const { value } of node.items as Pair[]) walk(value);
    else if (isSeq(node)) for (const item of node.items as Node[]) walk(item);
    else if (isScalar(node) && node.range)
      found.push({ from: node.range[0], to: node.range[1], line: lines.linePos(node.range[0]).line });
  };
  walk(parseDocument(text, { lineCounter: lines }).contents);
  return found;
}

test("the demo, each value on its own line, is sound", () => expect(problemsOf(text)).toEqual([]));

test("a fault in any one value is told where it stands, and brings no other with it", () => {
  const strays: string[] = [];
  for (const { from, to, line } of leaves()) {
    const broken = `${text.slice(0, from)}{ what: 1 }${text.slice(to)}`;
    const { machine, problems } = readMachine(broken);
    expect(machine).toBeUndefined();
    if (problems.some((problem) => problem.line !== line))
      strays.push(
        `${text.split("\n")[line - 1]}: ${problems.map((problem) => `${problem.line} ${problem.what}`).join(" | ")}`,
      );
  }
  expect(strays).toEqual([]);
});

test("with any one value broken, a fault of the whole elsewhere is still told", () => {
  // A second handwheel of the same name: judged over the whole file.
  const twice = text.replace('"name": "Top slide"', '"name": "CROSS slide"');
  expect(twice).not.toBe(text);
  const untold = leaves().filter(({ from, to }) => {
    const shift = from > twice.indexOf("CROSS") ? twice.length - text.length : 0;
    const broken = `${twice.slice(0, from + shift)}{ what: 1 }${twice.slice(to + shift)}`;
    return !readMachine(broken).problems.some(({ code }) => code === "same-name");
  });
  // Not where the names themselves, the unit of all, or what the file cannot be without is broken.
  expect(untold.map(({ line }) => text.split("\n")[line - 1]?.trim())).toEqual([
    '"units": "mm"',
    '- "name": "Cross slide"',
    '- "name": "Top slide"',
  ]);
});
