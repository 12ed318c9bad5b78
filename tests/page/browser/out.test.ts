import { mkdtempSync, readdirSync, readFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { unzipSync } from "fflate";
import { describe, expect, test } from "vitest";
import { witnessmark } from "../../support/command.js";
import { goTo, hasBrowser, inBrowser, taken } from "./browser.js";

const demo = "templates/machines/boathouse.yaml";
const pin = "templates/jobs/deck-pin.yaml";

describe.runIf(hasBrowser)("what is taken away from the page", () => {
  const { written, context, open } = inBrowser();

  test("is the command line's, to the byte: every sheet and the binder as PDF, DXF and SVG", async () => {
    const { page, faults } = await open(await written(demo, "--job", pin), await context());
    await goTo(page, "Take away");
    for (const format of ["pdf", "dxf", "svg"]) {
      const folder = mkdtempSync(join(tmpdir(), "witnessmark-cli-"));
      const wanted = format === "pdf" ? ["--all"] : ["--sheet", "dial,engraving"];
      await witnessmark("print", demo, "--job", pin, "--format", format, ...wanted, "--out", folder);
      const theirs = readdirSync(folder).filter((name) => name.endsWith(`.${format}`));
      expect(theirs.length).toBeGreaterThan(1);
      await page.locator("#format").selectOption(format);
      for (const box of await page.locator('.sheets input[type="checkbox"]').all()) await box.uncheck();
      const titles =
        format === "pdf"
          ? page.locator(".sheets li:not(.request) input:enabled")
          : page.locator('.sheets input[value="dial"], .sheets input[value="engraving"]');
      for (const box of await titles.all()) await box.check();
      const got = new Map<string, Uint8Array>();
      const take = async (button: string) => {
        const { name, bytes } = await taken(page, () => page.getByRole("button", { name: button }).click());
        for (const [inner, one] of Object.entries(name.endsWith(".zip") ? unzipSync(bytes) : { [name]: bytes }))
          got.set(inner, one);
      };
      await take("take the ticked ones");
      if (format === "pdf") await take("take all, bound in one PDF");
      expect([...got.keys()].sort()).toEqual(theirs.sort());
      for (const name of theirs)
        expect(Buffer.compare(got.get(name) ?? Buffer.of(), readFileSync(join(folder, name))), name).toBe(0);
    }
    expect(faults).toEqual([]);
  }, 120_000);

  test("files come back as they were typed", async () => {
    const { page, faults } = await open(await written(demo), await context());
    await goTo(page, "Take away");
    const { bytes } = await taken(page, () => page.getByRole("button", { name: "boathouse.yaml" }).click());
    expect(Buffer.from(bytes).toString()).toBe(readFileSync(demo, "utf8"));
    expect(faults).toEqual([]);
  }, 60_000);
});
