import { cutLine, medium, size } from "../blocks/shared/style.js";
import type { Mark, Weight } from "../drawing/drawing.js";
import { circle, group, line, rectangle, text } from "../drawing/shapes.js";
import { textWidth } from "../drawing/text.js";
import type { Machine, Units } from "../machine/machine.js";
import { printerCorrection } from "../paper/printerCorrection.js";
import { formatFixed, formatLength } from "../quantity/format.js";
import { inMm } from "../quantity/length.js";
import type { Template } from "./template.js";

export const headHeight = 9;
export const footHeight = 6;
/** What the check bars take from the bottom and from the right of the frame. */
export const barRoom = 7;
/** A round length in the reader's unit: as many of `step` as there is room for, at most `most`. `places`: as told. */
const bars: Readonly<Record<Units, { step: number; most: number; places: number }>> = {
  mm: { step: 10, most: 100, places: 1 },
  in: { step: inMm(0.5, "in"), most: inMm(4, "in"), places: 2 },
};

type Box = { readonly left: number; readonly top: number; readonly width: number; readonly height: number };

/** Which machine, which sheet, which revision: a stale sheet must be noticed. */
export function pageHead(machine: Machine, title: string, box: Box): Mark[] {
  const { left, top, width } = box;
  const state = [
    machine.revision === undefined ? "no revision given" : `revision ${machine.revision}`,
    machine.measured === undefined ? "date of measurement not given" : `measured ${machine.measured}`,
  ].join(" · ");
  const right = textWidth(state, size.small, "regular");
  const room = width - right - 4;
  // What the page shows is kept whole; a long machine's name gives way to it.
  const shown = shortened(`: ${title.charAt(0).toLowerCase()}${title.slice(1)}`, 0.75 * room, size.heading, "bold");
  const name = shortened(machine.name, room - textWidth(shown, size.heading, "bold"), size.heading, "bold");
  return [
    text(`${name}${shown}`, { x: left, y: top + 4.6 }, { size: size.heading, weight: "bold" }),
    text(state, { x: left + width, y: top + 4.6 }, { size: size.small, anchor: "end" }),
    line({ x: left, y: top + 6.4 }, { x: left + width, y: top + 6.4 }, medium),
  ];
}

function shortened(words: string, room: number, em: number, weight: Weight): string {
  if (textWidth(words, em, weight) <= room) return words;
  let kept = words;
  while (kept.length > 1 && textWidth(`${kept}…`, em, weight) > room) kept = kept.slice(0, -1);
  return `${kept.trimEnd()}…`;
}

export function pageFoot(machine: Machine, template: Template, page: number, pages: number, box: Box): Mark[] {
  const baseline = box.top + box.height;
  const uncorrected = machine.paper.printer === undefined ? " Not corrected for any printer." : "";
  const words =
    template.checkBars || template.card ? `True size: print at 100 %, never “fit to page”.${uncorrected}` : "";
  return [
    ...(words ? [text(words, { x: box.left, y: baseline }, { size: size.tiny })] : []),
    text(
      `${template.title.toLowerCase()} ${page} of ${pages}`,
      { x: box.left + box.width, y: baseline },
      { size: size.tiny, anchor: "end" },
    ),
  ];
}

/** For which printer a page is corrected, and by what: a line over the foot, for whoever holds the paper of another printer. */
export function correctionNote({ paper, printers }: Machine, box: Box): Mark[] {
  const printer = paper.printer === undefined ? undefined : printers[paper.printer];
  if (paper.printer === undefined || printer === undefined) return [];
  const [across, , skew, down] = printerCorrection(printer);
  const factors = [
    `across × ${formatFixed(across, 4)}`,
    `down × ${formatFixed(down, 4)}`,
    ...(printer.diagonals ? [`skew ${formatFixed(skew, 4)}`] : []),
  ].join(", ");
  const by = `: ${factors}, down being the sheet's long side.`;
  const room = box.width - textWidth(by, size.tiny, "regular");
  const words = shortened(`Corrected for the printer ${paper.printer}`, room, size.tiny, "regular") + by;
  return [text(words, { x: box.left, y: box.top + box.height - 2.6 }, { size: size.tiny })];
}

/** One bar across and one down; a steel rule laid on them tells whether the page is true. Each says along which side of the
 *  sheet it lies: `across` where the page lies across its sheet, and what seems across runs down. */
export function checkBars(box: Box, across: boolean, units: Units): Mark[] {
  const { step, most, places } = bars[units];
  const length = Math.min(most, step * Math.floor((Math.min(box.width, box.height) - 10) / step));
  const y = box.top + box.height - footHeight - 2;
  const x = box.left + box.width - 2;
  const words = (side: string) => `must measure ${formatLength(length, units, places)} · ${side}`;
  const [level, upright] = across ? [alongDown, alongAcross] : [alongAcross, alongDown];
  const levelBar = [
    line({ x: box.left, y }, { x: box.left + length, y }, medium),
    ...ends(box.left, length).map((at) => line({ x: at, y: y - 1.2 }, { x: at, y: y + 1.2 }, medium)),
  ];
  const uprightBar = [
    line({ x, y: box.top }, { x, y: box.top + length }, medium),
    ...ends(box.top, length).map((at) => line({ x: x - 1.2, y: at }, { x: x + 1.2, y: at }, medium)),
  ];
  return [
    group({ x: 0, y: 0 }, levelBar, { name: "check-bar-level" }),
    group({ x: 0, y: 0 }, uprightBar, { name: "check-bar-upright" }),
    text(words(level), { x: box.left + 2, y: y - 0.8 }, { size: size.tiny }),
    text(words(upright), { x: x - 1.9, y: box.top + 3 }, { size: size.tiny, turn: Math.PI / 2 }),
  ];
}

const alongAcross = "across: the sheet's short side";
const alongDown = "down: the sheet's long side";

const ends = (from: number, length: number): number[] => [from, from + length];

type Hole = { readonly x: number; readonly y: number; readonly diameter: number };

/** Where to trim a card, and round which screws. */
export const cardOutline = (box: Box, corner: number, holes: readonly Hole[] = []): Mark =>
  group(
    { x: 0, y: 0 },
    [
      rectangle({ x: box.left, y: box.top }, box.width, box.height, { pen: cutLine }, corner),
      ...holes.map(({ x, y, diameter }) =>
        circle({ x: box.left + x, y: box.top + y }, diameter / 2, { pen: cutLine, fill: "white" }),
      ),
    ],
    { name: "cut" },
  );

/** Room to leave inside a card's edge so that nothing is printed where a screw near the edge sits. */
export function cardPadding(card: { width: number; height: number; holes?: readonly Hole[] }): number {
  const reaches = (card.holes ?? []).map(
    ({ x, y, diameter }) => Math.min(x, y, card.width - x, card.height - y) + diameter / 2 + 0.8,
  );
  return Math.max(usualPadding, ...reaches.filter((reach) => reach <= mostPadding));
}

const usualPadding = 5;
const mostPadding = 16;
