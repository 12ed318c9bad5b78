import { type PDFArray, type PDFContext, type PDFDict, PDFHexString, PDFName, PDFNumber, type PDFRef } from "pdf-lib";
import type { Section } from "../drawing/page.js";

/** Gives a PDF its bookmarks, one a section with its pages below where it has several (ISO 32000-1, 12.3.3), and its page
 *  labels: roman for what comes before the first section, then from 1 (12.4.2). */
export function addBookmarks(
  context: PDFContext,
  catalog: PDFDict,
  pages: readonly PDFRef[],
  sections: readonly Section[],
  titles: readonly string[],
): void {
  const outline = context.nextRef();
  const items = sections.map(({ title, page, pages: count }) => ({
    title,
    page,
    below:
      count > 1
        ? Array.from({ length: count }, (_, index) => ({
            title: titles[page + index] ?? "",
            page: page + index,
            below: [],
          }))
        : [],
  }));
  type Item = { title: string; page: number; below: readonly Item[] };
  const link = (list: readonly Item[], parent: PDFRef): PDFRef[] => {
    const refs = list.map(() => context.nextRef());
    for (const [index, { title, page, below }] of list.entries()) {
      const own = refs[index] as PDFRef;
      const inner = link(below, own);
      const target = pages[page];
      const entry: Record<string, PDFHexString | PDFRef | PDFArray | PDFNumber> = {
        Title: PDFHexString.fromText(title),
        Parent: parent,
      };
      if (target) entry.Dest = context.obj([target, PDFName.of("Fit")]) as PDFArray;
      const [before, after] = [refs[index - 1], refs[index + 1]];
      if (before) entry.Prev = before;
      if (after) entry.Next = after;
      const [first, last] = [inner[0], inner.at(-1)];
      // A negative count: closed until the reader opens it.
      if (first && last) Object.assign(entry, { First: first, Last: last, Count: PDFNumber.of(-inner.length) });
      context.assign(own, context.obj(entry) as PDFDict);
    }
    return refs;
  };
  const top = link(items, outline);
  const [first, last] = [top[0], top.at(-1)];
  if (first === undefined || last === undefined) return;
  context.assign(outline, context.obj({ Type: "Outlines", First: first, Last: last, Count: top.length }) as PDFDict);
  catalog.set(PDFName.of("Outlines"), outline);
  catalog.set(PDFName.of("PageMode"), PDFName.of("UseOutlines"));
  const start = sections[0]?.page ?? 0;
  const labels = start > 0 ? [0, { S: "r" }, start, { S: "D", St: 1 }] : [0, { S: "D", St: 1 }];
  catalog.set(PDFName.of("PageLabels"), context.obj({ Nums: labels }));
}
