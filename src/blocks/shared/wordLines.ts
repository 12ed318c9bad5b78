import { translated } from "../../words/say.js";
import { block } from "./block.js";
import { paragraph } from "./paragraph.js";
import { size } from "./style.js";

/** Words of the sheet's own: how to use it, a warning, a note. */
export const wordLines = block({ text: "", bold: false, small: true }, ({ settings, width }) =>
  settings.text === ""
    ? []
    : paragraph(translated(settings.text), width, {
        size: settings.small ? size.text : size.card,
        weight: settings.bold ? "bold" : "regular",
        gap: 1.5,
      }),
);
