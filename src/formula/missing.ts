/** A finding that is not there: the paths of the inputs that would decide it. */
export interface Missing {
  readonly missing: readonly string[];
}

/** A value, or what is missing for it. */
export type Known<T> = T | Missing;

/** Says which inputs are missing. */
export function missing(...paths: readonly string[]): Missing {
  return Object.freeze({ missing: Object.freeze([...paths]) });
}

/** Whether a finding is missing. */
export function isMissing(value: unknown): value is Missing {
  return typeof value === "object" && value !== null && "missing" in value && !("verdict" in value);
}

type AllKnown<I> = { readonly [K in keyof I]: Exclude<I[K], Missing> };

/** Calls a function with findings that are all there, or passes on what is missing for any of them. */
export function whenKnown<I extends Readonly<Record<string, unknown>>, R>(
  findings: I,
  use: (known: AllKnown<I>) => R,
): R | Missing {
  const paths = Object.values(findings).flatMap((finding) => (isMissing(finding) ? finding.missing : []));
  return paths.length > 0 ? missing(...new Set(paths)) : use(findings as AllKnown<I>);
}
