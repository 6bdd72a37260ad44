import { type Known, whenKnown } from "../../formula/index.js";
import type { Input, Quantity } from "../../quantity/index.js";
import { risenCellTemperature } from "./risen-cell-temperature.js";
import { sandiaCellRise } from "./sandia-cell-rise.js";
import { sandiaCellTemperature } from "./sandia-cell-temperature.js";
import { sandiaExponents } from "./sandia-exponents.js";
import { sandiaModuleTemperature } from "./sandia-module-temperature.js";
import { temperatureRiseByMounting } from "./temperature-rise-by-mounting.js";

/** What the hottest cells follow from. */
export interface HotCell {
  /** Hottest ambient of the site. */
  readonly hottest: Known<Input<"temperature">>;
  /** A key of `mountings`. */
  readonly mounting: Known<string>;
}

/**
 * Hottest cell temperature: the hottest ambient and the upper rise of practice for the mounting; for an insulated back,
 * which practice leaves out, the Sandia model in full sun and calm air.
 *
 * @throws InputError where the mounting is not one of `mountings`
 * @example
 * ```ts
 * import { hotCellTemperature } from "pv-to-grid/module";
 * hotCellTemperature({ hottest: "36 °C", mounting: "close roof mount" }); // 71 °C
 * ```
 */
export function hotCellTemperature({ hottest, mounting }: HotCell): Known<Quantity<"temperature">> {
  return whenKnown({ hottest, mounting }, (known) => {
    if (known.mounting === "insulated back") return insulatedBack(known.hottest);
    const temperatureRise = temperatureRiseByMounting({ mounting: known.mounting, bound: "high" });
    return risenCellTemperature({ ambient: known.hottest, temperatureRise });
  });
}

function insulatedBack(ambient: Input<"temperature">): Quantity<"temperature"> {
  const type = { construction: "glass/cell/polymer sheet", mounting: "insulated back" } as const;
  const irradiance = "1000 W/m2";
  const moduleTemperature = sandiaModuleTemperature({
    ambient,
    irradiance,
    wind: "0 m/s",
    sandiaExponent: sandiaExponents({ ...type, exponent: "a" }),
    sandiaWindExponent: sandiaExponents({ ...type, exponent: "b" }),
  });
  return sandiaCellTemperature({ moduleTemperature, irradiance, cellRise: sandiaCellRise(type) });
}
