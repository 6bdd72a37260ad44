import { condition, type Check, exactText } from "../../formula/index.js";
import type { Problem, Quantity } from "../../quantity/index.js";
import type { Plant } from "./plant-description.js";

/** Is the coldest design temperature below the hottest? @function */
export const coldestBelowHottest = /* @__PURE__ */ condition({
  id: "plant/coldest-below-hottest",
  asks: "Is the coldest design temperature below the hottest?",
  force: "requirement",
  value: { unit: "°C", symbol: "T_min", about: "coldest ambient temperature" },
  relation: "<",
  limit: { unit: "°C", symbol: "T_max", about: "hottest ambient temperature" },
  source: [{ in: "common practice", clause: "consistency of a description", grade: "common-practice" }],
});

/** Is the lower voltage below the upper one? @function */
export const lowerVoltageBelowUpper = /* @__PURE__ */ condition({
  id: "plant/lower-voltage-below-upper",
  asks: "Is the lower voltage below the upper one?",
  force: "requirement",
  value: { unit: "V", symbol: "U_1", about: "lower voltage" },
  relation: "<",
  limit: { unit: "V", symbol: "U_2", about: "upper voltage" },
  source: [{ in: "common practice", clause: "consistency of a description", grade: "common-practice" }],
});

function problemOf(path: string, message: string, check: Check): Problem {
  const [value, limit] = [check.value as Quantity, check.limit as Quantity];
  return {
    path,
    code: "contradiction",
    message,
    expected: `${check.rule.relation} ${exactText(limit)}`,
    received: exactText(value),
  };
}

/** Contradictions between the values of a description that was read. */
export function valueContradictions({ site, inverters }: Plant): Problem[] {
  const problems: Problem[] = [];
  if (site.coldest && site.hottest) {
    const check = coldestBelowHottest({ value: site.coldest, limit: site.hottest });
    if (check.verdict !== "met")
      problems.push(problemOf("site.coldest", "the coldest temperature is not below the hottest", check));
  }
  for (const [index, inverter] of inverters.entries()) {
    const [lower, upper] = inverter.mppVoltageRange;
    const range = lowerVoltageBelowUpper({ value: lower, limit: upper });
    const path = `inverters[${index}].mppVoltageRange`;
    if (range.verdict !== "met")
      problems.push(problemOf(path, "the lower end of the tracking range is not below the upper", range));
    const ceiling = lowerVoltageBelowUpper({ value: inverter.maximumDcVoltage, limit: upper });
    if (ceiling.verdict === "met")
      problems.push(problemOf(path, "the tracking range ends above the largest input voltage", ceiling));
  }
  return problems;
}
