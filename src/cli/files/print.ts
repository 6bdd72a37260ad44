import { EXIT, Failure } from "../exit.js";
import { reasonOf } from "./system-error.js";

/** Writes to standard output and waits until it is taken; a full device or a closed pipe is a failure, not a crash. */
export function print(text: string): Promise<void> {
  return new Promise((resolve, reject) => {
    const fail = (error: Error): void =>
      reject(new Failure(`standard output: ${reasonOf(error)}`, EXIT.failedToReadOrWrite));
    process.stdout.once("error", fail);
    process.stdout.write(text, (error) => {
      if (error) {
        fail(error);
        return;
      }
      process.stdout.off("error", fail);
      resolve();
    });
  });
}

/** Writes a message for a person; whether it arrives does not change the outcome. */
export function say(text: string): void {
  process.stderr.write(`${text}\n`);
}

/** Shows how far long work has come, and only where a person watches. */
export function progress(text: string): void {
  if (process.stderr.isTTY) process.stderr.write(`\r\u001b[K${text}`);
}

export function endProgress(): void {
  if (process.stderr.isTTY) process.stderr.write("\r\u001b[K");
}
