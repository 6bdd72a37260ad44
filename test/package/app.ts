import { execFileSync } from "node:child_process";
import { writeFileSync } from "node:fs";
import { join } from "node:path";
import { inject } from "vitest";

export type Format = "module" | "commonjs";

/** Writes an app into the project of its format, runs it and reads the JSON that it prints. */
export function runApp(format: Format, code: string): unknown {
  const project = inject("installed")[format];
  const file = join(project, "app.js");
  writeFileSync(file, code);
  return JSON.parse(execFileSync(process.execPath, [file], { cwd: project, encoding: "utf8" }));
}
