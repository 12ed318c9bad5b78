import { readFileSync } from "node:fs";
import { expect, test } from "vitest";
import {
  findMaterial,
  hasSpeeds,
  knownMaterials,
  materialName,
  namedMaterials,
  nearestMaterial,
} from "../../src/cutting/materials.js";
import { inLanguage } from "../../src/words/language.js";
import { languages } from "../../src/words/languages.generated.js";
import { problemsOf } from "../support/problems.js";

test("a material may be written in every language that the paper speaks, and is the same one", () => {
  for (const language of languages)
    for (const name of namedMaterials()) {
      const written = inLanguage(language, () => materialName(name));
      expect(findMaterial(written), `${language}: ${written}`).toBe(name);
      expect(hasSpeeds(written.toLowerCase())).toBe(hasSpeeds(name));
    }
  expect(findMaterial("Grauguss")).toBe("grey cast iron");
});

test("another name of the trade is translated too; in its own language it stays, and so does a user's own", () => {
  const inGerman = (name: string) => inLanguage("de", () => materialName(name));
  expect(["aluminum", "Gray cast iron", "my alloy", "Messing"].map(inGerman)).toEqual([
    "Aluminium",
    "Grauguss",
    "my alloy",
    "Messing",
  ]);
  expect(["aluminum", "cast iron", "my alloy"].map(materialName)).toEqual(["aluminum", "cast iron", "my alloy"]);
  // What another language calls it is printed in the paper's.
  expect(["Messing", "automatenstahl", "Aluminium", "Baustahl"].map(materialName)).toEqual([
    "brass",
    "free-cutting steel",
    "aluminium",
    "mild steel",
  ]);
});

test.each(["Alu", "Stahl", "Guss", "Gusseisen", "Edelstahl", "steel", "iron", "inox"])(
  "%s is too loose to go by, but tells what may be meant",
  (name) => {
    expect(findMaterial(name)).toBeUndefined();
    expect(hasSpeeds(nearestMaterial(name) ?? "")).toBe(true);
  },
);

test("the README lists all that have speeds", () => {
  const [list] = /`work: \{ materials: \[\.\.\.\] \}` and .*/.exec(readFileSync("README.md", "utf8")) ?? [""];
  const listed = list.slice(list.indexOf("take ") + 5, list.indexOf(", in English")).split(/, | and /);
  expect(listed.sort()).toEqual(knownMaterials().sort());
});

test.each(["en", "de"])("of a file in %s what is told of an unknown one is English from end to end", (language) => {
  const [problem] = problemsOf(`name: L\nlanguage: ${language}\nwork: { materials: [unobtainium] }\n`);
  expect(problem?.what).toBe('no cutting speeds are known for "unobtainium"');
  expect(problem?.remedy).toContain(`take one of ${knownMaterials().join(", ")}`);
  for (const name of knownMaterials().map((one) => inLanguage("de", () => materialName(one))))
    if (!knownMaterials().includes(name)) expect(problem?.remedy).not.toContain(`, ${name},`);
  expect(problem?.remedy.endsWith("by these names or those on its paper")).toBe(language !== "en");
});
