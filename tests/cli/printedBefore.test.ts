import { spawnSync } from "node:child_process";
import { cpSync, readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { beforeAll, describe, expect, test } from "vitest";
import { folder, witnessmark } from "../support/command.js";

const demo = readFileSync("templates/machines/boathouse.yaml", "utf8");
const job = readFileSync("templates/jobs/deck-pin.yaml", "utf8");

/** The demo and its job, all of it printed once; every test works on a copy. */
const printed = folder();
beforeAll(async () => {
  writeFileSync(join(printed, "lathe.yaml"), demo);
  writeFileSync(join(printed, "pin.yaml"), job);
  await print(printed, "--job", join(printed, "pin.yaml"));
});

const print = (place: string, ...more: string[]) =>
  witnessmark("print", join(place, "lathe.yaml"), "--out", join(place, "out"), ...more);

type Printed = {
  dials: { wheel: string; revision: string | null; replace: boolean; why: string }[];
  sheets: { name: string; why: string }[];
};

/** What check names once the file was changed. */
async function toldAfter(change: (text: string) => string): Promise<Printed & { names: string; out: string }> {
  const place = folder();
  cpSync(printed, place, { recursive: true });
  // The record names the job's file where it was.
  writeFileSync(join(place, "lathe.yaml"), change(demo));
  const asked = ["check", join(place, "lathe.yaml"), "--out", join(place, "out")];
  const found = JSON.parse((await witnessmark(...asked, "--json")).out).printed as Printed;
  return { ...found, names: found.sheets.map(({ name }) => name).join(" "), out: (await witnessmark(...asked)).out };
}

const swap = (from: string, to: string) => (text: string) => {
  if (!text.includes(from)) throw new Error(`the demo has no ${from}`);
  return text.replace(from, to);
};

describe("check after printing", () => {
  test.each([
    ["nothing", (text: string) => text],
    ["a comment", (text: string) => `# looked over\n${text}`],
    ["the revision and the date, which change no number", swap("revision: 3", "revision: 4")],
  ])("%s: nothing is to be printed again", async (_, change) => {
    const { dials, sheets, out } = await toldAfter(change);
    expect({ dials, sheets }).toEqual({ dials: [], sheets: [] });
    expect(out).toMatch(/All \d+ sheets that were printed are up to date\./);
  });

  test("a wheel measured again: its dial by what it would be wrong, and every sheet with its numbers, no other", async () => {
    // The top slide's screw, 16 tpi as stated, is found a hundredth of a millimetre finer.
    const { dials, names, out } = await toldAfter(swap("feed: 16 tpi", "feed: 1.5775 mm"));
    expect(dials).toMatchObject([{ wheel: "Top slide", revision: "3" }]);
    expect(names).toMatch(/turns/);
    expect(names).not.toMatch(/belt-card|speed-diagram|drilling-card|angle-scale/);
    expect(out).toContain("Top slide, printed at revision 3");
    expect(out).toContain("To be printed again");
  });

  test("a pulley: the sheets with speeds and no dial", async () => {
    const { dials, names } = await toldAfter(swap("driver: 63", "driver: 64"));
    expect(dials).toEqual([]);
    for (const name of ["belt-card", "speed-diagram", "speed-tree"]) expect(names).toContain(name);
    expect(names).not.toMatch(/turns|dial|tapers|threads/);
  });

  test("paper a little thicker: the dials may stay, by what is less than a fifth of a division", async () => {
    const { dials } = await toldAfter(swap("thickness: 0.11", "thickness: 0.15"));
    expect(dials.length).toBeGreaterThan(1);
    for (const { replace, why } of dials) expect([replace, /may stay/.test(why)]).toEqual([false, true]);
  });

  test("another drum: its dial by its length", async () => {
    const { dials } = await toldAfter(swap("diameter: 38", "diameter: 38.6"));
    expect(dials.map(({ wheel }) => wheel)).toContain("Cross slide");
    for (const { replace, why } of dials) {
      expect(replace).toBe(true);
      expect(why).toMatch(/it is \d+\.\d\d mm long; it should be \d+\.\d\d mm/);
    }
  });

  test("another correction of the printer: what is true to size alone", async () => {
    const { dials, sheets } = await toldAfter(swap("across: 199.3 of 200", "across: 199.1 of 200"));
    expect(dials).toEqual([]);
    expect(sheets.map(({ name }) => name)).toContain("dial");
    for (const { why } of sheets) expect(why).toContain("measure its check bars");
  });

  test("a handwheel that is gone: its dial is not to be trusted", async () => {
    const { dials } = await toldAfter(swap("name: Cross slide", "name: Cross screw"));
    expect(dials).toMatchObject([{ wheel: "Cross slide", replace: true }]);
  });
});

describe("the record", () => {
  test("keeps other sheets when one is printed again, and print tells which dial to take off", async () => {
    const place = folder();
    cpSync(printed, place, { recursive: true });
    writeFileSync(join(place, "lathe.yaml"), swap("divisions: 0.001 in", "divisions: 0.002 in")(demo));
    const { err } = await print(place, "--sheet", "dial");
    expect(err).toContain("Top slide: take off the dial that was printed before");
    const { out } = await witnessmark("check", join(place, "lathe.yaml"), "--out", join(place, "out"));
    expect(out).toContain("turns");
    expect(out).not.toContain("Dials that are stuck on");
  });

  test("a changed job names its plan", async () => {
    const place = folder();
    writeFileSync(join(place, "lathe.yaml"), demo);
    writeFileSync(join(place, "pin.yaml"), job);
    await print(place, "--sheet", "plan", "--job", join(place, "pin.yaml"));
    writeFileSync(join(place, "pin.yaml"), swap("depth: 13", "depth: 12")(job));
    const { out } = await witnessmark("check", join(place, "lathe.yaml"), "--out", join(place, "out"));
    expect(out).toContain("plan of pin; printed at revision 3");
  });

  test("the same file gives the same record twice", async () => {
    const place = folder();
    cpSync(printed, place, { recursive: true });
    const record = join(place, "out", "lathe-printed.json");
    await print(place, "--sheet", "dial", "--handwheel", "Top slide");
    const once = readFileSync(record, "utf8");
    await print(place, "--sheet", "dial", "--handwheel", "Top slide");
    expect(readFileSync(record, "utf8")).toBe(once);
  });

  test("a dial printed again after a change is the one that is stuck on: it is not to be taken off again", async () => {
    const place = folder();
    cpSync(printed, place, { recursive: true });
    writeFileSync(join(place, "lathe.yaml"), swap("divisions: 0.001 in", "divisions: 0.002 in")(demo));
    const asked = ["check", join(place, "lathe.yaml"), "--out", join(place, "out")];
    expect((await witnessmark(...asked)).out).toMatch(/Print it again and take the\s+old one off/);
    await print(place, "--sheet", "dial", "--handwheel", "Top slide");
    expect((await witnessmark(...asked)).out).not.toMatch(/take the\s+old one off/);
    // The other wheels' dials are known still.
    writeFileSync(join(place, "lathe.yaml"), swap("diameter: 38", "diameter: 38.6")(demo));
    expect((await witnessmark(...asked)).out).toContain("Cross slide, printed at revision 3");
  });

  test("job and template are found from wherever one stands, and a changed template names its sheet", async () => {
    const place = folder();
    writeFileSync(join(place, "lathe.yaml"), demo);
    writeFileSync(join(place, "pin.yaml"), job);
    const card = "title: My card\nneeds: drive\nblocks: [positions: { materials: 2 }]\n";
    writeFileSync(join(place, "card.yaml"), card);
    const bin = join(process.cwd(), "dist", "witnessmark.cjs");
    const inside = (...args: string[]) => spawnSync(process.execPath, [bin, ...args], { cwd: place, encoding: "utf8" });
    inside("print", "lathe.yaml", "--sheet", "plan,card.yaml", "--job", "pin.yaml", "--out", "p");
    const asked = ["check", join(place, "lathe.yaml"), "--out", join(place, "p")];
    expect((await witnessmark(...asked)).out).toContain("All 2 sheets that were printed are up to date.");
    writeFileSync(join(place, "card.yaml"), card.replace("materials: 2", "materials: 1"));
    expect((await witnessmark(...asked)).out).toContain("card; printed at revision 3: what is shown there has changed");
  });

  test("a name with a tab in it is compared as any other", async () => {
    const place = folder();
    const text = (feed: string) =>
      `name: L\nhandwheels: [{ name: "Cross\\tslide", feed: ${feed}, dial: { shape: drum, diameter: 38, width: 9 } }]\n`;
    writeFileSync(join(place, "lathe.yaml"), text("2.3 mm"));
    await print(place, "--sheet", "dial");
    writeFileSync(join(place, "lathe.yaml"), text("2.4 mm"));
    const { out } = await witnessmark("check", join(place, "lathe.yaml"), "--out", join(place, "out"));
    expect(out.replace(/\s+/g, " ")).toContain("Print it again and take the old one off");
  });

  test.each([
    ["cut short", (text: string) => text.slice(0, 200)],
    ["of another shape", () => '{ "made-by-witnessmark": 1, "sheets": { "__proto__": [] } }'],
    ["with control characters", (text: string) => text.replace('"sheet": "dial"', '"sheet": "\\u001b[31mdial"')],
    ["too large to be one", (text: string) => text + " ".repeat(2_000_000)],
    ["empty", () => ""],
  ])("%s: check says that it cannot be understood, and goes on", async (_, spoil) => {
    const place = folder();
    cpSync(printed, place, { recursive: true });
    const record = join(place, "out", "lathe-printed.json");
    writeFileSync(record, spoil(readFileSync(record, "utf8")));
    const { code, out, err } = await witnessmark("check", join(place, "lathe.yaml"), "--out", join(place, "out"));
    expect({ code, err }).toEqual({ code: 0, err: "" });
    expect(out).toContain("lathe-printed.json cannot be understood");
  });

  test("a file of that name which witnessmark did not make is left alone, and no page is written", async () => {
    const place = folder();
    writeFileSync(join(place, "lathe.yaml"), demo);
    cpSync(join(place, "lathe.yaml"), join(place, "out", "lathe-printed.json"));
    const { code, err } = await print(place, "--sheet", "dial");
    expect(code).toBe(1);
    expect(err).toContain("was not made by witnessmark");
    expect(readFileSync(join(place, "out", "lathe-printed.json"), "utf8")).toBe(demo);
  });
});
