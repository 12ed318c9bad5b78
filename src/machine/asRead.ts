import type { FeedText } from "./fields.js";

/** A value of the file as the machine knows it: a length or a feed, or each of a list, in mm; anything else as it stands. */
export type AsRead<T> = T extends FeedText ? number : T extends readonly (infer U)[] ? readonly AsRead<U>[] : T;
type EachAsRead<T> = { readonly [K in keyof T]: AsRead<T[K]> };

/** A part of the machine: the keys that are judged, and every other key of the file as read. So a key that needs no judging is
 *  told in the schema alone. */
export type Part<Raw, Judged> = Judged & EachAsRead<Omit<Raw, keyof Judged>>;

/** Every key of a part of the file, as read. */
export const asRead = <T extends object>(part: T, inMm: (length: FeedText) => number): EachAsRead<T> => {
  const read = (value: unknown): unknown =>
    Array.isArray(value) ? value.map(read) : isLength(value) ? inMm(value) : value;
  return Object.fromEntries(Object.entries(part).map(([key, value]) => [key, read(value)])) as EachAsRead<T>;
};

const isLength = (value: unknown): value is FeedText =>
  typeof value === "object" && value !== null && "value" in value && "unit" in value;
