import { describe, expect, test } from "vitest";
import { type LineRead, readPdf } from "../../support/readPdf.js";
import { hasBrowser, inBrowser, taken } from "./browser.js";

/** The strip that he typed, to 0.001 mm: round a drum of 38 mm and half the paper and half the glue on either side (0.1 and 0.05 mm, as
 *  the file says when it says nothing), a turn of 2.117 mm divided by its own marks. */
function measureStrip(lines: readonly LineRead[]): void {
  const around = Math.PI * (38 + 0.1);
  const marks = lines.filter(
    ({ stroked, pen, from, to }) =>
      stroked && [0.25, 0.18, 0.13].some((own) => Math.abs(pen - own) < 1e-6) && Math.abs(from.x - to.x) < 1e-6,
  );
  // One strip, from its lowest edge: other copies and the picture stand at other heights.
  const byHeight = Map.groupBy(marks, ({ from, to }) => Math.max(from.y, to.y).toFixed(3));
  console.log(
    around,
    [...byHeight].map(([y, l]) => [
      y,
      l.length,
      Math.min(...l.map((m) => m.from.x)),
      Math.max(...l.map((m) => m.from.x)),
      l.slice(0, 6).map((m) => m.from.x),
    ]),
  );
}

describe.runIf(hasBrowser)("a newcomer at an empty page", () => {
  const { written, context, open } = inBrowser();

  test("gets to the PDF of a strip, by the keyboard alone", async () => {
    const { page, faults } = await open(await written(), await context());
    const tabTo = async (selector: string) => {
      for (let press = 0; press < 120; press++) {
        if (await page.evaluate((css) => document.activeElement?.matches(css) ?? false, selector)) return;
        await page.keyboard.press("Tab");
      }
      throw new Error(`no way to ${selector} by Tab`);
    };
    const press = async (selector: string) => {
      await tabTo(selector);
      await page.keyboard.press("Enter");
    };
    const type = async (selector: string, words: string) => {
      await tabTo(selector);
      await page.keyboard.press("Control+A");
      await page.keyboard.type(words);
    };
    await type("#at-name", "Shed lathe");
    await press(".rule li:nth-child(3) button");
    await press("#at-handwheels > button.add");
    await type("#at-handwheels-0-name", "Cross slide");
    await press('.more button[title="True travel for one turn of the handwheel"]');
    await type("#at-handwheels-0-feed", "2.117");
    await press('.more button[title="The part that the dial is stuck on"]');
    await tabTo("#at-handwheels-0-dial-shape");
    await page.keyboard.type("drum");
    await press('.more button[title="Of the bare drum, or the larger one of a bevel"]');
    await type("#at-handwheels-0-dial-diameter", "38");
    await press('.more button[title="Of the strip, or along the slope of a bevel"]');
    await type("#at-handwheels-0-dial-width", "9");
    await page.locator(".sheet svg").first().waitFor();
    await press(".rule li:last-child button");
    await tabTo('.sheets input[value="dial"]');
    await page.keyboard.press("Space");
    await tabTo("#format");
    const { name, bytes } = await taken(page, async () => {
      await page.keyboard.press("Tab");
      await page.keyboard.press("Enter");
    });
    expect(name).toBe("lathe-dial.pdf");
    const { pages } = await readPdf(bytes);
    expect(JSON.stringify(pages)).toContain("Cross slide");
    measureStrip(pages[0]?.lines ?? []);
    expect(faults).toEqual([]);
  }, 120_000);

  test("what was typed is there again after a crash, and another tab is told of", async () => {
    const file = await written();
    const shared = await context();
    const { page } = await open(file, shared);
    await page.locator("#at-name").fill("Half a na");
    await page.waitForTimeout(600);
    const second = await open(file, shared);
    expect(await second.page.locator("#at-name").inputValue()).toBe("Half a na");
    await second.page.locator("#at-name").fill("Theirs");
    await page.getByText("Another tab has changed these files.").waitFor();
    await page.getByRole("button", { name: "take what it has" }).click();
    expect(await page.locator("#at-name").inputValue()).toBe("Theirs");
  }, 60_000);

  test("a browser that keeps nothing says so, and goes on", async () => {
    const refusing = await context();
    await refusing.addInitScript(() => {
      Storage.prototype.setItem = () => {
        throw new DOMException("full", "QuotaExceededError");
      };
    });
    const { page } = await open(await written(), refusing);
    await page.locator("#at-name").fill("L");
    await page.getByText("This browser keeps nothing (QuotaExceededError)").waitFor();
    expect(await page.locator("header h1").textContent()).toContain("L");
  }, 60_000);
});
