import { fc, test } from "@fast-check/vitest";
import { describe, expect, it } from "vitest";
import "../harness/fast-check.js";
import {
  activePowerForVoltageLimit,
  gridVoltageChecks,
  gridVoltageProfile,
  networkReactance,
  powerFactorWithinVoltageLimit,
  networkResistance,
  reactivePowerForVoltageLimit,
  relativeVoltageChange,
  relativeVoltageChangeAtShortCircuitPower,
  voltageAtInfeed,
  voltageChange,
  voltageChangeBound,
  voltageChangeLimits,
  type VoltagePath,
} from "../../src/grid/index.js";
import { missing } from "../../src/formula/index.js";

const network = { resistance: "0.2 ohm", reactance: "0.1 ohm", nominalVoltage: "400 V" } as const;
const watts = fc.integer({ min: 0, max: 100_000 });
const milliohms = fc.integer({ min: 1, max: 1000 });

describe("voltage change across an impedance", () => {
  it("is (P R + Q X)/U, and its share (P R + Q X)/U²", () => {
    const infeed = { activePower: "10 kW", reactivePower: "4 kvar", ...network };
    expect(voltageChange(infeed).text).toBe("6");
    expect(relativeVoltageChange(infeed).text).toBe("0.015");
  });

  it("falls where the plant absorbs, and rises where it injects", () => {
    const change = (reactivePower: string) => voltageChange({ activePower: "10 kW", reactivePower, ...network }).text;
    expect([change("-4 kvar"), change("0 var"), change("4 kvar")]).toEqual(["4", "5", "6"]);
  });

  test.prop([watts, watts, milliohms, milliohms])(
    "never falls with more power at unity power factor",
    (p, more, r, x) => {
      const change = (activePower: number) =>
        voltageChange({
          activePower,
          reactivePower: "0 var",
          resistance: `${r} mohm`,
          reactance: `${x} mohm`,
          nominalVoltage: "400 V",
        }).number;
      expect(change(p + more)).toBeGreaterThanOrEqual(change(p));
    },
  );

  test.prop([watts, watts, milliohms, milliohms])("is never raised by absorbing reactive power", (p, q, r, x) => {
    const change = (reactivePower: number) =>
      voltageChange({
        activePower: p,
        reactivePower,
        resistance: `${r} mohm`,
        reactance: `${x} mohm`,
        nominalVoltage: "400 V",
      }).number;
    expect(change(-q)).toBeLessThanOrEqual(change(0));
  });
});

describe("exact voltage at the infeed", () => {
  it("solves the quadratic of a resistive network", () => {
    // U2² − U1 U2 − P R = 0 with U1 = 400 V and P R = 2000 V²: U2 = 200 + √42000.
    expect(
      voltageAtInfeed({
        networkVoltage: "400 V",
        activePower: "10 kW",
        reactivePower: "0 var",
        resistance: "0.2 ohm",
        reactance: "0 ohm",
      }).number,
    ).toBeCloseTo(200 + Math.sqrt(42_000), 9);
  });

  test.prop([
    watts,
    fc.integer({ min: -50_000, max: 50_000 }),
    fc.integer({ min: 1, max: 300 }),
    fc.integer({ min: 1, max: 300 }),
  ])("gives back the network voltage through the current", (p, q, r, x) => {
    const [R, X] = [r / 1000, x / 1000];
    const u2 = voltageAtInfeed({
      networkVoltage: "400 V",
      activePower: p,
      reactivePower: q,
      resistance: R,
      reactance: X,
    }).number;
    const inPhase = u2 - (p * R + q * X) / u2;
    const across = (p * X - q * R) / u2;
    expect(Math.hypot(inPhase, across)).toBeCloseTo(400, 6);
  });

  it("refuses a power that the impedance cannot carry", () => {
    expect(() =>
      voltageAtInfeed({
        networkVoltage: "230 V",
        activePower: "-200 kW",
        reactivePower: "0 var",
        resistance: "1 ohm",
        reactance: "1 ohm",
      }),
    ).toThrow("no voltage carries that power");
  });

  it("lies near the linear form for small changes", () => {
    const infeed = { activePower: "5 kW", reactivePower: "1 kvar", resistance: "0.05 ohm", reactance: "0.03 ohm" };
    const exact = voltageAtInfeed({ networkVoltage: "400 V", ...infeed }).number - 400;
    expect(Math.abs(exact - voltageChange({ nominalVoltage: "400 V", ...infeed }).number)).toBeLessThan(0.002);
  });
});

