import type { Run } from "../blocks/shared/block.js";
import type { Drawing, Mark } from "../drawing/drawing.js";
import { group } from "../drawing/shapes.js";

/** What stands at the head of a page over certain marks, and how high it is, mm. */
export type Head = { readonly height: number; readonly over: (marks: readonly Mark[]) => boolean };
/** Of a page, mm: what it holds, what it holds at least so as not to look empty, what it gets where the page before has that to give, and
 *  what runs ask for at its head and its foot. */
type Room = {
  readonly height: number;
  readonly least: number;
  readonly wanted: number;
  readonly around: (runs: readonly Run[]) => number;
};
/** What has been put on one page, how far down it reaches, and what it leaves free at its head and foot, mm; `subject`: more than words
 *  that accompany what is on another. */
type Filled = { readonly marks: Mark[]; readonly runs: Run[]; used: number; around: number; subject: boolean };
/** Runs that share a page, or the rows of a list that goes down one column and on to the next. */
type Item = { readonly kind: "chain"; readonly runs: readonly Run[] } | List;
type List = {
  readonly kind: "list";
  readonly runs: readonly Run[];
  readonly columns: number;
  readonly step: number;
  /** What must stand over its first rows. */
  readonly over: readonly Run[];
};

/** A page that is emptier says that its sheet was not arranged: its rows would stand with the others. */
const LEAST_FILLED = 0.29;
/** What follows a full page looks left over where it is emptier. */
const WELL_FILLED = 0.5;
/** What comes in parts is broken where it would leave more of a page empty. */
const MOST_EMPTY = 1 / 3;
/** Fewer rows of a list, or of a broken table, on a page than these look lost. */
const LEAST_ROWS = 3;
const LEAST_OF_TABLE = 4;
const STEP = 2.5;

/** Stacks runs into pages of one height: the marks of each page. `head`: kept free on
 *  the pages where it stands. What begins a page goes on the last one instead where it fits there
 *  wholly; each page is a quarter full at least and half where that can be, at the cost of the one before it. A page is undefined
 *  where a single run is higher than a whole page and so cannot be shown. */
export function flow(runs: readonly Run[], height: number, head?: Head): (readonly Mark[] | undefined)[] {
  const least = LEAST_FILLED * height;
  const wanted = WELL_FILLED * height;
  const around = aroundOf(head);
  const room = { height, least, wanted, around };
  const pages: (Page | undefined)[] = [];
  for (const { runs: part, always } of parts(runs)) {
    const items = itemsOf(part);
    const gap = part[0]?.gap ?? 0;
    const last = pages.at(-1);
    const from = last === undefined ? 0 : last.used + gap;
    if (last !== undefined && !always) {
      const [rest, ...more] = balanced(items, room, { height: height - from, runs: last.runs });
      const fits = rest !== undefined && reach(rest) <= height - from + 1e-9;
      // A page that would else stay nearly empty takes the beginning alone.
      if (fits && (more.length === 0 || reach(last) < least)) {
        add(last, { ...rest, gap }, around);
        pages.push(...more.map(pageOf));
        continue;
      }
    }
    const own = balanced(items, room, { height, runs: [] });
    const [only] = own;
    const moved = last?.parts.at(-1);
    // Where it would stand nearly alone, what stands before it comes along.
    if (
      only !== undefined &&
      own.length === 1 &&
      !always &&
      reach(only) < wanted &&
      last &&
      moved &&
      last.parts.length > 1
    ) {
      const left = last.used - moved.gap - moved.used;
      if (
        left >= (reach(only) < least ? least : wanted) &&
        moved.used + gap + only.used + around([...moved.runs, ...only.runs]) <= height
      ) {
        const [first, ...others] = last.parts.slice(0, -1) as [Part, ...Part[]];
        pages[pages.length - 1] = others.reduce((page, part) => add(page, part, around), pageOf(first));
        pages.push(add(pageOf(moved), { ...only, gap }, around));
        continue;
      }
    }
    pages.push(...own.map(pageOf));
  }
  return pages.map((page) => page && [...page.marks, ...keyMarks(page)]);
}

const reach = ({ used, around }: Filled): number => used + around;

/** Above what is said at the foot, mm. */
const KEY_GAP = 2;
const keysOf = (runs: readonly Run[]): Drawing[] => [...new Set(runs.flatMap(({ keys = [] }) => keys))];
const keysHeight = (runs: readonly Run[]): number =>
  keysOf(runs).reduce((sum, { height }) => sum + height, runs.some(({ keys = [] }) => keys.length > 0) ? KEY_GAP : 0);

