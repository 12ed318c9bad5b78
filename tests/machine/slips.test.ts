import { expect, test } from "vitest";
import { readMachine } from "../../src/machine/read.js";

const told = (text: string) =>
  readMachine(text).problems.map(({ code, what, remedy }) => ({ code, words: `${what}; ${remedy}` }));
const motor = (mains: string) =>
  told(
    `name: L\ndrive:\n  motor: { speed: 1425, mains: ${mains} }\n  stages: [{ name: b, steps: [{ driver: 60, driven: 90 }] }]\n`,
  );
const dial = (sizes: string) =>
  told(`name: L\nhandwheels: [{ name: Slide, feed: 2, dial: { ${sizes}, increases: clockwise } }]\n`);

test.each(["400 V", "55", "230"])("mains of %s: those that there are, with their unit, in one remark", (mains) => {
  expect(motor(mains)).toEqual([
    expect.objectContaining({ code: "unknown-word", words: expect.stringContaining("it is one of 50 Hz, 60 Hz") }),
  ]);
});

test.each(["50", "60", "50 Hz", '"60 Hz"'])("mains of %s are taken", (mains) => expect(motor(mains)).toEqual([]));

test.each([
  ["shape: drum, diameter: 425, width: 9", "diameter of 425 mm is unusual for a handwheel's dial", "is it 42.5 mm?"],
  ["shape: drum, wrap: 1335, width: 9", "wrap of 1335 mm is unusual", "is it 133.5 mm?"],
  ["shape: face, outside: 480, inside: 440", "outside of 480 mm is unusual", "is it 48 mm?"],
])("a dial of %s is asked about: a slip of the decimal point", (sizes, what, remedy) => {
  const [slip] = dial(sizes);
  expect(slip?.code).toBe("too-large");
  expect(slip?.words).toContain(what);
  expect(slip?.words).toContain(remedy);
});

test.each(["shape: drum, diameter: 42.5, width: 9", "shape: drum, diameter: 290, width: 9"])(
  "one of %s is not",
  (sizes) => expect(dial(sizes)).toEqual([]),
);

test.each([
  ["[0, 4, 8, 12]", "[39.89, 31.91, 23.93, 15.95]", "0, 7.98, 15.96 …"],
  ["[12, 8, 4, 0]", "[0, 7.98, 15.96, 23.94]", "23.94, 15.96, 7.98 …"],
  ["[0, 4, 8, 12]", "[0, -7.98, -15.96, -23.94]", "0, 7.98, 15.96 …"],
])("readings that fall, turns %s and travel %s, are shown as they are to be written", (turns, travel, written) => {
  const { problems } = readMachine(
    `name: L\nhandwheels: [{ name: Cross slide, feed: { readings: { gauge: 0.01, turns: ${turns}, travel: ${travel} } } }]\n`,
  );
  const [falling] = problems.filter(({ code }) => code === "falling");
  expect(falling?.remedy).toContain(`less than the largest: ${written}`);
});
