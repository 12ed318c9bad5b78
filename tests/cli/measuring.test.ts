import { readdirSync, readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, test } from "vitest";
import { file, folder, witnessmark } from "../support/command.js";
import { walk } from "../support/marks.js";
import { findingsOf, printOf } from "../support/sheets.js";

const demo = "templates/machines/boathouse.yaml";

describe("explain", () => {
  test("shows formula, inputs with their place in the file, result with doubt", async () => {
    const { code, out } = await witnessmark("explain", demo, "feed", "--of", "cross");
    expect(code).toBe(0);
    expect(out).toContain("slope of the least-squares line");
    expect(out.split(demo)).toHaveLength(2);
    expect(out).toMatch(/^From templates\/machines\/boathouse\.yaml\n/);
    const line = Number(/travel +=.*\(measured, line (\d+)\)/.exec(out)?.[1]);
    expect(readFileSync(demo, "utf8").split("\n")[line - 1]).toContain("travel: [0, 4.22");
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
  test("shows threads and teeth as the file gives them, and cutting speeds in its unit", async () => {
    const feedOf = async (feed: string, units = "in") =>
      (
        await witnessmark(
          "explain",
          file(`name: L\nunits: ${units}\nhandwheels: [{ name: S, feed: ${feed} }]\n`),
          "feed",
        )
      ).out;
    const dp = "{ rack: { pitch: 16 DP, teeth: 14 } }";
    expect(await feedOf(dp)).toMatch(/ π × teeth ÷ DP\n[\s\S]* DP +=\s16 [\s\S]* = 2\.74889 in\/turn/);
    expect(await feedOf(dp, "mm")).toContain("π × teeth ÷ DP × 25.4 mm");
    expect(await feedOf("{ rack: { pitch: 1/4 in, teeth: 14 } }")).toMatch(
      / pitch × teeth[\s\S]*tooth to tooth = 0\.25 in/,
    );
    expect(await feedOf("10 tpi")).toMatch(/threads per inch += 10 tpi[\s\S]* = 0\.1 in\/turn/);
    const inch = file(
      "name: L\nunits: in\ndrive: { motor: { speed: 1725 rpm }, stages: [{ name: b, steps: [{ label: A, driver: 2, driven: 4 }] }] }\nwork: { materials: [mild steel], diameters: [1] }\n",
    );
    const { out } = await witnessmark("explain", inch, "cutting speed", "--of", "turning");
    expect(out).toContain("82 to 148 ft/min (printed as 25 to 45 m/min): ");
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
    // A strip lies level on the dials sheet, which lies across its paper: what is mended is the side down the sheet. The
    // demo's printer was at 250.4 of 250 there; it turns out to be 119.1 ÷ 119.914 of that.
    const down = Number(/printers: \{ shop laser: \{ down: ([\d.]+) of 250/.exec(bad.out)?.[1]);
    expect(down).toBeCloseTo((250.4 * 119.1) / (Math.PI * (38 + 2 * 0.03 + 0.11)), 2);
  });

  const wheels = (units: string, dial: string) =>
    file(`name: L\nunits: ${units}\nhandwheels: [{ name: S, feed: 2 mm, dial: ${dial} }]\n`);
  const verify = (path: string, ...rest: string[]) =>
    witnessmark("verify", path, "--handwheel", "S", "--measured", ...rest);

  test("a bare number is in the file's unit, and the answer too; one in the other unit is named", async () => {
    const inches = wheels("in", "{ shape: drum, wrap: 5, width: 0.4, divisions: 0.001 in, closure: true }");
    expect((await verify(inches, "5.001")).out).toContain("must measure 5.000 in, the caliper says 5.001 in");
    expect((await verify(inches, "127 mm")).code).toBe(0);
    const slip = await verify(inches, "127");
    expect(slip).toMatchObject({
      code: 1,
      out: expect.stringContaining("is in inches, the file's unit: write 127 mm if that is what was meant"),
    });
  });

  test("as it should be, too large or too small, and mended in the file's own unit", async () => {
    const face = "{ shape: face, outside: 2 in, inside: 1.2 in, divisions: 0.001 in, closure: even }";
    const ring = wheels("in", face);
    expect((await verify(ring, "2 in")).out).toContain("the caliper says 2.000 in: as it should be.");
    const large = await verify(ring, "2.05");
    expect(large.out).toContain("0.050 in too large.");
    expect(large.out).toMatch(/Not good enough: it may be off by 0\.\d+ in at most\./);
    const [, measured, nominal] = /\{ down: (10\.\d{3}) of (10) in \}/.exec(large.out) ?? [];
    expect(Number(measured) / Number(nominal)).toBeCloseTo(2.05 / 2, 4);
    expect((await verify(ring, "1.95")).out).toContain("0.050 in too small.");
    // A bar that the file gives in millimetres is mended in them.
    const metric = file(
      `name: L\nunits: in\npaper: { printer: p }\nprinters: { p: { down: 250.5 of 250 } }\nhandwheels: [{ name: S, feed: 2 mm, dial: ${face} }]\n`,
    );
    expect((await verify(metric, "2.05")).out).toMatch(/down: 256\.\d\d of 250 mm/);
  });

  test("one piece of a dial in pieces, or all together, and it says for which it was taken", async () => {
    const two = wheels(
      "in",
      "{ shape: drum, diameter: 90 mm, width: 0.5, divisions: 0.001 in, closure: even, lap: 5 mm }",
    );
    const asked = await verify(two, "5.5");
    const [, first = "", all = ""] =
      /piece \d of 2 measures ([\d.]+) in, the whole of 2 pieces measures ([\d.]+) in/.exec(asked.out) ?? [];
    const other = (Number(all) - Number(first)).toFixed(3);
    for (const length of [first, other, all]) {
      const answer = await verify(two, length);
      expect(answer).toMatchObject({
        code: 0,
        out: expect.stringMatching(/^Taken for (piece \d of 2|the whole of 2 pieces);/),
      });
      expect(answer.out).toContain(`the caliper says ${length} in`);
    }
  });

  test("of a ring in pieces the sum of their edges is no diameter, nor the diameter a length of edges", async () => {
    const ring = wheels("mm", "{ shape: face, outside: 250, inside: 200, divisions: 0.01 mm, closure: even }");
    const edges = await verify(ring, "784.9");
    expect(edges.out).toMatch(/^Taken for the whole of 3 pieces; .*the outside diameter measures 250\.00 mm\./);
    expect(edges.out).toContain(
      `must measure ${(250 * Math.PI).toFixed(2)} mm, the caliper says 784.90 mm: 0.50 mm too short.`,
    );
    const across = await verify(ring, "250.1");
    expect(across.out).toMatch(/^Taken for the outside diameter; .*the whole of 3 pieces measures 785\.40 mm\./);
    expect(across.out).toContain("0.10 mm too large.");
  });

  test("a bevel by its outer arc or its chord, and never by one for the other", async () => {
    const bevel = wheels(
      "mm",
      "{ shape: bevel, diameter: 60, smallDiameter: 50, width: 9, divisions: 0.02 mm, closure: even }",
    );
    const unsaid = await verify(bevel, "188.8");
    expect(unsaid).toMatchObject({ code: 2, err: expect.stringMatching(/--by arc .*: 188\.\d\d mm\) or --by chord/) });
    const [, arc = "", chord = ""] =
      /--by arc \(.*?: ([\d.]+) mm\) or --by chord \(.*?: ([\d.]+) mm\)/.exec(unsaid.err) ?? [];
    // Sharp-edged cone of paper: sweep π (D − d) / slope; radius and angle give the chord.
    const sweep = (Math.PI * 10) / 9;
    const radius = Number(arc) / sweep;
    expect(sweep).toBeGreaterThan(Math.PI);
    expect(Number(chord)).toBeCloseTo(2 * radius, 1);
    expect((await verify(bevel, arc, "--by", "arc")).code).toBe(0);
    expect((await verify(bevel, chord, "--by", "chord")).code).toBe(0);
    expect((await verify(bevel, chord, "--by", "arc")).code).toBe(1);
    const long = await verify(bevel, String(Number(chord) + 1), "--by", "chord");
    expect(long).toMatchObject({ code: 1, out: expect.stringContaining("down: ") });
  });

  test.each([
    ["drum", "{ shape: drum, diameter: 38, width: 9, divisions: 0.05 mm, closure: even }", []],
    ["face", "{ shape: face, outside: 70, inside: 52, divisions: 0.05 mm, closure: even }", []],
    [
      "bevel, its arc",
      "{ shape: bevel, diameter: 44, smallDiameter: 40, width: 12, divisions: 0.05 mm, closure: even }",
      ["--by", "arc"],
    ],
    [
      "bevel, its chord",
      "{ shape: bevel, diameter: 44, smallDiameter: 40, width: 12, divisions: 0.05 mm, closure: even }",
      ["--by", "chord"],
    ],
  ])("agrees with what is printed on the dial page: %s", async (_, dial, by) => {
    const path = wheels("mm", dial);
    const print = printOf(findingsOf(readFileSync(path, "utf8")), "dial");
    const words: string[] = [];
    walk(print.pages[0]?.drawing.marks ?? [], (mark) => void (mark.kind === "text" && words.push(mark.text)));
    const page = words.join(" ");
    // Beneath the piece: of a bevel along its edge first, then straight across.
    const sizes = [...page.matchAll(/([\d.]+) ± ([\d.]+) mm/g)].map(([, size, off]) => [Number(size), Number(off)]);
    const [wanted, slack] = sizes[by.includes("chord") ? 1 : 0] ?? [];
    const at = async (off: number) => (await verify(path, ((wanted ?? 0) + off).toFixed(3), ...by)).code;
    // Within what is printed, and beyond, each by more than the printed figures are rounded.
    expect(await at((slack ?? 0) - 0.006)).toBe(0);
    expect(await at((slack ?? 0) + 0.006)).toBe(1);
    expect(await at(-(slack ?? 0) - 0.006)).toBe(1);
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
    const { out } = await witnessmark("explain", join(at, "lathe.yaml"), "feed");
    expect(out).toMatch(/travel +=.*\(measured, slide\.csv\)/);
  });
  test("a fault in it is told with its own line and column", async () => {
    const at = folder();
    writeFileSync(join(at, "slide.csv"), "turns,travel\n0,0\n1,two\n2,4\n");
    writeFileSync(join(at, "lathe.yaml"), "name: L\nhandwheels: [{ name: S, feed: { readings: slide.csv } }]\n");
    const { code, err } = await witnessmark("check", join(at, "lathe.yaml"));
    expect(code).toBe(1);
    expect(err).toContain(`${join(at, "slide.csv")}:3:3: "two" is not a length`);
  });
});

test("print --all makes the single files and a binder; --job adds the plan", async () => {
  const out = folder();
  await witnessmark("print", demo, "--job", "templates/jobs/deck-pin.yaml", "--all", "--out", out);
  const made = readdirSync(out);
  for (const sheet of ["binder", "plan-deck-pin", "belt-card", "dial", "student"])
    expect(made).toContain(`boathouse-${sheet}.pdf`);
});
