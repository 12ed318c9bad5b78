import { readdirSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, test } from "vitest";
import { folder, witnessmark } from "../support/command.js";

const demo = "templates/machines/boathouse.yaml";

describe("explain", () => {
  test("shows formula, inputs with their place in the file, result with doubt", async () => {
    const { code, out } = await witnessmark("explain", demo, "feed", "--of", "cross");
    expect(code).toBe(0);
    expect(out).toContain("slope of the least-squares line");
    expect(out).toMatch(/travel +=.*measured, templates\/machines\/boathouse\.yaml:\d+/);
    expect(out).toContain("feed per turn = 2.11255 ± 0.00027 mm/turn (95 %)");
  });
  test("lists what can be asked, and names the nearest", async () => {
    expect((await witnessmark("explain", demo)).out).toContain("strip length");
    expect(await witnessmark("explain", demo, "fead")).toMatchObject({
      code: 1,
      err: expect.stringContaining('did you mean "feed"?'),
    });
    expect(await witnessmark("explain", demo, "feed", "--of", "apron")).toMatchObject({
      code: 1,
      err: expect.stringContaining("Cross slide"),
    });
  });
  test("every quantity of the demo explains itself", async () => {
    for (const quantity of [
      "feed",
      "lost motion",
      "dial",
      "strip length",
      "speed",
      "slip",
      "belt length",
      "cutting speed",
    ]) {
      const { code, out } = await witnessmark("explain", demo, quantity);
      expect([quantity, code]).toEqual([quantity, 0]);
      expect(out).not.toMatch(/undefined|NaN|\[object/);
    }
  });
});

describe("verify", () => {
  test("a strip that fits, and one that does not, with what would mend it", async () => {
    const good = await witnessmark("verify", demo, "--handwheel", "Cross slide", "--measured", "119.9");
    expect(good).toMatchObject({ code: 0, out: expect.stringContaining("Good enough") });
    const bad = await witnessmark("verify", demo, "--handwheel", "cross slide", "--measured", "119.1");
    expect(bad.code).toBe(1);
    expect(bad.out).toContain("0.81 mm too short");
    // The demo's printer was at 199.3 of 200; it turns out to be 119.1 ÷ 119.914 of that.
    const across = Number(/across: ([\d.]+) of 200/.exec(bad.out)?.[1]);
    expect(across).toBeCloseTo((199.3 * 119.1) / (Math.PI * (38 + 2 * 0.03 + 0.11)), 2);
  });
  test("a page printed to fit is called that; a length that is none is refused", async () => {
    expect((await witnessmark("verify", demo, "--handwheel", "Cross slide", "--measured", "112.8")).out).toContain(
      '"fit to page"',
    );
    expect((await witnessmark("verify", demo, "--handwheel", "Cross slide", "--measured", "wide")).code).toBe(2);
  });
});

describe("readings from a CSV", () => {
  test("are taken from beside the machine file; a wild one is named with its place, and stands", async () => {
    const at = folder();
    writeFileSync(
      join(at, "slide.csv"),
      "turns;travel\n0;0\n1;2,00\n2;4,00\n3;6,01\n4;8,00\n5;10,51\n6;12,00\n7;14,00\n",
    );
    writeFileSync(
      join(at, "lathe.yaml"),
      "name: L\nhandwheels: [{ name: S, feed: { readings: { file: slide.csv, gauge: 0.01 } } }]\n",
    );
    const { code, err } = await witnessmark("check", join(at, "lathe.yaml"));
    expect(code).toBe(0);
    expect(err).toMatch(/lathe\.yaml:2:\d+: mind: .*0\.5\d\d mm above the line of the others/);
  });
  test("a fault in it is told with its own line and column", async () => {
    const at = folder();
    writeFileSync(join(at, "slide.csv"), "turns,travel\n0,0\n1,two\n2,4\n");
    writeFileSync(join(at, "lathe.yaml"), "name: L\nhandwheels: [{ name: S, feed: { readings: slide.csv } }]\n");
    const { code, err } = await witnessmark("check", join(at, "lathe.yaml"));
    expect(code).toBe(1);
    expect(err).toContain(`${join(at, "slide.csv")}:3:3: "two" is not a number`);
  });
});

test("print --all makes the single files and a binder; --job adds the plan", async () => {
  const out = folder();
  await witnessmark("print", demo, "--job", "templates/jobs/deck-pin.yaml", "--all", "--out", out);
  const made = readdirSync(out);
  for (const sheet of ["binder", "plan", "belt-card", "dial", "student"])
    expect(made).toContain(`boathouse-${sheet}.pdf`);
});
