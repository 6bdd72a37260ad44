/** Finds chromium, installs it by the system's packages where it is missing, and fails where neither works. */
import { execFileSync } from "node:child_process";
import { existsSync } from "node:fs";

const PLACES = ["/usr/bin/chromium", "/usr/bin/chromium-browser", "/usr/bin/google-chrome"];

/** Flags of a browser that asks nothing of anybody. */
export const FLAGS = [
  "--headless",
  "--no-sandbox",
  "--disable-gpu",
  "--disable-background-networking",
  "--disable-component-update",
  "--disable-sync",
];

/** Path of the browser: the environment's own (`CHROMIUM`), one of the usual places, or one installed now. */
export function chromium(): string {
  const own = process.env["CHROMIUM"];
  if (own !== undefined && own !== "") return own;
  const known = PLACES.find((path) => existsSync(path));
  if (known !== undefined) return known;
  for (const args of [["update"], ["install", "-y", "--no-install-recommends", "chromium", "fonts-dejavu-core"]]) {
    execFileSync("apt-get", args, { stdio: ["ignore", "ignore", "inherit"] });
  }
  const installed = PLACES.find((path) => existsSync(path));
  if (installed === undefined) throw new Error("chromium could not be installed; name one in CHROMIUM");
  return installed;
}
