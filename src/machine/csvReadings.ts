import type { LengthText } from "./fields.js";

/** Readings from a spreadsheet's CSV, row by row; a number without a unit of its own or its column's is in the machine file's. */
export type CsvReadings = {
  readonly turns: readonly number[];
  readonly travel: readonly LengthText[];
  readonly back?: readonly LengthText[];
};
