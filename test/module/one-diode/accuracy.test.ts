import { fc, test } from "@fast-check/vitest";
import { describe, expect, it } from "vitest";
import { diodeCurrent, diodePoints, diodeVoltage } from "../../../src/module/index.js";
import { idealCell, modules, rtcCell } from "./diodes.js";
import { exactCurrent, exactVoltage, idealMppVoltage, shortMppVoltage } from "./lambert-w.js";

const share = fc.double({ min: -0.2, max: 1.1, noNaN: true });
const STATED = 1e-9;

describe("the one-diode model against its closed form in 64 digits", () => {
  // Near open circuit the current passes through zero, so the difference is held against the short-circuit current there.
  test.prop([modules, share])("gives the current to 1e-9", (diode, at) => {
    const { openCircuitVoltage, shortCircuitCurrent } = diodePoints(diode);
    const voltage = at * openCircuitVoltage;
    const exact = exactCurrent(diode, voltage);
    const size = Math.max(Math.abs(exact.toNumber()), shortCircuitCurrent / 1000);
    expect(Math.abs(exact.minus(diodeCurrent(diode, voltage)).toNumber()) / size).toBeLessThan(STATED);
  });

  test.prop([modules, share])("gives the voltage to 1e-9", (diode, at) => {
    const current = at * diode.photocurrent;
    const exact = exactVoltage(diode, current);
    const size = Math.max(Math.abs(exact.toNumber()), diodePoints(diode).openCircuitVoltage / 1000);
    expect(Math.abs(exact.minus(diodeVoltage(diode, current)).toNumber()) / size).toBeLessThan(STATED);
  });

  it("agrees over the RTC cell to the last digits of a double", () => {
    for (let voltage = -0.2; voltage < 0.6; voltage += 0.01) {
      expect(Math.abs(exactCurrent(rtcCell, voltage).minus(diodeCurrent(rtcCell, voltage)).toNumber())).toBeLessThan(
        3e-15,
      );
    }
  });

  it("finds the maximum power point of an ideal diode, for which a short form in print is 0.2 % high", () => {
    const { mppVoltage } = diodePoints(idealCell);
    expect(Math.abs(idealMppVoltage(idealCell).minus(mppVoltage).toNumber())).toBeLessThan(1e-15);
    expect(mppVoltage.toFixed(5)).toBe("0.56739");
    expect(shortMppVoltage(idealCell).toNumber().toFixed(5)).toBe("0.56848");
  });
});
