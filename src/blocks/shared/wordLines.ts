import { block } from "./block.js";
import { size } from "./style.js";
import { paragraph } from "./table.js";

/** Words of the sheet's own: how to use it, a warning, a note. */
export const wordLines = block({ text: "", bold: false, small: true }, ({ settings, width }) =>
  settings.text === ""
    ? []
    : paragraph(settings.text, width, {
        size: settings.small ? size.small : size.body,
        weight: settings.bold ? "bold" : "regular",
        gap: 1.5,
      }),
);
