import { readFileSync } from "node:fs";
import { describe, expect, test } from "vitest";
import { blocks } from "../../src/blocks/registry.js";
import { arrange } from "../../src/sheets/arrange.js";
import { checkBars } from "../../src/sheets/furniture.js";
import { readTemplate } from "../../src/sheets/readTemplate.js";
import { outline, walk } from "../support/marks.js";
import { demoFindings, findingsOf, sheetNames, template } from "../support/sheets.js";
import { wordsOf } from "../support/words.js";

const problems = (blocks: string, head = "") =>
  readTemplate(`title: Mine\n${head}blocks:\n  - ${blocks}\n`, "mine").problems;

describe("a setting that a template gives wrongly is an error with its place and a remedy", () => {
  test.each([
    ["cautions: { of: nonsense }", /^3:21: of cannot be "nonsense"; it is one of tailstock, drill, belt, dial/],
    ["cautions: { of: dail }", /did you mean dial\?/],
    ["positions: { operation: turnning }", /did you mean turning\?/],
    ["drill bars: { sizes: imperial }", /it is one of work, drills, metric, fraction, number, letter/],
    ["drill bars: { coolant: often }", /it is true or false/],
    ["speed diagram: { operation: milling }", /operation cannot be "milling"/],
    ["thread table: { systems: [metric coarse, NPT] }", /of entry "NPT": it is one of/],
    ["thread table: { systems: [] }", /give one entry at least/],
    ["thread table: { engagement: -75 }", /it is a number above 0/],
    ["student exercises: { answers: nowhere }", /it is one of upside down, teacher/],
    ["taper table: { ratios: [8, ten] }", /of entry "ten": it is a number/],
    ["dial pieces: { copies: 101 }", /up to 100/],
    ["dial pieces: { copies: 0 }", /above 0/],
    ["dial pieces: { copies: 2.5 }", /^3:28: copies cannot be 2\.5; it is a whole number/],
    ["dial pieces: { copies: .inf }", /^3:28: copies cannot be \.inf/],
    ["taper swing: { height: .nan }", /^3:28: height cannot be \.nan; it is a length .* \(a bare number is mm\)/],
    ["taper swing: { height: 3 apples }", /it is a length/],
    ["taper swing: { height: -1 mm }", /it is a length above 0/],
    ["taper swing: { height: 40 in }", /up to 1000 mm/],
    ["turn tables: { turns: 1e9 }", /^3:27: turns cannot be 1000000000/],
    ["turn tables: { mm: [.nan] }", /mm cannot be \[\.nan\]; of entry \.nan/],
    ["turn tables: { tables: [whole turn] }", /did you mean whole turns\?/],
    ["turn tables: { handwheel: 5 }", /^3:31: handwheel cannot be 5; it is the name of one/],
    ["words: { text: hi, handwheel: Cross slide }", /"handwheel" is not a key of block words/],
    ["toString", /^3:5: there is no block "toString"; all there are: witnessmark sheets --blocks$/],
    ["constructor: { a: 1 }", /^3:5: there is no block "constructor"/],
    ["__proto__", /^3:5: there is no block "__proto__"/],
    ["words", /^3:5: block words needs its text; for example words: \{ text: "Belt cover shut/],
    ["words: { text: hi, constructor: 1 }", /^3:24: "constructor" is not a key of block words/],
    ["words: { text: hi, __proto__: 1 }", /^3:24: "__proto__" is not a key of block words/],
    ["cautions: { of: hasOwnProperty }", /^3:21: of cannot be "hasOwnProperty"/],
    ["dial pieces: 3", /^3:18: .* stands in braces: dial pieces: \{ copies: /],
    ["dial pieces:\n    copies: 3", /^4:5: what is set of dial pieces stands four spaces further in/],
    ["{}", /^3:5: a block is its name alone, or/],
    ["words: { text: &one hi }\n  - words: { text: *one }", /^4:20: .*write the values out/],
    ["positions: { materials: 0 }", /above 0/],
    ["positions: { caution: belts }", /did you mean belt\?/],
  ])("%s", (blocks, words) => expect(problems(blocks)).toEqual([expect.stringMatching(words)]));

  test("more blocks than a sheet may have are refused before any is drawn", () => {
    const many = (count: number) => problems(Array.from({ length: count }, () => "dial pieces").join("\n  - "));
    expect(many(61)).toEqual([expect.stringMatching(/^3:3: blocks lists 61, more than 60; make several sheets/)]);
    expect(many(60)).toEqual([]);
  });

  test("of the sheet itself too, and no YAML parser's words", () => {
    expect(problems("words: { text: hi }", "checkBars: yes please\n")).toEqual([
      expect.stringMatching(/^2:12: checkBars cannot be/),
    ]);
    expect(readTemplate("title: Mine\nblocks:\n  - cautions:{ of: dial }\n  - x: [\n", "mine").problems).toEqual([
      expect.stringMatching(/is opened and not closed; close it with \]$/),
    ]);
  });

  test.each([
    ["margin: .inf", /^2:9: margin cannot be \.inf; it is a length from 0/],
    ["margin: -3", /^2:9: margin cannot be -3/],
    ["margin: 1e9", /^2:9: margin cannot be 1000000000/],
    ["margin: { bindig: 20 }", /did you mean "binding"\?/],
    ["margin: { other: wide }", /^2:18: margin other cannot be "wide"/],
    ["card: { width: 0 }", /^2:16: card width cannot be 0; it is a length above 0/],
    ["card: { height: .nan }", /^2:17: card height cannot be \.nan/],
    ["card: 5", /^2:7: card needs a width/],
    ["needs: constructor", /^2:8: needs cannot be "constructor"/],
    ["title: Again", /^2:1: the key "title" stands twice; keep one of them$/],
    ["toString: 1", /^2:1: "toString" is not a key of a sheet/],
  ])("%s", (head, words) =>
    expect(problems("cautions: { of: belt }", `${head}\n`)).toEqual([expect.stringMatching(words)]),
  );

  test("a machine file is none, nor is nothing", () => {
    expect(readTemplate("name: L\ndrive: {}\n", "l").problems).toEqual([
      expect.stringMatching(/^1:1: this is a machine file/),
    ]);
    expect(readTemplate("", "l").problems).toEqual([expect.stringMatching(/sheets --copy/)]);
  });

  test("those that come with the program pass", () => {
    for (const sheet of sheetNames()) expect(template(sheet).name).toBe(sheet);
  });
});

describe("lengths", () => {
  const read = (text: string) => {
    const { template, problems } = readTemplate(text, "mine");
    if (template === undefined) throw new Error(problems.join("\n"));
    return template;
  };
  const words = "blocks: [words: { text: Hello }]";

  test("carry a unit, or are mm", () => {
    const { card, margin, blocks } = read(
      "title: T\nmargin: 0.5 in\ncard: { width: 5 in, height: 90 mm, corner: 2 }\nblocks: [taper swing: { height: 3/4 in }, speed tree: { height: 80 }]\n",
    );
    expect(card).toEqual({ width: 127, height: 90, corner: 2, most: 0 });
    expect(margin).toEqual({ binding: 12.7, other: 12.7 });
    expect(blocks[0]?.settings).toEqual({ height: expect.closeTo(19.05, 9) });
  });

  test("a sheet that says nothing has 20 mm at the punched edge: left upright, on top across", () => {
    const find = findingsOf("name: L\n");
    const head = (more: string) => {
      const made = arrange(find, read(`title: T\n${more}${words}\n`));
      if ("missing" in made) throw new Error(made.missing);
      let corner = { x: Number.POSITIVE_INFINITY, y: Number.POSITIVE_INFINITY };
      walk(made.print.pages[0]?.drawing.marks ?? [], (mark, toPage) => {
        for (const { x, y } of outline(mark).map(toPage))
          corner = { x: Math.min(corner.x, x), y: Math.min(corner.y, y) };
      });
      return corner;
    };
    const upright = head("");
    const across = head("orientation: landscape\n");
    const even = head("margin: 10\n");
    const apart = head("margin: { binding: 1 in }\n");
    expect(upright.x - even.x).toBeCloseTo(10, 6);
    expect(upright.y).toBeCloseTo(even.y, 6);
    expect(across.x).toBeCloseTo(even.x, 6);
    expect(across.y - even.y).toBeCloseTo(10, 6);
    expect(apart.x - even.x).toBeCloseTo(15.4, 6);
  });

  test("margins that leave nothing are told, and so is a card that does not fit", () => {
    const find = findingsOf("name: L\npaper: { size: A5 }\n");
    expect(arrange(find, read(`title: T\nmargin: 60\n${words}\n`))).toEqual({
      missing: expect.stringMatching(/^its margins leave no room on A5/),
    });
    expect(arrange(find, read(`title: T\ncard: { width: 8 in, height: 50 }\n${words}\n`))).toEqual({
      missing: expect.stringMatching(/^a card of 203\.2 mm × 50 mm does not fit on A5, where \d+ mm × \d+ mm are left/),
    });
  });
});

test("the room told for a card is what it may have: with that it fits, and with a millimetre more it does not", () => {
  const words = "blocks: [words: { text: Hello }, thread table]";
  const made = (width: number | string, height: number | string, units = "mm") => {
    const card = `card: { width: ${width}, height: ${height} }`;
    const { template } = readTemplate(`title: T\nmargin: 10\n${card}\n${words}\n`, "mine");
    const arranged = template && arrange(findingsOf(`name: L\nunits: ${units}\n`), template);
    return arranged && "missing" in arranged ? arranged.missing : "";
  };
  const told = /where (\d+) mm × (\d+) mm are left/.exec(made(190, 220));
  const [across, down] = [Number(told?.[1]), Number(told?.[2])];
  expect(made(across, down)).toBe("");
  expect(made(across + 1, down)).toContain("does not fit");
  expect(made(across, down + 1)).toContain("does not fit");
  // In the unit of the machine's file.
  const inches = made("7.5 in", "8.6 in", "in");
  const [, wide, high] = /^a card of 7\.5 in × 8\.6 in .* where ([\d.]+) in × ([\d.]+) in are left/.exec(inches) ?? [];
  expect(made(`${wide} in`, `${high} in`, "in")).toBe("");
  expect(made(`${Number(wide) + 0.05} in`, `${high} in`, "in")).toContain("does not fit");
});

test.each([
  ["margin: 2", /^2:9: mind: margin is less than 5 mm, .*; write margin: 10/],
  ["margin: { binding: 20, other: 4 mm }", /^2:9: mind: margin is less than 5 mm/],
  ["margin: 5", undefined],
  ["margin: 2\nbare: true", undefined],
  ["orientation: portrait", undefined],
])("%s: nearer to the edge than printers print is told, and made all the same", (head, words) => {
  const { template, doubts } = readTemplate(`title: T\n${head}\nblocks: [ thread table ]\n`, "mine");
  expect(template).toBeDefined();
  expect(doubts).toEqual(words === undefined ? [] : [expect.stringMatching(words)]);
});

test("what two blocks show stands apart, whichever follows which", () => {
  const top = (blocks: string, of: string) => {
    const { template } = readTemplate(`title: T\nblocks: [ ${blocks} ]\n`, "mine");
    const made = template && arrange(demoFindings(), template);
    let found = Number.NaN;
    for (const { drawing } of made && "print" in made ? made.print.pages.slice(0, 1) : [])
      walk(drawing.marks, (mark, toPage) => {
        if (mark.kind === "text" && mark.text === of && Number.isNaN(found)) found = toPage(mark.at).y;
      });
    return found;
  };
  const alone = top("handwheel list", "handwheel");
  // One line of words takes 4.1 mm at 9 pt: its em of 3.175 mm times the leading.
  const below = top('words: { text: "One line" }, handwheel list', "handwheel");
  expect(below - alone).toBeGreaterThan(4 + 2.4);
});

test("the title block has room for its own words over a short title", () => {
  const { template } = readTemplate("title: A\nblocks: [ thread table ]\n", "mine");
  const made = template && arrange(findingsOf("name: L\n"), template);
  const words: string[] = [];
  for (const { drawing } of made && "print" in made ? made.print.pages : [])
    walk(drawing.marks, (mark) => {
      if (mark.kind === "text") words.push(mark.text);
    });
  expect(words).toContain("sheet");
});

test("a check bar is one stroke, which ends where it is measured", () => {
  const bars = checkBars({ left: 20, top: 10, width: 180, height: 270 }, 20, false, "mm");
  const strokes = bars.flatMap((mark) => (mark.kind === "group" ? mark.marks : []));
  expect(strokes).toHaveLength(2);
  for (const stroke of strokes) {
    if (stroke.kind !== "path") throw new Error("no stroke");
    const [from, to, ...more] = stroke.segments.flatMap((one) => ("x" in one ? [one] : []));
    expect(more).toEqual([]);
    expect(Math.hypot((to?.x ?? 0) - (from?.x ?? 0), (to?.y ?? 0) - (from?.y ?? 0))).toBeCloseTo(100, 9);
    expect(stroke.pen?.width).toBeGreaterThan(1);
  }
});

test("words along the upright check bar keep clear of it", () => {
  const bars = checkBars({ left: 20, top: 10, width: 180, height: 270 }, 20, false, "in");
  const line = 20 + 180 - 1.5 - 0.6;
  const [words] = bars.flatMap((mark) => (mark.kind === "text" && mark.turn ? [mark] : []));
  // Of the letters' own height, with what stands on top of the highest of them: 0.8 of the em, measured in the font.
  expect(line - (words?.at.x ?? line) - 0.8 * (words?.size ?? 0)).toBeGreaterThan(0.5);
});

describe("columns before cards", () => {
  const cardsOf = (findings: ReturnType<typeof findingsOf>, text: string) => {
    const { template } = readTemplate(`title: T\n${text}\n`, "mine");
    const made = template && arrange(findings, template);
    if (made === undefined || "missing" in made) throw new Error(made?.missing);
    let words = "";
    for (const { drawing } of made.print.pages)
      walk(drawing.marks, (mark) => {
        if (mark.kind === "text") words += `${mark.text}\n`;
      });
    return { words, cards: Number(/card \d+ of (\d+)/.exec(words)?.[1] ?? 1) };
  };

  test("a small card has its table in two columns, and no card of words alone before its first row", () => {
    const inch = findingsOf(
      "name: L\nunits: in\nhandwheels: [{ name: Cross slide, reads: diameter, travel: 3.5, feed: 0.1, dial: { shape: drum, diameter: 1.5, width: 0.4, divisions: 0.002 } }]\n",
    );
    const distances = "blocks: [ turn tables: { handwheel: Cross slide, tables: [distances] } ]";
    const { words, cards } = cardsOf(inch, `card: { width: 100, height: 50 }\n${distances}`);
    expect(cards).toBeLessThan(13);
    expect(words.indexOf("0.001")).toBeLessThan(words.indexOf("card 2 of"));
    // What a turn is, and that it was not measured, is still said.
    expect(words).toMatch(/1 turn = 0\.1000 in/);
  });

  test("long headings wrap for a second column", () => {
    const wheel = "turn tables: { handwheel: Cross slide, tables: [whole turns] }";
    const own = (width: number) =>
      cardsOf(demoFindings(), `card: { width: ${width}, height: 120 }\nblocks: [ ${wheel} ]`);
    expect(own(160).cards).toBeLessThan(own(120).cards);
  });
});

describe("check bars", () => {
  const barsOf = (text: string) => {
    const { template, problems } = readTemplate(`title: T\n${text}\n`, "mine");
    if (template === undefined) throw new Error(problems.join("\n"));
    const made = arrange(demoFindings(), template);
    if ("missing" in made) throw new Error(made.missing);
    const names = new Set<string | undefined>();
    for (const { drawing } of made.print.pages)
      for (const mark of drawing.marks) if (mark.kind === "group") names.add(mark.name);
    const words = wordsOf(made.print);
    return [names.has("check-bar-level"), names.has("check-bar-upright"), words.includes("100 %")];
  };

  test.each(["pieces", "dial pieces", "dial pieces: { handwheel: Top slide }", "dial choices", "linear scales"])(
    "come with %s by themselves, and the line on true size",
    (block) => expect(barsOf(`orientation: landscape\nblocks: [ ${block} ]`)).toEqual([true, true, true]),
  );

  test("go where the template says so, and come with nothing else", () => {
    expect(barsOf("checkBars: false\nblocks: [ dial pieces ]")).toEqual([false, false, false]);
    expect(barsOf("bare: true\nblocks: [ dial pieces ]")).toEqual([false, false, false]);
    expect(barsOf("blocks: [ thread table ]")).toEqual([false, false, false]);
  });

  test("a sheet that is built in never asks for other bars than its blocks want", () => {
    for (const sheet of sheetNames()) {
      const { checkBars, bare, blocks: shown } = template(sheet);
      const wanted = shown.some(({ block }) => "trueSize" in blocks[block]);
      expect(checkBars, sheet).toBe(wanted && !bare);
    }
  });
});

describe("a block about one handwheel", () => {
  const findings = demoFindings();
  const sheet = (blocks: string, head = "") => {
    const { template, problems } = readTemplate(`title: T\n${head}blocks:\n${blocks}`, "mine");
    if (template === undefined) throw new Error(problems.join("\n"));
    return arrange(findings, template);
  };
  const said = (made: ReturnType<typeof arrange>) => ("print" in made ? wordsOf(made.print) : made.missing);

  test("tells of that one alone, whatever its letters; left out, of all", () => {
    const one = said(sheet("  - turn tables: { handwheel: top SLIDE }\n"));
    expect(one).toContain("Top slide");
    expect(one).not.toContain("Cross slide");
    const all = said(sheet("  - turn tables\n"));
    for (const { name } of findings.machine.handwheels) expect(all).toContain(name);
  });

  test("beside one about all, and on a sheet with a run of pages for each", () => {
    const both = said(sheet("  - turn tables: { handwheel: Top slide }\n  - dial choices\n"));
    expect(both).toContain("Cross slide");
    const made = sheet(
      "  - turn tables: { handwheel: Top slide }\n  - cautions: { of: dial }\n",
      "needs: feed\neach: handwheel\n",
    );
    expect("print" in made && [...new Set(made.print.pages.map(({ title }) => title))]).toEqual(["T: Top slide"]);
  });

  test("the block that has a wheel of its own takes it as well", () => {
    expect(said(sheet("  - drill depth: { handwheel: tailstock barrel }\n"))).toContain(
      "turns of the tailstock barrel",
    );
    expect(said(sheet('  - drill depth: { handwheel: "" }\n'))).toContain("turns of the tailstock barrel");
  });

  test("that the machine has not is told with its place in the template and the nearest", () =>
    expect(sheet("  - words: { text: hi }\n  - dial pieces: { handwheel: Cros slide }\n")).toEqual({
      missing: expect.stringMatching(/^there is no handwheel "Cros slide"; did you mean "Cross slide"\?$/),
      at: "4:31",
    }));
});

test("whole turns can stand without distances, and distances without whole turns", () => {
  const said = (tables: string) => {
    const { template } = readTemplate(`title: T\nblocks:\n  - turn tables: { tables: [${tables}] }\n`, "t");
    const made = template && arrange(demoFindings(), template);
    return made && "print" in made ? wordsOf(made.print) : "";
  };
  expect(said("whole turns")).toContain("Whole turns");
  expect(said("whole turns")).not.toMatch(/(?<!whole )turns dial|Your distances/);
  expect(said("distances")).toContain("turns dial");
  expect(said("distances")).not.toContain("Whole turns");
});

test("a sheet whose only content would be cautions is not made", () => {
  const round = findingsOf(
    "name: L\nhandwheels: [{ name: Cross slide, feed: 2, dial: { shape: drum, diameter: 38, width: 9 } }]\n",
  );
  expect(arrange(round, template("start-readings"))).toEqual({
    missing: "the file holds nothing that this sheet shows",
  });
  // A sheet of cautions alone, on purpose.
  const { template: poster } = readTemplate("title: Mine\nblocks:\n  - cautions: { of: belt }\n", "mine");
  expect(poster && "print" in arrange(round, poster)).toBe(true);
});

test("cautions without what they are of are refused, not taken for another's", () => {
  const { problems } = readTemplate("title: T\nblocks:\n  - cautions\n", "t");
  expect(problems).toEqual([expect.stringMatching(/^3:5: block cautions needs its of; it is one of .*belt/)]);
});

test.each(sheetNames())("the comments of %s explain keys that it or its blocks have", (name) => {
  const comments = readFileSync(`templates/sheets/${name}.yaml`, "utf8").match(/^#.*$/gm) ?? [];
  const explained = comments.flatMap((line) => [...line.matchAll(/(?:^# |; )([a-z]\w*):/g)].map(([, key]) => key));
  const { blocks, ...sheet } = template(name);
  const known = [...Object.keys(sheet), "for", ...blocks.flatMap(({ settings }) => Object.keys(settings))];
  expect(explained.filter((key) => !known.includes(key ?? ""))).toEqual([]);
});
