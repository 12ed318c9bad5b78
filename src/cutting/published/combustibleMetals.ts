import type { Source } from "./source.js";

/** Only cautions rest on it. */
export const combustibleMetals: Source = {
  key: "NFPA484",
  title: "NFPA 484, combustible metals (from memory)",
};
