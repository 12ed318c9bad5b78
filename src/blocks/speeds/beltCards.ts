import { hazardOf } from "../../cutting/hazards.js";
import { materialName } from "../../cutting/materials.js";
import type { Drawing, Mark } from "../../drawing/drawing.js";
import { group } from "../../drawing/shapes.js";
import { textWidth } from "../../drawing/text.js";
import type { SpeedFinding } from "../../drive/finding.js";
import { unfitBelts } from "../../findings/beltSums.js";
import type { Findings } from "../../findings/findings.js";
import { beginWith } from "../../findings/limits.js";
import { speedDoubt } from "../../findings/speedDoubt.js";
import type { Use } from "../../findings/uses.js";
import type { Drive } from "../../machine/machine.js";
import { smallestOf } from "../../quantity/extremes.js";
import { say } from "../../words/say.js";
import type { Run } from "../shared/block.js";
import { type CautionPlace, cautionWords, strip } from "../shared/cautions.js";
import { drivePicture, pictureRoom } from "../shared/drivePicture.js";
import { unlessNoRoom } from "../shared/noRoom.js";
import { paragraph } from "../shared/paragraph.js";
import { size } from "../shared/style.js";
import { type BeltCard, positionName } from "./beltCard.js";
import { type BeltTable, beltTableOf, type Density, headingHeight, heightsOf } from "./beltMeasure.js";
import { below, beside, type Plan, planned, type Share, type Worth } from "./beltPlan.js";
import { drawnTable } from "./beltRows.js";

export type CardRoom = {
  readonly width: number;
  readonly height: number;
  /** Of the first card, where more follow: other blocks may share the last alone. */
  readonly first: number;
  readonly cards: number;
  readonly caution: string;
  readonly use: Use;
};

/** What a plan has no room for: materials, and where they are told; the pulleys. */
type Lacks = { readonly dropped: readonly string[]; readonly told: FurtherTold } & Pick<Plan, "bare">;
/** Materials that the cards leave out: named on the first, or on those after it; on each how many. */
type FurtherTold = "first" | "others" | "number";

/** Between what stands below one another. */
const gap = 2;
const widestPicture = 44;

/** A drawing for each card, and how many materials they leave out for want of room; of cards that are more than were wished, all. */
export type BeltCards = { readonly drawings: readonly Drawing[] } & Worth;

/** A position table with its pulleys laid out on as few cards as will do, a drawing each. `key`: what signs stand for, on each card,
 *  and in which type. */
