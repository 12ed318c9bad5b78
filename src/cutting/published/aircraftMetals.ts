import { carbide, highSpeedSteel, rows, type Source } from "./source.js";

const common = { operation: "turning", unit: "ft/min", confidence: "read" } as const;

export const aircraftMetals: Source = {
  key: "TO1-1A-9",
  title: "USAF T.O. 1-1A-9, Aerospace Metals",
  speeds: [
    ...rows({ ...common, tool: highSpeedSteel, where: "table 2-8, p. 2-72" }, [
      ["stainless steel", 20, 40, "300 series, roughing"],
      ["stainless steel", 50, 80, "300 series, finishing"],
      ["free-cutting stainless steel", 30, 60, "430F and 416, roughing"],
      ["free-cutting stainless steel", 75, 120, "430F and 416, finishing"],
      ["free-cutting stainless steel", 25, 55, "303 and 420F, roughing"],
      ["free-cutting stainless steel", 65, 105, "303 and 420F, finishing"],
    ]),
    ...rows({ ...common, tool: carbide, where: "table 2-8, p. 2-72" }, [
      ["stainless steel", 150, 200, "300 series, roughing"],
      ["stainless steel", 150, 300, "300 series, finishing"],
      ["free-cutting stainless steel", 225, 300, "430F and 416, roughing"],
      ["free-cutting stainless steel", 225, 450, "430F and 416, finishing"],
      ["free-cutting stainless steel", 175, 240, "303 and 420F, roughing"],
      ["free-cutting stainless steel", 195, 350, "303 and 420F, finishing"],
    ]),
    ...[highSpeedSteel, carbide].flatMap((tool) =>
      rows({ ...common, tool, where: "ch. 4, safety practices" }, [
        ["magnesium", 500, 700, "keep below 700 ft/min: chips catch fire"],
      ]),
    ),
  ],
};
