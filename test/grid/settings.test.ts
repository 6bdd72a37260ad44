import { describe, expect, it } from "vitest";
import {
  enterServiceChecks,
  evaluateSettings,
  gridRuleSets,
  type GridRules,
  interfaceSettings,
  NOT_BEFORE_CONFIRMED,
  settingsExport,
  settingsSheet,
  stayConnectedChecks,
  sustainedOvervoltageOf,
  type SupplySystem,
  synchronousAreaOf,
  THE_OPERATOR_SETS_IT,
} from "../../src/grid/index.js";
import { problemsOf } from "./problems.js";

const everySet: readonly (readonly [GridRules, SupplySystem])[] = gridRuleSets.flatMap(({ key, supplies }) =>
  supplies.map((supply) => [key, supply] as const),
);
const row = (rules: GridRules, supply: SupplySystem, key: string) =>
  interfaceSettings(rules, supply).rows.find((each) => each.key === key)!;

describe.each(everySet)("%s for %s", (rules, supply) => {
  const settings = interfaceSettings(rules, supply);

  it("says beside each value from memory that it is to be confirmed", () => {
    for (const { grade, setting, confirm } of settings.rows) {
      if (setting === null) expect(confirm).toBe(THE_OPERATOR_SETS_IT);
      else expect(confirm).toBe(grade === "memory" ? NOT_BEFORE_CONFIRMED : null);
    }
    for (const { grade, confirm } of settings.curves)
      expect(confirm).toBe(grade === "memory" ? NOT_BEFORE_CONFIRMED : null);
  });

  it("keeps each default inside its allowed range, value and time", () => {
    for (const { setting, lowest, highest, times } of settings.rows) {
      if (setting && lowest) expect(setting.printed.number).toBeGreaterThanOrEqual(lowest.printed.number);
      if (setting && highest) expect(setting.printed.number).toBeLessThanOrEqual(highest.printed.number);
      const time = times.delay ?? times.clearing;
      if (time && times.shortest) expect(time.number).toBeGreaterThanOrEqual(times.shortest.number);
      if (time && times.longest) expect(time.number).toBeLessThanOrEqual(times.longest.number);
    }
  });

  it("orders its stages: slow before fast, low before high", () => {
    const printed = (key: string) => settings.rows.find((each) => each.key === key)?.setting?.printed.number;
    const ordered = (low: string, high: string) => {
      const [a, b] = [printed(low), printed(high)];
      if (a !== undefined && b !== undefined) expect(a).toBeLessThanOrEqual(b);
    };
    for (const [low, high] of [
      ["overvoltage1", "overvoltage2"],
      ["undervoltage2", "undervoltage1"],
      ["undervoltage1", "overvoltage1"],
      ["underfrequency2", "underfrequency1"],
      ["underfrequency1", "overfrequency1"],
      ["reconnectionVoltageLow", "reconnectionVoltageHigh"],
      ["reconnectionFrequencyLow", "reconnectionFrequencyHigh"],
    ] as const)
      ordered(low, high);
  });

  it("exports as plain JSON that survives a round trip", () => {
    const exported = settingsExport(settings);
    expect(JSON.parse(JSON.stringify(exported))).toEqual(exported);
    expect(exported.format).toBe("pv-to-grid/interface-settings@1");
  });
});

