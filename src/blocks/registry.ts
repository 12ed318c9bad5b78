import type { Findings } from "../findings/findings.js";
import { dialChoices } from "./dial/dialChoices.js";
import { angleScales, dialPieces, linearScales, piecesToCut } from "./dial/dialPieces.js";
import { engraving } from "./dial/engraving.js";
import { ringCutting } from "./dial/ringCutting.js";
import { startReadingTables } from "./dial/startReadings.js";
import { verniers } from "./dial/verniers.js";
import { allCautions } from "./front/allCautions.js";
import { speedList } from "./front/speedList.js";
import { wheelList } from "./front/wheelList.js";
import { driveForm } from "./measuring/driveForm.js";
import { measuredFooting, measuredReport } from "./measuring/measuredReport.js";
import { handwheelForm } from "./measuring/measuringForm.js";
import { printerCheck } from "./measuring/printerCheck.js";
import { naming, trueSized, yielding } from "./shared/block.js";
import { cautionLines } from "./shared/cautions.js";
import { wordLines } from "./shared/wordLines.js";
import { beltTable } from "./speeds/beltTable.js";
import { drillBars } from "./speeds/drillBars.js";
import { driveNotes } from "./speeds/driveNotes.js";
import { namedOnCards, positionTable, withoutLastCaution } from "./speeds/positions.js";
import { namedOnDiagram, speedDiagram } from "./speeds/speedDiagram.js";
import { speedTree } from "./speeds/speedTree.js";
import { studentExercises, studentSide } from "./student/sides.js";
import { angleGauges } from "./work/angleGauges.js";
import { drillDepth } from "./work/drillDepth.js";
import { gaugeBlocks } from "./work/gaugeBlocks.js";
import { handFeedTables, publishedFeedLines } from "./work/handFeedTables.js";
import { planBatch } from "./work/planBatch.js";
import { planHead } from "./work/planHead.js";
import { planSteps } from "./work/planSteps.js";
import { spindleStop } from "./work/spindleStop.js";
import { stopSettings } from "./work/stopSettings.js";
import { taperSwing } from "./work/taperSwing.js";
import { taperTable } from "./work/taperTable.js";
import { threadTable } from "./work/threadTable.js";
import { turnTables } from "./work/turnTables.js";

const jobMaterial = ({ job }: Findings): readonly string[] => (job === undefined ? [] : [job.material]);

/** Every block that a sheet template may name. */
export const blocks = {
  positions: yielding(naming(positionTable, namedOnCards), withoutLastCaution),
  "speed diagram": naming(speedDiagram, namedOnDiagram),
  "speed tree": speedTree,
  belts: beltTable,
  "hand feed": naming(handFeedTables),
  "published feeds": naming(publishedFeedLines),
  "drill bars": naming(drillBars),
  "drill depth": naming(drillDepth),
  words: wordLines,
  "drive notes": driveNotes,
  cautions: cautionLines,
  "all cautions": allCautions,
  "speed list": speedList,
  "handwheel list": wheelList,
  "turn tables": turnTables,
  "handwheel form": handwheelForm,
  "drive form": driveForm,
  "printer check": printerCheck,
  "measured report": measuredReport,
  "measured footing": measuredFooting,
  "plan head": naming(planHead, jobMaterial),
  "plan steps": naming(planSteps, jobMaterial),
  "plan batch": planBatch,
  "stop settings": stopSettings,
  "gauge blocks": gaugeBlocks,
  "spindle stop": spindleStop,
  "student side": naming(studentSide),
  "student exercises": naming(studentExercises),
  "thread table": threadTable,
  "taper table": taperTable,
  "taper swing": taperSwing,
  "angle gauges": trueSized(angleGauges),
  pieces: trueSized(piecesToCut),
  "dial pieces": trueSized(dialPieces),
  "dial choices": trueSized(dialChoices),
  verniers: trueSized(verniers),
  engraving,
  "start readings": startReadingTables,
  "ring cutting": ringCutting,
  "linear scales": trueSized(linearScales),
  "angle scales": trueSized(angleScales),
} as const;

export type BlockName = keyof typeof blocks;
