import { highSpeedSteel, rows, type Source } from "./source.js";

export const milton: Source = {
  key: "MILTON1919",
  title: "A. S. Milton and O. K. Wohlers, A Course in Wood Turning (1919)",
  speeds: rows(
    {
      operation: "turning",
      tool: highSpeedSteel,
      unit: "rpm",
      where: "ch. II, Speed of the Lathe",
      confidence: "read",
      upTo: 76.2,
    },
    [
      [
        "hard wood",
        2400,
        3000,
        "true, balanced stock up to 3 in; larger on slower steps, over 6 in and untrue stock on the slowest",
      ],
    ],
  ),
};
