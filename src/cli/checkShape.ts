import * as z from "zod/mini";

/** The object that `check --json` prints, in every case: published as templates/check.schema.json, and what the tests hold every output
 *  against. Not loaded by any command. Lengths mm, speeds rpm; null where nothing is known. */

const choice = {
  divisionValueMm: z.number(),
  divisionLabel: z.string(),
  divisions: z.number(),
  rows: z.number(),
  closure: z.string(),
  leftOverMm: z.number(),
  errorPerTurnMm: z.number(),
  errorOverTravelMm: z.number(),
  overTravelMm: z.nullable(z.number()),
  spacingMm: z.number(),
};

const dial = z.strictObject({
  shape: z.enum(["drum", "face", "bevel"]),
  ...choice,
  stripLengthMm: z.nullable(z.number()),
  choices: z.array(z.strictObject(choice)),
  second: z.nullable(z.strictObject(choice)),
  vernier: z.nullable(z.strictObject({ parts: z.number(), spans: z.number(), leastCountMm: z.number() })),
});

const handwheel = z.strictObject({
  name: z.string(),
  reads: z.enum(["travel", "diameter"]),
  feedPerTurn: z.nullable(
    z.strictObject({
      mm: z.number(),
      uncertaintyMm: z.nullable(z.number()),
      from: z.enum(["readings", "stated", "screw", "rack"]),
    }),
  ),
  lostMotionMm: z.nullable(z.number()),
  dial: z.nullable(dial),
});

const speeds = z.array(
  z.strictObject({
    position: z.string(),
    rpm: z.nullable(z.number()),
    slowestRpm: z.nullable(z.number()),
    highestRpm: z.number(),
    limit: z.nullable(z.enum(["wholly", "in part"])),
    measureFirst: z.boolean(),
    doubtful: z.array(z.number()),
    from: z.enum(["measured", "slip", "ratio", "unknown"]),
    byRatioRpm: z.number(),
    slip: z.nullable(z.number()),
  }),
);

const place = { line: z.nullable(z.int().check(z.gte(1))), column: z.nullable(z.int().check(z.gte(1))) };
const findings = z.array(
  z.strictObject({
    kind: z.enum(["refused", "take care", "fault"]),
    step: z.nullable(z.int().check(z.gte(1))),
    ...place,
    code: z.string(),
    message: z.string(),
  }),
);

export const checkShape = z.strictObject({
  name: z.nullable(z.string()),
  handwheels: z.array(handwheel),
  speeds,
  slip: z.nullable(z.number()),
  problems: z.array(
    z.strictObject({
      severity: z.enum(["error", "warning"]),
      ...place,
      code: z.string(),
      message: z.string(),
      /** Another file than the one that was named: a CSV beside it. */
      file: z.optional(z.string()),
    }),
  ),
  supposed: z.optional(z.strictObject({ changes: z.array(z.string()), speeds })),
  printed: z.optional(
    z.strictObject({
      dials: z.array(
        z.strictObject({
          wheel: z.string(),
          revision: z.nullable(z.string()),
          replace: z.boolean(),
          why: z.string(),
        }),
      ),
      sheets: z.array(z.strictObject({ name: z.string(), revision: z.nullable(z.string()), why: z.string() })),
    }),
  ),
  jobs: z.optional(
    z.array(
      z.strictObject({
        name: z.nullable(z.string()),
        file: z.string(),
        refused: z.boolean(),
        beltChanges: z.nullable(z.number()),
        minutes: z.nullable(z.number()),
        findings,
      }),
    ),
  ),
});