describe("settings in volts and hertz", () => {
  it("are those of the site's nominal voltage", () => {
    expect(row("EREC G98:2022", "230/400 V 50 Hz", "overvoltage1").setting!.volts!.lineToNeutral.text).toBe("262.2");
    expect(row("EREC G98:2022", "230/400 V 50 Hz", "overvoltage2").setting!.volts!.lineToNeutral.text).toBe("273.7");
    expect(row("VDE-AR-N 4105:2018", "230/400 V 50 Hz", "undervoltage2").setting!.volts!.lineToNeutral.text).toBe(
      "103.5",
    );
    expect(
      row("IEEE 1547:2018 category B III", "120/240 V 60 Hz split-phase", "undervoltage1").setting!.volts!.lineToLine
        .text,
    ).toBe("211.2");
    expect(
      row("DIN VDE 0126-1-1/A1:undated", "230/400 V 50 Hz", "overvoltage2").setting!.volts!.lineToNeutral.text,
    ).toBe("264.5");
  });

  it("turn a deviation into a frequency of either supply", () => {
    expect(row("IEC 61727:2004", "230/400 V 50 Hz", "underfrequency1").setting!.hertz!.text).toBe("49");
    expect(row("IEC 61727:2004", "208Y/120 V 60 Hz", "overfrequency1").setting!.hertz!.text).toBe("61");
  });

  it("carry the averaging that differs between countries", () => {
    expect(row("VDE-AR-N 4105:2018", "230/400 V 50 Hz", "sustainedOvervoltage").averaging).toContain("arithmetic mean");
    expect(row("CEI 0-21:2012", "230/400 V 50 Hz", "sustainedOvervoltage").averaging).toContain("r.m.s.");
  });

  it("find the overvoltage that a sunny day reaches first", () => {
    expect(
      sustainedOvervoltageOf(interfaceSettings("VDE-AR-N 4105:2018", "230/400 V 50 Hz"), "three-phase"),
    ).toMatchObject({ text: "440" });
    expect(sustainedOvervoltageOf(interfaceSettings("EREC G98:2022", "230/400 V 50 Hz"), "single-phase")).toMatchObject(
      { text: "262.2" },
    );
    expect(
      sustainedOvervoltageOf(interfaceSettings("TOR Erzeuger:undated", "230/400 V 50 Hz"), "three-phase"),
    ).toHaveProperty("missing");
  });

  it("keep the Spanish texts apart by date", () => {
    const overfrequency = (rules: GridRules) =>
      interfaceSettings(rules, "230/400 V 50 Hz").rows.find(({ key }) => key === "overfrequency1")?.setting?.hertz
        ?.text;
    expect([
      overfrequency("RD 1699/2011:2011"),
      overfrequency("RD 1699/2011:2014"),
      overfrequency("RD 1699/2011:2020"),
    ]).toEqual(["50.5", "51", undefined]);
    expect(row("RD 1699/2011:2020", "230/400 V 50 Hz", "reconnectionFrequencyHigh").grade).toBe("copied");
  });
});

describe("entered settings", () => {
  const settings = interfaceSettings("IEEE 1547:2018 category B III", "120/240 V 60 Hz split-phase");
  const verdicts = (entered: Parameters<typeof evaluateSettings>[1][number]) =>
    evaluateSettings(settings, [entered], "INV1").map(({ rule, verdict }) => [rule.relation, verdict]);

  it("are judged at the ends of the allowed range and one digit beyond", () => {
    const slow = (voltage: string) => verdicts({ key: "overvoltage1", voltage, between: "two lines" });
    expect(slow("264 V")).toEqual([
      ["≥", "met"],
      ["≤", "met"],
      ["=", "met"],
    ]);
    expect(slow("263.9 V")).toEqual([
      ["≥", "not met"],
      ["≤", "met"],
      ["=", "not met"],
    ]);
    expect(slow("288 V")).toEqual([
      ["≥", "met"],
      ["≤", "met"],
      ["=", "not met"],
    ]);
    expect(slow("288.1 V")).toEqual([
      ["≥", "met"],
      ["≤", "not met"],
      ["=", "not met"],
    ]);
    expect(verdicts({ key: "underfrequency1", frequency: "59.1 Hz" })).toEqual([
      ["≥", "met"],
      ["≤", "not met"],
      ["=", "not met"],
    ]);
    expect(verdicts({ key: "undervoltage1", time: "20.9 s" })).toEqual([
      ["≥", "not met"],
      ["≤", "met"],
      ["=", "not met"],
    ]);
    expect(verdicts({ key: "reconnectionTime", time: "300 s" })).toEqual([
      ["≥", "met"],
      ["≤", "met"],
      ["=", "met"],
    ]);
  });

  it("need the place of a voltage, and a setting that the rules bring", () => {
    expect(problemsOf(() => verdicts({ key: "overvoltage1", voltage: "264 V" }))[0]).toMatchObject({
      path: "entered[0].between",
      code: "missing",
    });
    expect(problemsOf(() => verdicts({ key: "overfrequencyNarrow", frequency: "50.5 Hz" }))[0]).toMatchObject({
      code: "not-in-list",
    });
  });
});

