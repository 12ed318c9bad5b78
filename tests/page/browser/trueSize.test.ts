import { PDFDocument } from "pdf-lib";
import { describe, expect, test } from "vitest";
import { goTo, hasBrowser, inBrowser } from "./browser.js";

describe.runIf(hasBrowser)("true size", () => {
  const { written, context, open } = inBrowser();

  test("says that it is none before the screen was measured, and is one afterwards", async () => {
    const { page, faults } = await open(await written("templates/machines/boathouse.yaml"), await context());
    await goTo(page, "Paper");
    await page.getByText("Not yet measured on this screen").waitFor({ state: "detached" });
    await page.getByRole("button", { name: "true size" }).click();
    await page.getByText("Not yet measured on this screen").waitFor();
    await page.getByRole("slider").fill("428");
    await page.getByText("True as measured on this screen").waitFor();
    expect(await page.getByText("Not yet measured").count()).toBe(0);
    // Five pixels a millimetre: 428 for a card of 85.6 mm.
    const width = await page
      .locator(".sheet")
      .first()
      .evaluate((one) => one.getBoundingClientRect().width);
    expect(width).toBeCloseTo(5 * 210, 0);
    expect(faults).toEqual([]);
  });

  test("printed, a sheet has no more pages than its own, measured or not", async () => {
    const { page } = await open(await written("templates/machines/boathouse.yaml"), await context());
    await goTo(page, "Belts and gears");
    await page.locator("#sheet").selectOption("belt-card");
    await page.locator(".sheet:only-child svg").waitFor();
    const pages = async () =>
      (await PDFDocument.load(await page.pdf({ preferCSSPageSize: true, printBackground: true }))).getPageCount();
    for (const size of ["true size", "close up", "whole"]) {
      await page.getByRole("button", { name: size }).click();
      if (size === "true size") await page.getByText("Not yet measured on this screen").waitFor();
      expect(await pages(), size).toBe(1);
    }
  });

  test("on a telephone narrower than a bank card the frame stands on end, and all of it is seen", async () => {
    const { page } = await open(
      await written("templates/machines/boathouse.yaml"),
      await context({ viewport: { width: 360, height: 740 } }),
    );
    await goTo(page, "Paper");
    await page.locator(".turn-over").click();
    const frame = () => page.locator(".bank").evaluate((one) => one.getBoundingClientRect().toJSON());
    const slider = page.getByRole("slider");
    // As soon as it knows how wide it is seen.
    await expect.poll(() => slider.getAttribute("max")).not.toBe("700");
    for (const length of ["300", "410", (await slider.getAttribute("max")) ?? ""]) {
      await slider.fill(length);
      const { left, right, width, height } = await frame();
      expect(left).toBeGreaterThanOrEqual(0);
      expect(right).toBeLessThanOrEqual(360);
      expect(Math.max(width, height)).toBeCloseTo(Number(length), 0);
      expect(Math.max(width, height) / Math.min(width, height)).toBeCloseTo(85.6 / 53.98, 2);
      expect(height > width).toBe(length !== "300");
    }
    // The paper goes by the card's length, whichever way it stands.
    await slider.fill("428");
    await page.locator(".turn-over").click();
    await page.getByRole("button", { name: "true size" }).click();
    await page.getByText("True as measured on this screen").waitFor();
    const sheet = await page
      .locator(".sheet")
      .first()
      .evaluate((one) => one.getBoundingClientRect().width);
    expect(sheet).toBeCloseTo(5 * 210, 0);
    // Close up it is never smaller.
    await page.getByRole("button", { name: "close up" }).click();
    const near = await page
      .locator(".sheet")
      .first()
      .evaluate((one) => one.getBoundingClientRect().width);
    expect(near).toBeGreaterThanOrEqual(sheet - 0.5);
  });
});
