import { cellTemperatureFrom, type MeasurementSheet, type ReadingKey } from "../../commissioning/index.js";
import { isMissing, type Known, missing, whenKnown } from "../../formula/index.js";
import { sandiaCellRise } from "../../module/index.js";
import type { Quantity } from "../../quantity/index.js";
import type { Plant } from "../description/plant-description.js";

/** The readings of a sheet by place and kind. */
export interface SheetIndex {
  /** The reading, or missing where it was not taken. */
  readonly read: <Q extends Quantity>(at: string, reading: ReadingKey) => Known<Q>;
  readonly note: (at: string, reading: ReadingKey) => string | null;
}

/** Finds readings by place and kind. */
export function indexSheet({ readings }: MeasurementSheet): SheetIndex {
  const key = (at: string, reading: string): string => `${at}\n${reading}`;
  const found = new Map(readings.map((line) => [key(line.at, line.reading), line]));
  return {
    read: (at, reading) =>
      (found.get(key(at, reading))?.value ?? missing(`sheet: ${reading}${at === "" ? "" : ` at ${at}`}`)) as never,
    note: (at, reading) => found.get(key(at, reading))?.note ?? null,
  };
}

/** Light and warmth of a roof as they were measured. */
export interface MeasuredConditions {
  readonly irradiance: Known<Quantity<"irradiance">>;
  readonly cellTemperature: Known<Quantity<"temperature">>;
}

/** Light and cell temperature of a roof: the latter as noted, or from a thermometer on the back of a module. */
export function conditionsOf({ roofs }: Plant, roof: string, sheet: SheetIndex): MeasuredConditions {
  const irradiance = sheet.read<Quantity<"irradiance">>(roof, "irradiance");
  const noted = sheet.read<Quantity<"temperature">>(roof, "cellTemperature");
  if (!isMissing(noted)) return { irradiance, cellTemperature: noted };
  const index = roofs.findIndex(({ name }) => name === roof);
  const cellTemperature = whenKnown(
    {
      moduleTemperature: sheet.read<Quantity<"temperature">>(roof, "moduleTemperature"),
      irradiance,
      cellRise: cellRiseOf(roofs[index]?.mounting, `roofs[${index}].mounting`),
    },
    (known) => cellTemperatureFrom({ by: "back of module", ...known }),
  );
  return { irradiance, cellTemperature };
}

function cellRiseOf(
  mounting: Plant["roofs"][number]["mounting"],
  path: string,
): Known<Quantity<"temperatureDifference">> {
  switch (mounting) {
    case undefined:
      return missing(path);
    case "insulated back":
      return sandiaCellRise({ construction: "glass/cell/polymer sheet", mounting });
    default:
      return sandiaCellRise({ construction: "glass/cell/glass", mounting });
  }
}
