import { expect, test } from "vitest";
import { findingsOf, textsOf } from "../../support/sheets.js";

const wheel = (kind: string, name: string, rest = "", diameter = 60): string => {
  const found = findingsOf(`name: L
kind: ${kind}
handwheels:
  - { name: ${name}, feed: 3, dial: { shape: drum, diameter: ${diameter}, width: 10 }${rest} }
`);
  return textsOf(found, "dial");
};

test.each([
  ["lathe", "Cross slide", "", /on travel/, /on diameter/],
  ["lathe", "Cross slide", ", reads: diameter", /on diameter/, /on travel/],
  ["lathe", "Slide A", ", moves: across", /on travel/, /on diameter/],
  ["lathe", "Carriage", "", /./, /on travel|on diameter/],
  ["drill", "Cross slide", "", /./, /on travel|on diameter/],
])("of a %s, the strip of “%s”%s says what its dial reads", (kind, name, rest, says, saysNot) => {
  const words = wheel(kind, name, rest);
  expect(words).toMatch(says);
  expect(words).not.toMatch(saysNot);
});

test("a strip without room for it keeps its name", () => {
  const words = wheel("lathe", "Cross slide", "", 13);
  expect(words).toContain("Cross slide");
  expect(words).not.toContain("on travel");
});
