import { describe, expect, test } from "vitest";
import { goTo, hasBrowser, inBrowser, pasted } from "./browser.js";

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
  `name: L\nhandwheels:\n${"  - { name: W, feed: 2 }\n".repeat(1200)}`,
  `name: L\ndrive:\n  stages:\n${`    - { name: s, steps: [${"{ driver: 50, driven: 50 }, ".repeat(40)}] }\n`.repeat(40)}`,
  `name: L\n${"- ".repeat(20_000)}x\n`,
  `name: L\nlimits: ${"{ a: ".repeat(10_000)}`,
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

/** By how much longer work takes here now than on a machine with nothing else to do. */
function heldUp(): number {
  const [start, before] = [performance.now(), process.cpuUsage()];
  while (performance.now() - start < 300);
  const { user, system } = process.cpuUsage(before);
  return Math.max(1, (performance.now() - start) / ((user + system) / 1000));
}

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
    const button = (name: string) => page.getByRole("button", { name, exact: true }).click();
    /** The longest that the page did not answer while a text was looked at in its views, ms. */
    const longest = async (text: string): Promise<number> => {
      await button("text");
      await page.evaluate(() => {
        (globalThis as unknown as { slowest: number }).slowest = 0;
      });
      await pasted(page, text === "" ? " " : text);
      await page.waitForTimeout(300);
      await button("form");
      for (const station of ["Belts and gears", "Handwheels", "Work", "Machine"]) {
        await goTo(page, station);
        await page.waitForTimeout(50);
      }
      return page.evaluate(() => (globalThis as unknown as { slowest: number }).slowest);
    };
    const slow: string[] = [];
    for (const text of texts) {
      // A machine with other work holds any page up now and then, not twice at the same text; what is slow of itself is both times.
      const first = await longest(text);
      if (first <= 1000) continue;
      await longest("name: L\n");
      const second = await longest(text);
      if (second > 1000 * heldUp()) slow.push(`${Math.round(Math.min(first, second))} ms: ${text.slice(0, 60)}`);
    }
    expect(slow).toEqual([]);
    expect(await page.evaluate(() => (({}) as { polluted?: boolean }).polluted)).toBeUndefined();
    expect(faults).toEqual([]);
  }, 240_000);

  test("names of that kind in every view", async () => {
    const { page, faults } = await open(await written(), await context());
    await page.getByRole("button", { name: "text", exact: true }).click();
    await pasted(page, whole(markup[0] ?? ""));
    for (const name of await page.locator(".rule li button").allInnerTexts()) {
      await goTo(page, name);
      await page.waitForTimeout(200);
    }
    expect(await page.locator("img, iframe, script[src]").count()).toBe(0);
    expect(faults).toEqual([]);
  });
});
