import * as z from "zod/mini";
import { count, finding, name, note, perhaps, perhapsCount, statedIn } from "./fields.js";

/** Equal strings of one roof on one tracker. */
export const stringSchema = z.strictObject({
  inverter: name("the inverter that they feed"),
  tracker: name("the tracker that they feed"),
  roof: name("the roof that they are on"),
  modules: count("modules in series in each"),
  count: perhapsCount("how many equal strings", 1),
  junction: note("the junction that joins them, where there are more of them than inputs"),
});

/** Strings as stated, or left to the search. */
export const stringsSchema = z.optional(z.union([z.literal("choose"), z.array(stringSchema).check(z.minLength(1))]));

/** A branch or combiner that joins strings before the inverter. */
export const junctionSchema = z.strictObject({
  name: name("name of the junction"),
  kind: z.enum(["branch plug", "combiner"]),
  inputs: count("strings that it joins"),
  ratedCurrent: finding("A", "rated current of its trunk, busbar or plug", { above: 0, usual: [1, 5000] }),
  ratedVoltage: finding("V", "rated voltage", { above: 0, usual: [50, 2000] }),
  fuse: finding("A", "rated current of each string fuse in it", { above: 0, usual: [1, 60] }),
  ambient: finding("°C", "temperature inside it", { from: -40, to: 90 }),
  derating: finding("1", "factor on the ratings of the devices inside, at that temperature", { above: 0, to: 1 }),
  loadBreakSwitch: perhaps("whether it has a load-break switch"),
  diodeVoltage: finding("V", "forward voltage of its blocking diodes", { from: 0, to: 3 }),
  statedIn,
});
