import { EXIT, type ExitCode, Failure } from "./exit.js";

/** What a command is: how it is called, what it says of itself, what it does. */
export interface Command {
  readonly name: string;
  /** Arguments and options as the help shows them. */
  readonly use: string;
  readonly about: string;
  readonly details: string;
  readonly run: (args: readonly string[]) => Promise<ExitCode> | ExitCode;
}

/** Runs the platform's own reader of arguments; what it refuses becomes a failure with the way to the help. */
export function readArguments<T>(name: string, read: () => T): T {
  try {
    return read();
  } catch (error) {
    const message = error instanceof Error ? error.message : String(error);
    const plain = message.replace(/\. To specify a positional argument.*$/s, "");
    throw badUse(name, plain.slice(0, 1).toLowerCase() + plain.slice(1));
  }
}

export function badUse(name: string, message: string): Failure {
  return new Failure(`${name}: ${message}\nTry: pv-to-grid help ${name}`, EXIT.badUse);
}
