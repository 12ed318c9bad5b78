import { mkdtempSync, readFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { type Browser, type BrowserContext, chromium, type Page } from "playwright-core";
import { afterAll, beforeAll } from "vitest";
import { browserPath } from "../../support/browserPath.js";
import { witnessmark } from "../../support/command.js";

/** Whether there is a browser to test in; where there must be one (`WITNESSMARK_PAGE_TESTS=required`, as CI has it) its lack is a
 *  failure. Elsewhere these tests are left out, and the last lines of the run say so (tests/support/leftOut.ts). */
export const hasBrowser = browserPath !== undefined || process.env.WITNESSMARK_PAGE_TESTS === "required";

const quiet = [
  "--no-sandbox",
  "--disable-gpu",
  "--disable-quic",
  "--no-first-run",
  "--disable-background-networking",
  "--disable-component-update",
  "--disable-sync",
];

/** A browser for all tests of a file, and pages in it that are refused whatever they ask the network for. */
export function inBrowser() {
  let browser: Browser | undefined;
  const folder = mkdtempSync(join(tmpdir(), "witnessmark-page-"));
  beforeAll(async () => {
    browser = await chromium.launch({ executablePath: browserPath ?? "chromium", headless: true, args: quiet });
  });
  afterAll(() => browser?.close());
  let made = 0;
  return {
    folder,
    /** The page with these files inside, as the command writes it. */
    async written(...words: string[]): Promise<string> {
      const out = join(folder, `page-${++made}.html`);
      const { code, err } = await witnessmark("page", ...words, "--out", out);
      if (code !== 0) throw new Error(err);
      return out;
    },
    async context(options: Parameters<Browser["newContext"]>[0] = {}): Promise<BrowserContext> {
      if (browser === undefined) throw new Error("there is no browser");
      return browser.newContext({ acceptDownloads: true, ...options });
    },
    /** Opens a page that the command wrote. What it asks of the network, what goes wrong in it and every window that it opens
     *  is told. */
    async open(file: string, context: BrowserContext): Promise<{ page: Page; faults: string[] }> {
      const page = await context.newPage();
      const faults: string[] = [];
      page.on("console", (message) => {
        if (["error", "warning"].includes(message.type())) faults.push(message.text());
      });
      page.on("pageerror", (fault) => faults.push(fault.message));
      page.on("dialog", (dialog) => {
        if (dialog.type() !== "beforeunload") faults.push(`dialog: ${dialog.message()}`);
        void dialog.accept();
      });
      page.on("popup", () => faults.push("a window was opened"));
      await page.route("**/*", (route) => {
        const url = route.request().url();
        if (url === `file://${file}` || url.startsWith("blob:") || url.startsWith("data:")) return route.continue();
        faults.push(`asked for ${url}`);
        return route.abort();
      });
      await page.goto(`file://${file}`);
      await page.locator(".rule button").first().waitFor();
      return { page, faults };
    },
  };
}

/** Pastes into the text view, in the place of all that is there: by the event that a paste is. The browser's own inserting takes
 *  time by the square of the lines, which no paste into an editor does. */
export async function pasted(page: Page, words: string): Promise<void> {
  await page.locator(".cm-content").click();
  await page.keyboard.press("Control+A");
  await page.locator(".cm-content").evaluate((editor, text) => {
    const clipboardData = new DataTransfer();
    clipboardData.setData("text/plain", text);
    editor.dispatchEvent(new ClipboardEvent("paste", { clipboardData, bubbles: true, cancelable: true }));
  }, words);
}

/** Goes to a station or a place of the page. */
export const goTo = (page: Page, name: string): Promise<void> =>
  page.locator(".rule li button", { hasText: new RegExp(`^${name}$`) }).click();

/** What a click downloads. */
export async function taken(page: Page, click: () => Promise<void>): Promise<{ name: string; bytes: Uint8Array }> {
  const [download] = await Promise.all([page.waitForEvent("download", { timeout: 60_000 }), click()]);
  return { name: download.suggestedFilename(), bytes: readFileSync(await download.path()) };
}
