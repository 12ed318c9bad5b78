import { type BlockName, blocks } from "../blocks/registry.js";
import type { Block, LeftOut, Run } from "../blocks/shared/block.js";
import { cautionRuns } from "../blocks/shared/cautions.js";
import { materialCautions } from "../blocks/shared/materialCautions.js";
import { NoRoom, roomIn, unlessNoRoom } from "../blocks/shared/noRoom.js";
import { PULLEYS } from "../blocks/shared/stepPulleys.js";
import type { Mark } from "../drawing/drawing.js";
import type { Page, Print } from "../drawing/page.js";
import { group } from "../drawing/shapes.js";
import type { Findings, HandwheelFinding } from "../findings/findings.js";
import { type Use, usesOf } from "../findings/uses.js";
import type { Machine } from "../machine/machine.js";
import { less } from "../paper/gathered.js";
import { type Orientation, paperSize } from "../paper/paperSize.js";
import { liesAcross } from "../paper/printerCorrection.js";
import { TURN } from "../quantity/angle.js";
import { trimmedSize } from "../quantity/format.js";
import { say, translated, withinSentence } from "../words/say.js";
import { cardMarks, cardSizes, cardsOn, footIn, insidesOf, joinedAt, largestCard } from "./card.js";
import { flow } from "./flow.js";
import {
  barRoom,
  checkBars,
  correctionNote,
  footHeight,
  headHeight,
  pageFoot,
  pageHead,
  pageNotes,
} from "./furniture.js";
import { type Box, frameOn } from "./margins.js";
import { namesDanger, onEveryPage } from "./named.js";
import { has, unmet } from "./needs.js";
import { settingsFor, unknownWheel, wheelsOf } from "./ofMachine.js";
import type { Template } from "./template.js";

/** A sheet's pages, or what is missing in the machine file (or of the paper) to make them. */
export type Arranged =
  | { readonly print: Print }
  | { readonly missing: string /** In the template. */; readonly at?: string };

/** Blocks that only accompany others. */
const accompanying: readonly BlockName[] = ["cautions", "words"];

/** Lays a template's blocks out on pages. Pure: findings and a template in, drawings out. */
export function arrange(findings: Findings, template: Template): Arranged {
  const { machine } = findings;
  const here = usesOf(machine);
  if (template.for !== undefined && !here.includes(template.for))
    return { missing: say(`binder.missing ${template.for}`, { kind: machine.kind }) };
  const missing = unmet(findings, template.needs);
  if (missing !== undefined) return { missing };
  const stray = unknownWheel(template, machine);
  if (stray !== undefined) return stray;
  const made = filledYielding(findings, template, here);
  if ("missing" in made) return made;
  const { paper, frame, body, cards, card, turned, filled } = made;
  // One that is turned is drawn as it will be held, then laid on the page.
  const own = cards.map((box) => (turned && card ? { ...card, left: 0, top: 0 } : box));
  const insides = card === undefined ? [] : own.flatMap((box) => insidesOf(box, card)[made.inside ?? 0] ?? []);

  // Of cards several lie on a page.
  const perPage = Math.max(1, cards.length);
  const pages = Array.from({ length: Math.ceil(filled.length / perPage) }, (_, page) =>
    filled.slice(page * perPage, (page + 1) * perPage),
  );
  // Loose pages of two jobs must be told apart.
  const called = translated(template.title);
  const about = template.needs === "job" && findings.job ? `${called}: ${findings.job.name}` : called;
  const finished = pages.map((parts, index): Page => {
    const title = parts[0]?.title ?? about;
    const contents = parts.flatMap(({ marks }, place): Mark[] => {
      const [box, on] = [own[place], cards[place]];
      const { inside, foot } = insides[place] ?? { inside: body, foot: footIn(body) };
      const which =
        filled.length < 2 ? "" : say("page.card of", { card: index * perPage + place + 1, cards: filled.length });
      const all = [
        ...(box === undefined || card === undefined
          ? []
          : cardMarks(machine, box, foot, card, which, joinedAt(cards, place, parts.length))),
        group({ x: inside.left, y: inside.top }, marks ?? []),
      ];
      return turned && on ? [group({ x: on.left, y: on.top + on.height }, all, { turn: -TURN / 4 })] : all;
    });
    const trueSize = isTrueSize(template);
    const furniture = template.bare
      ? []
      : [
          ...pageHead(title === called ? about : title, frame),
          ...pageFoot(machine, about, index + 1, pages.length, frame),
          ...pageNotes(machine, trueSize, frame),
        ];
    const bars = template.checkBars
      ? checkBars(
          { ...frame, top: body.top, height: frame.height - headHeight },
          footHeight(machine, trueSize, frame.width),
          liesAcross(paper),
          machine.units,
        )
      : [];
    return {
      title,
      drawing: { width: paper.width, height: paper.height, marks: [...furniture, ...bars, ...contents] },
      ...(!template.bare && { correctionNote: correctionNote(machine, frame) }),
    };
  });
  const leftOut = filled
    .flatMap(leftOutOf)
    .map(({ name, remedy }) =>
      say("binder.without", { name, remedy: remedy ?? say("binder.larger paper", { paper: machine.paper.size }) }),
    );
  return {
    print: {
      sheet: template.name,
      title: [
        machine.name,
        withinSentence(called),
        ...(template.needs === "job" && findings.job ? [findings.job.name] : []),
      ].join(": "),
      pages: finished,
      ...(template.bare && { outlines: true }),
      ...(template.uncorrected && { uncorrected: true }),
      ...(leftOut.length > 0 && { leftOut }),
    },
  };
}

