import { translated } from "../words/say.js";
import { sources } from "./data.js";

const titles = new Map(sources.map(({ key, title }) => [key, title]));

/** What stands for a source on paper, by its key in the data; the key itself for a user's own. */
export const sourceTitle = (source: string): string => translated(titles.get(source) ?? source);

export const knownSources = (): string[] => [...titles.keys()];
