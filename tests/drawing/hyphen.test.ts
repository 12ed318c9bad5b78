import { expect, test } from "vitest";
import { textWidth, wrapText } from "../../src/drawing/text.js";

const size = 3;
const lines = (words: string, letters: string) => wrapText(words, textWidth(letters, size, "regular"), size, "regular");

test("a word that must break has a hyphen there, where a syllable begins", () => {
  expect(lines("Handkurbel", "Handkurb-")).toEqual(["Handkur-", "bel"]);
  expect(lines("Schlossmutter", "Schlossmutt")).toEqual(["Schloss-", "mutter"]);
  expect(lines("Maschinen", "Masch-")).toEqual(["Ma-", "schi-", "nen"]);
});

test("no figure gets a hyphen, and a word that has its own seam none but that", () => {
  expect(lines("123456789", "123456").join("")).toBe("123456789");
  expect(lines("cross-slide", "cross-sl")).toEqual(["cross-", "slide"]);
});

test("no line is wider than the paper for its hyphen", () => {
  for (const word of ["Oberschlittenspindelhandkurbel", "WWWWWWWWWWWW", "Bettschlittenhandrad"])
    for (let width = 6; width < 40; width += 0.7) {
      const found = wrapText(word, width, size, "bold");
      for (const line of found) expect(textWidth(line, size, "bold")).toBeLessThanOrEqual(width + 1e-6);
      expect(found.join("").replaceAll("-", "")).toBe(word);
    }
});
