import { formula } from "../../formula/index.js";

/**
 * Largest short-time current density at the surface of an electrode before the soil dries out. @function
 *
 * @example
 * ```ts
 * import { electrodeCurrentDensity } from "pv-to-grid/earthing";
 * electrodeCurrentDensity({ soilResistivity: "72.44 Ω·m", faultDuration: "1 s" }).show({ digits: 6 }); // "889.42 A/m²"
 * ```
 */
export const electrodeCurrentDensity = /* @__PURE__ */ formula({
  id: "earthing/electrode-current-density",
  about: "largest short-time current density at the surface of an electrode before the soil dries out",
  takes: {
    soilResistivity: { unit: "Ω·m", symbol: "ρ", about: "resistivity of the soil", above: 0, usual: [1, 20000] },
    faultDuration: { unit: "s", symbol: "t_f", about: "duration of the fault", above: 0, to: 10 },
  },
  constants: {
    dryingDensity: {
      value: "7570", unit: "A/m²", symbol: "7570 A/m²", about: "current density for one ohm metre and one second",
      source: [{ in: "Electrical Standards blog:2014", clause: "examples A and B", grade: "original" }],
    },
    oneOhmMetre: {
      value: "1", unit: "Ω·m", symbol: "1 Ω·m", about: "unit of the soil resistivity",
      source: [{ in: "Electrical Standards blog:2014", clause: "examples A and B", grade: "original" }],
    },
    oneSecond: {
      value: "1", unit: "s", symbol: "1 s", about: "unit of the duration",
      source: [{ in: "Electrical Standards blog:2014", clause: "examples A and B", grade: "original" }],
    },
  },
  gives: { unit: "A/m²", symbol: "J" },
  expression: "dryingDensity / sqrt(soilResistivity / oneOhmMetre * faultDuration / oneSecond)",
  source: [{ in: "IS 3043:1987", clause: "clause 10", grade: "copied", seen: "Electrical Standards blog:2014, examples A and B" }],
});

/**
 * Surface of a rod or pipe in contact with the soil. @function
 *
 * @example
 * ```ts
 * import { rodSurface } from "pv-to-grid/earthing";
 * rodSurface({ rodLength: "3 m", rodDiameter: "0.1 m" }).show(); // "0.9425 m²"
 * ```
 */
export const rodSurface = /* @__PURE__ */ formula({
  id: "earthing/rod-surface",
  about: "surface of a rod or pipe in contact with the soil",
  takes: {
    rodLength: { unit: "m", symbol: "L", about: "buried length of the rod", above: 0, usual: [0.5, 50] },
    rodDiameter: { unit: "m", symbol: "d", about: "diameter of the rod", above: 0, usual: [0.005, 0.5] },
  },
  gives: { unit: "m²", symbol: "A" },
  expression: "pi * rodDiameter * rodLength",
  source: [{ in: "Electrical Standards blog:2014", clause: "examples A and B", grade: "original" }],
});

/**
 * Largest fault current of one electrode. @function
 *
 * @example
 * ```ts
 * import { electrodeCurrentOf } from "pv-to-grid/earthing";
 * electrodeCurrentOf({ currentDensity: "889.419", electrodeSurface: "0.942" }).show({ digits: 6 }); // "837.833 A"
 * ```
 */
export const electrodeCurrentOf = /* @__PURE__ */ formula({
  id: "earthing/electrode-current-of",
  about: "largest fault current of one electrode",
  takes: {
    currentDensity: { unit: "A/m²", symbol: "J", about: "largest current density at the surface of an electrode", above: 0, usual: [1, 100000] },
    electrodeSurface: { unit: "m²", symbol: "A", about: "surface of one electrode in contact with the soil", above: 0, usual: [0.01, 100] },
  },
  gives: { unit: "A", symbol: "I_1" },
  expression: "currentDensity * electrodeSurface",
  source: [{ in: "Electrical Standards blog:2014", clause: "examples A and B", grade: "original" }],
});

/**
 * Number of electrodes that share a fault current. @function
 *
 * @example
 * ```ts
 * import { electrodesForCurrent } from "pv-to-grid/earthing";
 * electrodesForCurrent({ faultCurrent: "50 kA", electrodeCurrent: "837.83 A" }).text; // "60"
 * ```
 */
export const electrodesForCurrent = /* @__PURE__ */ formula({
  id: "earthing/electrodes-for-current",
  about: "number of electrodes that share a fault current",
  takes: {
    faultCurrent: { unit: "A", symbol: "I", about: "fault current of negligible fault impedance", above: 0, usual: [1, 200000] },
    electrodeCurrent: { unit: "A", symbol: "I_1", about: "largest fault current of one electrode", above: 0, usual: [1, 100000] },
  },
  gives: { unit: "1", symbol: "n" },
  expression: "ceil(faultCurrent / electrodeCurrent)",
  source: [{ in: "Electrical Standards blog:2014", clause: "examples A and B", grade: "original" }],
});
