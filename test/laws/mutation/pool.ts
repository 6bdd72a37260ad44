import { Worker } from "node:worker_threads";
import type { Answer, Given, Question } from "./worker.js";

const PATIENCE = 10_000;
const START_PATIENCE = 900_000;

interface Hand {
  readonly worker: Worker;
  readonly ask: (question: Question) => Promise<Answer>;
}

/** Starts a worker on a bundle; it is ready once it has run every judge on the unchanged rules. */
async function hire(bundle: string, given: Given): Promise<Hand> {
  const worker = new Worker(bundle, { workerData: given });
  const next = <T>(patience: number): Promise<T> =>
    new Promise((resolve, reject) => {
      const settle = (): void => {
        clearTimeout(timer);
        worker.off("message", take);
        worker.off("error", fail);
      };
      const take = (message: T): void => {
        settle();
        resolve(message);
      };
      const fail = (error: Error): void => {
        settle();
        reject(error);
      };
      const timer = setTimeout(() => fail(new Error("no answer in time")), patience);
      worker.on("message", take);
      worker.on("error", fail);
    });
  await next(START_PATIENCE);
  const ask = async (question: Question): Promise<Answer> => {
    const answer = next<Answer>(PATIENCE);
    worker.postMessage(question);
    return answer;
  };
  return { worker, ask };
}

/** Asks every question, by several workers; a change that makes a judge run on without end is noticed by that. */
export async function askAll(
  bundle: string,
  given: Given,
  questions: readonly Question[],
  hands: number,
): Promise<readonly Answer[]> {
  const answers: Answer[] = [];
  let at = 0;
  const work = async (): Promise<void> => {
    let hand = await hire(bundle, given);
    for (let question = questions[at++]; question; question = questions[at++]) {
      try {
        answers.push(await hand.ask(question));
      } catch (error) {
        await hand.worker.terminate();
        answers.push({ number: question.number, noticedBy: error instanceof Error ? error.message : String(error) });
        hand = await hire(bundle, given);
      }
    }
    await hand.worker.terminate();
  };
  await Promise.all(Array.from({ length: hands }, work));
  return answers.sort((a, b) => a.number - b.number);
}
