/**
 * Another program that reads expressions, such as mathjs with many digits: it gets the expression and the bare numbers of
 * its names as text, and gives a number as text, or whether a comparison holds.
 */
export type Evaluator = (
  expression: string,
  names: Readonly<Record<string, string | readonly string[]>>,
) => string | boolean;

/** What a step should be: a number, a name, or why it cannot be worked out again. */
export type Due = { readonly value: string } | { readonly fault: string };
