import { readFileSync } from "node:fs";
import { expect, test } from "vitest";
import { readJob } from "../../src/job/read.js";
import { everyBadFile } from "../support/badFiles.js";

everyBadFile("tests/job/bad", (text) => readJob(text).problems);

test("the demo's job reads without a remark", () => {
  expect(readJob(readFileSync("templates/jobs/deck-pin.yaml", "utf8")).problems).toEqual([]);
});
