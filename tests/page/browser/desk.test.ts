import { readFileSync } from "node:fs";
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
  });

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
  });

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
  });

  test("a drill's job to fill in is one of holes, a lathe's one of a bar", async () => {
    const { page, faults } = await open(await written("templates/machines/boathouse.yaml"), await context());
    const begun = async (at: number) => {
      await goTo(page, "Job");
      await page.getByRole("button", { name: "+ job with a remark at every key" }).click();
      await goTo(page, "Take away");
      const button = page.getByRole("button", { name: `job-${at}.yaml`, exact: true });
      const { bytes } = await taken(page, () => button.click());
      return new TextDecoder().decode(bytes);
    };
    expect(await begun(1)).toBe(readFileSync("templates/jobs/starter.yaml", "utf8"));
    await goTo(page, "Machine");
    await page.locator('input[type="file"]').setInputFiles(file("drill.yaml", "name: Drill\nkind: drill\n"));
    await expect.poll(() => page.getByLabel("Name of the file").inputValue()).toBe("drill.yaml");
    expect(await begun(2)).toBe(readFileSync("templates/jobs/drilling.yaml", "utf8"));
    expect(faults).toEqual([]);
  });

  test("keys undo in the file that lies open, never in one that lay there before", async () => {
    const { page, faults } = await open(await written("templates/machines/boathouse.yaml"), await context());
    await goTo(page, "Job");
    for (const _ of ["job-1.yaml", "job-2.yaml"])
      await page.getByRole("button", { name: "+ job", exact: true }).click();
    const name = page.locator("#at-name");
    await page.getByRole("button", { name: "job-1.yaml", exact: true }).click();
    await name.fill("Pin A");
    await page.getByRole("button", { name: "take job-1.yaml off the desk" }).click();
    await name.fill("Pin B");
    await name.press("Control+z");
    await expect.poll(() => name.inputValue()).toBe("");
    await page.getByRole("button", { name: "put it back" }).click();
    await page.getByRole("button", { name: "job-1.yaml", exact: true }).click();
    expect(await name.inputValue()).toBe("Pin A");
    expect(faults).toEqual([]);
  });

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
  });

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
  });

  test("as it came, a file that was taken off lies there once", async () => {
    const came = await written("templates/machines/boathouse.yaml", "--job", "templates/jobs/deck-pin.yaml");
    const shared = await context();
    const { page: before } = await open(came, shared);
    await goTo(before, "Machine");
    await before.locator("#at-name").fill("Changed");
    await before.waitForTimeout(400);
    await before.close();
    const { page } = await open(came, shared);
    await goTo(page, "Job");
    await page.getByRole("button", { name: "take deck-pin.yaml off the desk" }).click();
    await page.getByText("waits beside it until this page is closed").waitFor();
    await page.getByRole("button", { name: "back to the file as it came" }).click();
    expect(await page.getByRole("button", { name: "put it back" }).count()).toBe(0);
    await expect.poll(() => page.locator("#at-name").inputValue()).toContain("Deck pin");
  });

  test("two tabs: it is said that nothing more is kept, and what goes on is what one chooses, with the way back", async () => {
    const shared = await context();
    const both = await written("templates/machines/boathouse.yaml");
    const [{ page: one }, { page: two }] = [await open(both, shared), await open(both, shared)];
    const kept = () => one.evaluate(() => JSON.stringify({ ...localStorage }));
    await two.locator("#at-name").fill("Typed in the second");
    await one.getByText("nothing that is typed here is kept").waitFor();
    await one.locator("#at-name").fill("Typed in the first");
    await one.waitForTimeout(400);
    expect(await kept()).not.toContain("Typed in the first");
    await one.getByRole("button", { name: "keep what is here" }).click();
    await expect.poll(kept).toContain("Typed in the first");
    await two.getByRole("button", { name: "take what it has" }).click();
    await expect.poll(() => two.locator("#at-name").inputValue()).toBe("Typed in the first");
    await two.getByRole("button", { name: "undo", exact: true }).click();
    await expect.poll(() => two.locator("#at-name").inputValue()).toBe("Typed in the second");
  });

  test("a name that turns the writing about turns none of the page's words", async () => {
    const { page } = await open(await written(), await context());
    await page.locator("#at-name").fill("Lathe \u202egnp");
    await expect.poll(() => page.locator("header h1").textContent()).toBe("witnessmark Lathe \ufffdgnp");
  });
});
