/** A machine file just under the bound of letters: every wheel, plate, circle, gear, diameter, stop, taper and scale that it may hold, a
 *  drive of nearly as many positions, and readings and distances as many as there are letters left for. */
const list = (count, make) => Array.from({ length: count }, (_, index) => make(index));
const rows = (count, make) => list(count, (index) => `  - ${make(index)}`).join("\n");

/** `most`: the bounds of src/machine/bounds.ts. */
export function machineAtBounds(most) {
  const wave = (index) => 0.004 * Math.sin(index * 12.9898);
  const readings = (wheel, count) =>
    `readings: { gauge: 0.001, turns: [${list(count, (index) => index / 4).join(", ")}], travel: [${list(count, (index) => ((1.9 + wheel / 50) * (index / 4) + wave(index)).toFixed(3)).join(", ")}] }`;
  const wheel = (count) => (index) =>
    `{ name: Wheel ${index + 1}, travel: 200, feed: { ${readings(index, count)} }, distances: [${list(most.distances / 10, (at) => (0.3 * (at + 1)).toFixed(1)).join(", ")}], dial: { shape: drum, diameter: ${30 + (index % 20)}, width: 9 } }`;
  const machine = (count) => `name: At all bounds
drive:
  motor: { speeds: [${list(most.motorSpeeds, (index) => 300 + 100 * index).join(", ")}] }
  stages:
    - name: belt
      steps: [${list(4, (index) => `{ driver: ${40 + 7 * index}, driven: ${120 - 7 * index} }`).join(", ")}]
    - name: gear
      steps: [{ label: open }, { label: geared, teeth: [[20, 60], [18, 54]] }]
    - name: counter
      steps: [{ driver: 60, driven: 90 }, { driver: 75, driven: 75 }]
work:
  diameters: [${list(most.diameters, (index) => (1 + index / 10).toFixed(1)).join(", ")}]
  materials: [mild steel, free-cutting steel, brass, aluminium, grey cast iron]
stops:
${rows(most.stops, (index) => `{ name: stop ${index}, handwheel: Wheel ${1 + (index % most.handwheels)}, length: ${(1 + index / 10).toFixed(1)}, tolerance: 0.1 }`)}
tapers:
${rows(most.tapers, (index) => `{ name: taper ${index}, large: ${20 + index}, small: ${15 + index}, length: ${20 + index} }`)}
scales:
${rows(most.scales, (index) => `{ name: Scale ${index}, length: ${40 + index}, width: 7, divisions: 1 mm }`)}
gears: [${list(most.gears, (index) => 20 + index).join(", ")}]
dividing: { ratio: 40, plates: [${list(most.plates, (plate) => `[${list(most.circles, (at) => 15 + 5 * plate + 7 * at)}]`).join(", ")}] }
handwheels:
${rows(most.handwheels, wheel(count))}
`;
  let count = most.readings;
  while (machine(count).length > most.letters) count = Math.floor(count * 0.9);
  return machine(count);
}
