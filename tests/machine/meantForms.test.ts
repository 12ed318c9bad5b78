import { expect, test } from "vitest";
import { file, witnessmark } from "../support/command.js";

test("what is written in another form is told as it should stand", async () => {
  const { code, err } = await witnessmark(
    "check",
    file(
      "name: L\ndrive:\n  motor: 1725\n  stages: [{ name: b, steps: [{ A: 80/50 }] }]\nhandwheels: [{ name: S, feed: { readings: { turns: 0 4 8 12, travel: [0, 1, 2, 3] } } }]\n",
    ),
  );
  expect(code).toBe(1);
  expect(err).toContain("motor cannot be 1725; it must be keys and values: motor: { speed: 1725 rpm }");
  expect(err).toContain("write  { label: A, driver: 80, driven: 50 }; known are label");
  expect(err).toContain('turns cannot be "0 4 8 12"; write  turns: [0, 4, 8, 12]');
});

test("a folder that is a file is named", async () => {
  const place = file("", "pages");
  const { code, err } = await witnessmark(
    "print",
    "templates/machines/boathouse.yaml",
    "--sheet",
    "dial",
    "--out",
    place,
  );
  expect(code).toBe(1);
  expect(err).toContain(`${place} is a file: name a folder`);
});
