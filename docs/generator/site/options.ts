import { readdirSync } from "node:fs";
import { join } from "node:path";
import type { TypeDocOptions } from "typedoc";

// In the order in which a newcomer reads them; what is not listed follows.
const READING_ORDER = [
  "first-plant",
  "string-limits",
  "inverter-to-meter",
  "earthing",
  "grid-settings",
  "commissioning",
  "reading-a-derivation",
  "auditing",
  "numerics",
  "practices",
  "adding-rules",
  "elsewhere",
];
const OTHER_PAGES = ["DEVELOPERS.md", "CHANGELOG.md", "docs/evidence.md", "docs/audit/**/*.md"];

function guides(folder: string): readonly string[] {
  const rank = (file: string): number => READING_ORDER.indexOf(file.replace(".md", "")) + 1 || Infinity;
  return readdirSync(folder)
    .filter((file) => file.endsWith(".md"))
    .sort((a, b) => rank(a) - rank(b))
    .map((file) => join(folder, file));
}

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
    projectDocuments: [...guides(join(root, "docs/guides")), ...OTHER_PAGES.map((path) => join(root, path))],
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
    navigation: {
      includeCategories: true,
      includeGroups: false,
      includeFolders: false,
      compactFolders: false,
      excludeReferences: true,
    },
    categorizeByGroup: false,
    headings: { readme: false, document: false },
    defaultCategory: "General",
    categoryOrder: ["Guides", "Subjects", "Reference", "Evidence", "Evidence by subject", "*"],
    sort: ["documents-first", "alphabetical-ignoring-documents"],
    visibilityFilters: {},
    lang: "en",
    requiredToBeDocumented: ["Module", "Class", "Function", "Interface", "TypeAlias", "Variable", "Enum"],
    validation: {
      // Shorthands that a file keeps to itself; what they stand for shows where they are used.
      notExported: false,
      invalidLink: true,
      invalidPath: true,
      rewrittenLink: true,
      notDocumented: true,
      unusedMergeModuleWith: true,
    },
    treatWarningsAsErrors: true,
    treatValidationWarningsAsErrors: true,
    logLevel: "Warn",
  };
}
