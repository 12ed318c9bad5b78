import type { Way } from "../../file/edit.js";
import type { Kind } from "../../schema.js";

/** What may be said in several ways: how each is called where one fills it in, by the key that it is said under. */
const ways: Readonly<Record<string, Partial<Record<Kind, string>>>> = {
  speed: { field: "one speed", list: "variable: slowest and fastest" },
  driver: { field: "its effective diameter", record: "another of its measures" },
  driven: { field: "its effective diameter", record: "another of its measures" },
  to: { field: "as the drawing gives it", list: "smallest and largest" },
  diameter: { field: "as the drawing gives it", list: "smallest and largest" },
};

const others: Readonly<Record<Kind, string>> = {
  field: "one value",
  choice: "one of these",
  tick: "yes or no",
  record: "part by part",
  named: "by name",
  list: "several values",
  "several kinds": "otherwise",
};

export const wayWords = (way: Way, kind: Kind): string => ways[keyIn(way)]?.[kind] ?? others[kind];

/** Entries of a list of so many, each of which means something else. */
const entries: Readonly<Record<string, readonly string[]>> = {
  "motor speed": ["slowest", "fastest"],
  "work speed": ["least", "most"],
  to: ["smallest", "largest"],
  diameter: ["smallest", "largest"],
  holes: ["from the left", "from the top", "diameter"],
};

/** What an entry is called; undefined where it is one of many alike. */
export function entryWords(way: Way, index: number): string | undefined {
  const key = keyIn(way);
  const within = way[0] === "work" ? "work" : way.includes("motor") ? "motor" : "";
  return (entries[`${within} ${key}`] ?? entries[key])?.[index];
}

const keyIn = (way: Way): string => String(way.findLast((step) => typeof step === "string") ?? "");
