import { decimalMark } from "../words/say.js";

/** A thread's name as it stands on paper: that of a metric one holds its size and pitch, which have the language's decimal mark. */
export const threadOnPaper = (name: string): string => (/^M\d/.test(name) ? name.replaceAll(".", decimalMark()) : name);
