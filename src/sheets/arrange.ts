import { type BlockName, blocks } from "../blocks/registry.js";
import type { Block, Run } from "../blocks/shared/block.js";
import { cautionRuns } from "../blocks/shared/cautions.js";
import { materialCautions } from "../blocks/shared/materialCautions.js";
import type { Mark } from "../drawing/drawing.js";
import type { Page, Print } from "../drawing/page.js";
import { group } from "../drawing/shapes.js";
import type { Findings, HandwheelFinding } from "../findings/findings.js";
import { usesOf } from "../findings/uses.js";
import { paperSize } from "../paper/paperSize.js";
import { liesAcross } from "../paper/printerCorrection.js";
import { flow } from "./flow.js";
import {
  barRoom,
  cardOutline,
  cardPadding,
  checkBars,
  correctionNote,
  footHeight,
  headHeight,
  pageFoot,
  pageHead,
} from "./furniture.js";
import type { Need, Template } from "./template.js";

/** A sheet's pages, or what is missing in the machine file (or of the paper) to make them. */
export type Arranged = { readonly print: Print } | { readonly missing: string };

/** Blocks that only accompany others. */
const accompanying: readonly BlockName[] = ["cautions", "words"];

/** Lays a template's blocks out on pages. Pure: findings and a template in, drawings out. */
export function arrange(findings: Findings, template: Template): Arranged {
  const { machine } = findings;
  const here = usesOf(machine);
  if (template.for !== undefined && !here.includes(template.for))
    return { missing: `it is for ${template.for}, and the file says kind: ${machine.kind}` };
  const missing = unmet(findings, template.needs);
  if (missing !== undefined) return { missing };
  const shown = template.blocks.filter((one) => one.for === undefined || here.includes(one.for));
  const wish = template.card && { ...template.card, ...(template.needs === "drive" && machine.drive?.cover) };
  const paper = paperSize(machine.paper.size, orientationFor(template, wish));
  const frame = {
    left: template.margin,
    top: template.margin,
    width: paper.width - 2 * template.margin,
    height: paper.height - 2 * template.margin,
  };
  const bars = template.checkBars ? barRoom : 0;
  const body = {
    left: frame.left,
    top: frame.top + headHeight,
    width: frame.width - bars,
    height: frame.height - headHeight - footHeight - bars,
  };
  const card = wish && {
    ...wish,
    left: frame.left + (frame.width - wish.width) / 2,
    top: body.top + 2,
  };
  if (card && (card.left < frame.left || card.height > body.height - 4))
    return {
      missing: `a card of ${card.width} × ${card.height} mm does not fit on ${machine.paper.size}; choose larger paper`,
    };
  const padding = card ? cardPadding(card) : 0;
  const inner = card
    ? {
        left: card.left + padding,
        top: card.top + padding,
        width: card.width - 2 * padding,
        height: card.height - 2 * padding,
      }
    : body;

  const pages = subjects(findings, template).flatMap(({ title, handwheels }) => {
    const named = shown.flatMap(({ block }) => (blocks[block] as Block).materials?.(findings) ?? []);
    // On every page: one may lie apart from the others.
    const warned = shown.flatMap(({ block }) => (blocks[block] as Block).warnings?.(findings) ?? []);
    const [head, taken] = stacked([
      ...cautionRuns(warned, inner.width, "bold"),
      ...materialCautions(named, inner.width),
    ]);
    const height = inner.height - taken;
    const drawn = shown.map(({ block, settings, for: use = here[0] }) => ({
      block,
      runs: (blocks[block] as Block).draw({ findings, handwheels, settings, use, width: inner.width, height }),
    }));
    // Words that go with a sheet's subject are no sheet without it.
    const subject = drawn.filter(({ block }) => !accompanying.includes(block));
    if (subject.length > 0 && subject.every(({ runs }) => runs.length === 0)) return [];
    const runs = drawn.flatMap(({ runs }): readonly Run[] => runs);
    return flow(runs, height).map((marks) => ({
      title,
      marks: marks && taken > 0 ? [...head, group({ x: 0, y: taken }, marks)] : marks,
    }));
  });
  if (pages.length === 0) return { missing: "the file holds nothing that this sheet shows" };
  if (pages.some(({ marks }) => marks === undefined))
    return { missing: `a part is larger than the page; choose larger paper than ${machine.paper.size}` };

  // Loose pages of two jobs must be told apart.
  const about = template.needs === "job" && findings.job ? `${template.title}: ${findings.job.name}` : template.title;
  const finished = pages.map(({ title, marks }, index): Page => {
    const all: Mark[] = [
      ...(template.bare
        ? []
        : [...pageHead(machine, about, frame), ...pageFoot(machine, template, index + 1, pages.length, frame)]),
      ...(template.checkBars
        ? checkBars({ ...frame, top: body.top, height: frame.height - headHeight }, liesAcross(paper), machine.units)
        : []),
      ...(card ? [cardOutline(card, card.corner, card.holes)] : []),
      group({ x: inner.left, y: inner.top }, marks ?? []),
    ];
    return {
      title,
      drawing: { width: paper.width, height: paper.height, marks: all },
      ...(!template.bare && { correctionNote: correctionNote(machine, frame) }),
    };
  });
  return {
    print: {
      sheet: template.name,
      title: [
        machine.name,
        template.title.toLowerCase(),
        ...(template.needs === "job" && findings.job ? [findings.job.name] : []),
      ].join(": "),
      pages: finished,
      ...(template.bare && { outlines: true }),
      ...(template.uncorrected && { uncorrected: true }),
    },
  };
}

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

