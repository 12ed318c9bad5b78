/** The least that another library needs for the same single strip: the yardstick of the bench, used nowhere else. */
import { createWriteStream, readFileSync } from "node:fs";
import PDFDocument from "pdfkit";

const mm = 72 / 25.4;
const pdf = new PDFDocument({ size: [297 * mm, 210 * mm], margin: 0 });
pdf.pipe(createWriteStream(process.argv[2]));
pdf
  .font(readFileSync("dist/fonts/bold.ttf"))
  .fontSize(2.6 * mm)
  .lineWidth(0.15 * mm);
const length = Math.PI * 38.17;
for (let mark = 0; mark < 99; mark++) {
  const x = (20 + (length * mark) / 99) * mm;
  pdf
    .moveTo(x, 20 * mm)
    .lineTo(x, (mark % 10 === 0 ? 24 : mark % 5 === 0 ? 23 : 22) * mm)
    .stroke();
  if (mark % 10 === 0) pdf.text(String(mark), x - 2 * mm, 25 * mm, { lineBreak: false });
}
pdf.rect(20 * mm, 20 * mm, length * mm, 9 * mm).stroke();
pdf.end();
