import type { Input, Quantity } from "../../quantity/index.js";
import type { Cable } from "../cable.js";
import type { Arrangement, Loaded } from "../stretch.js";
import type { WiringRules } from "../wiring.js";

/** What a voltage change needs to know of a cable. */
export interface ConductorProperties {
  /** Of one line, all its parallel conductors together, at the temperature. */
  readonly resistancePerLength: Quantity<"resistancePerLength">;
  /** `null` for direct current. */
  readonly reactancePerLength: Quantity<"resistancePerLength"> | null;
}

/** A kind of raceway. */
export type Raceway = "PVC" | "aluminium" | "steel";

/** A cable of one size and temperature, and the current that it carries. */
export interface PropertiesRequest {
  readonly cable: Cable;
  readonly size: string | number | Quantity<"area">;
  readonly temperature: Input<"temperature">;
  readonly wiring: WiringRules;
  /** Direct current. */
  readonly direct: boolean;
  readonly loaded: Loaded;
  /** How single cores lie. */
  readonly arrangement?: Arrangement;
  /** NFPA 70: what the raceway is made of; steel, which has the highest reactance, where it is left out. */
  readonly raceway?: Raceway;
  readonly frequency?: "50 Hz" | "60 Hz";
}

/** The same with the size read. */
export interface SizedRequest extends PropertiesRequest {
  readonly size: Quantity<"area">;
}
