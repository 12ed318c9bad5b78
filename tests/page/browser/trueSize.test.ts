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
  }, 60_000);
});
