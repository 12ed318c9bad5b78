import { basename, extname } from "node:path";

/** What the pages of a file are named after: its name without the ending, and without dots in front, which would hide them. */
export const stemOf = (path: string): string => basename(path, extname(path)).replace(/^\.+/, "") || "unnamed";
