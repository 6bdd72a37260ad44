import { formula } from "../../formula/index.js";

/**
 * Power factor that a plant of VDE-AR-N 4105:2018 is to reach, injecting and absorbing.
 *
 * @function
 * @example
 * ```ts
 * import { vdeArN4105_2018_powerFactorOfPlant } from "pv-to-grid/grid";
 * vdeArN4105_2018_powerFactorOfPlant({ plantPower: "4.6 kVA" }).text; // "0.95"
 * ```
 */
export const vdeArN4105_2018_powerFactorOfPlant = /* @__PURE__ */ formula({
  id: "grid/vde-ar-n-4105-2018-power-factor-of-plant",
  about: "power factor that a plant of VDE-AR-N 4105:2018 is to reach, injecting and absorbing",
  takes: { plantPower: { unit: "VA", symbol: "S_Σ", about: "sum of the rated apparent powers of the plant", above: 0, usual: [100, 1e7] } },
  constants: {
    smallPlant2018: { value: "4600", unit: "VA", symbol: "S_1", about: "plants up to this are small", source: [{ in: "VDE-AR-N 4105:2018", clause: "5.7.2.2", grade: "memory" }] },
    smallPlantPowerFactor2018: { value: "0.95", unit: "1", symbol: "cos φ_1", about: "power factor of small plants", source: [{ in: "VDE-AR-N 4105:2018", clause: "5.7.2.2", grade: "memory" }] },
    largePlantPowerFactor2018: { value: "0.9", unit: "1", symbol: "cos φ_2", about: "power factor of other plants", source: [{ in: "VDE-AR-N 4105:2018", clause: "5.7.2.2", grade: "memory" }] },
  },
  gives: { unit: "1", symbol: "cos φ" },
  expression: "plantPower <= smallPlant2018 ? smallPlantPowerFactor2018 : largePlantPowerFactor2018",
  source: [{ in: "VDE-AR-N 4105:2018", clause: "5.7.2.2", grade: "memory" }],
  unproven: { because: "no publication found", sought: "power factor steps of the edition 2018 in an open publication" },
});

/**
 * Power factor that a plant of VDE-AR-N 4105:2011 is to reach, injecting and absorbing.
 *
 * @function
 * @example
 * ```ts
 * import { vdeArN4105_2011_powerFactorOfPlant } from "pv-to-grid/grid";
 * vdeArN4105_2011_powerFactorOfPlant({ plantPower: "13.8 kVA" }).text; // "0.95"
 * ```
 */
export const vdeArN4105_2011_powerFactorOfPlant = /* @__PURE__ */ formula({
  id: "grid/vde-ar-n-4105-2011-power-factor-of-plant",
  about: "power factor that a plant of VDE-AR-N 4105:2011 is to reach, injecting and absorbing",
  takes: { plantPower: { unit: "VA", symbol: "S_Σ", about: "sum of the rated apparent powers of the plant", above: 0, usual: [100, 1e7] } },
  constants: {
    smallPlant2011: { value: "3680", unit: "VA", symbol: "S_1", about: "plants up to this need no reactive power", source: [{ in: "VDE-AR-N 4105:2011", clause: "overview table", grade: "reproduced", seen: "Solar Energy Consult on 4105:undated, table, row 1" }] },
    middlePlant2011: { value: "13800", unit: "VA", symbol: "S_2", about: "plants up to this are of the middle step", source: [{ in: "VDE-AR-N 4105:2011", clause: "overview table", grade: "reproduced", seen: "Solar Energy Consult on 4105:undated, table, row 1" }] },
    middlePlantPowerFactor2011: { value: "0.95", unit: "1", symbol: "cos φ_1", about: "power factor of the middle step", source: [{ in: "VDE-AR-N 4105:2011", clause: "overview table", grade: "reproduced", seen: "Solar Energy Consult on 4105:undated, table, row 1" }] },
    largePlantPowerFactor2011: { value: "0.9", unit: "1", symbol: "cos φ_2", about: "power factor above the middle step", source: [{ in: "VDE-AR-N 4105:2011", clause: "overview table", grade: "reproduced", seen: "Solar Energy Consult on 4105:undated, table, rows 2 to 4" }] },
  },
  gives: { unit: "1", symbol: "cos φ" },
  expression: "plantPower <= smallPlant2011 ? 1 : plantPower <= middlePlant2011 ? middlePlantPowerFactor2011 : largePlantPowerFactor2011",
  source: [{ in: "VDE-AR-N 4105:2011", clause: "overview table", grade: "reproduced", seen: "Solar Energy Consult on 4105:undated, table" }],
  unproven: { because: "no publication found", sought: "a plant with its apparent power and its power factor printed" },
});
