import { type BlockName, blocks } from "../blocks/registry.js";
import type { Block, Run } from "../blocks/shared/block.js";
import { cautionWords, strip } from "../blocks/shared/cautions.js";
import { paragraph } from "../blocks/shared/paragraph.js";
import { heading, together } from "../blocks/shared/runs.js";
import { fewLines } from "../blocks/shared/shortened.js";
import { leading, size } from "../blocks/shared/style.js";
import type { Drawing } from "../drawing/drawing.js";
import type { Page, Section } from "../drawing/page.js";
import { group, text } from "../drawing/shapes.js";
import { textWidth } from "../drawing/text.js";
import type { Findings } from "../findings/findings.js";
import { type Use, usesOf } from "../findings/uses.js";
import { paperSize } from "../paper/paperSize.js";
import { say } from "../words/say.js";
import { flow } from "./flow.js";
import { correctionNote, footHeight, headHeight, pageFoot, pageHead, pageNotes } from "./furniture.js";
import { type Box, frameOn } from "./margins.js";

/** Between the two columns of the contents, mm. */
const between = 8;

/** What stands in front of a binder: the speeds, the handwheels, where every sheet is, how to print it, and the cautions in full. `front`: how many
 *  pages it takes itself. `absent`: sheets that could not be made. */
export function frontPages(
  findings: Findings,
  sections: readonly Section[],
  front: number,
  absent: readonly { title: string }[],
): Page[] {
  const { machine } = findings;
  const paper = paperSize(machine.paper.size, "portrait");
  const frame = frameOn(paper) as Box;
  const { width } = frame;
  const height = frame.height - headHeight - footHeight(machine, false, width);
  const drawn = (name: BlockName, width: number): readonly Run[] => {
    const block = blocks[name] as Block;
    const { handwheels } = findings;
    return block.draw({
      findings,
      handwheels,
      settings: block.defaults,
      use: usesOf(machine)[0] as Use,
      width,
      height,
    });
  };
  const under = (words: string, runs: readonly Run[], gap: number): Run[] =>
    runs.length === 0 ? [] : [...heading(words, width, gap), ...runs];
  const byRatio = findings.drive?.speeds.some(({ from }) => from === "slip" || from === "ratio") ?? false;
  const column = (width - between) / 2;
  const list = { columns: 2, step: column + between };
  const runs: Run[] = [
    strip(cautionWords("belt", machine), width),
    ...under(say("front.speeds"), drawn("speed list", width), 3),
    ...(byRatio ? paragraph(say("front.by ratio"), width, { size: size.source, gap: 1 }) : []),
    ...under(say("front.handwheels"), drawn("handwheel list", width), 3),
    ...under(
      say("binder.contents by page"),
      sections.map(({ title, page }) => ({ drawing: entry(title, page - front + 1, column), list })),
      3,
    ),
    ...together(paragraph(`${say("binder.print")} ${say("binder.keep")}`, width, { size: size.text, gap: 2 })),
    ...under(
      say("front.cautions"),
      drawn("all cautions", column).map(({ drawing }) => ({ drawing, list })),
      3,
    ),
    ...notMade(absent, width),
  ];
  const pages = flow(runs, height);
  return pages.map(
    (marks, index): Page => ({
      title: say("binder.contents"),
      correctionNote: correctionNote(machine, frame),
      drawing: {
        width: paper.width,
        height: paper.height,
        marks: [
          ...pageHead(machine.name, frame),
          ...pageFoot(machine, say("binder.binder"), index + 1, pages.length, frame),
          ...pageNotes(machine, false, frame),
          group({ x: frame.left, y: frame.top + headHeight }, marks ?? []),
        ],
      },
    }),
  );
}

/** Small, and without the reasons: what to write in the file is said to whoever prints, not to a class. */
function notMade(absent: readonly { title: string }[], width: number): Run[] {
  if (absent.length === 0) return [];
  const sheets = absent.map(({ title }) => title).join(", ");
  return paragraph(say("binder.not made", { sheets }), width, { size: size.source, gap: 2 });
}

/** A title, in two lines where it is long, and its page, with dots between to lead the eye. */
function entry(title: string, page: number, width: number): Drawing {
  const number = String(page);
  const wide = textWidth(number, size.text, "bold");
  const lines = fewLines(title, 2, width - wide - 6, size.text, "regular");
  const dot = textWidth(" .", size.text, "regular");
  const room = width - textWidth(lines.at(-1) ?? "", size.text, "regular") - wide - 3;
  const dots = " .".repeat(Math.max(0, Math.floor(room / dot)));
  const step = size.text * leading;
  const below = step * (lines.length - 1) + 3.6;
  return {
    width,
    height: below + 0.9,
    marks: [
      ...lines.map((words, row) => text(words, { x: 0, y: 3.6 + row * step }, { size: size.text })),
      text(dots, { x: width - wide - 1.5, y: below }, { size: size.text, anchor: "end", ink: "grey" }),
      text(number, { x: width, y: below }, { size: size.text, weight: "bold", anchor: "end" }),
    ],
  };
}
