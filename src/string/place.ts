/** A place within a place, as check ids have it. */
export function placeIn(at: string, name: string | undefined): string {
  return [at, name].filter((part) => part !== undefined && part !== "").join("/");
}
