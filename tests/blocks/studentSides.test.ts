import { expect, test } from "vitest";
import { compute } from "../../src/findings/compute.js";
import { inLanguage } from "../../src/words/language.js";
import { demoFindings, printOf } from "../support/sheets.js";
import { wordsOf } from "../support/words.js";

test.each(["en", "de"] as const)(
  "on small paper the exercises' heading stays with the first of them (%s)",
  (language) => {
    const { machine } = demoFindings();
    inLanguage(language, () => {
      const print = printOf(compute({ ...machine, paper: { ...machine.paper, size: "A5" } }), "student");
      const pages = print.pages.map((page) => wordsOf({ ...print, pages: [page] }));
      const begun = pages.filter((words) => /Try it|Probier es/.test(words));
      expect(begun).toHaveLength(1);
      expect(begun[0]).toMatch(/Name: 1 /);
    });
  },
);
