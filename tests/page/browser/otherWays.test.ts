import { writeFileSync } from "node:fs";
import { join } from "node:path";
import type { Page } from "playwright-core";
import { describe, expect, test } from "vitest";
import { parse } from "yaml";
import { goTo, hasBrowser, inBrowser } from "./browser.js";

describe.runIf(hasBrowser)("what may be said in several ways", () => {
  const { folder, written, context, open } = inBrowser();
  const at = async (text: string, station: string, ...more: string[]) => {
    const file = join(folder, "m.yaml");
    writeFileSync(file, text);
    const opened = await open(await written(file, ...more), await context());
    await goTo(opened.page, station);
    return opened;
  };
  const textOf = async (page: Page): Promise<string> => {
    await page.getByRole("button", { name: "text", exact: true }).click();
    await page.locator(".cm-line", { hasText: /\S/ }).first().waitFor();
    const words = (await page.locator(".cm-line").allTextContents()).join("\n");
    await page.getByRole("button", { name: "form", exact: true }).click();
    return words;
  };

  test("a motor's speed becomes the slowest of a variable one, and back; both are named fields", async () => {
    const { page, faults } = await at(
      "name: L\ndrive:\n  motor: { speed: 1400 rpm }\n  stages: [{ name: b, steps: [{ driver: 60, driven: 60 }] }]\n",
      "Belts and gears",
    );
    await page.getByLabel("variable: slowest and fastest").check();
    expect(await page.getByLabel("slowest", { exact: true }).inputValue()).toBe("1400 rpm");
    await page.getByLabel("slowest", { exact: true }).fill("300");
    await page.getByLabel("fastest", { exact: true }).fill("3000");
    expect(parse(await textOf(page)).drive.motor.speed).toEqual([300, 3000]);
    await page.getByLabel("one speed").check();
    expect(await page.locator("#at-drive-motor-speed").inputValue()).toBe("300");
    await page.getByLabel("variable: slowest and fastest").check();
    expect(await page.getByLabel("fastest", { exact: true }).inputValue()).toBe("3000");
    await page.getByLabel("one speed").check();
    await page.locator("#at-drive-motor-speed").fill("300 to 3000");
    await page.waitForTimeout(400);
    expect(await page.locator(".form .notes .error").count()).toBe(0);
    expect(faults).toEqual([]);
  });

  test("a pulley's effective diameter is no other measure, and waits until one comes back to it", async () => {
    const { page } = await at(
      "name: L\ndrive:\n  motor: { speed: 1400 }\n  stages: [{ name: b, steps: [{ driver: 60, driven: 70 }] }]\n",
      "Belts and gears",
    );
    const driver = page.locator('[data-way$="driver"].kinds');
    await driver.getByLabel("another of its measures").check();
    await driver.getByLabel("Outside").fill("62");
    await driver.getByLabel("its effective diameter").check();
    expect(await page.locator("#at-drive-stages-0-steps-0-driver").inputValue()).toBe("60");
    await driver.getByLabel("another of its measures").check();
    expect(await driver.getByLabel("Outside").inputValue()).toBe("62");
  });

  test("the position of a measured speed is one of the machine's own", async () => {
    const { page, faults } = await at(
      `name: L
drive:
  motor: { speed: 1400 }
  stages:
    - { name: belt, steps: [{ driver: 60, driven: 60 }, { driver: 40, driven: 80 }] }
    - { name: back gear, steps: [{ label: open, driver: 50, driven: 50 }, { label: engaged, teeth: [[20, 60]] }] }
  tachometer: [{ speed: 1390 }]
`,
      "Belts and gears",
    );
    const position = page.locator("#at-drive-tachometer-0-position");
    expect(await position.locator("option").allTextContents()).toEqual([
      "choose",
      ...["A · open", "A · engaged", "B · open", "B · engaged"],
    ]);
    await position.selectOption({ label: "B · open" });
    expect(parse(await textOf(page)).drive.tachometer).toEqual([{ speed: 1390, position: ["B", "open"] }]);
    expect(await position.inputValue()).toBe("2");
    expect(faults).toEqual([]);
  });
});