describe("staying connected", () => {
  const narrower = (rules: GridRules) =>
    stayConnectedChecks(interfaceSettings(rules, "230/400 V 50 Hz"), "x")
      .filter(({ verdict }) => verdict !== "met")
      .map(({ at }) => at);

  it("passes windows as wide as the network code, each band at its end", () => {
    expect(narrower("VDE-AR-N 4105:2018")).toEqual([]);
    expect(narrower("EREC G99:2019")).toEqual([]);
  });

  it("flags settings that are narrower", () => {
    expect(narrower("REBT ITC-BT-40:2002")).toContain("Continental Europe 48.5 to 49 Hz/underfrequency1/x");
    expect(narrower("CEI 0-21:2012")).toContain("Continental Europe 49 to 51 Hz/overfrequencyNarrow/x");
    expect(narrower("RD 1699/2011:2011")).toContain("Continental Europe 49 to 51 Hz/overfrequency1/x");
    expect(narrower("RD 1699/2011:2014")).not.toContain("Continental Europe 49 to 51 Hz/overfrequency1/x");
  });

  it("rides through the tests of IEEE 1547.1 with the defaults of its category", () => {
    for (const category of ["II", "III"] as const) {
      const checks = stayConnectedChecks(
        interfaceSettings(`IEEE 1547:2018 category B ${category}`, "208Y/120 V 60 Hz"),
        "x",
      );
      expect(checks.length).toBeGreaterThan(10);
      expect(checks.every(({ verdict }) => verdict === "met")).toBe(true);
    }
  });

  it("knows the synchronous area of European rules only", () => {
    expect(synchronousAreaOf("EREC G98:2022")).toBe("Great Britain");
    expect(synchronousAreaOf("CEI 0-21:2016")).toBe("Continental Europe");
    expect(synchronousAreaOf("EN 50549-1:2019")).toBeNull();
    expect(synchronousAreaOf("AS/NZS 4777.2:2020 Australia A")).toBeNull();
  });
});

describe("entering service", () => {
  const settings = interfaceSettings("IEEE 1547:2018 category B II", "120/240 V 60 Hz split-phase");
  const may = (voltage: string, frequency: string) =>
    enterServiceChecks(settings, { voltage, nominalVoltage: "240 V", frequency }, "INV1").every(
      ({ verdict }) => verdict === "met",
    );

  it("needs voltage and frequency within the window, its ends included", () => {
    expect([
      may("252 V", "60.1 Hz"),
      may("252.01 V", "60 Hz"),
      may("240 V", "60.11 Hz"),
      may("220.08 V", "59.5 Hz"),
      may("220.07 V", "59.5 Hz"),
      may("240 V", "59.49 Hz"),
    ]).toEqual([true, false, false, true, false, false]);
  });
});

describe("settings sheet", () => {
  it("says what to select, to enter and to confirm, and that the plant must not feed before", () => {
    const sheet = settingsSheet(interfaceSettings("EREC G99:2019", "230/400 V 50 Hz"), "single-phase");
    expect(sheet.select.map(({ what }) => what)).toEqual(["grid rules", "edition", "supply", "connection"]);
    expect(sheet.enter.map(({ key }) => key)).toEqual(["rateOfChangeOfFrequency"]);
    expect(sheet.confirm.map(({ key }) => key)).toContain("overvoltage1");
    expect(sheet.confirm.find(({ key }) => key === "overvoltage1")!.value).toMatchObject({ text: "262.2", unit: "V" });
    expect(sheet.cautions[0]).toContain("must not feed before");
  });

  it("asks for everything where no setting was seen", () => {
    const sheet = settingsSheet(
      interfaceSettings("ESB Networks micro-generation:2021", "230/400 V 50 Hz"),
      "single-phase",
    );
    expect([sheet.enter.length, sheet.confirm.length]).toEqual([0, 0]);
    expect(sheet.cautions.at(-1)).toContain("from the network operator");
  });
});

describe("export", () => {
  it("names each setting in the terms of IEEE 1547 and IEC 61850", () => {
    const { settings, curves } = settingsExport(interfaceSettings("IEEE 1547:2018 category B III", "208Y/120 V 60 Hz"));
    expect(settings.find(({ key }) => key === "overvoltage1")).toMatchObject({
      ieee1547: "OV1",
      iec61850: "PTOV",
      lineToNeutral: { value: "132", unit: "V" },
      clearing: { value: "13", unit: "s" },
    });
    expect(settings.find(({ key }) => key === "reconnectionTime")).toMatchObject({
      ieee1547: "ES_DELAY",
      printed: { value: "300", unit: "s" },
    });
    expect(curves.map(({ iec61850 }) => iec61850)).toEqual(["DVVR", "DVWC", "DWVR"]);
  });
});
