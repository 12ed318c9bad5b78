import { type Matrix, times } from "./matrix.js";

type Point = { readonly x: number; readonly y: number };

function matrixOf(transform: string): Matrix {
  let matrix: Matrix = [1, 0, 0, 1, 0, 0];
  for (const [, kind, list = ""] of transform.matchAll(/(translate|rotate|matrix)\(([^)]*)\)/g)) {
    const [a = 0, b = 0, c = 0, d = 0, e = 0, f = 0] = list
      .trim()
      .split(/[\s,]+/)
      .map(Number);
    const turn = (a * Math.PI) / 180;
    matrix = times(
      matrix,
      kind === "translate"
        ? [1, 0, 0, 1, a, b]
        : kind === "rotate"
          ? [Math.cos(turn), Math.sin(turn), -Math.sin(turn), Math.cos(turn), 0, 0]
          : [a, b, c, d, e, f],
    );
  }
  return matrix;
}

/** Straight two-point paths inside groups of one class, in the SVG's user units (mm), read from its text alone. */
export function svgLines(svg: string, className: string): { from: Point; to: Point }[] {
  const found: { from: Point; to: Point }[] = [];
  const stack: { matrix: Matrix; inside: boolean }[] = [{ matrix: [1, 0, 0, 1, 0, 0], inside: false }];
  for (const [tag, closing, name, attributes = ""] of svg.matchAll(/<(\/?)(g|path)\b([^>]*)>/g)) {
    const top = stack.at(-1) as (typeof stack)[number];
    if (name === "g" && closing) stack.pop();
    else if (name === "g" && !tag.endsWith("/>")) {
      const transform = /transform="([^"]*)"/.exec(attributes)?.[1] ?? "";
      const classed = /class="([^"]*)"/.exec(attributes)?.[1];
      stack.push({ matrix: times(top.matrix, matrixOf(transform)), inside: top.inside || classed === className });
    } else if (name === "path" && top.inside) {
      const line = /d="M([-\d.e]+) ([-\d.e]+)L([-\d.e]+) ([-\d.e]+)"/.exec(attributes);
      if (line === null) continue;
      const [x1 = 0, y1 = 0, x2 = 0, y2 = 0] = line.slice(1).map(Number);
      const at = (x: number, y: number): Point => {
        const [a, b, c, d, e, f] = top.matrix;
        return { x: a * x + c * y + e, y: b * x + d * y + f };
      };
      found.push({ from: at(x1, y1), to: at(x2, y2) });
    }
  }
  return found;
}