describe("short-circuit power", () => {
  test.prop([
    fc.integer({ min: 0, max: 50_000 }),
    fc.integer({ min: -50_000, max: 50_000 }),
    fc.integer({ min: 100, max: 5000 }),
    fc.integer({ min: 1, max: 89 }),
  ])("gives the same change as resistance and reactance, and as the angle form", (p, q, kva, degrees) => {
    const place = { shortCircuitPower: `${kva} kVA`, networkImpedanceAngle: `${degrees} deg` };
    const share = relativeVoltageChangeAtShortCircuitPower({ activePower: p, reactivePower: q, ...place }).number;
    const z = {
      resistance: networkResistance({ nominalVoltage: "400 V", ...place }),
      reactance: networkReactance({ nominalVoltage: "400 V", ...place }),
    };
    expect(share).toBeCloseTo(
      relativeVoltageChange({ activePower: p, reactivePower: q, nominalVoltage: "400 V", ...z }).number,
      12,
    );
    // Injecting: φ > 0 and cos(ψ − φ).
    const angle = Math.atan2(q, p);
    expect(share).toBeCloseTo((Math.hypot(p, q) / (kva * 1000)) * Math.cos((degrees * Math.PI) / 180 - angle), 9);
  });

  it("bounds the change by S over S_k", () => {
    expect(voltageChangeBound({ apparentPower: "24 kVA", shortCircuitPower: "1200 kVA" }).text).toBe("0.02");
  });
});

describe("what keeps the change within a limit", () => {
  it("is found back by the formula of the change", () => {
    const q = reactivePowerForVoltageLimit({
      voltageChangeAtUnity: "14 V",
      voltageChangeLimit: "12 V",
      nominalVoltage: "400 V",
      reactance: "0.1 ohm",
    });
    expect(q.text).toBe("-8000");
    expect(voltageChange({ activePower: "28 kW", reactivePower: q, ...network }).text).toBe("12");
    const p = activePowerForVoltageLimit({
      voltageChangeLimit: "12 V",
      nominalVoltage: "400 V",
      resistance: "0.2 ohm",
    });
    expect(voltageChange({ activePower: p, reactivePower: "0 var", ...network }).text).toBe("12");
  });
});

describe("power factor within a limit", () => {
  const plant = {
    activePower: "6 kW",
    voltageChangeAtUnity: "14 V",
    voltageChangeLimit: "12 V",
    nominalVoltage: "400 V",
    reactance: "0.1 ohm",
  };

  it("absorbs just as much as brings the change to the limit", () => {
    const kept = powerFactorWithinVoltageLimit(plant);
    expect(kept).toMatchObject({
      direction: "absorbing",
      reactivePower: { text: "-8000" },
      powerFactor: { number: 0.6 },
      apparentPower: { number: 10_000 },
    });
  });

  it("asks for nothing at the limit and below", () => {
    expect(powerFactorWithinVoltageLimit({ ...plant, voltageChangeAtUnity: "12 V" })).toMatchObject({
      direction: "none",
      reactivePower: null,
    });
    expect(powerFactorWithinVoltageLimit({ ...plant, voltageChangeAtUnity: "12.001 V" }).direction).toBe("absorbing");
  });

  it("refuses a path without reactance, where reactive power does nothing", () => {
    expect(() => powerFactorWithinVoltageLimit({ ...plant, reactance: "0 ohm" })).toThrow("reactance");
  });
});

const none = { activePower: "0 W", reactivePower: "0 var" } as const;
const pathTo = (overrides: Partial<VoltagePath["stretches"][number]> = {}): VoltagePath => ({
  supply: "230/400 V 50 Hz",
  connection: "three-phase",
  voltageWithoutPlant: "408 V",
  stretches: [
    {
      name: "network",
      part: "network",
      resistance: "0.2 ohm",
      reactance: "0.1 ohm",
      activePower: "10 kW",
      reactivePower: "0 var",
      otherPlants: { activePower: "20 kW", reactivePower: "0 var" },
      ...overrides,
    },
    {
      name: "roof cable",
      part: "installation",
      resistance: "0.1 ohm",
      reactance: "0.01 ohm",
      activePower: "10 kW",
      reactivePower: "0 var",
      otherPlants: none,
    },
  ],
});

