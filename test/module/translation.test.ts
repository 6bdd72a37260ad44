import { fc, test } from "@fast-check/vitest";
import { describe, expect, it } from "vitest";
import {
  absoluteCurrentCoefficient,
  absoluteVoltageCoefficient,
  maximumPowerAt,
  maximumPowerUnder,
  moduleVoltageCoefficient,
  mppCurrentAt,
  mppCurrentUnder,
  mppVoltageAt,
  mppVoltageCoefficientFromPower,
  mppVoltageCoefficientFromShortCircuit,
  openCircuitVoltageAt,
  openCircuitVoltageUnder,
  relativeCurrentCoefficient,
  relativePowerCoefficient,
  relativeVoltageCoefficient,
  shortCircuitCurrentAt,
  shortCircuitCurrentUnder,
  voltageAt,
} from "../../src/module/index.js";
import { isInputError } from "../../src/quantity/index.js";

/** Decimals with a few digits, as datasheets print them. */
const decimal = (from: number, to: number, digits: number) =>
  fc
    .integer({ min: Math.round(from * 10 ** digits), max: Math.round(to * 10 ** digits) })
    .map((n) => (n / 10 ** digits).toFixed(digits));
const voltage = decimal(0.6, 150, 2).map((text) => `${text} V`);
const falling = decimal(-0.6, -0.05, 3).map((text) => `${text} %/K`);
const temperature = decimal(-60, 110, 1);

function codeOf(call: () => unknown): string {
  try {
    call();
  } catch (error) {
    if (isInputError(error)) return error.problems.map(({ code }) => code).join();
    throw error;
  }
  return "none";
}

describe("values that can be checked by hand", () => {
  it.each([
    ["25 °C", "40"],
    ["-10 °C", "43.5"],
    ["-10.1 °C", "43.51"],
    ["75 °C", "35"],
  ])("40 V with −0.25 %%/K is at %s %s V", (cellTemperature, due) => {
    expect(
      openCircuitVoltageAt({ openCircuitVoltage: "40 V", openCircuitVoltageCoefficient: "-0.25 %/K", cellTemperature })
        .text,
    ).toBe(due);
  });

  it("translates the other values alike", () => {
    const hot = { cellTemperature: "75 °C" };
    expect(mppVoltageAt({ mppVoltage: "32 V", mppVoltageCoefficient: "-0.35 %/K", ...hot }).text).toBe("26.4");
    expect(
      shortCircuitCurrentAt({ shortCircuitCurrent: "14 A", shortCircuitCurrentCoefficient: "0.05 %/K", ...hot }).text,
    ).toBe("14.35");
    expect(mppCurrentAt({ mppCurrent: "13 A", mppCurrentCoefficient: "-0.02 %/K", ...hot }).text).toBe("12.87");
    expect(maximumPowerAt({ maximumPower: "440 W", maximumPowerCoefficient: "-0.3 %/K", ...hot }).text).toBe("374");
  });

  it("scales current and power with the light", () => {
    const half = { cellTemperature: "25 °C", irradiance: "500 W/m2" };
    expect(
      shortCircuitCurrentUnder({ shortCircuitCurrent: "14 A", shortCircuitCurrentCoefficient: "0.05 %/K", ...half })
        .text,
    ).toBe("7");
    expect(mppCurrentUnder({ mppCurrent: "13 A", mppCurrentCoefficient: "0.02 %/K", ...half }).text).toBe("6.5");
    expect(maximumPowerUnder({ maximumPower: "440 W", maximumPowerCoefficient: "-0.3 %/K", ...half }).text).toBe("220");
  });

  it("lowers the open-circuit voltage by the logarithm of the light, not in proportion", () => {
    const type = {
      openCircuitVoltage: "40 V",
      openCircuitVoltageCoefficient: "-0.25 %/K",
      cellTemperature: "25 °C",
      diodeFactor: 1,
      cellsInSeries: 60,
    };
    expect(openCircuitVoltageUnder({ ...type, irradiance: "1000 W/m2" }).text).toBe("40");
    // 60 cells · 25.69 mV · ln 0.5 = −1.0685 V
    expect(openCircuitVoltageUnder({ ...type, irradiance: "500 W/m2" }).show()).toBe("38.93 V");
  });
});

