/** What the columns of the readings are called where one fills them in, by their keys in the file. */
export const readingHeads = { turns: "turns", travel: "out", return: "back" } as const;

/** The head of a list of readings; undefined of any other list. */
export const readingHead = (key: string | number | undefined): string | undefined =>
  Object.entries(readingHeads).find(([one]) => one === key)?.[1];