describe("voltage profile", () => {
  it("adds the changes along the path, this plant's and all plants'", () => {
    const { points, network: toSupply, installation, terminalVoltage } = gridVoltageProfile(pathTo());
    expect(points.map(({ total }) => total)).toMatchObject([{ text: "5" }, { text: "7.5" }]);
    expect(points.map(({ totalOfAllPlants }) => totalOfAllPlants)).toMatchObject([{ text: "15" }, { text: "17.5" }]);
    expect(toSupply.voltage).toMatchObject({ text: "423" });
    expect(installation.change).toMatchObject({ text: "2.5" });
    expect(terminalVoltage).toMatchObject({ text: "425.5" });
  });

  it("says what is missing and computes the rest", () => {
    const { points, network: toSupply } = gridVoltageProfile(pathTo({ otherPlants: missing("supply.otherPlants") }));
    expect(points[0]!.total).toMatchObject({ text: "5" });
    expect(toSupply.changeOfAllPlants).toEqual({ missing: ["supply.otherPlants"] });
  });
});

describe("limits of the voltage change", () => {
  const verdictsOf = (rules: Parameters<typeof gridVoltageChecks>[0]["rules"], path = pathTo()) =>
    gridVoltageChecks({ rules, supply: "230/400 V 50 Hz", profile: gridVoltageProfile(path), at: "INV1" }).map(
      ({ id, verdict }) => [id.replace("grid/", ""), verdict],
    );

  it("say their document, their place and whose plants count", () => {
    for (const { document, clause, place, counts, rules } of voltageChangeLimits) {
      expect([document, clause, place, counts].every((word) => word !== "")).toBe(true);
      expect(rules.length).toBeGreaterThan(0);
    }
  });

  it("count all plants of the network in Germany", () => {
    expect(verdictsOf("VDE-AR-N 4105:2018")[0]).toEqual([
      "voltage-change-within-limit/VDE-AR-N 4105:2018/INV1",
      "not met",
    ]);
    const alone = pathTo({ otherPlants: none });
    expect(verdictsOf("VDE-AR-N 4105:2018", alone)[0]![1]).toBe("met");
  });

  it("say what would keep them", () => {
    const [check] = gridVoltageChecks({
      rules: "VDE-AR-N 4105:2018",
      supply: "230/400 V 50 Hz",
      profile: gridVoltageProfile(pathTo()),
      at: "INV1",
    });
    // 3 V too much over 0.1 Ω at 400 V: 3 · 400 / 0.1 = 12 kvar.
    expect(check!.remedy).toContain("absorbing a further 12 kvar");
  });

  it("leave the German limit open while the other plants are not known", () => {
    expect(verdictsOf("VDE-AR-N 4105:2018", pathTo({ otherPlants: missing("supply.otherPlants") }))[0]![1]).toBe(
      "open",
    );
  });

  it.each([
    ["0.32 ohm", "met"],
    ["0.3201 ohm", "not met"],
    ["0.3199 ohm", "met"],
  ])("decide the Australian limit exactly: %s is %s", (resistance, due) => {
    const path: VoltagePath = {
      ...pathTo(),
      stretches: [
        {
          name: "cable",
          part: "installation",
          resistance,
          reactance: "0 ohm",
          activePower: "10 kW",
          reactivePower: "0 var",
          otherPlants: none,
        },
      ],
    };
    expect(verdictsOf("AS/NZS 4777.2:2020 Australia A", path)[0]).toEqual([
      "voltage-change-within-limit/AS/NZS 4777.1:2016/INV1",
      due,
    ]);
  });

  it("show how an overvoltage trip would arise", () => {
    const profile = gridVoltageProfile({ ...pathTo(), voltageWithoutPlant: "423 V" });
    const checks = gridVoltageChecks({
      rules: "VDE-AR-N 4105:2018",
      supply: "230/400 V 50 Hz",
      profile,
      at: "INV1",
      sustainedOvervoltage: voltageChange({
        activePower: "440 kW",
        reactivePower: 0,
        resistance: "0.4 ohm",
        reactance: 0,
        nominalVoltage: "400 V",
      }),
    });
    expect(checks.at(-1)).toMatchObject({
      id: "grid/terminal-voltage-below-trip-setting/INV1",
      verdict: "not met",
      rule: { force: "yield" },
    });
  });
});
