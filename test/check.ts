/**
 * The gate: every check of the project in one run, with the time of each and the count over all of them.
 *
 * `npm run check` takes samples where a suite is random; `npm run check:full` takes all and records its result.
 */
import { spawn } from "node:child_process";
import { createHash } from "node:crypto";
import { mkdirSync, readdirSync, readFileSync, statSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { fileURLToPath } from "node:url";

interface Step {
  readonly name: string;
  readonly command: string;
  /** Files that the command writes anew and that must come out as they are committed. */
  readonly unchanged?: readonly string[];
}

/** In order: what fails fast comes first. A page or data file that a command generates goes into `unchanged`. */
const STEPS: readonly Step[] = [
  { name: "format", command: "prettier --check --log-level warn ." },
  { name: "subpath exports", command: "npm run --silent exports", unchanged: ["package.json"] },
  {
    name: "schemas",
    command: "npm run --silent schemas",
    unchanged: ["shared/schemas/plant.schema.json", "shared/schemas/record.schema.json"],
  },
  { name: "types", command: "tsc" },
  { name: "lint", command: "npm run --silent lint" },
  { name: "tests", command: "npm run --silent test" },
  { name: "audit", command: "npm run --silent audit" },
  { name: "audit pages", command: "npm run --silent audit:pages", unchanged: ["docs/audit"] },
  { name: "rule mutation", command: "npm run --silent mutation:rules" },
  { name: "docs", command: "npm run --silent docs", unchanged: ["docs/guides/figures"] },
  { name: "browser", command: "npm run --silent test:browser" },
  { name: "build", command: "npm run --silent build" },
  { name: "package", command: "npm run --silent test:package" },
];

interface Outcome {
  readonly name: string;
  readonly passed: number;
  readonly failed: number;
  readonly seconds: number;
}

const root = fileURLToPath(new URL("..", import.meta.url));
const full = process.argv.includes("--full");
const FULL_RUNS = "5000";
const SEEDS = 2 ** 31;

// One seed for all suites of a run, so that one number repeats it.
const seed = (process.env["PV_SEED"] ??= String(Math.floor(Math.random() * SEEDS)));
if (full) process.env["PV_RUNS"] ??= FULL_RUNS;

const outcomes: Outcome[] = [];
for (const step of STEPS) outcomes.push(await take(step));
if (full) {
  mkdirSync(join(root, "docs/audit"), { recursive: true });
  writeFileSync(join(root, "docs/audit/full-run.md"), fullRunPage());
}
console.log(`\n${table(true)}\n`);

const failed = total("failed");
process.exitCode = failed === 0 ? 0 : 1;
console.log(`${total("passed")} passed, ${failed} failed`);

async function take({ name, command, unchanged = [] }: Step): Promise<Outcome> {
  console.log(`\n── ${name}: ${command}`);
  const before = contents(unchanged);
  const start = performance.now();
  const { code, output } = await run(command);
  const seconds = (performance.now() - start) / 1000;
  const drifted = differences(before, contents(unchanged));
  for (const path of drifted) console.log(`${path} is not as its generator writes it; it has been written anew`);
  const ok = code === 0 && drifted.length === 0;
  // A test run counts itself in its last line; any other step counts as one.
  const counted = /(\d+) passed, (\d+) failed\s*$/.exec(output);
  const counts = counted
    ? { passed: Number(counted[1]), failed: Number(counted[2]) }
    : { passed: ok ? 1 : 0, failed: 0 };
  return { name, ...counts, failed: ok ? counts.failed : Math.max(1, counts.failed), seconds };
}

function run(command: string): Promise<{ readonly code: number; readonly output: string }> {
  const child = spawn(command, { cwd: root, shell: true, stdio: ["ignore", "pipe", "inherit"] });
  let output = "";
  child.stdout.on("data", (chunk: Buffer) => {
    output += chunk.toString();
    process.stdout.write(chunk);
  });
  return new Promise((resolve) => {
    child.on("close", (code) => {
      resolve({ code: code ?? 1, output });
    });
  });
}

type Contents = ReadonlyMap<string, string>;

function contents(paths: readonly string[]): Contents {
  const found = new Map<string, string>();
  const read = (path: string): void => {
    const kind = statSync(join(root, path), { throwIfNoEntry: false });
    if (kind?.isDirectory()) for (const name of readdirSync(join(root, path))) read(join(path, name));
    else if (kind)
      found.set(
        path,
        createHash("sha256")
          .update(readFileSync(join(root, path)))
          .digest("hex"),
      );
  };
  for (const path of paths) read(path);
  return found;
}

function differences(before: Contents, after: Contents): string[] {
  const paths = new Set([...before.keys(), ...after.keys()]);
  return [...paths].filter((path) => before.get(path) !== after.get(path));
}

function total(count: "passed" | "failed" | "seconds"): number {
  return outcomes.reduce((sum, outcome) => sum + outcome[count], 0);
}

function table(times: boolean): string {
  const rows = [
    ...outcomes,
    { name: "**all**", passed: total("passed"), failed: total("failed"), seconds: total("seconds") },
  ];
  const lines = rows.map(({ name, passed, failed, seconds }) =>
    [name, passed, failed, ...(times ? [`${seconds.toFixed(1)} s`] : [])].join(" | "),
  );
  const heads = ["step", "passed", "failed", ...(times ? ["time"] : [])];
  return [heads.join(" | "), heads.map((_, at) => (at === 0 ? "---" : "--:")).join(" | "), ...lines]
    .map((line) => `| ${line} |`)
    .join("\n");
}

function fullRunPage(): string {
  const day = new Date().toISOString().slice(0, 10);
  return `# The last full run

Written by \`npm run check:full\` on ${day} with Node.js ${process.versions.node}; ${process.env["PV_RUNS"] ?? ""} random inputs for each
property, seed ${seed}.

${table(false)}
`;
}
