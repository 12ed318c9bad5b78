import { cautionLines } from "./cautions.js";
import { dialPieces } from "./dialPieces.js";
import { driveNotes } from "./driveNotes.js";
import { positionTiles } from "./positions.js";
import { speedTable } from "./speedTable.js";
import { turnTables } from "./turnTables.js";

/** Every block that a sheet template may name. */
export const blocks = {
  positions: positionTiles,
  "speed table": speedTable,
  "drive notes": driveNotes,
  cautions: cautionLines,
  "turn tables": turnTables,
  "dial pieces": dialPieces,
} as const;

export type BlockName = keyof typeof blocks;
