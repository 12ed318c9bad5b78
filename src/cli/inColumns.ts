import { wrapped } from "../answers/wrapped.js";

/** A plain terminal. */
const across = 80;
/** So that lists below each other begin their words at one place. */
const usual = 20;

export type Row = readonly [name: string, words: string];

/** Names at the left, what is said of each beside it, in lines that a plain terminal shows whole. */
export function inColumns(rows: readonly Row[]): string[] {
  const column = Math.max(usual, ...rows.map(([name]) => name.length + 4));
  return rows.flatMap(([name, words]) =>
    wrapped(words, across - column).map((line, index) => `${(index === 0 ? `  ${name}` : "").padEnd(column)}${line}`),
  );
}

/** The same line, continued further in where it is too long for a plain terminal. */
export function fitted(line: string): string[] {
  if (line.length <= across) return [line];
  const lead = /^ */.exec(line)?.[0] ?? "";
  const [first = "", ...rest] = wrapped(line.slice(lead.length), across - lead.length - 2);
  return [`${lead}${first}`, ...rest.map((more) => `${lead}  ${more}`)];
}

/** Fewer letters of a name tell nobody which it is. */
const leastName = 12;

/** Whether the table shows every name whole. */
export const namesFit = (rows: readonly Row[]): boolean => longest(rows, 0) <= roomBeside(rows);

const longest = (rows: readonly Row[], at: 0 | 1): number =>
  rows.reduce((most, row) => Math.max(most, row[at].length), 0);

/** For names beside what is said of them. */
const roomBeside = (rows: readonly Row[]): number => Math.max(leastName, across - 4 - longest(rows, 1));

/** One line for each row: where a name leaves no room for what is said of it, words are left out of its middle. */
export function inTable(rows: readonly Row[]): string[] {
  const width = Math.min(longest(rows, 0), roomBeside(rows));
  const names = shortened(
    rows.map(([name]) => name.replace(/\s+/g, " ")),
    width,
  );
  return rows.map(([, words], index) => `  ${(names[index] ?? "").padEnd(width)}  ${words}`);
}

/** Names of at most `width` letters, told apart by their number in the list where the letters left do not. */
function shortened(names: readonly string[], width: number): string[] {
  const short = names.map((name) => withoutMiddle(name, width));
  return short.map((one, index) => {
    if (one === names[index] || short.filter((other) => other === one).length === 1) return one;
    const number = ` (${index + 1})`;
    return `${withoutMiddle(names[index] ?? "", width - number.length)}${number}`;
  });
}

/** Whole words of its beginning and its end, as far as there are such; of one long word the beginning. */
function withoutMiddle(name: string, width: number): string {
  if (name.length <= width) return name;
  const end = wordsAtEnd(name, Math.floor((width - 1) / 3));
  return `${wordsAtBegin(name, width - 1 - end.length)}…${end}`;
}

/** With the space before it. */
function wordsAtEnd(name: string, most: number): string {
  const end = most <= 0 ? "" : name.slice(-most);
  const from = end.indexOf(" ");
  return from < 0 || end.slice(from).trim() === "" ? "" : end.slice(from);
}

function wordsAtBegin(name: string, most: number): string {
  const begin = name.slice(0, most);
  const to = name[most] === " " ? most : begin.lastIndexOf(" ");
  // Half of the room for one short word would say less than a longer one cut.
  return (to < most / 2 ? begin : begin.slice(0, to)).trimEnd();
}
