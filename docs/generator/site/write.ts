/** Builds the site of the docs into `docs/site/`: what TypeDoc reads from the sources, and what the rules say of themselves. */
import { copyFileSync, readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { Application, Converter, DocumentReflection, IndexEvent, PageEvent, type ProjectReflection } from "typedoc";
import { brokenLinks } from "./broken-links.js";
import { sentence } from "./html.js";
import { readKnowledge } from "./knowledge.js";
import { optionsFor } from "./options.js";
import { glossaryWords } from "./pages/glossary.js";
import { sourcesWords } from "./pages/sources.js";
import { nameModules, prepareRules } from "./reflections.js";
import { type Shown, themeOf } from "./theme.js";

const root = fileURLToPath(new URL("../../..", import.meta.url));
const out = join(root, "docs/site");
const MATHS_FONT = "@fontsource/noto-sans-math/files/noto-sans-math-latin-400-normal.woff2";

const ABOUT_WEIGHT = 8;

const knowledge = readKnowledge(root);
let shown: Shown | undefined;

const app = await Application.bootstrap(optionsFor(root, out));
app.renderer.defineTheme(
  "pv-to-grid",
  themeOf(() => shown!),
);
app.options.setValue("theme", "pv-to-grid");
// Ahead of the plugins of TypeDoc itself, which sort by what is set here.
app.converter.on(
  Converter.EVENT_RESOLVE_BEGIN,
  ({ project }) => {
    const documents = new Map([
      made(project, "Glossary", glossaryWords({ knowledge })),
      made(project, "Sources", sourcesWords()),
    ]);
    nameModules(project);
    shown = { knowledge, rules: prepareRules(project, knowledge), documents };
  },
  1000,
);

app.converter.on(
  Converter.EVENT_RESOLVE_END,
  ({ project }) => {
    for (const reflection of Object.values(project.reflections)) {
      if (reflection.isDeclaration() || reflection.isSignature())
        for (const source of reflection.sources ?? []) delete source.url;
    }
  },
  -1000,
);

app.renderer.on(PageEvent.END, (page) => {
  // Icons are drawn from the page itself; a browser refuses to draw them from another file.
  const contents = page.contents?.replace(/<use href="[^"#]*#/g, '<use href="#') ?? "";
  const kind = shown?.rules.ruleOf(page.model)?.kind;
  page.contents = kind
    ? contents.replace(/(<h1[^>]*>)(?:Function|Variable) /, `$1${sentence(kind).slice(0, -1)} `)
    : contents;
});

// A rule is found by the words of its trade before any page that happens to hold them.
app.renderer.on(IndexEvent.PREPARE_INDEX, (index) => {
  index.searchFieldWeights["about"] = ABOUT_WEIGHT;
  index.searchResults.forEach((reflection, at) => {
    const declaration = shown?.rules.ruleOf(reflection)?.declaration;
    if (declaration) index.searchFields[at]!["about"] = "asks" in declaration ? declaration.asks : declaration.about;
  });
});

const project = await app.convert();
if (project) {
  app.validate(project);
  await app.generateDocs(project, out);
  addMathsFont();
  for (const link of brokenLinks(out)) app.logger.error(link);
}
process.exitCode = !project || app.logger.hasErrors() || app.logger.hasWarnings() ? 1 : 0;

/** A document made from data; its text is what the search finds it by. */
function made(project: ProjectReflection, name: string, text: string): readonly [string, DocumentReflection] {
  const document = new DocumentReflection(name, project, [{ kind: "text", text }], {});
  project.addChild(document);
  project.registerReflection(document, undefined, undefined);
  return [name, document];
}

// Within the style sheet, since browsers keep a page opened from a file from other files.
function addMathsFont(): void {
  const sheet = join(out, "assets/custom.css");
  const font = readFileSync(join(root, "node_modules", MATHS_FONT)).toString("base64");
  const face = `@font-face { font-family: "Noto Sans Math"; font-display: swap; src: url("data:font/woff2;base64,${font}") format("woff2"); }\n`;
  writeFileSync(sheet, face + readFileSync(sheet, "utf8"));
  copyFileSync(join(root, "LICENSE"), join(out, "LICENSE.txt"));
}
