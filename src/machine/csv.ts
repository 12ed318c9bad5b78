import Papa from "papaparse";
import { parseLength } from "../quantity/length.js";
import { splitUnit } from "../quantity/number.js";
import { MOST } from "./bounds.js";
import { closest } from "./closest.js";
import type { CsvReadings } from "./csvReadings.js";
import { type LengthText, tooLong, turnsFault } from "./fields.js";
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
  const foreign = /[\0\uFFFD]/.exec(bare);
  if (foreign) {
    const before = bare.slice(0, foreign.index).split("\n");
    error(
      before.length,
      (before.at(-1)?.length ?? 0) + 1,
      "not-text",
      "the CSV is not plain text in UTF-8",
      "save it again from the spreadsheet as CSV, UTF-8",
    );
    return { problems };
  }
  // The header's words hold no commas of their own, so what stands between them parts the cells; decimal commas below do not.
  const header = bare.split(/\r?\n/).find((row) => row.trim() !== "") ?? "";
  const delimiter = [";", "\t"].find((mark) => header.includes(mark)) ?? ",";
  const { data } = Papa.parse<string[]>(bare, { delimiter, skipEmptyLines: false });
  const rows = data
    .map((cells, index) => ({ cells, line: index + 1 }))
    .filter(({ cells }) => cells.some((cell) => cell.trim() !== ""));
  const beyond = rows[MOST.readings + 1];
  if (beyond !== undefined) {
    error(
      beyond.line,
      1,
      "too-many",
      `the CSV has more than ${MOST.readings} rows of readings`,
      "keep those of one measurement, a reading each turn or every few",
    );
    return { problems };
  }
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
  const unitOf: Partial<Record<Column, string>> = {};
  for (const [index, cell] of head.cells.entries()) {
    const at = columnAt(head.cells, index);
    const found = headerOf(cell);
    if (mmOf(cell.trim()) !== undefined)
      error(
        head.line,
        at,
        "unit-alone",
        `"${cell.trim()}" is a heading of its own`,
        "put the unit behind the column's name, in brackets: travel (in)",
      );
    else if (found === undefined) {
      const nearest = cell.trim() === "" ? undefined : closest(cell.trim(), Object.keys(headers));
      if (nearest)
        error(
          head.line,
          at,
          "unknown-column",
          `"${cell.trim()}" is not a column of readings`,
          `did you mean "${nearest}"?`,
        );
    } else if (place[found.column] !== undefined)
      error(
        head.line,
        at,
        "same-column",
        `there are two columns for ${found.column}`,
        "keep one; further runs go into further rows",
      );
    else {
      place[found.column] = index;
      unitOf[found.column] = found.unit;
      if (!isUnitFor(found.column, found.unit))
        error(
          head.line,
          at,
          "unknown-unit",
          `"${found.unit}" is no unit for ${found.column}`,
          found.column === "turns"
            ? "give turns of the handwheel, with parts of a turn as decimals"
            : "name mm, in or thou; without one the numbers are in the machine file's unit",
        );
    }
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

  for (const { cells, line } of body) {
    const stray = strayCell(head.cells, cells);
    if (stray === undefined) continue;
    error(
      line,
      columnAt(cells, stray),
      "too-many-cells",
      `${filled(cells)} cells under a header of ${filled(head.cells)}: "${cells[stray]?.trim()}" belongs to no column`,
      delimiter === ","
        ? "the comma parts the cells and marks decimals too: save with semicolons between the cells, or with decimal points"
        : "give every column a heading, or clear what stands beside the readings",
    );
  }
  const beside = delimiter === "," && problems.length === 0 ? cutInTwo(head.cells, body, place) : undefined;
  if (beside !== undefined)
    error(
      head.line,
      columnAt(head.cells, beside),
      "decimal-comma",
      `whole numbers stand in this column and in the one before it, like decimals that their comma cut in two`,
      "save with semicolons between the cells, or with decimal points; or clear this column",
    );
  if (problems.length > 0) return { problems };

  /** A cell's number and what stands behind it. */
  const read = (cells: readonly string[], line: number, column: Column): LengthText => {
    const index = place[column] ?? 0;
    const cell = cells[index]?.trim() ?? "";
    const refuse = (code: string, what: string): LengthText => {
      error(line, columnAt(cells, index), code, what, "write a plain number, with a decimal point or comma");
      return { value: Number.NaN, unit: "file" };
    };
    if (cell === "") return refuse("empty-cell", `${column} is empty in this row`);
    if (delimiter === "," && /^[-+]?0\d+$/.test(cell))
      return refuse("decimal-comma", `"${cell}" looks like the decimals of a number that its comma cut in two`);
    const parts = numberAndUnit(cell);
    const unit = parts?.unit === "" ? (unitOf[column] ?? "") : (parts?.unit ?? "");
    if (parts === undefined || !isUnitFor(column, unit))
      return refuse("not-a-number", `"${cell}" is not ${column === "turns" ? "a number" : "a length"}`);
    const mm = column === "turns" ? undefined : mmOf(unit);
    const length: LengthText =
      mm === undefined ? { value: parts.value, unit: "file" } : { value: parts.value * mm, unit: "mm" };
    const fault = column === "turns" ? turnsFault(parts.value) : tooLong(length);
    if (fault) error(line, columnAt(cells, index), "bad-value", `"${cell}": ${fault[0]}`, fault[1]);
    return length;
  };
  const turns = body.map(({ cells, line }) => read(cells, line, "turns").value);
  const travel = body.map(({ cells, line }) => read(cells, line, "travel"));
  const back = place.return === undefined ? undefined : body.map(({ cells, line }) => read(cells, line, "return"));
  return problems.length > 0 ? { problems } : { readings: { turns, travel, ...(back && { back }) }, problems };
}

