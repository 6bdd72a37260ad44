import { table as real } from "../../../../src/formula/table.js";
import type { Table } from "../../../../src/formula/index.js";
import { live, state } from "./switch.js";

type AnyTable = Table<Readonly<Record<string, unknown>>, unknown>;

/** The kernel's maker, of tables that can be changed while a test runs. */
export const table = ((declaration: Parameters<typeof real>[0]) => {
  const original = real(declaration) as unknown as AnyTable;
  const current = (): AnyTable => {
    state.called?.add(declaration.id);
    return state.changed?.id === declaration.id ? (state.changed.rule as unknown as AnyTable) : original;
  };
  return live("table", original as never, { rows: () => current().rows(), cells: () => current().cells() });
}) as unknown as typeof real;
