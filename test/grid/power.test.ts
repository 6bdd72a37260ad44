import { fc, test } from "@fast-check/vitest";
import { describe, expect, it } from "vitest";
import "../harness/fast-check.js";
import {
  activePowerBesideReactive,
  activePowerLimitOfShare,
  activePowerWithinCurrentLimit,
  apparentPowerForPowerFactor,
  apparentPowerOf,
  exportedPower,
  outputCurrentSinglePhase,
  outputCurrentThreePhase,
  powerFactorOf,
  reactivePowerAtPowerFactor,
  reactivePowerOfShare,
  reactiveShareOfPowerFactor,
} from "../../src/grid/index.js";

describe("apparent, active and reactive power", () => {
  it("form a right triangle, whichever way the reactive power flows", () => {
    expect(apparentPowerOf({ activePower: "3 kW", reactivePower: "4 kvar" }).in("kVA").show()).toBe("5 kVA");
    expect(apparentPowerOf({ activePower: "3 kW", reactivePower: "-4 kvar" }).in("kVA").show()).toBe("5 kVA");
    expect(powerFactorOf({ activePower: "3 kW", reactivePower: "-4 kvar" }).number).toBe(0.6);
  });

  test.prop([fc.integer({ min: 1, max: 100_000 }), fc.integer({ min: 11, max: 100 })])(
    "agree along both ways round the triangle",
    (p, hundredths) => {
      const given = { activePower: p, powerFactor: hundredths / 100 };
      const reactivePower = reactivePowerAtPowerFactor(given);
      expect(apparentPowerOf({ activePower: p, reactivePower }).number).toBeCloseTo(
        apparentPowerForPowerFactor(given).number,
        6,
      );
      expect(powerFactorOf({ activePower: p, reactivePower }).number).toBeCloseTo(given.powerFactor, 12);
    },
  );

  it("leave what the reactive power does not take", () => {
    expect(activePowerBesideReactive({ apparentPower: "5 kVA", reactivePower: "-3 kvar" }).number).toBe(4000);
    expect(activePowerBesideReactive({ apparentPower: "5 kVA", reactivePower: "5 kvar" }).number).toBe(0);
    expect(() => activePowerBesideReactive({ apparentPower: "5 kVA", reactivePower: "-5001 var" })).toThrow(
      "must not exceed",
    );
  });

  it("keep the sign of a share", () => {
    expect(reactivePowerOfShare({ apparentPower: "10 kVA", reactiveShare: "-44 %" }).text).toBe("-4400");
    expect(reactiveShareOfPowerFactor({ powerFactor: "0.6", direction: -1 }).number).toBe(-0.8);
    expect(() => reactiveShareOfPowerFactor({ powerFactor: "0.9", direction: 0 })).toThrow(
      "either injected or absorbed",
    );
  });
});

describe("currents and limits of power", () => {
  it("divide by the voltage of the conductors", () => {
    expect(outputCurrentThreePhase({ apparentPower: "15 kVA", lineVoltage: "400 V" }).show({ digits: 5 })).toBe(
      "21.651 A",
    );
    expect(outputCurrentSinglePhase({ apparentPower: "4.6 kVA", voltage: "230 V" }).text).toBe("20");
    expect(activePowerWithinCurrentLimit({ currentLimit: "16 A", voltage: "230 V" }).text).toBe("3680");
  });

  it("limit by a share, and balance at the meter", () => {
    expect(activePowerLimitOfShare({ installedPower: "10 kW", limitShare: "70 %" }).text).toBe("7000");
    expect(exportedPower({ activePower: "7 kW", loadPower: "0 W" }).text).toBe("7000");
    expect(exportedPower({ activePower: "1 kW", loadPower: "3 kW" }).text).toBe("-2000");
  });
});