export function beltCards(
  card: BeltCard,
  findings: Findings,
  room: CardRoom,
  { density, key }: { readonly density: Density; readonly key: { readonly words: string; readonly size: number } },
): BeltCards {
  const drive = findings.machine.drive as Drive;
  // Where no way of the drive is told, nothing stands upright.
  const ways = card.rows.every(({ belts, way }) => belts.length > 0 && way !== "");
  const also = card.rows.some((row) => row.also.length > 0);
  const tables = (ways ? [false, true] : [false]).flatMap((turned) =>
    (also ? [false, true] : [false]).map((below) => beltTableOf(card, room.width, { turned, below, density })),
  );
  const begin = beginWith(findings.drive?.speeds ?? [], findings.machine.limits);
  const nameOf = (speed: SpeedFinding) => positionName(speed, drive.stages);
  // Where there is one position alone nothing else can be begun with.
  const only = (findings.drive?.speeds.length ?? 0) < 2;
  const drawn = begin === undefined ? [] : [say("belt card.begin with", { position: nameOf(begin) })];
  const stages = unfitBelts(drive).map(({ name }) => name);
  const unfit = stages.length === 0 ? [] : [say("belt card.one belt", { stages: stages.join(", ") })];
  /** What one begins with where its row is; where the pulleys are they are drawn so, or as some row of that card says. */
  const beginning = (shown: readonly number[], pictured: boolean): string[] => {
    if (only) return [];
    if (begin !== undefined && card.begin !== undefined && shown.includes(card.begin))
      return pictured ? drawn : [say("belt card.begin", { position: nameOf(begin) })];
    const own = pictured ? card.beginOf(shown) : undefined;
    if (own === undefined) return [];
    const words = say("belt card.drawn", { position: nameOf(own) });
    // A longer name than was planned for: the picture says it too.
    return longer(words, drawn[0] ?? "") ? [] : [words];
  };
  const head = headOf(findings, room);
  const furtherWords = (first: boolean, { dropped, told }: Lacks): string[] => {
    const all = [...dropped, ...card.further];
    if (all.length === 0) return [];
    if (told === "number") return [say("belt card.further", { n: all.length })];
    if (first !== (told === "first")) return [];
    const names = { materials: all.map(materialName).join(", ") };
    const hazardous = all.some((material) => hazardOf(material) !== undefined);
    return [hazardous ? say("belt card.further with cautions", names) : say("belt card.further named", names)];
  };
  const foot = (share: Share, first: boolean, lacks: Lacks, width: number, pictured = first): Drawing => {
    const shown = rowsOf(share);
    const words = [
      ...card.notes(shown, share.columns),
      ...beginning(shown, pictured),
      ...(first ? unfit : []),
      ...furtherWords(first, lacks),
      ...(first && lacks.bare ? [say("belt card.no pulleys")] : []),
    ];
    return stacked(
      [
        ...said(words.join(" "), width),
        ...said(key.words, width, { size: key.size, gap: 0.8 }),
        ...said(drillCaution(room), width, { weight: "bold" }),
      ],
      width,
    );
  };
  const all: Share = { columns: [...card.columns.keys()], rows: [0, card.rows.length] };
  // With pulleys on a card of their own.
  const wordsApart = (lacks: Lacks) => {
    // On every card with rows the number stands already.
    const further = lacks.told === "number" ? [] : furtherWords(true, lacks);
    return stacked(
      [
        ...said([...drawn, ...unfit, ...further].join(" "), room.width),
        ...said(key.words, room.width, { size: key.size, gap: 0.8 }),
      ],
      room.width,
    );
  };
  const roomApart = (lacks: Lacks) => room.height - head.height - wordsApart(lacks).height - gap;
  const least = pictureRoom(drive, false);
  const right = room.width - least.width - beside;
  const wholeOf = (first: boolean) => (first ? room.first : room.height) - head.height;
  const bodyWith = (share: Share, first: boolean, lacks: Lacks, width = room.width) =>
    wholeOf(first) - foot(share, first, lacks, width).height - gap;
  const planWith = (lacks: Lacks, onFirst = all, onOthers = all) =>
    planned(tables, drive, {
      ...room,
      height: {
        first: bodyWith(onFirst, true, lacks),
        narrow: bodyWith(onFirst, true, lacks, Math.max(1, right)),
        other: bodyWith(onOthers, false, lacks),
        pulleys: roomApart(lacks),
        whole: wholeOf(true),
      },
    });
  const droppedBy = (plan: Plan): string[] => {
    const shown = new Set(plan.shares.flatMap(({ columns }) => columns));
    return card.columns.flatMap(({ materials }, index) => (shown.has(index) ? [] : materials));
  };
  let lacks: Lacks = { dropped: [], told: "number", bare: false };
  let plan = planWith(lacks);
  const left = () => card.further.length > 0 || plan.left > 0;
  /** Told so, with what the telling itself takes the room of; undefined where there is none for it. */
  const planTold = (
    told: FurtherTold,
    more: Partial<Lacks> = {},
    halves: readonly Share[] = [],
  ): { readonly plan: Plan; readonly lacks: Lacks } | undefined => {
    let own: Lacks = { ...lacks, ...more, told };
    for (let looks = 0; looks <= card.columns.length; looks++) {
      const found = planWith(own, ...halves);
      const dropped = droppedBy(found);
      if (told === "others" && found.shares.length === 1 && found.place !== "apart") return undefined;
      if (dropped.every((material) => own.dropped.includes(material))) return { plan: found, lacks: own };
      own = { ...own, dropped: [...new Set([...own.dropped, ...dropped])] };
    }
    return undefined;
  };
  /** What the fullest card leaves its rows to stand apart with what would be told on it, mm a row; below 0 where it has no room for it. */
  const spare = ({ table, place, shares }: Plan, own: Lacks): number => {
    if (place === "apart" ? own.told === "first" : own.told === "others" && shares.length === 1) return -1;
    const level = place === "top" ? pictureRoom(drive, true).height + below : 0;
    const left = shares.map((share, index) => {
      const first = index === 0;
      const narrow = first && (place === "left" || place === "side");
      const wide = first && place === "side" ? right : room.width;
      const notes = foot(share, first && place !== "apart", own, wide, first && place !== "apart" && place !== "none");
      const body = wholeOf(first) - notes.height - gap;
      const rows = leastHeight(table, share, narrow ? right : room.width);
      const over = body - rows - (first ? level : 0);
      const none = over < -1e-9 || (first && place === "left" && least.height > body + 1e-9);
      return none ? -1 : Math.max(0, over) / rowsOf(share).length;
    });
    return smallestOf(left);
  };
  if (left()) {
    ({ plan, lacks } = planTold("number") ?? { plan, lacks });
    // Named where the cards as planned have room for it, or where planning anew costs neither a card nor a material nor turns words.
    const ways = ["first", "others"] as const;
    const spared = ways.map((told) => ({ told, left: spare(plan, { ...lacks, dropped: droppedBy(plan), told }) }));
    const [widest] = spared.sort((one, other) => other.left - one.left);
    const told = widest && widest.left >= 0 ? widest.told : undefined;
    const named =
      told === undefined
        ? ways
            .flatMap((one) => unlessNoRoom(() => planTold(one)) ?? [])
            .find(
              ({ plan: own }) =>
                own.left <= plan.left &&
                own.count <= plan.count &&
                own.bare === plan.bare &&
                own.table.wayWidth <= plan.table.wayWidth,
            )
        : { plan, lacks: { ...lacks, dropped: droppedBy(plan), told } };
    if (named !== undefined) ({ plan, lacks } = named);
  }
  // A card for each half that the ways of the drive part: each has no notes but its own, which leaves more room for its rows.
  const halves = halvesOf(card.rows).map((rows): Share => ({ ...all, rows }));
  const foretold = ({ shares }: Plan) =>
    halves.length > 0 &&
    shares.length === halves.length &&
    shares.every(({ rows: [from, to] }, at) => from === halves[at]?.rows[0] && to === halves[at]?.rows[1]);
  if (plan.broken > 0 || plan.left > 0) plan = inHalves(plan) ?? plan;
  function inHalves({ left, broken }: Plan): Plan | undefined {
    const found = unlessNoRoom(() => planWith({ ...lacks, dropped: [] }, ...halves));
    if (found === undefined || found.left > 0 || !foretold(found)) return undefined;
    return left === 0 && found.broken >= broken ? undefined : found;
  }
  const most = Math.max(room.cards, plan.count);
  const tolds = ["first", "others", "number"] as const;
  const inHalvesTold = (bare: boolean) =>
    tolds
      .flatMap((told) => unlessNoRoom(() => planTold(told, { bare }, halves)) ?? [])
      .filter(({ plan: own }) => own.count <= most && foretold(own));
  if (plan.bare) {
    // Materials stand on other sheets, too; the pulleys, or a word of where they are, go before them.
    const pictured = inHalvesTold(false).find(({ plan: own }) => !own.bare);
    const anyhow = () => tolds.flatMap((told) => unlessNoRoom(() => planTold(told, { bare: true })) ?? []);
    const found =
      pictured ??
      (foretold(plan) ? inHalvesTold(true)[0] : undefined) ??
      anyhow().find(({ plan: own }) => own.count <= most);
    if (found !== undefined) ({ plan, lacks } = found);
  }
  const { table } = plan;
  const shownLack: Lacks = { ...lacks, dropped: droppedBy(plan), bare: plan.bare && lacks.bare };
  const [onFirst] = plan.shares;
  const chosen = plan.place === "apart" || onFirst === undefined ? begin : card.beginOf(rowsOf(onFirst));
  const picture = (width: number, height: number, across: boolean) =>
    drivePicture(drive, chosen?.position.steps, { width, height }, across);

  const drawings = plan.shares.map((share, index): Drawing => {
    const first = index === 0;
    const place = first ? plan.place : "none";
    const pictured = first && plan.place !== "apart" && plan.place !== "none";
    const own = place === "side" ? right : room.width;
    const notes = foot(share, first && plan.place !== "apart", shownLack, own, pictured);
    const body = wholeOf(first) - notes.height - gap;
    const parts: Mark[] = [...head.marks];
    let y = head.height;
    let x = 0;
    let height = body;
    let tall = 0;
    if (place === "top") {
      const above = picture(room.width, Math.min(body, topHeight(table, share, drive, room.width, body)), true);
      parts.push(group({ x: (room.width - above.width) / 2, y }, above.marks));
      y += above.height + below;
      height -= above.height + below;
    }
    const width = place === "left" || place === "side" ? right : room.width;
    const rows = drawnTable(table, share.columns, share.rows, width, height);
    const stands = y + rows.height + gap / 2 + notes.height;
    if (place === "left") {
      const own = Math.min(widestPicture, room.width - rows.width - beside);
      const left = picture(own, Math.max(least.height, rows.height), false);
      parts.push(group({ x: 0, y: y + Math.max(0, (rows.height - left.height) / 2) }, left.marks));
      x = own + beside;
      tall = left.height;
    }
    if (place === "side") {
      const left = picture(least.width, Math.max(least.height, stands - y), false);
      parts.push(group({ x: 0, y }, left.marks), group({ x: least.width + beside, y }, rows.marks));
      y += rows.height + gap / 2;
      parts.push(group({ x: least.width + beside, y }, notes.marks));
      return { width: room.width, height: Math.max(stands, head.height + left.height), marks: parts };
    }
    parts.push(group({ x, y }, rows.marks));
    y += Math.max(rows.height, tall) + gap / 2;
    parts.push(group({ x: 0, y }, notes.marks));
    return { width: room.width, height: y + notes.height, marks: parts };
  });
  const { broken, uneven, bare, count } = plan;
  const worth: Worth = {
    ...{ count, bare, broken, uneven },
    left: count > room.cards ? card.columns.length : plan.left,
    unnamed: left() && lacks.told === "number",
  };
  if (plan.place !== "apart") return { drawings, ...worth };
  const words = wordsApart(shownLack);
  const own = roomApart(shownLack);
  const across = least.height > own || least.width > room.width;
  const apart = picture(room.width, own, across);
  const y = head.height + apart.height + gap;
  const last: Drawing = {
    width: room.width,
    height: y + words.height,
    marks: [
      ...head.marks,
      group({ x: across ? (room.width - apart.width) / 2 : 0, y: head.height }, apart.marks),
      group({ x: 0, y }, words.marks),
    ],
  };
  return { drawings: [...drawings, last], ...worth };
}

