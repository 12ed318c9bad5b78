import { describe, expect, test } from "vitest";
import { goTo, hasBrowser, inBrowser } from "./browser.js";

describe.runIf(hasBrowser)("the sheet that was chosen", () => {
  const { written, context, open } = inBrowser();

  test("stays wherever one goes, is what the browser prints, and gives way to the stations' when told", async () => {
    const { page, faults } = await open(
      await written("templates/machines/boathouse.yaml", "--job", "templates/jobs/deck-pin.yaml"),
      await context(),
    );
    const sheet = page.locator(".sheet").first();
    const printed = async () => {
      await page.emulateMedia({ media: "print" });
      await sheet.waitFor();
      const label = await sheet.getAttribute("aria-label");
      await page.emulateMedia({ media: "screen" });
      return label;
    };
    await expect.poll(printed).toContain("Measuring form");
    await page.locator("#sheet").selectOption("stops");
    await expect.poll(printed).toContain("Stops");
    for (const name of ["Handwheels", "Job", "Own sheets", "Take away", "Machine"]) {
      await goTo(page, name);
      await page.waitForTimeout(300);
      expect(await printed(), name).toContain("Stops");
    }
    await page.reload();
    await expect.poll(printed).toContain("Stops");
    await goTo(page, "Job");
    await page.getByRole("button", { name: "let the stations choose" }).click();
    await expect.poll(printed).toContain("Plan for the job");
    await goTo(page, "Machine");
    await expect.poll(printed).toContain("Measuring form");
    expect(await page.getByRole("button", { name: "let the stations choose" }).count()).toBe(0);
    expect(faults).toEqual([]);
  });

  test("of one's own is seen beside the bench on a wide desk, which stays where it was scrolled to", async () => {
    const { page } = await open(
      await written("templates/machines/boathouse.yaml"),
      await context({ viewport: { width: 1400, height: 500 } }),
    );
    await goTo(page, "Own sheets");
    for (const _ of [1, 2]) await page.getByRole("button", { name: "+ copy to change" }).click();
    const see = page.getByRole("button", { name: "see its paper" }).last();
    await see.scrollIntoViewIfNeeded();
    await page.waitForTimeout(500);
    const was = await page.evaluate(() => scrollY);
    expect(was).toBeGreaterThan(100);
    await see.click();
    await page.waitForTimeout(500);
    expect(await see.getAttribute("aria-pressed")).toBe("true");
    expect(await page.evaluate(() => scrollY)).toBe(was);
  });

  test("of one's own lies on top at a phone, and gives way when it is taken off the desk", async () => {
    const { page } = await open(
      await written("templates/machines/boathouse.yaml"),
      await context({ viewport: { width: 360, height: 740 }, hasTouch: true }),
    );
    await goTo(page, "Own sheets");
    await page.getByRole("button", { name: "+ copy to change" }).tap();
    await page.getByRole("button", { name: "see its paper" }).tap();
    await page.locator(".sheet svg").first().waitFor();
    // The list of sheets comes a moment after the copy.
    await expect.poll(() => page.locator("#sheet").inputValue()).toMatch(/^my-/);
    await page.locator(".turn-over").tap();
    await page.getByRole("button", { name: "take it off the desk" }).tap();
    await goTo(page, "Machine");
    await page.locator(".turn-over").tap();
    await expect.poll(() => page.locator("#sheet").inputValue()).toBe("measuring-form");
  });
});
