import type { Source } from "./source.js";

/** Only cautions rest on it. */
export const safetyAtWork: Source = {
  key: "OSHA1910",
  title: "US 29 CFR 1910, safety at work (from memory)",
};
