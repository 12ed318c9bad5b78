import { translated } from "../words/say.js";

/** Where sizes and tapping drills come from: the words that stand under a table. The standards themselves (ISO 261, ISO 2306,
 *  ASME B1.1, BS 84, BS 93) were not opened. */
const titles: Readonly<Record<string, string>> = {
  "cad-data": "an open-source CAD library's hole table (metric drills there after ISO 2306, Whitworth after BS 1157)",
  "trainee-handbook": "Thread Cutting by Dies and Taps, trainees' handbook, appendix 1",
  // docslib 4942776.
  "drill-chart": "a drill and tap chart, 75 % column",
  ibls: "International Brotherhood of Live Steamers, Threads",
  "ba-chart": "a fastener dealer's chart of BA threads",
  "whitworth-table": "a fastener maker's Whitworth geometry",
  // studylib 18133655.
  "threading-tables": "Threading Tables, chart 1",
  memory: "memory: size not seen in print",
};

export const threadSource = (key: string): string => translated(titles[key] ?? key);
