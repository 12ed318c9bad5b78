import { describe, expect, test } from "vitest";
import { parse } from "yaml";
import { goTo, hasBrowser, inBrowser, taken } from "./browser.js";

describe.runIf(hasBrowser)("frames that were opened", () => {
  const { written, context, open } = inBrowser();

  test("stand open still when one comes back from another station, and say whose part each adds", async () => {
    const { page } = await open(await written("templates/machines/boathouse.yaml"), await context());
    await goTo(page, "Belts and gears");
    expect(await page.getByText("Motor belt may also say:").count()).toBe(1);
    const adds = (await page.locator(".form .more button").all()).map((one) => one.getAttribute("aria-label"));
    const names = (await Promise.all(adds)).flatMap((one) => one ?? []);
    expect(names).toContain("+ belt of motor belt");
    expect(new Set(names).size).toBe(names.length);
    const frame = page.locator("#at-drive-stages-0-belt");
    await page.getByRole("button", { name: "+ belt of motor belt" }).click();
    await frame.waitFor();
    await goTo(page, "Handwheels");
    await goTo(page, "Belts and gears");
    await frame.waitFor();
  });
});

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
  });

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
  });

  test("a handwheel shows at once how its feed may be known, and its dial; nothing that was filled in is lost by looking", async () => {
    const { page, faults } = await empty();
    await page.locator("#at-name").fill("L");
    await goTo(page, "Handwheels");
    await page.locator("#at-handwheels > button.add").click();
    await page.locator("#at-handwheels-0-name").fill("Cross slide");
    await page.locator("#at-handwheels-0-feed").fill("2 mm");
    await page.getByRole("button", { name: "+ how far off it may be" }).click();
    await page.getByRole("button", { name: "+ uncertainty" }).click();
    await page.locator("#at-handwheels-0-feed-uncertainty").fill("0.01");
    expect(parse(await textOf(page)).handwheels[0].feed).toEqual({ perTurn: "2 mm", uncertainty: 0.01 });
    await goTo(page, "Handwheels");
    await page.getByLabel("by its screw").check();
    await page.locator("#at-handwheels-0-feed-screw-pitch").fill("16 tpi");
    await page.getByLabel("measured: readings").check();
    const cell = page.locator("#at-handwheels-0-feed-readings-travel-0");
    await cell.fill("0");
    expect(parse(await textOf(page)).handwheels[0].feed).toEqual({ readings: { turns: [0], travel: [0] } });
    await goTo(page, "Handwheels");
    await page.getByLabel("by its screw").check();
    expect(parse(await textOf(page)).handwheels[0].feed).toEqual({ screw: { pitch: "16 tpi" } });
    await goTo(page, "Handwheels");
    await page.getByLabel("measured: readings").check();
    await expect.poll(() => cell.inputValue()).toBe("0");
    const size = (key: string) => page.locator(`#at-handwheels-0-dial-${key}`);
    expect(await size("diameter").count()).toBe(0);
    await size("shape").selectOption("drum");
    await size("diameter").fill("38");
    await size("width").waitFor();
    expect(await page.getByRole("button", { name: "+ outside" }).count()).toBe(0);
    await size("shape").selectOption("face");
    await size("outside").waitFor();
    await size("inside").waitFor();
    // What stands in the file is seen, and told that it does not belong to this shape.
    expect(await size("diameter").inputValue()).toBe("38");
    expect(faults).toEqual([]);
  });

  test("what was asked for has the caret", async () => {
    const { page } = await empty();
    await goTo(page, "Belts and gears");
    await page.getByRole("button", { name: "+ drive" }).click();
    // Without a motor there is no drive: its speed is asked for at once.
    await page.locator("#at-drive-motor-speed:focus").waitFor();
    await page.keyboard.type("1425");
    await page.getByRole("button", { name: "+ cover" }).click();
    await page.locator("#at-drive-cover-width:focus").waitFor();
    expect(parse(await textOf(page))).toEqual({ drive: { motor: { speed: 1425 } } });
  });

  test("on a drill the steps of a job are those that a drill makes", async () => {
    const { page } = await empty();
    await page.locator("#at-name").fill("D");
    await page.getByRole("button", { name: "+ kind" }).click();
    await page.locator("#at-kind").selectOption("drill");
    await goTo(page, "Job");
    await page.getByRole("button", { name: "+ job", exact: true }).click();
    await page.locator("#at-steps > button.add").click();
    expect(await page.locator("#at-steps-0-do option").allTextContents()).toEqual([
      "left out",
      "centre drill",
      "drill",
      "ream",
      "tap",
    ]);
  });
});
