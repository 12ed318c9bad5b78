import { bandOf, paperPerRadian } from "../../dial/development.js";
import type { DialFinding, Graduation, Vernier } from "../../dial/finding.js";
import { growthOf } from "../../dial/growth.js";
import { overOnDial } from "../../dial/overOnDial.js";
import { readVernier, vernierMarks, vernierWrongFrom } from "../../dial/vernier.js";
import type { Drawing, Mark, Point } from "../../drawing/drawing.js";
import { group, polyline } from "../../drawing/shapes.js";
import type { Units } from "../../machine/machine.js";
import { trimmed, trimmedSize, unitName } from "../../quantity/format.js";
import { mmPer } from "../../quantity/length.js";
import { say } from "../../words/say.js";
import { block, type Run } from "../shared/block.js";
import { paragraph } from "../shared/paragraph.js";
import { heading, kept, together } from "../shared/runs.js";
import { rowLine, size } from "../shared/style.js";
import { vernierSticker } from "./companion.js";
import { cutOuts } from "./cutOuts.js";
import { vernierLimit } from "./dialWords.js";
import { numbersApart } from "./numbersApart.js";
import { scaleMarks } from "./scaleMarks.js";
import { stripSurface } from "./surface.js";

/** Of the drawn reading, mm: 5 : 3.5 : 2.5. */
const marks = [6, 4.2, 3] as const;
const dialHigh = 10.5;
const vernierHigh = 10;
const arrowHigh = 3;

type WithVernier = DialFinding & { readonly vernier: Vernier };

/** For every dial that has one: the vernier to cut out, and a drawn reading with its sum. */
export const verniers = block({ copies: 2 }, ({ handwheels, findings, settings, width }) =>
  handwheels.flatMap(({ handwheel, dial }): Run[] => {
    const flat = dial?.flat;
    if (dial?.vernier === undefined || flat === undefined) return [];
    const { vernier } = dial;
    const count = trimmedSize(vernier.leastCount, dial.chosen.unit, 6);
    const sticker = () => ({
      drawing: vernierSticker(flat, vernier, dial, say("vernier.legend", { count })),
      name: "companion",
      caption: say("vernier.caption", { wheel: handwheel.name }),
    });
    return [
      ...heading(handwheel.name, width, 7),
      ...kept([
        ...paragraph(readsWords({ ...dial, vernier }, count, findings.machine.units), width, {
          size: size.text,
          weight: "bold",
        }),
        ...paragraph(say(bandOf(flat) > 0 ? "vernier.stick at index" : "vernier.stick"), width, { size: size.text }),
      ]),
      ...cutOuts(Array.from({ length: Math.max(1, settings.copies) }, sticker), width),
      ...reading(dial, vernier, paperPerRadian(flat), width),
    ];
  }),
);

function readsWords({ vernier, chosen }: WithVernier, count: string, units: Units): string {
  const { doubtOverTravel } = chosen;
  const limit = vernierLimit({ vernier, chosen });
  return [
    say("vernier.reads", { count }),
    say("vernier.over divisions", { parts: vernier.parts, spans: vernier.spans }),
    ...(limit === undefined ? [] : [limit]),
    ...(doubtOverTravel !== undefined && doubtOverTravel > vernier.leastCount
      ? [say("vernier.finer", { travel: overOnDial(chosen, (mm) => trimmedSize(mm, units, 1)) })]
      : []),
  ].join(" · ");
}

/** A reading drawn at some times its size, its sum, and in words how one comes to it. */
function reading(dial: DialFinding, vernier: Vernier, perRadian: number, width: number): Run[] {
  const { chosen, pitch } = dial;
  const { unit } = chosen;
  const { parts } = vernier;
  // A made-up setting in the dial's first numbers: 13 divisions and a good half.
  const last = Math.floor((vernierWrongFrom(vernier, chosen) ?? Number.POSITIVE_INFINITY) / chosen.divisionValue);
  const wanted =
    Math.max(0, Math.min(13, last - 1)) * chosen.divisionValue + Math.ceil(parts * 0.6) * vernier.leastCount;
  const { main, mark, read } = readVernier(vernier, chosen.divisionValue, wanted);
  const zero = (wanted / chosen.divisionValue) * pitch;
  const span = vernier.spans * pitch;
  const times = Math.max(1, Math.min(4, Math.floor(width / ((span + 4 * pitch) * perRadian))));
  // A dial of few divisions may have steps wider than the page: then its example is drawn smaller.
  const scale = Math.min(times * perRadian, (width - 1) / (span + 2 * pitch));
  const margin = Math.min(4 * pitch, Math.max(pitch, (width / scale - span) / 2));
  const window = { from: zero - margin, to: zero + span + margin, growth: growthOf(dial) };
  const dialPart = stripSurface(scale, dialHigh, window);
  const vernierPart = stripSurface(scale, vernierHigh, window, true);
  const row = (dial.rows[0] ?? []).filter(({ angle }) => angle >= window.from && angle <= window.to);
  const lines = vernierMarks(vernier, pitch).map((one, index): Graduation => {
    const { label: _, ...bare } = one;
    const named = index === mark || index === 0 || index === parts;
    return { ...bare, angle: one.angle + zero, ...(named && { label: String(index) }) };
  });
  const meets = vernierPart.at(lines[mark]?.angle ?? zero, vernierHigh).x;
  const style = { across: 0, marks, number: size.text };
  const beside = (list: readonly Graduation[], from: number) =>
    numbersApart(list, scale, size.text, { from: window.from, to: window.to, first: from });
  const drawing: Drawing = {
    width,
    height: arrowHigh + vernierHigh + dialHigh,
    marks: [
      arrow({ x: meets, y: arrowHigh }),
      group({ x: 0, y: arrowHigh }, scaleMarks(vernierPart, beside(lines, lines[mark]?.angle ?? zero), style)),
      group({ x: 0, y: arrowHigh + vernierHigh }, [
        dialPart.rule(0, rowLine),
        ...scaleMarks(dialPart, beside(row, zero), style),
      ]),
    ],
  };
  const number = (mm: number) => trimmed(mm / mmPer[unit], 6);
  const sum = `${number(main)} + ${mark} × ${number(vernier.leastCount)} = ${number(read)} ${unitName(unit)}`;
  const told = say(growthOf(dial) === "leftward" ? "vernier.past right" : "vernier.past left", {
    main: number(main),
    mark,
  });
  const drawn = say(
    scale < times * perRadian ? "vernier.smaller" : times === 1 ? "vernier.true size" : "vernier.enlarged",
    { times },
  );
  return together([
    { drawing, gap: 5 },
    ...paragraph(sum, width, { size: size.card, weight: "bold", gap: 1.5 }),
    ...paragraph(`${told} ${drawn}`, width, { size: size.text, gap: 1 }),
  ]);
}

/** Over the line that meets one of the dial's, its tip at `at`. */
function arrow(at: Point): Mark {
  const half = 1.1;
  return polyline(
    [
      { x: at.x - half, y: at.y - 2.6 },
      { x: at.x + half, y: at.y - 2.6 },
      { x: at.x, y: at.y - 0.4 },
    ],
    { fill: "black" },
    true,
  );
}
