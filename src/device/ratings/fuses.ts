import { series } from "../../formula/index.js";

/**
 * Rated currents of gG fuse-links, the R10 series. @function
 *
 * @example
 * ```ts
 * import { fuseRatings } from "pv-to-grid/device";
 * fuseRatings.sizes().at(-1)?.text; // "1250"
 * ```
 */
export const fuseRatings = /* @__PURE__ */ series({
  id: "device/fuse-ratings",
  about: "rated currents of gG fuse-links, the R10 series",
  unit: "A",
  symbol: "I_n",
  sizes: "2 4 6 8 10 12 16 20 25 32 40 50 63 80 100 125 160 200 250 315 400 500 630 800 1000 1250",
  source: [{ in: "IEC 60269-1:2006", clause: "5.3.1", grade: "memory" }],
});

/**
 * Rated currents of gG fuse-links with the intermediate ratings that are sold. @function
 *
 * @example
 * ```ts
 * import { fuseRatingsWithIntermediate } from "pv-to-grid/device";
 * fuseRatingsWithIntermediate.sizes().some((rating) => rating.text === "35"); // true
 * ```
 */
export const fuseRatingsWithIntermediate = /* @__PURE__ */ series({
  id: "device/fuse-ratings-with-intermediate",
  about: "rated currents of gG fuse-links with the intermediate ratings that are sold",
  unit: "A",
  symbol: "I_n",
  sizes: "2 4 6 8 10 12 16 20 25 32 35 40 50 63 80 100 125 160 200 224 250 315 355 400 500 630 800 1000 1250",
  source: [{ in: "common practice", clause: "ratings offered besides the R10 series", grade: "common-practice" }],
});

/**
 * Rated currents of gPV fuse-links for strings. @function
 *
 * @example
 * ```ts
 * import { stringFuseRatings } from "pv-to-grid/device";
 * stringFuseRatings.sizes().map((rating) => rating.text).join(" "); // "1 2 3 4 5 6 8 10 12 15 16 20 25 30 32"
 * ```
 */
export const stringFuseRatings = /* @__PURE__ */ series({
  id: "device/string-fuse-ratings",
  about: "rated currents of gPV fuse-links for strings",
  unit: "A",
  symbol: "I_n",
  sizes: "1 2 3 4 5 6 8 10 12 15 16 20 25 30 32",
  source: [{ in: "common practice", clause: "ratings of cylindrical gPV fuse-links", grade: "common-practice" }],
});
