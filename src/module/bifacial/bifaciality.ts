import { type Known, whenKnown } from "../../formula/index.js";
import type { Input, Quantity } from "../../quantity/index.js";
import type { Grade, SourceKey } from "../../source/index.js";
import type { Module } from "../datasheet/read-module.js";
import { bifacialShortCircuitCurrent } from "./bifacial-short-circuit-current.js";
import { lesserBifaciality } from "./lesser-bifaciality.js";

/** An edition of the measurement of bifacial devices. */
export interface BifacialEdition {
  readonly key: "IEC TS 60904-1-2:2024" | "IEC TS 60904-1-2:2019";
  readonly label: string;
  readonly edition: SourceKey;
  readonly grade: Grade;
}

/** The editions, which differ in the bifaciality coefficient that they take. */
export const bifacialEditions: readonly BifacialEdition[] = [
  {
    key: "IEC TS 60904-1-2:2024",
    label: "2024: bifaciality of the short-circuit current",
    edition: "IEC TS 60904-1-2:2024",
    grade: "reproduced",
  },
  {
    key: "IEC TS 60904-1-2:2019",
    label: "2019: the lesser of those of current and power",
    edition: "IEC TS 60904-1-2:2019",
    grade: "reproduced",
  },
];

type Bifaciality = Pick<Module, "bifacialityOfCurrent" | "bifacialityOfPower">;

/**
 * Bifaciality coefficient that an edition takes; missing where the datasheet does not state what it needs.
 *
 * @example
 * ```ts
 * import { given } from "pv-to-grid/quantity";
 * import { bifacialityBy } from "pv-to-grid/module";
 * bifacialityBy("IEC TS 60904-1-2:2019", { bifacialityOfCurrent: given("0.72", "1"), bifacialityOfPower: given("0.70", "1") }); // 0.7 1
 * ```
 */
export function bifacialityBy(
  edition: BifacialEdition["key"],
  { bifacialityOfCurrent, bifacialityOfPower }: Bifaciality,
): Known<Quantity<"ratio">> {
  if (edition === "IEC TS 60904-1-2:2024") return bifacialityOfCurrent;
  return whenKnown({ bifacialityOfCurrent, bifacialityOfPower }, lesserBifaciality);
}

/** What the current of a bifacial module follows from. */
export interface BifacialLight {
  readonly frontIrradiance: Known<Input<"irradiance">>;
  readonly rearIrradiance: Known<Input<"irradiance">>;
  readonly edition: BifacialEdition["key"];
}

/**
 * Short-circuit current of a bifacial module with light on both sides; missing where its bifaciality or the light is.
 *
 * @example
 * ```ts
 * import { bifacialCurrent, readModule } from "pv-to-grid/module";
 * const type = readModule({
 *   maximumPower: "440 W", openCircuitVoltage: "39.2 V", shortCircuitCurrent: "14.1 A", mppVoltage: "32.8 V", mppCurrent: "13.42 A",
 *   openCircuitVoltageCoefficient: "-0.26 %/K", bifacialityOfCurrent: "0.8",
 * });
 * bifacialCurrent(type, { frontIrradiance: "1000 W/m2", rearIrradiance: "135 W/m2", edition: "IEC TS 60904-1-2:2024" }); // 15.6228 A
 * ```
 */
export function bifacialCurrent(
  module: Module,
  { frontIrradiance, rearIrradiance, edition }: BifacialLight,
): Known<Quantity<"current">> {
  const { shortCircuitCurrent } = module;
  const bifaciality = bifacialityBy(edition, module);
  return whenKnown({ bifaciality, frontIrradiance, rearIrradiance }, (known) =>
    bifacialShortCircuitCurrent({ shortCircuitCurrent, ...known }),
  );
}
