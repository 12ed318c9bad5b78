import { expect, test } from "vitest";
import {
  figureWithin,
  formatFixed,
  formatLength,
  formatUncertain,
  placesOf,
  trimmed,
} from "../../src/quantity/format.js";
import { inLanguage } from "../../src/words/language.js";
import { decimalMark, say, translated, withinSentence } from "../../src/words/say.js";
import { texts } from "../../src/words/words.generated.js";

const two = { card: 1, cards: 2 };

test("words are English until a language is set, and again afterwards", () => {
  const german = inLanguage("de", () => say("page.card of", two));
  expect(german).toBe("Karte 1 von 2");
  expect(say("page.card of", two)).toBe("card 1 of 2");
});

test("a language within another ends with its work, also after a fault", () => {
  const seen: string[] = [];
  inLanguage("de", () => {
    expect(() =>
      inLanguage("en", () => {
        seen.push(decimalMark());
        throw new Error("a fault");
      }),
    ).toThrow("a fault");
    seen.push(decimalMark());
  });
  expect([...seen, decimalMark()]).toEqual([".", ",", "."]);
});

test("work that goes on later is refused: by then the language is another's", () => {
  expect(() => inLanguage("de", async () => 1)).toThrow(TypeError);
  expect(decimalMark()).toBe(".");
});

test("what a language lacks stands in English, and its own rules choose the plural", () => {
  const polish = {
    code: "pl",
    texts: { "units and numbers.unit mm": { one: "{n} a", few: "{n} b", many: "{n} c", other: "{n} d" } },
  };
  const counted = (n: number) =>
    inLanguage(polish, () => (say as (key: string, values: object) => string)("units and numbers.unit mm", { n }));
  expect([1, 2, 5, 22, 1.5].map(counted)).toEqual(["1 a", "2 b", "5 c", "22 b", "1.5 d"]);
  expect(inLanguage(polish, () => say("page.true size"))).toBe(texts.en["page.true size"]);
});

test("numbers are written with the language's mark, and counted in places all the same", () => {
  const shown = () => [
    formatFixed(-1.5, 2),
    trimmed(1.5, 4),
    trimmed(20, 4),
    figureWithin(7.985, 0.02, "mm"),
    formatUncertain(2.11274, 0.00091).value,
    formatLength(1.27, "in", 3),
    say("page.across factor", { factor: 1.25 }),
  ];
  expect(shown()).toEqual(["−1.50", "1.5", "20", "7.985", "2.11274", "0.050 in", "across × 1.25"]);
  expect(inLanguage("de", shown)).toEqual(["−1,50", "1,5", "20", "7,985", "2,11274", "0,050 Zoll", "quer × 1,25"]);
  expect(inLanguage("de", () => placesOf(0.0254, 6))).toBe(4);
});

test("a template's words are translated where they stand word for word in English; a user's own stay", () => {
  expect(inLanguage("de", () => [translated("Belt card"), translated("My card")])).toEqual(["Riemenkarte", "My card"]);
  expect(translated("Belt card")).toBe("Belt card");
});

test("a title within a sentence is small in English and stays in German", () => {
  expect(withinSentence("Belt card")).toBe("belt card");
  expect(inLanguage("de", () => withinSentence("Riemenkarte"))).toBe("Riemenkarte");
});
