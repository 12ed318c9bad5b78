import fc from "fast-check";
import { stringify } from "yaml";
import { materials } from "../../src/cutting/published/materials.js";
import { compute } from "../../src/findings/compute.js";
import type { Findings } from "../../src/findings/findings.js";
import { remarks } from "../../src/findings/remarks.js";
import type { Job } from "../../src/job/job.js";
import { readJob } from "../../src/job/read.js";
import { readMachine } from "../../src/machine/read.js";
import { anyDrive } from "./anyDrive.js";
import { anyHandwheels } from "./anyHandwheels.js";
import { anyName, type Lengths, lengthsIn, someOf, sometimes, within } from "./anyValues.js";

/** A machine file as users might write it, and the job that is made on it, where there is one. */
export type AnyMachine = { readonly text: string; readonly job?: string };

const withSpeeds = materials.flatMap(({ name, withoutSpeeds }) => (withoutSpeeds ? [] : [name]));

const anyMaterials = fc
  .record({
    known: fc.shuffledSubarray(withSpeeds, { minLength: withSpeeds.length }),
    count: fc.integer({ min: 1, max: 20 }),
    own: fc.uniqueArray(anyName, { maxLength: 4 }),
  })
  .map(({ known, own, count }) => {
    const all = [...own, ...known].slice(0, count);
    return { own: own.filter((name) => all.includes(name)), all };
  });

const anyWork = (lengths: Lengths, { own, all }: { own: readonly string[]; all: readonly string[] }) =>
  fc.record(
    {
      materials: fc.constant(all),
      diameters: fc
        .uniqueArray(within(1, 120), { minLength: 1, maxLength: 14, size: "max" })
        .map((list) => [...list].sort((a, b) => a - b).map(lengths.write)),
      drills: fc
        .uniqueArray(within(0.5, 25), { minLength: 1, maxLength: 30, size: "max" })
        .map((list) => [...list].sort((a, b) => a - b).map(lengths.write)),
      firmness: fc.constantFrom("light", "firm"),
      derating: fc.constantFrom(0.5, 0.75, 0.8),
      tool: fc.constantFrom("high-speed steel", "carbide"),
      cuttingSpeeds: fc
        .tuple(fc.constantFrom("own trials", "the supplier's leaflet of the year before last"), within(8, 60))
        .map(([source, slowest]) =>
          own.flatMap((material) =>
            ["turning", "drilling"].map((operation) => ({
              material,
              operation,
              speed: [`${slowest} m/min`, `${(slowest * 1.4).toFixed(1)} m/min`],
              source,
            })),
          ),
        ),
    },
    { requiredKeys: ["materials", ...(own.length > 0 ? (["cuttingSpeeds"] as const) : [])] },
  );

const anyTapers = (lengths: Lengths) =>
  fc.array(
    fc.oneof(
      fc
        .record({ name: anyName, small: within(3, 40), more: within(0.5, 20), length: within(8, 120) })
        .map(({ name, small, more, length }) => ({
          name,
          ...{ large: lengths.write(small + more), small: lengths.write(small), length: lengths.write(length) },
        })),
      fc.record({ name: anyName, ratio: fc.integer({ min: 3, max: 60 }).map((n) => `1 in ${n}`) }),
      fc.record({ name: anyName, included: fc.integer({ min: 1, max: 120 }).map((n) => `${n} deg`) }),
    ),
    { minLength: 1, maxLength: 6, size: "max" },
  );

const anyScales = (lengths: Lengths, wheels: readonly string[]) =>
  fc.array(
    fc
      .record(
        {
          name: anyName,
          length: within(15, 300).map(lengths.write),
          width: within(4, 20).map(lengths.write),
          divisions: fc.constantFrom("1 mm", "0.5 mm", "1/16 in", "1/32 in", "0.05 in"),
          grows: fc.constantFrom("left", "right"),
          turnsOf: fc.constantFrom(...wheels, ""),
        },
        { requiredKeys: ["name", "length", "divisions"] },
      )
      .map(({ turnsOf, divisions, ...scale }) => (turnsOf ? { ...scale, turnsOf, parts: 4 } : { ...scale, divisions })),
    { minLength: 1, maxLength: 4, size: "max" },
  );

