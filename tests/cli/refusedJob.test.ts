import { readdirSync, readFileSync, writeFileSync } from "node:fs";
import { dirname, join } from "node:path";
import { describe, expect, test } from "vitest";
import { file, folder, witnessmark } from "../support/command.js";
import { readPdf } from "../support/readPdf.js";

const demo = "templates/machines/boathouse.yaml";
const intoTheJaws =
  "name: Pin\nmaterial: brass\nbar: { diameter: 16, out: 40 }\nsteps:\n  - { do: face, depth: 0.5 }\n  - { do: turn, to: 14, length: 39 }\n";

describe("a job that runs the tool into the jaws", () => {
  test("check tells it with its place and remedy, and exits with 1", async () => {
    const job = file(intoTheJaws, "pin.yaml");
    const { code, err, out } = await witnessmark("check", demo, "--job", job, "--out", folder());
    expect(code).toBe(1);
    expect(err).toContain(`${job}:6:5: refused: step 2, turn: reaches 39 mm along the work`);
    expect(err).toContain("let 1.5 mm more stand out, or shorten the step");
    expect(out).toContain("no plan is printed until that is mended");
  });

  test("print makes nothing of it", async () => {
    const out = folder();
    const { code, err } = await witnessmark("print", demo, "--job", file(intoTheJaws, "pin.yaml"), "--out", out);
    expect(code).toBe(1);
    expect(err).toContain("--anyway");
    expect(readdirSync(out)).toEqual([]);
  });

  test("--anyway makes it, and every page says so", async () => {
    const out = folder();
    const job = file(intoTheJaws, "pin.yaml");
    const { code } = await witnessmark("print", demo, "--job", job, "--sheet", "plan", "--anyway", "--out", out);
    expect(code).toBe(0);
    const { pages } = await readPdf(readFileSync(join(out, "boathouse-plan-pin.pdf")));
    expect(pages.length).toBeGreaterThan(1);
    for (const { texts } of pages)
      expect(texts.map(({ text }) => text).join(" ")).toContain("This job is refused and was printed all the same");
  });
});

test("check --json holds what stands against each job, and the faults of a job file", async () => {
  const job = file(intoTheJaws, "pin.yaml");
  const bad = file("name: Pin\nmaterial: brass\nsteps: [{ do: fase }]\n", "bad.yaml");
  const { code, out } = await witnessmark("check", demo, "--job", job, "--job", bad, "--json", "--out", folder());
  expect(code).toBe(1);
  const { jobs } = JSON.parse(out) as { jobs: { refused: boolean; findings: Record<string, unknown>[] }[] };
  expect(jobs.map(({ refused }) => refused)).toEqual([true, true]);
  expect(jobs[0]?.findings[0]).toMatchObject({ kind: "refused", step: 2, line: 6, column: 5, code: "into-the-jaws" });
  expect(jobs[1]?.findings[0]).toMatchObject({ kind: "fault", line: 3 });
});

test("the job that a drill's owner begins with is in order on a drill", async () => {
  const drill = "tests/machine/sound/drill.yaml";
  const on = file(
    readFileSync(drill, "utf8").replace("name: On end, as a drill", "name: D\nkind: drill"),
    "drill.yaml",
  );
  const { code, err } = await witnessmark("check", on, "--job", "templates/jobs/drilling.yaml", "--out", folder());
  expect(err).not.toMatch(/refused|error/);
  expect(code).toBe(0);
  // So is what it offers behind a remark, instead of the thread.
  const all = readFileSync("templates/jobs/drilling.yaml", "utf8")
    .replace(/^.*do: tap.*$/m, "")
    .replaceAll("  # - ", "  - ");
  const whole = await witnessmark("check", on, "--job", file(all, "all.yaml"), "--out", folder());
  expect(whole.err).toBe("");
  expect(whole.code).toBe(0);
});

test("new --job writes a starter that is in order on the starter's machine, and writes over nothing", async () => {
  const at = folder();
  const [machine, job] = [join(at, "lathe.yaml"), join(at, "pin.yaml")];
  expect((await witnessmark("new", machine, "--job", job)).code).toBe(0);
  const { code, err } = await witnessmark("check", machine, "--job", job, "--out", at);
  expect(err).not.toContain("refused");
  expect(code).toBe(0);
  expect((await witnessmark("new", "--job", job)).code).toBe(1);
  expect(readdirSync(at).sort()).toEqual(["lathe.yaml", "pin.yaml"]);
});

test("new --job writes a job of holes where the machine that is named, or stands beside, is a drill", async () => {
  const at = folder();
  const [drill, lathe] = [file("name: D\nkind: drill\n", "drill.yaml"), file("name: L\n", "lathe.yaml")];
  const job = (name: string) => join(at, name);
  expect((await witnessmark("new", drill, "--job", job("plate.yaml"))).out).toContain(`check ${drill} --job`);
  expect(readFileSync(job("plate.yaml"), "utf8")).toBe(readFileSync("templates/jobs/drilling.yaml", "utf8"));
  // A machine file that is there is left as it is.
  expect(readFileSync(drill, "utf8")).toContain("kind: drill\n");
  await witnessmark("new", lathe, "--job", job("pin.yaml"));
  expect(readFileSync(job("pin.yaml"), "utf8")).toBe(readFileSync("templates/jobs/starter.yaml", "utf8"));
  const beside = join(dirname(drill), "other.yaml");
  await witnessmark("new", "--job", beside);
  expect(readFileSync(beside, "utf8")).toContain("A job on a drill");
  // With a lathe beside it as well nobody knows which is meant.
  writeFileSync(join(dirname(drill), "lathe.yaml"), "name: L\n");
  const second = join(dirname(drill), "second.yaml");
  await witnessmark("new", "--job", second);
  expect(readFileSync(second, "utf8")).not.toContain("A job on a drill");
});
