import type { Graduation } from "../../dial/finding.js";
import { textWidth } from "../../drawing/text.js";

const clear = 0.8;

/** Marks of which only those keep their number whose numbers stand clear of each other and within the drawn part: numbers on paper are
 *  larger than on a small dial. The one at `first` comes first, then the nearest to it. `perAngle`: mm of paper to a radian. */
export function numbersApart(
  marks: readonly Graduation[],
  perAngle: number,
  em: number,
  part: { readonly from: number; readonly to: number; readonly first?: number },
): Graduation[] {
  const { from, to, first = 0 } = part;
  const kept: { at: number; half: number }[] = [];
  const bare = new Set<Graduation>();
  const away = ({ angle }: Graduation) => Math.abs(angle - first);
  for (const mark of marks.filter(({ label }) => label !== undefined).sort((a, b) => away(a) - away(b))) {
    const at = mark.angle * perAngle;
    const half = textWidth(mark.label ?? "", em, "bold") / 2;
    const within = at - half >= from * perAngle - 1e-9 && at + half <= to * perAngle + 1e-9;
    if (within && kept.every((one) => Math.abs(one.at - at) >= one.half + half + clear)) kept.push({ at, half });
    else bare.add(mark);
  }
  return marks.map((mark) => {
    const { label: _, ...rest } = mark;
    return bare.has(mark) ? rest : mark;
  });
}
