import { aircraftMetals } from "./published/aircraftMetals.js";
import { carvill } from "./published/carvill.js";
import { combustibleMetals } from "./published/combustibleMetals.js";
import { commonPractice } from "./published/commonPractice.js";
import { elHofy } from "./published/elHofy.js";
import { feedSheet } from "./published/feedSheet.js";
import { jones } from "./published/jones.js";
import { lightMetals } from "./published/lightMetals.js";
import { magnesiumSheet } from "./published/magnesiumSheet.js";
import { milton } from "./published/milton.js";
import { navy } from "./published/navy.js";
import { plasticsMachining } from "./published/plasticsMachining.js";
import { plasticsTurning } from "./published/plasticsTurning.js";
import { pocketBook } from "./published/pocketBook.js";
import { recipes } from "./published/recipes.js";
import { safetyAtWork } from "./published/safetyAtWork.js";
import type { PublishedFeed, PublishedSpeed, Source } from "./published/source.js";
import { speedSheet } from "./published/speedSheet.js";
import { tapSpeeds } from "./published/tapSpeeds.js";
import { tapTable } from "./published/tapTable.js";
import { tc9524 } from "./published/tc9524.js";
import { tm1420 } from "./published/tm1420.js";
import { zerbe } from "./published/zerbe.js";

/** Everything that figures are taken from, in the order in which sources are named where several have one. Left out of them on
 *  purpose, as a light bench lathe does not reach them: in turning, heavy-lathe and negative-rake tests, cutting under a
 *  flood of coolant, carbide figures of plastics suppliers, and nylon at 126 to 300 m/min (Carvill 5.7.5) beside the 40 to
 *  50 that names high-speed steel; in drilling, bronze at 200 to 300 ft/min (it names no bronze, and phosphor bronze is cut
 *  at 13 m/min), aluminium at 195 to 390 m/min and nylon at 120 to 300 m/min (industrial). */
export const sources: readonly Source[] = [
  jones,
  navy,
  speedSheet,
  aircraftMetals,
  carvill,
  plasticsTurning,
  elHofy,
  lightMetals,
  tc9524,
  zerbe,
  pocketBook,
  recipes,
  milton,
  tapTable,
  tapSpeeds,
  feedSheet,
  magnesiumSheet,
  plasticsMachining,
  tm1420,
  combustibleMetals,
  safetyAtWork,
  commonPractice,
];

/** Every published cutting speed, each row with its source. */
export const cuttingSpeeds: readonly PublishedSpeed[] = sources.flatMap(({ key, speeds = [] }) =>
  speeds.map((row) => ({ ...row, source: key })),
);

/** Every published feed, likewise. */
export const publishedFeeds: readonly PublishedFeed[] = sources.flatMap(({ key, feeds = [] }) =>
  feeds.map((row) => ({ ...row, source: key })),
);
