import { fc, test } from "@fast-check/vitest";
import { describe, expect, it } from "vitest";
import "../harness/fast-check.js";
import {
  type BusbarConnection,
  busbarConnection,
  busbarRoom,
  feederConnectionChecks,
  feederTapChecks,
  interconnectionEditions,
  sourceCurrentForSizing,
  supplySideChecks,
} from "../../src/grid/index.js";
import { missing } from "../../src/formula/index.js";

const board: BusbarConnection = {
  edition: "NFPA 70:2020",
  busbarRating: "200 A",
  mainDevice: "200 A",
  sourceCurrents: ["32 A"],
  sourceDevices: ["40 A"],
  loadDevices: ["20 A", "20 A", "30 A", "50 A"],
  sourcePlace: "opposite end from the supply",
  at: "Main panel",
};

describe("busbar with sources", () => {
  it("takes any one way, and says which", () => {
    const { taken, checks, tried } = busbarConnection(board);
    expect(taken).toBe("opposite ends");
    expect(checks.map(({ verdict }) => verdict)).toEqual(["met", "met"]);
    expect(tried.find(({ way }) => way === "sum")!.checks[0]!.verdict).toBe("not met");
  });

  it.each([
    ["32 A", "met"],
    ["32.01 A", "not met"],
    ["31.99 A", "met"],
  ])("decides 120 %% exactly: %s is %s", (current, due) => {
    const [, allowance] = busbarConnection({ ...board, sourceCurrents: [current] }, "opposite ends").checks;
    expect(allowance!.verdict).toBe(due);
  });

  it("asks for the opposite end, and leaves it open where it is not known", () => {
    expect(busbarConnection({ ...board, sourcePlace: "elsewhere", loadDevices: ["200 A"] }).taken).toBeNull();
    expect(
      busbarConnection({ ...board, sourcePlace: missing("boards[0].sourcePlace"), loadDevices: ["200 A"] }),
    ).toMatchObject({ taken: "opposite ends" });
    expect(
      busbarConnection({ ...board, sourcePlace: missing("boards[0].sourcePlace"), loadDevices: ["200 A"] }).checks[0]!
        .verdict,
    ).toBe("open");
  });

  it("counts every device but the main one, exactly", () => {
    const devices = (load: string) =>
      busbarConnection({ ...board, sourcePlace: "elsewhere", loadDevices: [load] }, "devices").checks.map(
        ({ verdict }) => verdict,
      );
    expect([devices("160 A"), devices("161 A")]).toEqual([
      ["met", "met"],
      ["not met", "met"],
    ]);
  });

  it("takes a centre-fed busbar of a dwelling only with the source at one end", () => {
    const centre = { ...board, sourcePlace: "one end of a centre-fed busbar in a dwelling" } as const;
    expect(busbarConnection(centre, "centre-fed").taken).toBe("centre-fed");
    expect(busbarConnection(centre, "opposite ends").taken).toBeNull();
  });

  it("knows power control from 2020 on", () => {
    const controlled = { ...board, mainDevice: "150 A", controlledCurrent: "50 A", sourceCurrents: ["80 A"] } as const;
    expect(busbarConnection(controlled, "power control").taken).toBe("power control");
    expect(busbarConnection({ ...controlled, edition: "NFPA 70:2017" }, "power control")).toMatchObject({
      taken: null,
      checks: [],
    });
    expect(busbarConnection({ ...controlled, controlledCurrent: "50.1 A" }, "power control").taken).toBeNull();
  });

  it("names the clause of the edition", () => {
    const clauses = interconnectionEditions.map(
      ({ key }) => busbarConnection({ ...board, edition: key }, "opposite ends").tried[0]!.clause,
    );
    expect(clauses).toEqual(["705.12(B)(2)(3)(b)", "705.12(B)(3)(2)", "705.12(B)(2)"]);
  });

  test.prop([fc.integer({ min: 60, max: 400 }), fc.integer({ min: 0, max: 100 }), fc.integer({ min: 0, max: 60 })])(
    "never gets better with more source current",
    (bus, current, more) => {
      const verdict = (amperes: number) =>
        busbarConnection({ ...board, busbarRating: bus, mainDevice: 100, sourceCurrents: [amperes] }, "opposite ends")
          .checks[1]!.verdict;
      if (verdict(current) === "not met") expect(verdict(current + more)).toBe("not met");
    },
  );

  test.prop([fc.integer({ min: 60, max: 400 }), fc.integer({ min: 30, max: 400 })])(
    "has room for exactly what fills it",
    (bus, main) => {
      const room = busbarRoom({ busbarRating: bus, mainDevice: main }).number;
      if (room <= 0) return;
      const fill = (share: number) =>
        busbarConnection(
          { ...board, busbarRating: bus, mainDevice: main, sourceCurrents: [Number((share / 1.25).toFixed(6))] },
          "opposite ends",
        ).checks[1]!.verdict;
      expect([fill(room), fill(room + 0.01)]).toEqual(["met", "not met"]);
    },
  );
});

describe("feeders and taps", () => {
  const feeder = {
    edition: "NFPA 70:2023",
    feederAmpacity: "150 A",
    feederDevice: "100 A",
    sourceCurrents: ["40 A"],
    at: "F1",
  } as const;

  it("carry their device and 125 % of the sources, or have a device beyond", () => {
    const verdict = (more: object) => feederConnectionChecks({ ...feeder, ...more })[0]!.verdict;
    expect([
      verdict({}),
      verdict({ feederAmpacity: "149.9 A" }),
      verdict({ feederAmpacity: "100 A", deviceBeyond: "100 A" }),
      verdict({ feederAmpacity: "100 A", deviceBeyond: "110 A" }),
    ]).toEqual(["met", "not met", "met", "not met"]);
  });

  it("count the devices of the sources at taps from 2023 on, which is never less", () => {
    const tap = {
      tapAmpacity: "50 A",
      feederDevice: "100 A",
      sourceCurrents: ["40 A"],
      sourceDevices: ["60 A"],
      at: "T1",
    } as const;
    const verdict = (edition: "NFPA 70:2017" | "NFPA 70:2023") => feederTapChecks({ edition, ...tap })[0]!.verdict;
    expect([verdict("NFPA 70:2017"), verdict("NFPA 70:2023")]).toEqual(["met", "not met"]);
    expect(feederTapChecks({ edition: "NFPA 70:2017", ...tap, tapAmpacity: "49.9 A" })[0]!.verdict).toBe("not met");
  });
});

describe("supply side", () => {
  const service = {
    serviceRating: "200 A",
    serviceAmpacity: "200 A",
    sourceCurrents: ["160 A", "20 A"],
    sourceDevices: ["200 A", "25 A"],
    at: "service",
  } as const;

  it("counts devices in 2017 and output currents from 2020 on", () => {
    expect(supplySideChecks({ edition: "NFPA 70:2017", ...service })[0]!.verdict).toBe("not met");
    expect(supplySideChecks({ edition: "NFPA 70:2020", ...service })[0]!.verdict).toBe("met");
    expect(supplySideChecks({ edition: "NFPA 70:2023", ...service, serviceAmpacity: "179.9 A" })[0]!.verdict).toBe(
      "not met",
    );
  });
});

describe("inverter output circuits", () => {
  it("take 125 % of the sum", () => {
    expect(sourceCurrentForSizing({ sourceCurrents: ["16 A", "8 A"] }).text).toBe("30");
  });
});
