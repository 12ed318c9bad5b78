import { expect, test } from "vitest";
import { readMachine } from "../../src/machine/read.js";

const motor = (speed: string) =>
  readMachine(
    `name: V\ndrive: { motor: { speed: ${speed} }, stages: [{ name: b, steps: [{ driver: 60, driven: 60 }] }] }\n`,
  );

test.each(["[300, 3000]", "300 to 3000", "300-3000", "300 - 3000 rpm", "300 rpm – 3000 rpm", '"[300, 3000]"'])(
  "a motor of %s goes from 300 to 3000 rpm",
  (speed) => {
    expect(motor(speed).machine?.drive?.motor).toMatchObject({ slowestRpm: 300, fastestRpm: 3000 });
  },
);

test.each(["3000 to 300", "300 to fast", "300-", "-300", "300 to 1e9"])("one of %s is refused", (speed) => {
  expect(motor(speed).problems.filter(({ severity }) => severity === "error").length).toBe(1);
});
