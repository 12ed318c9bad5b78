import { readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import type { Page } from "playwright-core";
import { describe, expect, test } from "vitest";
import { usesOf } from "../../../src/findings/uses.js";
import { exercises } from "../../../src/student/exercises.js";
import { demoFindings } from "../../support/sheets.js";
import { goTo, hasBrowser, inBrowser } from "./browser.js";

const demo = "templates/machines/boathouse.yaml";
const axe = readFileSync("node_modules/axe-core/axe.min.js", "utf8");

/** Where a numeral of the outer row stands about the dial's middle: degrees clockwise from the index. */
const angleOf = (page: Page, label: string): Promise<number> =>
  page.evaluate((words) => {
    const svg = document.querySelector(".dial svg")?.getBoundingClientRect();
    const rim = document.querySelector(".dial .rim")?.getBoundingClientRect();
    const text = [...document.querySelectorAll(".dial text")].find((one) => one.textContent === words);
    const box = text?.getBoundingClientRect();
    if (!svg || !rim || !box) throw new Error(`no ${words}`);
    const x = box.x + box.width / 2 - rim.x - rim.width / 2;
    const y = box.y + box.height / 2 - rim.y - rim.height / 2;
    return (Math.atan2(x, -y) * 180) / Math.PI;
  }, label);

describe.runIf(hasBrowser)("the dial in the hand", () => {
  const { folder, written, context, open } = inBrowser();

  test.each([
    ["clockwise", 1],
    ["anticlockwise", -1],
  ] as const)(
    "whose numbers grow %s is dragged that way, and they pass the index in their order",
    async (sense, way) => {
      const { page, faults } = await open(await written(demo), await context());
      await page.getByRole("button", { name: "text", exact: true }).click();
      await page.locator(".cm-content").click();
      await page.keyboard.press("Control+A");
      await page.evaluate(
        (text) => document.execCommand("insertText", false, text),
        `name: L\nhandwheels: [{ name: S, feed: 2, dial: { shape: drum, diameter: 38, width: 9, divisions: 0.02 mm, closure: even, increases: ${sense} } }]\n`,
      );
      await goTo(page, "Dial");
      await page.locator(".dial").waitFor();
      // Numbers that come to the index next lie where the turning brings them from.
      expect(Math.sign(await angleOf(page, "0.2"))).toBe(-way);
      const box = await page.locator(".dial svg").boundingBox();
      const rim = await page.locator(".dial .rim").first().boundingBox();
      if (!box || !rim) throw new Error("no dial");
      const spot = (degrees: number) => {
        const angle = ((degrees - 90) * Math.PI) / 180;
        return [rim.x + rim.width / 2 + 100 * Math.cos(angle), rim.y + rim.height / 2 + 100 * Math.sin(angle)] as const;
      };
      await page.mouse.move(...spot(0));
      await page.mouse.down();
      for (let step = 1; step <= 4; step++) await page.mouse.move(...spot(way * step * 9));
      await page.mouse.up();
      const turns = Number(await page.locator(".dial").getAttribute("aria-valuenow"));
      // A tenth of a turn, as the middle of the box about which it is dragged lies a little off that of the wheel.
      expect(turns).toBeGreaterThan(0.08);
      expect(turns).toBeLessThan(0.12);
      await expect.poll(() => page.locator(".standing").textContent()).toContain("the slide has gone 0.");
      expect(Math.abs((await angleOf(page, "0.2")) - way * 360 * (turns - 0.1))).toBeLessThan(1);
      expect(faults).toEqual([]);
    },
  );

  test("turned back its slide waits, and says so", async () => {
    const { page, faults } = await open(await written(demo), await context());
    await goTo(page, "Dial");
    await page.getByRole("button", { name: "turn on" }).click();
    const gone = () => page.locator(".standing").textContent();
    await expect.poll(gone).toMatch(/gone 2\.\d+/);
    const there = /gone [\d.]+/.exec((await gone()) ?? "")?.[0] ?? "none";
    await page.locator(".dial").focus();
    await page.keyboard.press("ArrowLeft");
    await expect.poll(gone).toContain("the slide waits");
    expect(await gone()).toContain(there);
    await page.keyboard.press("ArrowRight");
    await expect.poll(gone).not.toContain("waits");
    expect(faults).toEqual([]);
  });

  test("turned back beyond its lost motion the slide has followed; Home and End go to the ends of its travel", async () => {
    const { page } = await open(await written(demo), await context());
    await goTo(page, "Dial");
    const dial = page.locator(".dial");
    await dial.focus();
    await page.keyboard.press("PageUp");
    await page.keyboard.press("PageDown");
    await page.getByText("the slide has followed, and lags").waitFor();
    await page.keyboard.press("End");
    const end = Number(await dial.getAttribute("aria-valuemax"));
    const { handwheel, feed } = demoFindings().handwheels[0] ?? {};
    expect(end).toBeCloseTo((handwheel?.travel ?? 0) / (feed?.perTurn ?? 1), 6);
    await expect.poll(async () => Number(await dial.getAttribute("aria-valuenow"))).toBeCloseTo(end, 6);
    expect(await page.getByText("beyond its travel").count()).toBe(0);
    await page.keyboard.press("PageUp");
    await page.getByText("beyond its travel").first().waitFor();
    await page.keyboard.press("Home");
    await expect.poll(async () => Number(await dial.getAttribute("aria-valuenow"))).toBe(0);
    await page.keyboard.press("PageUp");
    await page.keyboard.press("PageUp");
    await page.locator("#distance").fill("1");
    await expect.poll(async () => Number(await dial.getAttribute("aria-valuenow"))).toBeLessThan(1);
    await page.locator("#distance").fill("1e9");
    await page.getByText("Write a distance").waitFor();
    // As it stood before one typed.
    await expect.poll(async () => Number(await dial.getAttribute("aria-valuenow"))).toBe(2);
  });

  test("an answer that cannot be read takes nothing back of what was tried; all can be begun anew", async () => {
    const { page } = await open(await written(demo), await context());
    await goTo(page, "Dial");
    await page.getByRole("button", { name: "exercises" }).click();
    const tally = () => page.locator(".tally").textContent();
    const mark = async (words: string) => {
      await page.locator("#answer").fill(words);
      await page.getByRole("button", { name: "mark it" }).click();
    };
    expect(await page.getByRole("button", { name: "all anew" }).count()).toBe(0);
    await mark("99");
    await expect.poll(tally).toContain("0 right, 1 tried");
    await mark("two");
    await page.getByText("Write a length").waitFor();
    expect(await tally()).toContain("0 right, 1 tried");
    await page.getByRole("button", { name: "the next one" }).click();
    await page.getByRole("button", { name: "all anew" }).click();
    await page.getByText("Exercise 1 of").waitFor();
    expect(await tally()).toContain("0 right, 0 tried");
    await page.reload();
    await goTo(page, "Dial");
    await page.getByRole("button", { name: "exercises" }).click();
    expect(await tally()).toContain("0 right, 0 tried");
  });

  test("all exercises of the sheet are worked by the keyboard alone, and counted", async () => {
    const findings = demoFindings();
    const list = usesOf(findings.machine).flatMap((use) => exercises(findings, use));
    const { page, faults } = await open(await written(demo), await context());
    const press = async (name: string, key = "Enter") => {
      await page.getByRole("button", { name, exact: true }).focus();
      await page.keyboard.press(key);
    };
    await goTo(page, "Dial");
    await press("exercises");
    const said = page.locator(".marked");
    let [right, tried] = [0, 0];
    for (const [at, { question, wanted }] of list.entries()) {
      await page.locator(".asked h2", { hasText: `Exercise ${at + 1} of ${list.length}` }).waitFor();
      expect(await page.locator("#question").textContent()).toBe(question);
      if (wanted?.by === "number") {
        // In the file's unit, mm.
        await page.locator("#answer").focus();
        await page.keyboard.type(String(wanted.value));
        await page.keyboard.press("Enter");
      } else if (wanted?.by === "position") {
        await page.locator("#answer").focus();
        await page.keyboard.type(wanted.right[0] ?? "nowhere");
        await press("mark it");
      } else if (wanted?.by === "turning") {
        // What the slide has done would be the answer.
        expect(await page.locator(".standing").count()).toBe(0);
        await page.locator(".dial").focus();
        if (wanted.from > 0) await page.keyboard.press("PageDown");
        const now = async () => Number(await page.locator(".dial").getAttribute("aria-valuenow"));
        while ((await now()) + 1 <= wanted.turns) await page.keyboard.press("PageUp");
        while ((await now()) < wanted.turns + wanted.within) await page.keyboard.press("ArrowRight");
        await press("mark it");
        await expect.poll(() => said.textContent()).toMatch(/✗ [\d.]+ lines? too far\./);
        await page.locator(".dial").focus();
        await page.keyboard.press("ArrowLeft");
        await press("mark it");
        await expect.poll(() => said.textContent()).toMatch(/you came back to it/);
        await page.locator(".dial").focus();
        while ((await now()) > wanted.turns - 0.5) await page.keyboard.press("ArrowLeft");
        while ((await now()) < wanted.turns - wanted.within) await page.keyboard.press("ArrowRight");
        await press("mark it");
      }
      if (wanted) {
        right++;
        tried++;
        await expect.poll(() => said.textContent(), { message: question }).toBe("✓ Right.");
      } else {
        await press("show the answer");
        await page.getByText("Answer:").waitFor();
      }
      await expect.poll(() => page.locator(".tally").textContent()).toContain(`${right} right, ${tried} tried`);
      if (at + 1 < list.length) await press("the next one");
    }
    // What was done stays while one looks something up.
    await goTo(page, "Ask");
    await goTo(page, "Dial");
    await expect.poll(() => page.locator(".tally").textContent()).toContain(`${right} right`);
    expect(faults).toEqual([]);
  });

  test("what is right once the answer was looked at does not count", async () => {
    const { page } = await open(await written(demo), await context());
    await goTo(page, "Dial");
    await page.getByRole("button", { name: "exercises" }).click();
    await page.getByRole("button", { name: "show the answer" }).click();
    await page.getByText("Answer:").waitFor();
    const answer = (await page.locator(".answering [role=status]").textContent()) ?? "";
    await page.locator("#answer").fill(/[\d.]+ mm/.exec(answer)?.[0] ?? "");
    await page.getByRole("button", { name: "mark it" }).click();
    await page.getByText("✓ Right.").waitFor();
    expect(await page.locator(".tally").textContent()).toContain("0 right, 1 tried");
  });

  test("how far one is stays when the page is loaded anew", async () => {
    const { page, faults } = await open(await written(demo), await context());
    await goTo(page, "Dial");
    await page.getByRole("button", { name: "exercises" }).click();
    const first = exercises(demoFindings(), usesOf(demoFindings().machine)[0])[0];
    if (first?.wanted?.by !== "number") throw new Error("no number");
    await page.locator("#answer").fill(String(first.wanted.value));
    await page.getByRole("button", { name: "mark it" }).click();
    await page.getByText("✓ Right.").waitFor();
    await page.getByRole("button", { name: "the next one" }).click();
    await page.reload();
    await goTo(page, "Dial");
    await page.getByRole("button", { name: "exercises" }).click();
    await page.getByText("Exercise 2 of").waitFor();
    expect(await page.locator(".tally").textContent()).toContain("1 right, 1 tried");
    // What was kept and is none of ours is not shown, and stops nothing.
    await page.evaluate(() => {
      for (const key of Object.keys(localStorage))
        if (key.endsWith("exercises")) localStorage.setItem(key, '{"at":-1,"of":[["x",{"words":3}],null]}');
    });
    await page.reload();
    await goTo(page, "Dial");
    await page.getByRole("button", { name: "exercises" }).click();
    await page.getByText("Exercise 1 of").waitFor();
    expect(await page.locator(".tally").textContent()).toContain("0 right, 0 tried");
    expect(faults).toEqual([]);
  });

  test("the card is folded beside an exercise that asks to look at it, and the dial may be", async () => {
    const { page, faults } = await open(await written(demo), await context());
    await goTo(page, "Dial");
    await page.getByRole("button", { name: "exercises" }).click();
    await page.locator(".hand summary", { hasText: "Dial of the Cross slide" }).click();
    expect(await page.locator(".dial").isVisible()).toBe(false);
    while (!((await page.locator("#question").textContent()) ?? "").includes("Where does the belt go"))
      await page.getByRole("button", { name: "the next one" }).click();
    expect(await page.locator(".hand .sheet").count()).toBe(0);
    await page.locator(".hand summary").click();
    await page.locator(".hand .sheet svg").waitFor();
    expect(await page.locator(".hand .sheet").getAttribute("aria-label")).toMatch(/^Belt card, page 1 of 1$/);
    expect(faults).toEqual([]);
  });

  test.each([
    [1280, 900],
    [360, 740],
  ])("every exercise fits %d pixels, and the accessibility checker has no finding", async (width, height) => {
    const { page, faults } = await open(
      await written(demo),
      await context({ viewport: { width, height }, bypassCSP: true }),
    );
    await page.evaluate(axe);
    await goTo(page, "Dial");
    await page.getByRole("button", { name: "exercises" }).click();
    const next = page.getByRole("button", { name: "the next one" });
    for (let at = 0; ; at++) {
      await page.getByRole("button", { name: "show the answer" }).click();
      await page.getByText("Answer:").waitFor();
      const { wide, small, found } = await page.evaluate(async () => {
        const { violations } = await (
          globalThis as unknown as { axe: { run: () => Promise<{ violations: { id: string; nodes: unknown[] }[] }> } }
        ).axe.run();
        return {
          wide: document.documentElement.scrollWidth,
          small: [...document.querySelectorAll(".hand button, .hand select, .hand input")].flatMap((one) =>
            one.getBoundingClientRect().height < 43.5 ? [one.outerHTML.slice(0, 80)] : [],
          ),
          found: violations.map(({ id, nodes }) => `${id}: ${JSON.stringify(nodes).slice(0, 300)}`),
        };
      });
      expect(found, `exercise ${at + 1}`).toEqual([]);
      expect(small).toEqual([]);
      expect(wide).toBeLessThanOrEqual(width);
      if (await next.isDisabled()) break;
      await next.click();
    }
    expect(faults).toEqual([]);
  });

  test("a distance is asked in the unit of the wheel's own dial, in the hand and where it is asked", async () => {
    const file = join(folder, "mixed.yaml");
    const dial = "shape: drum, diameter: 2, width: 0.4";
    writeFileSync(
      file,
      `name: M\nunits: in\nhandwheels:\n  - { name: Cross, feed: 2 mm, dial: { ${dial}, divisions: 0.02 mm } }\n  - { name: Top, feed: 0.1, dial: { ${dial} } }\n`,
    );
    const { page, faults } = await open(await written(file), await context());
    for (const [place, wheel, typed] of [
      ["Dial", "#wheel", "#distance"],
      ["Ask", "#askedWheel", "#askedDistance"],
    ] as const) {
      await goTo(page, place);
      const unit = page.locator(`.typed:has(${typed}) .unit`);
      for (const [name, words] of [
        ["Cross", /^mm/],
        ["Top", /^in/],
      ] as const) {
        await page.locator(wheel).selectOption(name);
        await expect.poll(() => unit.textContent()).toMatch(words);
      }
    }
    expect(faults).toEqual([]);
  });
});
