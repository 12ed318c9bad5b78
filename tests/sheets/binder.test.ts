import { describe, expect, test } from "vitest";
import { arrange } from "../../src/sheets/arrange.js";
import { bind, placeInBinder } from "../../src/sheets/binder.js";
import { pdfOf } from "../support/pdfOf.js";
import { readPdf } from "../support/readPdf.js";
import { demoFindings, printOf, sheetNames, template } from "../support/sheets.js";

describe("the binder", () => {
  const findings = demoFindings();
  const sheets = ["turns", "belt-card", "threads", "dial"];
  const prints = sheets.map((sheet) => printOf(findings, sheet));
  const binder = bind(findings, prints, [{ title: "Plan", why: "no job was given" }]);

  test("holds a contents page and every page of every sheet, in the order of work, numbered through", async () => {
    expect(binder.pages).toHaveLength(1 + prints.reduce((sum, { pages }) => sum + pages.length, 0));
    expect(binder.sections?.map(({ title }) => title)).toEqual([
      "Belt card",
      "Pieces to cut",
      "Turns and distances",
      "Threads by hand",
    ]);
    const { pages, outline } = await readPdf(await pdfOf(binder));
    const texts = (index: number) => pages[index]?.texts.map(({ text }) => text.trim()) ?? [];
    for (const { title, page } of binder.sections ?? []) {
      expect(texts(0)).toContain(title);
      expect(texts(0)).toContain(String(page));
      expect(texts(page)).toContain(`binder ${page}`);
    }
    expect(texts(0).join(" ")).toContain("Plan: no job was given");
    const bookmarks = outline as { title: string; items: { title: string }[] }[];
    expect(bookmarks.map(({ title }) => title)).toEqual(binder.sections?.map(({ title }) => title));
    expect(bookmarks[2]?.items).toHaveLength(binder.sections?.[2]?.pages ?? 0);
  });

  test("every sheet that can be bound has its place", () => {
    const bound = sheetNames().filter((sheet) => !template(sheet).bare);
    expect(bound.filter((sheet) => placeInBinder(sheet) === placeInBinder("no sheet"))).toEqual([]);
  });

  test("a sheet without its data says what is missing", () => {
    const { job: _, ...bare } = findings;
    expect(arrange(bare, template("plan"))).toEqual({ missing: "no job was given: name a job file with --job" });
  });
});