const anyAngleScales = (lengths: Lengths) =>
  fc.array(
    fc
      .record(
        {
          name: anyName,
          part: fc.constantFrom("headstock", "top slide", "vice", "spindle"),
          radius: within(30, 90).map(lengths.write),
          width: within(5, 14).map(lengths.write),
          shape: fc.constantFrom("face", "drum"),
          range: fc.integer({ min: 10, max: 120 }).map((n) => [-n, n]),
          step: fc.constantFrom(1, 2, 5),
          turns: fc.boolean(),
          vernier: fc.constantFrom(4, 6, 12),
        },
        { requiredKeys: ["name", "part", "radius"] },
      )
      .map(({ shape, range, ...scale }) =>
        scale.part === "spindle" ? scale : { ...scale, ...(shape && { shape }), ...(range && { range }) },
      ),
    { minLength: 1, maxLength: 3, size: "max" },
  );

const anyStops = (lengths: Lengths, wheels: readonly string[]) =>
  fc.array(
    fc.record(
      {
        name: anyName,
        handwheel: fc.constantFrom(...wheels),
        length: within(1, 80).map(lengths.write),
        tolerance: within(0.02, 0.5).map(lengths.write),
        parts: fc.integer({ min: 1, max: 500 }),
      },
      { requiredKeys: ["name", "handwheel", "length"] },
    ),
    { minLength: 1, maxLength: 10, size: "max" },
  );

const anyJob = fc
  .record({
    name: anyName,
    parts: fc.integer({ min: 1, max: 400 }),
    batch: fc.constantFrom("operation", "part"),
    shoulders: fc.integer({ min: 1, max: 8 }),
    extra: fc.subarray([
      "do: groove, at: 6, width: 2, to: 5, blade: 2",
      "do: chamfer, size: 0.5",
      "do: knurl, at: 30, length: 6, pitch: 0.8, pinched: true",
      "do: part, length: 38, blade: 2",
      "do: turn round, out: 14",
      "do: taper, large: 14, half: 15 deg, length: 2, cut: 0.4",
    ]),
    material: fc.constantFrom("brass", "free-cutting steel", "aluminium", "magnesium"),
  })
  .map(({ name, parts, batch, shoulders, extra, material }) => {
    const steps = [
      "do: face, depth: 0.5, cut: 0.3",
      "do: turn, to: 17 ± 0.05, length: 39, cut: 0.5, finish: 0.1",
      ...Array.from(
        { length: shoulders },
        (_, index) => `do: shoulder, to: ${16 - index} h9, length: ${36 - 3 * index}, cut: 0.4, finish: 0.1`,
      ),
      ...extra,
      "do: centre drill",
      "do: drill, diameter: 3.3, depth: 10",
      "do: tap, thread: M4, depth: 7",
    ];
    const head = stringify({ name, units: "mm", material, parts, batch, bar: { diameter: 18, out: 46 } });
    return `${head}steps:\n${steps.map((step) => `  - { ${step} }\n`).join("")}`;
  });

const drillJob = anyName.map(
  (name) =>
    `${stringify({ name, units: "mm", material: "mild steel", parts: 5 })}steps:\n  - { do: centre drill }\n  - { do: drill, diameter: 7.8, depth: 20 }\n  - { do: ream, diameter: 8 H7, depth: 18 }\n`,
);

const wheelName = fc.oneof(
  someOf(["Cross slide", "Top slide", "Carriage", "Tailstock barrel", "Leadscrew", "Quill", "Milling slide"]),
  anyName,
);

