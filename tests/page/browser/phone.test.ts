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
  });

  test("who goes to the paper by the rule sees it at once, and a station is its form again", async () => {
    const { page } = await open(await written(...files), await context(PHONE));
    await goTo(page, "Paper");
    await page.locator(".sheet svg").first().waitFor();
    expect(await within(page, ".sheet")).toBe(true);
    await goTo(page, "Machine");
    expect(await page.locator("#at-name").isVisible()).toBe(true);
    expect(await page.locator(".sheet").first().isVisible()).toBe(false);
  });

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
  });

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
  });

  test("what is told stands beneath the place that one touches, in lines as close as any", async () => {
    const { page } = await open(await written(...files), await context(PHONE));
    await goTo(page, "Job");
    await page.locator(".messages li").first().waitFor();
    const told = await page.locator(".messages li").evaluateAll((all) =>
      all.map((one) => {
        const words = document.createRange();
        words.selectNode([...one.childNodes].findLast(({ nodeType }) => nodeType === Node.TEXT_NODE) ?? one);
        const tops = [...new Set([...words.getClientRects()].map(({ top }) => Math.round(top)))];
        return { touched: one.querySelector("button")?.getBoundingClientRect().bottom ?? 0, tops };
      }),
    );
    expect(told.length).toBeGreaterThan(0);
    for (const { touched, tops } of told) {
      expect(tops.length).toBeGreaterThan(1);
      expect(tops[0]).toBeGreaterThanOrEqual(touched - 2);
      for (const [at, top] of tops.slice(1).entries()) expect(top - (tops[at] ?? 0)).toBeLessThan(28);
    }
  });

  test("text at twice its size leaves more than half of the screen to the work, and the station's name is whole or begins its strip", async () => {
    const { page } = await open(await written(...files), await context(PHONE));
    await page.evaluate(() => {
      document.documentElement.style.fontSize = "200%";
    });
    for (const name of await page.locator(".rule li button").allTextContents()) {
      await goTo(page, name);
      await page.waitForTimeout(100);
      const { top, foot, begins, ends, strip } = await page.evaluate(() => {
        const box = (css: string) => document.querySelector(css)?.getBoundingClientRect();
        const [here, strip] = [box(".rule [aria-current]"), box(".rule ol")];
        return {
          top: box(".rule")?.bottom ?? 999,
          foot: box(".turn-over")?.top ?? innerHeight,
          begins: here?.left ?? -1,
          ends: here?.right ?? 999,
          strip: strip ?? { left: 0, right: 0 },
        };
      });
      expect(foot - top, name).toBeGreaterThan(PHONE.viewport.height / 2);
      expect(begins, name).toBeGreaterThanOrEqual(strip.left - 1);
      expect(ends <= strip.right + 1 || begins < strip.left + 20, name).toBe(true);
    }
  });

  test("what belongs in a row stands in one: the views of a file with their undo, the pieces of a long list", async () => {
    const { page } = await open(await written(...files), await context(PHONE));
    // From the highest to the lowest of what is touched in it.
    const spread = (css: string) =>
      page
        .locator(css)
        .first()
        .evaluate((one) => {
          const tops = [...one.querySelectorAll("button")].map((each) => each.getBoundingClientRect().top);
          return Math.max(...tops) - Math.min(...tops);
        });
    expect(await spread(".views")).toBeLessThan(20);
    await goTo(page, "Job");
    expect(await spread(".views")).toBeLessThan(20);
    expect(await spread(".pieces")).toBeLessThan(20);
  });

  test("on its side more than half of it is the work's, wherever one has scrolled to", async () => {
    const { page } = await open(
      await written(...files),
      await context({ viewport: { width: 740, height: 360 }, hasTouch: true }),
    );
    await goTo(page, "Handwheels");
    await page.evaluate(() => scrollTo(0, 900));
    const [strip, bar] = [await page.locator(".rule").boundingBox(), await turnOver(page).boundingBox()];
    expect((bar?.y ?? 0) - Math.max(0, (strip?.y ?? 0) + (strip?.height ?? 999))).toBeGreaterThan(180);
  });

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
  });
});