/** Whether the lengths on its pages count. */
const isTrueSize = ({ checkBars, card }: Template): boolean => checkBars || card !== undefined;

/** What blocks may fill. */
function bodyOf(machine: Machine, frame: Box, template: Template): Box {
  const { bare, checkBars } = template;
  const bars = checkBars ? barRoom : 0;
  return {
    left: frame.left,
    top: frame.top + (bare ? 0 : headHeight),
    width: frame.width - bars,
    height: frame.height - (bare ? 0 : headHeight + footHeight(machine, isTrueSize(template), frame.width)) - bars,
  };
}

type Subject = { readonly title: string; readonly handwheels: readonly HandwheelFinding[] };
/** A page's or a card's marks; undefined where a part is larger than it. */
type Filled = {
  readonly title: string;
  readonly marks: readonly Mark[] | undefined;
  /** Of all pages of its subject, on the first of them. */
  readonly leftOut?: readonly LeftOut[];
};

const leftOutOf = (page: Filled): readonly LeftOut[] => page.leftOut ?? [];

function fill(
  findings: Findings,
  template: Template,
  { title, handwheels }: Subject,
  here: readonly Use[],
  inner: Box,
  sheet: Sheet,
): Filled[] {
  const shown = template.blocks.filter((one) => one.for === undefined || here.includes(one.for));
  const named = shown.flatMap((one) => {
    const settings = settingsFor(one, findings.machine);
    return (blocks[one.block] as Block).materials?.(findings, settings) ?? [];
  });
  // On every page: one may lie apart from the others.
  const warned = shown.flatMap(({ block }) => (blocks[block] as Block).warnings?.(findings) ?? []);
  const hazards = materialCautions(named, inner.width, {
    sources: template.card === undefined,
    units: findings.machine.units,
  });
  const [head, taken] = stacked([...cautionRuns(warned, inner.width, "bold"), ...hazards]);
  const height = inner.height - taken;
  const runsOf = (one: (typeof shown)[number], given: number): readonly Run[] => {
    const about = wheelsOf(one, handwheels);
    // Of another wheel than the page is about.
    if (one.handwheel !== undefined && about.length === 0) return [];
    const settings = settingsFor(one, findings.machine);
    const paper = { left: inner.left, top: inner.top + taken, width: sheet.width, height: sheet.height };
    const use = one.for ?? (here[0] as Use);
    const room = { width: inner.width, height: given, before: height, paper };
    return (blocks[one.block] as Block).draw({ findings, handwheels: about, settings, use, ...room });
  };
  const drawn = shown.map((one) => ({ one, block: one.block, runs: runsOf(one, height) }));
  // Words that go with a sheet's subject are no sheet without it.
  const subject = drawn.filter(({ block }) => !accompanying.includes(block));
  if (subject.length > 0 && subject.every(({ runs }) => runs.length === 0)) return [];
  const everywhere = warned.length > 0 || template.needs === "job" || onEveryPage(named);
  const over = (marks: readonly Mark[]) => taken > 0 && (everywhere || namesDanger(named, marks));
  const pagesOf = (all: typeof drawn) =>
    flow(
      all.flatMap(({ runs }, index): readonly Run[] => (index === 0 ? runs : apart(runs))),
      inner.height,
      { height: taken, over },
    );
  let pages = pagesOf(drawn);
  const filled = drawn.filter(({ runs }) => runs.length > 0);
  if (pages.length > 1 && filled.length > 1 && filled.filter(({ block }) => gives(block)).length === 1)
    for (const share of SHARES) {
      const fewer = unlessNoRoom(() =>
        pagesOf(drawn.map((part) => (gives(part.block) ? { ...part, runs: runsOf(part.one, share * height) } : part))),
      );
      if (fewer !== undefined && fewer.length < pages.length) pages = fewer;
      if (pages.length === 1) break;
    }
  const leftOut = drawn.flatMap(({ runs }) => runs.flatMap((run) => run.leftOut ?? []));
  return pages.map((marks, index) => ({
    title,
    marks: marks && over(marks) ? [...head, group({ x: 0, y: taken }, marks)] : marks,
    ...(index === 0 && { leftOut }),
  }));
}

