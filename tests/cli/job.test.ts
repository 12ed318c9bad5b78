import { readdirSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { expect, test } from "vitest";
import { folder, witnessmark } from "../support/command.js";

const demo = "templates/machines/boathouse.yaml";
const pin = "templates/jobs/deck-pin.yaml";

test("print --job makes the plan", async () => {
  const out = folder();
  expect((await witnessmark("print", demo, "--job", pin, "--sheet", "plan", "--out", out)).code).toBe(0);
  expect(readdirSync(out)).toEqual(["boathouse-plan-deck-pin.pdf", "boathouse-printed.json"]);
});

test("a faulty job is answered with file, line, column and remedy, and nothing is written", async () => {
  const out = folder();
  const job = join(out, "job.yaml");
  writeFileSync(
    job,
    "name: Pin\nmaterial: mild stel\nbar: { diameter: 16, out: 40 }\nsteps: [{ do: face, depth: 1 }]\n",
  );
  const { code, err } = await witnessmark("print", demo, "--job", job, "--sheet", "plan", "--out", out);
  expect(code).toBe(1);
  expect(err).toContain(`${job}:2:11: no cutting speeds are known for "mild stel"; did you mean "mild steel"?`);
  expect(readdirSync(out)).toEqual(["job.yaml"]);
});

test("the plan without a job says what is missing", async () => {
  const { code, err } = await witnessmark("print", demo, "--sheet", "plan", "--out", folder());
  expect(code).toBe(1);
  expect(err).toContain("no job was given: name a job file with --job");
});

test("print --all adds the binder to the single files", async () => {
  const out = folder();
  const { code, err } = await witnessmark("print", demo, "--all", "--out", out);
  expect(code).toBe(0);
  expect(err).toContain("no plan sheet: no job was given");
  expect(readdirSync(out)).toEqual(
    expect.arrayContaining(["boathouse-binder.pdf", "boathouse-turns.pdf", "boathouse-student.pdf"]),
  );
});
