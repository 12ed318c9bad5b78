/** Where the cutting speeds come from: the words that stand on paper under a table. */
const titles: Readonly<Record<string, string>> = {
  JONES1914: "F. D. Jones, Turning and Boring (1914)",
  ZERBE1914: "J. S. Zerbe, Practical Mechanics for Boys (1914)",
  MILTON1919: "A. S. Milton and O. K. Wohlers, A Course in Wood Turning (1919)",
  SCIAM: "Scientific American recipes (19th century)",
  POCKETBK: "a pocket-book of engineering formulae, p. 439 (19th century)",
  "TM1-420": "US War Department TM 1-420, Lathes (1940)",
  "TC9-524": "US Army TC 9-524, Fundamentals of Machine Tools (from memory)",
  NAVY14345: "US Navy training course 14345, drilling",
  TUT17: "teaching sheet of cutting speeds and feeds (institution unknown)",
  LABSHEET: "teaching-lab sheet of feeds (institution unknown)",
  CARVILL: "J. Carvill, Mechanical Engineer's Data Handbook (1993), 5.7",
  "TO1-1A-9": "USAF T.O. 1-1A-9, Aerospace Metals",
  ELHOFY: "Fundamentals of Machining Processes, table 5.4",
  LAVALLEE: "a tap maker's table of tapping speeds",
  CLARKSON: "a tap maker's recommended speeds for taps",
  PROTO: "a tool supplier's sheet for light metals",
  PRIOR: "a plastics supplier's turning notes",
  CURBELL: "a plastics supplier's machining guide",
  COMMON: "common practice",
};

/** Full title of a source by its key in the data; the key itself for a user's own. */
export const sourceTitle = (source: string): string => titles[source] ?? source;

export const knownSources = (): string[] => Object.keys(titles);