/** Between what two blocks show, at least, mm. */
const BETWEEN = 2.5;
const apart = ([first, ...rest]: readonly Run[]): readonly Run[] =>
  first === undefined ? [] : [{ ...first, gap: Math.max(BETWEEN, first.gap ?? 0) }, ...rest];

const gives = (name: BlockName): boolean => (blocks[name] as Block).gives === true;
/** Of a page or card, for a block that gives others of it. */
const SHARES = [0.85, 0.75, 0.65, 0.55, 0.45, 0.35];

/** Runs one below the other, and the height they take with the room below them; none for none. */
function stacked(runs: readonly Run[]): [marks: Mark[], height: number] {
  const marks: Mark[] = [];
  let y = 0;
  for (const { drawing, gap = 0 } of runs) {
    y += marks.length === 0 ? 0 : gap;
    marks.push(group({ x: 0, y }, drawing.marks));
    y += drawing.height;
  }
  return [marks, marks.length === 0 ? 0 : y + 2.5];
}

type Sheet = { readonly width: number; readonly height: number };
type Laid = { readonly paper: ReturnType<typeof paperSize>; readonly frame: Box; readonly body: Box };
type Made = Laid & {
  readonly card?: Card;
  readonly cards: readonly Box[];
  /** Which of the ways round a card's screws. */
  readonly inside?: number;
  /** Cards lie a quarter turned on their page, the head at its left. */
  readonly turned?: boolean;
  readonly filled: readonly Filled[];
};
type Card = NonNullable<Template["card"]>;

/** As it is wished; of cards that cautions leave no room on, with as many materials as there is room for. */
function filledYielding(findings: Findings, template: Template, here: readonly Use[]): Made | { missing: string } {
  const wished = filledCards(findings, template, here);
  let [made, fewer] = [wished, yielded(template, findings)];
  while ("missing" in made && fewer !== undefined) {
    made = filledCards(findings, fewer, here);
    fewer = yielded(fewer, findings);
  }
  return "missing" in made ? wished : made;
}

/** A card's template with one caution of a material less; undefined where it has none to give up. */
function yielded(template: Template, findings: Findings): Template | undefined {
  if (template.card === undefined) return undefined;
  const fewer = template.blocks.map((one) =>
    (blocks[one.block] as Block).fewer?.(findings, settingsFor(one, findings.machine)),
  );
  if (fewer.every((settings) => settings === undefined)) return undefined;
  return {
    ...template,
    blocks: template.blocks.map((one, index) => ({ ...one, settings: fewer[index] ?? one.settings })),
  };
}

/** Pages, or cards of the size with which they are fewest. */
function filledCards(findings: Findings, template: Template, here: readonly Use[]): Made | { missing: string } {
  const { machine } = findings;
  const { size } = machine.paper;
  const [upright, other] = orientationsOf(template).map((orientation) => laidOut(machine, orientation, template));
  if (upright === undefined) return { missing: say("binder.missing room in margins", { paper: size }) };
  const { card } = template;
  if (card === undefined) {
    const filled = filledOn(findings, template, here, upright.body, upright.paper);
    const made = "missing" in filled ? filled : { ...upright, cards: [], ...filled };
    if (template.orientation !== "either" || other === undefined) return made;
    const turned = filledOn(findings, template, here, other.body, other.paper);
    if ("missing" in turned || ("filled" in made && !isBetter(turned.filled, made.filled))) return made;
    return { ...other, cards: [], ...turned };
  }
  const cover = template.needs === "drive" ? machine.drive?.cover : undefined;
  let best: Made | undefined;
  let missing = tooLarge(card, machine, upright.body);
  for (const [index, one] of cardSizes({ ...card, ...cover }, cover !== undefined, upright.body).entries()) {
    // Where a card is too wide for the page this lies across, and where it is too high for that the card does.
    const ways = [false, true].flatMap((turned) =>
      [upright, other].flatMap((way) => {
        const lying = turned ? { width: one.height, height: one.width } : one;
        const cards = way ? cardsOn(way.body, lying, turned) : [];
        return way && cards.length > 0 ? [{ ...way, cards, turned }] : [];
      }),
    );
    const [laid] = ways;
    if (laid === undefined) {
      missing = tooLarge(one, machine, upright.body);
      continue;
    }
    for (const [way, { inside }] of insidesOf({ ...one, left: 0, top: 0 }, one).entries()) {
      const filled = filledOn(findings, template, here, inside, laid.paper);
      if ("missing" in filled) {
        if ((index === 0 && way === 0) || best === undefined) missing = filled.missing;
        continue;
      }
      if (best === undefined || isBetterCard(filled.filled, best.filled))
        best = { ...laid, card: one, inside: way, ...filled };
      // As good as can be.
      if (best.filled.length <= usesOf(machine).length && pictures(best.filled) > 0) break;
    }
    if (best && best.filled.length <= usesOf(machine).length) break;
  }
  return best ?? { missing };
}

