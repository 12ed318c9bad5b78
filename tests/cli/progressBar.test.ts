import { expect, test } from "vitest";
import { progressBar } from "../../src/cli/progressBar.js";

function bar(isTTY: boolean) {
  const written: string[] = [];
  let time = 0;
  const terminal = { isTTY, write: (text: string) => written.push(text) };
  return { written, at: (ms: number) => (time = ms), ...progressBar(100, "machines", terminal, () => time) };
}

test("work of less than two seconds shows no bar", () => {
  const { show, clear, at, written } = bar(true);
  at(1999);
  show(60);
  clear();
  expect(written).toEqual([]);
});

test("longer work shows how far it has come, and takes the line away before others", () => {
  const { show, clear, at, written } = bar(true);
  at(2000);
  show(50);
  clear();
  clear();
  expect(written).toEqual([`\r${"#".repeat(15)}${"-".repeat(15)} 50 of 100 machines`, "\r\u001b[K"]);
});

test("what is no terminal gets nothing", () => {
  const { show, at, written } = bar(false);
  at(60_000);
  show(50);
  expect(written).toEqual([]);
});
