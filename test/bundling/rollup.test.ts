import { type InputPluginOption, rollup, type RollupCache } from "rollup";
import { expect, it } from "vitest";
import { APP, apps, DEPENDENCIES, faultsOf } from "./apps.js";

const plugin: InputPluginOption = {
  name: "apps",
  resolveId: (id) => (id.startsWith(APP) ? id : null),
  load: (id) => (id.startsWith(APP) ? apps.get(id.slice(APP.length)) : null),
};

// Several entries in one build would share chunks whole, so each app is a build of its own; the cache spares the parsing.
const SLOW = 300_000;

// All of them in the full gate; else a few of each subject, since esbuild bundles every one.
const ONE_OF = process.env["PV_RUNS"] === undefined ? 16 : 1;

it(
  "bundles each rule without any other (rollup)",
  async () => {
    const faults: string[] = [];
    let cache: RollupCache | undefined;
    for (const id of [...apps.keys()].filter((_, at) => at % ONE_OF === 0)) {
      const options = { input: APP + id, external: DEPENDENCIES, plugins: [plugin] };
      const bundle = await rollup(cache ? { ...options, cache } : options);
      cache ??= bundle.cache!;
      const { output } = await bundle.generate({ format: "esm" });
      faults.push(...faultsOf(id, output[0].code));
    }
    expect(faults).toEqual([]);
  },
  SLOW,
);
