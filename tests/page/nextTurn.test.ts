import { expect, test } from "vitest";
import { nextTurn } from "../../src/page/app/nextTurn.js";

test.each<[string[], string]>([
  [[], "0"],
  [["0"], "1"],
  [["0", "4"], "8"],
  [["0", "0,5"], "1"],
  // Between two marks nobody stops who does not say so.
  [["0.5", "1"], ""],
  [["0", "1/3"], ""],
  // A slip of the pen, and the end of a run that comes down.
  [["8", "2"], ""],
  [["4", "2"], "0"],
  [["1", "x"], ""],
])("after the turns %j comes “%s”", (turns, next) => {
  expect(nextTurn(turns.map((words) => ({ turns: words })))).toBe(next);
});
