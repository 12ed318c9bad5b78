import { inForm } from "./inForm.js";
import { inFileUnits } from "./units.js";

/** What stands beneath a field or a list: how it is filled in there. The brackets round a list are the file's. */
export const hint = (description: string, units: "mm" | "in"): string =>
  inFileUnits(inForm(description), units).replace(/\[([^[\]]*)\]/g, "$1");
