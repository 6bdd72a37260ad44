import { readdirSync } from "node:fs";
import { join } from "node:path";
import type { TypeDocOptions } from "typedoc";
import { internalTypes } from "./internal-types.js";

/** How TypeDoc reads the sources and shows them; every warning is an error. */
export function optionsFor(root: string, out: string): Partial<TypeDocOptions> {
  const subjects = readdirSync(join(root, "src"), { withFileTypes: true })
    .filter((entry) => entry.isDirectory() && entry.name !== "cli")
    .map(({ name }) => join(root, "src", name, "index.ts"));
  return {
    name: "pv-to-grid",
    entryPoints: [join(root, "src/index.ts"), ...subjects],
    tsconfig: join(root, ".config/tsconfig.build.json"),
    basePath: root,
    readme: join(root, "README.md"),
    projectDocuments: ["docs/guides/*.md", "docs/evidence.md", "docs/audit/**/*.md", "DEVELOPERS.md", "CHANGELOG.md"].map(
      (path) => join(root, path),
    ),
    out,
    customCss: join(root, "docs/generator/site/style.css"),
    disableGit: true,
    // A place in the sources is named, not linked: the site has no host.
    sourceLinkTemplate: "{path}",
    skipErrorChecking: true,
    excludeInternal: true,
    excludeExternals: true,
    hideGenerator: true,
    githubPages: false,
    searchInComments: true,
    searchInDocuments: true,
    navigation: { includeCategories: true, includeGroups: false, includeFolders: false, compactFolders: false, excludeReferences: true },
    categorizeByGroup: false,
    defaultCategory: "General",
    sort: ["documents-first", "alphabetical"],
    visibilityFilters: {},
    lang: "en",
    requiredToBeDocumented: ["Module", "Class", "Function", "Interface", "TypeAlias", "Variable", "Enum"],
    validation: { notExported: true, invalidLink: true, invalidPath: true, rewrittenLink: true, notDocumented: true, unusedMergeModuleWith: true },
    intentionallyNotExported: [...internalTypes],
    treatWarningsAsErrors: true,
    treatValidationWarningsAsErrors: true,
    logLevel: "Warn",
  };
}
