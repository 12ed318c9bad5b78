import { writeFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, test } from "vitest";
import { goTo, hasBrowser, inBrowser, pasted } from "./browser.js";

const slide = `name: L
handwheels:
  - name: Slide
    travel: 40
    feed: { readings: { turns: [0, 4, 8], travel: [0, 16.02, 35.95] } }
    dial: { shape: drum, diameter: 38, width: 9 }
`;

describe.runIf(hasBrowser)("said in the form as one fills it in", () => {
  const { folder, written, context, open } = inBrowser();
  const opened = async (text: string) => {
    const file = join(folder, "m.yaml");
    writeFileSync(file, text);
    return open(await written(file), await context());
  };

  test("what stands for made and not made, what Enter does, and an entry called by its place once at its head", async () => {
    const drive =
      "drive:\n  motor: { speed: 1400 }\n  stages: [{ name: belt, steps: [{ label: 1, driver: 50, driven: 100 }, { label: B, driver: 60, driven: 90 }] }]\n";
    const { page, faults } = await opened(slide + drive);
    await page.getByText("● is made, ○ is not made yet").waitFor();
    await goTo(page, "Belts and gears");
    const heads = page.locator('.item:has([id$="-driver"]) > h3').filter({ hasNotText: "belt" });
    await expect.poll(async () => (await heads.allTextContents()).map((words) => words.trim())).toEqual(["1", "2 B"]);
    await goTo(page, "Handwheels");
    await page.getByText("Enter goes on to what is read next.").waitFor();
    expect(faults).toEqual([]);
  });

  test("a dial numbered in thousandths says how to type its number, and takes it", async () => {
    const { page } = await opened(
      "name: L\nunits: in\nhandwheels:\n  - { name: Cross slide, travel: 4, feed: 0.1, dial: { shape: drum, diameter: 1.5, width: 0.4 } }\n",
    );
    await goTo(page, "Dial");
    await page
      .getByRole("button", { name: /freely|free/i })
      .first()
      .click();
    await page.getByText("or its number as “50 thou”").waitFor();
    await page.getByLabel("Turn it to").fill("50 thou");
    await expect.poll(() => page.locator(".standing b").first().textContent()).toMatch(/^50(?:\.0)?$/);
  });

  test("the gauge's unit and what it is stand there before it is typed; a clicked reading is typed over whole", async () => {
    const { page, faults } = await opened(slide);
    await goTo(page, "Handwheels");
    const gauge = page.locator('[data-way$="gauge"]');
    expect(await gauge.locator(".unit").textContent()).toContain("mm");
    expect(await gauge.textContent()).toMatch(/graduation/);
    const cell = page.locator('[id$="readings-travel-2"]');
    await cell.click();
    await page.keyboard.type("32.13");
    expect(await cell.inputValue()).toBe("32.13");
    // A second click sets the caret.
    await cell.click();
    await page.keyboard.press("End");
    await page.keyboard.type("5");
    expect(await cell.inputValue()).toBe("32.135");
    expect(faults).toEqual([]);
  });

  test("a text that cannot be read is told in the text view's words", async () => {
    const { page } = await opened(slide);
    await page.getByRole("button", { name: "text", exact: true }).click();
    await pasted(page, "name: L\nhandwheels:\n  - name: S\n   travel: 3\n");
    await page.locator(".messages li").first().waitFor();
    const told = (await page.locator(".messages li").first().textContent())?.replace(/^line \d+ /, "").trim() ?? "-";
    await page.getByRole("button", { name: "form", exact: true }).click();
    await expect.poll(() => page.locator("p.lacking").first().textContent()).toContain(`cannot be read: ${told}`);
  });

  test("a new machine is begun where its name is asked for", async () => {
    const { page } = await opened(slide);
    await goTo(page, "Handwheels");
    await page.getByRole("button", { name: "new machine" }).click();
    await page.locator("#at-name").waitFor();
  });

  test("what of a half-filled wheel goes on names the printer check; a piece that is good is not to be mended", async () => {
    const { page } = await opened(slide.replace(/feed: .*/, "feed: 4"));
    await goTo(page, "Ask");
    await page.locator("#measured").fill("119.7");
    await page.getByText("Good enough").waitFor();
    expect(await page.getByRole("button", { name: /: put “/ }).count()).toBe(0);
    await page.locator("#measured").fill("118.5");
    await page
      .getByRole("button", { name: /^(?:across|down): put “/ })
      .first()
      .waitFor();
    expect(await page.locator("#askedDistance + .unit").textContent()).toBe("mm");
    await goTo(page, "Handwheels");
    await page.getByRole("button", { name: "+ handwheel", exact: true }).click();
    await page.locator("#at-handwheels-1-name").fill("Other");
    await page.locator("#at-handwheels-1-dial-shape").selectOption("face");
    await expect
      .poll(() => page.locator(".stops").first().textContent(), { timeout: 15_000 })
      .toContain("Printer check");
  });
});
