import { writeFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, test } from "vitest";
import { parse } from "yaml";
import { goTo, hasBrowser, inBrowser } from "./browser.js";

const begun = "name: L # mine\nhandwheels:\n  - name: S\n    feed: { readings: { gauge: 0.01 } }\n";

describe.runIf(hasBrowser)("readings typed at the machine, on a telephone", () => {
  const { written, context, open } = inBrowser();

  test("Enter goes on to the next turn; a wild reading is pointed at at once; the way back gives the lost motion", async () => {
    const { page, faults } = await open(
      await written(),
      await context({ viewport: { width: 360, height: 740 }, hasTouch: true, isMobile: true }),
    );
    const text = async () => {
      await page.getByRole("button", { name: "text", exact: true }).click();
      const words = (await page.locator(".cm-line").allTextContents()).join("\n");
      await page.getByRole("button", { name: "form", exact: true }).click();
      return words;
    };
    await page.getByRole("button", { name: "text", exact: true }).click();
    await page.locator(".cm-content").click();
    await page.evaluate((words) => document.execCommand("insertText", false, words), begun);
    await page.getByRole("button", { name: "form", exact: true }).click();
    await goTo(page, "Handwheels");
    const cell = (column: string, row: number) => page.locator(`#at-handwheels-0-feed-readings-${column}-${row}`);
    const inHand = () => page.evaluate(() => document.activeElement?.id.split("-").slice(-2).join(" "));
    await cell("turns", 0).tap();
    const out = ["0", "7.98", "15.96", "24.43", "31.91", "39.89", "47.87", "55.85"];
    for (const [at, reading] of out.entries()) {
      // From the third on a row begins with its turn by itself.
      if (at < 2) {
        expect(await inHand()).toBe(`turns ${at}`);
        await page.keyboard.type(["0", "4"][at] ?? "");
        await page.keyboard.press("Enter");
      }
      expect(await inHand()).toBe(`travel ${at}`);
      await page.keyboard.type(reading);
      if (at < 7) await page.keyboard.press("Enter");
    }
    expect(await page.locator(".grid tbody tr").count()).toBe(9);
    expect(await cell("turns", 7).inputValue()).toBe("28");
    // Half a millimetre beside the others, at twelve turns.
    const wild = page.locator(".grid tr.doubted");
    await expect.poll(() => wild.count()).toBe(1);
    expect(await wild.locator("input").nth(1).inputValue()).toBe("24.43");
    const so = page.locator(".so [role=status]");
    await expect.poll(() => so.textContent()).toContain("do not belong to the others");
    expect(await page.locator(".so circle.open").count()).toBe(1);
    await cell("travel", 3).fill("23.93");
    await expect.poll(() => wild.count()).toBe(0);
    await expect.poll(() => so.textContent()).toMatch(/\d+\smore\sreadings?\slike\sthese\swould\shalve\sthe\s±/);
    expect(await so.textContent()).not.toContain("lost motion");

    await cell("return", 7).tap();
    for (const [at, reading] of [...out.entries()].reverse()) {
      expect(await inHand()).toBe(`return ${at}`);
      await page.keyboard.type((Number(at === 3 ? "23.93" : reading) + 0.1).toFixed(2));
      await page.keyboard.press("Enter");
    }
    await expect.poll(() => so.textContent()).toMatch(/lost motion 0\.1000 ±\s0\.00\d+ mm/);
    const { handwheels } = parse(await text());
    expect(handwheels[0].feed.readings).toEqual({
      gauge: 0.01,
      turns: [0, 4, 8, 12, 16, 20, 24, 28],
      travel: [0, 7.98, 15.96, 23.93, 31.91, 39.89, 47.87, 55.85],
      return: [0.1, 8.08, 16.06, 24.03, 32.01, 39.99, 47.97, 55.95],
    });
    expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(360);
    expect(faults).toEqual([]);
  });
});