/** Where a cell begins in its line. */
const columnAt = (cells: readonly string[], index: number): number =>
  cells.slice(0, index).reduce((at, cell) => at + cell.length + 1, 1);

const filled = (cells: readonly string[]): number => cells.filter((cell) => cell.trim() !== "").length;

/** The first cell that stands beyond the header, or the last one where there are more than the header names. */
function strayCell(head: readonly string[], cells: readonly string[]): number | undefined {
  const beyond = cells.findIndex((cell, index) => index >= head.length && cell.trim() !== "");
  if (beyond >= 0) return beyond;
  return filled(cells) > filled(head) ? cells.findLastIndex((cell) => cell.trim() !== "") : undefined;
}

/** A column that is none of ours, holds figures alone, and follows one of ours that does too: what stands behind a decimal comma
 *  would look so. */
function cutInTwo(
  head: readonly string[],
  body: readonly { readonly cells: readonly string[] }[],
  place: Readonly<Partial<Record<Column, number>>>,
): number | undefined {
  const ours = Object.values(place);
  const figures = (index: number) =>
    body.some(({ cells }) => (cells[index] ?? "").trim() !== "") &&
    body.every(({ cells }) => /^[-+]?\d*$/.test((cells[index] ?? "").trim()));
  const lengths = [place.travel, place.return];
  const found = head.findIndex(
    (_, index) => !ours.includes(index) && lengths.includes(index - 1) && figures(index - 1) && figures(index),
  );
  return found < 0 ? undefined : found;
}

/** "travel (in)", "Return [mm]", "out, mm": the column that a heading names, and the unit behind it. Undefined for a column of
 *  something else. In brackets only a unit is understood: a word that is none is told, not passed over. */
function headerOf(cell: string): { readonly column: Column; readonly unit: string } | undefined {
  const heading = cell.trim().toLowerCase();
  const [, name = "", bracketed] = /^([^([]*?)\s*(?:[([]\s*(.*?)\s*[)\]]?)?$/.exec(heading) ?? [];
  for (const column of Object.keys(headers) as Column[])
    for (const word of headers[column]) {
      if (name === word) return { column, unit: bracketed ?? "" };
      const [, unit] =
        bracketed === undefined && name.startsWith(word)
          ? (/^[\s/_:,-]+(?:in\s+)?(\S+)$/.exec(name.slice(word.length)) ?? [])
          : [];
      if (unit !== undefined && isUnitFor(column, unit)) return { column, unit };
    }
  return undefined;
}

/** mm in one of a unit of length; undefined for no unit, and for what is none. */
const mmOf = (unit: string): number | undefined =>
  unit === "" || /\d/.test(unit) ? undefined : parseLength(`1 ${unit}`, "mm");

const isUnitFor = (column: Column, unit: string): boolean =>
  unit === "" || (column === "turns" ? headers.turns.includes(unit) : mmOf(unit) !== undefined);

/** A fraction, or a point or a comma before the decimals: spreadsheets do not group thousands here. */
function numberAndUnit(cell: string): { readonly value: number; readonly unit: string } | undefined {
  const plain = cell
    .replace(/\u00a0/g, " ")
    .replace("−", "-")
    .trim();
  if (plain.includes("/")) {
    const fraction = splitUnit(plain);
    return fraction && { value: fraction.number, unit: fraction.unit };
  }
  const [, number, unit = ""] = /^([-+]?(?:\d+[.,]?\d*|[.,]\d+)(?:e[-+]?\d+)?)\s*([^\d.,].*)?$/i.exec(plain) ?? [];
  return number === undefined ? undefined : { value: Number(number.replace(",", ".")), unit };
}
