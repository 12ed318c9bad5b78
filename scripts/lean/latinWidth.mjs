import { stripVTControlCharacters } from "node:util";

/** Columns that a text takes on a terminal, for letters that each take one. */
export default (text) => [...stripVTControlCharacters(text)].length;
