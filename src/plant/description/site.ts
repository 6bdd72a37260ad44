import * as z from "zod/mini";
import { consequences } from "../../surge/index.js";
import { finding, keysOf, perhaps, perhapsOneOf, statedIn } from "./fields.js";

/** The place: its temperatures, height and exposure to lightning. */
export const siteSchema = z.strictObject({
  coldest: finding("°C", "lowest ambient temperature to design for", { from: -90, to: 40, usual: [-60, 30] }),
  hottest: finding("°C", "highest ambient temperature to design for", { from: -20, to: 70, usual: [0, 60] }),
  altitude: finding("m", "height above sea level", { from: -450, to: 9000, usual: [-450, 6000] }),
  lightningDensity: finding("1/(km²·a)", "lightning flashes to ground, a square kilometre and year", {
    from: 0,
    to: 100,
  }),
  surroundings: perhapsOneOf(["rural", "suburban", "urban"], "surroundings of the supply line, for the lightning risk"),
  nationalFactor: finding("1", "national factor of the surroundings, for the lightning risk", { from: 1, to: 3 }),
  consequence: perhapsOneOf(keysOf(consequences), "what an overvoltage could harm"),
  building: perhapsOneOf(
    ["individual residential", "ground-mounted plant", "service, industrial or agricultural", "public gathering"],
    "class of the building, for surge protection and voltage ceilings",
  ),
  fireServiceSwitch: perhaps("whether a switch for the fire service is asked for"),
  soilResistivity: finding("Ω·m", "resistivity of the soil", { above: 0, usual: [1, 20000] }),
  statedIn,
});
