import { bandOf, paperPerRadian } from "../../dial/development.js";
import type { DialFinding, Graduation, Vernier } from "../../dial/finding.js";
import { growthOf } from "../../dial/growth.js";
import { readVernier, vernierMarks } from "../../dial/vernier.js";
import type { Drawing } from "../../drawing/drawing.js";
import { group } from "../../drawing/shapes.js";
import { trimmed } from "../../quantity/format.js";
import { mmPer } from "../../quantity/length.js";
import { block, type Run } from "../shared/block.js";
import { fine, size } from "../shared/style.js";
import { paragraph } from "../shared/table.js";
import { vernierSticker } from "./companion.js";
import { cutOuts } from "./cutOuts.js";
import { leastCount, vernierWords } from "./dialWords.js";
import { scaleMarks } from "./scaleMarks.js";
import { stripSurface } from "./surface.js";

/** For every dial that has one: the vernier to cut out, and a drawn reading with its sum. */
export const verniers = block({ copies: 2 }, ({ handwheels, findings, settings, width }) =>
  handwheels.flatMap(({ handwheel, dial }): Run[] => {
    const flat = dial?.flat;
    if (dial?.vernier === undefined || flat === undefined) return [];
    const count = leastCount({ ...dial, vernier: dial.vernier });
    const sticker = () => ({
      drawing: vernierSticker(flat, dial.vernier as Vernier, dial, `vernier ${count}`),
      name: "companion",
      caption: `${handwheel.name}: its 0 is the index line`,
    });
    const example = reading(dial, dial.vernier, paperPerRadian(flat), width);
    return [
      ...paragraph(handwheel.name, width, { size: size.heading, weight: "bold", gap: 5 }),
      ...paragraph(
        `${vernierWords(dial, findings.machine.units)}. Stick it on the fixed part so that it touches the dial${bandOf(flat) > 0 ? ", its 0 where the index line would be" : ""}.`,
        width,
        { size: size.small, gap: 0.3 },
      ),
      ...cutOuts(Array.from({ length: Math.max(1, settings.copies) }, sticker), width),
      { drawing: { ...example.drawing, width }, gap: 5, keepWithNext: true },
      ...paragraph(example.words, width, { size: size.body, gap: 1 }),
    ];
  }),
);

/** A reading drawn at some times its size, and in words how one comes to it. */
function reading(dial: DialFinding, vernier: Vernier, perRadian: number, width: number) {
  const { chosen, pitch } = dial;
  const unit = chosen.unit;
  const parts = vernier.parts;
  // A made-up setting in the dial's first numbers: 13 divisions and a good half.
  const wanted = 13 * chosen.divisionValue + Math.ceil(parts * 0.6) * vernier.leastCount;
  const { main, mark, read } = readVernier(vernier, chosen.divisionValue, wanted);
  const zero = (wanted / chosen.divisionValue) * pitch;
  const span = vernier.spans * pitch;
  const times = Math.max(1, Math.min(4, Math.floor(width / ((span + 4 * pitch) * perRadian))));
  // A dial of few divisions may have steps wider than the page: then its example is drawn smaller.
  const scale = Math.min(times * perRadian, (width - 1) / (span + 2 * pitch));
  const margin = Math.min(4 * pitch, Math.max(pitch, (width / scale - span) / 2));
  const window = { from: zero - margin, to: zero + span + margin, growth: growthOf(dial) };
  const dialPart = stripSurface(scale, 9, window);
  const vernierPart = stripSurface(scale, 8, window, true);
  const row = (dial.rows[0] ?? []).filter(({ angle }) => angle >= window.from && angle <= window.to);
  const marks = vernierMarks(vernier, pitch).map((one, index): Graduation => {
    const { label: _, ...bare } = one;
    const named = index === mark || index === 0 || index === parts;
    return { ...bare, angle: one.angle + zero, ...(named && { label: String(index) }) };
  });
  const style = { across: 0, marks: [4.4, 3.4, 2.4] as const, number: 2.4 };
  const drawing: Drawing = {
    width: dialPart.width,
    height: 17,
    marks: [
      group({ x: 0, y: 0 }, scaleMarks(vernierPart, marks, style)),
      group({ x: 0, y: 8 }, [dialPart.rule(0, fine), ...scaleMarks(dialPart, row, style)]),
    ],
  };
  const number = (mm: number) => trimmed(mm / mmPer[unit], 6);
  const side = growthOf(dial) === "leftward" ? "right" : "left";
  const words = `Example, drawn ${scale < times * perRadian ? "smaller than it is" : times === 1 ? "at its size" : `${times} times its size`}: the vernier's 0 stands past ${number(main)} (the last dial mark to its ${side}). Line ${mark} of the vernier is the one that meets a mark of the dial: ${number(main)} + ${mark} × ${number(vernier.leastCount)} = ${number(read)} ${unit}.`;
  return { drawing, words };
}
