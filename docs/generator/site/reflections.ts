import {
  Comment,
  CommentTag,
  DeclarationReflection,
  type ProjectReflection,
  ReflectionFlag,
  ReflectionKind,
  UnknownType,
} from "typedoc";
import type { Rule } from "../../../src/catalogue/index.js";
import type { Knowledge } from "./knowledge.js";
import { keysOf } from "./knowledge.js";

/** Which reflection shows which rule. */
export interface ShownRules {
  readonly ruleOf: (reflection: object) => Rule | undefined;
  readonly reflectionOf: (id: string) => DeclarationReflection | undefined;
  /** Rules declared in the same folder. */
  readonly neighbours: (id: string) => readonly string[];
}

const PACKAGE = "pv-to-grid";

/** Names modules as they are imported, and every document by its title. */
export function nameModules(project: ProjectReflection): void {
  for (const module of project.getReflectionsByKind(ReflectionKind.Module)) {
    const subject = module.name.replace(/^(src\/?)/, "").replace(/\/?index$/, "");
    module.name = subject === "" || subject === PACKAGE ? PACKAGE : `${PACKAGE}/${subject.replace(`${PACKAGE}/`, "")}`;
    module.comment?.blockTags.push(new CommentTag("@category", [{ kind: "text", text: "Subjects" }]));
  }
  for (const document of project.getReflectionsByKind(ReflectionKind.Document)) {
    if (!document.isDocument()) continue;
    const title = /^# (.+)$/m.exec(document.content[0]?.text ?? "")?.[1];
    if (title !== undefined) document.name = title;
    document.frontmatter["category"] = categoryOf(project.files.getReflectionPath(document) ?? "");
  }
}

/** Where a document stands in the navigation. */
function categoryOf(path: string): string {
  if (path.includes("/guides/")) return "Guides";
  if (path.includes("/audit/subjects/")) return "Evidence by subject";
  return /\/audit\/|evidence\.md$/.test(path) ? "Evidence" : "Reference";
}

/** Finds the reflection of every rule, takes away what only its maker's types say, and sorts all by folder. */
export function prepareRules(project: ProjectReflection, { catalogue, exported, terms }: Knowledge): ShownRules {
  const rules = new Map<object, Rule>();
  const reflections = new Map<string, DeclarationReflection>();
  const folders = new Map<string, string[]>();
  for (const module of project.getReflectionsByKind(ReflectionKind.Module)) {
    if (!module.isDeclaration()) continue;
    const subject = module.name.replace(`${PACKAGE}/`, "");
    for (const child of [...(module.children ?? [])]) {
      const folder = folderOf(child);
      if (folder !== null) categorise(child, folder);
      const rule = exported(subject, child.name);
      if (rule === undefined || !(child instanceof DeclarationReflection)) continue;
      rules.set(child, rule);
      for (const signature of child.signatures ?? []) rules.set(signature, rule);
      reflections.set(rule.id, child);
      const place = folderOf(child) ?? subject;
      folders.set(place, [...(folders.get(place) ?? []), rule.id]);
      simplify(project, child, rule);
    }
  }
  documentKeys(project, terms);
  const hidden = [...catalogue.rules.keys()].filter((id) => !reflections.has(id));
  if (hidden.length > 0) throw new Error(`rules without a page: ${hidden.join(", ")}`);
  const places = new Map([...folders.values()].flatMap((ids) => ids.map((id) => [id, ids] as const)));
  return {
    ruleOf: (reflection) => rules.get(reflection),
    reflectionOf: (id) => reflections.get(id),
    neighbours: (id) => places.get(id) ?? [],
  };
}

function folderOf(
  reflection: DeclarationReflection | { readonly sources?: readonly { readonly fileName: string }[] },
): string | null {
  const path = reflection.sources?.[0]?.fileName;
  return /\bsrc\/([a-z-]+(?:\/[a-z0-9-]+)*)\/[^/]+$/.exec(path ?? "")?.[1] ?? null;
}

function categorise(reflection: DeclarationReflection, folder: string): void {
  const name = folder.split("/").slice(1).join(", ").replaceAll("-", " ");
  if (name === "") return;
  const text = (name.charAt(0).toUpperCase() + name.slice(1)).replace(/\b(?:iec|nec|epw|nfpa|bs|pv)\b/gi, (short) =>
    short.toUpperCase(),
  );
  const comments = reflection.signatures?.map(({ comment }) => comment) ?? [reflection.comment];
  for (const comment of comments) comment?.blockTags.push(new CommentTag("@category", [{ kind: "text", text }]));
}

// The page is made from the declaration; the types of the makers would only repeat it, less well.
function simplify(project: ProjectReflection, reflection: DeclarationReflection, rule: Rule): void {
  for (const child of [...(reflection.children ?? [])]) project.removeReflection(child);
  if (rule.kind === "series") {
    reflection.type = new UnknownType("Series");
    reflection.flags.setFlag(ReflectionFlag.Const, false);
    reflection.comment?.removeModifier("@function");
  }
  for (const signature of reflection.signatures ?? []) {
    const keys = keysOf(rule);
    for (const parameter of signature.parameters ?? []) {
      const { type } = parameter;
      parameter.type = new UnknownType(
        rule.kind === "condition" ? "{ value, limit } | { missing }" : `{ ${keys.join(", ")} }`,
      );
      if (type) project.removeTypeReflections(type);
    }
    for (const parameter of [...(signature.typeParameters ?? [])]) project.removeReflection(parameter);
  }
}

// A key means the same wherever it stands, and its words are in the glossary.
function documentKeys(project: ProjectReflection, terms: Knowledge["terms"]): void {
  for (const property of project.getReflectionsByKind(ReflectionKind.Property)) {
    const term = Object.hasOwn(terms, property.name) ? terms[property.name] : undefined;
    if (property.comment || !term) continue;
    const { iec, symbol } = term;
    const text = `${iec.charAt(0).toUpperCase()}${iec.slice(1)}${symbol === null ? "" : ` (${symbol})`}.`;
    property.comment = new Comment([{ kind: "text", text }]);
  }
}
