import { awgArea, nfpa70_2017_sizes, sizeName } from "../../conductor/index.js";
import { type Check, chooseAmong, isMissing, type Known, type Rejected } from "../../formula/index.js";
import { given, type Input, type Quantity } from "../../quantity/index.js";
import { enlargedGroundingArea } from "./areas.js";
import { equipmentGroundingLargeEnough, withinCircuitConductor } from "./conditions.js";
import { nfpa70_2023_250_122 } from "./table-250-122.js";

/** What decides an equipment grounding conductor. */
export interface EquipmentGroundingQuestion {
  readonly at: string;
  /** `"choose"`, or the stated one. */
  readonly size: Input<"area">;
  /** Rating of the overcurrent device ahead; for a PV circuit without one, of the device that 690.9(B) would ask for. */
  readonly ratedCurrent: Known<Input<"current">>;
  readonly material: "copper" | "aluminium";
  /** Area of the ungrounded conductors of the circuit, which the grounding conductor need not exceed. */
  readonly circuitArea: Known<Input<"area">>;
  /**
   * Ungrounded conductors that were enlarged: installed area and the least area that carries the current. `null` where they
   * were not, or only for the voltage drop of a PV direct current circuit, which 690.45 lets pass.
   */
  readonly enlarged: { readonly installed: Input<"area">; readonly least: Input<"area"> } | null;
}

/** The grounding conductor that was chosen or verified; with conductors in parallel raceways, one of it in each. */
export interface EquipmentGroundingChoice {
  readonly size: Quantity<"area"> | null;
  /** The size by its name, such as `10 AWG`. */
  readonly name: string | null;
  readonly required: Known<Quantity<"area">>;
  readonly checks: readonly Check[];
  readonly rejected: readonly Rejected[];
}

/**
 * Chooses the smallest equipment grounding conductor, or verifies a stated one, by table 250.122: enlarged in proportion
 * where the ungrounded conductors were, and never larger than they are.
 *
 * @param question - device, material, circuit conductors, and by how much they were enlarged
 * @throws InputError where the rating lies beyond the table
 * @example
 * ```ts
 * import { equipmentGroundingConductor } from "pv-to-grid/earthing";
 * equipmentGroundingConductor({ at: "INV1", size: "choose", ratedCurrent: "40 A", material: "copper", circuitArea: "16510 cmil", enlarged: null }).name; // "10 AWG"
 * ```
 */
export function equipmentGroundingConductor(question: EquipmentGroundingQuestion): EquipmentGroundingChoice {
  const { at, size } = question;
  const required = requiredArea(question);
  const checksFor = (value: Quantity<"area">): readonly Check[] => [
    equipmentGroundingLargeEnough({ at, value, limit: required }),
  ];
  if (size !== "choose") {
    const stated = given(size, "cmil", "stated size");
    return Object.freeze({ size: stated, name: sizeName(stated), required, checks: checksFor(stated), rejected: [] });
  }
  if (isMissing(required)) {
    return Object.freeze({
      size: null,
      name: null,
      required,
      checks: [equipmentGroundingLargeEnough({ at, missing: required.missing })],
      rejected: [],
    });
  }
  const { chosen, checks, rejected } = chooseAmong(nfpa70_2017_sizes.declaration, nfpa70_2017_sizes.sizes(), checksFor);
  const found = chosen as Quantity<"area"> | null;
  return Object.freeze({ size: found, name: found && sizeName(found), required, checks, rejected });
}

function requiredArea({
  ratedCurrent,
  material,
  circuitArea,
  enlarged,
}: EquipmentGroundingQuestion): Known<Quantity<"area">> {
  if (isMissing(ratedCurrent)) return ratedCurrent;
  const tableArea = awgArea({ conductorSize: nfpa70_2023_250_122({ ratedCurrent, material }) });
  const due = enlarged
    ? enlargedGroundingArea({ tableArea, installedArea: enlarged.installed, leastArea: enlarged.least })
    : tableArea;
  if (isMissing(circuitArea)) return due;
  const circuit = given(circuitArea, "cmil");
  return withinCircuitConductor({ value: due, limit: circuit }).verdict === "not met" ? circuit : due;
}
