import { readFileSync } from "node:fs";
import { expect, test } from "vitest";
import { builtInSource } from "../../scripts/builtInSource.js";

test("the built-in sheets are what their templates say (mend with: npm run sheets)", () =>
  expect(readFileSync("src/sheets/builtIn.generated.ts", "utf8")).toBe(builtInSource()));
