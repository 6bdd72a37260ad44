import { existsSync, readdirSync, readFileSync } from "node:fs";
import { dirname, join, relative, resolve } from "node:path";

/** Links of a built site that lead nowhere: to a file that is not there, or to a place that a page does not have. */
export function brokenLinks(folder: string): readonly string[] {
  const pages = readdirSync(folder, { recursive: true, encoding: "utf8" }).filter((path) => path.endsWith(".html"));
  const texts = new Map(pages.map((path) => [join(folder, path), readFileSync(join(folder, path), "utf8")]));
  const places = new Map<string, ReadonlySet<string>>();
  const placesOf = (page: string): ReadonlySet<string> => {
    const known = places.get(page);
    if (known) return known;
    const found = new Set([...(texts.get(page) ?? "").matchAll(/\sid="([^"]*)"/g)].map((match) => match[1]!));
    places.set(page, found);
    return found;
  };
  const broken = new Set<string>();
  for (const [page, text] of texts) {
    for (const [, address] of text.matchAll(/<a\s[^>]*?href="([^"]*)"/g)) {
      if (/^(?:https?|mailto):/.test(address!)) continue;
      const [path, place = ""] = address!.replace(/\?[^#]*/, "").split("#");
      const target = path === "" ? page : resolve(dirname(page), decodeURIComponent(path!));
      const from = `${relative(folder, page)} links to ${address}`;
      if (!texts.has(target) && !existsSync(target)) broken.add(from);
      else if (place !== "" && texts.has(target) && !placesOf(target).has(decodeURIComponent(place))) broken.add(from);
    }
  }
  return [...broken].sort();
}
