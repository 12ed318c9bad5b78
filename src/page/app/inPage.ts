import { readingHeads } from "./form/readingHeads.js";

/** What the core says for who sits at the command line, and where in the page one does it instead.
 *  tests/page/inPage.test.ts finds words of the command that are missing here. */
const instead: readonly (readonly [command: RegExp, page: string])[] = [
  [
    /name the machine's file, and give this one to print with --job/g,
    "it belongs to the station Job: save its text under another name, and open it",
  ],
  [
    /name the machine's file, and give this one to print with --sheet/g,
    "it belongs to the station Own sheets: save its text under another name, and open it",
  ],
  [
    /name it before --job, and give --job the file that lists the steps/g,
    "it belongs to the station Machine; a job's file lists steps",
  ],
  [/name a CSV beside this file, with columns/g, "open it, or name a CSV that lies on the desk, with columns"],
  [/see with --suppose ("[^"]*") what it does here/g, "see under Ask what $1 does here"],
  [/all there are: witnessmark sheets --blocks/g, "all there are stand below, under “All blocks”"],
  [/begin with one of: witnessmark sheets --copy/g, "begin with a copy of one of the program's, below"],
  [/print takes it without --sheet/g, "open it by itself"],
  [/name a job file with --job/g, "make one at the station Job, or open one"],
  [/^suppose: /g, ""],
  [/\bexplain (\w+) shows (it|each)\b/g, "see “$1”, here under Number"],
  [/give one vernier: (\d+)/g, "fill in “Vernier” of a dial at the station Handwheels, as $1"],
  [/the file says kind: (\w[\w ]*)/g, "“Kind” at the station Machine says $1"],
  [/give it a motor and stages/g, "fill in its motor and stages at the station Belts and gears"],
  [/\bentry (\d+) of turns\b/g, `row $1, “${readingHeads.turns}”`],
  [/\bentry (\d+) of travel\b/g, `row $1, “${readingHeads.travel}”`],
  [/\bentry (\d+) of return\b/g, `row $1, “${readingHeads.return}”`],
  [/drive\.motor\.mains is not given/g, "the mains frequency is not filled in"],
  [/give drive\.motor\.mains/g, "fill in “Mains” of the motor at the station Belts and gears"],
  [/check says why/g, "the station Handwheels says why"],
];

/** Words of the core, as they are said in the page. */
export const inPage = (words: string): string =>
  instead.reduce((so, [command, page]) => so.replace(command, page), words);
