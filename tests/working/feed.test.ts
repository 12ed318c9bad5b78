import { expect, test } from "vitest";
import { explainCuttingSpeed } from "../../src/working/cuttingSpeed.js";
import { explainFeed } from "../../src/working/feed.js";
import { findingsOf } from "../support/sheets.js";

const feedOf = (feed: string, units = "in") => {
  const text = `name: L\nunits: ${units}\nhandwheels: [{ name: C, feed: ${feed} }]\n`;
  const working = explainFeed(findingsOf(text))[0]?.explain();
  if (working === undefined || "missing" in working) throw new Error(working?.missing);
  return { formula: working.formula, inputs: working.inputs.map(({ name, value }) => `${name} = ${value}`) };
};

test("a feed is explained by the figures that the file gives", () => {
  expect(feedOf("{ rack: { pitch: 16 DP, teeth: 14 } }")).toEqual({
    formula: "π × teeth ÷ DP",
    inputs: ["DP = 16", "teeth = 14"],
  });
  expect(feedOf("{ rack: { pitch: 16 DP, teeth: 14, reduction: [1, 2] } }", "mm").formula).toBe(
    "π × teeth ÷ DP × 25.4 mm × reduction, driving ÷ driven",
  );
  expect(feedOf("{ rack: { pitch: 1/4, teeth: 14 } }").inputs).toEqual(["pitch, tooth to tooth = 6.35", "teeth = 14"]);
  expect(feedOf("{ rack: { module: 1, teeth: 14 } }").inputs[0]).toBe("module, always in mm = 1");
  expect(feedOf("10 tpi")).toEqual({
    formula: "1 in ÷ threads per inch × starts",
    inputs: ["threads per inch = 10", "starts = 1"],
  });
  expect(feedOf("{ screw: { pitch: 0.1 } }").formula).toBe("pitch × starts");
});

test("published cutting speeds are cited in the file's unit, with what was printed", () => {
  const notes = (units: string) => {
    const text = `name: L\nunits: ${units}\ndrive: { motor: { speed: 1425 }, stages: [{ name: belt, steps: [{ label: A, driver: 2 in, driven: 4 in }] }] }\nwork: { materials: [mild steel] }\n`;
    const working = explainCuttingSpeed(findingsOf(text))[0]?.explain();
    if (working === undefined || "missing" in working) throw new Error(working?.missing);
    return (working.notes ?? []).join("\n");
  };
  expect(notes("in")).toContain("82 to 148 ft/min (printed as 25 to 45 m/min): ");
  expect(notes("in")).toContain("\n45 to 65 ft/min: ");
  expect(notes("mm")).toContain("14 to 20 m/min (printed as 45 to 65 ft/min): ");
});