function keyMarks({ runs, used }: Filled): Mark[] {
  let y = used + KEY_GAP;
  return keysOf(runs).map(({ marks, height }) => {
    y += height;
    return group({ x: 0, y: y - height }, marks);
  });
}

const aroundOf = (head: Head | undefined): Room["around"] => {
  const above = headOf(head);
  return (runs) => above(runs) + keysHeight(runs);
};

/** With their own headings, which stand over them where they begin a page. */
function headOf(head: Head | undefined): Room["around"] {
  if (head === undefined) return () => 0;
  const known = new Map<Run, boolean>();
  const isUnder = (run: Run): boolean => {
    const found =
      known.get(run) ?? [run.drawing, run.heading, run.goesOn].some((one) => one !== undefined && head.over(one.marks));
    known.set(run, found);
    return found;
  };
  return (runs) => (runs.some(isUnder) ? head.height : 0);
}

/** What one section has on a page, with the space above it. */
type Part = Filled & { readonly gap: number };
type Page = Filled & { readonly parts: Part[] };

function pageOf<F extends Filled | undefined>(filled: F): F extends undefined ? undefined : Page;
function pageOf(filled: Filled | undefined): Page | undefined {
  return filled && { ...filled, marks: [...filled.marks], runs: [...filled.runs], parts: [{ ...filled, gap: 0 }] };
}

function add(page: Page, part: Part, around: Room["around"]): Page {
  page.marks.push(group({ x: 0, y: page.used + part.gap }, part.marks));
  page.runs.push(...part.runs);
  page.used += part.gap + part.used;
  page.around = around(page.runs);
  page.subject ||= part.subject;
  page.parts.push(part);
  return page;
}

/** Sections that begin a page. */
function parts(runs: readonly Run[]): { runs: Run[]; always: boolean }[] {
  const found: { runs: Run[]; always: boolean }[] = [];
  for (const run of runs) {
    const open = found.at(-1);
    if (open === undefined || run.startsPage !== undefined)
      found.push({ runs: [run], always: run.startsPage === "always" });
    else open.runs.push(run);
  }
  return found;
}

/** What is left of a page, mm, and what stands on it already. */
type First = { readonly height: number; readonly runs: readonly Run[] };

/** `first`: what is left of the first page. What belongs together is torn, in its middle, only where a page would else stay nearly
 *  empty. */
function balanced(items: readonly Item[], room: Room, first: First): (Filled | undefined)[] {
  const whole = evened(items, room, first);
  if (lonely(whole, room) === 0) return whole;
  const torn = evened(items.flatMap(loosened), room, first);
  const saved = [whole.length - torn.length, lonely(whole, room) - lonely(torn, room)];
  return Math.min(...saved) >= 0 && Math.max(...saved) > 0 ? torn : whole;
}

/** How many pages are nearly empty, which is twice as bad, or have words alone, where there are several. */
const lonely = (pages: readonly (Filled | undefined)[], { least }: Room): number =>
  pages.length < 2
    ? 0
    : pages.reduce((sum, page) => sum + (page === undefined ? 0 : reach(page) < least ? 2 : page.subject ? 0 : 1), 0);
const isWanting = (page: Filled, { wanted }: Room): boolean => reach(page) < wanted || !page.subject;

/** Thin pages, and what was torn; a nearly empty page is worse than any number of these. */
function wanting(pages: readonly (Filled | undefined)[], room: Room): number {
  if (pages.length < 2) return 0;
  const thin = pages.filter((page) => page !== undefined && reach(page) < room.wanted).length;
  const torn = pages.reduce((sum, page, index) => sum + tornBetween(pages[index - 1]?.runs, page?.runs), 0);
  return 3 * pages.length * lonely(pages, room) + thin + torn;
}

const BADLY = 2;

/** How badly what stands on two pages is torn: a table once, between the lines of a paragraph or with fewer rows of a table on a page
 *  than look like one twice. */
function tornBetween(before: readonly Run[] = [], [first, ...more]: readonly Run[] = []): number {
  if (before.length === 0 || first === undefined || first.list !== undefined) return 0;
  if (first.heading === undefined) return (first.gap ?? 0) > 0 ? 0 : BADLY;
  const fewest = 1 + Math.min(rowsIn(more), rowsIn([...before].reverse()));
  return fewest < LEAST_OF_TABLE ? BADLY : 1;
}

/** Rows that go on a table, before anything else comes. */
function rowsIn(runs: readonly Run[]): number {
  const end = runs.findIndex(({ heading }) => heading === undefined);
  return end < 0 ? runs.length : end;
}

