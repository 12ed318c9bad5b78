import { describe, expect, test } from "vitest";
import { goTo, hasBrowser, inBrowser, taken } from "./browser.js";

const file = (name: string, content: string) => ({ name, mimeType: "text/plain", buffer: Buffer.from(content) });

describe.runIf(hasBrowser)("what lies on the desk", () => {
  const { written, context, open } = inBrowser();

  test("undo of a file that was opened brings back its name with its text: no file is saved over another", async () => {
    const { page, faults } = await open(await written("templates/machines/boathouse.yaml"), await context());
    const name = page.getByLabel("Name of the file");
    await page.locator('input[type="file"]').setInputFiles(file("drill.yaml", "name: Drill\n"));
    await expect.poll(() => name.inputValue()).toBe("drill.yaml");
    await page.getByRole("button", { name: "undo", exact: true }).click();
    await expect.poll(() => name.inputValue()).toBe("boathouse.yaml");
    expect(await page.locator("header h1").textContent()).toContain("Boathouse");
    await page.getByRole("button", { name: "redo", exact: true }).click();
    await expect.poll(() => name.inputValue()).toBe("drill.yaml");
    expect(faults).toEqual([]);
  }, 60_000);

  test("a file is renamed, under an ending that it is read by, and that is undone too", async () => {
    const { page, faults } = await open(await written("templates/machines/boathouse.yaml"), await context());
    const name = page.getByLabel("Name of the file");
    await name.fill("../My shed");
    await name.press("Enter");
    await expect.poll(() => name.inputValue()).toBe("My shed.yaml");
    await goTo(page, "Take away");
    const { name: saved } = await taken(page, () => page.getByRole("button", { name: "My shed.yaml" }).click());
    expect(saved).toBe("My shed.yaml");
    await goTo(page, "Machine");
    await page.getByRole("button", { name: "undo", exact: true }).click();
    await expect.poll(() => name.inputValue()).toBe("boathouse.yaml");
    expect(faults).toEqual([]);
  }, 60_000);

  test("what was taken off the desk is put back with all that was typed", async () => {
    const { page, faults } = await open(await written("templates/machines/boathouse.yaml"), await context());
    await goTo(page, "Job");
    await page.getByRole("button", { name: "+ job", exact: true }).click();
    await page.locator("#at-name").fill("An hour's work");
    await page.getByRole("button", { name: "take job-1.yaml off the desk" }).click();
    expect(await page.locator("#at-name").count()).toBe(0);
    await page.getByRole("button", { name: "+ job", exact: true }).click();
    await page.getByRole("button", { name: "put it back" }).click();
    // Another job bears its name by now.
    await page.getByRole("button", { name: "job-1-2.yaml", exact: true }).click();
    expect(await page.locator("#at-name").inputValue()).toBe("An hour's work");
    await page.getByRole("button", { name: "undo", exact: true }).click();
    expect(await page.getByRole("button", { name: "put it back" }).count()).toBe(0);
    expect(faults).toEqual([]);
  }, 60_000);

  test("a new machine begins empty, keeps the jobs and says so, and is undone", async () => {
    const { page, faults } = await open(await written("templates/machines/boathouse.yaml"), await context());
    await goTo(page, "Job");
    await page.getByRole("button", { name: "+ job", exact: true }).click();
    await page.getByRole("button", { name: "new machine" }).click();
    await page.getByText("on the desk “job-1.yaml”").waitFor();
    await goTo(page, "Machine");
    expect(await page.locator("#at-name").inputValue()).toBe("");
    expect(await page.getByLabel("Name of the file").inputValue()).toBe("lathe.yaml");
    await page.getByRole("button", { name: "undo", exact: true }).click();
    await expect.poll(() => page.getByLabel("Name of the file").inputValue()).toBe("boathouse.yaml");
    expect(faults).toEqual([]);
  }, 60_000);

  test("opened again as it was left, the page says so, and goes back to what it came with", async () => {
    const path = await written("templates/machines/boathouse.yaml");
    const first = await open(path, await context());
    expect(await first.page.getByText("as you left it").count()).toBe(0);
    await first.page.locator("#at-name").fill("Changed");
    await first.page.waitForTimeout(600);
    await first.page.close();
    const { page } = await open(path, first.page.context());
    await page.getByText("This page stands as you left it").waitFor();
    await page.getByRole("button", { name: "back to the file as it came" }).click();
    await expect.poll(() => page.locator("#at-name").inputValue()).toContain("Boathouse");
    await page.getByRole("button", { name: "undo", exact: true }).click();
    await expect.poll(() => page.locator("#at-name").inputValue()).toBe("Changed");
  }, 60_000);

  test("a name that turns the writing about turns none of the page's words", async () => {
    const { page } = await open(await written(), await context());
    await page.locator("#at-name").fill("Lathe \u202egnp");
    await expect.poll(() => page.locator("header h1").textContent()).toBe("witnessmark Lathe \ufffdgnp");
  }, 60_000);
});
