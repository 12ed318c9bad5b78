import { expect, test } from "vitest";
import { readMachine } from "../../src/machine/read.js";

test("a key that nobody judges reaches the machine: lengths in mm whatever their unit, the rest as it stands", () => {
  const { machine } = readMachine(`
name: Lathe
units: in
handwheels:
  - name: Slide
    travel: 2
    distances: [1, 3 mm]
    dial: { shape: drum, diameter: 38 mm, width: 9 mm, second: 0.5 mm, vernier: 10, oncePerTurn: true }
stops:
  - { name: shoulder, handwheel: slide, length: 1, parts: 12 }
`);
  expect(machine?.handwheels).toEqual([
    {
      name: "Slide",
      reads: "travel",
      travel: 50.8,
      distances: [25.4, 3],
      dial: {
        shape: "drum",
        diameter: 38,
        width: 9,
        increases: "clockwise",
        senseAssumed: true,
        second: 0.5,
        vernier: 10,
        oncePerTurn: true,
      },
    },
  ]);
  expect(machine?.stops).toEqual([{ name: "shoulder", handwheel: "Slide", length: 25.4, parts: 12 }]);
});
