/** The most that the files of a machine may hold, each refused with its place before any work begins. Set so that no workshop meets
 *  them, and a file at any of them is checked within two seconds and 300 MB. Ratios and sizes have theirs with their kind of value. */
export const MOST = {
  /** Letters of a machine, job or template file. */
  letters: 200_000,
  /** Bytes of a CSV file. */
  csvBytes: 4_000_000,
  /** Of one handwheel. */
  readings: 20_000,
  distances: 1000,
  handwheels: 20,
  stages: 12,
  steps: 30,
  /** Ways through a drive: the product of its stages' steps. */
  positions: 200,
  gearPairs: 10,
  idlers: 10,
  motorSpeeds: 12,
  tachometer: 500,
  coverHoles: 30,
  materials: 30,
  diameters: 1000,
  drills: 300,
  cuttingSpeeds: 300,
  stops: 200,
  tapers: 100,
  scales: 60,
  gears: 100,
  plates: 8,
  /** Of one plate. */
  circles: 24,
  printers: 50,
  jobSteps: 200,
  /** In one part. */
  holesAlike: 500,
  /** Of one template. */
  blocks: 60,
} as const;
