import type { Run } from "../blocks/shared/block.js";
import type { Mark } from "../drawing/drawing.js";
import { group } from "../drawing/shapes.js";

/** Stacks runs into columns of one page's height: the marks of each page. A page is undefined where a run (with those it
 *  must stay with) is higher than a whole page and so cannot be shown. */
export function flow(runs: readonly Run[], height: number): (readonly Mark[] | undefined)[] {
  const pages: (Mark[] | undefined)[] = [];
  let page: Mark[] = [];
  let y = 0;
  for (const chain of chains(runs)) {
    if (page.length > 0 && (chain[0]?.startsPage || y + chainHeight(chain, true) > height + 1e-9)) {
      pages.push(page);
      page = [];
      y = 0;
    }
    if (page.length === 0 && chainHeight(chain, false) > height + 1e-9) pages.push(undefined);
    for (const run of chain) {
      if (page.length > 0) y += run.gap ?? 0;
      else if (run.heading) {
        page.push(group({ x: 0, y }, run.heading.marks));
        y += run.heading.height;
      }
      page.push(group({ x: 0, y }, run.drawing.marks));
      y += run.drawing.height;
    }
  }
  if (page.length > 0) pages.push(page);
  return pages;
}

/** Runs that must share a page. */
function chains(runs: readonly Run[]): Run[][] {
  const result: Run[][] = [];
  let chain: Run[] = [];
  for (const run of runs) {
    chain.push(run);
    if (run.keepWithNext) continue;
    result.push(chain);
    chain = [];
  }
  return chain.length > 0 ? [...result, chain] : result;
}

function chainHeight(chain: readonly Run[], below: boolean): number {
  return chain.reduce((sum, run, index) => {
    const first = index === 0 && !below;
    return sum + (first ? (run.heading?.height ?? 0) : (run.gap ?? 0)) + run.drawing.height;
  }, 0);
}
