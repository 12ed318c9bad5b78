import { readdirSync, readFileSync } from "node:fs";
import { expect, test } from "vitest";
import { problemsOf } from "../support/problems.js";

const sound = "tests/machine/sound";
const shipped = "templates/machines";

test.each([
  ...readdirSync(sound).map((name) => `${sound}/${name}`),
  ...readdirSync(shipped).map((name) => `${shipped}/${name}`),
])("%s is sound, and nothing is said of it", (path) => expect(problemsOf(readFileSync(path, "utf8"))).toEqual([]));
