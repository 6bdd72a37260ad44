import { expect, it } from "vitest";
import * as string from "../../src/string/index.js";

// Every cell a second time, typed apart from the tables; a slip in one of the two is noticed by the other. No evidence: guards are in reference-data/.
it("ceilings of the voltage", () => {
  const again: Readonly<Record<string, readonly string[]>> = {
    dwelling: ["1500", "1500", "1000", "600", "600", "600"],
    building: ["1500", "1500", "1500", "1000", "1000", "1000"],
    ground: ["1500", "1500", "1500", "1500", "1500", "1500"],
  };
  for (const [arrayPlace, cells] of Object.entries(again)) {
    expect(string.pvRuleSets.map(({ key }) => string.voltageCeilings({ arrayPlace, rules: key }).text)).toEqual(cells);
  }
});

it("voltages of rapid shutdown", () => {
  for (const rules of ["NFPA 70:2017", "NFPA 70:2020", "NFPA 70:2023"] as const) {
    expect(string.rapidShutdownVoltages({ shutdownSide: "inside the array boundary", rules }).text).toBe("80");
    expect(string.rapidShutdownVoltages({ shutdownSide: "outside the array boundary", rules }).text).toBe("30");
  }
});

it.each([
  ["0.5", "30"],
  ["20", "30"],
  ["20.1", "20"],
  ["30", "20"],
  ["30.1", "15"],
  ["50", "15"],
  ["50.1", "10"],
  ["100", "10"],
  ["100.1", "7"],
  ["200", "7"],
  ["200.1", "4"],
  ["400", "4"],
  ["400.1", "2"],
  ["500", "2"],
  ["500.1", "1"],
  ["1000000", "1"],
])("insulation of %s kW", (power, due) => {
  expect(string.iec62548_2016_arrayInsulation({ arrayPower: `${power} kW` }).show()).toBe(`${due} kΩ`);
});

it.each([
  ["25", "1"],
  ["25.1", "2"],
  ["50", "2"],
  ["50.1", "3"],
  ["100", "3"],
  ["100.1", "4"],
  ["250", "4"],
  ["250.1", "5"],
  ["1000000", "5"],
])("functional earth of %s kW", (power, due) => {
  expect(string.iec62548_2016_functionalEarthDevice({ arrayPower: `${power} kW` }).show()).toBe(`${due} A`);
});

it("steps of the residual current", () => {
  expect(
    ["30", "60", "150"].map((step) => string.iec62109_2_2011_residualSteps({ residualStep: `${step} mA` }).text),
  ).toEqual(["0.3", "0.15", "0.04"]);
});
