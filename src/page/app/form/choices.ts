import type { Way } from "../../file/edit.js";

/** What the words of a choice do, by the keys that lead to it, where they do not tell it themselves. Under the empty word: what
 *  holds where none is chosen. */
const doing: Readonly<Record<string, Readonly<Record<string, string>>>> = {
  "handwheels.reads": {
    "": "left out: travel",
    travel: "travel: how far it moves",
    diameter: "diameter: twice how far it moves",
  },
  "handwheels.dial.increases": {
    "": "left out: clockwise",
    clockwise: "clockwise counts up",
    anticlockwise: "anticlockwise counts up",
  },
};

export const choiceWords = (way: Way, word: string): string =>
  doing[way.filter((step) => typeof step === "string").join(".")]?.[word] ?? (word === "" ? "left out" : word);
