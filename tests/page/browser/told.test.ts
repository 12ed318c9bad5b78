import { mkdtempSync, readFileSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { describe, expect, test } from "vitest";
import { goTo, hasBrowser, inBrowser } from "./browser.js";

const folder = mkdtempSync(join(tmpdir(), "witnessmark-told-"));
const fileOf = (name: string, text: string): string => {
  const path = join(folder, name);
  writeFileSync(path, text);
  return path;
};

const faulty = `name: Cellar lathe
drive:
  motor: { speed: 1425 }
  stages:
    - name: motor to spindle
      steps: [{ driver: 50 }]
handwheels:
  - name: Cross slide
    feed: 2 mm
    dial: { shape: drum, diameter: 38, width: 9, divisions: 0.02 mm, increases: both }
  - name: Carriage
    fed: 3
`;
const sound = "name: Cellar lathe\nhandwheels:\n  - { name: Cross slide, feed: 2 mm }\n";

describe.runIf(hasBrowser)("what is told of a file", () => {
  const { written, context, open } = inBrowser();

  test("a reading off the line comes first, and under a dial that is not made not every sheet goes on", async () => {
    const wild =
      "name: L\nhandwheels:\n  - name: Slide\n    dial: { shape: drum, diameter: 40, width: 10 }\n    travel: 80\n    feed: { readings: { gauge: 0.01, turns: [0, 1, 2, 3, 4, 5, 6, 7, 8], travel: [0, 2, 3.99, 5.99, 8.58, 9.98, 11.97, 13.97, 15.96] } }\n";
    const { page } = await open(await written(fileOf("wild.yaml", wild)), await context());
    await goTo(page, "Handwheels");
    const told = page.locator(".file > .messages li");
    await expect.poll(() => told.first().textContent()).toContain("this reading lies");
    expect(await told.nth(1).textContent()).toContain("no dial is made");
    await expect
      .poll(() => page.locator(".stops").textContent())
      .toMatch(/^Not made yet \(“Take away” says why\): .*Pieces to cut.*\. Every other sheet goes on with this\.$/);
  });

  test("stands at the head of its station, and leads to its field", async () => {
    const { page, faults } = await open(await written(fileOf("faulty.yaml", faulty)), await context());
    const told = page.locator(".messages");
    const marked = page.locator(".rule .faulty button");
    await marked.first().waitFor();
    expect(await marked.allInnerTexts()).toEqual(["Belts and gears", "Handwheels"]);
    await told.getByRole("button", { name: "Handwheels (2)" }).click();
    await told.getByRole("button", { name: "dial increases of Cross slide" }).click();
    await page.locator("#at-handwheels-0-dial-increases:focus").waitFor();
    // What is told stands above what is filled in.
    const [list, form] = [await told.boundingBox(), await page.locator(".form").boundingBox()];
    expect((list?.y ?? 0) + (list?.height ?? 0)).toBeLessThanOrEqual(form?.y ?? 0);
    await expect
      .poll(() => page.locator(".stops").textContent())
      .toMatch(/only what does not need it is made: Measuring form, Printer check/);
    const senses = page.locator("#at-handwheels-0-dial-increases option");
    expect(await senses.allTextContents()).toEqual([
      "left out: clockwise",
      "both",
      "clockwise counts up",
      "anticlockwise counts up",
    ]);
    await page.locator("#at-handwheels-0-dial-increases").selectOption("clockwise");
    await page.getByRole("button", { name: "take “fed” out" }).click();
    await told.getByText("Nothing here, but at").waitFor();
    await told.getByRole("button", { name: "Belts and gears (1)" }).click();
    // Nothing stands there yet: the caret goes to the step that it belongs to.
    await told.getByRole("button", { name: /stage|step/ }).click();
    await page.locator("#at-drive-stages-0-steps-0-driven").fill("80");
    await told.waitFor({ state: "detached" });
    expect(await marked.count()).toBe(0);
    expect(faults).toEqual([]);
  });

  test("of one handwheel stops what needs it, and names what goes on", async () => {
    const text = readFileSync("templates/machines/boathouse.yaml", "utf8").replace("diameter: 38", "diameter: wide");
    const { page } = await open(await written(fileOf("wide.yaml", text)), await context());
    const stops = page.locator(".stops");
    await expect.poll(() => stops.textContent()).toContain("only what does not need it is made: ");
    await expect.poll(() => stops.textContent(), { timeout: 20_000 }).toContain("Belt card");
    expect(await stops.textContent()).not.toContain("Student");
    await page.locator("#sheet").selectOption("belt-card");
    await page.locator(".sheet svg").first().waitFor();
  });

  test("of a job stops its plan alone", async () => {
    const job = fileOf("pin.yaml", "name: Pin\nmaterial: brass\nsteps:\n  - { do: turn, length: 10 }\n");
    const { page } = await open(await written(fileOf("sound.yaml", sound), "--job", job), await context());
    await goTo(page, "Job");
    await page.locator(".stops", { hasText: "no plan is made of this job; every other sheet goes on" }).waitFor();
    await page.locator("#sheet option", { hasText: "○ Plan for the job" }).waitFor({ state: "attached" });
    await page
      .locator("#sheet option", { hasText: "● Pieces to cut" })
      .or(page.locator("#sheet option", { hasText: "● Measuring form" }))
      .first()
      .waitFor({ state: "attached" });
    await page.getByRole("button", { name: "bar", exact: true }).click();
    await page.locator("#at-bar-diameter:focus").waitFor();
  });

  test("an undoing says what it undid, and leads there", async () => {
    const { page } = await open(await written("templates/machines/boathouse.yaml"), await context());
    await goTo(page, "Handwheels");
    await page.locator("#at-handwheels-0-dial-width").fill("0.05");
    await goTo(page, "Machine");
    await page.getByRole("button", { name: "undo", exact: true }).click();
    await page.getByRole("button", { name: "undone: dial width of Cross slide" }).click();
    await page.locator("#at-handwheels-0-dial-width:focus").waitFor();
    expect(await page.locator("#at-handwheels-0-dial-width").inputValue()).not.toBe("0.05");
  });

  test("one comes back to where one was, also after a reload", async () => {
    const { page } = await open(await written("templates/machines/boathouse.yaml"), await context());
    await goTo(page, "Handwheels");
    await page.waitForTimeout(300);
    await page.evaluate(() => scrollTo(0, 700));
    await goTo(page, "Printer and paper");
    await page.waitForTimeout(200);
    expect(await page.evaluate(() => scrollY)).toBe(0);
    await goTo(page, "Handwheels");
    await page.waitForTimeout(300);
    expect(await page.evaluate(() => scrollY)).toBe(700);
    await page.reload();
    await page.locator(".rule button[aria-current]", { hasText: "Handwheels" }).waitFor();
    await page.waitForTimeout(500);
    expect(await page.evaluate(() => scrollY)).toBe(700);
  });

  test("an empty file and a new job are begun, not scolded; a job that is begun tells what its plan waits for", async () => {
    const { page, faults } = await open(await written(), await context());
    await page.getByText("with it alone the measuring form can be printed").waitFor();
    await page.getByText("Not yet: the machine has no name.").waitFor();
    expect(await page.locator(".messages, .faulty, .notes .error").count()).toBe(0);
    await page.locator("#at-name").fill("L");
    await page.locator(".sheet svg").first().waitFor();
    await goTo(page, "Job");
    await page.getByRole("button", { name: "+ job", exact: true }).click();
    await page.getByText("A new job: give it a name").waitFor();
    await page.getByText("Not yet: job-1.yaml has something to fill in or to mend first.").waitFor();
    expect(await page.locator(".messages, .faulty").count()).toBe(0);
    await page.locator("#at-name").fill("Pin");
    await page.getByText("“steps” is not filled in yet").first().waitFor();
    expect(await page.getByText("cannot be empty").count()).toBe(0);
    expect(faults).toEqual([]);
  });
});
