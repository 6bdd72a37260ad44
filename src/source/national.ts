import type { Source } from "./source.js";

/** National standards, codes and connection rules outside North America. */
export const national = {
  "VDE-AR-N 4105:2018": { title: "Generators connected to the low-voltage distribution network", publisher: "VDE", year: 2018, kind: "standard" },
  "UTE C15-712-1:undated": { title: "Installations photovoltaïques raccordées au réseau public de distribution", publisher: "UTE", year: null, kind: "standard" },
} as const satisfies Record<string, Source>;
