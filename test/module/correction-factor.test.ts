import { describe, expect, it } from "vitest";
import {
  flatVoltageFactor,
  nfpa70_2005_690_7,
  nfpa70_2020_690_7_a,
  openCircuitVoltageAt,
  openCircuitVoltageByDocument,
  openCircuitVoltageByFactor,
  uteC15VoltageFactor,
  voltageCorrectionFactor,
  voltageFactorDocuments,
} from "../../src/module/index.js";
import { gradeOf } from "../../src/formula/index.js";
import { isInputError } from "../../src/quantity/index.js";

function refusal(call: () => unknown): string {
  try {
    call();
  } catch (error) {
    if (isInputError(error)) return error.problems.map(({ code }) => code).join();
    throw error;
  }
  return "none";
}

describe("rows of whole degrees", () => {
  it.each([
    ["24 °C", "1.02"],
    ["20 °C", "1.02"],
    ["19.9 °C", "1.04"],
    ["19 °C", "1.04"],
    ["0 °C", "1.1"],
    ["-0.1 °C", "1.12"],
    ["-5 °C", "1.12"],
    ["-5.4 °C", "1.14"],
    ["-6 °C", "1.14"],
    ["-10 °C", "1.14"],
    ["-10.1 °C", "1.16"],
    ["-40 °C", "1.25"],
  ])("at %s the factor is %s: between two rows the colder one holds", (coldest, due) => {
    expect(uteC15VoltageFactor({ coldest }).text).toBe(due);
    expect(nfpa70_2020_690_7_a({ coldest }).text).toBe(due);
  });

  it("takes the Fahrenheit rows of NFPA 70 by their exact temperature", () => {
    // The row 22 to 14 °F, the row 31 to 23 °F, and the first row from 76 °F.
    for (const [coldest, due] of [
      ["22 °F", "1.14"],
      ["14 °F", "1.14"],
      ["31 °F", "1.12"],
      ["23 °F", "1.12"],
      ["76 °F", "1.02"],
      ["-40 °F", "1.25"],
    ] as const) {
      expect(nfpa70_2020_690_7_a({ coldest }).text).toBe(due);
    }
  });

  it("refuses what lies outside the table", () => {
    expect(refusal(() => uteC15VoltageFactor({ coldest: "-40.1 °C" }))).toBe("not-tabulated");
    expect(refusal(() => uteC15VoltageFactor({ coldest: "24.1 °C" }))).toBe("out-of-domain");
    expect(refusal(() => nfpa70_2020_690_7_a({ coldest: "25 °C" }))).toBe("out-of-domain");
    expect(refusal(() => nfpa70_2005_690_7({ coldest: "-41 °C" }))).toBe("not-tabulated");
  });

  it("keeps the coarse table of old codes apart", () => {
    expect(nfpa70_2005_690_7({ coldest: "-8 °C" }).text).toBe("1.13");
    expect(nfpa70_2020_690_7_a({ coldest: "-8 °C" }).text).toBe("1.14");
  });
});

describe("a factor by its document", () => {
  it("is known for every document of the list, with the document's grade", () => {
    for (const { key, grade } of voltageFactorDocuments) {
      expect(gradeOf(voltageCorrectionFactor({ document: key, coldest: "-7 °C" }))).toBe(grade);
    }
  });

  it("is refused for a document without a table", () => {
    expect(refusal(() => voltageCorrectionFactor({ document: "IEC 62548-1:2023", coldest: "-7 °C" }))).toBe(
      "not-in-list",
    );
  });

  it("multiplies the open-circuit voltage", () => {
    expect(
      openCircuitVoltageByDocument({ openCircuitVoltage: "40 V", document: "NFPA 70:2020", coldest: "-7 °C" }).text,
    ).toBe("45.6");
    expect(
      openCircuitVoltageByFactor({
        openCircuitVoltage: "40 V",
        voltageFactor: flatVoltageFactor({ document: "MCS guide:2012" }),
      }).text,
    ).toBe("46");
    expect(gradeOf(flatVoltageFactor({ document: "Oscaro Power note" }))).toBe("original");
    expect(gradeOf(flatVoltageFactor({ document: "IEC 60364-7-712:2017" }))).toBe("memory");
  });

  // A factor of the table is worth −0.40 %/K at −10 °C: more than any module now on the market needs.
  it("is cautious for modules of −0.30 %/K, over the whole table", () => {
    for (const row of uteC15VoltageFactor.rows()) {
      const coldest = `${row} °C`;
      const by = { openCircuitVoltage: "40 V", openCircuitVoltageCoefficient: "-0.30 %/K", cellTemperature: coldest };
      const table = openCircuitVoltageByDocument({
        openCircuitVoltage: "40 V",
        document: "UTE C15-712-1:undated",
        coldest,
      });
      expect(table.number).toBeGreaterThan(openCircuitVoltageAt(by).number);
    }
  });
});
