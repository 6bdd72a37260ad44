// One line a folder of declared rules, such as: export * as module from "../module/index.js";
// A test finds a folder that is forgotten.
export {};
