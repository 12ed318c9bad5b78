/** The page with the demo inside, as README shows it; only where there is a browser. */
import { execFileSync } from "node:child_process";
import { existsSync, mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { chromium } from "playwright-core";
import { demoForAnyPrinter } from "./samplePages.mjs";

/** Takes the picture, or tells that it could not. */
export async function takePicture(picture) {
  const executablePath = process.env.WITNESSMARK_BROWSER ?? "/usr/bin/chromium";
  if (!existsSync(executablePath)) {
    console.error(`${picture} was left as it was: there is no browser at ${executablePath}`);
    return;
  }
  const folder = mkdtempSync(join(tmpdir(), "witnessmark-"));
  const file = join(folder, "page.html");
  const words = ["page", demoForAnyPrinter(folder), "--job", "templates/jobs/deck-pin.yaml", "--out", file];
  execFileSync(process.execPath, ["dist/witnessmark.cjs", ...words], { stdio: "pipe" });
  const browser = await chromium.launch({ executablePath, args: ["--no-sandbox", "--disable-gpu"] });
  const page = await browser.newPage({ viewport: { width: 1120, height: 760 }, deviceScaleFactor: 1.5 });
  await page.goto(`file://${file}`);
  await page.locator(".rule li button", { hasText: /^Handwheels$/ }).click();
  await page.locator(".sheet svg").first().waitFor();
  await page.locator(".readings svg").first().waitFor();
  await page.evaluate(() => document.querySelector(".readings")?.scrollIntoView());
  await page.waitForTimeout(500);
  await page.screenshot({ path: picture });
  await browser.close();
  rmSync(folder, { recursive: true });
}
