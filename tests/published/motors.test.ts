import { describe, expect, test } from "vitest";
import { motorSlip, onOtherMains, plate, synchronousRpm } from "../../src/drive/motor.js";

describe("mains motors", () => {
  test("M1: 2 poles, 60 Hz, 3554 rpm: field 3600, slip 1.3 % (DOE-HDBK-1011/4, Electrical Science, ES-12 p. 6; read)", () => {
    expect(synchronousRpm(60, 2)).toBe(3600);
    expect(motorSlip(3554, 3600) * 100).toBeCloseTo(1.3, 1);
  });

  test("M2: 4 poles, 50 Hz, slip 4 %: 1440 rpm (sarthaks.com question 2713326; read)", () => {
    expect(synchronousRpm(50, 4) * 0.96).toBeCloseTo(1440, 9);
    expect(plate(1440, 50)).toEqual({ poles: 4, slip: expect.closeTo(0.04, 9) });
  });

  test("M3: 4 poles, 60 Hz, slip 5 %: 1710 rpm (a student's exercise page; read)", () => {
    expect(plate(1710, 60)).toEqual({ poles: 4, slip: expect.closeTo(0.05, 9) });
  });

  test("M4: 4 poles, 50 Hz: field 1500, full load 1450 (engineeringtoolbox.com, induction motor speeds; read)", () => {
    expect(synchronousRpm(50, 4) - 1450).toBe(50);
  });

  test.each([
    [3500, 60, 2],
    [1770, 60, 4],
    [1170, 60, 6],
    [870, 60, 8],
    [2900, 50, 2],
    [1450, 50, 4],
    [960, 50, 6],
    [720, 50, 8],
  ])(
    "a plate of %i rpm at %i Hz is that of %i poles (engineeringtoolbox.com, induction motor speeds; read)",
    (rpm, hertz, poles) => {
      expect(plate(rpm, hertz)?.poles).toBe(poles);
    },
  );

  test("1425 rpm at 50 Hz runs at 1710 on 60 Hz (own arithmetic: 5 % slip kept)", () => {
    expect(onOtherMains(1425, 50, 60)).toBeCloseTo(1710, 9);
    expect(onOtherMains(400, 50, 60)).toBeUndefined();
  });
});
