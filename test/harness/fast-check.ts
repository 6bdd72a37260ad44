import fc from "fast-check";
import { runs, seed } from "./random.js";

fc.configureGlobal({ seed, numRuns: runs });