/** Runs at either end of a chain that stay together when it is torn. */
const ENDS = 3;

function loosened(item: Item): Item[] {
  if (item.kind === "list" || item.runs.length <= 2 * ENDS) return [item];
  const { runs } = item;
  const middle = runs.slice(ENDS, -ENDS).map((run) => [run]);
  return [runs.slice(0, ENDS), ...middle, runs.slice(-ENDS)].map((chain) => ({ kind: "chain", runs: chain }));
}

/** Pages filled one after the other, with so much less on those before a lonely, a thin or a torn one that it is none, where that helps. */
function evened(items: readonly Item[], room: Room, first: First): (Filled | undefined)[] {
  const { height, least } = room;
  const limits = new Map([[0, first.height]]);
  const filled = (page?: number, limit?: number) =>
    fill(items, room, first.runs, (at) => (at === page && limit !== undefined ? limit : (limits.get(at) ?? height)));
  let pages = filled();
  for (let index = 1; index < pages.length; index++) {
    const before = pages[index - 1];
    const here = pages[index];
    if (before === undefined || here === undefined) continue;
    if (!isWanting(here, room) && tornBetween(before.runs, here.runs) < BADLY) continue;
    let best: number | undefined;
    for (let limit = reach(before) - STEP; limit > least; limit -= STEP) {
      const other = filled(index - 1, limit);
      if (other.length !== pages.length) break;
      // What is on the page only changes below what it reaches down to.
      const left = other[index - 1];
      if (left !== undefined) limit = Math.min(limit, reach(left));
      if (wanting(other, room) >= wanting(pages, room)) continue;
      best = limit;
      pages = other;
    }
    if (best !== undefined) limits.set(index - 1, best);
  }
  return pages;
}

function fill(
  items: readonly Item[],
  { height, around }: Room,
  before: readonly Run[],
  limitOf: (page: number) => number,
): (Filled | undefined)[] {
  const pages: (Filled | undefined)[] = [];
  const empty = (): Filled => ({ marks: [], runs: [], used: 0, around: 0, subject: false });
  let page = { ...empty(), around: around(before) };
  const onPage = () => (pages.length === 0 ? [...before, ...page.runs] : page.runs);
  const aroundWith = (more: readonly Run[]) => (around(more) === 0 ? page.around : around([...onPage(), ...more]));
  const limit = (runs: readonly Run[]) => limitOf(pages.length) - aroundWith(runs);
  const turn = () => {
    if (page.marks.length > 0) pages.push(page);
    page = empty();
  };
  const open = (over: Drawing | undefined) => {
    if (over === undefined) return;
    page.marks.push(group({ x: 0, y: page.used }, over.marks));
    page.used += over.height;
  };
  const put = (run: Run) => {
    if (page.marks.length > 0) page.used += run.gap ?? 0;
    else [run.goesOn, run.heading].forEach(open);
    page.marks.push(group({ x: 0, y: page.used }, run.drawing.marks));
    page.around = aroundWith([run]);
    page.runs.push(run);
    page.used += run.drawing.height;
    page.subject ||= run.accompanies !== true;
  };
  const overflows = (runs: readonly Run[], wanted: number) => wanted > limit(runs) + 1e-9;
  /** False where not even the first has room here. */
  const putParts = (parts: readonly Run[]): boolean => {
    const hasRoom = (part: Run) => !overflows([part], page.used + stackedHeight([part], true));
    const [first] = parts;
    if (first === undefined || !hasRoom(first)) return false;
    for (const part of parts) {
      if (page.marks.length > 0 && !hasRoom(part)) turn();
      put(part);
    }
    return true;
  };
  const putChain = (runs: readonly Run[]) => {
    if (page.marks.length > 0 && overflows(runs, page.used + stackedHeight(runs, true))) {
      const parts = runs.length === 1 ? runs[0]?.parts : undefined;
      if (parts !== undefined && height - reach(page) > MOST_EMPTY * height && putParts(parts)) return;
      turn();
    }
    // The limit of a page that is filled less than it could be is no limit of the paper.
    if (stackedHeight(runs, false) <= height - around(runs) + 1e-9) {
      runs.forEach(put);
      return;
    }
    // Larger than a page: it breaks between its runs after all.
    for (const run of runs) {
      if (page.marks.length > 0 && overflows([run], page.used + stackedHeight([run], true))) turn();
      if (stackedHeight([run], false) > height - around([run]) + 1e-9) pages.push(undefined);
      put(run);
    }
  };
  const putList = ({ runs, columns, step, over }: List) => {
    let rest = runs;
    const begin = [...over, ...runs.slice(0, LEAST_ROWS)];
    if (page.marks.length > 0 && overflows(begin, page.used + stackedHeight(begin, page.marks.length > 0))) turn();
    over.forEach(put);
    while (rest.length > 0) {
      const fresh = page.marks.length === 0;
      if (fresh) open(rest[0]?.goesOn);
      const top = page.used + (fresh ? 0 : (rest[0]?.gap ?? 0));
      const room = Math.max(0, limit(rest) - top);
      let set = columnsWithin(rest, columns, room);
      const left = rest.length - set.taken;
      // In every column, where there are as many more.
      const fewest = [LEAST_ROWS * columns, LEAST_ROWS].find((few) => set.taken > 2 * few);
      if (fewest !== undefined && left > 0 && left < fewest) set = columnsWithin(rest.slice(0, -fewest), columns, room);
      if (set.taken === 0) {
        if (!fresh) {
          turn();
          continue;
        }
        pages.push(undefined);
        return;
      }
      for (const [index, column] of set.columns.entries())
        for (const { run, y, headed } of column) {
          if (headed && run.heading) page.marks.push(group({ x: index * step, y: top + y }, run.heading.marks));
          const below = headed ? (run.heading?.height ?? 0) : 0;
          page.marks.push(group({ x: index * step, y: top + y + below }, run.drawing.marks));
        }
      page.around = aroundWith(rest.slice(0, set.taken));
      page.runs.push(...rest.slice(0, set.taken));
      page.used = top + set.height;
      page.subject = true;
      rest = rest.slice(set.taken);
      if (rest.length > 0) turn();
    }
  };
  for (const item of items)
    if (item.kind === "chain") putChain(item.runs);
    else putList(item);
  turn();
  return pages;
}

