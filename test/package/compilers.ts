import { createRequire } from "node:module";
import { join } from "node:path";
import type ts from "typescript";

/** The compilers, beside the project's own, that users have: the oldest that the types are for, and the newest. */
export const COMPILERS = ["5.5.4", "6.0.3"];

/** A compiler that was installed for the tests. */
export function compiler(version: string, project: string): typeof ts {
  return createRequire(join(project, "package.json"))(`typescript-${version}`) as typeof ts;
}
