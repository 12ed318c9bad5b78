/** Room round what is printed, mm: at the edge that is punched (the left of an upright page, the top of one that lies across),
 *  and at the three others. ISO 838 punches 12 mm from the edge, holes of 6 mm (from memory). */
export type Margin = { readonly binding: number; readonly other: number };

/** Where a template says nothing. */
export const usualMargin: Margin = { binding: 20, other: 10 };

/** Less than this is no room for any block, mm. */
const least = 40;

/** A box on a page, mm from its top left corner. */
export type Box = { readonly left: number; readonly top: number; readonly width: number; readonly height: number };

/** What a margin leaves of the paper, head and foot included: on every sheet from the same corner; undefined where that is next to nothing. */
export function frameOn(paper: { width: number; height: number }, margin: Margin = usualMargin): Box | undefined {
  const { binding, other } = margin;
  const across = paper.width > paper.height;
  const [left, top] = across ? [other, binding] : [binding, other];
  const frame = { left, top, width: paper.width - left - other, height: paper.height - top - other };
  return Math.min(frame.width, frame.height) < least ? undefined : frame;
}