/** Machine files from one with a single wheel or drive to one with all that a file can hold. */
const anyFile: fc.Arbitrary<AnyMachine> = fc
  .record({
    units: fc.constantFrom("mm" as const, "in" as const),
    // Mostly as many as a lathe has.
    wheels: sometimes(
      9,
      fc
        .constantFrom(2, 3, 4, 4, 10)
        .chain((maxLength) => fc.uniqueArray(wheelName, { minLength: 1, maxLength, size: "max" })),
    ),
    stuff: anyMaterials,
    kind: fc.constantFrom("lathe", "lathe", "drill", "lathe stood on end"),
  })
  .chain(({ units, wheels = [], stuff, kind }) => {
    const lengths = lengthsIn(units);
    const withWheels = wheels.length > 0;
    const job = kind === "drill" ? drillJob : anyJob;
    return fc
      .record({
        name: anyName,
        revision: sometimes(7, fc.constantFrom(1, 12, "2b, after the new nut")),
        measured: sometimes(7, fc.constant("2026-11-01")),
        drive: withWheels ? sometimes(9, anyDrive(lengths)) : anyDrive(lengths),
        limits: sometimes(
          6,
          fc.record(
            {
              chuck: fc.integer({ min: 400, max: 3000 }),
              spindle: fc.integer({ min: 800, max: 4000 }),
              drill: within(4, 16).map(lengths.write),
            },
            { requiredKeys: [] },
          ),
        ),
        handwheels: withWheels ? anyHandwheels(lengths, wheels) : fc.constant(undefined),
        stops: withWheels ? sometimes(5, anyStops(lengths, wheels)) : fc.constant(undefined),
        tapers: sometimes(5, anyTapers(lengths)),
        scales: sometimes(4, anyScales(lengths, wheels)),
        angleScales: sometimes(4, anyAngleScales(lengths)),
        dividing: sometimes(4, fc.constant({ ratio: 40, plates: [someHoles, moreHoles] })),
        gears: sometimes(4, fc.constant([20, 24, 25, 28, 30, 35, 40, 45, 50, 55, 60, 63])),
        printer: sometimes(4, anyName),
        size: fc.constantFrom("A4", "A4", "A5", "Letter"),
        work: sometimes(8, anyWork(lengths, stuff)),
        job: sometimes(5, job),
      })
      .map(({ printer, size, job, ...file }) => ({
        text: stringify(
          dropped({
            ...{ kind, units, ...file },
            ...(printer && {
              printers: {
                [printer]: { across: "199.3 of 200", down: "250.4 of 250", diagonals: ["320.1 mm", "319.6 mm"] },
              },
            }),
            paper: { size, ...(printer && { printer }) },
          }),
          { lineWidth: 0 },
        ),
        ...(job && { job }),
      }));
  });

/** Those that the program takes. */
export const anyMachine = anyFile.filter((made) => sound(made) !== undefined);

const someHoles = [15, 16, 17, 18, 19, 20];
const moreHoles = [21, 23, 27, 29, 31, 33];

/** Without keys that were left out. */
const dropped = <T extends object>(record: T): Partial<T> =>
  Object.fromEntries(Object.entries(record).filter(([, value]) => value !== undefined)) as Partial<T>;

const found = new WeakMap<AnyMachine, { readonly findings?: Findings }>();

/** The findings of a machine with its job; undefined where the program refuses the file. */
export function sound(made: AnyMachine): Findings | undefined {
  const known = found.get(made);
  if (known !== undefined) return known.findings;
  const findings = findingsOf(made);
  found.set(made, { ...(findings && { findings }) });
  return findings;
}

function findingsOf({ text, job }: AnyMachine): Findings | undefined {
  const { machine, problems } = readMachine(text);
  if (machine === undefined || problems.some(({ severity }) => severity === "error")) return undefined;
  const findings = compute(machine);
  if (remarks(findings).some(({ severity }) => severity === "error")) return undefined;
  const read: Job | undefined = job === undefined ? undefined : readJob(job).job;
  return { ...findings, ...(read && { job: read }) };
}
