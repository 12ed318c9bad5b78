import fc from "fast-check";
import { expect, test } from "vitest";
import { closest } from "../../src/machine/closest.js";

/** Letters to insert, delete, replace, or swap with a neighbour, straight from the definition. */
function apart(a: string, b: string): number {
  const known = new Map<string, number>();
  const from = (i: number, j: number): number => {
    if (i === 0 || j === 0) return i + j;
    const key = `${i} ${j}`;
    const found = known.get(key);
    if (found !== undefined) return found;
    const ways = [from(i - 1, j) + 1, from(i, j - 1) + 1, from(i - 1, j - 1) + Number(a[i - 1] !== b[j - 1])];
    if (i > 1 && j > 1 && a[i - 1] === b[j - 2] && a[i - 2] === b[j - 1]) ways.push(from(i - 2, j - 2) + 1);
    const least = Math.min(...ways);
    known.set(key, least);
    return least;
  };
  return from(a.length, b.length);
}

test.each([
  ["travle", "travel"],
  ["trave", "travel"],
  ["travell", "travel"],
  ["TRAVEL", "travel"],
  ["turs", "turns"],
  ["retrun", "return"],
  ["xyz", undefined],
  ["trrrvvll", undefined],
  ["", undefined],
])("%s: did you mean %s?", (word, meant) => expect(closest(word, ["turns", "travel", "return"])).toBe(meant));

test("of words that are equally near the first", () => expect(closest("bat", ["cat", "hat", "bat!"])).toBe("cat"));

test("one letter may always differ, of long words a third and no more", () => {
  expect(closest("ab", ["xb"])).toBe("xb");
  expect(closest("a", ["b"])).toBe("b");
  expect(closest("ab", ["xy"])).toBeUndefined();
  expect(closest("abcdef", ["xycdef"])).toBe("xycdef");
  expect(closest("abcdef", ["xyzdef"])).toBeUndefined();
  expect(closest("abcde", ["xycde"])).toBeUndefined();
});

test("property: the word that is told is the nearest of all, by trying every way to turn one into the other", () => {
  const word = fc.string({ unit: fc.constantFrom("a", "b", "c", "B"), minLength: 0, maxLength: 9 });
  fc.assert(
    fc.property(word, fc.array(word, { maxLength: 6 }), (typed, known) => {
      const small = typed.toLowerCase();
      const far = known.map((one) => apart(small, one.toLowerCase()));
      const least = Math.min(...far);
      const allowed = Math.max(1, Math.floor(small.length / 3));
      expect(closest(typed, known)).toBe(least <= allowed ? known[far.indexOf(least)] : undefined);
    }),
    { numRuns: 500 },
  );
});

test("of an endless word only the beginning is compared", () => {
  expect(closest("a".repeat(100_000), ["a".repeat(60)])).toBe("a".repeat(60));
});
