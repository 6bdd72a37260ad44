import { describe, expect, it } from "vitest";
import {
  bifacialCurrent,
  bifacialEquivalentIrradiance,
  bifacialRearIrradiance,
  bifacialityBy,
  bifacialShortCircuitCurrent,
  readModule,
  shortCircuitCurrentUnder,
} from "../../src/module/index.js";
import type { Quantity } from "../../src/quantity/index.js";

const facts = {
  maximumPower: "440 W",
  openCircuitVoltage: "39.2 V",
  shortCircuitCurrent: "14 A",
  mppVoltage: "32.8 V",
  mppCurrent: "13.42 A",
  openCircuitVoltageCoefficient: "-0.26 %/K",
};
const type = readModule({ ...facts, bifacialityOfCurrent: "0.8", bifacialityOfPower: "0.75" });
const light = {
  frontIrradiance: "1000 W/m2",
  rearIrradiance: bifacialRearIrradiance({ bifacialCondition: "nameplate" }),
};

describe("bifacial modules", () => {
  it("take the coefficient of their edition", () => {
    expect((bifacialityBy("IEC TS 60904-1-2:2024", type) as Quantity).text).toBe("0.8");
    expect((bifacialityBy("IEC TS 60904-1-2:2019", type) as Quantity).text).toBe("0.75");
  });

  it("carry the current of the equivalent irradiance", () => {
    expect(bifacialEquivalentIrradiance({ ...light, bifaciality: "0.8" }).text).toBe("1108");
    expect((bifacialCurrent(type, { ...light, edition: "IEC TS 60904-1-2:2024" }) as Quantity).text).toBe("15.512");
    const front = shortCircuitCurrentUnder({
      shortCircuitCurrent: "14 A",
      shortCircuitCurrentCoefficient: "0 %/K",
      cellTemperature: "25 °C",
      irradiance: "1108 W/m2",
    });
    expect(front.text).toBe("15.512");
  });

  it("are as one-sided ones without light or cells on the rear", () => {
    for (const change of [
      { rearIrradiance: "0 W/m2", bifaciality: "0.8" },
      { rearIrradiance: "300 W/m2", bifaciality: "0" },
    ]) {
      expect(
        bifacialShortCircuitCurrent({ shortCircuitCurrent: "14 A", frontIrradiance: "1000 W/m2", ...change }).text,
      ).toBe("14");
    }
  });

  it("leave the current open where the datasheet does not state the coefficient", () => {
    const plain = readModule(facts, "moduleTypes.B");
    expect(bifacialCurrent(plain, { ...light, edition: "IEC TS 60904-1-2:2024" })).toEqual({
      missing: ["moduleTypes.B.bifacialityOfCurrent"],
    });
    expect(bifacialCurrent(plain, { ...light, edition: "IEC TS 60904-1-2:2019" })).toEqual({
      missing: ["moduleTypes.B.bifacialityOfCurrent", "moduleTypes.B.bifacialityOfPower"],
    });
  });
});
