import { type Module, readModule } from "../../src/module/index.js";

/** A module type of our own with every coefficient. */
export const module440: Module = readModule({
  maximumPower: "440 W",
  openCircuitVoltage: "39.2 V",
  shortCircuitCurrent: "14.1 A",
  mppVoltage: "32.8 V",
  mppCurrent: "13.42 A",
  openCircuitVoltageCoefficient: "-0.26 %/K",
  shortCircuitCurrentCoefficient: "0.05 %/K",
  mppCurrentCoefficient: "0.02 %/K",
  maximumPowerCoefficient: "-0.31 %/K",
  statedIn: "invented for the tests",
});

/** The same type with the coefficient of U_OC alone. */
export const bareModule440: Module = readModule({
  maximumPower: "440 W",
  openCircuitVoltage: "39.2 V",
  shortCircuitCurrent: "14.1 A",
  mppVoltage: "32.8 V",
  mppCurrent: "13.42 A",
  openCircuitVoltageCoefficient: "-0.26 %/K",
});
