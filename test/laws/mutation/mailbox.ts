import type { Worker } from "node:worker_threads";

/** Takes what a worker says, in order, and waits for it no longer than told. */
export interface Mailbox {
  next<T>(patience: number): Promise<T>;
}

interface Waiting {
  readonly take: (message: unknown) => void;
  readonly fail: (error: Error) => void;
}

/** The messages of a worker; none is lost between two of them. */
export function mailboxOf(worker: Worker): Mailbox {
  const come: unknown[] = [];
  let broken: Error | null = null;
  let waiting: Waiting | null = null;
  worker.on("message", (message: unknown) => {
    if (waiting) waiting.take(message);
    else come.push(message);
  });
  worker.on("error", (error: Error) => {
    broken = error;
    waiting?.fail(error);
  });
  return {
    next: <T>(patience: number) =>
      new Promise<T>((resolve, reject) => {
        if (broken) reject(broken);
        if (come.length > 0) {
          resolve(come.shift() as T);
          return;
        }
        const settle = (): void => {
          clearTimeout(timer);
          waiting = null;
        };
        waiting = {
          take: (message) => {
            settle();
            resolve(message as T);
          },
          fail: (error) => {
            settle();
            reject(error);
          },
        };
        const timer = setTimeout(() => waiting?.fail(new Error("no answer in time")), patience);
      }),
  };
}
