import { formula as real } from "../../../../src/formula/formula.js";
import { live } from "./switch.js";

/** The kernel's maker, of rules that can be changed while a test runs. */
export const formula = ((...given: Parameters<typeof real>) =>
  live("formula", real(...given) as never)) as unknown as typeof real;
