import { collect } from "../../src/catalogue/index.js";
import { condition, formula, series, table } from "../../src/formula/index.js";

// Rules of these tests alone, so that the machine is proved before any subject leans on it.
const source = [{ in: "common practice", clause: "rule of a test", grade: "common-practice" }] as const;

const voltageAt = formula({
  id: "own/voltage-at", about: "voltage at a cell temperature",
  takes: {
    openCircuitVoltage: { unit: "V", symbol: "U_OC", about: "open-circuit voltage", above: 0, usual: [1, 100] },
    absoluteVoltageCoefficient: { unit: "V/K", symbol: "β", about: "absolute coefficient", above: -1, below: 0, usual: [-0.5, -0.01] },
    cellTemperature: { unit: "°C", symbol: "T_c", about: "cell temperature", above: -273.15, to: 150, usual: [-50, 95] },
  },
  constants: { stcTemperature: { value: "25", unit: "°C", symbol: "T_STC", about: "temperature at standard test conditions", source } },
  gives: { unit: "V", symbol: "U" },
  expression: "openCircuitVoltage + absoluteVoltageCoefficient * (cellTemperature - stcTemperature)", source,
});

const larger = formula({
  id: "own/larger", about: "larger of two currents",
  takes: {
    designCurrent: { unit: "A", symbol: "I_b", about: "design current", above: 0 },
    otherCurrent: { unit: "A", symbol: "I_o", about: "other current", above: 0 },
  },
  gives: { unit: "A", symbol: "I" }, expression: "max(designCurrent, otherCurrent)", source,
});

const derated = formula({
  id: "own/derated", about: "ampacity at another ambient",
  takes: {
    ampacity: { unit: "A", symbol: "I_z", about: "ampacity", above: 0 },
    factor: { unit: "1", symbol: "k", about: "factor", above: 0 },
  },
  gives: { unit: "A", symbol: "I" }, expression: "ampacity * factor", source,
});

const ampacities = table({
  id: "own/ampacities", about: "ampacity", rows: { name: "section", unit: "mm²", symbol: "S" }, rowRule: "exact",
  columns: { material: ["copper", "aluminium"] }, gives: { unit: "A", symbol: "I_z" },
  source: [{ in: "IEC 60364-5-52:2009", clause: "of a test", grade: "reproduced", seen: "GSES handout:2011, p. 1" }],
  cells: `
    1.5   20   –
    2.5   27   21
    4     36   28
  `,
});

const ratings = series({ id: "own/ratings", about: "ratings", unit: "A", symbol: "I_n", sizes: "6 10 16", source });

const within = condition({
  id: "own/within", asks: "Is the current within the ampacity?", force: "requirement",
  value: { unit: "A", symbol: "I_b", about: "current" }, relation: "≤", limit: { unit: "A", symbol: "I_z", about: "ampacity" }, source,
});

function cableCurrent({
  route,
  factor,
}: {
  route: { section: string; material: "copper" | "aluminium" };
  factor: string;
}) {
  const ampacity = ampacities(route);
  const allowed = derated({ ampacity, factor });
  return { allowed, check: within({ value: "20 A", limit: allowed }), sizes: [route.section] };
}

function recordOf({ route }: { route: { section: string; material: "copper" | "aluminium" } }) {
  const { text, unit } = ampacities(route);
  return { routes: [{ ampacity: { value: text, unit, step: "s1", grade: null }, verdict: "not-met" }] };
}

function secondOf(_first: unknown, second: { readonly current: string }) {
  return larger({ designCurrent: second.current, otherCurrent: "1 A" });
}

/** The catalogue of the tests' own rules. */
export const ownRules = collect({
  own: { voltageAt, larger, derated, ampacities, ratings, within, cableCurrent, recordOf, secondOf },
});
