import { carbide, highSpeedSteel, rows, type Source } from "./source.js";

const common = { unit: "ft/min", confidence: "read" } as const;

type Range = readonly [number, number];
type Grade = readonly [material: string, grade: string, roughing: Range, finishing: Range];

const roughAndFinish = (tool: string, grades: readonly Grade[]) =>
  grades.flatMap(([material, note, roughing, finishing]) =>
    (
      [
        ["turning", roughing],
        ["finish turning", finishing],
      ] as const
    ).flatMap(([operation, range]) =>
      rows({ ...common, operation, tool, where: "table 2-8, p. 2-72", namesCut: true }, [[material, ...range, note]]),
    ),
  );

export const aircraftMetals: Source = {
  key: "TO1-1A-9",
  title: "USAF T.O. 1-1A-9, Aerospace Metals",
  speeds: [
    ...roughAndFinish(highSpeedSteel, [
      ["stainless steel", "300 series", [20, 40], [50, 80]],
      ["free-cutting stainless steel", "430F and 416", [30, 60], [75, 120]],
      ["free-cutting stainless steel", "303 and 420F", [25, 55], [65, 105]],
    ]),
    ...roughAndFinish(carbide, [
      ["stainless steel", "300 series", [150, 200], [150, 300]],
      ["free-cutting stainless steel", "430F and 416", [225, 300], [225, 450]],
      ["free-cutting stainless steel", "303 and 420F", [175, 240], [195, 350]],
    ]),
    ...[highSpeedSteel, carbide].flatMap((tool) =>
      rows({ ...common, operation: "turning", tool, where: "ch. 4, safety practices" }, [
        ["magnesium", 500, 700, "keep below 700 ft/min: chips catch fire"],
      ]),
    ),
  ],
};
