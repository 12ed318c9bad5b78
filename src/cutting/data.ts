import { holes } from "./published/holes.js";
import type { PublishedSpeed } from "./published/row.js";
import { tapping } from "./published/tapping.js";
import { turning } from "./published/turning.js";

export type { PublishedSpeed } from "./published/row.js";

/** Every published cutting speed, each row with its source. */
export const cuttingSpeeds: readonly PublishedSpeed[] = [...turning, ...holes, ...tapping];
