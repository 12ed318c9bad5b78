import fc from "fast-check";
import { type Lengths, sometimes, within } from "./anyValues.js";

/** One turn's travel, mm, as screws and racks of small machines have it. */
const perTurn = fc.oneof(
  fc.constantFrom(1, 1.25, 1.5, 2, 2.5, 3, 4, 5, 25.4 / 10, 25.4 / 12, 25.4 / 16, 25.4 / 20),
  within(0.5, 8),
);

const shape = ({ write }: Lengths) =>
  fc.oneof(
    fc
      .record({ diameter: within(14, 150), width: within(4, 20), lap: sometimes(3, fc.constant(5)) })
      .map(({ diameter, width, lap }) => ({
        shape: "drum",
        ...{ diameter: write(diameter), width: write(width) },
        ...(lap && { lap: write(lap) }),
      })),
    fc.record({ outside: within(36, 160), ring: within(5, 14), index: anyIndex }).map(({ outside, ring, index }) => ({
      shape: "face",
      ...{ outside: write(outside), inside: write(outside - 2 * ring) },
      ...(index && { index }),
    })),
    fc
      .record({ diameter: within(26, 110), cone: within(2, 10), width: within(5.2, 12), index: anyIndex })
      .map(({ diameter, cone, width, index }) => ({
        shape: "bevel",
        ...{ diameter: write(diameter), smallDiameter: write(diameter - cone), width: write(width) },
        ...(index && { index }),
      })),
  );
const anyIndex = sometimes(3, fc.constantFrom("top", "right", "bottom", "left"));

const wishes = fc
  .record({
    increases: sometimes(5, fc.constantFrom("clockwise", "anticlockwise")),
    closure: sometimes(5, fc.constantFrom("even", "true", "rows")),
    divisions: sometimes(3, fc.constantFrom("0.02 mm", "0.05 mm", "0.001 in", "0.1 mm")),
    second: sometimes(2, fc.constantFrom("0.001 in", "0.02 mm", "0.05 mm")),
    vernier: sometimes(3, fc.constantFrom(4, 5, 10)),
    fixed: sometimes(2, fc.constant(true)),
  })
  .map((wish) => Object.fromEntries(Object.entries(wish).filter(([, value]) => value !== undefined)));

/** Readings of a slide that is a little worn and loses motion, as an indicator shows them. */
const readings = ({ units }: Lengths, mm: number) =>
  fc
    .record({
      count: fc.integer({ min: 6, max: 28 }),
      lost: within(0.02, 0.3),
      wave: within(0, 0.01),
      back: fc.boolean(),
    })
    .map(({ count, lost, wave, back }) => {
      const [per, gauge] = units === "mm" ? [1, 0.01] : [25.4, 0.0005];
      const read = (value: number) => Number((Math.round(value / per / gauge) * gauge).toFixed(4));
      const turns = Array.from({ length: count }, (_, index) => index);
      const travel = turns.map((turn) => read(turn * mm + wave * Math.sin(turn)));
      return {
        gauge,
        turns,
        travel,
        ...(back && { return: turns.map((turn) => read(turn * mm + wave * Math.sin(turn) + lost)) }),
      };
    });

const feed = (lengths: Lengths) =>
  perTurn.chain((mm) => {
    const { write } = lengths;
    const exact = lengths.units === "mm" ? Number(mm.toFixed(4)) : Number((mm / 25.4).toFixed(5));
    return fc.oneof(
      fc.constant(exact),
      fc.integer({ min: 4, max: 40 }).map((tpi) => `${tpi} tpi`),
      fc.record({ perTurn: fc.constant(exact), uncertainty: within(0.0005, 0.002).map((value) => `${value} mm`) }),
      fc.record({
        rack: fc.constantFrom({ module: 1, teeth: 14 }, { pitch: "1/4 in", teeth: 12, reduction: [20, 60] }),
      }),
      fc.record({ nominal: fc.constant(write(Math.round(mm * 2) / 2 || 0.5)), readings: readings(lengths, mm) }),
    );
  });

/** Each of them at most once in a file. */
const movements = ["across", "along", "angled", "barrel", "quill"] as const;

const handwheel = (lengths: Lengths, name: string, moves: (typeof movements)[number] | undefined) =>
  fc
    .record({
      reads: sometimes(5, fc.constantFrom("travel", "diameter")),
      moves: sometimes(3, fc.constant(moves)),
      travel: sometimes(8, within(30, 300).map(lengths.write)),
      feed: sometimes(9, feed(lengths)),
      dial: sometimes(
        8,
        fc.tuple(shape(lengths), wishes).map(([form, wish]) => ({ ...form, ...wish })),
      ),
      oldDial: sometimes(2, fc.constant({ reads: "travel", perTurn: "2 mm" })),
      distances: sometimes(
        2,
        fc.array(within(0.2, 20).map(lengths.write), { minLength: 1, maxLength: 8, size: "max" }),
      ),
    })
    .map((made) => ({ name, ...Object.fromEntries(Object.entries(made).filter(([, value]) => value !== undefined)) }));

/** One to ten handwheels of all shapes under given names. */
export const anyHandwheels = (lengths: Lengths, names: readonly string[]) =>
  fc.tuple(...names.map((name, index) => handwheel(lengths, name, movements[index])));
