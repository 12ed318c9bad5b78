import type { Source } from "./source.js";

/** Only factors and cautions rest on it. */
export const commonPractice: Source = {
  key: "COMMON",
  title: "common practice",
};
