import { readingPerTurn } from "../dial/choices.js";
import type { Findings, HandwheelFinding } from "../findings/findings.js";
import { divisionWorth, type Setting, settingFor } from "../turns/turns.js";

/** A handwheel that can be told how far to go. */
export type Wheel = {
  readonly name: string;
  /** What its dial shows for one turn, mm. */
  readonly perTurn: number;
  /** Shown for one mm of the slide's travel: 2 where the dial reads diameter. */
  readonly factor: number;
  readonly travel?: number;
  /** A tenth of a division, as travel of the slide, mm; 0 without a dial. */
  readonly tenth: number;
  readonly finding: HandwheelFinding;
};

export type Role = "across" | "along" | "tailstock";

const names: Readonly<Record<Role, readonly RegExp[]>> = {
  across: [/cross/i],
  along: [/carriage|saddle|apron|bed/i, /top ?slide|compound|upper slide/i],
  tailstock: [/tailstock|barrel|quill/i],
};

/** The handwheel for a role, by the usual words in its name; for `along` the last of those that reach far enough, since the
 *  finer slide divides better. Undefined where the file has none with a feed. */
export function wheelFor(findings: Findings, role: Role, distance: number): Wheel | undefined {
  const able = names[role].flatMap((word) =>
    findings.handwheels.filter(({ handwheel, feed }) => feed !== undefined && word.test(handwheel.name)),
  );
  const others = role === "across" ? findings.handwheels.filter(({ handwheel }) => handwheel.reads === "diameter") : [];
  const wheels = [...able, ...others].flatMap(wheel);
  const reaching = wheels.filter(({ travel }) => travel === undefined || travel >= distance);
  return role === "along" ? (reaching.at(-1) ?? wheels[0]) : wheels[0];
}

function wheel(finding: HandwheelFinding): Wheel[] {
  const { handwheel, feed, dial } = finding;
  if (feed === undefined) return [];
  const perTurn = readingPerTurn(feed, handwheel.reads);
  const factor = perTurn / feed.perTurn;
  return [
    {
      name: handwheel.name,
      perTurn,
      factor,
      ...(handwheel.travel !== undefined && { travel: handwheel.travel }),
      tenth: dial === undefined ? 0 : divisionWorth(dial.chosen, perTurn) / 10 / factor,
      finding,
    },
  ];
}

/** How to move the slide itself by a distance. */
export const moveBy = (wheel: Wheel, distance: number): Setting =>
  settingFor(distance * wheel.factor, wheel.perTurn, wheel.finding.dial?.chosen);

/** What the dial's own numbers say there. A tool that feeds outwards (boring) runs the dial backwards. */
export function dialReads({ finding, perTurn }: Wheel, setting: Setting, outwards = false): number | undefined {
  const dial = finding.dial?.chosen;
  if (dial === undefined || setting.divisions === undefined) return undefined;
  const whole = dial.closure === "even" ? dial.divisions * dial.divisionValue : perTurn * dial.rows;
  const forward = setting.reading ?? setting.divisions * dial.divisionValue;
  return outwards && forward > 1e-9 ? whole - forward : forward;
}
