import { readFileSync } from "node:fs";
import { expect, test } from "vitest";
import { generatedFiles } from "../scripts/generated/files.js";

test.each(Object.entries(generatedFiles()))("%s is what it is made from (mend with: npm run generate)", (file, text) =>
  expect(readFileSync(file, "utf8")).toBe(text),
);
