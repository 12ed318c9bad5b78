/** Words in lines of at most `width` letters; a longer word stands alone. */
export function wrapped(words: string, width: number): string[] {
  const lines: string[] = [];
  for (const word of words.split(" ")) {
    const last = lines.at(-1);
    if (last !== undefined && last.length + 1 + word.length <= width) lines[lines.length - 1] = `${last} ${word}`;
    else lines.push(word);
  }
  return lines;
}

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
