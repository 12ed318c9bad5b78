import Papa from "papaparse";
import { closest } from "./closest.js";
import type { CsvReadings } from "./csvReadings.js";
import type { Problem } from "./problem.js";

/** What a column may be called; the first is what we call it. */
const headers: Readonly<Record<"turns" | "travel" | "return", readonly string[]>> = {
  turns: ["turns", "turn", "revolutions", "revs"],
  travel: ["travel", "out", "reading", "forward"],
  return: ["return", "back", "reading back", "backward"],
};
type Column = keyof typeof headers;

/** Reads a CSV as spreadsheets save it: comma, semicolon or tab, decimal point or comma, BOM, header in any order, blank rows;
 *  repeated runs simply follow each other. Problems carry the CSV's own name, line and column (of the cell, from 1). */
export function readCsv(text: string, name: string): { readings?: CsvReadings; problems: Problem[] } {
  const problems: Problem[] = [];
  const error = (line: number, column: number, code: string, what: string, remedy: string) =>
    problems.push({ severity: "error", code, file: name, line, column, what, remedy });
  const bare = text.replace(/^\uFEFF/, "");
  // The header's words hold no commas of their own, so what stands between them parts the cells; decimal commas below do not.
  const header = bare.split(/\r?\n/).find((row) => row.trim() !== "") ?? "";
  const delimiter = [";", "\t"].find((mark) => header.includes(mark)) ?? ",";
  const { data } = Papa.parse<string[]>(bare, { delimiter, skipEmptyLines: false });
  const rows = data
    .map((cells, index) => ({ cells, line: index + 1 }))
    .filter(({ cells }) => cells.some((cell) => cell.trim() !== ""));
  const [head, ...body] = rows;
  if (head === undefined) {
    error(
      1,
      1,
      "empty-csv",
      "the CSV holds nothing",
      "give it a header turns, travel, return and a row for each reading",
    );
    return { problems };
  }
  const place: Partial<Record<Column, number>> = {};
  for (const [index, cell] of head.cells.entries()) {
    const word = cell
      .trim()
      .toLowerCase()
      .replace(/\s*[([].*$/, "");
    const column = (Object.keys(headers) as Column[]).find((key) => headers[key].includes(word));
    if (column === undefined) {
      if (word === "") continue;
      const nearest = closest(word, Object.keys(headers));
      if (nearest)
        error(
          head.line,
          columnAt(head.cells, index),
          "unknown-column",
          `"${cell.trim()}" is not a column of readings`,
          `did you mean "${nearest}"?`,
        );
    } else if (place[column] !== undefined)
      error(
        head.line,
        columnAt(head.cells, index),
        "same-column",
        `there are two columns for ${column}`,
        "keep one; further runs go into further rows",
      );
    else place[column] = index;
  }
  for (const column of ["turns", "travel"] as const)
    if (place[column] === undefined)
      error(
        head.line,
        1,
        "missing-column",
        `the header has no column ${column}`,
        "its first row must name turns, travel and, if taken, return",
      );
  if (problems.length > 0) return { problems };

  const number = (cells: readonly string[], line: number, column: Column): number => {
    const index = place[column] ?? 0;
    const cell = cells[index]?.trim() ?? "";
    const value = cell === "" ? undefined : parseCell(cell);
    if (value === undefined)
      error(
        line,
        columnAt(cells, index),
        cell === "" ? "empty-cell" : "not-a-number",
        cell === "" ? `${column} is empty in this row` : `"${cell}" is not a number`,
        "write a plain number, with a decimal point or comma",
      );
    return value ?? Number.NaN;
  };
  const turns = body.map(({ cells, line }) => number(cells, line, "turns"));
  const travel = body.map(({ cells, line }) => number(cells, line, "travel"));
  const back = place.return === undefined ? undefined : body.map(({ cells, line }) => number(cells, line, "return"));
  return problems.length > 0 ? { problems } : { readings: { turns, travel, ...(back && { back }) }, problems };
}

/** Where a cell begins in its line. */
const columnAt = (cells: readonly string[], index: number): number =>
  cells.slice(0, index).reduce((at, cell) => at + cell.length + 1, 1);

/** A point or a comma before the decimals: spreadsheets do not group thousands here. */
function parseCell(cell: string): number | undefined {
  const plain = cell
    .replace(/\u00a0/g, "")
    .replace("−", "-")
    .replace(/\s*(mm|in|")$/, "");
  const value = Number(plain.replace(",", "."));
  return plain === "" || !Number.isFinite(value) ? undefined : value;
}
