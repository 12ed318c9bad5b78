import { type ChildProcess, spawn } from "node:child_process";
import { existsSync, mkdtempSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { type BrowserContext, chromium, type Page } from "playwright-core";
import { describe, expect, test } from "vitest";
import { browserPath } from "../../support/browserPath.js";
import { goTo, hasBrowser, inBrowser, taken } from "./browser.js";

const named = (page: Page) => page.locator("#at-name");

/** Closes a tab as its reader does: the page is asked first. Whether it asked back. */
async function closed(page: Page, leave: boolean): Promise<boolean> {
  page.removeAllListeners("dialog");
  let asked = false;
  page.on("dialog", (dialog) => {
    asked = dialog.type() === "beforeunload";
    void (leave ? dialog.accept() : dialog.dismiss());
  });
  const gone = page.waitForEvent("close", { timeout: leave ? 20_000 : 1500 }).catch(() => undefined);
  await page.close({ runBeforeUnload: true });
  await gone;
  return asked;
}

describe.runIf(hasBrowser)("a tab that is closed while one types", () => {
  const { written, context, open } = inBrowser();
  const again = async (file: string, shared: BrowserContext): Promise<string> =>
    named((await open(file, shared)).page).inputValue();

  test("has kept the last letter, typed just before", async () => {
    const file = await written();
    const shared = await context();
    // What would be written down a little later is never: the tab is gone before.
    await shared.addInitScript(() => {
      const usual = globalThis.setTimeout.bind(globalThis);
      Object.assign(globalThis, {
        setTimeout: (work: () => void, delay = 0) => (delay >= 100 ? 0 : usual(work, delay)),
      });
    });
    const { page } = await open(file, shared);
    await named(page).click();
    await page.keyboard.type("Half a na");
    expect(await page.evaluate(() => JSON.stringify({ ...localStorage }))).not.toContain("Half");
    await closed(page, true);
    expect(await again(file, shared)).toBe("Half a na");
  });

  test("has kept what was typed in the text view too", async () => {
    const file = await written();
    const shared = await context();
    const { page } = await open(file, shared);
    await page.getByRole("button", { name: "text", exact: true }).click();
    await page.locator(".cm-content").click();
    await page.keyboard.type("name: Half a te");
    await closed(page, true);
    expect(await again(file, shared)).toBe("Half a te");
  });

  test("and when its process dies, what was typed 300 ms before", async () => {
    const file = await written();
    const shared = await context();
    const { page } = await open(file, shared);
    await named(page).click();
    await page.keyboard.type("Before it died");
    await page.waitForTimeout(300);
    const died = page.waitForEvent("crash");
    const devtools = await shared.newCDPSession(page);
    void devtools.send("Page.crash").catch(() => undefined);
    await died;
    expect(await again(file, shared)).toBe("Before it died");
  });
});

/** A browser of its own, with what it has on the disk, and a page in it. */
async function ownBrowser(home: string, file: string): Promise<{ page: Page; kill: () => Promise<void> }> {
  const told = join(home, "DevToolsActivePort");
  const before = existsSync(told) ? readFileSync(told, "utf8") : "";
  const flags = [
    "--headless=new",
    "--no-sandbox",
    "--disable-gpu",
    "--no-first-run",
    "--disable-background-networking",
  ];
  const own: ChildProcess = spawn(
    browserPath ?? "chromium",
    [...flags, `--user-data-dir=${home}`, "--remote-debugging-port=0", "about:blank"],
    { stdio: "ignore", detached: true },
  );
  const now = () => (existsSync(told) ? readFileSync(told, "utf8") : "");
  await expect.poll(() => now() !== "" && now() !== before, { timeout: 20_000 }).toBe(true);
  const browser = await chromium.connectOverCDP(`http://127.0.0.1:${now().split("\n")[0]}`);
  const page = (await browser.contexts()[0]?.newPage()) as Page;
  await page.goto(`file://${file}`);
  await named(page).waitFor();
  return {
    page,
    async kill() {
      const gone = new Promise((done) => own.once("exit", done));
      process.kill(-(own.pid as number), "SIGKILL");
      await gone;
    },
  };
}

describe.runIf(hasBrowser)("a browser that is killed while one types", () => {
  const { written, context, open, folder } = inBrowser();

  test("has on the disk what was typed half a second before", async () => {
    const file = await written();
    const home = mkdtempSync(join(folder, "home-"));
    const words = "What was typed last";
    const first = await ownBrowser(home, file);
    try {
      await named(first.page).click();
      await first.page.keyboard.type(words, { delay: 40 });
      await first.page.waitForTimeout(500);
    } finally {
      await first.kill();
    }
    const second = await ownBrowser(home, file);
    try {
      expect(await named(second.page).inputValue()).toBe(words);
      // What is typed from now on is the later copy.
      await named(second.page).fill("And then");
      await second.page.waitForTimeout(500);
      await second.page.reload();
      expect(await named(second.page).inputValue()).toBe("And then");
    } finally {
      await second.kill();
    }
  });

  test("and a database that answers nothing holds nobody up", async () => {
    const shared = await context();
    await shared.addInitScript(() => {
      IDBFactory.prototype.open = () => new EventTarget() as IDBOpenDBRequest;
    });
    const file = await written();
    const { page, faults } = await open(file, shared);
    await named(page).fill("Without it");
    await page.waitForTimeout(500);
    await page.reload();
    expect(await named(page).inputValue()).toBe("Without it");
    expect(faults).toEqual([]);
  });
});

describe.runIf(hasBrowser)("leaving", () => {
  const { written, context, open } = inBrowser();

  test("asks first where work was not taken away, and whoever stays has all of it still", async () => {
    const { page } = await open(await written(), await context());
    await named(page).click();
    await page.keyboard.type("Unsaved");
    expect(await closed(page, false)).toBe(true);
    expect(page.isClosed()).toBe(false);
    expect(await named(page).inputValue()).toBe("Unsaved");
    await goTo(page, "Take away");
    await taken(page, () => page.getByRole("button", { name: "take all files" }).click());
    expect(await closed(page, true)).toBe(false);
    expect(page.isClosed()).toBe(true);
  });

  test("asks nothing where nothing was typed", async () => {
    const { page } = await open(await written("templates/machines/boathouse.yaml"), await context());
    // A touch, without which no browser lets a page ask.
    await named(page).click();
    expect(await closed(page, true)).toBe(false);
  });
});
