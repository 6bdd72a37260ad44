import type { PlantRecord, RecordedString } from "../record/record.js";

/** One string as a person stands before it: its key on the measurement sheet, and what the record says of it. */
export interface StringPlace {
  readonly at: string;
  readonly string: RecordedString;
}

type Strings = Pick<PlantRecord, "strings">;

/** Every single string of a record; equal strings on one tracker are numbered. */
export function stringPlaces({ strings }: Strings): readonly StringPlace[] {
  return strings.flatMap((string) => {
    const { inverter, tracker, roof, modules, count } = string;
    const shared = strings.some(
      (other) => other !== string && other.inverter === inverter && other.tracker === tracker,
    );
    const at = `${inverter}/${tracker}${shared ? `/${roof}/${modules}` : ""}`;
    return Array.from({ length: count }, (_, index) => ({ at: count === 1 ? at : `${at}/${index + 1}`, string }));
  });
}

/** The a.c. routes of a record with their key on the measurement sheet. */
export function circuitPlaces({
  routes,
}: Pick<PlantRecord, "routes">): readonly { at: string; route: PlantRecord["routes"][number] }[] {
  return routes.filter(({ kind }) => kind === "a.c.").map((route) => ({ at: `${route.from}-${route.to}`, route }));
}
