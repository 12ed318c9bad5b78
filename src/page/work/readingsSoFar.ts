import { feedPerTurn } from "../../feed/feedPerTurn.js";
import { readingsToHalve } from "../../feed/halving.js";
import { study } from "../../feed/study.js";
import { lostMotionDoubted } from "../../findings/compute.js";
import { tellNoFeed } from "../../findings/readingRemarks.js";
import { returnRemarks } from "../../findings/returnRemarks.js";
import { unknownDoubt } from "../../findings/unknownDoubt.js";
import { largestOf } from "../../quantity/extremes.js";
import { formatDoubted, formatSize } from "../../quantity/format.js";
import { parseLength } from "../../quantity/length.js";
import { parseNumber, parseTurns } from "../../quantity/number.js";
import type { ReadingsAsked, ReadingsSoFar } from "./protocol.js";

/** What readings say while they are being taken: a row that is not whole yet is left out. */
export function readingsSoFar({ units, gauge, gaugeError, temperature, rows }: ReadingsAsked): ReadingsSoFar {
  const length = (words: string) => (words.trim() === "" ? undefined : parseLength(words, units));
  const whole = rows.flatMap(({ turns, travel, back }, row) => {
    const [turn, out] = [parseTurns(turns), length(travel)];
    return turn === undefined || out === undefined ? [] : [{ row, turn, out, back: length(back) }];
  });
  const graduation = length(gauge);
  const [error, warmth] = [length(gaugeError), parseNumber(temperature)];
  const backs = whole.flatMap(({ back }) => back ?? []);
  const readings = {
    turns: whole.map(({ turn }) => turn),
    travel: whole.map(({ out }) => out),
    ...(graduation !== undefined && graduation > 0 && { gauge: graduation }),
    ...(error !== undefined && error > 0 && { gaugeError: error }),
    ...(warmth !== undefined && { temperature: warmth }),
    ...(backs.length === whole.length && backs.length > 0 && { back: backs }),
  };
  const feed = { from: "readings", ...readings } as const;
  const found = feedPerTurn(feed);
  if ("tooFew" in found || found.fit === undefined || found.measured === undefined)
    return { places: [], most: "", words: [] };
  const { fit, perTurn, uncertainty } = found;
  const beyond = study(fit, found.measured.shape, readings);
  const back = backs.length === whole.length ? { ...found, beyond } : wayBackSoFar(whole, readings);
  const lostSoFar =
    backs.length === whole.length
      ? "lost motion"
      : `lost motion so far, by ${backs.length} of ${whole.length} places; on paper once all are read:`;
  const contradicted = back?.beyond ? returnRemarks("this wheel", back.beyond, [], units) : [];
  const doubted = new Set([
    ...beyond.wild.map(({ index }) => index),
    ...(beyond.miscounted ? [beyond.miscounted.index] : []),
    ...(beyond.jump ? [beyond.jump.index] : []),
  ]);
  const wrongBack = new Map([
    ...(beyond.back?.wild ?? []).map(({ index, off }) => [index, off] as const),
    ...(beyond.back?.miscounted ? [[beyond.back.miscounted.index, 0] as const] : []),
  ]);
  const slipped = beyond.miscounted !== undefined || beyond.jump !== undefined;
  const settled = !slipped && !tellNoFeed(found);
  const odd = doubted.size + wrongBack.size > 0;
  const halve = odd || !settled || contradicted.length > 0 ? undefined : readingsToHalve(fit, feed);
  const unknown = unknownDoubt(found);
  return {
    places: whole.map(({ row, turn }, index) => ({
      row,
      turn,
      off: fit.residuals[index] ?? 0,
      doubted: doubted.has(index),
      ...(wrongBack.has(index) && { back: wrongBack.get(index) }),
    })),
    most: `±${formatSize(largestOf([...fit.residuals, ...wrongBack.values()].map(Math.abs)), units, 3)}`,
    words: [
      ...(settled
        ? [`1 turn = ${formatDoubted(perTurn, uncertainty, units, units === "mm" ? 4 : 5)}`]
        : ["these readings tell no feed yet", ...(slipped ? [] : ["look for a slip in the turns or the readings"])]),
      ...(unknown === undefined || !settled ? [] : [unknown]),
      ...(back?.lostMotion === undefined || !settled
        ? []
        : lostMotionDoubted(back.beyond)
          ? ["lost motion: not told by these readings", ...contradicted.map(({ what }) => what).slice(0, 1)]
          : [`${lostSoFar} ${formatDoubted(back.lostMotion.travel, back.lostMotion.uncertainty, units, 3)}`]),
      ...(odd ? ["the marked readings do not belong to the others: read them again"] : []),
      ...(halve === undefined
        ? []
        : [`${halve} more ${halve === 1 ? "reading" : "readings"} like these would halve the ±`]),
    ],
  };
}

type Whole = { readonly turn: number; readonly out: number; readonly back: number | undefined };

/** What the way back says before it was read to its end: from the turns that were read both ways. */
function wayBackSoFar(whole: readonly Whole[], { gauge }: { readonly gauge?: number }) {
  const both = whole.flatMap(({ turn, out, back }) => (back === undefined ? [] : [{ turn, out, back }]));
  const feed = {
    from: "readings" as const,
    turns: both.map(({ turn }) => turn),
    travel: both.map(({ out }) => out),
    back: both.map(({ back }) => back),
    ...(gauge !== undefined && { gauge }),
  };
  const found = feedPerTurn(feed);
  if ("tooFew" in found || found.fit === undefined || found.measured === undefined) return undefined;
  return { lostMotion: found.lostMotion, beyond: study(found.fit, found.measured.shape, feed) };
}
