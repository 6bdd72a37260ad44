import { given, type Input, type Quantity } from "../../quantity/index.js";
import { whole } from "../count.js";
import {
  stringCableCurrentBehindDevice,
  stringCableCurrentWithoutDevice,
  subArrayCableCurrent,
} from "./circuit-currents.js";

/** A d.c. circuit whose conductors are to be rated. */
export type DcCircuit =
  | {
      readonly circuit: "string";
      /** Device in the string itself; `null` where it has none. */
      readonly device: Input<"current"> | null;
      /** Nearest device towards the inverter; `null` where the array has none. */
      readonly downstreamDevice: Input<"current"> | null;
      /** Strings in parallel behind the nearest device, or all of the array where there is none. */
      readonly strings: number;
      /** Maximum current of one string. */
      readonly maximumCurrent: Input<"current">;
    }
  | {
      readonly circuit: "sub-array";
      readonly device: Input<"current"> | null;
      /** Device of the whole array; `null` where it has none. */
      readonly arrayDevice: Input<"current"> | null;
      /** Maximum current of this sub-array. */
      readonly maximumCurrent: Input<"current">;
      /** Maximum current of the other sub-arrays together. */
      readonly others: Input<"current">;
    }
  | {
      readonly circuit: "array";
      readonly device: Input<"current"> | null;
      /** Maximum current of the array. */
      readonly maximumCurrent: Input<"current">;
    };

/**
 * Least current rating of the conductors of a string, sub-array or array, with and without a device of their own. The same
 * in IEC 62548, AS/NZS 5033 and, for the conductors behind one device, in the NEC.
 *
 * @throws InputError for currents that cannot be ones
 * @example
 * ```ts
 * import { minimumCircuitCurrent } from "pv-to-grid/string";
 * minimumCircuitCurrent({ circuit: "string", device: null, downstreamDevice: null, strings: 3, maximumCurrent: "17.5 A" }).text; // "35"
 * ```
 */
export function minimumCircuitCurrent(circuit: DcCircuit): Quantity<"current"> {
  const { device, maximumCurrent } = circuit;
  if (device !== null) return given(device, "A");
  switch (circuit.circuit) {
    case "string": {
      const { downstreamDevice, strings } = circuit;
      if (downstreamDevice === null)
        return stringCableCurrentWithoutDevice({ strings: whole(strings), maximumCurrent });
      return stringCableCurrentBehindDevice({
        ratedCurrent: downstreamDevice,
        strings: whole(strings),
        maximumCurrent,
      });
    }
    case "sub-array": {
      const { arrayDevice, others } = circuit;
      return subArrayCableCurrent({
        ratedCurrent: arrayDevice ?? "0 A",
        otherCurrents: others,
        ownCurrent: maximumCurrent,
      });
    }
    case "array":
      return given(maximumCurrent, "A");
  }
}
