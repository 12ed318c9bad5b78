import { passes } from "../handFeed/handFeed.js";

/** One pass of a tool: how deep the tool then stands from where it touched, on the radius (along the axis when facing), mm. */
export type PassDepth = { readonly kind: "cut" | "last cut" | "spring"; readonly depth: number };

/** Passes for `total` of depth: equal cuts, then what `finish` leaves, then once more at the same setting to take what the
 *  work sprang away. No cut is deeper than `cut`, nor is it after every setting was rounded to the nearest `tenth` (of a
 *  division, as a depth). All mm, all > 0; a `cut` that is hardly more than a tenth gives many passes. */
export function passDepths(total: number, cut: number, finish: number, tenth = 0): PassDepth[] {
  const most = Math.max(cut - tenth, cut / 2);
  const last = Math.min(finish, most, total);
  const rough = total - last;
  const count = rough < 1e-9 ? 0 : passes(2 * total, 2 * last, most);
  return [
    ...Array.from({ length: count }, (_, index): PassDepth => ({ kind: "cut", depth: (rough * (index + 1)) / count })),
    { kind: "last cut", depth: total },
    { kind: "spring", depth: total },
  ];
}
