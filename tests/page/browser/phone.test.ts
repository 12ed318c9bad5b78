import type { Page } from "playwright-core";
import { describe, expect, test } from "vitest";
import { goTo, hasBrowser, inBrowser } from "./browser.js";

const PHONE = { viewport: { width: 360, height: 740 }, hasTouch: true };
const files = ["templates/machines/boathouse.yaml", "--job", "templates/jobs/deck-pin.yaml"];
const turnOver = (page: Page) => page.locator(".turn-over");
const within = async (page: Page, selector: string): Promise<boolean> => {
  const box = await page.locator(selector).first().boundingBox();
  return box !== null && box.y >= 0 && box.y < PHONE.viewport.height - 100;
};

describe.runIf(hasBrowser)("at a phone", () => {
  const { written, context, open } = inBrowser();

  test("the paper is one touch away, wherever the bench was scrolled to, and so is the way back to that place", async () => {
    const { page, faults } = await open(await written(...files), await context(PHONE));
    await goTo(page, "Job");
    await page.locator("#at-steps-5-do").scrollIntoViewIfNeeded();
    // What is told at the head comes later, and moves all below it.
    await page.locator(".messages").first().waitFor();
    await page.waitForTimeout(500);
    const height = async () => Math.round((await page.locator("#at-steps-5-do").boundingBox())?.y ?? -999);
    const was = await height();
    expect(await page.evaluate(() => scrollY)).toBeGreaterThan(1000);
    await turnOver(page).tap();
    await page.locator(".sheet svg").first().waitFor();
    expect(await within(page, ".sheet")).toBe(true);
    expect(await page.locator("#at-steps-5-do").isVisible()).toBe(false);
    expect(await turnOver(page).textContent()).toBe("Bench Job");
    await turnOver(page).tap();
    await expect.poll(height).toBe(was);
    expect(faults).toEqual([]);
  }, 60_000);

  test("who goes to the paper by the rule sees it at once, and a station is its form again", async () => {
    const { page } = await open(await written(...files), await context(PHONE));
    await goTo(page, "Paper");
    await page.locator(".sheet svg").first().waitFor();
    expect(await within(page, ".sheet")).toBe(true);
    await goTo(page, "Machine");
    expect(await page.locator("#at-name").isVisible()).toBe(true);
    expect(await page.locator(".sheet").first().isVisible()).toBe(false);
  }, 60_000);

  test("only the page itself is scrolled up and down", async () => {
    const { page } = await open(await written(...files), await context(PHONE));
    const scrolled = () =>
      page.evaluate(() =>
        [...document.querySelectorAll("body *")].flatMap((one) => {
          const { overflowY } = getComputedStyle(one);
          return ["auto", "scroll"].includes(overflowY) && one.scrollHeight > one.clientHeight + 1
            ? [one.className]
            : [];
        }),
      );
    for (const name of await page.locator(".rule li button").allInnerTexts()) {
      await goTo(page, name);
      await page.waitForTimeout(200);
      expect(await scrolled(), name).toEqual([]);
      if (!(await turnOver(page).isVisible())) continue;
      await turnOver(page).tap();
      await page.waitForTimeout(200);
      expect(await scrolled(), `${name}, turned over`).toEqual([]);
    }
  }, 60_000);

  test("the rule shows where one is, and all of it at a touch", async () => {
    const { page } = await open(await written(...files), await context(PHONE));
    const stations = page.locator(".rule li button");
    const seen = () =>
      stations.evaluateAll(
        (all) =>
          all.filter((one) => {
            const { left, right, top } = one.getBoundingClientRect();
            const edge = one.closest("ol")?.getBoundingClientRect().right ?? 0;
            return left >= -1 && right <= Math.min(edge, innerWidth) + 1 && top >= 0;
          }).length,
      );
    const count = await stations.count();
    expect(await seen()).toBeLessThan(count);
    const fold = page.locator(".rule .fold");
    expect(await fold.textContent()).toBe(`all ${count}`);
    await fold.tap();
    expect(await seen()).toBe(count);
    await page.getByRole("button", { name: "Take away", exact: true }).tap();
    await page.locator(".sheets input").first().waitFor();
    expect(await fold.textContent()).toBe(`all ${count}`);
    const here = await page.locator(".rule [aria-current]").boundingBox();
    expect(here?.x).toBeGreaterThanOrEqual(0);
    expect((here?.x ?? 999) + (here?.width ?? 999)).toBeLessThan(360);
  }, 60_000);

  test("the browser prints the sheet from either side, and nothing of the bar", async () => {
    const { page } = await open(await written(...files), await context(PHONE));
    await turnOver(page).tap();
    await page.locator(".sheet svg").first().waitFor();
    for (const _ of ["paper", "bench"]) {
      await page.emulateMedia({ media: "print" });
      expect(await page.locator(".sheet").first().isVisible()).toBe(true);
      expect(await turnOver(page).isVisible()).toBe(false);
      await page.emulateMedia({ media: "screen" });
      await turnOver(page).tap();
    }
  }, 60_000);
});
