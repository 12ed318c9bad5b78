import type { Findings } from "../../src/findings/findings.js";
import { findingsOf } from "./sheets.js";

/** A lathe that also stands on end, of sixteen belt positions, some nearly alike. `drive`: more lines of its drive; `rest`: what follows. */
export const sixteenOnEnd = ({ drive = "", rest = "" } = {}): Findings =>
  findingsOf(`name: D
kind: lathe stood on end
limits: { chuck: 3000 rpm, drill: 13 }
drive:
  motor: { speed: 1425 rpm }
${drive}  stages:
    - { name: m, steps: [{ label: "1", driver: 45, driven: 105 }, { label: "2", driver: 60, driven: 90 }, { label: "3", driver: 75, driven: 75 }, { label: "4", driver: 90, driven: 60 }] }
    - { name: s, steps: [{ driver: 50, driven: 110 }, { driver: 65, driven: 95 }, { driver: 80, driven: 80 }, { driver: 95, driven: 65 }] }
${rest}`);
