import type { Quantity } from "../../quantity/index.js";
import type { SettingTable } from "./rule-set-tables.js";

/** What a table prints for one setting, by the values of its last heading. */
export type Printed = Readonly<Record<string, Quantity>>;

/** What some tables print, by setting: each tabulated cell of the columns that the other headings choose. */
export function readTables(
  tables: readonly SettingTable[],
  heading: "value" | "time",
  headings: Readonly<Record<string, string>> = {},
): ReadonlyMap<string, { readonly printed: Printed; readonly table: SettingTable }> {
  const found = new Map<string, { printed: Printed; table: SettingTable }>();
  for (const table of tables) {
    const columns = table.declaration.columns ?? {};
    const fixed = Object.fromEntries(Object.entries(headings).filter(([name]) => name in columns));
    for (const setting of table.rows()) {
      const tabulated = table
        .cells()
        .filter(({ row, column }) => row === setting && fits(column, Object.keys(columns), fixed));
      const printed: Record<string, Quantity> = {};
      for (const { column } of tabulated) {
        const value = column[Object.keys(columns).indexOf(heading)]!;
        printed[value] = look(table, { ...fixed, setting, [heading]: value });
      }
      found.set(setting, { printed: Object.freeze(printed), table });
    }
  }
  return found;
}

function fits(column: readonly string[], names: readonly string[], fixed: Readonly<Record<string, string>>): boolean {
  return names.every((name, index) => fixed[name] === undefined || fixed[name] === column[index]);
}

/** Tables differ in the headings that their types allow; the table itself refuses what it does not hold. */
function look(table: SettingTable, headings: Readonly<Record<string, string>>): Quantity {
  return (table as unknown as (headings: Readonly<Record<string, string>>) => Quantity)(headings);
}
