import { type Check, condition, formula, isMissing, type Known, type Missing } from "../../formula/index.js";
import { given, type Input } from "../../quantity/index.js";

/** Is the module of protection class II? @function */
export const moduleOfClassTwo = /* @__PURE__ */ condition({
  id: "string/module-of-class-two",
  asks: "Is the module of protection class II?",
  force: "requirement",
  value: { named: true, about: "class of protection against electric shock" },
  relation: "one of",
  limit: { named: true, about: "classes that serve" },
  source: [
    { in: "IEC 61730-1:undated", clause: "classes of protection", grade: "memory" },
    { in: "IEC 60364-7-712:2017", clause: "712.412", grade: "memory" },
  ],
});

/** Is the inverter isolated, so that a pole of the array may be earthed for function? @function */
export const isolatedForFunctionalEarth = /* @__PURE__ */ condition({
  id: "string/isolated-for-functional-earth",
  asks: "Is the inverter isolated, so that a pole of the array may be earthed for function?",
  force: "requirement",
  value: { named: true, about: "separation of the inverter" },
  relation: "one of",
  limit: { named: true, about: "separations that serve" },
  source: [
    { in: "IEC 62548-1:2023", clause: "functional earthing", grade: "memory" },
    { in: "IEC 60364-7-712:2017", clause: "712.542", grade: "memory" },
  ],
});

/** Does the site lie within the height that the inverter's ratings hold for? @function */
export const altitudeWithinRating = /* @__PURE__ */ condition({
  id: "string/altitude-within-rating",
  asks: "Does the site lie within the height that the inverter's ratings hold for?",
  force: "requirement",
  value: { unit: "m", symbol: "h", about: "height of the site above sea level" },
  relation: "≤",
  limit: { unit: "m", symbol: "h_max", about: "height up to which the ratings hold" },
  source: [{ in: "common practice", clause: "clearances and cooling are rated to 2 000 m", grade: "common-practice" }],
  worse: { "site.altitude": "up", "inverters[].maximumAltitude": "down" },
});

/**
 * Height up to which equipment keeps its ratings unless its maker says otherwise. @function
 *
 * @example
 * ```ts
 * import { referenceAltitude } from "pv-to-grid/string";
 * referenceAltitude({}).text; // "2000"
 * ```
 */
export const referenceAltitude = /* @__PURE__ */ formula({
  id: "string/reference-altitude",
  about: "height up to which equipment keeps its ratings unless its maker says otherwise",
  takes: {},
  constants: {
    height: { value: "2000", unit: "m", symbol: "2 000 m", about: "height above sea level", source: [{ in: "common practice", clause: "clearances and cooling are rated to 2 000 m", grade: "common-practice" }] },
  },
  gives: { unit: "m", symbol: "h_ref" },
  expression: "height",
  source: [{ in: "common practice", clause: "clearances and cooling are rated to 2 000 m", grade: "common-practice" }],
  unproven: { because: "definition" },
});

/** What decides whether a module and an inverter may be put together at a site. */
export interface ModuleWithInverter {
  readonly at?: string;
  /** Protection class of the module: 0, II or III. */
  readonly protectionClass: Known<string>;
  readonly functionalEarthing: boolean | Missing;
  readonly isolated: boolean | Missing;
  readonly altitude: Known<Input<"length">>;
  /** Height up to which the maker states the ratings. */
  readonly maximumAltitude: Known<Input<"length">>;
}

/**
 * Judges a module with an inverter at a site: class II, functional earthing only with an isolated inverter, and the height,
 * which stays open above 2 000 m until the maker states his ratings there.
 *
 * @example
 * ```ts
 * import { moduleWithInverter } from "pv-to-grid/string";
 * import { missing } from "pv-to-grid/formula";
 * moduleWithInverter({
 *   protectionClass: "II", functionalEarthing: true, isolated: false, altitude: "2400 m", maximumAltitude: missing("inverters[0].maximumAltitude"),
 * }).map((check) => check.verdict).join(); // "met,not met,open"
 * ```
 */
export function moduleWithInverter(input: ModuleWithInverter): readonly Check[] {
  const { at = "", protectionClass, functionalEarthing, isolated } = input;
  const separation = isMissing(isolated) ? isolated : isolated ? "isolated" : "not isolated";
  const earthing = isMissing(functionalEarthing)
    ? [isolatedForFunctionalEarth({ missing: functionalEarthing.missing, at })]
    : functionalEarthing
      ? [isolatedForFunctionalEarth({ value: separation, limit: ["isolated"], at })]
      : [];
  return Object.freeze([
    moduleOfClassTwo({ value: protectionClass, limit: ["II"], at }),
    ...earthing,
    altitudeCheck(input),
  ]);
}

function altitudeCheck({ at = "", altitude, maximumAltitude }: ModuleWithInverter): Check {
  if (isMissing(altitude)) return altitudeWithinRating({ missing: altitude.missing, at });
  const value = given(altitude, "m");
  if (!isMissing(maximumAltitude)) return altitudeWithinRating({ value, limit: maximumAltitude, at });
  const usual = altitudeWithinRating({ value, limit: referenceAltitude({}), at });
  return usual.verdict === "met" ? usual : altitudeWithinRating({ value, missing: maximumAltitude.missing, at });
}
