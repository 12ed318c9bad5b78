import { readFileSync } from "node:fs";
import { describe, expect, test } from "vitest";
import { goTo, hasBrowser, inBrowser } from "./browser.js";

const demo = "templates/machines/boathouse.yaml";
const axe = readFileSync("node_modules/axe-core/axe.min.js", "utf8");
const names = (page: import("playwright-core").Page) => page.locator(".rule li button").allInnerTexts();

type Axe = { run: () => Promise<{ violations: { id: string; nodes: { html: string }[] }[] }> };

describe.runIf(hasBrowser)("who reaches the page", () => {
  const { written, context, open } = inBrowser();

  test.each([
    ["a desk", 1280, 900],
    ["a phone", 360, 740],
  ])("no view has a finding of the accessibility checker: %s", async (_, width, height) => {
    // Scripts of a test are refused by the page's policy like all others; the checker is let past it.
    const { page, faults } = await open(
      await written(demo, "--job", "templates/jobs/deck-pin.yaml"),
      await context({ viewport: { width, height }, bypassCSP: true }),
    );
    await page.evaluate(axe);
    for (const name of await names(page)) {
      await goTo(page, name);
      // What is said of the true size before the screen was measured must be read on the bench too.
      if (name === "Paper") await page.getByRole("button", { name: "true size" }).click();
      await page.waitForTimeout(300);
      const found = await page.evaluate(async () => (globalThis as unknown as { axe: Axe }).axe.run());
      const told = found.violations.map(
        ({ id, nodes }) =>
          `${id}: ${nodes
            .map(({ html }) => html)
            .slice(0, 3)
            .join(" | ")}`,
      );
      expect(told, name).toEqual([]);
    }
    expect(faults).toEqual([]);
  });

  test("a phone's width holds every view, and what is touched is 44 pixels or more", async () => {
    const { page } = await open(
      await written(demo, "--job", "templates/jobs/deck-pin.yaml"),
      await context({ viewport: { width: 360, height: 740 }, hasTouch: true }),
    );
    for (const name of await names(page)) {
      await goTo(page, name);
      await page.waitForTimeout(300);
      const { wide, small } = await page.evaluate(() => ({
        wide: document.documentElement.scrollWidth,
        small: [...document.querySelectorAll("button, select, input, summary, a, .open, label:has(input)")].flatMap(
          (one) => {
            const within = one.closest("label") ?? one;
            const { width, height } = within.getBoundingClientRect();
            return width > 0 && Math.min(height, width) < 43.5
              ? [`${one.outerHTML.slice(0, 80)} ${width} × ${height}`]
              : [];
          },
        ),
      }));
      expect(wide, name).toBeLessThanOrEqual(360);
      expect(small, name).toEqual([]);
      // One row at the head: the work begins above half of the screen.
      const { height } = (await page.locator("header").boundingBox()) ?? { height: 999 };
      expect(height, name).toBeLessThanOrEqual(70);
    }
  });

  test.each([
    ["a desk", 1280],
    ["a phone", 360],
  ])("text at twice its size still fits the width: %s", async (_, width) => {
    const { page } = await open(
      await written(demo, "--job", "templates/jobs/deck-pin.yaml"),
      await context({ viewport: { width, height: 900 } }),
    );
    await page.evaluate(() => {
      document.documentElement.style.fontSize = "200%";
    });
    for (const name of await names(page)) {
      await goTo(page, name);
      await page.waitForTimeout(200);
      expect(await page.evaluate(() => document.documentElement.scrollWidth), name).toBeLessThanOrEqual(width);
      const cut = await page.evaluate(() =>
        [...document.querySelectorAll("button, label, h2, h3, legend")].flatMap((one) =>
          one.scrollWidth > one.clientWidth + 1 && one.clientWidth > 0 && getComputedStyle(one).display !== "inline"
            ? [one.outerHTML.slice(0, 80)]
            : [],
        ),
      );
      expect(cut, name).toEqual([]);
    }
  });
});
