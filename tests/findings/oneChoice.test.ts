import { expect, test } from "vitest";
import { supposed, supposedLaid } from "../../src/answers/supposed.js";
import { rangesTold } from "../../src/blocks/speeds/rangeWords.js";
import { servedDiameters } from "../../src/findings/servedDiameters.js";
import { speedFor } from "../../src/findings/speedChoice.js";
import { planOf } from "../../src/plan/plan.js";
import { explainCuttingSpeed } from "../../src/working/cuttingSpeed.js";
import { jobOf } from "../support/job.js";
import { demoFindings, findingsOf, textsOf } from "../support/sheets.js";

/** Low B is measured at 482, and High C comes to 506 by its ratio: nearly the same, so that a card has one row for both. */
const lathe = findingsOf(`name: L
units: in
limits: { chuck: 1400 rpm }
drive:
  motor: { speed: 1725 rpm }
  stages:
    - { name: motor, steps: [{ label: High, driver: 3.0, driven: 6.0 }, { label: Low, driver: 2.0, driven: 7.0 }] }
    - { name: cone, steps: [{ label: A, driver: 5.0, driven: 3.0 }, { label: B, driver: 4.0, driven: 4.0 }, { label: C, driver: 3.0, driven: 5.0 }] }
  tachometer:
    - { position: [High, B], speed: 842 rpm }
    - { position: [Low, B], speed: 482 rpm }
handwheels:
  - { name: Cross slide, reads: diameter, travel: 4, feed: { perTurn: 0.1, uncertainty: 0.0001 }, dial: { shape: drum, diameter: 1.5, width: 0.4 } }
  - { name: Carriage, travel: 20, feed: 2.75 }
work: { materials: [grey cast iron], diameters: [1/2], drills: [1/2] }
`);

const half = 12.7;

test("card, plan, student and the choice of a speed name the same belt for the same work", () => {
  const cut = { operation: "turning", material: "grey cast iron", diameter: half };
  expect(speedFor(cut, lathe)?.speed?.position.name).toBe("Low B");
  const served = servedDiameters("grey cast iron", "turning", lathe)?.find(({ from, to }) => from < half && half <= to);
  expect(served?.speed?.position.name).toBe("Low B");
  const job = jobOf(["do: turn, to: 0.45, length: 0.5"], "units: in\nbar: { diameter: 1/2, out: 1 }", "grey cast iron");
  expect(planOf(job, lathe).steps.map(({ speed }) => speed?.speed?.position.name)).toEqual(["Low B"]);
  const student = textsOf(lathe, "student");
  expect(student).toContain("Low B");
  expect(student).not.toContain("High C");
});

test("a size at which two rows of the card meet is served by the row up to it, as plan, student and choice have it", () => {
  let ends = 0;
  for (const findings of [lathe, demoFindings()])
    for (const material of findings.machine.work.materials) {
      const told = rangesTold(servedDiameters(material, "turning", findings) ?? [], "turning", findings);
      for (const { served, words } of told.slice(0, -1)) {
        const cut = { operation: "turning", material, diameter: served.to };
        expect(speedFor(cut, findings)?.speed?.position.name, words).toBe(served.speed?.position.name);
        ends++;
      }
    }
  expect(ends).toBeGreaterThan(10);
});

test("on the card the row of that belt is the one that holds the work", () => {
  const rows = servedDiameters("grey cast iron", "turning", lathe)?.flatMap(({ speed }) => speed?.position.name ?? []);
  expect(rows).not.toContain("High C");
});

test("explain lists what is chosen among, says what stands for what, and chooses the fastest below the band's of its own list", () => {
  const working = explainCuttingSpeed(lathe)[0]?.explain();
  if (working === undefined || "missing" in working) throw new Error("nothing is explained");
  const inputOf = (name: string) => working.inputs.find((input) => input.name === name)?.value;
  const speeds = [inputOf("speeds to choose from") ?? []].flat().map(Number);
  const most = Number(inputOf("n, most"));
  const fastest = Math.max(...speeds.filter((rpm) => rpm <= most));
  expect(working.result.value).toBe("Low B");
  expect(fastest).toBe(lathe.drive?.speeds.find(({ position }) => position.name === "Low B")?.rpm);
  expect(working.notes?.join("\n")).toMatch(/^Low B stands for High C \(5\d\d rpm\) too/m);
});

test("before a supposed change the same belt is named as on the cards", () => {
  const parts = supposedLaid(lathe, supposed(lathe, ["motor 1750 rpm"]));
  const chosen = parts.find(({ heading }) => heading.startsWith("Positions for"))?.rows.map(({ cells }) => cells[1]);
  expect(chosen).toEqual(["2 B 482"]);
});
