/** Readings from a spreadsheet's CSV, row by row; numbers are in the unit of the machine file. */
export type CsvReadings = { readonly turns: number[]; readonly travel: number[]; readonly back?: number[] };
