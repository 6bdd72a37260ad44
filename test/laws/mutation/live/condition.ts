import { condition as real } from "../../../../src/formula/condition.js";
import { live } from "./switch.js";

/** The kernel's maker, of rules that can be changed while a test runs. */
export const condition = ((...given: Parameters<typeof real>) =>
  live("condition", real(...given) as never)) as unknown as typeof real;
