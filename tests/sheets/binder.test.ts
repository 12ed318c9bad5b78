import { describe, expect, test } from "vitest";
import { compute } from "../../src/findings/compute.js";
import { arrange } from "../../src/sheets/arrange.js";
import { bind, placeInBinder } from "../../src/sheets/binder.js";
import { inLanguage } from "../../src/words/language.js";
import { say } from "../../src/words/say.js";
import { pdfOf } from "../support/pdfOf.js";
import { readPdf } from "../support/readPdf.js";
import { demoFindings, findingsOf, printOf, sheetNames, template } from "../support/sheets.js";
import { wordsOf } from "../support/words.js";

describe("the binder", () => {
  const findings = demoFindings();
  const sheets = ["turns", "belt-card", "threads", "dial"];
  const prints = sheets.map((sheet) => printOf(findings, sheet));
  const binder = bind(findings, prints, [{ title: "Plan" }]);

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
    expect(texts(0).join(" ")).toContain("Not in this binder: Plan.");
    const bookmarks = outline as { title: string; items: { title: string }[] }[];
    expect(bookmarks.map(({ title }) => title)).toEqual(binder.sections?.map(({ title }) => title));
    expect(bookmarks[2]?.items).toHaveLength(binder.sections?.[2]?.pages ?? 0);
  });

  test.each(["en", "de"] as const)(
    "its front is one page of speeds, handwheels, contents, printing and cautions: %s",
    (code) =>
      inLanguage(code, () => {
        const pack =
          "student measured-report belt-card speed-diagram speed-tree hand-feed drilling-card dial vernier turns stops tapers threads";
        const bound = bind(
          findings,
          pack.split(" ").map((sheet) => printOf(findings, sheet)),
          [{ title: say("titles.plan") }],
        );
        const [front, second] = bound.pages.map((page) => wordsOf({ ...bound, pages: [page] }));
        for (const key of ["front.speeds", "front.handwheels", "binder.contents by page", "front.cautions"] as const)
          expect(front).toContain(say(key));
        expect(front).toContain(say("binder.print").slice(0, 30));
        expect(front).toContain(say("cautions.dial 1").slice(0, 20));
        expect(second).toContain(say("binder.page", { page: 1 }));
      }),
  );

  test("every sheet that can be bound has its place", () => {
    const bound = sheetNames().filter((sheet) => !template(sheet).bare);
    expect(bound.filter((sheet) => placeInBinder(sheet) === placeInBinder("no sheet"))).toEqual([]);
  });

  test("a sheet without its data says what is missing", () => {
    const { job: _, ...bare } = findings;
    expect(arrange(bare, template("plan"))).toEqual({ missing: "no job was given: name a job file with --job" });
  });

  test("its front lists many speeds side by side, one beyond the limit too", () => {
    const steps = (labels: string) =>
      [...labels]
        .map((label, at) => `{ label: "${label}", driver: ${60 + 11 * at}, driven: ${120 - 7 * at} }`)
        .join(", ");
    const many = findingsOf(`name: M
limits: { chuck: 2500 rpm }
drive: { motor: { speed: 1425 rpm }, stages: [{ name: a, steps: [${steps("123456")}] }, { name: b, steps: [${steps("ABCDEF")}] }] }
`);
    const { pages } = bind(many, [], []);
    expect(pages).toHaveLength(1);
    expect(wordsOf(bind(many, [], []))).toContain(say("hand feed.beyond"));
  });

  test("on small paper no title of its contents is cut, nor is how to print torn over two pages", () =>
    inLanguage("de", () => {
      const { machine } = findings;
      const small = compute({ ...machine, paper: { ...machine.paper, size: "A5" } });
      const bound = bind(
        small,
        [
          "student",
          "speed-tree",
          "dial",
          "vernier",
          "turns",
          "stops",
          "tapers",
          "threads",
          "belt-card",
          "hand-feed",
          "speed-diagram",
          "drilling-card",
          "measured-report",
        ].map((sheet) => printOf(small, sheet)),
        [],
      );
      const fronts = bound.pages
        .slice(0, bound.sections?.[0]?.page)
        .map((page) => wordsOf({ ...bound, pages: [page] }));
      expect(fronts.join(" ")).toContain("Anschläge und gleiche Längen");
      expect(fronts.filter((words) => words.includes(`${say("binder.print")} ${say("binder.keep")}`))).toHaveLength(1);
    }));

  test("its first page names the sheets that are not in it, and tells a class no options and no lines of a file", () => {
    const bare = findingsOf("name: L\nhandwheels: [{ name: Carriage, feed: 2 mm }]\n");
    const lacking = sheetNames().flatMap((sheet) => {
      const made = arrange(bare, template(sheet));
      return "missing" in made ? [{ title: template(sheet).title }] : [];
    });
    const front = wordsOf(bind(bare, [], lacking));
    expect(front).toContain(`Not in this binder: ${lacking[0]?.title}, `);
    expect(front).not.toMatch(/ --\w|\w+: \d|\w+: true/);
  });

  test("its list of handwheels has a column only of what is known of one of them", () => {
    const listed = (wheel: string) =>
      wordsOf(bind(findingsOf(`name: L\nhandwheels: [{ name: Carriage, ${wheel} }]\n`), [], []));
    expect(listed("feed: 2 mm")).not.toMatch(/lost motion|numbers grow|one division/);
    const read =
      "feed: { readings: { gauge: 0.01, turns: [0, 2, 4, 6], travel: [0, 4, 8, 12], return: [0.1, 4.1, 8.1, 12.1] } }";
    expect(listed(read)).toContain("lost motion");
    expect(listed("feed: 2 mm, dial: { shape: drum, diameter: 38, width: 9 }")).toContain("numbers grow");
  });
});
