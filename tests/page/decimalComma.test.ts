import { readFileSync } from "node:fs";
import { expect, test } from "vitest";
import { answersWith } from "../../src/page/work/answers.js";
import { readingsSoFar } from "../../src/page/work/readingsSoFar.js";

const text = readFileSync("templates/machines/boathouse.yaml", "utf8");
const files = { machine: { name: "l.yaml", text }, jobs: [], readings: [], sheets: [] };
const ask = answersWith({
  fonts() {
    throw new Error("no page is made");
  },
  deflate: (bytes) => bytes,
});

/** What is answered to a number, as it is typed. */
const asked = {
  distance: (number: string) => ask("distance", files, { wheel: "Cross slide", distance: number }),
  speed: (number: string) => ask("speed", files, { material: "brass", operation: "turning", diameter: number }),
  verify: (number: string) => ask("verify", files, { handwheel: "Cross slide", measured: number }),
  suppose: (number: string) => ask("suppose", files, { wishes: [`motor ${number} rpm`] }),
  mark: (number: string) => ask("mark", files, { at: 0, given: { words: number } }),
  readings: async (number: string) =>
    readingsSoFar({
      ...{ units: "mm", gauge: number, gaugeError: number, temperature: "20,5" },
      rows: [0, 1, 2, 3].map((turn) => ({ turns: String(turn), travel: `${100 * turn}${number.slice(1)}`, back: "" })),
    }),
} as const;

test.each(Object.entries(asked))("%s takes a decimal comma as the file does", async (_, answer) => {
  const comma = await answer("2,5");
  expect(comma).toEqual(await answer("2.5"));
  // It is no other number, nor one that was not read.
  expect(comma).not.toEqual(await answer("25"));
  expect(comma).not.toEqual(await answer("no number"));
});

test.each(["distance", "speed", "verify", "mark"] as const)(
  "%s refuses what may be thousands, with an example",
  async (name) => {
    const { said = [], refused = "" } = (await asked[name]("1,270")) as { said?: unknown; refused?: string };
    expect(`${said}${refused}`).toMatch(/Write|write/);
  },
);
