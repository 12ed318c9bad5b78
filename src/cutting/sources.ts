/** Where the cutting speeds come from: the words that stand on paper under a table. */
const titles: Readonly<Record<string, string>> = {
  JONES1914: "F. D. Jones, Turning and Boring (1914)",
  NAVY14345: "US Navy training course 14345, drilling",
  TUT17: "teaching sheet of cutting speeds and feeds (institution unknown)",
  CARVILL: "J. Carvill, Mechanical Engineer's Data Handbook (1993), 5.7.1",
  "TO1-1A-9": "USAF T.O. 1-1A-9, Aerospace Metals, table 2-8",
  ELHOFY: "Fundamentals of Machining Processes, table 5.4",
};

/** Full title of a source by its key in the data; the key itself for a user's own. */
export const sourceTitle = (source: string): string => titles[source] ?? source;
