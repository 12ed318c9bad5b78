import { describe, expect, test } from "vitest";
import { parse } from "yaml";
import { goTo, hasBrowser, inBrowser } from "./browser.js";

const begun = "name: L # mine\nhandwheels:\n  - name: S\n    feed: { readings: { gauge: 0.01 } }\n";

describe.runIf(hasBrowser)("readings typed at the machine, on a telephone", () => {
  const { written, context, open } = inBrowser();

  test("Enter goes on to the next turn; a wild reading is pointed at at once; the way back gives the lost motion", async () => {
    const { page, faults } = await open(
      await written(),
      await context({ viewport: { width: 360, height: 740 }, hasTouch: true, isMobile: true }),
    );
    const text = async () => {
      await page.getByRole("button", { name: "text", exact: true }).click();
      const words = (await page.locator(".cm-line").allTextContents()).join("\n");
      await page.getByRole("button", { name: "form", exact: true }).click();
      return words;
    };
    await page.getByRole("button", { name: "text", exact: true }).click();
    await page.locator(".cm-content").click();
    await page.evaluate((words) => document.execCommand("insertText", false, words), begun);
    await page.getByRole("button", { name: "form", exact: true }).click();
    await goTo(page, "Handwheels");
    const cell = (column: string, row: number) => page.locator(`#at-handwheels-0-feed-readings-${column}-${row}`);
    const inHand = () => page.evaluate(() => document.activeElement?.id.split("-").slice(-2).join(" "));
    await cell("turns", 0).tap();
    for (const [at, turn] of ["0", "4"].entries()) {
      await page.keyboard.type(turn);
      await page.keyboard.press("Enter");
      expect(await inHand()).toBe(`turns ${at + 1}`);
    }
    // From the third on a row begins with its turn by itself.
    await cell("travel", 0).tap();
    const out = ["0", "7.98", "15.96", "24.43", "31.91", "39.89", "47.87", "55.85"];
    for (const [at, reading] of out.entries()) {
      await page.keyboard.type(reading);
      if (at === 7) break;
      await page.keyboard.press("Enter");
      expect(await inHand()).toBe(`travel ${at + 1}`);
    }
    expect(await page.locator(".grid tbody tr").count()).toBe(9);
    expect(await cell("turns", 7).inputValue()).toBe("28");
    // Half a millimetre beside the others, at twelve turns.
    const wild = page.locator(".grid tr.doubted");
    await expect.poll(() => wild.count()).toBe(1);
    expect(await wild.locator("input").nth(1).inputValue()).toBe("24.43");
    const so = page.locator(".so [role=status]");
    await expect.poll(() => so.textContent()).toContain("do not belong to the others");
    expect(await page.locator(".so circle.open").count()).toBe(1);
    await cell("travel", 3).fill("23.93");
    await expect.poll(() => wild.count()).toBe(0);
    await expect.poll(() => so.textContent()).toMatch(/\d+ more readings like these would halve the ±/);
    expect(await so.textContent()).not.toContain("lost motion");

    await cell("return", 0).tap();
    for (const [at, reading] of out.entries()) {
      await page.keyboard.type((Number(at === 3 ? "23.93" : reading) + 0.1).toFixed(2));
      if (at < 7) await page.keyboard.press("Enter");
    }
    await expect.poll(() => so.textContent()).toContain("lost motion 0.100 mm");
    const { handwheels } = parse(await text());
    expect(handwheels[0].feed.readings).toEqual({
      gauge: 0.01,
      turns: [0, 4, 8, 12, 16, 20, 24, 28],
      travel: [0, 7.98, 15.96, 23.93, 31.91, 39.89, 47.87, 55.85],
      return: [0.1, 8.08, 16.06, 24.03, 32.01, 39.99, 47.97, 55.95],
    });
    expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(360);
    expect(faults).toEqual([]);
  }, 90_000);
});

describe.runIf(hasBrowser)("words in fields", () => {
  const { written, context, open } = inBrowser();

  test.each([
    ["a desk", 1280, 900],
    ["a telephone", 360, 740],
  ])(
    "none of the demo's are cut at any station: %s",
    async (_, width, height) => {
      const { page } = await open(
        await written("templates/machines/boathouse.yaml", "--job", "templates/jobs/deck-pin.yaml"),
        await context({ viewport: { width, height } }),
      );
      for (const name of await page.locator(".rule button").allTextContents()) {
        await goTo(page, name);
        await page.waitForTimeout(300);
        const cut = await page.evaluate(() => {
          const pen = document.createElement("canvas").getContext("2d") as CanvasRenderingContext2D;
          const wide = (words: string, by: Element) => {
            pen.font = getComputedStyle(by).font;
            return pen.measureText(words).width;
          };
          const fields = [
            ...document.querySelectorAll<HTMLInputElement>(".work input:not([type])"),
            ...document.querySelectorAll<HTMLInputElement>(".work input[type=text]"),
          ];
          const choices = [...document.querySelectorAll("select")].map(
            (one) => [one, one.selectedOptions[0]?.textContent ?? "", 24] as const,
          );
          return [...fields.map((one) => [one, one.value, 4] as const), ...choices].flatMap(([one, words, beside]) =>
            one.clientWidth > 0 && wide(words, one) + beside > one.clientWidth ? [`${one.id}: ${words}`] : [],
          );
        });
        expect(cut, name).toEqual([]);
      }
    },
    60_000,
  );
});
