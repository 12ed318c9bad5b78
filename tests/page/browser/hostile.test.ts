import { describe, expect, test } from "vitest";
import { goTo, hasBrowser, inBrowser } from "./browser.js";

const markup = [
  "<img src=x onerror=alert(1)>",
  "</script><script>alert(1)</script>",
  '"><svg onload=alert(1)>',
  "javascript:alert(1)",
  "{{constructor.constructor('alert(1)')()}}",
  "&lt;script&gt;",
  "]]><x/>",
  "</textarea><iframe src=http://example.invalid>",
  "</style><style>@import 'http://example.invalid'",
  "url(http://example.invalid)",
];
const bidi = ["\u202etfel\u202c", "a\u0000b", "\ud800", "\u200b\u200b", "e\u0301\u0301\u0301\u0301"];
const whole = (name: string) =>
  `name: ${JSON.stringify(name)}\nhandwheels: [{ name: ${JSON.stringify(name)}, feed: 2, dial: { shape: drum, diameter: 38, width: 9 } }]\n`;
const texts = [
  ...markup.map(whole),
  ...bidi.map(whole),
  `name: ${"L".repeat(100_000)}\n`,
  `${"a: ".repeat(5000)}\n`,
  `[${"[".repeat(20_000)}`,
  `name: L\nhandwheels:\n${"  - { name: W, feed: 2 }\n".repeat(3000)}`,
  `name: L\nwork: { diameters: [${Array.from({ length: 20_000 }, (_, i) => i + 1).join(", ")}] }\n`,
  `a: &a [x]\nb: &b [*a,*a,*a,*a,*a,*a,*a,*a]\nc: &c [*b,*b,*b,*b,*b,*b,*b,*b]\nd: [*c,*c,*c,*c,*c,*c,*c,*c]\n`,
  "\t\t\tname: L",
  "%YAML 9.9\n--- !!js/function 'function(){alert(1)}'\n",
  "name: !!binary abc\n",
  "? [complex]\n: key\n",
  "name: L\n".repeat(2000),
  "__proto__: { polluted: true }\nname: L\n",
  `name: L\nhandwheels: [{ name: S, feed: { readings: { turns: [${Array.from({ length: 3000 }, (_, i) => i)}], travel: [${Array.from({ length: 3000 }, (_, i) => i * 2)}] } } }]\n`,
  "\ufeffname: L\r\nunits: in\r\n",
  "",
];

describe.runIf(hasBrowser)("hostile files", () => {
  const { written, context, open } = inBrowser();

  test(`${texts.length} of them pasted: nothing is run, nothing asked of the network, and the page answers all the while`, async () => {
    const { page, faults } = await open(await written(), await context());
    await page.evaluate(() => {
      const watched = globalThis as unknown as { slowest: number };
      watched.slowest = 0;
      let last = performance.now();
      setInterval(() => {
        watched.slowest = Math.max(watched.slowest, performance.now() - last);
        last = performance.now();
      }, 20);
    });
    await page.getByRole("button", { name: "text", exact: true }).click();
    const slow: string[] = [];
    for (const text of texts) {
      await page.evaluate(() => {
        (globalThis as unknown as { slowest: number }).slowest = 0;
      });
      await page.locator(".cm-content").click();
      await page.keyboard.press("Control+A");
      // As a paste brings it: at once.
      await page.evaluate((words) => document.execCommand("insertText", false, words), text === "" ? " " : text);
      await page.waitForTimeout(300);
      await page.getByRole("button", { name: "form", exact: true }).click();
      await page.waitForTimeout(100);
      await page.getByRole("button", { name: "text", exact: true }).click();
      const slowest = await page.evaluate(() => (globalThis as unknown as { slowest: number }).slowest);
      if (slowest > 1000) slow.push(`${Math.round(slowest)} ms: ${text.slice(0, 60)}`);
    }
    expect(slow).toEqual([]);
    expect(await page.evaluate(() => (({}) as { polluted?: boolean }).polluted)).toBeUndefined();
    expect(faults).toEqual([]);
  }, 240_000);

  test("names of that kind in every view", async () => {
    const { page, faults } = await open(await written(), await context());
    await page.getByRole("button", { name: "text", exact: true }).click();
    await page.locator(".cm-content").click();
    await page.evaluate((words) => document.execCommand("insertText", false, words), whole(markup[0] ?? ""));
    for (const name of await page.locator(".rule button").allInnerTexts()) {
      await goTo(page, name);
      await page.waitForTimeout(200);
    }
    expect(await page.locator("img, iframe, script[src]").count()).toBe(0);
    expect(faults).toEqual([]);
  }, 60_000);
});
