import { mkdtempSync, readFileSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { unzipSync } from "fflate";
import { describe, expect, test } from "vitest";
import { parse } from "yaml";
import { readJob } from "../../../src/job/read.js";
import { stepKeys } from "../../../src/job/stepKeys.js";
import { goTo, hasBrowser, inBrowser, taken } from "./browser.js";

/** What is typed for each key that some kind of step needs. */
const typed: Readonly<Record<string, string>> = {
  to: "8",
  length: "10",
  depth: "6",
  diameter: "3",
  at: "4",
  width: "2",
  blade: "2",
  size: "0.5",
  pitch: "1",
  thread: "M6",
  out: "30",
};

/** What some kinds need one or the other of. */
const besides: Readonly<Record<string, Readonly<Record<string, string>>>> = {
  face: { depth: "0.5" },
  taper: { large: "12", small: "10" },
};

describe.runIf(hasBrowser)("a job from nothing", () => {
  const { folder, written, context, open } = inBrowser();

  test("every kind of step is reached, asks for what it needs and offers what it takes", async () => {
    const { page, faults } = await open(await written("templates/machines/boathouse.yaml"), await context());
    await goTo(page, "Job");
    await page.getByRole("button", { name: "+ job", exact: true }).click();
    await page.locator("#at-name").fill("All of it");
    await page.locator("#at-material").fill("mild steel");
    await page.locator("#at-bar-diameter").fill("16");
    await page.locator("#at-bar-out").fill("45");
    const kinds = Object.entries(stepKeys);
    for (const [at, [kind, { needs, may }]] of kinds.entries()) {
      await page.locator("#at-steps > button.add").click();
      const field = (key: string) => page.locator(`#at-steps-${at}-${key}`);
      await field("do").selectOption(kind);
      for (const key of needs) await field(key).fill(typed[key] ?? "");
      const shown = await page
        .locator(`.item:has(#at-steps-${at}-do) :is(.field, .opener, .kinds, fieldset, .more button)`)
        .count();
      expect(shown, kind).toBeGreaterThanOrEqual(1 + needs.length + may.length);
      for (const [key, words] of Object.entries(besides[kind] ?? {})) {
        if (await field(key).isHidden())
          await page
            .locator(`.item:has(#at-steps-${at}-do)`)
            .getByRole("button", { name: new RegExp(`^\\+ ${key} of step ${at + 1} `) })
            .click();
        await field(key).fill(words);
      }
    }
    await goTo(page, "Take away");
    const { bytes } = await taken(page, () => page.getByRole("button", { name: "job-1.yaml" }).click());
    const text = Buffer.from(bytes).toString();
    expect((parse(text) as { steps: { do: string }[] }).steps.map((step) => step.do)).toEqual(
      kinds.map(([kind]) => kind),
    );
    expect(readJob(text).problems.filter(({ code }) => ["missing", "not-here", "unknown-key"].includes(code))).toEqual(
      [],
    );
    expect(faults).toEqual([]);
  });

  test("a key that several kinds of step take is asked for as this kind takes it", async () => {
    const { page, faults } = await open(await written("templates/machines/boathouse.yaml"), await context());
    await goTo(page, "Job");
    await page.getByRole("button", { name: "+ job", exact: true }).click();
    await page.locator("#at-steps > button.add").click();
    const others = /drill|reamer|wheel|hole|thread|faced?\b/i;
    const asked: Readonly<Record<string, Readonly<Record<string, RegExp>>>> = {
      face: { diameter: /where it is faced/, length: /how long the work is then/i, depth: /comes off/ },
      part: { diameter: /at the blade/, blade: /parting blade/, length: /parted off/ },
      drill: { diameter: /of the drill/i },
      ream: { diameter: /of the reamer/i },
      groove: { width: /of the groove/i, blade: /grooving blade/ },
      knurl: { width: /knurling wheel/ },
      tap: { depth: /of the thread/i },
    };
    for (const [kind, keys] of Object.entries(asked)) {
      await page.locator("#at-steps-0-do").selectOption(kind);
      const item = page.locator(".item:has(#at-steps-0-do)");
      for (const [key, words] of Object.entries(keys)) {
        const field = page.locator(`#at-steps-0-${key}`);
        const add = item.getByRole("button", { name: new RegExp(`^\\+ ${key} of step`) });
        let hint = "";
        // The fields of the kind before go when this one's come.
        await expect
          .poll(
            async () => {
              if ((await field.isHidden()) && (await add.count()) > 0) await add.click();
              [hint = ""] = await page.locator(`#at-steps-0-${key}-about`).allTextContents();
              return hint;
            },
            { message: `${kind}, ${key}` },
          )
          .toMatch(words);
        expect(hint.replace(words, ""), `${kind}, ${key}`).not.toMatch(others);
      }
      // Two limits are taken only of what comes out at them.
      if ("diameter" in keys)
        expect(await item.getByText("smallest and largest").count(), kind).toBe(
          ["drill", "ream"].includes(kind) ? 1 : 0,
        );
    }
    expect(faults).toEqual([]);
  });

  test("without its units on an inch machine: asked at their field, and no length wears one of them", async () => {
    const folder = mkdtempSync(join(tmpdir(), "witnessmark-job-"));
    const job = join(folder, "pin.yaml");
    writeFileSync(job, readFileSync("tests/job/inch-pin.yaml", "utf8").replace("units: in\n", ""));
    const { page } = await open(await written("tests/machine/sound/inch-lathe.yaml", "--job", job), await context());
    await goTo(page, "Job");
    await page.locator(".messages").getByRole("button", { name: "units" }).click();
    await page.locator("#at-units:focus").waitFor();
    expect(await page.locator(".stops").textContent()).toContain("no plan is made of this job");
    const units = page.locator(".form label .unit");
    const all = async () => new Set((await units.allTextContents()).map((words) => words.trim()));
    expect((await all()).has("in or mm?")).toBe(true);
    expect((await all()).has("mm")).toBe(false);
    await page.locator("#at-units").selectOption("in");
    await expect.poll(async () => (await all()).has("in")).toBe(true);
    expect((await all()).has("in or mm?")).toBe(false);
  });

  test("steps are moved and put in between; the bar is asked for at once, and the material is one of those known", async () => {
    const { page, faults } = await open(
      await written("templates/machines/boathouse.yaml", "--job", "templates/jobs/deck-pin.yaml"),
      await context(),
    );
    await goTo(page, "Job");
    const steps = async () =>
      page.locator('.item[data-way^="steps"] > h3').evaluateAll((all) => all.map((one) => one.textContent?.trim()));
    const [first, second, third, ...others] = (await steps()).map((words) => words?.replace(/^\d+ /, ""));
    await page.getByRole("button", { name: "Move step 1 down" }).click();
    await page.locator("#at-steps-1-down:focus").waitFor();
    await page.keyboard.press("Enter");
    const now = async () => (await steps()).map((words) => words?.replace(/^\d+ ?/, ""));
    await expect.poll(now).toEqual([second, third, first, ...others]);
    await page.getByRole("button", { name: "+ step before this 2" }).click();
    await page.locator("#at-steps-1-do:focus").waitFor();
    await page.locator("#at-steps-1-do").selectOption("face");
    await expect.poll(now).toEqual([second, "face", third, first, ...others].slice(0, 10));
    expect(await page.getByRole("button", { name: "Move step 1 up" }).isDisabled()).toBe(true);
    await page.getByRole("button", { name: "+ job", exact: true }).click();
    await page.locator("#at-bar-diameter").waitFor();
    expect(await page.locator("#at-material").getAttribute("list")).toBe("materials");
    await expect.poll(() => page.locator("#materials option").count()).toBeGreaterThan(5);
    expect(faults).toEqual([]);
  });

  test("of several one lies open, and what is typed goes into that one", async () => {
    const { page, faults } = await open(
      await written("templates/machines/boathouse.yaml", "--job", "templates/jobs/deck-pin.yaml"),
      await context(),
    );
    await goTo(page, "Job");
    await page.getByRole("button", { name: "+ job", exact: true }).click();
    await page.locator("#at-name").fill("Second");
    await page.getByRole("button", { name: "deck-pin.yaml", exact: true }).click();
    expect(await page.locator("#at-name").inputValue()).toBe("Deck pin");
    await page.getByRole("button", { name: "job-1.yaml", exact: true }).click();
    expect(await page.locator("#at-name").inputValue()).toBe("Second");
    const ids = await page.evaluate(() => [...document.querySelectorAll("[id^=at-]")].map(({ id }) => id));
    expect(new Set(ids).size).toBe(ids.length);
    expect(faults).toEqual([]);
  });

  test("one that is refused is printed only when that was said, all of it, all but that or nothing", async () => {
    const job = join(folder, "pin.yaml");
    writeFileSync(
      job,
      "name: Pin\nmaterial: brass\nbar: { diameter: 16, out: 40 }\nsteps:\n  - { do: face, depth: 0.5 }\n  - { do: turn, to: 14, length: 39 }\n",
    );
    const { page, faults } = await open(
      await written("templates/machines/boathouse.yaml", "--job", job),
      await context(),
    );
    const button = (name: string | RegExp) => page.getByRole("button", { name });
    const asked = page.locator(".refused", { hasText: "“pin.yaml” is refused" });
    await goTo(page, "Take away");
    for (const sheet of ["plan", "belt-card"]) await page.locator(`.sheets input[value="${sheet}"]`).check();
    await button("take the ticked ones").click();
    await asked.waitFor();
    expect(await page.evaluate(() => document.activeElement?.closest(".refused") !== null)).toBe(true);
    const nothing = await button("make nothing").boundingBox();
    expect((nothing?.y ?? 1e9) + (nothing?.height ?? 0)).toBeLessThanOrEqual(page.viewportSize()?.height ?? 0);
    await button("make nothing").click();
    expect(await asked.count()).toBe(0);
    await button("take the ticked ones").click();
    const without = await taken(page, () => button("make all but that").click());
    expect(without.name).toBe("boathouse-belt-card.pdf");
    await page.getByText("pin.yaml: left out, since it is refused").waitFor();
    await button("take the ticked ones").click();
    const all = await taken(page, () => button(/^make all; every page/).click());
    expect(Object.keys(unzipSync(all.bytes)).sort()).toEqual(["boathouse-belt-card.pdf", "boathouse-plan-pin.pdf"]);
    // What is no plan asks nothing, and where there is nothing else there is no half of it.
    await page.locator('.sheets input[value="plan"]').uncheck();
    await taken(page, () => button("take the ticked ones").click());
    await page.locator('.sheets input[value="belt-card"]').uncheck();
    await page.locator('.sheets input[value="plan"]').check();
    await button("take the ticked ones").click();
    await asked.waitFor();
    expect(await button("make all but that").count()).toBe(0);

    await goTo(page, "Job");
    await page.evaluate(() =>
      Object.assign(globalThis, { printed: 0, print: () => (globalThis as never as { printed: number }).printed++ }),
    );
    const printed = () => page.evaluate(() => (globalThis as never as { printed: number }).printed);
    await page.locator("#sheet").selectOption("plan");
    await page.locator(".sheet svg").first().waitFor();
    await page.locator(".stops", { hasText: "you are asked before it is printed" }).waitFor();
    await button(/^print$/).click();
    await asked.waitFor();
    expect(await printed()).toBe(0);
    await button("print it all the same").click();
    await expect.poll(printed).toBe(1);
    expect(await asked.count()).toBe(0);
    await page.locator("#sheet").selectOption("belt-card");
    await page.locator(".sheet:only-child svg").waitFor();
    await button(/^print$/).click();
    expect(await printed()).toBe(2);
    expect(faults).toEqual([]);
  });

  test("of several the open one's plan lies on the paper; one that is dropped is opened; a refused one keeps back no other", async () => {
    const bad = join(folder, "bad.yaml");
    writeFileSync(
      bad,
      "name: Broken pin\nmaterial: brass\nbar: { diameter: 16, out: 40 }\nsteps:\n  - { do: face, depth: 0.5 }\n  - { do: turn, to: 14, length: 39 }\n",
    );
    const { page, faults } = await open(
      await written("templates/machines/boathouse.yaml", "--job", "templates/jobs/deck-pin.yaml"),
      await context(),
    );
    const button = (name: string | RegExp) => page.getByRole("button", { name });
    const paper = async () => (await page.locator(".sheet").allTextContents()).join(" ");
    const isOf = (mine: string, other: string) =>
      expect
        .poll(async () => {
          const words = await paper();
          return [words.includes(mine), words.includes(other)];
        })
        .toEqual([true, false]);
    await goTo(page, "Job");
    await isOf("Deck pin", "Broken pin");
    await page.locator('input[type="file"]').setInputFiles(bad);
    await expect.poll(() => page.locator("#at-name").inputValue()).toBe("Broken pin");
    await isOf("Broken pin", "Deck pin");
    await page.getByRole("button", { name: "deck-pin.yaml", exact: true }).click();
    await isOf("Deck pin", "Broken pin");
    await page.evaluate(() =>
      Object.assign(globalThis, { printed: 0, print: () => (globalThis as never as { printed: number }).printed++ }),
    );
    await button(/^print$/).click();
    expect(await page.evaluate(() => (globalThis as never as { printed: number }).printed)).toBe(1);
    // What was open in between and is dropped again is opened again.
    await page.locator('input[type="file"]').setInputFiles(bad);
    await isOf("Broken pin", "Deck pin");
    await goTo(page, "Take away");
    await page.locator('.sheets input[value="plan"]').check();
    await button("take the ticked ones").click();
    const good = await taken(page, () => button("make all but that").click());
    expect(good.name).toBe("boathouse-plan-deck-pin.pdf");
    expect(faults).toEqual([]);
  });
});
