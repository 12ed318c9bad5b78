import { size } from "../blocks/shared/style.js";
import type { Page, Print, Section } from "../drawing/page.js";
import { text } from "../drawing/shapes.js";
import type { Findings } from "../findings/findings.js";
import { capital } from "../quantity/format.js";
import { say, withinSentence } from "../words/say.js";
import { frontPages } from "./frontPage.js";

/** From measuring to the finished part, then what one hands on. A sheet that is not named here comes last. */
const order: readonly string[] = [
  "student",
  "measuring-form",
  "printer-check",
  "measured-report",
  "belt-card",
  "speed-diagram",
  "speed-tree",
  "hand-feed",
  "drilling-card",
  "dial-choices",
  "dial",
  "vernier",
  "scales",
  "angle-scale",
  "start-readings",
  "ring-cutting",
  "turns",
  "stops",
  "tapers",
  "threads",
  "plan",
];

/** Where a sheet stands in the binder. */
export const placeInBinder = (sheet: string): number => {
  const place = order.indexOf(sheet);
  return place < 0 ? order.length : place;
};

/** Every sheet in one print: contents first, then the sheets, each page numbered through. `absent`: sheets that could not be made. */
export function bind(findings: Findings, prints: readonly Print[], absent: readonly { title: string }[]): Print {
  const { machine } = findings;
  const sorted = [...prints]
    .filter(({ outlines, uncorrected }) => !outlines && !uncorrected)
    .sort((a, b) => placeInBinder(a.sheet) - placeInBinder(b.sheet));
  const name = (print: Print) => capital(print.title.replace(`${machine.name}: `, ""));
  const contentsAt = (front: number): { sections: Section[]; pages: Page[] } => {
    let next = front;
    const sections = sorted.map((print): Section => {
      const section = { title: name(print), page: next, pages: print.pages.length };
      next += print.pages.length;
      return section;
    });
    return { sections, pages: frontPages(findings, sections, front, absent) };
  };
  // The front may itself take more than one page.
  const front = contentsAt(1).pages.length;
  const { sections, pages } = contentsAt(front);
  const numbered = sorted.flatMap((print) => print.pages).map((page, index) => withNumber(page, index + 1));
  return {
    sheet: "binder",
    title: `${machine.name}: ${withinSentence(say("binder.binder"))}`,
    pages: [...pages, ...numbered],
    sections,
  };
}

/** The page's number in the binder, in the middle of its lower margin. */
function withNumber(page: Page, number: number): Page {
  const { drawing } = page;
  const mark = text(
    say("binder.page", { page: number }),
    { x: drawing.width / 2, y: drawing.height - 5 },
    { size: size.source, anchor: "middle" },
  );
  return { ...page, drawing: { ...drawing, marks: [...drawing.marks, mark] } };
}
