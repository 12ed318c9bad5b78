import { copyFileSync, mkdtempSync, readdirSync, readFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { unzipSync } from "fflate";
import { PDFDocument } from "pdf-lib";
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
  });

  test("printed from the browser a sheet has its own paper, and its printer's correction", async () => {
    const { page, faults } = await open(await written(demo), await context());
    for (const [sheet, width, height] of [
      ["belt-card", 210, 297],
      ["speed-diagram", 297, 210],
    ] as const) {
      await page.locator("#sheet").selectOption(sheet);
      await page.locator(`.sheet:only-child[style*="--across: ${width}"] svg`).waitFor();
      const pdf = await PDFDocument.load(await page.pdf({ preferCSSPageSize: true }));
      expect(pdf.getPageCount(), sheet).toBe(1);
      const size = pdf.getPage(0).getSize();
      expect(
        [size.width, size.height].map((points) => Math.round((points * 25.4) / 72)),
        sheet,
      ).toEqual([width, height]);
      await page.emulateMedia({ media: "print" });
      const drawn = await page.locator(".sheet svg").boundingBox();
      await page.emulateMedia({ media: null });
      // The demo's printer: 199.3 of 200 along the sheet's short side, 250.4 of 250 along its long one, and a skew that widens
      // the box of what is drawn by 0.0016 of the other side.
      const [short, long] = [200 / 199.3, 250 / 250.4];
      const [across, down] = width < height ? [short, long] : [long, short];
      expect(((drawn?.width ?? 0) * 25.4) / 96 / width).toBeGreaterThan(across - 1e-3);
      expect(((drawn?.width ?? 0) * 25.4) / 96 / width).toBeLessThan(across + 0.0016 * 1.5 + 1e-3);
      expect(((drawn?.height ?? 0) * 25.4) / 96 / height).toBeGreaterThan(down - 1e-3);
      expect(((drawn?.height ?? 0) * 25.4) / 96 / height).toBeLessThan(down + 0.0016 * 1.5 + 1e-3);
    }
    expect(faults).toEqual([]);
  });

  test("printed where no paper lies beside, it is the sheet seen last, and said which", async () => {
    const { page, faults } = await open(await written(demo), await context());
    await page.locator("#sheet").selectOption("speed-diagram");
    for (const place of ["Ask", "Dial", "Take away"]) {
      await goTo(page, place);
      await page.getByText("prints the sheet seen last: Speed diagram").waitFor();
      await page.locator('.sheet:only-child[style*="--across: 297"] svg').waitFor({ state: "attached" });
      expect(await page.locator(".paper").isVisible()).toBe(false);
      await page.emulateMedia({ media: "print" });
      expect(await page.locator(".sheet svg").isVisible(), place).toBe(true);
      await page.emulateMedia({ media: null });
      const pdf = await PDFDocument.load(await page.pdf({ preferCSSPageSize: true }));
      expect(pdf.getPageCount()).toBe(1);
      expect(Math.round((pdf.getPage(0).getSize().width * 25.4) / 72)).toBe(297);
    }
    expect(faults).toEqual([]);
  });

  test("what was printed at another revision is told by the command alone, which is said once, with the file's own", async () => {
    const { page, faults } = await open(await written(demo), await context());
    await goTo(page, "Take away");
    const said = page.getByText("which of it is out of date, and which dial to take off");
    expect(await said.count()).toBe(1);
    expect(await said.textContent()).toMatch(/“witnessmark check”.*the file’s, which is 3\.$/);
    await goTo(page, "Machine");
    await page.locator("#at-revision").fill("4");
    await goTo(page, "Take away");
    await expect.poll(() => said.textContent()).toContain("which is 4.");
    expect(faults).toEqual([]);
  });

  test("files come back as they were typed", async () => {
    const { page, faults } = await open(await written(demo), await context());
    await goTo(page, "Take away");
    const { bytes } = await taken(page, () => page.getByRole("button", { name: "boathouse.yaml" }).click());
    expect(Buffer.from(bytes).toString()).toBe(readFileSync(demo, "utf8"));
    expect(faults).toEqual([]);
  });

  test("is named as the command names it, also where the file's name hides it", async () => {
    const hidden = join(mkdtempSync(join(tmpdir(), "witnessmark-hidden-")), ".shed.yaml");
    copyFileSync(demo, hidden);
    const { page } = await open(await written(hidden, "--job", pin), await context());
    await goTo(page, "Take away");
    const { name } = await taken(page, () => page.getByRole("button", { name: "take all files" }).click());
    expect(name).toBe("shed.zip");
  });
});
