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

/** The trade's words with every place where they may be parted, by common practice of the two languages. */
const trade = [
  ..."Bund-bol-zen-schul-ter-an-schlag Quer-schlit-ten-zu-stell-hand-rad Werk-zeug-ke-gel-hül-se Ober-schlit-ten-ver-stell-spin-del-hand-rad".split(
    " ",
  ),
  ..."Bett-schlit-ten-längs-vor-schub-hand-rad Reit-stock-pi-no-len-hand-rad Haupt-spin-del-an-triebs-rie-men Vor-ge-le-ge-an-triebs-rie-men".split(
    " ",
  ),
  ..."Rohr-ver-schrau-bungs-dicht-ke-gel Leit-spin-del-dreh-ma-schi-ne Lehr-lings-werk-statt Grund-loch-boh-rung Plan-schei-be Schloss-mut-ter".split(
    " ",
  ),
  ..."Ober-schlit-ten-dreh-teil Spann-zan-gen-fut-ter Drei-ba-cken-fut-ter Rä-der-vor-ge-le-ge Kreuz-schlit-ten-kur-bel Ge-win-de-boh-rer".split(
    " ",
  ),
  ..."Reit-stock-spin-del Werk-stück-an-schlag Mo-tor-rie-men-schei-be Quer-schlit-ten-spin-del Längs-an-schlag-schrau-be Zahn-rad-ge-trie-be".split(
    " ",
  ),
  ..."Bohr-tie-fen-an-schlag Zy-lin-der-schrau-be Vor-schub-ge-trie-be Lead-screw-hand-wheel Tail-stock-bar-rel Spann-he-bel".split(
    " ",
  ),
];

test.each(trade)("%s breaks where it may, and never leaves fewer than three letters at its end", (parted) => {
  const word = parted.replaceAll("-", "");
  const seams = [...parted.matchAll(/-/g)].map(({ index }, at) => index - at);
  // From so narrow a line on that the longest part stands in it whole.
  for (let width = 14; width < textWidth(word, size, "regular"); width += 0.4) {
    const found = wrapText(word, width, size, "regular");
    let at = 0;
    for (const part of found.slice(0, -1)) {
      at += part.length - 1;
      expect(seams, `${found.join(" ")} at ${width.toFixed(1)} mm`).toContain(at);
    }
    expect(found.at(-1)?.length).toBeGreaterThanOrEqual(3);
  }
});
