import { describe, expect, test } from "vitest";
import { type BlockName, blocks } from "../../src/blocks/registry.js";
import type { Block } from "../../src/blocks/shared/block.js";
import { guideOf } from "../../src/sheets/blockGuide.js";
import { demoFindings, findingsOf } from "../support/sheets.js";

const names = Object.keys(blocks) as BlockName[];

function draw(name: BlockName, findings: ReturnType<typeof findingsOf>, handwheels = findings.handwheels) {
  const { defaults, draw } = blocks[name] as Block;
  const settings = {
    ...defaults,
    ...(name === "cautions" && { of: "belt" }),
    ...(name === "words" && { text: "Hello" }),
  };
  return draw({ findings, handwheels, settings, use: "turning", width: 180, height: 250 });
}

describe("what a block says of itself is true", () => {
  // Whoever takes a wheel draws by what is handed over, and nobody else does.
  const demo = demoFindings();
  test.each(names)("%s is about one handwheel just where a template may say which", (name) => {
    const own = Object.hasOwn(blocks[name].defaults, "handwheel");
    const differs = JSON.stringify(draw(name, demo)) !== JSON.stringify(draw(name, demo, []));
    expect(guideOf(name).wheels ?? false).toBe(differs || own);
  });

  const empty = findingsOf("name: L\n");
  // These say on paper what is missing, since whoever looks there must know.
  const outspoken: readonly BlockName[] = ["drill depth", "engraving"];
  test.each(names.filter((name) => !outspoken.includes(name)))(
    "%s needs what it says that it needs: of a file with nothing but a name",
    (name) => {
      const { needs } = guideOf(name);
      expect(draw(name, empty).length > 0).toBe(needs === "");
    },
  );

  test.each(names)("%s: lengths are numbers, and a count is a whole one", (name) => {
    for (const [key, { is, says }] of Object.entries(guideOf(name).settings)) {
      expect(says).toMatch(/\w/);
      const usual = (blocks[name] as Block).defaults[key];
      if (is === "length") expect(usual).toEqual(expect.any(Number));
      if (is === "count") expect(Number.isInteger(usual)).toBe(true);
    }
  });
});
