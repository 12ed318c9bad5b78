import { describe, expect, test } from "vitest";
import { type LineRead, readPdf } from "../../support/readPdf.js";
import { goTo, hasBrowser, inBrowser, taken } from "./browser.js";

/** Strips as they were typed, to 0.001 mm: once round the middle of paper of 0.10 mm (the file says no other) on a drum of 38 mm; marks
 *  of 0.02 mm, of which a turn of 2.117 mm holds 105 and a short one; cut in the middle of a division. */
function measureStrips(lines: readonly LineRead[]): void {
  const around = Math.PI * (38 + 0.1);
  const pitch = (around * 0.02) / 2.117;
  const upright = lines.filter(({ stroked, from, to }) => stroked && Math.abs(from.x - to.x) < 1e-6);
  const strips = new Map<string, number[]>();
  for (const { pen, from } of upright)
    if ([0.25, 0.18, 0.13].some((own) => Math.abs(pen - own) < 1e-6)) {
      const edge = from.y.toFixed(3);
      strips.set(edge, [...(strips.get(edge) ?? []), from.x]);
    }
  // Two copies may stand side by side.
  const whole = [...strips.values()]
    .flatMap((marks) => apart(marks.sort((a, b) => a - b)))
    .filter((marks) => marks.length === 106);
  expect(whole.length).toBeGreaterThan(0);
  for (const marks of whole) {
    const gaps = marks.slice(1).map((x, index) => x - (marks[index] ?? 0));
    const short = gaps.filter((gap) => Math.abs(gap - pitch) > 0.001);
    expect(short).toEqual([expect.closeTo(around - 105 * pitch, 3)]);
    const [left = 0, right = 0] = [marks[0], marks.at(-1)];
    expect(Math.abs(right - left + pitch - around)).toBeLessThan(0.001);
    for (const cut of [left - pitch / 2, right + pitch / 2])
      expect(Math.min(...upright.map(({ from }) => Math.abs(from.x - cut)))).toBeLessThan(0.001);
  }
}

/** Rising places in groups that are more than 5 mm from each other. */
function apart(places: readonly number[]): number[][] {
  const groups: number[][] = [];
  for (const place of places) {
    const last = groups.at(-1);
    if (last && place - (last.at(-1) ?? 0) < 5) last.push(place);
    else groups.push([place]);
  }
  return groups;
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
    await type("#at-handwheels-0-feed", "2.117");
    await tabTo("#at-handwheels-0-dial-shape");
    await page.keyboard.type("drum");
    await type("#at-handwheels-0-dial-diameter", "38");
    await type("#at-handwheels-0-dial-width", "9");
    await page.locator(".sheet svg").first().waitFor();
    await press(".rule li:last-child button");
    // What each sheet lacks is looked at once typing rests.
    await page.locator('.sheets input[value="dial"]:enabled').waitFor();
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
    measureStrips(pages[0]?.lines ?? []);
    expect(faults).toEqual([]);
  });

  test.each([
    ["a desk", 1280, "100%"],
    ["a phone", 360, "100%"],
    ["a phone, text at twice its size", 360, "200%"],
  ])("gets to the PDF of an inch lathe's strip: %s", async (_, width, fontSize) => {
    const { page, faults } = await open(
      await written(),
      await context({ viewport: { width, height: 740 }, hasTouch: width < 500 }),
    );
    await page.evaluate((size) => {
      document.documentElement.style.fontSize = size;
    }, fontSize);
    const go = async (name: string) => {
      const fold = page.locator(".fold");
      if (await fold.isVisible()) await fold.click();
      await page.getByRole("navigation").getByRole("button", { name, exact: true }).click();
    };
    await page.getByLabel("Name", { exact: true }).fill("Garage lathe");
    await page.getByLabel("Units").selectOption("in");
    await go("Handwheels");
    await page.getByRole("button", { name: "+ handwheel" }).click();
    await page.getByLabel("Name", { exact: true }).fill("Cross slide");
    await page.getByLabel("One turn moves it in").fill("1/10");
    await page.getByLabel("Shape").selectOption("drum");
    await page.getByLabel("Diameter in").fill("1.5");
    await page.getByLabel("Width in").fill("3/8");
    const over = page.locator(".turn-over");
    if (await over.isVisible()) await over.click();
    await page.locator(".sheet svg").first().waitFor();
    expect((await page.locator(".sheet").first().boundingBox())?.y).toBeLessThan(740);
    await go("Take away");
    await page.getByRole("checkbox", { name: "Pieces to cut" }).check();
    const { name, bytes } = await taken(page, () => page.getByRole("button", { name: "take the ticked" }).click());
    expect(name).toBe("lathe-dial.pdf");
    const { pages } = await readPdf(bytes);
    expect(JSON.stringify(pages)).toContain("0.001 in");
    expect(faults).toEqual([]);
  });

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
  });

  test.each([
    [1280, 720],
    [360, 640],
  ])(
    "what is told of the desk is in view far down a page of %s, and covers nothing that is filled in",
    async (width, height) => {
      const file = await written("templates/machines/boathouse.yaml", "--job", "templates/jobs/deck-pin.yaml");
      const shared = await context({ viewport: { width, height } });
      const { page, faults } = await open(file, shared);
      await goTo(page, "Job");
      const field = page.locator("#at-steps-4-to, #at-steps-4-do").first();
      await page.locator(".messages").first().waitFor();
      await page.waitForTimeout(500);
      // As high as it can be seen: where what comes over it would lie.
      const top = async () => (await field.boundingBox())?.y ?? -1;
      await field.evaluate((one) => one.scrollIntoView({ block: "start" }));
      await field.focus();
      expect(await page.evaluate(() => scrollY)).toBeGreaterThan(height);
      const second = await open(file, shared);
      await second.page.locator("#at-name").first().fill("Theirs");
      const told = page.getByText("Another tab has changed these files.");
      await told.waitFor();
      await page.waitForTimeout(500);
      const uncovered = () =>
        field.evaluate((one) => {
          const { left, top, width: across, height: down } = one.getBoundingClientRect();
          return [1, down - 1].every((y) => one.contains(document.elementFromPoint(left + across / 2, top + y)));
        });
      const inView = async () => {
        const { y = -1, height: tall = 1e9 } = (await told.boundingBox()) ?? {};
        return y >= 0 && y + tall < height / 2 + 1;
      };
      expect(await inView()).toBe(true);
      expect(await uncovered()).toBe(true);
      expect(await top()).toBeGreaterThan(0);
      // Wherever the keyboard goes on to.
      for (const key of ["Shift+Tab", "Shift+Tab", "Shift+Tab", "Tab"]) {
        await page.keyboard.press(key);
        const hidden = await page.evaluate(() => {
          const one = document.activeElement as HTMLElement;
          const { left, top: y, width: across } = one.getBoundingClientRect();
          return !one.contains(document.elementFromPoint(left + across / 2, y + 2));
        });
        expect(hidden, key).toBe(false);
      }
      expect(await page.locator(".rule [aria-current]").isVisible()).toBe(true);
      expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(width);
      await page.getByRole("button", { name: "take what it has" }).click();
      await told.waitFor({ state: "detached" });
      expect(faults).toEqual([]);
    },
  );

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
  });
});