/** A card that is wider than high lies across the page. */
const orientationFor = (template: Template, card: { width: number; height: number } | undefined) =>
  card === undefined ? template.orientation : card.width > card.height ? "landscape" : "portrait";

function subjects(
  findings: Findings,
  template: Template,
): { title: string; handwheels: readonly HandwheelFinding[] }[] {
  const { handwheels } = findings;
  if (template.each === undefined) return [{ title: template.title, handwheels }];
  return handwheels
    .filter((finding) => has(finding, template.needs))
    .map((finding) => ({ title: `${template.title}: ${finding.handwheel.name}`, handwheels: [finding] }));
}

const has = ({ feed, dial }: HandwheelFinding, need: Need): boolean =>
  need === "vernier"
    ? dial?.vernier !== undefined
    : need === "dial"
      ? dial !== undefined
      : need === "feed" || need === "drive or feed"
        ? feed !== undefined
        : true;

function unmet(findings: Findings, need: Need): string | undefined {
  if (need === "drive") return findings.drive ? undefined : "the file has no drive: give it a motor and stages";
  if (need === "drive or feed" && findings.drive) return undefined;
  if (need === "feed" || need === "drive or feed")
    return findings.handwheels.some((finding) => has(finding, need))
      ? undefined
      : need === "drive or feed"
        ? "the file has no drive, and no handwheel with a feed"
        : findings.handwheels.some(({ miscounted }) => miscounted)
          ? "a turn was miscounted in the readings, and no other handwheel has a feed"
          : "no handwheel in the file has a feed";
  if (need === "dial")
    return findings.handwheels.some((finding) => has(finding, need))
      ? undefined
      : findings.handwheels.some(({ doubtful, miscounted }) => doubtful || miscounted)
        ? "no dial can be trusted as measured: check says why and what would help"
        : "no handwheel in the file has both a feed and a dial";
  if (need === "vernier")
    return findings.handwheels.some((finding) => has(finding, need))
      ? undefined
      : "no dial in the file asks for a vernier: give one vernier: 10";
  if (need === "readings")
    return findings.handwheels.some(({ study }) => study !== undefined)
      ? undefined
      : "no handwheel in the file has readings: the measuring-form sheet says how to take them";
  if (need === "job") return findings.job ? undefined : "no job was given: name a job file with --job";
  if (need === "scales") return findings.machine.scales?.length ? undefined : "the file has no scales";
  if (need === "angle scales") return findings.machine.angleScales?.length ? undefined : "the file has no angleScales";
  return undefined;
}
