import type { Run } from "../blocks/shared/block.js";
import { size } from "../blocks/shared/style.js";
import { paragraph } from "../blocks/shared/table.js";
import type { Mark } from "../drawing/drawing.js";
import type { Page, Print, Section } from "../drawing/page.js";
import { group, text } from "../drawing/shapes.js";
import { textWidth } from "../drawing/text.js";
import type { Machine } from "../machine/machine.js";
import { paperSize } from "../paper/paperSize.js";
import { capital } from "../quantity/format.js";
import { flow } from "./flow.js";
import { correctionNote, footHeight, headHeight, pageHead } from "./furniture.js";

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

const margin = 16;

/** Every sheet in one print: contents first, then the sheets, each page numbered through. `absent`: sheets that could not be made,
 *  and what is missing in the file. */
export function bind(
  machine: Machine,
  prints: readonly Print[],
  absent: readonly { title: string; why: string }[],
): Print {
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
    return { sections, pages: contentsPages(machine, sections, front, absent) };
  };
  // The contents may themselves take more than one page.
  const front = contentsAt(1).pages.length;
  const { sections, pages } = contentsAt(front);
  const numbered = sorted.flatMap((print) => print.pages).map((page, index) => withNumber(page, index + 1));
  return { sheet: "binder", title: `${machine.name}: binder`, pages: [...pages, ...numbered], sections };
}

function contentsPages(
  machine: Machine,
  sections: readonly Section[],
  front: number,
  absent: readonly { title: string; why: string }[],
): Page[] {
  const paper = paperSize(machine.paper.size, "portrait");
  const width = paper.width - 2 * margin;
  const runs: Run[] = [
    ...paragraph("Contents", width, { size: size.title, weight: "bold" }),
    ...sections.map((section, index) => ({
      drawing: { width, height: 6, marks: entry(section.title, section.page - front + 1, width) },
      gap: index === 0 ? 4 : 0,
    })),
    ...(absent.length === 0
      ? []
      : paragraph("Not made, and what is missing in the file", width, { size: size.body, weight: "bold", gap: 8 })),
    ...absent.flatMap(({ title, why }) => paragraph(`${title}: ${why}.`, width, { size: size.small, gap: 0.8 })),
    ...paragraph(
      "Keep this binder with the machine. A sheet of an older revision than the machine's is waste paper. The maker's manual, local rules and a competent supervisor come before all of it.",
      width,
      { size: size.small, gap: 8 },
    ),
  ];
  const frame = { left: margin, top: margin, width, height: paper.height - 2 * margin };
  return flow(runs, frame.height - headHeight - footHeight).map(
    (marks): Page => ({
      title: "Contents",
      correctionNote: correctionNote(machine, frame),
      drawing: {
        width: paper.width,
        height: paper.height,
        marks: [...pageHead(machine, "binder", frame), group({ x: margin, y: margin + headHeight }, marks ?? [])],
      },
    }),
  );
}

/** A title and its page, with dots between to lead the eye. */
function entry(title: string, page: number, width: number): Mark[] {
  const number = String(page);
  const dot = textWidth(" .", size.body, "regular");
  const room = width - textWidth(title, size.body, "regular") - textWidth(number, size.body, "bold") - 3;
  const dots = " .".repeat(Math.max(0, Math.floor(room / dot)));
  return [
    text(title, { x: 0, y: 4 }, { size: size.body }),
    text(
      dots,
      { x: width - textWidth(number, size.body, "bold") - 1.5, y: 4 },
      { size: size.body, anchor: "end", ink: "grey" },
    ),
    text(number, { x: width, y: 4 }, { size: size.body, weight: "bold", anchor: "end" }),
  ];
}

/** The page's number in the binder, in the middle of its lower margin. */
function withNumber(page: Page, number: number): Page {
  const { drawing } = page;
  const mark = text(
    `binder ${number}`,
    { x: drawing.width / 2, y: drawing.height - 5 },
    { size: size.tiny, anchor: "middle" },
  );
  return { ...page, drawing: { ...drawing, marks: [...drawing.marks, mark] } };
}
