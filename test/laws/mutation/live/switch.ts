/** Which rule is changed while a test runs, and which rules a test calls. */
interface Switch {
  changed: { readonly id: string; readonly rule: (input: never) => unknown } | null;
  called: Set<string> | null;
}

export const state: Switch = { changed: null, called: null };

/** A rule that notes its calls and gives way to its changed twin. */
export function live<R extends ((input: never) => unknown) & { readonly id: string; readonly declaration: object }>(
  kind: string,
  rule: R,
  others: object = {},
): R {
  const call = (input: never): unknown => {
    state.called?.add(rule.id);
    return (state.changed?.id === rule.id ? state.changed.rule : rule)(input);
  };
  return Object.assign(call, { kind, id: rule.id, declaration: rule.declaration, real: rule }, others) as unknown as R;
}
