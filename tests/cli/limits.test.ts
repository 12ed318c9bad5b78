import { readFileSync } from "node:fs";
import { expect, test } from "vitest";
import { file, witnessmark } from "../support/command.js";

test("a speed beyond the chuck's limit is called that; a variable motor's is told where to stop", async () => {
  const lathe = (speed: string) =>
    file(
      `name: L\nlimits: { chuck: 1000 rpm }\ndrive:\n  motor: { speed: ${speed} }\n  stages: [{ name: belt, steps: [{ driver: 50, driven: 100 }, { driver: 100, driven: 50 }] }]\n`,
    );
  const fixed = (await witnessmark("check", lathe("1400 rpm"))).out;
  expect(fixed).toMatch(/A +700 rpm .*measured$/m);
  expect(fixed).toMatch(/B +2800 rpm .*beyond the limit, do not use$/m);
  expect((await witnessmark("check", lathe("[300, 1400] rpm".replace(" rpm", "")))).out).toMatch(
    /B +600–2800 rpm .*never above 943$/m,
  );
});

test("a mistyped tachometer reading does not make the other positions look slow", async () => {
  const lathe = file(
    "name: L\ndrive:\n  motor: { speed: 1400 rpm }\n  stages: [{ name: belt, steps: [{ driver: 50, driven: 100 }, { driver: 100, driven: 50 }] }]\n  tachometer: [{ position: [A], speed: 70 }, { position: [A], speed: 690 }]\n",
  );
  const { out, err } = await witnessmark("check", lathe);
  expect(err).toContain(":5:40: ");
  expect(err).toContain("contradict one another");
  expect(out).toMatch(/A +700 rpm +by ratio alone; reading doubtful/);
  expect(out).toMatch(/B +2800 rpm +by ratio alone/);
  expect(out).toContain("Reading of A (70, 690 rpm) doubtful");
});

test("an option without its value is wrong usage; the version is our own", async () => {
  expect(await witnessmark("print", "templates/machines/boathouse.yaml", "--sheet")).toMatchObject({
    code: 2,
    err: expect.stringContaining("sheet"),
  });
  expect((await witnessmark("--version")).out.trim()).toBe(JSON.parse(readFileSync("package.json", "utf8")).version);
});
