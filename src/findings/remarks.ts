import { mind } from "../cutting/hazards.js";
import { findMaterial, hasSpeeds, knownMaterials, nearestMaterial } from "../cutting/materials.js";
import { workingDoubt } from "../dial/dialFinding.js";
import type { DialFinding } from "../dial/finding.js";
import { blurs } from "../dial/legibility.js";
import { overOnDial } from "../dial/overOnDial.js";
import type { Handwheel, Machine, Units } from "../machine/machine.js";
import type { Remark } from "../machine/problem.js";
import { formatBound, formatLength, formatSize } from "../quantity/format.js";
import type { LanguageCode } from "../words/languages.generated.js";
import { beltSums } from "./beltSums.js";
import { doubtRemedy } from "./doubtRemedy.js";
import { driveRemarks } from "./driveRemarks.js";
import type { Findings, HandwheelFinding } from "./findings.js";
import { drillRemarks, limitRemarks } from "./limitRemarks.js";
import { missingLetters } from "./missingLetters.js";
import { motorRemarks } from "./motorRemarks.js";
import { readingRemarks, wildReadingAt } from "./readingRemarks.js";
import { rowsRemarks } from "./rowsRemarks.js";
import { travelRemarks } from "./travelRemarks.js";
import { whichWheel } from "./whichWheel.js";
import { workRemarks } from "./workRemarks.js";

/** What the file says that only computing shows to be wrong or doubtful, with the path of the value it is about. */
export function remarks(findings: Findings): Remark[] {
  return [
    ...missingLetters(findings.machine),
    ...unknownMaterials(findings),
    ...workRemarks(findings.machine.work, findings.machine.units),
    ...findings.handwheels.flatMap((wheel, index) => readingRemarks(wheel, index, findings.machine.units)),
    ...findings.handwheels.flatMap((wheel, index) => dialRemarks(wheel, index, findings.machine.units)),
    ...whichWheel(findings),
    ...travelRemarks(findings),
    ...drillRemarks(findings.machine),
    ...limitRemarks(findings.machine.limits, findings.drive?.speeds ?? []),
    ...(findings.machine.drive ? motorRemarks(findings.machine.drive) : []),
    ...driveRemarks(findings),
    ...(findings.machine.drive ? beltSums(findings.machine.drive, findings.machine.units) : []),
  ];
}

/** Names of materials, tools and operations that the data does not know: told of a file that has other faults too. */
export const unknownNames = (machine: Machine): Remark[] =>
  [...unknownMaterials({ machine }), ...workRemarks(machine.work, machine.units)].filter(
    ({ severity }) => severity === "error",
  );

/** In English, as all that is told of a file is; a file in another language may call them as its paper does. */
const known = (language: LanguageCode | undefined): string =>
  `${knownMaterials().join(", ")}${(language ?? "en") === "en" ? "" : ", by these names or those on its paper"}`;

function unknownMaterials({ machine }: Pick<Findings, "machine">): Remark[] {
  const standard = (name: string) => findMaterial(name) ?? name.trim().toLowerCase();
  const own = new Set(machine.work.cuttingSpeeds?.map(({ material }) => standard(material)));
  return machine.work.materials.flatMap((name, index) => {
    if (own.has(standard(name)) || hasSpeeds(name)) return [];
    const nearest = findMaterial(name) === undefined ? nearestMaterial(name) : undefined;
    return [
      {
        severity: "error",
        code: "unknown-material",
        path: ["work", "materials", index],
        what: `no cutting speeds are known for ${JSON.stringify(name)}`,
        remedy: `${nearest ? `did you mean "${nearest}"?` : `give your own under cuttingSpeeds:, or take one of ${known(machine.language)}`}${mind(name)}`,
      } satisfies Remark,
    ];
  });
}

function dialRemarks(finding: HandwheelFinding, index: number, units: Units): Remark[] {
  const path = ["handwheels", index, "dial"];
  const { handwheel, feed, reading, dial, doubtful } = finding;
  if (handwheel.dial === undefined) return [];
  // The miscounted turn is told at its reading.
  if (finding.miscounted) return [];
  if (doubtful !== undefined) return [tooDoubtful(finding, doubtful, path, wildReadingAt(finding, index))];
  if (dial !== undefined)
    return [
      ...impossibleDivisions(handwheel.name, dial, { perTurn: reading?.perTurn ?? 0, units }, path),
      ...tooClose(handwheel.name, dial, units, path),
      ...rowsRemarks(handwheel, dial, units, path),
      ...otherUnit(handwheel, dial, units, path),
      ...(handwheel.dial.vernier !== undefined && dial.vernier === undefined
        ? [noVernier(handwheel.name, handwheel.dial.vernier, dial, path)]
        : []),
    ];
  return [
    {
      severity: "warning",
      code: "no-dial",
      path,
      what: `no dial can be made for "${handwheel.name}"`,
      remedy: feed
        ? "give the drum's diameter, or the wrap length measured round it"
        : "say its feed per turn: measured readings, a screw or a length",
    },
  ];
}

/** `wild`: the reading that the doubt may come from: nothing is to be measured further, or forced, before that is taken again, and what
 *  follows from it is told behind it. */