describe.runIf(hasBrowser)("readings typed by the keyboard alone", () => {
  const { folder, written, context, open } = inBrowser();
  const out = [0, 7.98, 15.96, 23.93, 31.91];
  const machine = {
    name: "L",
    handwheels: [
      { name: "S", feed: { readings: { gauge: 0.01, turns: [0, 4, 8, 12, 16], travel: out } } },
      { name: "T", feed: { readings: { turns: [0, 0.5], travel: [0, 1] } } },
    ],
  };
  const start = async (text: object) => {
    const file = join(folder, "begun.yaml");
    writeFileSync(file, JSON.stringify(text));
    const { page, faults } = await open(await written(file), await context());
    await goTo(page, "Handwheels");
    const cell = (column: string, row: number, wheel = 0) =>
      page.locator(`#at-handwheels-${wheel}-feed-readings-${column}-${row}`);
    const read = async () => {
      await page.getByRole("button", { name: "text", exact: true }).click();
      await page.locator(".cm-line", { hasText: /\S/ }).first().waitFor();
      return parse((await page.locator(".cm-line").allTextContents()).join("\n"));
    };
    return { page, faults, cell, read };
  };

  test.each([
    ["from the bottom up", [4, 3, 2, 1, 0], "Enter"],
    ["from the bottom up by the arrow", [4, 3, 2, 1, 0], "ArrowUp"],
    ["from the top down", [0, 1, 2, 3, 4], "ArrowDown"],
    ["in any order", [2, 4, 0, 3, 1], undefined],
  ] as const)("the way back, %s, stands where the caret was", async (_, order, key) => {
    const { page, faults, cell, read } = await start(machine);
    const back = out.map((travel) => (travel + 0.1).toFixed(2));
    await cell("return", order[0]).focus();
    for (const row of order) {
      if (key === undefined) await cell("return", row).focus();
      expect(await page.evaluate(() => document.activeElement?.id)).toMatch(new RegExp(`-return-${row}$`));
      await page.keyboard.type(back[row] ?? "");
      if (key !== undefined && row !== order[4]) await page.keyboard.press(key);
      expect(await cell("return", row).inputValue()).toBe(back[row]);
    }
    for (const [row, words] of back.entries()) expect(await cell("return", row).inputValue()).toBe(words);
    const { handwheels } = await read();
    expect(handwheels[0].feed.readings).toEqual({
      ...machine.handwheels[0]?.feed.readings,
      return: back.map(Number),
    });
    expect(faults).toEqual([]);
  });

  test("whoever goes through the way back once more writes over it, and no turn comes of it", async () => {
    const { page, cell, read } = await start(machine);
    for (const more of [0.1, 0.2]) {
      await cell("return", 4).focus();
      await cell("return", 4).selectText();
      for (const row of [4, 3, 2, 1, 0]) {
        await page.keyboard.type(((out[row] ?? 0) + more).toFixed(2));
        await page.keyboard.press("Enter");
      }
      // At the first row it stays.
      expect(await page.evaluate(() => document.activeElement?.id)).toMatch(/-return-0$/);
    }
    expect(await cell("turns", 5).count()).toBe(1);
    expect(await cell("return", 5).count()).toBe(0);
    await cell("return", 4).focus();
    await page.keyboard.press("ArrowDown");
    await page.keyboard.press("End");
    await page.keyboard.type("1");
    const { handwheels } = await read();
    expect(handwheels[0].feed.readings).toEqual({
      ...machine.handwheels[0]?.feed.readings,
      return: out.map((travel, row) => Number(`${(travel + 0.2).toFixed(2)}${row === 4 ? "1" : ""}`)),
    });
  });

  test("a whole row by Tab, with a decimal comma: the next turn is one step on", async () => {
    const { page, cell, read } = await start(machine);
    await cell("turns", 0, 1).focus();
    for (const words of ["0", "0", "0,1", "0,5", "1,01", "1,1"]) {
      await page.keyboard.press("Control+A");
      await page.keyboard.type(words);
      await page.keyboard.press("Tab");
    }
    expect(await cell("turns", 2, 1).getAttribute("placeholder")).toBe("1");
    await cell("travel", 2, 1).focus();
    await page.keyboard.type("2,02");
    const { handwheels } = await read();
    expect(handwheels[1].feed.readings).toEqual({
      turns: [0, "0,5", 1],
      travel: [0, "1,01", "2,02"],
      return: ["0,1", "1,1"],
    });
  });

  test("one undo takes back one cell, whole, however fast or slowly it was typed", async () => {
    const { page, cell, read } = await start(machine);
    await cell("return", 4).focus();
    await page.keyboard.type("32.0");
    await page.waitForTimeout(700);
    await page.keyboard.type("1");
    for (const words of ["24.03", "16.06"]) {
      await page.keyboard.press("Enter");
      await page.keyboard.type(words);
    }
    const back = async () => [
      await cell("return", 4).inputValue(),
      await cell("return", 3).inputValue(),
      await cell("return", 2).inputValue(),
    ];
    await page.keyboard.press("Control+z");
    await expect.poll(back).toEqual(["32.01", "24.03", ""]);
    // What is typed after that is undone by itself.
    await page.keyboard.type("16.07");
    await page.getByRole("button", { name: "undo", exact: true }).click();
    await expect.poll(back).toEqual(["32.01", "24.03", ""]);
    await page.getByRole("button", { name: "undo", exact: true }).click();
    await expect.poll(back).toEqual(["32.01", "", ""]);
    await cell("return", 4).focus();
    await page.keyboard.press("Control+Shift+Z");
    await expect.poll(back).toEqual(["32.01", "24.03", ""]);
    for (const _ of [1, 2]) await page.keyboard.press("Control+z");
    await expect.poll(back).toEqual(["", "", ""]);
    // A new row with its turn, and a row taken out, are each one step.
    await cell("travel", 5).fill("39.89");
    await page.getByRole("button", { name: "take the last row out" }).first().click();
    await expect.poll(() => cell("turns", 5).inputValue()).toBe("");
    await page.getByRole("button", { name: "undo", exact: true }).click();
    await expect.poll(() => cell("turns", 5).inputValue()).toBe("20");
    await page.getByRole("button", { name: "undo", exact: true }).click();
    expect((await read()).handwheels[0].feed.readings).toEqual(machine.handwheels[0]?.feed.readings);
  });

  test("what is no number is marked in its cell, with what is told of it", async () => {
    const { page, cell } = await start(machine);
    await cell("travel", 2).fill("15.O6");
    const at = page.locator(".grid input[aria-invalid=true]");
    await expect.poll(() => at.count()).toBe(1);
    expect(await at.inputValue()).toBe("15.O6");
    const notes = await at.getAttribute("aria-describedby");
    expect(await page.locator(`[id="${notes}"]`).textContent()).toContain("15.O6");
    const line = (one: ReturnType<typeof cell>) => one.evaluate((input) => getComputedStyle(input).borderBottomColor);
    expect(await line(at)).not.toBe(await line(cell("travel", 1)));
    await cell("travel", 2).fill("15.96");
    await expect.poll(() => at.count()).toBe(0);
  });

  test("a turn behind the one before it is told, in both senses; a second run is none", async () => {
    const { page, cell } = await start(machine);
    const told = page.locator(".readings .warning", { hasText: "Turns go" });
    await cell("turns", 3).fill("1.2");
    await page.getByText("Turns go up, but row 4 goes from 8 back to 1.2").waitFor();
    await cell("turns", 3).fill("12");
    await expect.poll(() => told.count()).toBe(0);
    await cell("turns", 5).fill("0");
    await cell("turns", 6).fill("4");
    await page.waitForTimeout(100);
    expect(await told.count()).toBe(0);
    await cell("turns", 0, 1).fill("1");
    await cell("turns", 2, 1).fill("0.75");
    await page.getByText("Turns go down, but row 3 goes from 0.5 back to 0.75").waitFor();
  });

  test("places still empty are counted, and a way back that is taken out again is none", async () => {
    const { page, cell, read } = await start(machine);
    await cell("return", 3).focus();
    await page.keyboard.type("24");
    await page.getByText("Still empty: 4 places of “back”.").waitFor();
    // Half of it stops no sheet.
    await page.getByText("the way back is read at 1 of 5 places").first().waitFor();
    expect(await page.getByText("a length").count()).toBe(0);
    await page.keyboard.press("Backspace");
    await page.keyboard.press("Backspace");
    await expect.poll(() => page.getByText("Still empty").count()).toBe(0);
    expect((await read()).handwheels[0].feed.readings).toEqual(machine.handwheels[0]?.feed.readings);
  });

  test.each([1280, 360])("at twice the size of text no digit is cut: %s pixels", async (width) => {
    const { page, cell } = await start(machine);
    await page.setViewportSize({ width, height: 800 });
    await page.evaluate(() => (document.documentElement.style.fontSize = "200%"));
    await cell("turns", 1).fill("0.125");
    await cell("travel", 1).fill("12.375");
    for (const column of ["turns", "travel"]) {
      const { scrollWidth, clientWidth } = await cell(column, 1).evaluate((one) => ({
        scrollWidth: one.scrollWidth,
        clientWidth: one.clientWidth,
      }));
      expect(clientWidth, column).toBeGreaterThan(0);
      expect(scrollWidth, column).toBeLessThanOrEqual(clientWidth);
    }
    expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(width);
  });

  test.each([
    ["a desk", 1280, "100%"],
    ["a telephone", 360, "100%"],
    ["a telephone, text at twice its size", 360, "200%"],
  ])("the leftovers stand over the turns they belong to, in letters to be read: %s", async (_, width, fontSize) => {
    const { page } = await open(
      await written("templates/machines/boathouse.yaml"),
      await context({ viewport: { width, height: 740 } }),
    );
    await page.evaluate((size) => {
      document.documentElement.style.fontSize = size;
    }, fontSize);
    await goTo(page, "Handwheels");
    const grid = page.locator(".readings").first();
    await grid.locator(".so circle").first().waitFor();
    const turns = (
      await grid
        .locator('input[aria-label^="turns"]')
        .evaluateAll((all) => all.map((one) => (one as HTMLInputElement).value))
    )
      .filter((words) => words !== "")
      .map(Number);
    const { rem, letters, dots, edge } = await grid.evaluate((one) => ({
      rem: Number.parseFloat(getComputedStyle(document.documentElement).fontSize),
      letters: [...one.querySelectorAll(".so svg text")].map((text) => ({
        words: text.textContent?.trim() ?? "",
        size:
          Number.parseFloat(getComputedStyle(text).fontSize) * ((text as SVGGraphicsElement).getScreenCTM()?.a ?? 0),
        ...(({ left, right, top, bottom }) => ({ left, right, top, bottom }))(text.getBoundingClientRect()),
      })),
      dots: [...one.querySelectorAll(".so circle")].map((dot) => {
        const { left, right, top, bottom } = dot.getBoundingClientRect();
        return { x: (left + right) / 2, top, bottom };
      }),
      // From the frame's own line to what stands in its heads.
      edge: Number.parseFloat(getComputedStyle(one).borderLeftWidth)
        ? (one.querySelector("th")?.getBoundingClientRect().left ?? 0) - one.getBoundingClientRect().left
        : 99,
    }));
    for (const { size } of letters) expect(size).toBeGreaterThanOrEqual(0.85 * rem);
    const [most, ...numbers] = letters;
    expect(most?.words).toMatch(/^±/);
    expect(numbers.length).toBeGreaterThanOrEqual(3);
    for (const [at, { words, left, right, top }] of numbers.entries()) {
      const turn = Number(words.replace("turn ", ""));
      const dot = dots[turns.indexOf(turn)];
      expect(dot?.x).toBeGreaterThanOrEqual(left - 1);
      expect(dot?.x).toBeLessThanOrEqual(right + 1);
      expect(Math.max(...dots.map(({ bottom }) => bottom))).toBeLessThanOrEqual(top + 1);
      expect(numbers[at + 1]?.left ?? 9999).toBeGreaterThan(right + 2);
    }
    expect(numbers.at(-1)?.words).toBe(String(turns.at(-1)));
    expect(Math.min(...dots.map(({ top }) => top))).toBeGreaterThanOrEqual((most?.bottom ?? 0) - 1);
    expect(edge).toBeGreaterThanOrEqual(4);
  });

  test("an inch machine's readings are told in inches alone", async () => {
    const { page } = await start({ units: "in", ...machine });
    const grid = page.locator(".readings").first();
    await grid.locator(".so svg text").first().waitFor();
    expect(await grid.locator("thead").textContent()).toBe("turnsout (in)back (in)");
    expect(await grid.locator(".so svg text").first().textContent()).toMatch(/^±0\.\d{4} in$/);
    expect(await grid.locator(".so").textContent()).not.toContain("mm");
  });
});

