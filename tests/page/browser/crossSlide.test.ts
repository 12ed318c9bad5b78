import { describe, expect, test } from "vitest";
import { goTo, hasBrowser, inBrowser } from "./browser.js";

describe.runIf(hasBrowser)("a wheel that moves across", () => {
  const { written, context, open } = inBrowser();

  test("is asked beside its dial what it reads and which way its numbers grow, in words that say what comes of it", async () => {
    const { page, faults } = await open(await written(), await context());
    await page.locator("#at-name").fill("L");
    await goTo(page, "Handwheels");
    await page.getByRole("button", { name: "+ handwheel", exact: true }).click();
    const [reads, increases] = ["#at-handwheels-0-reads", "#at-handwheels-0-dial-increases"].map((id) =>
      page.locator(id),
    );
    await page.locator("#at-handwheels-0-name").fill("Carriage");
    await page.locator("#at-handwheels-0-dial-shape").waitFor();
    expect(await reads?.count()).toBe(0);
    await page.locator("#at-handwheels-0-name").fill("Cross slide");
    expect(await reads?.locator("option").allTextContents()).toEqual([
      "left out: travel",
      "travel: how far it moves",
      "diameter: twice how far it moves",
    ]);
    expect(await increases?.locator("option").allTextContents()).toContain("anticlockwise counts up");
    const top = (one: typeof reads) => one?.boundingBox().then((box) => box?.y ?? Number.NaN);
    expect(await top(reads)).toBeLessThan((await top(page.locator("#at-handwheels-0-dial-shape"))) ?? 0);
    await reads?.selectOption("diameter");
    await page.getByRole("button", { name: "text", exact: true }).click();
    await page.locator(".cm-line", { hasText: "reads: diameter" }).first().waitFor();
    expect(faults).toEqual([]);
  });

  test("is not alone in being asked the sense of its dial: a drill's wheel is, once it is to have one", async () => {
    const { page } = await open(await written(), await context());
    await page.locator("#at-name").fill("D");
    await goTo(page, "Handwheels");
    await page.getByRole("button", { name: "+ handwheel", exact: true }).click();
    await page.locator("#at-handwheels-0-name").fill("Fine feed");
    const increases = page.locator("#at-handwheels-0-dial-increases");
    await page.locator("#at-handwheels-0-dial-shape").waitFor();
    expect(await increases.count()).toBe(0);
    await page.locator("#at-handwheels-0-dial-shape").selectOption("drum");
    await increases.waitFor();
    expect(await page.locator("#at-handwheels-0-reads").count()).toBe(0);
  });
});
