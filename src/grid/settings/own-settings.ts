import type { Check } from "../../formula/index.js";
import type { Quantity } from "../../quantity/index.js";
import type { InterfaceSettings } from "./interface-settings.js";
import type { SettingRow } from "./setting-row.js";
import {
  frequencyStayConnectedChecks,
  type SynchronousArea,
  synchronousAreaOf,
  timeOf,
  voltageRideThroughChecks,
} from "./stay-connected.js";

/**
 * The settings of the rules themselves against what asks a plant to stay connected: the frequency bands of the European
 * network code, and the ride-through tests of IEEE 1547.1.
 *
 * @param area - synchronous area, where the rules do not say it
 */
export function stayConnectedChecks(settings: InterfaceSettings, at: string, area?: SynchronousArea): readonly Check[] {
  const { rows, rules } = settings;
  const where = area ?? synchronousAreaOf(rules.key);
  const category = /^IEEE 1547:2018 category [AB] (II|III)$/.exec(rules.key)?.[1] as "II" | "III" | undefined;
  return Object.freeze(
    rows
      .filter(({ kind, setting }) => kind === "protection" && setting !== null)
      .flatMap((row) => {
        const side = row.key.startsWith("under") ? "under" : "over";
        const time = timeOf(row.times.delay ?? row.times.clearing, `grid.settings.${row.key}.time`);
        const place = { side, time, at: `${row.key}/${at}` } as const;
        if (row.quantity === "frequency" && where !== null)
          return frequencyStayConnectedChecks(where, { ...place, frequency: hertzOf(row) });
        if (row.quantity === "voltage" && category)
          return voltageRideThroughChecks(category, {
            ...place,
            voltageShare: row.setting!.printed as Quantity<"ratio">,
          });
        return [];
      }),
  );
}

function hertzOf(row: SettingRow): Quantity<"frequency"> {
  return row.setting!.hertz!;
}
