import { signal } from "@preact/signals";
import type { Schema } from "../schema.js";

/** What a sheet's template may say, once the worker has told it: all blocks are the core's, which the page's own code does not load. */
export const sheetSchema = signal<Schema>({});
