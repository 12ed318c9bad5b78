import { expect, test } from "vitest";
import { cuttingSpeed } from "../../src/cutting/cuttingSpeeds.js";
import { compute } from "../../src/findings/compute.js";
import { remarks } from "../../src/findings/remarks.js";
import { readMachine } from "../../src/machine/read.js";

function codes(work: string): string[] {
  const { machine, problems } = readMachine(`name: T\nwork: ${work}\n`);
  if (machine === undefined) throw new Error(JSON.stringify(problems));
  return remarks(compute(machine)).map(({ code, remedy }) => `${code}: ${remedy}`);
}

test("a tool goes by its usual names too", () => {
  expect(cuttingSpeed("brass", "HSS", "turning")?.fastest).toBe(
    cuttingSpeed("brass", "high-speed steel", "turning")?.fastest,
  );
});

test("a tool, a material or an operation without data is named with the nearest", () => {
  expect(codes("{ tool: carbid }")).toEqual(['unknown-tool: did you mean "carbide"?']);
  expect(codes("{ materials: [bras] }")).toEqual(['unknown-material: did you mean "brass"?']);
  expect(codes("{ cuttingSpeeds: [{ material: brass, operation: drillin, speed: [10, 20] }] }")).toEqual([
    'unknown-operation: did you mean "drilling"?',
  ]);
});

test("own rows make a material and a tool of one's own known", () => {
  expect(
    codes("{ tool: stone, materials: [slate], cuttingSpeeds: [{ material: slate, tool: stone, speed: [10, 20] }] }"),
  ).toEqual([]);
});
