import { readSize } from "../size/size.js";
import { isNfpa70 } from "../wiring.js";
import type { ConductorProperties, PropertiesRequest } from "./conductor-properties.js";
import { propertiesIec } from "./iec/properties.js";
import { propertiesNfpa } from "./nfpa/properties.js";

/**
 * Resistance and reactance per length of one line of a cable at a temperature.
 *
 * @throws InputError where the resistance of the size is not tabulated
 */
export function conductorProperties(request: PropertiesRequest): ConductorProperties {
  const size = readSize(request.size, request.wiring);
  return isNfpa70(request.wiring) ? propertiesNfpa({ ...request, size }) : propertiesIec({ ...request, size });
}
