import { expect, test } from "vitest";
import { shortened } from "../../../src/blocks/shared/shortened.js";
import { textWidth } from "../../../src/drawing/text.js";

const cut = (words: string, letters: number) =>
  shortened(words, textWidth(`${words.slice(0, letters)}…`, 3, "regular") + 1e-6, 3, "regular");

test("a name is cut behind a whole word, and keeps no comma before the sign", () => {
  expect(cut("Lathe from the cellar, number two", 24)).toBe("Lathe from the cellar…");
  expect(cut("Lathe from the cellar, number two", 28)).toBe("Lathe from the cellar…");
  expect(cut("Lathe from the cellar, number two", 29)).toBe("Lathe from the cellar, number…");
  expect(cut("Lathe from the cellar, number two", 33)).toBe("Lathe from the cellar, number two");
});

test("within a word where cutting behind one would lose more than half of what has room", () => {
  expect(cut("A Drehmaschinenspindelstock", 20)).toBe("A Drehmaschinenspind…");
  expect(cut("Drehmaschinenspindelstock", 10)).toBe("Drehmaschi…");
});