describe("coefficients in every unit of a datasheet", () => {
  it.each([
    ["-130 mV/K", "50 V", "-0.0026"],
    ["-0.13 V/°C", "50 V", "-0.0026"],
    ["-0.13 V/K", "50 V", "-0.0026"],
    ["-130 mV/°C", "50 V", "-0.0026"],
  ])("%s of %s is %s 1/K", (absolute, stcVoltage, due) => {
    expect(relativeVoltageCoefficient({ absoluteVoltageCoefficient: absolute, stcVoltage }).text).toBe(due);
  });

  it.each([
    ["5 mA/K", "0.0005"],
    ["0.005 A/°C", "0.0005"],
    ["5 mA/°C", "0.0005"],
  ])("%s of 10 A is %s 1/K", (absolute, due) => {
    expect(relativeCurrentCoefficient({ absoluteCurrentCoefficient: absolute, stcCurrent: "10 A" }).text).toBe(due);
  });

  it("multiplies a coefficient per cell, and takes one of the power in W/K", () => {
    expect(moduleVoltageCoefficient({ cellVoltageCoefficient: "-2.1 mV/K", cellsInSeries: 60 }).in("mV/K").text).toBe(
      "-126",
    );
    expect(
      relativePowerCoefficient({ absolutePowerCoefficient: "-1.2 W/K", maximumPower: "400 W" }).in("%/K").text,
    ).toBe("-0.3");
  });

  it("refuses a coefficient of the open-circuit voltage above zero, and zero", () => {
    const at = (openCircuitVoltageCoefficient: string) => () =>
      openCircuitVoltageAt({ openCircuitVoltage: "40 V", openCircuitVoltageCoefficient, cellTemperature: "0 °C" });
    expect(codeOf(at("0.25 %/K"))).toBe("out-of-domain");
    expect(codeOf(at("0 %/K"))).toBe("out-of-domain");
    expect(codeOf(at("-0.0001 %/K"))).toBe("none");
    expect(codeOf(at("-1 %/K"))).toBe("out-of-domain");
    expect(codeOf(at("-0.9999 %/K"))).toBe("none");
    expect(codeOf(at("-0.25"))).toBe("implausible");
    expect(codeOf(at("-100 mV/K"))).toBe("other-dimension");
  });

  it("estimates the coefficient of U_MPP from those of power and current", () => {
    const power = { maximumPowerCoefficient: "-0.31 %/K" };
    expect(mppVoltageCoefficientFromPower({ ...power, mppCurrentCoefficient: "0.02 %/K" }).in("%/K").text).toBe(
      "-0.33",
    );
    expect(
      mppVoltageCoefficientFromShortCircuit({ ...power, shortCircuitCurrentCoefficient: "0.05 %/K" }).in("%/K").text,
    ).toBe("-0.36");
  });
});

describe("laws", () => {
  test.prop([voltage, falling, temperature, decimal(0, 50, 1)])(
    "colder never lowers the open-circuit voltage",
    (openCircuitVoltage, openCircuitVoltageCoefficient, at, less) => {
      const volts = (celsius: number): number =>
        openCircuitVoltageAt({
          openCircuitVoltage,
          openCircuitVoltageCoefficient,
          cellTemperature: `${celsius.toFixed(1)} °C`,
        }).number;
      expect(volts(Number(at) - Number(less))).toBeGreaterThanOrEqual(volts(Number(at)));
    },
  );

  test.prop([voltage, falling, temperature])(
    "relative and absolute coefficients agree, exactly",
    (stcVoltage, relativeCoefficient, at) => {
      const cellTemperature = `${at} °C`;
      const byShare = openCircuitVoltageAt({
        openCircuitVoltage: stcVoltage,
        openCircuitVoltageCoefficient: relativeCoefficient,
        cellTemperature,
      });
      const absolute = absoluteVoltageCoefficient({ relativeVoltageCoefficient: relativeCoefficient, stcVoltage });
      expect(voltageAt({ stcVoltage, absoluteVoltageCoefficient: absolute, cellTemperature }).text).toBe(byShare.text);
      expect(
        relativeVoltageCoefficient({ absoluteVoltageCoefficient: absolute, stcVoltage }).in("%/K").number,
      ).toBeCloseTo(Number.parseFloat(relativeCoefficient), 12);
    },
  );

  test.prop([decimal(1, 30, 2), decimal(-0.1, 0.2, 3)])(
    "absolute current coefficients come back as they went in",
    (amperes, percent) => {
      const stcCurrent = `${amperes} A`;
      const absolute = absoluteCurrentCoefficient({ relativeCurrentCoefficient: `${percent} %/K`, stcCurrent });
      expect(
        relativeCurrentCoefficient({ absoluteCurrentCoefficient: absolute, stcCurrent }).in("%/K").number,
      ).toBeCloseTo(Number(percent), 12);
    },
  );

  test.prop([voltage, falling])(
    "at 25 °C every value is its own",
    (openCircuitVoltage, openCircuitVoltageCoefficient) => {
      const same = openCircuitVoltageAt({
        openCircuitVoltage,
        openCircuitVoltageCoefficient,
        cellTemperature: "25 °C",
      });
      expect(same.number).toBe(Number.parseFloat(openCircuitVoltage));
      expect(same.rounded).toBe(false);
    },
  );

  test.prop([voltage, falling, decimal(0, 80, 1)])(
    "warmer by so many kelvin lowers what colder raises",
    (openCircuitVoltage, openCircuitVoltageCoefficient, kelvin) => {
      const at = (cellTemperature: number): number =>
        openCircuitVoltageAt({
          openCircuitVoltage,
          openCircuitVoltageCoefficient,
          cellTemperature: `${cellTemperature.toFixed(1)} °C`,
        }).number;
      const [hot, cold] = [at(25 + Number(kelvin)), at(25 - Number(kelvin))];
      expect(hot + cold).toBeCloseTo(2 * Number.parseFloat(openCircuitVoltage), 9);
    },
  );
});
