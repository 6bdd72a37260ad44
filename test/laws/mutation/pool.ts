import { Worker } from "node:worker_threads";
import { mailboxOf } from "./mailbox.js";
import type { Answer, AtWork, Given, Question } from "./worker.js";

// With one judge, which takes three seconds at most where nothing is changed.
const PATIENCE = 30_000;
const START_PATIENCE = 900_000;

interface Hand {
  readonly worker: Worker;
  readonly ask: (question: Question) => Promise<Answer>;
}

/** Starts a worker on a bundle; it is ready once it has run every judge on the unchanged rules. */
async function hire(bundle: string, given: Given): Promise<Hand> {
  const worker = new Worker(bundle, { workerData: given });
  const mail = mailboxOf(worker);
  await mail.next(START_PATIENCE);
  const ask = async (question: Question): Promise<Answer> => {
    worker.postMessage(question);
    for (;;) {
      const message = await mail.next<Answer | AtWork>(PATIENCE);
      if (!("judge" in message)) return message;
    }
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