/** Where there is nothing to say no line is left free for it. */
const said = (words: string, width: number, style: Partial<Parameters<typeof paragraph>[2]> = {}): Run[] =>
  words === "" ? [] : paragraph(words, width, { size: size.text, ...style });

const rowsOf = ({ rows: [from, to] }: Share): number[] => Array.from({ length: to - from }, (_, at) => from + at);

const longer = (words: string, other: string): boolean =>
  textWidth(words, size.text, "regular") > textWidth(other, size.text, "regular");

/** Rows up to where a way of the drive ends, nearest to the middle of all, and those from there; none where there is but one way. */
function halvesOf(rows: BeltTable["rows"]): Share["rows"][] {
  const ends = rows.flatMap(({ way }, index) => (index > 0 && rows[index - 1]?.way !== way ? [index] : []));
  const off = (end: number) => Math.abs(end - rows.length / 2);
  const [at] = ends.sort((one, other) => off(one) - off(other));
  return at === undefined
    ? []
    : [
        [0, at],
        [at, rows.length],
      ];
}

/** What the strip has said is not said again. */
function drillCaution({ use, caution }: CardRoom): string {
  if (use !== "drilling" || caution === "drill") return "";
  return caution === "belt" ? say("belt card.clamp") : say("cautions.drill");
}

