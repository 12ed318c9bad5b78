import { describe, expect, test } from "vitest";
import { dialStyle } from "../../src/blocks/dial/dialStyle.js";
import { rowsTooLow } from "../../src/dial/bandRoom.js";
import { development } from "../../src/dial/development.js";
import { remarks } from "../../src/findings/remarks.js";
import { findingsOf } from "../support/sheets.js";

const file = (dial: string, feed = "0.0512 in") =>
  `name: L\nunits: in\nhandwheels: [{ name: Top slide, travel: 2, feed: ${feed}, dial: { shape: drum, ${dial} } }]\n`;
const codes = (text: string) => remarks(findingsOf(text)).map(({ code }) => code);
const rows = "divisions: 0.001, closure: rows";

describe("rows that have no room for numbers", () => {
  test("are refused with the width that they need", () => {
    const text = file(`diameter: 90 mm, width: 14 mm, ${rows}`);
    expect(remarks(findingsOf(text))).toContainEqual(
      expect.objectContaining({
        severity: "error",
        code: "rows-too-low",
        path: ["handwheels", 0, "dial", "width"],
        remedy: expect.stringMatching(/^make it at least 0\.640 in from edge to edge, or 4 rows at most/),
      }),
    );
    expect(codes(file(`diameter: 90 mm, width: 0.640 in, ${rows}`))).not.toContain("rows-too-low");
  });

  test("so are two scales on a strip for one", () => {
    expect(codes(file("diameter: 60 mm, width: 4 mm, second: 0.02 mm", "0.1 in"))).toContain("rows-too-low");
    expect(codes(file("diameter: 60 mm, width: 9 mm, second: 0.02 mm", "0.1 in"))).not.toContain("rows-too-low");
  });

  test.each([2, 3, 4, 5, 6])(
    "at the least width %i bands have numbers, and without half a millimetre each not",
    (bands) => {
      const drawn = (width: number) => {
        const { handwheels } = findingsOf(file(`diameter: 90 mm, width: 20 mm, ${rows}`));
        const { dial, handwheel } = handwheels[0] ?? {};
        if (dial === undefined || handwheel?.dial?.shape !== "drum") throw new Error("no dial");
        const flat = development({ ...handwheel.dial, width }, { paper: 0.1, adhesive: 0 });
        if (flat === undefined) throw new Error("no strip");
        const [row = []] = dial.rows;
        const made = { ...dial, flat, rows: Array.from({ length: bands }, () => row) };
        return { told: rowsTooLow(made), numbers: dialStyle({ dial: made, flat }).bands.map(({ number }) => number) };
      };
      const least = drawn(bands * 0.5).told?.least ?? 0;
      expect(drawn(least).told).toBeUndefined();
      expect(Math.min(...drawn(least).numbers)).toBeGreaterThan(0);
      expect(Math.max(...drawn(least - bands * 0.5).numbers)).toBe(0);
    },
  );
});

test("who asks for rows alone gets several, in the file's unit", () => {
  const { handwheels } = findingsOf(file("diameter: 60 mm, width: 20 mm, closure: rows"));
  const chosen = handwheels[0]?.dial?.chosen;
  expect(chosen).toMatchObject({ closure: "rows", unit: "in", closes: true });
  expect(chosen?.rows).toBeGreaterThan(1);
});
