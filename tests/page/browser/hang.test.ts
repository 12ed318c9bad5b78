import { readFileSync, writeFileSync } from "node:fs";
import { describe, expect, test } from "vitest";
import { goTo, hasBrowser, inBrowser, pasted } from "./browser.js";

/** No file that the program reads takes so long, so the worker is made to: it never ends with a file of that revision. */
const endless = "name: Small\nrevision: Endless\n";
const hang = "addEventListener('message', ({ data }) => { if (JSON.stringify(data).includes('Endless')) for (;;); });";

describe.runIf(hasBrowser)("a worker that does not come to an end", () => {
  const { written, context, open } = inBrowser();
  const hanging = async (...words: string[]) => {
    const file = await written(...words);
    const core = 'id="core">';
    writeFileSync(
      file,
      readFileSync(file, "utf8").replace(core, () => `${core}${hang}`),
    );
    return file;
  };
  const button = (page: import("playwright-core").Page, name: string) =>
    page.getByRole("button", { name, exact: true }).click();

  test("is stopped after ten seconds and begun anew; the page says so, and goes on meanwhile and afterwards", async () => {
    const { page, faults } = await open(await hanging("templates/machines/boathouse.yaml"), await context());
    await page.locator(".sheet svg").first().waitFor();
    await button(page, "text");
    await pasted(page, endless);
    const stopped = page.getByText(/took longer than 10 seconds and was stopped/);
    expect(await stopped.count()).toBe(0);
    // Meanwhile every view is there, and takes what is typed.
    await goTo(page, "Ask");
    await goTo(page, "Machine");
    await page.locator("#at-name").fill("Still here");
    expect(await page.locator("header h1").textContent()).toContain("Still here");
    await stopped.first().waitFor({ timeout: 30_000 });
    await button(page, "text");
    await pasted(page, "name: Small\n");
    await page.locator(".sheet svg").first().waitFor({ timeout: 20_000 });
    await stopped.first().waitFor({ state: "detached" });
    expect(faults).toEqual([]);
  });

  test("is not waited for once the text is another", async () => {
    const { page } = await open(await hanging("templates/machines/boathouse.yaml"), await context());
    await page.locator(".sheet svg").first().waitFor();
    await button(page, "text");
    await pasted(page, endless);
    await page.waitForTimeout(500);
    const start = Date.now();
    await pasted(page, "name: Small\n");
    await page.locator('.sheet svg:has-text("Small")').first().waitFor({ timeout: 20_000 });
    expect(Date.now() - start).toBeLessThan(9000);
    expect(await page.getByText(/was stopped/).count()).toBe(0);
  });

  test("what fails in it is said in the page", async () => {
    const context_ = await context();
    // A worker that answers every question with a fault, as one with a mistake in it does.
    await context_.addInitScript(() => {
      globalThis.Worker = class {
        onmessage: ((event: { data: unknown }) => void) | null = null;
        postMessage(message: { id?: number }) {
          if (message.id !== undefined)
            setTimeout(() => this.onmessage?.({ data: { id: message.id, fault: "a <b>mistake</b>" } }));
        }
        terminate() {}
      } as unknown as typeof Worker;
    });
    const { page, faults } = await open(await written(), context_);
    await page
      .getByText(
        "Working out what the files say failed: a <b>mistake</b>. Your files are whole, and can be taken away.",
      )
      .waitFor();
    expect(faults.length).toBeGreaterThan(0);
  });

  test("one that cannot begin says so", async () => {
    const context_ = await context();
    await context_.addInitScript(() => {
      const Real = Worker;
      globalThis.Worker = class extends Real {
        constructor() {
          super(URL.createObjectURL(new Blob(["throw new Error('no room')"])));
        }
      };
    });
    const { page } = await open(await written(), context_);
    await page.getByText(/Working out what the files say failed: .*no room/).waitFor();
  });
});