/** The one that comes first, and the other. */
const orientationsOf = ({ orientation, card }: Template): readonly [Orientation, Orientation] =>
  orientation === "portrait" || (orientation === "either" && card)
    ? ["portrait", "landscape"]
    : ["landscape", "portrait"];

/** Less that is left out; with as much fewer pieces to cut, as more of them stay whole; with as many fewer pages. */
function isBetter(one: readonly Filled[], other: readonly Filled[]): boolean {
  const cost = (pages: readonly Filled[]): readonly number[] => [
    pages.flatMap(leftOutOf).length,
    pages.reduce((sum, { marks = [] }) => sum + countOf(marks, "caption"), 0),
    pages.length,
  ];
  return less(cost(one), cost(other));
}

/** Fewer cards, or as many that show the pulleys more often. */
const isBetterCard = (one: readonly Filled[], other: readonly Filled[]): boolean =>
  one.length - other.length < 0 || (one.length === other.length && pictures(one) > pictures(other));

const pictures = (cards: readonly Filled[]): number =>
  cards.reduce((sum, { marks = [] }) => sum + countOf(marks, PULLEYS), 0);

/** Every piece has its words beneath it. */
const countOf = (marks: readonly Mark[], name: string): number =>
  marks.reduce((sum, mark) => {
    if (mark.kind !== "group") return sum;
    return sum + (mark.name === name && mark.marks.length > 0 ? 1 : countOf(mark.marks, name));
  }, 0);

/** With the largest that does fit. */
function tooLarge(card: Card, { units, paper }: Machine, body: Box): string {
  const { width, height } = largestCard(body);
  return say("binder.missing room for the card", {
    width: trimmedSize(card.width, units, 1),
    height: trimmedSize(card.height, units, 1),
    paper: paper.size,
    across: roomIn(units).there(width),
    down: roomIn(units).there(height),
  });
}

/** More cards for one use of a machine are a book, of which nobody finds the page. */
const MOST_CARDS = 12;

/** What stands in so large a box, or why nothing can. */
function filledOn(
  findings: Findings,
  template: Template,
  here: readonly Use[],
  inner: Box,
  sheet: Sheet,
): { readonly filled: readonly Filled[] } | { missing: string } {
  const { size } = findings.machine.paper;
  let filled: readonly Filled[];
  try {
    filled = subjects(findings, template).flatMap((subject) => fill(findings, template, subject, here, inner, sheet));
  } catch (fault) {
    if (!(fault instanceof NoRoom)) throw fault;
    return {
      missing: `${fault.in(findings.machine.units)}; ${fault.remedy ?? say("binder.larger paper", { paper: size })}`,
    };
  }
  if (filled.length === 0) return { missing: say("binder.missing everything") };
  if (template.card !== undefined && filled.length > MOST_CARDS * usesOf(findings.machine).length)
    return { missing: say("binder.missing room on few cards", { cards: filled.length }) };
  if (filled.some(({ marks }) => marks === undefined)) return { missing: say("binder.missing room", { paper: size }) };
  return { filled };
}

/** What a template without a card leaves its blocks of the machine's paper, and whether that lies across; undefined where nothing is made. */
export function roomOn(
  findings: Findings,
  template: Template,
): { readonly body: Box; readonly across: boolean } | undefined {
  const made = filledCards(findings, template, usesOf(findings.machine));
  return "missing" in made ? undefined : { body: made.body, across: liesAcross(made.paper) };
}

function laidOut(machine: Machine, orientation: Orientation, template: Template): Laid | undefined {
  const paper = paperSize(machine.paper.size, orientation);
  const frame = frameOn(paper, template.margin);
  return frame && { paper, frame, body: bodyOf(machine, frame, template) };
}

function subjects(findings: Findings, template: Template): Subject[] {
  const { handwheels } = findings;
  const called = translated(template.title);
  if (template.each === undefined) return [{ title: called, handwheels }];
  return handwheels
    .filter((finding) => has(finding, template.needs))
    .map((finding) => ({ title: `${called}: ${finding.handwheel.name}`, handwheels: [finding] }));
}
