import { execFileSync } from "node:child_process";
import { mkdtempSync, readdirSync, readFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { expect, test } from "vitest";

test("out/sample shows what the demo prints today (mend with: npm run samples)", () => {
  const out = mkdtempSync(join(tmpdir(), "witnessmark-"));
  const demo = "templates/machines/boathouse.yaml";
  const args = ["print", demo, "--job", "templates/jobs/deck-pin.yaml", "--format", "svg", "--out", out];
  execFileSync(process.execPath, ["dist/witnessmark.cjs", ...args], {
    stdio: "pipe",
  });
  // The record of what was printed is none of the pages.
  const names = readdirSync(out).filter((name) => name.endsWith(".svg"));
  expect(readdirSync("out/sample")).toEqual(names);
  for (const name of names) {
    // The embedded fonts are left out of a failure's message.
    const drawn = (folder: string) => readFileSync(join(folder, name), "utf8").replace(/base64,[^)]*/g, "base64,…");
    expect(drawn("out/sample"), name).toBe(drawn(out));
  }
});
