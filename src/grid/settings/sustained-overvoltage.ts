import { type Known, missing } from "../../formula/index.js";
import type { Quantity } from "../../quantity/index.js";
import type { Connection } from "../supply/supply-systems.js";
import type { InterfaceSettings } from "./interface-settings.js";

/** The lowest overvoltage setting that a sunny day can reach, in the kind of voltage of a connection: the sustained one, else the slow stage. */
export function sustainedOvervoltageOf(
  { rows }: InterfaceSettings,
  connection: Connection,
): Known<Quantity<"voltage">> {
  const settings = (["sustainedOvervoltage", "overvoltage1", "overvoltage2"] as const).map(
    (key) => rows.find((row) => row.key === key)?.setting?.volts,
  );
  const volts = settings.find((each) => each !== null && each !== undefined);
  if (!volts) return missing("grid.settings.sustainedOvervoltage");
  return connection === "single-phase" ? volts.lineToNeutral : volts.lineToLine;
}
