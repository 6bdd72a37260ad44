import { fc, it as property } from "@fast-check/vitest";
import { describe, expect, it } from "vitest";
import {
  adiabaticFactorOf,
  adiabaticSection,
  bs7430_2015_line_factor,
  bs7430_2015_square_factor,
  buriedRingResistance,
  equalElectrodesApart,
  gridAndRodsResistance,
  groundConductorSection,
  protectiveConductorSection,
  rodGroupResistance,
  soilResistivityFromRod,
  twoRodsFarResistance,
  twoRodsNearResistance,
  verticalRodResistance,
  wennerResistivity,
} from "../../src/earthing/index.js";

const between = (min: number, max: number): fc.Arbitrary<number> => fc.double({ min, max, noNaN: true });
const soil = between(10, 5000);
const CLOSE = 9;

describe("factors of BS 7430 against equal currents in all rods", () => {
  // The mean over the rods of the sum of s/d to all others, for unit spacing.
  const theory = (points: readonly (readonly [number, number])[]): number => {
    let sum = 0;
    for (const [x, y] of points)
      for (const [u, v] of points) if (x !== u || y !== v) sum += 1 / Math.hypot(x - u, y - v);
    return sum / points.length;
  };

  it.each(bs7430_2015_line_factor.rows())("%s rods in line: at most 1.5 per cent below theory", (count) => {
    const points = Array.from({ length: Number(count) }, (_, place) => [place, 0] as const);
    const share = bs7430_2015_line_factor({ rodCount: count }).number / theory(points);
    expect(share).toBeGreaterThan(0.985);
    expect(share).toBeLessThan(1.0001);
  });

  it.each(bs7430_2015_square_factor.rows())("%s rods a side: within 0.7 per cent of theory", (side) => {
    const n = Number(side);
    const points = Array.from({ length: n * n }, (_, at) => [at % n, Math.floor(at / n)] as const).filter(
      ([x, y]) => x === 0 || y === 0 || x === n - 1 || y === n - 1,
    );
    expect(points.length).toBe(4 * (n - 1));
    expect(Math.abs(bs7430_2015_square_factor({ rodsPerSide: side }).number / theory(points) - 1)).toBeLessThan(0.007);
  });
});

describe("electrodes", () => {
  property.prop([soil, between(1, 10), between(0.008, 0.1)])(
    "resistance scales with the soil, and the soil comes back",
    (rho, length, diameter) => {
      const rod = { rodLength: length, rodDiameter: diameter };
      const once = verticalRodResistance({ soilResistivity: rho, ...rod });
      expect(verticalRodResistance({ soilResistivity: 2 * rho, ...rod }).number / once.number).toBeCloseTo(2, CLOSE);
      expect(soilResistivityFromRod({ rodResistance: once, ...rod }).number / rho).toBeCloseTo(1, CLOSE);
    },
  );

  property.prop([soil, between(1, 10), between(0.1, 5), between(0.008, 0.05)])(
    "a longer rod has less resistance",
    (rho, length, more, diameter) => {
      const at = (rodLength: number): number =>
        verticalRodResistance({ soilResistivity: rho, rodLength, rodDiameter: diameter }).number;
      expect(at(length + more)).toBeLessThan(at(length));
    },
  );

  property.prop([soil, between(1.01, 20), between(0.008, 0.05)])(
    "two rods have more than half and less than one, and approach half",
    (rho, apart, diameter) => {
      const rod = { soilResistivity: rho, rodLength: 2, rodDiameter: diameter };
      const one = verticalRodResistance(rod).number;
      const two = twoRodsFarResistance({ ...rod, rodSpacing: 2 * apart }).number;
      expect(two).toBeGreaterThan(one / 2);
      expect(two).toBeLessThan(one);
      expect(twoRodsFarResistance({ ...rod, rodSpacing: "2000 m" }).number / one).toBeCloseTo(0.5, 2);
    },
  );

  it("both series of two rods meet where the rods stand as far apart as they are long, within 4 per cent", () => {
    const rod = { soilResistivity: 100, rodLength: 3, rodDiameter: "16 mm" };
    const ratio =
      twoRodsNearResistance({ ...rod, rodSpacing: 2.999 }).number /
      twoRodsFarResistance({ ...rod, rodSpacing: 3.001 }).number;
    expect(Math.abs(ratio - 1)).toBeLessThan(0.04);
  });

  property.prop([between(1, 500), fc.integer({ min: 2, max: 10 })])(
    "a group has more resistance than its rods far apart",
    (one, count) => {
      const groupFactor = bs7430_2015_line_factor({ rodCount: String(count) });
      const group = rodGroupResistance({
        rodResistance: one,
        soilResistivity: 100,
        rodSpacing: 5,
        rodCount: count,
        groupFactor,
      });
      expect(group.number).toBeGreaterThan(equalElectrodesApart({ rodResistance: one, rodCount: count }).number);
    },
  );

  property.prop([between(2, 200), between(0.5, 3)])("a wider ring has less resistance", (diameter, depth) => {
    const at = (ringDiameter: number): number =>
      buriedRingResistance({ soilResistivity: 100, ringDiameter, conductorDiameter: "10 mm", burialDepth: depth })
        .number;
    expect(at(diameter * 1.1)).toBeLessThan(at(diameter));
  });

  property.prop([between(0.5, 100), between(0.01, 1000)])(
    "the four-probe test is linear in spacing and reading",
    (spacing, reading) => {
      const once = wennerResistivity({ probeSpacing: spacing, wennerResistance: reading }).number;
      expect(wennerResistivity({ probeSpacing: 2 * spacing, wennerResistance: reading }).number / once).toBeCloseTo(
        2,
        CLOSE,
      );
      expect(once / (spacing * reading)).toBeCloseTo(2 * Math.PI, CLOSE);
    },
  );
});

