import { describe, expect, test } from "vitest";
import { parse } from "yaml";
import { goTo, hasBrowser, inBrowser, taken } from "./browser.js";

const file = (name: string, content: string) => ({ name, mimeType: "text/plain", buffer: Buffer.from(content) });
const machine = (readings: string) => `name: L\nhandwheels:\n  - name: Slide\n    feed: { readings: ${readings} }\n`;
const table = "turns;out (in);back\n0;0;0,1\n1;0,1;2,7\n2;0,2;5,2\n3;0,3;7,7\n";

describe.runIf(hasBrowser)("readings in a CSV", () => {
  const { written, context, open } = inBrowser();

  test.each([
    ["named alone", "slide.csv", {}],
    ["named beside its gauge", "{ file: slide.csv, gauge: 0.01 }", { gauge: 0.01 }],
  ])("%s: they are seen in the form, and brought into the file", async (_, readings, beside) => {
    const { page, faults } = await open(await written(), await context());
    await page
      .locator('input[type="file"]')
      .setInputFiles([file("l.yaml", machine(readings)), file("slide.csv", table)]);
    await goTo(page, "Handwheels");
    const row = page.locator(".readings tbody tr");
    await expect.poll(() => row.count()).toBe(4);
    expect(await row.nth(1).locator("td").allTextContents()).toEqual(["1", "2.54", "2.7"]);
    // With what they say, as beside readings that are typed.
    await expect.poll(() => page.locator(".so [role=status]").textContent()).toMatch(/1 turn = 2\.54\d* /);
    await expect.poll(() => page.locator(".so svg .dot").count()).toBe(4);
    await page.getByRole("button", { name: "bring them into" }).click();
    await expect.poll(() => page.locator("#at-handwheels-0-feed-readings-travel-1").inputValue()).toBe("2.54");
    await page.locator("#at-handwheels-0-feed-readings-travel-1").fill("2.55");
    await goTo(page, "Take away");
    const { bytes } = await taken(page, () => page.getByRole("button", { name: "l.yaml" }).click());
    expect(parse(Buffer.from(bytes).toString()).handwheels[0].feed.readings).toEqual({
      ...beside,
      turns: [0, 1, 2, 3],
      travel: [0, 2.55, 5.08, 7.62],
      return: [0.1, 2.7, 5.2, 7.7],
    });
    expect(faults).toEqual([]);
  });

  test("what is wrong in one is told where it is used, with its line", async () => {
    const { page } = await open(await written(), await context());
    await page
      .locator('input[type="file"]')
      .setInputFiles([file("l.yaml", machine("bad.csv")), file("bad.csv", "turns,travel\n0,0\n1,1,99\n")]);
    await goTo(page, "Handwheels");
    await page.locator(".readings .messages li.error", { hasText: "line 3 of “bad.csv”: 3 cells" }).waitFor();
    // And at the head, as every other fault, in both views.
    const head = page.locator(".file > .messages li.error", { hasText: "line 3 of “bad.csv”: 3 cells" });
    await head.getByRole("button", { name: "feed readings of Slide" }).click();
    await expect.poll(() => page.evaluate(() => document.activeElement?.id)).toMatch(/^at-handwheels-0-feed-readings/);
    await page.getByRole("button", { name: "text", exact: true }).click();
    await head.getByRole("button", { name: "“bad.csv”" }).click();
    const line = () =>
      page.evaluate(() => document.getSelection()?.anchorNode?.parentElement?.closest(".cm-line")?.textContent);
    await expect.poll(line).toContain("readings: bad.csv");
  });

  test("that it takes the place of typed readings is said before", async () => {
    const { page } = await open(await written(), await context());
    await page
      .locator('input[type="file"]')
      .setInputFiles([file("l.yaml", machine("{ turns: [0, 1, 2], travel: [0, 2, 4] }")), file("slide.csv", table)]);
    await page.getByRole("button", { name: "use it for Slide, in the place of its 3 typed readings" }).waitFor();
  });

  test("one that is opened alone is put to use by a button", async () => {
    const { page, faults } = await open(await written(), await context());
    await page
      .locator('input[type="file"]')
      .setInputFiles(file("l.yaml", "name: L\nhandwheels:\n  - { name: Slide, feed: 2 mm }\n"));
    await page.locator('input[type="file"]').setInputFiles(file("slide.csv", table));
    await page.getByRole("button", { name: "use it for Slide" }).click();
    await expect.poll(() => page.locator(".readings tbody tr").count()).toBe(4);
    expect(await page.getByText("no handwheel uses it yet").count()).toBe(0);
    expect(faults).toEqual([]);
  });
});
