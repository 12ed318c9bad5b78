/** What a reader's file is. */
export type DocumentKind = "machine" | "job" | "readings" | "sheet";

/** Files that a page brings, or that a browser has kept. */
export type Kept = readonly { readonly kind: DocumentKind; readonly name: string; readonly text: string }[];

/** The largest file that the page takes, letters or bytes: hundreds of times what a machine needs. */
export const LARGEST = 1_000_000;

export const sizeWords = (bytes: number): string =>
  bytes < 1e6
    ? `${Math.ceil(bytes / 1000)} kB`
    : `${(bytes / 1e6).toFixed(bytes < 1e7 ? 1 : 0).replace(/\.0$/, "")} MB`;

/** The element that holds them, as the page is built without any. */
const empty = '<script type="application/json" id="inside">[]</script>';

/** The page with files inside. @throws Error where it is no page that we built */
export function withInside(page: string, files: Kept): string {
  if (!page.includes(empty)) throw new Error("this is not the page as it is built");
  // No text of a file may end its element.
  return page.replace(empty, () => empty.replace("[]", () => JSON.stringify(files).replaceAll("<", "\\u003c")));
}

/** Whether a file is such a page, by its first letters. */
export const isPage = (text: string): boolean => /^<!doctype html>[\s\S]{0,3000}<title>witnessmark<\/title>/.test(text);

/** What a file is, by its name and its first lines. */
export function kindOfFile(name: string, text: string): DocumentKind {
  if (/\.(csv|tsv|txt)$/i.test(name)) return "readings";
  if (/^blocks:/m.test(text)) return "sheet";
  return /^steps:/m.test(text) ? "job" : "machine";
}
