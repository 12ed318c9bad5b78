/** The page in a real browser, against what it must keep to: medians, since a machine with other work is late now and then.
 *  `node bench/page.mjs [runs]`; called by `npm run bench` too. WITNESSMARK_BROWSER names a browser elsewhere. */
import { spawnSync } from "node:child_process";
import { existsSync, mkdtempSync, readFileSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { constants, gzipSync } from "node:zlib";
import { chromium } from "playwright-core";

const executablePath = [process.env.WITNESSMARK_BROWSER, "/usr/bin/chromium", "/usr/bin/chromium-browser"].find(
  (path) => path !== undefined && existsSync(path),
);
const runs = Math.max(10, Number(process.argv[2] ?? 10));
const median = (values) => [...values].sort((a, b) => a - b)[Math.floor(values.length / 2)];

async function measure() {
  const folder = mkdtempSync(join(tmpdir(), "witnessmark-bench-page-"));
  const file = join(folder, "page.html");
  const job = ["--job", "templates/jobs/deck-pin.yaml"];
  const words = ["dist/witnessmark.cjs", "page", "templates/machines/boathouse.yaml", ...job, "--out", file];
  if (spawnSync(process.execPath, words).status !== 0) throw new Error("the page could not be written");
  const browser = await chromium.launch({ executablePath, headless: true, args: ["--no-sandbox", "--disable-gpu"] });
  const opened = [];
  const drawn = [];
  for (let run = 0; run < runs; run++) {
    const page = await fresh(browser);
    await page.goto(`file://${file}`);
    await page.locator("#at-name").waitFor();
    opened.push(await page.evaluate(() => globalThis.usable));
    await page.locator(".sheet svg").first().waitFor();
    drawn.push(await page.evaluate(() => globalThis.sheetDrawn));
    await page.context().close();
  }
  const page = await fresh(browser);
  await page.goto(`file://${file}`);
  const station = (name) => page.locator(".rule li button", { hasText: new RegExp(`^${name}$`) }).click();
  await station("Handwheels");
  await page.locator("#at-handwheels-0-feed, #at-handwheels-0-name").first().waitFor();
  const sheet = async (name) => {
    await page.locator("#sheet").selectOption(name);
    await page.locator(".sheet svg").first().waitFor();
    await page.waitForTimeout(3000);
    const keystroke = async (all) =>
      median(await typed(page, "#at-handwheels-0-dial-width", ".pages", ["8", "9"], all));
    return [await keystroke(false), await keystroke(true)];
  };
  const [dial, allOfDial] = await sheet("dial");
  await station("Machine");
  const card = await (async () => {
    await page.locator("#sheet").selectOption("belt-card");
    await page.waitForTimeout(3000);
    return median(await typed(page, "#at-name", ".pages", ["Boathouse lathe A", "Boathouse lathe B"]));
  })();
  await station("Dial");
  await page.locator(".hand .dial").waitFor();
  await page.waitForTimeout(1500);
  const turned = median(await pressed(page));
  await browser.close();
  rmSync(folder, { recursive: true });
  const bytes = gzipSync(readFileSync("dist/page.html"), { level: constants.Z_BEST_COMPRESSION }).length;
  const rows = [
    ["opens usable, from a local file", 1500, median(opened), "ms"],
    ["first sheet drawn, from the same moment", undefined, median(drawn), "ms"],
    ["a key turns the dial in the hand", 50, turned, "ms"],
    ["keystroke to the first page of the dial sheet", 150, dial, "ms"],
    ["keystroke to all its pages", undefined, allOfDial, "ms"],
    ["keystroke to the whole belt card", 150, card, "ms"],
    ["whole page, gzipped", 700, bytes / 1000, "kB"],
  ];
  console.log(`\nthe page in a browser, medians of ${runs} openings and 20 keystrokes`);
  console.log(`${"measure".padEnd(44)} ${"limit".padStart(8)} ${"here".padStart(8)}`);
  for (const [name, limit, here, unit] of rows)
    console.log(
      `${name.padEnd(44)} ${`${limit ?? ""}`.padStart(8)} ${here.toFixed(0).padStart(8)} ${unit}${limit !== undefined && here > limit ? " MISSED" : ""}`,
    );
}

/** A page that notes, by its own clock since it was asked for, when a field can be typed in and when a sheet is there. */
async function fresh(browser) {
  const context = await browser.newContext({ viewport: { width: 1280, height: 900 } });
  await context.addInitScript(() => {
    new MutationObserver(() => {
      if (document.querySelector("#at-name")) globalThis.usable ??= performance.now();
      if (document.querySelector(".sheet svg")) globalThis.sheetDrawn ??= performance.now();
    }).observe(document, { childList: true, subtree: true });
  });
  return context.newPage();
}

/** From an input in a field to the frame that shows the paper drawn anew, ms: its first page, or with all that are drawn after it. */
const typed = (page, field, paper, words, all = false) =>
  page.evaluate(
    async ([field, paper, words, all]) => {
      const input = document.querySelector(field);
      const took = [];
      for (let stroke = 0; stroke < 22; stroke++) {
        await new Promise((done) => setTimeout(done, 120));
        const start = performance.now();
        const shown = new Promise((done) => {
          const watcher = new MutationObserver((changes) => {
            if (!changes.some(({ addedNodes }) => [...addedNodes].some(({ nodeName }) => nodeName === "svg"))) return;
            watcher.disconnect();
            const frame = () => requestAnimationFrame(() => setTimeout(done));
            // What is drawn after the first page waits in timers that were set before this one.
            if (all) setTimeout(frame);
            else frame();
          });
          watcher.observe(document.querySelector(paper), { childList: true, subtree: true });
        });
        input.value = words[stroke % words.length];
        input.dispatchEvent(new InputEvent("input", { bubbles: true }));
        await Promise.race([
          shown,
          new Promise((_, late) => setTimeout(() => late(new Error(`${field}: nothing was drawn`)), 10_000)),
        ]);
        took.push(performance.now() - start);
      }
      return took.slice(2);
    },
    [field, paper, words, all],
  );

/** From a key on the dial in the hand to the frame that shows its reading, ms. */
const pressed = (page) =>
  page.evaluate(async () => {
    const dial = document.querySelector(".hand .dial");
    const took = [];
    for (let stroke = 0; stroke < 22; stroke++) {
      await new Promise((done) => setTimeout(done, 60));
      const start = performance.now();
      const shown = new Promise((done) => {
        const watcher = new MutationObserver(() => {
          watcher.disconnect();
          requestAnimationFrame(() => setTimeout(done));
        });
        watcher.observe(document.querySelector(".standing"), { childList: true, subtree: true, characterData: true });
      });
      dial.dispatchEvent(new KeyboardEvent("keydown", { key: "ArrowRight", bubbles: true }));
      await shown;
      took.push(performance.now() - start);
    }
    return took.slice(2);
  });

if (executablePath === undefined) console.log("no browser here: the page was not measured");
else await measure();