describe("refusals", () => {
  it("of a grid conductor that a fault would not heat, and of a mutual resistance as large as both", () => {
    const copper = {
      heatCapacity: "3.42 J/(K·cm³)",
      resistivityCoefficient: "0.00393",
      resistivity: "1.72 μΩ·cm",
      inverseCoefficient: "234 K",
    };
    const at = (highestTemperature: string) => () =>
      groundConductorSection({
        faultCurrent: "10 kA",
        disconnectionTime: "1 s",
        ...copper,
        highestTemperature,
        groundAmbient: "60 °C",
      });
    expect(at("60 °C")).toThrow("heats the conductor");
    expect(at("61 °C")().number).toBeGreaterThan(0);
    const both = { gridResistance: "2 Ω", rodBedResistance: "8 Ω" };
    expect(() => gridAndRodsResistance({ ...both, mutualResistance: "4 Ω" })).toThrow("smaller than both");
    expect(gridAndRodsResistance({ ...both, mutualResistance: "1 Ω" }).text).toBe("1.875");
  });
});

describe("conductors in a fault", () => {
  const copper = { heatCapacity: "0.00345", reciprocalCoefficient: "234.5 K", resistivity: "0.017241" };

  property.prop([between(20, 120), between(1, 100), between(1, 100)])(
    "a hotter start lowers the factor, a hotter end raises it",
    (start, rise, more) => {
      const at = (initial: number, final: number): number =>
        adiabaticFactorOf({ ...copper, initialTemperature: `${initial} °C`, finalTemperature: `${final} °C` }).number;
      const end = start + rise + more;
      expect(at(start + rise, end)).toBeLessThan(at(start, end));
      expect(at(start, end + more)).toBeGreaterThan(at(start, end));
    },
  );

  property.prop([between(10, 20000), between(0.1, 2)])(
    "four times the time, or twice the current, doubles the section",
    (current, time) => {
      const at = (faultCurrent: number, disconnectionTime: number): number =>
        adiabaticSection({ faultCurrent, disconnectionTime, adiabaticFactor: 143 }).number;
      expect(at(2 * current, time) / at(current, time)).toBeCloseTo(2, CLOSE);
      expect(at(current, 2.25 * time) / at(current, time)).toBeCloseTo(1.5, CLOSE);
    },
  );

  property.prop([between(1, 500), between(0, 50)])("a larger line conductor never asks for less", (line, more) => {
    const at = (section: number): number => protectiveConductorSection({ lineSection: section }).number;
    expect(at(line + more)).toBeGreaterThanOrEqual(at(line));
    expect(at(line)).toBeLessThanOrEqual(line);
    expect(at(line)).toBeGreaterThanOrEqual((line * 16) / 35 - 1e-9);
  });
});
