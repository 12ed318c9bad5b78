import { mkdtempSync, readFileSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import type { Locator, Page } from "playwright-core";
import { describe, expect, test } from "vitest";
import { witnessmark } from "../../support/command.js";
import { goTo, hasBrowser, inBrowser, taken } from "./browser.js";

const demo = "templates/machines/boathouse.yaml";
const axe = readFileSync("node_modules/axe-core/axe.min.js", "utf8");
type Axe = { run: () => Promise<{ violations: { id: string; nodes: { html: string }[] }[] }> };

/** What the accessibility checker finds in the view as it stands. */
const found = (page: Page): Promise<string[]> =>
  page.evaluate(async () =>
    (await (globalThis as unknown as { axe: Axe }).axe.run()).violations.map(
      ({ id, nodes }) => `${id}: ${nodes[0]?.html}`,
    ),
  );
/** A terminal breaks lines where it is full. */
const words = (lines: string): string => lines.replace(/\s+/g, " ").trim();
const linesOf = async (answer: Locator): Promise<string> =>
  words((await answer.locator("> *").allTextContents()).join(" "));

/** Every cell and line of an answer's tables. */
const cellsOf = async (answer: Locator): Promise<string[]> =>
  (await answer.locator("h3, p, th, td > span, td:not(:has(span))").allTextContents()).map(words).filter(Boolean);

describe.runIf(hasBrowser)("what is asked", () => {
  const { written, context, open } = inBrowser();

  test("explain, verify and suppose are answered as on the command line, by the keyboard, and refused in its words", async () => {
    const { page, faults } = await open(await written(demo), await context());
    await goTo(page, "Ask");
    const answer = (card: string, kind: string) => page.locator(`section[aria-labelledby="${card}"] ${kind}`);
    await page.locator("#quantity").selectOption("feed");
    await page.locator("#of").selectOption("Cross slide");
    await answer("worked-out", ".parts").filter({ hasText: "Cross slide" }).waitFor();
    const { out: explained } = await witnessmark("explain", demo, "feed", "--of", "Cross slide");
    const worked = await cellsOf(answer("worked-out", ".parts"));
    expect(worked.length).toBeGreaterThan(8);
    for (const cell of worked) expect(words(explained)).toContain(cell);

    await page.locator("#verifiedWheel").selectOption("Cross slide");
    await page.locator("#measured").focus();
    await page.keyboard.type("118.9");
    await answer("right", ".said").filter({ hasText: "118.90 mm" }).waitFor();
    const { out: judged } = await witnessmark("verify", demo, "--handwheel", "Cross slide", "--measured", "118.9");
    const told = await answer("right", ".said > p:not(.ways)").allTextContents();
    expect(told.length).toBeGreaterThan(3);
    for (const line of told.slice(0, -1)) expect(words(judged)).toContain(words(line));

    await page.locator("#wish").selectOption("60 Hz");
    expect(await page.evaluate(() => document.activeElement?.id)).toBe("change");
    await page.keyboard.press("End");
    await page.keyboard.type("; spindle belt A 80 to 50");
    await answer("supposed", ".parts").filter({ hasText: "spindle belt A: 80 to 50" }).waitFor();
    const wishes = ["--suppose", "60 Hz", "--suppose", "spindle belt A 80 to 50"];
    const { out: supposed } = await witnessmark("check", demo, ...wishes);
    const tables = await cellsOf(answer("supposed", ".parts"));
    expect(tables.length).toBeGreaterThan(30);
    for (const cell of tables) expect(words(supposed)).toContain(cell);

    await page.locator("#change").fill("belt square");
    await page.locator("#measured").fill("abc");
    for (const [card, ...asked] of [
      ["supposed", "check", demo, "--suppose", "belt square"],
      ["right", "verify", demo, "--handwheel", "Cross slide", "--measured", "abc"],
    ]) {
      const beneath = answer(card ?? "", ".notes .error");
      await beneath.waitFor();
      const refused = (await beneath.textContent()) ?? "";
      expect((await witnessmark(...asked)).err).toContain(refused);
      expect(refused).not.toContain("suppose:");
    }
    expect(faults).toEqual([]);
  });

  test("what mends a printed dial is put in the file by a button, and undone in one step", async () => {
    const { page, faults } = await open(await written(demo), await context());
    await goTo(page, "Ask");
    await page.locator("#verifiedWheel").selectOption("Cross slide");
    await page.locator("#measured").fill("118.9");
    const { out } = await witnessmark("verify", demo, "--handwheel", "Cross slide", "--measured", "118.9");
    const [, printer = "", side = "", bar = ""] =
      /printers: \{ ([^:]+): \{ (across|down): ([^}]+) \}/.exec(words(out)) ?? [];
    const button = page.getByRole("button", { name: `${side}: put “` });
    expect(await button.textContent()).toBe(`${side}: put “${side} ${bar}” in the file`);
    await button.click();
    await page.getByText("is in the file now. Print the dial again").waitFor();
    expect(await page.locator("#measured").inputValue()).toBe("");
    await goTo(page, "Machine");
    await page.getByRole("button", { name: "text", exact: true }).click();
    await page.locator(".cm-line", { hasText: /\S/ }).first().waitFor();
    await page.locator(".cm-content").press("Control+End");
    await page.getByText(bar).first().waitFor();
    expect(printer).not.toBe("");
    await page.getByRole("button", { name: "undo", exact: true }).click();
    await expect.poll(() => page.getByText(bar).count()).toBe(0);
    expect(await page.getByRole("button", { name: "undo", exact: true }).isDisabled()).toBe(true);
    expect(faults).toEqual([]);
  });

  test("what was asked stays while one looks elsewhere, and is the file's own", async () => {
    const { page, faults } = await open(await written(demo), await context());
    await goTo(page, "Ask");
    const typed = { diameter: "16", askedDistance: "12.5", measured: "118.9", change: "60 Hz" };
    const chosen = { operation: "drilling", askedWheel: "Top slide", verifiedWheel: "Top slide", quantity: "feed" };
    for (const [id, words] of Object.entries(chosen)) await page.locator(`#${id}`).selectOption(words);
    for (const [id, words] of Object.entries(typed)) await page.locator(`#${id}`).fill(words);
    const standing = () =>
      page.evaluate(
        (ids) => ids.map((id) => (document.getElementById(id) as HTMLInputElement | null)?.value),
        Object.keys({ ...chosen, ...typed }),
      );
    const before = Object.values({ ...chosen, ...typed });
    await expect.poll(standing).toEqual(before);
    await goTo(page, "Dial");
    await goTo(page, "Ask");
    await expect.poll(standing).toEqual(before);
    await page.locator(".asking .said").nth(1).waitFor();
    const other = join(mkdtempSync(join(tmpdir(), "witnessmark-other-")), "other.yaml");
    writeFileSync(other, readFileSync(demo, "utf8"));
    await page.locator('.open input[type="file"]').setInputFiles(other);
    await expect
      .poll(() =>
        page
          .locator("#diameter")
          .inputValue()
          .catch(() => "-"),
      )
      .toBe("");
    expect(faults).toEqual([]);
  });

  test("a number in an answer leads to its working", async () => {
    const { page, faults } = await open(await written(demo), await context());
    await goTo(page, "Ask");
    await page.locator("#diameter").fill("16");
    await page.locator("summary", { hasText: "how it came about" }).click();
    await page.getByRole("button", { name: /^speed of .*, worked out$/ }).click();
    expect(await page.evaluate(() => document.activeElement?.id)).toBe("worked-out");
    expect(await page.locator("#quantity").inputValue()).toBe("speed");
    await page.locator(".wide .parts", { hasText: "tachometer" }).waitFor();
    expect(faults).toEqual([]);
  });

  test("a copied sheet, changed in the page, prints as the command prints its file; taken away and opened again it is the same", async () => {
    const { page, faults } = await open(await written(demo), await context());
    await goTo(page, "Own sheets");
    await page.locator("#copied").selectOption("belt-card");
    await page.getByRole("button", { name: "+ copy to change" }).click();
    await page.locator(".own .cm-content").click();
    await page.keyboard.press("Control+A");
    await page.keyboard.press("Delete");
    const text = "title: Door card\nneeds: drive\nblocks:\n  - positions: { materials: 1, caution: drill }\n";
    await page.evaluate((whole) => document.execCommand("insertText", false, whole), text);
    await page.locator(".sheet svg", { hasText: "Door card" }).waitFor();
    const away = await taken(page, () => page.getByRole("button", { name: "take my-belt-card.yaml away" }).click());
    expect(new TextDecoder().decode(away.bytes)).toBe(text);

    const folder = mkdtempSync(join(tmpdir(), "witnessmark-own-"));
    const file = join(folder, away.name);
    writeFileSync(file, away.bytes);
    await witnessmark("print", demo, "--sheet", file, "--out", folder);
    const theirs = readFileSync(join(folder, "boathouse-my-belt-card.pdf"));
    const printed = async () => {
      await goTo(page, "Take away");
      await page.locator('.sheets input[value="my-belt-card"]').check();
      return taken(page, () => page.getByRole("button", { name: "take the ticked ones" }).click());
    };
    const ours = await printed();
    expect(ours.name).toBe("boathouse-my-belt-card.pdf");
    expect(Buffer.compare(ours.bytes, theirs)).toBe(0);

    await goTo(page, "Own sheets");
    await page.getByRole("button", { name: "take it off the desk" }).click();
    expect(await page.locator(".own").count()).toBe(0);
    await page.locator('.open input[type="file"]').setInputFiles(file);
    await page.locator(".own").waitFor();
    await page.locator(".sheet svg", { hasText: "Door card" }).waitFor();
    await goTo(page, "Take away");
    expect(Buffer.compare((await printed()).bytes, theirs)).toBe(0);
    expect(faults).toEqual([]);
  });

  test("a template's faults stand at their place, its blocks are offered, and all that there are are listed", async () => {
    const { page, faults } = await open(await written(demo), await context());
    await goTo(page, "Own sheets");
    await page.getByRole("button", { name: "+ copy to change" }).click();
    await page.locator(".own .cm-content").click();
    await page.keyboard.press("Control+A");
    await page.keyboard.press("Delete");
    // What is offered comes with the list of blocks.
    await page.locator("details .lines div").first().waitFor({ state: "attached" });
    await page.evaluate((words) => document.execCommand("insertText", false, words), "title: T\nblocks:\n- dril");
    await page.keyboard.type("l b", { delay: 60 });
    await page.locator(".cm-tooltip-autocomplete", { hasText: "drill bars" }).waitFor();
    await page.waitForTimeout(200);
    await page.keyboard.press("Enter");
    await page.locator(".sheet svg").first().waitFor();
    await page.keyboard.press("Control+End");
    // At once: while it is typed other things are wrong with it.
    await page.evaluate((words) => document.execCommand("insertText", false, words), "\nneds: 3");
    await page.locator(".messages", { hasText: "line 4" }).waitFor();
    const file = join(mkdtempSync(join(tmpdir(), "witnessmark-own-")), "my-sheet.yaml");
    writeFileSync(file, "title: T\nblocks:\n- drill bars:\nneds: 3");
    const { err } = await witnessmark("print", demo, "--sheet", file);
    const told = words((await page.locator(".messages li").textContent()) ?? "").replace(/^line 4 /, "");
    expect(err).toContain(`my-sheet.yaml:4:1: ${told}`);
    expect(await page.locator(".own .cm-lint-marker-error").count()).toBe(1);

    await page.locator("summary", { hasText: "All blocks" }).click();
    const { out } = await witnessmark("sheets", "--blocks");
    expect(await linesOf(page.locator("details .lines"))).toBe(words(out));
    expect(faults).toEqual([]);
  });

  test("an empty page begins with the starter or the example, as they come with the program", async () => {
    const { page, faults } = await open(await written(), await context());
    const taking = async (name: string) => {
      await goTo(page, "Take away");
      const { bytes } = await taken(page, () => page.getByRole("button", { name, exact: true }).click());
      return new TextDecoder().decode(bytes);
    };
    await page.getByRole("button", { name: "a file with a remark at every key" }).click();
    expect(await taking("lathe.yaml")).toBe(readFileSync("templates/machines/starter.yaml", "utf8"));
    await goTo(page, "Machine");
    expect(await page.locator(".begin").count()).toBe(0);
    await page.getByRole("button", { name: "undo", exact: true }).click();
    await page.getByRole("button", { name: /^an example/ }).click();
    expect(await taking("lathe.yaml")).toBe(readFileSync(demo, "utf8"));
    expect(await taking("deck-pin.yaml")).toBe(readFileSync("templates/jobs/deck-pin.yaml", "utf8"));
    expect(faults).toEqual([]);
  });

  test("sheets of one handwheel, in another language, are the command's to the byte", async () => {
    const { page, faults } = await open(await written(demo), await context());
    const folder = mkdtempSync(join(tmpdir(), "witnessmark-wheel-"));
    const wished = ["--handwheel", "Top slide", "--language", "de"];
    await witnessmark("print", demo, "--sheet", "turns", ...wished, "--out", folder);
    await goTo(page, "Take away");
    await page.locator('.sheets input[value="turns"]').check();
    await page.getByLabel("Top slide", { exact: true }).check();
    await page.locator("#language").selectOption("de");
    const { name, bytes } = await taken(page, () => page.getByRole("button", { name: "take the ticked ones" }).click());
    expect(name).toBe("boathouse-turns.pdf");
    expect(Buffer.compare(bytes, readFileSync(join(folder, name)))).toBe(0);
    expect(faults).toEqual([]);
  });

  test.each([
    ["a desk", 1280, 900],
    ["a phone", 360, 740],
  ])("filled in, nothing of it stops who reads by another way, or is wider than %s", async (_, width, height) => {
    const { page, faults } = await open(
      await written(demo),
      await context({ viewport: { width, height }, bypassCSP: true }),
    );
    await page.evaluate(axe);
    const look = async (view: string) => {
      await page.waitForTimeout(400);
      expect(await found(page), view).toEqual([]);
      expect(await page.evaluate(() => document.documentElement.scrollWidth), view).toBeLessThanOrEqual(width);
      const low = await page.evaluate(() =>
        [...document.querySelectorAll("main :is(button, select, summary)")].flatMap((one) => {
          const { width: across, height: down } = one.getBoundingClientRect();
          return across > 0 && down < 43.5 && !one.closest(".messages, .cm-editor") ? [one.outerHTML.slice(0, 80)] : [];
        }),
      );
      expect(low, view).toEqual([]);
    };
    await goTo(page, "Ask");
    await page.locator("#diameter").fill("16");
    await page.locator("#askedDistance").fill("12.5");
    await page.locator("#measured").fill("118.9");
    await page.locator("#wish").selectOption("60 Hz");
    await page.locator("#quantity").selectOption("feed");
    await page.locator(".wide .parts").nth(1).waitFor();
    for (const one of await page.locator(".asking summary").all()) await one.click();
    await look("answers");
    await page.locator("#change").fill("x");
    await page.locator("#measured").fill("x");
    await look("refusals");
    await goTo(page, "Own sheets");
    await page.getByRole("button", { name: "+ copy to change" }).click();
    await page.locator("summary", { hasText: "All blocks" }).click();
    await look("own sheets");
    expect(faults).toEqual([]);
  });
});
