/** Files that one may begin with, as they come with the program. */
export type Beginnings = {
  /** Every sheet's template. */
  readonly sheets: Readonly<Record<string, string>>;
  /** To be filled in, with a remark at every key. */
  readonly machine: string;
  readonly job: string;
  /** Of a drill, on which nothing is turned. */
  readonly drillingJob: string;
  /** Filled in. */
  readonly example: { readonly machine: string; readonly job: string };
};

let read: Beginnings | undefined;

/** They stand in an element of the page, and are read when they are first asked for. */
export function beginnings(): Beginnings {
  read ??= JSON.parse(document.getElementById("beginnings")?.textContent ?? "") as Beginnings;
  return read;
}
