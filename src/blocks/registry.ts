import { angleGauges } from "./angleGauges.js";
import { angleScales } from "./angleScales.js";
import { beltTable } from "./beltTable.js";
import { cautionLines } from "./cautions.js";
import { dialChoices } from "./dialChoices.js";
import { dialPieces } from "./dialPieces.js";
import { drillDepth } from "./drillDepth.js";
import { driveForm } from "./driveForm.js";
import { driveNotes } from "./driveNotes.js";
import { engraving } from "./engraving.js";
import { handFeedTables, publishedFeedLines } from "./handFeedTables.js";
import { measuredFooting, measuredReport } from "./measuredReport.js";
import { handwheelForm } from "./measuringForm.js";
import { planSteps } from "./planSteps.js";
import { positionTiles } from "./positions.js";
import { printerCheck } from "./printerCheck.js";
import { ringCutting } from "./ringCutting.js";
import { linearScales } from "./scales.js";
import { speedDiagram } from "./speedDiagram.js";
import { speedTable } from "./speedTable.js";
import { speedTree } from "./speedTree.js";
import { startReadings } from "./startReadings.js";
import { gaugeBlocks, spindleStop, stopSettings } from "./stopSettings.js";
import { studentExercises, studentSide } from "./studentSheet.js";
import { taperSwing } from "./taperSwing.js";
import { taperTable } from "./taperTable.js";
import { threadTable } from "./threadTable.js";
import { turnTables } from "./turnTables.js";
import { verniers } from "./verniers.js";
import { wordLines } from "./wordLines.js";

/** Every block that a sheet template may name. */
export const blocks = {
  positions: positionTiles,
  "speed table": speedTable,
  "speed diagram": speedDiagram,
  "speed tree": speedTree,
  belts: beltTable,
  "hand feed": handFeedTables,
  "published feeds": publishedFeedLines,
  "drill depth": drillDepth,
  words: wordLines,
  "drive notes": driveNotes,
  cautions: cautionLines,
  "turn tables": turnTables,
  "handwheel form": handwheelForm,
  "drive form": driveForm,
  "printer check": printerCheck,
  "measured report": measuredReport,
  "measured footing": measuredFooting,
  "plan steps": planSteps,
  "stop settings": stopSettings,
  "gauge blocks": gaugeBlocks,
  "spindle stop": spindleStop,
  "student side": studentSide,
  "student exercises": studentExercises,
  "thread table": threadTable,
  "taper table": taperTable,
  "taper swing": taperSwing,
  "angle gauges": angleGauges,
  "dial pieces": dialPieces,
  "dial choices": dialChoices,
  verniers,
  engraving,
  "start readings": startReadings,
  "ring cutting": ringCutting,
  "linear scales": linearScales,
  "angle scales": angleScales,
} as const;

export type BlockName = keyof typeof blocks;
