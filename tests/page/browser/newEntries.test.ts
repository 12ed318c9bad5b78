import { describe, expect, test } from "vitest";
import { parse } from "yaml";
import { goTo, hasBrowser, inBrowser, taken } from "./browser.js";

describe.runIf(hasBrowser)("a new entry of a list", () => {
  const { written, context, open } = inBrowser();
  const empty = async () => open(await written(), await context());
  const textOf = async (page: import("playwright-core").Page): Promise<string> => {
    await goTo(page, "Take away");
    const { bytes } = await taken(page, () => page.getByRole("button", { name: "lathe.yaml" }).click());
    return Buffer.from(bytes).toString();
  };

  test("takes what is typed at once, by the keyboard", async () => {
    const { page, faults } = await empty();
    await goTo(page, "Work");
    await page.getByRole("button", { name: "+ materials" }).focus();
    await page.keyboard.press("Enter");
    await page.locator("#at-work-materials > button.add").focus();
    await page.keyboard.press("Enter");
    await page.locator("#at-work-materials-0:focus").waitFor();
    await page.keyboard.type("bronze");
    await page.locator("#at-work-materials > button.add").focus();
    await page.keyboard.press("Enter");
    await page.locator("#at-work-materials-1:focus").waitFor();
    await page.keyboard.type("mild steel");
    expect(parse(await textOf(page))).toEqual({ work: { materials: ["bronze", "mild steel"] } });
    expect(faults).toEqual([]);
  }, 60_000);

  test("writes nothing before anything is typed, and then that alone", async () => {
    const { page, faults } = await empty();
    await goTo(page, "Handwheels");
    await page.locator("#at-handwheels > button.add").click();
    await page.locator("#at-handwheels-0-name").waitFor();
    expect(await textOf(page)).toBe("");
    await goTo(page, "Belts and gears");
    await page.getByRole("button", { name: "+ drive" }).click();
    await page.locator("#at-drive-stages > button.add").click();
    await page.locator("#at-drive-stages-0-steps > button.add").click();
    await page.locator("#at-drive-stages-0-steps-0-driver").fill("50");
    await page.locator("#at-drive-stages-0-steps > button.add").click();
    const label = page.locator("#at-drive-stages-0-steps-1-label");
    expect(await label.getAttribute("placeholder")).toBe("B");
    await page.locator("#at-drive-stages-0-steps-1-driver").fill("80");
    expect(parse(await textOf(page))).toEqual({ drive: { stages: [{ steps: [{ driver: 50 }, { driver: 80 }] }] } });
    expect(faults).toEqual([]);
  }, 60_000);
});
