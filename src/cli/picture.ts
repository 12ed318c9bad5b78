import { crc32 } from "node:zlib";
import type { Picture } from "../output/png.js";
import { Refusal } from "./io.js";
import { packageFile, packagePath } from "./packageFiles.js";

/** What draws `--format png`: an optional package, since only its binary for this system can. Throws a Refusal that says what to
 *  do where it is not there. */
export async function pictureAt(dpi: number): Promise<Picture> {
  const { Resvg } = await renderer();
  // The family that the SVG names is not among these, so every text takes what it names after it: whatever this system has
  // installed, a picture shows the font that the other formats bring along.
  const font = {
    loadSystemFonts: false,
    fontFiles: [packagePath("dist", "fonts", "regular.ttf"), packagePath("dist", "fonts", "bold.ttf")],
    sansSerifFamily: "B612",
    defaultFontFamily: "B612",
  };
  return {
    dpi,
    drawn: (svg, width) => new Resvg(svg, { fitTo: { mode: "width", value: width }, font }).render().asPng(),
    crc32: (bytes) => crc32(bytes),
  };
}

const name = "@resvg/resvg-js";

async function renderer(): Promise<typeof import("@resvg/resvg-js")> {
  try {
    return await import("@resvg/resvg-js");
  } catch {
    const version = packageFile().optionalDependencies?.[name];
    throw new Refusal(
      `--format png needs the package ${name}, which is not here, or has no part for this system (${process.platform} ${process.arch}); in ${packagePath()} run: npm install --no-save ${name}@${version}  (with -g in place of --no-save, where witnessmark was installed so)\nNothing was printed; --format pdf and svg need nothing more.`,
    );
  }
}
