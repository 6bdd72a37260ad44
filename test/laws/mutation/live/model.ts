import { model as real } from "../../../../src/formula/model.js";
import { live } from "./switch.js";

/** The kernel's maker, of rules that can be changed while a test runs. */
export const model = ((...given: Parameters<typeof real>) =>
  live("model", real(...given) as never)) as unknown as typeof real;
