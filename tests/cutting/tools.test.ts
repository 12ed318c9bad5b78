import { expect, test } from "vitest";
import { cuttingSpeed } from "../../src/cutting/cuttingSpeeds.js";
import { toolName } from "../../src/cutting/tools.js";
import { compute } from "../../src/findings/compute.js";
import { remarks } from "../../src/findings/remarks.js";
import { readMachine } from "../../src/machine/read.js";
import { inLanguage } from "../../src/words/language.js";

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

test("a tool is printed by its name in the paper's language, however the file writes it; a user's own as it is", () => {
  const inGerman = (name: string) => inLanguage("de", () => toolName(name));
  expect(["high speed steel", "HSS", "Carbide", "Hartmetall"].map(toolName)).toEqual([
    "high-speed steel",
    "high-speed steel",
    "carbide",
    "carbide",
  ]);
  expect(["high speed steel", "hss", "carbide", "my stone"].map(inGerman)).toEqual([
    "Schnellarbeitsstahl (HSS)",
    "Schnellarbeitsstahl (HSS)",
    "Hartmetall",
    "my stone",
  ]);
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
