import { readFileSync } from "node:fs";
import { describe, expect, test } from "vitest";
import { parse } from "yaml";
import { stations } from "../../../src/page/app/stations.js";
import { goTo, hasBrowser, inBrowser, taken } from "./browser.js";

const demo = "templates/machines/boathouse.yaml";
const comments = (text: string): string[] => text.match(/(?<=^|\s)# [^\n]*/gm) ?? [];

/** Fields of a station that are typed into; all that there are is tests/page/everyField.test.ts. */
const SAMPLE = 12;

describe.runIf(hasBrowser)("fields of the form", () => {
  const { written, context, open } = inBrowser();

  test("of every station hold what is typed into them, and so does the file; comments stay", async () => {
    const file = await written(demo);
    for (const { name } of stations.filter(({ keys }) => keys.length > 0)) {
      const { page, faults } = await open(file, await context());
      await goTo(page, name);
      await page.waitForTimeout(200);
      const all = await page.evaluate(() =>
        [...document.querySelectorAll<HTMLInputElement>(".form input[type=text]")].flatMap((one) => {
          const way = one.closest("[data-way]")?.getAttribute("data-way")?.split("\u0000");
          return one.id.startsWith("at-") && !one.id.endsWith("-new") && way && one.value !== ""
            ? [{ id: one.id, way }]
            : [];
        }),
      );
      expect(all.length, name).toBeGreaterThan(0);
      const places = all.filter((_, at) => at % Math.ceil(all.length / SAMPLE) === 0);
      for (const [at, { id }] of places.entries()) {
        const field = page.locator(`[id="${id}"]`);
        await field.fill(`${at + 1}.25`);
        expect(await field.inputValue(), id).toBe(`${at + 1}.25`);
      }
      await goTo(page, "Take away");
      const { bytes } = await taken(page, () => page.getByRole("button", { name: "boathouse.yaml" }).click());
      const text = Buffer.from(bytes).toString();
      const data: unknown = parse(text);
      for (const [at, { way }] of places.entries()) {
        const value = way.reduce<unknown>(
          (inner, step) => (inner as Record<string, unknown> | undefined)?.[step],
          data,
        );
        expect(value, way.join(".")).toBe(at + 1.25);
      }
      expect(comments(text)).toEqual(comments(readFileSync(demo, "utf8")));
      expect(Object.keys(data as object)).toEqual(Object.keys(parse(readFileSync(demo, "utf8"))));
      expect(faults).toEqual([]);
    }
  });

  test("units and paper are asked beside the name, and written only when chosen", async () => {
    const { page, faults } = await open(await written(), await context());
    await page.locator("#at-name").fill("L");
    await page.locator("#at-units").selectOption("in");
    await page.locator("#at-paper-size").selectOption("Letter");
    await page.getByRole("button", { name: "text", exact: true }).click();
    expect((await page.locator(".cm-line").allTextContents()).join("|")).toMatch(
      /^name: L\|units: in\|paper:.*size: Letter/,
    );
    expect(faults).toEqual([]);
  });

  test("a printer is measured, named and used without a word of YAML", async () => {
    const { page, faults } = await open(await written(), await context());
    await page.locator("#at-name").fill("L");
    await page.locator("#at-units").selectOption("in");
    await goTo(page, "Printer and paper");
    await page.locator("#at-printers-new").fill("Shop LX");
    await page.getByRole("button", { name: "+ printer", exact: true }).click();
    const across = page.locator("#at-printers-Shop_LX-across");
    await across.fill("6.98");
    await page.getByText("write what was measured, and what it should be: 6.98 of 7").first().waitFor();
    await across.fill("6.98 of 7 in");
    await page.getByRole("button", { name: "print with “Shop LX”" }).click();
    await expect.poll(() => page.locator("#at-paper-printer").inputValue()).toBe("Shop LX");
    expect(await page.locator("#at-paper-printer option").allTextContents()).toEqual(["left out", "Shop LX"]);
    await expect.poll(() => page.locator(".messages").count()).toBe(0);
    expect(faults).toEqual([]);
  });
});
