import { readdirSync, readFileSync, statSync } from "node:fs";
import { join, relative } from "node:path";
import { fileURLToPath } from "node:url";
import { describe, expect, it } from "vitest";
import { isMissing, isNamed } from "../../src/formula/index.js";
import { isQuantity } from "../../src/quantity/index.js";
import { villageBakery } from "../plant/demo.js";
import { runSnippet, type Snippet, snippetsOf } from "./snippet.js";

const root = fileURLToPath(new URL("../../", import.meta.url));

function filesBelow(folder: string, ending: string): string[] {
  return readdirSync(join(root, folder)).flatMap((name) => {
    const path = join(folder, name);
    if (statSync(join(root, path)).isDirectory()) return name === "node_modules" ? [] : filesBelow(path, ending);
    return name.endsWith(ending) ? [path] : [];
  });
}

const subjects = readdirSync(join(root, "src"), { withFileTypes: true }).filter(
  (entry) => entry.isDirectory() && entry.name !== "cli",
);
const modules: Record<string, object> = { "pv-to-grid": await import("../../src/index.js") };
for (const { name } of subjects) {
  const face = join(root, "src", name, "index.ts");
  if (statSync(face, { throwIfNoEntry: false })) modules[`pv-to-grid/${name}`] = (await import(face)) as object;
}

const files = ["README.md", "DEVELOPERS.md", ...filesBelow("docs/guides", ".md"), ...filesBelow("src", ".ts")];
const snippets: readonly Snippet[] = files.flatMap((file) =>
  snippetsOf(file, readFileSync(join(root, file), "utf8")).filter(({ code }) => !code.includes("…")),
);

/** The value that a comment writes as a literal; throws for a remark in words. */
function literal(comment: string): unknown {
  return JSON.parse(
    comment.replace(/([{,]\s*)([A-Za-z_]\w*):/g, '$1"$2":').replace(/\bundefined\b/g, "null"),
  ) as unknown;
}

/** A value as an example would print it. */
function printed(value: unknown): unknown {
  if (isQuantity(value)) return `${value.text} ${value.unit}`;
  if (isNamed(value)) return value.name;
  if (isMissing(value)) return { missing: value.missing };
  return value;
}

function compare(value: unknown, comment: string, code: string): void {
  let claimed: unknown;
  try {
    claimed = literal(comment);
  } catch {
    // A remark in words; or a quantity such as 71 °C, which begins the remark.
    if (isQuantity(value))
      expect(
        comment.startsWith(`${value.text} ${value.unit}`) || comment.includes(value.text) || !/^[-\d]/.test(comment),
        `${code} is ${value.text} ${value.unit}, not ${comment}`,
      ).toBe(true);
    return;
  }
  const given = printed(value);
  if (isQuantity(value) && typeof claimed === "number") expect(value.number, code).toBe(claimed);
  else expect(JSON.parse(JSON.stringify(given ?? null)), code).toEqual(JSON.parse(JSON.stringify(claimed ?? null)));
}

describe("examples run to the printed digits", () => {
  it("are many", () => {
    expect(snippets.length).toBeGreaterThan(100);
  });

  it("fail where a digit is wrong", async () => {
    const code = ['import { given } from "pv-to-grid/quantity";', 'given("39.2 V", "V").text; // "39.3"'].join("\n");
    await expect(runSnippet({ file: "own.md", line: 1, code }, modules, {}, compare)).rejects.toThrow(/39\.3/);
  });

  it.each(snippets.map((snippet) => [`${relative(".", snippet.file)}:${snippet.line}`, snippet] as const))(
    "%s",
    async (_, snippet) => {
      await runSnippet(snippet, modules, { plant: villageBakery() }, compare);
    },
  );
});
