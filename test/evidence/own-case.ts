import type { Case } from "../../src/evidence/index.js";

/** A case of the tests: the published example of a training handout, or that with something altered. */
export function ownCase(
  altered: Omit<Partial<Case>, "expected"> & { readonly expected?: Partial<Case["expected"]> } = {},
): Case {
  const { expected, ...rest } = altered;
  return {
    id: "own-cold",
    example: "gses-voc-0c",
    kind: "worked",
    checks: "own/voltage-at",
    at: "",
    claims: null,
    seen: { in: "GSES handout:2011", place: "worked examples", grade: "original" },
    inputs: {
      openCircuitVoltage: { printed: "45.8 V" },
      absoluteVoltageCoefficient: { printed: "-0.13 V/K" },
      cellTemperature: { printed: "0 °C" },
    },
    inputsRounded: false,
    erratum: null,
    ...rest,
    expected: { printed: "49.05", unit: "V", rounding: "nearest", digitsSure: true, ...expected },
  };
}
