import { parentPort, workerData } from "node:worker_threads";
import { catalogue } from "../../../src/catalogue/index.js";
import { type Case, type Guard, runCase, runGuard } from "../../../src/evidence/index.js";
import { condition, formula, table } from "../../../src/formula/index.js";
import { collected } from "./collector.js";
import { state } from "./live/switch.js";

/** What a worker is given. */
export interface Given {
  readonly cases: readonly Case[];
  readonly guards: readonly Guard[];
}

/** What a worker is asked: whether some judge notices a rule changed so. */
export interface Question {
  readonly number: number;
  readonly rule: string;
  readonly kind: "formula" | "condition" | "table";
  readonly declaration: object;
}

/** The judge that is at work on a question. */
export interface AtWork {
  readonly number: number;
  readonly judge: string;
}

/** The judge that noticed, or `null` where none did. */
export interface Answer {
  readonly number: number;
  readonly noticedBy: string | null;
}

interface Judge {
  readonly name: string;
  readonly run: () => unknown;
  /** Rules that it calls, and how long it takes in milliseconds. */
  readonly calls: ReadonlySet<string>;
  readonly time: number;
}

const starts: { readonly file: string; readonly at: number }[] = [];

/** Notes that the tests of a file follow. */
export function begin(file: string): void {
  starts.push({ file, at: collected.length });
}

function candidates(): { readonly name: string; readonly run: () => unknown }[] {
  const { cases, guards } = workerData as Given;
  const fileOf = (index: number): string => starts.findLast(({ at }) => at <= index)?.file ?? "";
  const due = (held: boolean): void => {
    if (!held) throw new Error("disagrees");
  };
  return [
    ...cases
      .filter(({ erratum }) => erratum === null)
      .map((one) => ({ name: `case ${one.id}`, run: () => due(runCase(one).agrees) })),
    ...guards.map((guard) => ({
      name: `guard ${guard.id}`,
      run: () => {
        const { cells, problems } = runGuard(guard);
        due(problems.length === 0 && cells.every(({ agrees }) => agrees));
      },
    })),
    ...collected.map(({ name, run }, index) => ({ name: `${fileOf(index)} › ${name}`, run })),
  ];
}

// A test that takes longer would be asked too often.
const SLOWEST = 3_000;

/** Runs every judge once on the rules as they stand; those that fail so are no judges. */
async function judges(): Promise<readonly Judge[]> {
  const list: Judge[] = [];
  for (const { name, run } of candidates()) {
    state.called = new Set();
    const start = performance.now();
    try {
      await run();
      const time = performance.now() - start;
      if (time < SLOWEST) list.push({ name, run, calls: state.called, time });
    } catch {
      // Fails already.
    }
    state.called = null;
  }
  return list.sort((a, b) => a.time - b.time);
}

const makers = { formula, condition, table } as unknown as Record<
  Question["kind"],
  (declaration: object) => { readonly real: (input: never) => unknown }
>;

/** Whether a judge fails with a rule replaced by another. */
async function fails(judge: Judge, id: string, kind: Question["kind"], declaration: object): Promise<boolean> {
  // The makers of the bundle give live rules; the one beneath is the twin.
  state.changed = { id, rule: makers[kind](declaration).real };
  try {
    await judge.run();
    return false;
  } catch {
    return true;
  } finally {
    state.changed = null;
  }
}

const pedants = new Map<string, boolean>();

// A judge that compares whole records notices that a declaration is another one, whatever it computes: that is no notice.
async function isPedant(judge: Judge, id: string, kind: Question["kind"]): Promise<boolean> {
  const key = `${id} ${judge.name}`;
  const known = pedants.get(key);
  if (known !== undefined) return known;
  const same = { ...catalogue().rules.get(id)!.declaration, note: "the same rule with another note" };
  const found = await fails(judge, id, kind, same);
  pedants.set(key, found);
  return found;
}

async function answer(list: readonly Judge[], { number, rule, kind, declaration }: Question): Promise<Answer> {
  for (const judge of list) {
    if (!judge.calls.has(rule)) continue;
    parentPort!.postMessage({ number, judge: judge.name } satisfies AtWork);
    if ((await fails(judge, rule, kind, declaration)) && !(await isPedant(judge, rule, kind))) {
      return { number, noticedBy: judge.name };
    }
  }
  return { number, noticedBy: null };
}

/** Answers questions until the thread ends. */
export function serve(): void {
  void judges().then((list) => {
    const port = parentPort!;
    port.on("message", (question: Question) => {
      void answer(list, question).then((found) => port.postMessage(found));
    });
    port.postMessage({ ready: list.length, rules: catalogue().rules.size });
  });
}
