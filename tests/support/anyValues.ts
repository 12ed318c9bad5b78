import fc from "fast-check";
import { mmPer } from "../../src/quantity/length.js";

/** Decimal figures as somebody might have read them off a rule or a caliper. */
export const within = (min: number, max: number): fc.Arbitrary<number> =>
  fc.oneof(
    ...[1, 10, 1000, 100_000]
      .filter((parts) => Math.ceil(min * parts) < Math.floor(max * parts))
      .slice(0, 3)
      .map((parts) =>
        fc.integer({ min: Math.ceil(min * parts), max: Math.floor(max * parts) }).map((count) => count / parts),
      ),
  );

/** In so many cases of ten; else left out. */
export const sometimes = <T>(ofTen: number, arbitrary: fc.Arbitrary<T>): fc.Arbitrary<T | undefined> =>
  fc.oneof({ weight: 10 - ofTen, arbitrary: fc.constant(undefined) }, { weight: ofTen, arbitrary });

export const someOf = <T>(list: readonly T[]): fc.Arbitrary<T> => fc.constantFrom(...list);

const word = (maxLength: number) =>
  fc
    .array(someOf([..."abcdefghijklmnopqrstuvwxyzABCDEFGHIKLMNORSTWäöüßéøÅÖ0123456789-"]), {
      minLength: 1,
      maxLength,
      size: "max",
    })
    .map((list) => list.join(""));

/** Names of 1 to 60 letters: of one word that cannot be broken, of many, and such as a shop uses. */
export const anyName: fc.Arbitrary<string> = fc.oneof(
  word(12),
  word(60),
  fc.array(word(14), { minLength: 2, maxLength: 10, size: "max" }).map((words) => words.join(" ").slice(0, 60).trim()),
  someOf([
    "A",
    "Lathe by the window",
    "Querschlitten mit neuer Spindelmutter und Teilring",
    "Oberschlittenkurbelradskalenring",
    "Øverslede på dreiebenken i båthuset, den grønne av dem to",
    "WWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWW",
  ]),
);

/** How a file in one unit writes lengths that are known in mm. */
export type Lengths = { readonly units: "mm" | "in"; readonly write: (mm: number) => number | string };

export const lengthsIn = (units: "mm" | "in"): Lengths => ({
  units,
  write: (mm) => (units === "mm" ? Number(mm.toFixed(3)) : inches(mm)),
});

/** Thousandths as a rule; what lies near a sixteenth is written as one, as a shop does. */
function inches(mm: number): number | string {
  const value = mm / mmPer.in;
  const sixteenths = Math.round(value * 16);
  if (sixteenths > 0 && sixteenths < 16 && Math.abs(value * 16 - sixteenths) < 0.1) return `${sixteenths}/16 in`;
  return Number(Math.max(0.001, value).toFixed(3));
}
