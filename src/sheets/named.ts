import { hazardsOf } from "../cutting/hazards.js";
import { materialName } from "../cutting/materials.js";
import type { Mark } from "../drawing/drawing.js";

/** Letters by which a material is known where its name is cut short or broken over lines. */
const KNOWN_BY = 4;

/** What no beginner cuts alone is warned of on every page: one may lie apart from the others. */
export const onEveryPage = (materials: readonly string[]): boolean =>
  hazardsOf(materials).some(({ notAlone }) => notAlone === true);

/** True where a page's print may name one of the materials that burn or poison: by any word of its name, on the safe side. */
export function namesDanger(materials: readonly string[], marks: readonly Mark[]): boolean {
  const print = wordsIn(marks).join(" ").toLowerCase();
  return materials
    .filter((material) => hazardsOf([material]).length > 0)
    .flatMap((material) => `${material} ${materialName(material)}`.toLowerCase().split(/[^\p{L}\p{N}]+/u))
    .some((word) => word !== "" && print.includes(word.slice(0, KNOWN_BY)));
}

const wordsIn = (marks: readonly Mark[]): string[] =>
  marks.flatMap((mark) => (mark.kind === "text" ? [mark.text] : mark.kind === "group" ? wordsIn(mark.marks) : []));
