import { readFileSync } from "node:fs";
import ts from "typescript";
import { describe, expect, it } from "vitest";
import { packageFile, renewed, subjects } from "../.config/package-map.js";
import { importsOf, sourceFiles, type SourceFile } from "./harness/sources.js";

/** The floors of the house, lowest first: a folder imports only from floors below its own. */
const FLOORS: readonly (readonly string[])[] = [
  ["source", "quantity"],
  ["formula"],
  ["module", "climate", "device", "conductor"],
  ["string", "protection", "earthing", "surge", "grid", "commissioning"],
  ["stringing"],
  ["plant"],
  ["report", "catalogue"],
  ["evidence"],
  ["cli"],
];

/** Neighbours on one floor that may be imported all the same. */
const NEIGHBOURS = ["quantity → source"];

/** What the library's front door leaves out: they are for those who ask for them by name. */
const NOT_AT_THE_DOOR = ["catalogue", "evidence", "cli"];

const files = sourceFiles();
const floorOf = (folder: string): number => FLOORS.findIndex((floor) => floor.includes(folder));
const folderOf = (path: string): string => path.split("/")[0]!;

function mayImport(from: string, to: string): boolean {
  if (from === to || NEIGHBOURS.includes(`${from} → ${to}`)) return true;
  if (from === "") return !NOT_AT_THE_DOOR.includes(to);
  return floorOf(to) < floorOf(from);
}

describe("the house", () => {
  it("has a floor for every folder", () => {
    const folders = new Set(files.map(({ folder }) => folder).filter((folder) => folder !== ""));
    expect([...folders].filter((folder) => floorOf(folder) < 0)).toEqual([]);
  });

  it("imports only downwards", () => {
    const upwards = files.flatMap((file) =>
      importsOf(file)
        .filter(({ to }) => to.startsWith("..") || !mayImport(file.folder, folderOf(to)))
        .map(({ to }) => `${file.path} imports ${to}`),
    );
    expect(upwards).toEqual([]);
  });

  // Type-only imports leave nothing at run time, so two files of one folder may name each other's types.
  it("has no circle of imports", () => {
    expect(circles(files)).toEqual([]);
  });

  it("offers each folder as a subpath of the same name", () => {
    const text = readFileSync(packageFile, "utf8");
    expect(text, "run `npm run exports`").toBe(renewed(text));
    const { exports } = JSON.parse(text) as { exports: Record<string, unknown> };
    for (const name of subjects()) expect(exports).toHaveProperty([`./${name}`]);
  });

  it("keeps each file to one idea: 260 lines at most, its tables apart", () => {
    const long = files.filter((file) => linesOfCode(file) > MOST_LINES).map(({ path }) => path);
    expect(long).toEqual([]);
  });
});

const MOST_LINES = 260;

/** Lines of a file without those inside its templates (the cells of tables) and, in `source/`, its bibliography. */
function linesOfCode({ text, tree, folder }: SourceFile): number {
  let data = 0;
  const lineAt = (at: number): number => tree.getLineAndCharacterOfPosition(at).line;
  const visit = (node: ts.Node): void => {
    const isData =
      ts.isNoSubstitutionTemplateLiteral(node) || (folder === "source" && ts.isObjectLiteralExpression(node));
    if (isData) data += lineAt(node.getEnd()) - lineAt(node.getStart());
    else ts.forEachChild(node, visit);
  };
  visit(tree);
  return text.split("\n").length - data;
}

/** Circles among the imports that remain at run time, each as the path that leads back to its start. */
function circles(all: readonly SourceFile[]): string[] {
  const edges = new Map(all.map((file) => [file.path, importsOf(file).filter(({ typeOnly }) => !typeOnly)]));
  const done = new Set<string>();
  const found: string[] = [];
  const walk = (path: string, trail: readonly string[]): void => {
    const start = trail.indexOf(path);
    if (start >= 0) found.push([...trail.slice(start), path].join(" → "));
    if (start >= 0 || done.has(path)) return;
    for (const { to } of edges.get(path) ?? []) walk(to, [...trail, path]);
    done.add(path);
  };
  for (const path of edges.keys()) walk(path, []);
  return found;
}
