import { readdirSync, readFileSync } from "node:fs";
import { describe, expect, test } from "vitest";
import { parse } from "yaml";
import * as z from "zod";
import { readJob } from "../../src/job/read.js";
import { jobFile, verbs } from "../../src/job/schema.js";
import { everyBadFile } from "../support/badFiles.js";

everyBadFile("tests/job/bad", (text) => readJob(text).problems);

describe("sound jobs", () => {
  const folder = "tests/job/sound";
  const names = readdirSync(folder);

  test.each(names)("%s is sound, and nothing is said of it", (name) => {
    const { job, problems } = readJob(readFileSync(`${folder}/${name}`, "utf8"));
    expect(problems).toEqual([]);
    expect(job?.steps.length).toBeGreaterThan(0);
  });

  test("every step and every key stands in one of them", () => {
    type Node = { properties?: Record<string, Node>; items?: Node };
    const { properties = {} } = z.toJSONSchema(jobFile, { io: "input", unrepresentable: "any" }) as Node;
    const keysOf = (node: Node | undefined) => Object.keys(node?.properties ?? {}).sort();
    const files = names.map((name) => parse(readFileSync(`${folder}/${name}`, "utf8")));
    const used = (parts: object[]) => [...new Set(parts.flatMap((part) => Object.keys(part)))].sort();
    const steps = files.flatMap(({ steps }) => steps);
    expect(used(files)).toEqual(keysOf({ properties }));
    expect(used(files.flatMap(({ bar }) => bar ?? []))).toEqual(keysOf(properties.bar));
    expect(used(steps)).toEqual(keysOf(properties.steps?.items));
    expect([...new Set(steps.map((step) => step.do))].sort()).toEqual([...verbs].sort());
    expect([...new Set(files.map(({ units }) => units))].sort()).toEqual(["in", "mm", undefined]);
  });
});

test("what a sound job says comes through in mm, with its usual values", () => {
  const read = (name: string) => readJob(readFileSync(`tests/job/sound/${name}.yaml`, "utf8")).job;
  expect(read("stepped-pin")).toMatchObject({
    bar: { diameter: 20, out: 60, held: "chuck and centre" },
    batch: "operation",
    clear: 1.5,
    spindleStop: true,
  });
  expect(read("bush")).toMatchObject({
    bar: { diameter: 30, length: 40, bore: 10, held: "chuck" },
    unitsLeftOpen: true,
    batch: "part",
    clear: 2,
    spindleStop: false,
  });
  expect(read("bush")?.steps[0]).toMatchObject({ do: "face", length: 39.5, cut: 0.5 });
  expect(read("bush")?.steps[4]).toMatchObject({ do: "bore", at: 2, length: 3, to: { aim: 22 } });
  expect(read("bush")?.steps[7]).toEqual({ do: "turn round", out: 20, held: "chuck" });
  const inches = read("inch-spigot");
  expect(inches).toMatchObject({ bar: { diameter: 25.4, held: "chuck and centre" }, clear: 25.4 / 16 });
  const collar = inches?.steps[6];
  const { least, most } = collar?.do === "shoulder" ? collar.to : {};
  expect(least).toBeCloseTo(11.99, 9);
  expect(most).toBeCloseTo(12.01, 9);
});

test("a taper comes to the same ends in each of its forms", () => {
  const half = Math.atan(2 / 2 / 20);
  const degrees = (half / Math.PI) * 180;
  const forms = [
    "large: 20, small: 18",
    "large: 20, ratio: 1 in 10",
    "small: 18, ratio: 1:10",
    "large: 20, ratio: 2 in 20",
  ];
  for (const form of [...forms, `small: 18, half: ${degrees} deg`, `large: 20, included: ${2 * degrees} deg`]) {
    const step = `{ do: taper, ${form}, length: 20, smallAt: chuck, by: headstock }`;
    const { job } = readJob(`name: T\nmaterial: brass\nbar: { diameter: 20, out: 30 }\nsteps: [${step}]\n`);
    const [taper] = job?.steps ?? [];
    expect(taper).toMatchObject({ do: "taper", at: 0, length: 20, smallAt: "chuck", by: "headstock" });
    if (taper?.do !== "taper") throw new Error(form);
    expect(taper.large, form).toBeCloseTo(20, 9);
    expect(taper.small, form).toBeCloseTo(18, 9);
  }
});

test("the demo's job reads without a remark", () => {
  expect(readJob(readFileSync("templates/jobs/deck-pin.yaml", "utf8")).problems).toEqual([]);
});

test("a material that burns is refused with its caution, and the name that is known", () => {
  const remedy = (material: string) =>
    readJob(`name: Try\nmaterial: ${material}\nbar: { diameter: 10, out: 20 }\nsteps: [{ do: face, depth: 1 }]\n`)
      .problems.map(({ remedy }) => remedy)
      .join();
  expect(remedy("titanum")).toMatch(/did you mean "titanium"\?; mind: Titanium dust and fine chips catch fire/);
  expect(remedy("Ti grade 2")).toMatch(/known are .*titanium.*; mind: Titanium dust/);
  expect(remedy("titanium alloy")).toBe("");
});