type Placed = { readonly run: Run; readonly y: number; readonly headed: boolean };

/** As many rows as columns of the height hold; all of them in columns as short as will do, where they fit. */
function columnsWithin(
  runs: readonly Run[],
  columns: number,
  room: number,
): { columns: Placed[][]; taken: number; height: number } {
  const full = columnsDown(runs, columns, room);
  if (full.taken < runs.length) return full;
  const total = stackedHeight(runs, false) - (runs[0]?.goesOn?.height ?? 0);
  for (let height = total / columns; height < room; height += 1) {
    const even = columnsDown(runs, columns, height);
    if (even.taken === runs.length) return even;
  }
  return full;
}

function columnsDown(
  runs: readonly Run[],
  columns: number,
  room: number,
): { columns: Placed[][]; taken: number; height: number } {
  const placed: Placed[][] = [];
  let taken = 0;
  let height = 0;
  for (let column = 0; column < columns && taken < runs.length; column++) {
    const here: Placed[] = [];
    let y = 0;
    for (; taken < runs.length; taken++) {
      const run = runs[taken] as Run;
      const headed = here.length === 0;
      const own = run.drawing.height + (headed ? (run.heading?.height ?? 0) : (run.gap ?? 0));
      if (y + own > room + 1e-9) break;
      here.push({ run, y: headed ? 0 : y + (run.gap ?? 0), headed });
      y += own;
    }
    height = Math.max(height, y);
    placed.push(here);
  }
  return { columns: placed, taken, height };
}

/** Chains of runs that must share a page, and lists. */
function itemsOf(runs: readonly Run[]): Item[] {
  const items: Item[] = [];
  let chain: Run[] = [];
  const close = () => {
    if (chain.length > 0) items.push({ kind: "chain", runs: chain });
    chain = [];
  };
  for (let index = 0; index < runs.length; index++) {
    const run = runs[index] as Run;
    const { list } = run;
    if (list !== undefined) {
      let end = index;
      while (runs[end + 1]?.list === list) end++;
      items.push({ kind: "list", runs: runs.slice(index, end + 1), over: chain, ...list });
      chain = [];
      index = end;
      continue;
    }
    const before = items.at(-1);
    if (chain.length === 0 && run.keepWithPrevious && before?.kind === "chain") {
      items.pop();
      chain = [...before.runs];
    }
    chain.push(run);
    if (!run.keepWithNext) close();
  }
  close();
  return items;
}

function stackedHeight(runs: readonly Run[], below: boolean): number {
  return runs.reduce((sum, run, index) => {
    const first = index === 0 && !below;
    const over = first ? (run.goesOn?.height ?? 0) + (run.heading?.height ?? 0) : (run.gap ?? 0);
    return sum + over + run.drawing.height;
  }, 0);
}
