// One line a folder of declared rules; a test finds a folder that is forgotten.
export * as climate from "../climate/index.js";
export * as commissioning from "../commissioning/index.js";
export * as conductor from "../conductor/index.js";
export * as device from "../device/index.js";
export * as earthing from "../earthing/index.js";
export * as grid from "../grid/index.js";
export * as module from "../module/index.js";
export * as plant from "../plant/index.js";
export * as protection from "../protection/index.js";
export * as string from "../string/index.js";
export * as surge from "../surge/index.js";
