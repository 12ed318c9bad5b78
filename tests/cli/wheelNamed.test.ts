import { expect, test } from "vitest";
import { wheelNamed } from "../../src/answers/wheelNamed.js";
import { file, folder, witnessmark } from "../support/command.js";

const known = ["Cross slide", "Top slide", "Tailstock barrel", "Top"];

test.each([
  ["cross SLIDE", "Cross slide"],
  ["cross", "Cross slide"],
  ["barrel", "Tailstock barrel"],
  // A whole name goes before the part of another.
  ["top", "Top"],
])("%s is %s", (typed, name) => expect(wheelNamed(typed, known)).toBe(name));

test.each([
  ["slide", '"slide" is a part of several names: "Cross slide", "Top slide"'],
  ["Crosslide", 'there is no handwheel "Crosslide"; did you mean "Cross slide"?'],
  ["Leadscrew", 'there is no handwheel "Leadscrew"; there are "Cross slide", "Top slide"'],
  ["", 'there is no handwheel ""; there are "Cross slide"'],
])("%s is refused", (typed, words) => expect(() => wheelNamed(typed, known)).toThrow(words));

test("a sheet without handwheels says that naming one changes nothing on it", async () => {
  const demo = "templates/machines/boathouse.yaml";
  const asked = (sheet: string) =>
    witnessmark("print", demo, "--sheet", sheet, "--handwheel", "cross", "--out", folder());
  expect((await asked("belt-card")).err).toContain("belt-card sheet shows no handwheel: --handwheel changes nothing");
  expect((await asked("turns")).err).not.toContain("changes nothing");
});

test("print and verify take a part of a name", async () => {
  const lathe = file(
    "name: L\nhandwheels:\n  - { name: Cross slide, feed: 2 mm, dial: { shape: drum, wrap: 100, width: 10, divisions: 0.02 mm } }\n  - { name: Barrel, feed: 2 mm }\n",
  );
  const printed = await witnessmark("print", lathe, "--sheet", "dial", "--handwheel", "cross", "--out", folder());
  expect(printed).toMatchObject({ code: 0 });
  const verified = await witnessmark("verify", lathe, "--handwheel", "cross", "--measured", "100.1");
  expect(verified.out).toContain("Cross slide: ");
  const missed = await witnessmark("verify", lathe, "--handwheel", "Crosslide", "--measured", "100.1");
  expect(missed).toMatchObject({ code: 1, err: expect.stringContaining('did you mean "Cross slide"?') });
});
