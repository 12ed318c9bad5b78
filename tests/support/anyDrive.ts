import fc from "fast-check";
import { anyName, type Lengths, someOf, sometimes, within } from "./anyValues.js";

type Step = { label?: string; driver?: number; driven?: number; teeth?: number[][] };
type Motor = { speed?: number | string | number[]; speeds?: number[]; mains?: string; by?: string };
type Stage = { name: string; centres?: number; crossed?: boolean; idler?: boolean; steps: Step[] };

const label = (longest: number) =>
  fc.oneof(
    anyName.map((name) => name.slice(0, longest).trim() || "A"),
    someOf(["A", "B", "C", "low", "1"]),
  );

/** Step pulleys whose two diameters add up alike, so that one belt serves all. */
const pulleys = (least: number, most: number, longest: number): fc.Arbitrary<Step[]> =>
  fc
    .record({
      count: fc.integer({ min: least, max: most }),
      sum: within(110, 180),
      labels: fc.uniqueArray(label(longest), { minLength: most, maxLength: most, size: "max" }),
      named: fc.boolean(),
    })
    .map(({ count, sum, labels, named }) =>
      Array.from({ length: count }, (_, index) => {
        const driver = sum * (0.65 - (count === 1 ? 0 : (0.3 * index) / (count - 1)));
        return { ...(named && { label: labels[index] as string }), driver, driven: sum - driver };
      }),
    );

const single: fc.Arbitrary<Stage> = fc.record({
  name: anyName,
  steps: fc.tuple(within(40, 60), within(100, 160)).map(([driver, driven]) => [{ driver, driven }]),
});
const belt = (least: number, most: number, longest: number): fc.Arbitrary<Stage> =>
  fc
    .record({
      name: anyName,
      centres: sometimes(6, within(190, 400)),
      crossed: sometimes(1, fc.constant(true)),
      steps: pulleys(least, most, longest),
    })
    .map(({ centres, crossed, ...stage }) => ({ ...stage, ...(centres && { centres }), ...(crossed && { crossed }) }));
const gears: fc.Arbitrary<Stage> = fc.record({
  name: anyName,
  steps: fc.constantFrom<Step[][]>(
    [
      { label: "open" },
      {
        label: "geared",
        teeth: [
          [20, 60],
          [18, 54],
        ],
      },
    ],
    [{ label: "direct" }, { label: "back gear", teeth: [[20, 35, 60]] }],
  ),
});

/** From one belt to a motor belt, two step belts and a back gear; up to 30 positions. */
const anyStages: fc.Arbitrary<Stage[]> = fc.oneof(
  fc.tuple(belt(1, 6, 60)),
  fc.tuple(belt(7, 30, 60)),
  fc.tuple(belt(2, 5, 60), gears),
  fc.tuple(single, belt(2, 5, 20), gears),
  fc.tuple(belt(2, 4, 30), belt(2, 4, 30)),
  fc.tuple(single, belt(2, 3, 60), belt(2, 4, 12), gears),
);

/** A drive, and sometimes speeds that were measured at some of its positions, a few per cent below what it computes. */
export const anyDrive = ({ write }: Lengths) =>
  fc
    .record({
      motor: fc.oneof<fc.Arbitrary<Motor>[]>(
        fc.record({ speed: fc.constantFrom("1425 rpm", 2850, "950 rpm") }),
        fc.record({ speed: fc.constantFrom(1425, 1725), mains: fc.constantFrom("50 Hz", "60 Hz") }),
        fc.constant({ speed: [300, 3000] }),
        fc.constant({ speeds: [710, 1425] }),
        fc.constant({ speed: 120, by: "treadle" }),
      ),
      belt: sometimes(6, fc.constantFrom("vee", "round, 5 mm", "flat, 2 mm", "vee, A")),
      reverses: sometimes(3, fc.constant(true)),
      stages: anyStages,
      cover: sometimes(6, anyCover(write)),
      slip: within(0.02, 0.04),
      measured: sometimes(5, fc.array(fc.integer({ min: 0, max: 29 }), { minLength: 1, maxLength: 6, size: "max" })),
    })
    .map(({ motor, stages, slip, measured, belt, reverses, cover }) => {
      const tachometer =
        measured &&
        typeof motor.speed !== "object" &&
        motor.speed !== undefined &&
        readings(stages, Number.parseFloat(String(motor.speed)), slip, measured);
      return {
        motor,
        ...(belt && { belt }),
        ...(reverses && { reverses }),
        stages: stages.map(({ steps, centres, ...stage }) => ({
          ...stage,
          ...(centres && { centres: write(centres) }),
          steps: steps.map(({ driver, driven, ...step }) => ({
            ...step,
            ...(driver && driven && { driver: write(driver), driven: write(driven) }),
          })),
        })),
        ...(cover && { cover }),
        ...(tachometer && tachometer.length > 0 && { tachometer }),
      };
    });

function readings(stages: readonly Stage[], motor: number, slip: number, wanted: readonly number[]) {
  let positions: { labels: string[]; speed: number }[] = [{ labels: [], speed: motor }];
  for (const { steps } of stages)
    positions = positions.flatMap(({ labels, speed }) =>
      steps.map((step, index) => ({
        labels: steps.length > 1 ? [...labels, step.label ?? letter(index)] : labels,
        speed: speed * ratio(step) * (step.driver ? 1 - slip : 1),
      })),
    );
  const chosen = [...new Set(wanted.map((index) => index % positions.length))];
  return chosen.flatMap((index) => {
    const { labels, speed } = positions[index] as (typeof positions)[number];
    return labels.length === 0 ? [] : [{ position: labels, speed: Math.round(speed) }];
  });
}

const letter = (index: number) => (index < 26 ? String.fromCharCode(65 + index) : String(index + 1));

const ratio = ({ driver, driven, teeth = [] }: Step): number =>
  driver && driven
    ? driver / driven
    : teeth.reduce((product, pair) => (product * (pair[0] ?? 1)) / (pair.at(-1) ?? 1), 1);

const anyCover = (write: Lengths["write"]) =>
  fc
    .constantFrom(
      { size: [150, 110], holes: [] },
      {
        size: [150, 110],
        holes: [
          [8, 8, 5],
          [142, 102, 5],
        ],
      },
      { size: [90, 60], holes: [] },
      { size: [90, 60], holes: [[45, 6, 4]] },
      { size: [110, 150], holes: [[55, 75, 12]] },
      { size: [180, 120], holes: [] },
    )
    .map(({ size: [width = 0, height = 0], holes }) => ({
      width: write(width),
      height: write(height),
      corner: write(4),
      ...(holes.length > 0 && { holes: holes.map((hole) => hole.map(write)) }),
    }));