describe.runIf(hasBrowser)("words in fields", () => {
  const { written, context, open } = inBrowser();

  test.each([
    ["a desk", 1280, 900],
    ["a telephone", 360, 740],
  ])("none of the demo's are cut at any station: %s", async (_, width, height) => {
    const { page } = await open(
      await written("templates/machines/boathouse.yaml", "--job", "templates/jobs/deck-pin.yaml"),
      await context({ viewport: { width, height } }),
    );
    for (const name of await page.locator(".rule li button").allTextContents()) {
      await goTo(page, name);
      await page.waitForTimeout(300);
      const cut = await page.evaluate(() => {
        const pen = document.createElement("canvas").getContext("2d") as CanvasRenderingContext2D;
        const wide = (words: string, by: Element) => {
          pen.font = getComputedStyle(by).font;
          return pen.measureText(words).width;
        };
        const fields = [
          ...document.querySelectorAll<HTMLInputElement>(".work input:not([type])"),
          ...document.querySelectorAll<HTMLInputElement>(".work input[type=text]"),
        ];
        const choices = [...document.querySelectorAll("select")].map(
          (one) => [one, one.selectedOptions[0]?.textContent ?? "", 24] as const,
        );
        return [...fields.map((one) => [one, one.value, 4] as const), ...choices].flatMap(([one, words, beside]) =>
          one.clientWidth > 0 && wide(words, one) + beside > one.clientWidth ? [`${one.id}: ${words}`] : [],
        );
      });
      expect(cut, name).toEqual([]);
    }
  });
});
