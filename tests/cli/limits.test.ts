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
    /B +600–2800 rpm .*never above 1000$/m,
  );
});
