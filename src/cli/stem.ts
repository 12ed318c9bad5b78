import { basename } from "node:path";
import { stemOf as stemOfName } from "../printing/stem.js";

/** What the pages of a file are named after, wherever it lies. */
export const stemOf = (path: string): string => stemOfName(basename(path));
