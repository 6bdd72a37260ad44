/** The one seed of a run, printed at its end; `PV_SEED` repeats a run. */
export const seed = Number(process.env["PV_SEED"] ?? 1);

const SAMPLE = 100;

/** How many random inputs each suite draws: a sample in the gate, `PV_RUNS` of them in the full check. */
export const runs = Number(process.env["PV_RUNS"] ?? SAMPLE);
