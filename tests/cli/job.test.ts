import { execFile } from "node:child_process";
import { mkdtempSync, readdirSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { promisify } from "node:util";
import { expect, test } from "vitest";

const run = promisify(execFile);
const demo = "templates/machines/boathouse.yaml";
const pin = "templates/jobs/deck-pin.yaml";

async function witnessmark(...args: string[]): Promise<{ code: number; out: string; err: string }> {
  try {
    const { stdout, stderr } = await run(process.execPath, ["dist/witnessmark.js", ...args], { maxBuffer: 1 << 26 });
    return { code: 0, out: stdout, err: stderr };
  } catch (error) {
    const { code, stdout, stderr } = error as { code: number; stdout: string; stderr: string };
    return { code, out: stdout, err: stderr };
  }
}
const folder = () => mkdtempSync(join(tmpdir(), "witnessmark-job-"));

test("print --job makes the plan", async () => {
  const out = folder();
  expect((await witnessmark("print", demo, "--job", pin, "--sheet", "plan", "--out", out)).code).toBe(0);
  expect(readdirSync(out)).toEqual(["boathouse-plan.pdf"]);
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