function tooDoubtful(
  finding: HandwheelFinding,
  doubtful: DialFinding,
  path: Remark["path"],
  wild: Remark["path"] | undefined,
): Remark {
  const { handwheel, feed } = finding;
  const { chosen } = doubtful;
  const { unit, divisionLabel } = chosen;
  const { doubt = 0, travel = 0 } = (feed && workingDoubt(chosen, handwheel, feed)) ?? {};
  const over = (overTravel: number) =>
    overOnDial({ ...chosen, overTravel }, (mm) => formatLength(mm, unit, unit === "mm" ? 0 : 1));
  return {
    severity: "warning",
    code: "doubtful-dial",
    path: wild ?? path,
    what: `no dial is made for "${handwheel.name}": its feed is in doubt by ${formatBound(doubt, unit)} over ${over(travel)}${chosen.measuredOnly ? `, of which ${over(chosen.overTravel)} was measured` : ""}, and the division would be ${divisionLabel}`,
    remedy: wild
      ? "take first the reading again that lies off the line of the others"
      : doubtRemedy(finding, doubtful).whole,
  };
}

function noVernier(name: string, parts: number, { chosen }: DialFinding, path: Remark["path"]): Remark {
  const remark = { severity: "warning", code: "no-vernier", path: [...path, "vernier"] } as const;
  if (chosen.rows > 1)
    return {
      ...remark,
      what: `no vernier is made for "${name}": it reads one row of marks, and this dial has ${chosen.rows}, in turn`,
      remedy: "closure: even or closure: true makes one row; or leave the vernier out",
    };
  return {
    ...remark,
    what: `a vernier of ${parts} spans ${parts - 1} divisions of ${chosen.divisionLabel}, more than there is room for beside "${name}"`,
    remedy: "take fewer parts, or a finer division",
  };
}

/** A dial that counts in another unit than the file though nobody asked for that. */
function otherUnit(
  { name, dial: wish }: Handwheel,
  { chosen, choices }: DialFinding,
  units: Units,
  path: Remark["path"],
): Remark[] {
  if (chosen.unit === units || wish?.divisions !== undefined) return [];
  const own = choices.find(({ unit }) => unit === units);
  const counted = units === "in" ? "inches" : "millimetres";
  const asked = wish?.closure === undefined ? "" : ` with closure: ${wish.closure}`;
  return [
    {
      severity: "warning",
      code: "dial-in-other-unit",
      path,
      what: `the dial of "${name}" counts in ${chosen.unit === "in" ? "inches" : "millimetres"}, ${chosen.divisionLabel} a division, while the file counts in ${counted}: its feed divides so much better there${asked}`,
      remedy: own
        ? `for one in ${counted} say divisions: ${own.divisionLabel}, closure: ${own.closure}; plans reckon what is measured over to the dial`
        : `for one in ${counted} give divisions:; plans reckon what is measured over to the dial`,
    },
  ];
}

/** A dial too small for the divisions that the file forces on it. */
function tooClose(name: string, { chosen, second }: DialFinding, units: Units, path: Remark["path"]): Remark[] {
  return [
    { scale: chosen, key: "divisions" },
    { scale: second?.chosen, key: "second" },
  ].flatMap(({ scale, key }): Remark[] =>
    scale === undefined || !blurs(scale.spacing)
      ? []
      : [
          {
            severity: "warning",
            code: "too-close",
            path: [...path, key],
            what: `on "${name}" marks of ${scale.divisionLabel} stand only ${formatSize(scale.spacing, units)} apart and blur`,
            remedy: "take a coarser division, a larger dial, or a coarser division with a vernier",
          },
        ],
  );
}

/** A division that the file asks for and no turn holds, or so many that none could be drawn. */
function impossibleDivisions(
  name: string,
  { chosen, rows, second, forced }: DialFinding,
  { perTurn, units }: { readonly perTurn: number; readonly units: Units },
  path: Remark["path"],
): Remark[] {
  const error = (key: string, code: string, what: string, remedy: string): Remark => ({
    severity: "error",
    code,
    path: [...path, key],
    what,
    remedy,
  });
  const asked = [
    ...(forced ? [{ key: "divisions", chosen, rows }] : []),
    ...(second ? [{ key: "second", chosen: second.chosen, rows: second.rows }] : []),
  ].flatMap(({ key, chosen: { divisionValue, divisionLabel, divisions }, rows }) =>
    divisionValue > perTurn / 2 + 1e-9
      ? [
          error(
            key,
            "too-large",
            `one turn of "${name}" is not two divisions of ${divisionLabel}`,
            `give what one division is worth, a part of the ${formatLength(perTurn, units)} that the dial reads in a turn; mind the unit`,
          ),
        ]
      : rows.length === 0
        ? [
            error(
              key,
              "too-many",
              `${divisions} divisions of ${divisionLabel} cannot be drawn round "${name}"`,
              "mind the decimal point and the unit; a fine reading comes from a vernier",
            ),
          ]
        : [],
  );
  const same =
    second !== undefined &&
    second.chosen.unit === chosen.unit &&
    Math.abs(second.chosen.divisionValue - chosen.divisionValue) < 1e-9;
  return same
    ? [
        ...asked,
        {
          ...error(
            "second",
            "same-scale",
            `the second scale of "${name}" is the first one again`,
            "give it another division, or leave second out",
          ),
          severity: "warning",
        },
      ]
    : asked;
}
