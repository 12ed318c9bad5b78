/** Machine and job files of growing size, for the bench: each pair must grow no worse than n log n. */
const list = (count, make) => Array.from({ length: count }, (_, index) => make(index));

/** Handwheels with feeds and drums of their own. */
const handwheels = (count) =>
  list(
    count,
    (index) =>
      `  - { name: Wheel ${index + 1}, feed: ${(1.9 + 0.013 * index).toFixed(3)}, travel: 60, dial: { shape: drum, diameter: ${30 + (index % 20)}, width: 9 } }`,
  ).join("\n");

const steps = (count) =>
  list(count, (index) => `        - { label: ${index + 1}, driver: ${40 + index}, driven: ${120 - index} }`).join("\n");

/** Two stages: `count` positions in all. */
const positions = (count) => `name: Trial
drive:
  motor: { speed: 1425 rpm }
  stages:
    - name: belt
      steps:
${steps(count / 2)}
    - name: gear
      steps: [{ label: open }, { label: geared, teeth: [[20, 60], [18, 54]] }]
work: { materials: [mild steel, aluminium], diameters: [6, 12, 25, 40] }
`;

/** Readings at quarters of a turn, with a little scatter that is the same every time. */
const readings = (count) => {
  const turns = list(count, (index) => index / 4);
  const travel = turns.map((turn, index) => (2.117 * turn + 0.004 * Math.sin(index * 12.9898)).toFixed(3));
  return `name: Trial
handwheels:
  - name: Slide
    feed:
      readings:
        gauge: 0.001
        turns: [${turns.join(", ")}]
        travel: [${travel.join(", ")}]
    dial: { shape: drum, diameter: 38, width: 9 }
`;
};

/** A part that is stepped down by a little more at each step, and its lengths with it. */
export const job = (count) => `name: Pin
material: mild steel
bar: { diameter: 30, out: 60 }
steps:
${list(count, (index) => `  - { do: turn, to: ${(29.9 - index * 0.05).toFixed(2)}, length: ${(50 - index * 0.2).toFixed(1)}, cut: 0.5, finish: 0.02 }`).join("\n")}
`;

/** What grows, its small and its large count, the machine file, and where one is needed the job file. */
export const growth = [
  { what: "positions", small: 6, large: 60, machine: positions },
  { what: "readings", small: 10, large: 10_000, machine: readings },
  { what: "handwheels", small: 4, large: 20, machine: (count) => `name: Trial\nhandwheels:\n${handwheels(count)}\n` },
  {
    what: "steps",
    small: 12,
    large: 200,
    machine: () =>
      `${positions(6)}handwheels:\n${handwheels(4).replace("Wheel 1", "Cross slide").replace("Wheel 2", "Carriage")}\n`,
    job,
  },
];
