import {
  DefaultTheme,
  DefaultThemeRenderContext,
  type DeclarationReflection,
  type DocumentReflection,
  JSX,
  type PageEvent,
  type Reflection,
  type SignatureReflection,
} from "typedoc";
import type { Knowledge } from "./knowledge.js";
import type { PageLinks } from "./links.js";
import { glossaryPage } from "./pages/glossary.js";
import { sourcesPage } from "./pages/sources.js";
import type { ShownRules } from "./reflections.js";
import { afterExample, beforeExample } from "./rule/page.js";

/** What the theme shows; set once the sources have been read. */
export interface Shown {
  readonly knowledge: Knowledge;
  readonly rules: ShownRules;
  readonly documents: ReadonlyMap<string, DocumentReflection>;
}

/** A theme that shows a rule by its declaration, and documents that are made from data. */
export function themeOf(shown: () => Shown): typeof DefaultTheme {
  return class extends DefaultTheme {
    override getRenderContext(page: PageEvent<Reflection>): DefaultThemeRenderContext {
      return new RuleContext(this.router, this, page, this.application.options, shown());
    }
  };
}

const raw = (html: string): JSX.Element => JSX.createElement(JSX.Raw, { html });
const together = (...parts: readonly (JSX.Element | undefined)[]): JSX.Element =>
  JSX.createElement(JSX.Fragment, null, ...parts);

class RuleContext extends DefaultThemeRenderContext {
  constructor(
    ...[router, theme, page, options, shown]: [...ConstructorParameters<typeof DefaultThemeRenderContext>, Shown]
  ) {
    super(router, theme, page, options);
    const { memberSignatureBody, memberDeclaration, documentTemplate } = this;
    const links = linksFrom(this, shown);
    const partsOf = (
      rule: Parameters<typeof beforeExample>[0],
      reflection: DeclarationReflection | SignatureReflection,
    ) =>
      together(
        this.commentSummary(reflection),
        raw(`<div class="rule">${beforeExample(rule, links)}</div>`),
        this.commentTags(reflection),
        raw(`<div class="rule">${afterExample(rule, links)}</div>`),
        this.memberSources(reflection),
      );
    this.memberSignatureBody = (signature, settings) => {
      const rule = shown.rules.ruleOf(signature);
      return rule === undefined ? memberSignatureBody(signature, settings) : partsOf(rule, signature);
    };
    this.memberDeclaration = (declaration) => {
      const rule = shown.rules.ruleOf(declaration);
      return rule === undefined ? memberDeclaration(declaration) : partsOf(rule, declaration);
    };
    this.documentTemplate = (event) => {
      const made = MADE[event.model.name];
      if (made === undefined || shown.documents.get(event.model.name) !== event.model) return documentTemplate(event);
      return JSX.createElement("div", { class: "tsd-panel tsd-typography" }, raw(made(links)));
    };
  }
}

const MADE: Readonly<Record<string, (links: PageLinks) => string>> = { Glossary: glossaryPage, Sources: sourcesPage };

function linksFrom(context: DefaultThemeRenderContext, { knowledge, rules, documents }: Shown): PageLinks {
  return {
    knowledge,
    rule: (id) => {
      const reflection = rules.reflectionOf(id);
      return (reflection && context.urlTo(reflection)) ?? null;
    },
    document: (name) => context.urlTo(documents.get(name)!) ?? "",
    neighbours: rules.neighbours,
  };
}
