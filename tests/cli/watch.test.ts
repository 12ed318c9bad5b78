import { type ChildProcess, spawn } from "node:child_process";
import { existsSync, readdirSync, readFileSync, renameSync, rmSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { afterEach, expect, test } from "vitest";
import { folder } from "../support/command.js";

const machine = (name: string, feed = "2.1") =>
  `name: ${name}\nhandwheels: [{ name: Slide, feed: ${feed}, dial: { shape: drum, diameter: 38, width: 9 } }]\n`;
const readings = (slope: number) =>
  `turns;travel\n${[0, 5, 10, 15, 20].map((t) => `${t};${(t * slope).toFixed(3)}`).join("\n")}\n`;

const running: ChildProcess[] = [];
afterEach(() => {
  for (const one of running.splice(0)) one.kill("SIGKILL");
});

/** The real command, watching files of a folder of its own. */
function watching(files: Record<string, string>, ...words: string[]) {
  const where = folder();
  const save = (name: string, text: string) => writeFileSync(join(where, name), text);
  for (const [name, text] of Object.entries(files)) save(name, text);
  const command = join(process.cwd(), "dist/witnessmark.cjs");
  const child = spawn(process.execPath, [command, "print", "lathe.yaml", "--watch", "--format", "svg", ...words], {
    cwd: where,
  });
  running.push(child);
  let [told, printed] = ["", ""];
  child.stderr.on("data", (text) => {
    told += text;
  });
  child.stdout.on("data", (text) => {
    printed += text;
  });
  const ended = new Promise<number | null>((resolve) => child.on("close", resolve));
  const page = (sheet: string) => {
    const path = join(where, "out", `lathe-${sheet}-1.svg`);
    return existsSync(path) ? readFileSync(path, "utf8") : "";
  };
  return {
    ...{ where, save, page, ended },
    told: () => told,
    printed: () => printed,
    times: () => told.match(/printed again$/gm)?.length ?? 0,
    end: (signal: NodeJS.Signals = "SIGINT") => child.kill(signal),
    /** Until it is so; the limit only ends a test that has failed. */
    async until(what: string, so: () => boolean) {
      for (let waited = 0; !so(); waited += 50) {
        if (waited > 30_000) throw new Error(`never: ${what}; told: ${told}`);
        await new Promise((resolve) => setTimeout(resolve, 50));
      }
    },
  };
}
type Watching = ReturnType<typeof watching>;

const begun = ({ until, told }: Watching) => until("the first print", () => told().includes("Ctrl-C ends it"));

test("prints once, then after each save, and ends at Ctrl-C with nothing half written", async () => {
  const watch = watching({ "lathe.yaml": machine("First") }, "--sheet", "dial,turns");
  await begun(watch);
  expect(watch.page("turns")).toContain("First");
  expect(watch.printed().trim().split("\n")).toHaveLength(2);
  watch.save("lathe.yaml", machine("Second"));
  await watch.until("Second", () => watch.page("turns").includes("Second") && watch.times() === 1);
  expect(watch.told()).toContain("lathe.yaml was saved: 2 files printed again");
  // A page is named once.
  expect(watch.printed().trim().split("\n")).toHaveLength(2);
  watch.end();
  expect(await watch.ended).toBe(0);
  expect(readdirSync(join(watch.where, "out")).sort()).toEqual([
    "lathe-dial-1.svg",
    "lathe-printed.json",
    "lathe-turns-1.svg",
  ]);
});

test("a fault is told as ever, the pages stay, and it goes on once that is mended", async () => {
  const watch = watching({ "lathe.yaml": machine("Sound") }, "--sheet", "turns");
  await begun(watch);
  watch.save("lathe.yaml", machine("Faulty").replace("feed:", "fede:"));
  await watch.until("the fault", () => watch.told().includes("nothing is printed until that is mended"));
  expect(watch.told()).toMatch(/^lathe\.yaml:2:\d+: .*fede/m);
  expect(watch.page("turns")).toContain("Sound");
  watch.save("lathe.yaml", machine("Mended"));
  await watch.until("Mended", () => watch.page("turns").includes("Mended"));
  watch.end("SIGTERM");
  expect(await watch.ended).toBe(0);
});

test("a file faulty at the beginning is waited for", async () => {
  const watch = watching({ "lathe.yaml": "name: L\nunits: feet\n" }, "--sheet", "turns");
  await begun(watch);
  expect(watch.told()).toContain("lathe.yaml:2:8");
  watch.save("lathe.yaml", machine("Mended"));
  await watch.until("Mended", () => watch.page("turns").includes("Mended"));
});

test("a file replaced by another, even an older one, and one that goes and comes back", async () => {
  const watch = watching({ "lathe.yaml": machine("First"), "old.yaml": machine("Older") }, "--sheet", "turns");
  await begun(watch);
  renameSync(join(watch.where, "old.yaml"), join(watch.where, "lathe.yaml"));
  await watch.until("Older", () => watch.page("turns").includes("Older") && watch.times() === 1);
  rmSync(join(watch.where, "lathe.yaml"));
  await watch.until("it is missed", () => watch.told().includes("lathe.yaml: cannot be read"));
  watch.save("lathe.yaml", machine("Back"));
  await watch.until("Back", () => watch.page("turns").includes("Back"));
  // As some editors save: away, then a new one under the name.
  const before = watch.told().length;
  renameSync(join(watch.where, "lathe.yaml"), join(watch.where, "lathe.yaml~"));
  watch.save("lathe.yaml", machine("Edited"));
  await watch.until("Edited", () => watch.page("turns").includes("Edited") && watch.times() === 3);
  expect(watch.told().slice(before)).not.toContain("cannot be read");
});

test("readings, also those that the file names only later; jobs and templates", async () => {
  const template = (title: string) => `title: ${title}\nneeds: feed\nblocks:\n  - turn tables\n`;
  const job = (name: string) =>
    `name: ${name}\nunits: mm\nmaterial: brass\nbar: { diameter: 16, out: 40 }\nsteps: [{ do: face, depth: 1 }]\n`;
  const watch = watching(
    { "lathe.yaml": machine("L"), "own.yaml": template("Mine"), "pin.yaml": job("Pin") },
    ...["--sheet", "own.yaml,turns,plan", "--job", "pin.yaml"],
  );
  await begun(watch);
  expect(watch.page("own")).toContain("Mine");
  expect(watch.page("plan-pin")).toContain("Pin");
  watch.save("own.yaml", template("Yours"));
  await watch.until("Yours", () => watch.page("own").includes("Yours"));
  watch.save("pin.yaml", job("Peg"));
  await watch.until("Peg", () => watch.page("plan-pin").includes("Peg"));
  // The CSV is not there yet when the file names it.
  watch.save("lathe.yaml", machine("L", "{ readings: slide.csv }"));
  await watch.until(
    "it is missed",
    () =>
      /slide\.csv/.test(watch.told().split("nothing is printed")[0] ?? "") &&
      watch.told().includes("nothing is printed"),
  );
  watch.save("slide.csv", readings(2.5));
  await watch.until("2.500", () => watch.page("turns").includes("1 turn = 2.500 mm"));
  watch.save("slide.csv", readings(1.25));
  await watch.until("1.250", () => watch.page("turns").includes("1 turn = 1.250 mm"));
});

test("saves in quick succession end with the last, and are fewer prints than saves", async () => {
  const watch = watching({ "lathe.yaml": machine("L") }, "--sheet", "turns");
  await begun(watch);
  for (let count = 1; count <= 40; count++) {
    watch.save("lathe.yaml", machine(`Number ${count} of them`));
    await new Promise((resolve) => setTimeout(resolve, 5));
  }
  await watch.until("the last", () => watch.page("turns").includes("Number 40 of them"));
  watch.end();
  expect(await watch.ended).toBe(0);
  expect(watch.times()).toBeLessThan(20);
});

test("Ctrl-C while many machines are printed leaves every page whole", async () => {
  const names = Array.from({ length: 13 }, (_, index) => `lathe-${index}.yaml`);
  const files = Object.fromEntries(names.map((name) => [name, machine(name)]));
  const watch = watching({ "lathe.yaml": machine("L"), ...files }, ...names, "--sheet", "dial,turns");
  await watch.until("the first pages", () => watch.printed() !== "");
  watch.end();
  expect(await watch.ended).toBe(0);
  const pages = readdirSync(join(watch.where, "out"));
  expect(pages.length).toBeGreaterThan(1);
  for (const page of pages) expect(page).toMatch(/^lathe/);
  for (const page of pages.filter((name) => name.endsWith(".svg")))
    expect(readFileSync(join(watch.where, "out", page), "utf8")).toMatch(/<\/svg>\n$/);
});

test.each([
  [["--sheet", "trns"], 'there is no sheet "trns"'],
  [["--job", "pin.yaml"], "pin.yaml: cannot be read"],
])("what no save can mend ends it at once: %j", async (words, told) => {
  const watch = watching({ "lathe.yaml": machine("L") }, ...words);
  expect(await watch.ended).toBe(1);
  expect(watch.told()).toContain(told);
  expect(existsSync(join(watch.where, "out"))).toBe(false);
});
