import { randomBytes } from "node:crypto";
import { mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { dirname, join } from "node:path";
import { unzipSync } from "fflate";
import { afterAll, describe, expect, test } from "vitest";
import { goTo, hasBrowser, inBrowser, taken } from "./browser.js";

const yaml = "name: Opened\n";
const file = (name: string, content: string | Buffer) => ({
  name,
  mimeType: "text/plain",
  buffer: Buffer.from(content as string),
});

const huge = join(mkdtempSync(join(tmpdir(), "witnessmark-huge-")), "c.yaml");
writeFileSync(huge, Buffer.alloc(50_000_000, "x"));
afterAll(() => rmSync(dirname(huge), { recursive: true }));

describe.runIf(hasBrowser)("files that are opened", () => {
  const { written, context, open } = inBrowser();

  test.each([
    ["binary", file("a.yaml", Buffer.concat([Buffer.from([0xff, 0xfe, 0]), randomBytes(5000)])), "“a.yaml” is no text"],
    // Which is nothing but Chinese letters to whoever takes its first two bytes for a sign of another encoding.
    [
      "binary, as of another encoding",
      file("a.yaml", Buffer.from("\ufeff\u4e00\u4e8c\u4e09\u5341", "utf16le")),
      "“a.yaml” is no text",
    ],
    [
      "a picture, told by its own name",
      file("photo.jpg", Buffer.from([0xff, 0xd8, 0xff, 0])),
      "“photo.jpg” is no text",
    ],
    ["with a nought in it", file("b.yaml", "name: L\0\n"), "“b.yaml” is no text"],
    ["huge", huge, "“c.yaml” has 50 MB: no file of more than 1 MB is opened."],
    ["just too large", file("d.csv", "x".repeat(1_000_001)), "no file of more than 1 MB is opened."],
  ])("%s: refused, and said", async (_, one, words) => {
    const { page, faults } = await open(await written("templates/machines/boathouse.yaml"), await context());
    await page.locator('input[type="file"]').setInputFiles(one);
    await page.getByText(words).waitFor();
    expect(await page.locator("header h1").textContent()).toContain("Boathouse");
    await page.getByRole("button", { name: "understood" }).click();
    expect(await page.getByText(words).count()).toBe(0);
    expect(faults).toEqual([]);
  });

  test.each([
    ["a letter", file("letter.txt", "Dear friend,\nthe lathe is sold.\n"), "it is no table of readings"],
    ["another table", file("prices.csv", "item;price\nbelt;3\n"), "it is no table of readings"],
    [
      "notes under a name of ours",
      file("notes.yaml", "Dear friend,\nthe lathe is sold.\n"),
      "neither a machine’s file nor",
    ],
  ])("%s: not taken, and said what it should be; nothing stops", async (_, one, words) => {
    const { page, faults } = await open(await written("templates/machines/boathouse.yaml"), await context());
    await page.locator(".sheet svg").first().waitFor();
    await page.locator('input[type="file"]').setInputFiles(one);
    await page.getByText(words).waitFor();
    expect(await page.locator("header h1").textContent()).toContain("Boathouse");
    expect(await page.locator(".sheet svg").count()).toBeGreaterThan(0);
    expect(await page.locator(".lacking").count()).toBe(0);
    expect(faults).toEqual([]);
  });

  test("a table of readings that no handwheel uses says how to use it, and its faults stop nothing", async () => {
    const { page } = await open(await written("templates/machines/boathouse.yaml"), await context());
    await page.locator('input[type="file"]').setInputFiles(file("slide.csv", "turns;travel\n0;0\nx;y\n"));
    await page.getByText("no handwheel uses it yet").waitFor();
    await page.waitForTimeout(1000);
    await page.locator(".sheet svg").first().waitFor();
    expect(await page.locator(".lacking").count()).toBe(0);
  });

  test("in the place of what was typed: said, and undo brings that back", async () => {
    const { page, faults } = await open(await written(), await context());
    await page.locator("#at-name").fill("Typed for an hour");
    await page.locator('input[type="file"]').setInputFiles(file("other.yaml", yaml));
    await page.getByText("“other.yaml” stands in the place of “lathe.yaml”").waitFor();
    expect(await page.locator("header h1").textContent()).toContain("Opened");
    await page.getByRole("button", { name: "undo", exact: true }).click();
    await expect.poll(() => page.locator("header h1").textContent()).toContain("Typed for an hour");
    expect(faults).toEqual([]);
  });

  test("two machines at once: the first is opened, and what became of the other is said", async () => {
    const { page } = await open(await written(), await context());
    await page.locator("#at-name").fill("Typed");
    await page
      .locator('input[type="file"]')
      .setInputFiles([file("one.yaml", yaml), file("two.yaml", "name: The other\n")]);
    await page.getByText("“two.yaml” was not taken: one machine lies on the desk at a time, and “one.yaml”").waitFor();
    await page.getByText("until this page is closed, “undo” beside its name brings back").waitFor();
    expect(await page.locator("header h1").textContent()).toContain("Opened");
    await page.locator('input[type="file"]').setInputFiles(file("two.yaml", "name: The other\n"));
    await expect.poll(() => page.locator("header h1").textContent()).toContain("The other");
  });

  test("under names that lead elsewhere, or are no names: they come back under plain ones", async () => {
    const { page, faults } = await open(await written(), await context());
    await page
      .locator('input[type="file"]')
      .setInputFiles([
        file('a".html', yaml),
        file("..csv", "turns,travel\n0,0\n"),
        file("\u202egnp.csv", "turns,travel\n0,0\n"),
        file("<img src=x onerror=alert(1)>.csv", "turns,travel\n0,0\n"),
        file(`${"n".repeat(200)}.csv`, "turns,travel\n0,0\n"),
        file("pin.yaml", "steps: []\nname: </script><script>alert(1)</script>\n"),
        file("own\u0007.yaml", "title: <img src=x onerror=alert(1)>\nblocks: []\n"),
      ]);
    await page.getByText("Opened").first().waitFor();
    for (const place of await page.locator(".rule li button").allInnerTexts()) {
      await goTo(page, place);
      await page.waitForTimeout(150);
    }
    await goTo(page, "Take away");
    const { bytes, name } = await taken(page, () => page.getByRole("button", { name: "take all files" }).click());
    expect(name).toBe("a.html.zip");
    const names = Object.keys(unzipSync(bytes)).sort();
    expect(names).toEqual(
      [
        "a.html.yaml",
        "file.csv",
        "gnp.csv",
        "img src=x onerror=alert(1).csv",
        `${"n".repeat(80)}.csv`,
        "own.yaml",
        "pin.yaml",
      ].sort(),
    );
    expect(await page.locator("img, iframe").count()).toBe(0);
    expect(faults).toEqual([]);
  });

  test("the text view takes no more than a file may hold, and says so", async () => {
    const { page, faults } = await open(await written(), await context());
    await page.getByRole("button", { name: "text", exact: true }).click();
    await page.locator(".cm-content").evaluate((editor) => {
      const clipboardData = new DataTransfer();
      clipboardData.setData("text/plain", "# words\n".repeat(200_000));
      editor.dispatchEvent(new ClipboardEvent("paste", { clipboardData, bubbles: true, cancelable: true }));
    });
    await page.getByText("That would make the file larger than 1 MB: it was not taken.").waitFor();
    await page.locator(".cm-content").click();
    await page.keyboard.type("name: L");
    await page.getByText("it was not taken").waitFor({ state: "detached" });
    expect(faults).toEqual([]);
  });

  test("a job that is opened alone is shown at once", async () => {
    const { page } = await open(await written("templates/machines/boathouse.yaml"), await context());
    await page.locator('input[type="file"]').setInputFiles("templates/jobs/deck-pin.yaml");
    await page.locator('.rule button[aria-current="step"]', { hasText: /^Job$/ }).waitFor();
    await expect.poll(() => page.locator("#at-name").inputValue()).toContain("Deck pin");
  });
});
