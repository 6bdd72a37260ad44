import { expect, it } from "vitest";
import {
  absorbing,
  bifacialCurrentCorrection,
  conductorLength,
  lengthToOrder,
  powerOfStrings,
  reactiveFactorOf,
} from "../../src/plant/index.js";

// Values that a person can work out on paper.
it("lengths of cable", () => {
  expect(conductorLength({ length: "40 m", circuits: 3, cables: 2 }).text).toBe("240");
  expect(lengthToOrder({ lengths: ["10 m", "20 m"], cableAllowance: "10 %" }).text).toBe("33");
});

it("power of an array, and the share of reactive power", () => {
  expect(powerOfStrings({ modules: 12, strings: 3, maximumPower: "440 W" }).text).toBe("15840");
  expect(reactiveFactorOf({ powerFactor: 0.8 }).text).toBe("0.6");
  expect(absorbing({ reactiveFactor: 0.44 }).text).toBe("-0.44");
});

it("a rear of 70 % under 200 W/m² adds 14 %", () => {
  expect(bifacialCurrentCorrection({ bifacialityOfCurrent: "70 %", rearIrradiance: "200 W/m2" }).text).toBe("1.14");
});