/** What must be read before a number is believed. */
function headOf(findings: Findings, { width, caution }: CardRoom): Drawing {
  const runs: Run[] = [
    ...(caution === "none" ? [] : [strip(cautionWords(caution as CautionPlace, findings.machine), width)]),
    ...speedDoubt(findings).flatMap((words) => paragraph(words, width, { size: size.text, weight: "bold", gap: 0.8 })),
  ];
  const drawing = stacked(runs, width);
  return { ...drawing, height: runs.length === 0 ? 0 : drawing.height + gap };
}

/** Of rows with their heading. */
const leastHeight = (table: BeltTable, { columns, rows: [from, to] }: Share, width: number): number =>
  heightsOf(table, columns, width)
    .slice(from, to)
    .reduce((sum, own) => sum + own, headingHeight(table, columns, width));

/** What rows leave, so that pulleys above them are as large as can be. */
function topHeight(table: BeltTable, share: Share, drive: Drive, width: number, height: number): number {
  const rows = leastHeight(table, share, width);
  return Math.max(pictureRoom(drive, true).height, Math.min(0.4 * height, height - rows - below));
}

function stacked(runs: readonly Run[], width: number): Drawing {
  const marks: Mark[] = [];
  let y = 0;
  for (const { drawing, gap: above = 0 } of runs) {
    y += marks.length === 0 ? 0 : above;
    marks.push(group({ x: 0, y }, drawing.marks));
    y += drawing.height;
  }
  return { width, height: y, marks };
}
