import type { BrowserContext, Page } from "playwright-core";
import { describe, expect, test } from "vitest";
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
  }, 60_000);

  test("has kept what was typed in the text view too", async () => {
    const file = await written();
    const shared = await context();
    const { page } = await open(file, shared);
    await page.getByRole("button", { name: "text", exact: true }).click();
    await page.locator(".cm-content").click();
    await page.keyboard.type("name: Half a te");
    await closed(page, true);
    expect(await again(file, shared)).toBe("Half a te");
  }, 60_000);

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
  }, 60_000);
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
  }, 60_000);

  test("asks nothing where nothing was typed", async () => {
    const { page } = await open(await written("templates/machines/boathouse.yaml"), await context());
    // A touch, without which no browser lets a page ask.
    await named(page).click();
    expect(await closed(page, true)).toBe(false);
  }, 60_000);
});
