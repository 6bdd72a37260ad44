import { isMissing, type Known, type Missing, missing } from "../../formula/index.js";
import {
  type DimensionOf,
  type Expectation,
  InputError,
  type Problem,
  type Quantity,
  readInput,
  type Unit,
} from "../../quantity/index.js";
import type { ModuleDatasheet } from "./module-datasheet.js";

type Relative = Quantity<"relativeTemperatureCoefficient">;

/** Absolute coefficients, to where a slip of unit is certain. */
const ABSOLUTE = {
  "V/K": { unit: "V/K", above: -5, below: 1 },
  "A/K": { unit: "A/K", above: -0.5, below: 0.5 },
  "W/K": { unit: "W/K", above: -20, below: 0 },
} as const;

type Key = Exclude<keyof ModuleDatasheet, "statedIn">;

/** Reads the values of one datasheet and gathers what is wrong with them. @internal */
export class DatasheetReader {
  readonly #problems: Problem[] = [];

  constructor(
    private readonly datasheet: ModuleDatasheet,
    private readonly path: string,
  ) {}

  #read<U extends Unit>(
    key: Key,
    expectation: Expectation<U>,
    input: unknown = this.datasheet[key],
  ): Quantity<DimensionOf<U>> | Problem {
    const { statedIn } = this.datasheet;
    const origin = statedIn === undefined ? { kind: "given" as const } : { kind: "given" as const, statedIn };
    const reading = readInput(input, expectation, `${this.path}.${key}`, Object.freeze(origin));
    return reading.ok ? reading.quantity : reading.problem;
  }

  #keep<T>(read: T | Problem): T {
    if (typeof read === "object" && read !== null && "code" in read) {
      this.#problems.push(read);
      // The caller goes on for the sake of the other problems; `finish` throws before the value is used.
      return undefined as T;
    }
    return read;
  }

  fact<U extends Unit>(key: Key, expectation: Expectation<U>): Quantity<DimensionOf<U>> | undefined {
    return this.#keep<Quantity<DimensionOf<U>> | undefined>(this.#read(key, expectation));
  }

  finding<U extends Unit>(key: Key, expectation: Expectation<U>): Known<Quantity<DimensionOf<U>>> {
    return this.#absent(key) ?? this.#keep<Quantity<DimensionOf<U>>>(this.#read(key, expectation));
  }

  coefficient(
    key: Key,
    expectation: Expectation<"1/K">,
    absolute: "V/K" | "A/K" | "W/K",
    relative: (of: Quantity) => Relative | undefined,
  ): Known<Relative> {
    const absent = key === "openCircuitVoltageCoefficient" ? undefined : this.#absent(key);
    if (absent) return absent;
    const read = this.#read(key, expectation);
    if (!("code" in read) || read.code !== "other-dimension") return this.#keep<Relative>(read);
    const stated = this.#read(key, ABSOLUTE[absolute]);
    if ("code" in stated) return this.#keep<Relative>(stated.code === "other-dimension" ? read : stated);
    const converted = relative(stated);
    return converted === undefined
      ? (undefined as never)
      : this.#keep<Relative>(this.#read(key, expectation, converted));
  }

  #absent(key: Key): Missing | undefined {
    const input = this.datasheet[key];
    if (input === undefined) return missing(`${this.path}.${key}`);
    return isMissing(input) ? input : undefined;
  }

  finish(): void {
    if (this.#problems.length > 0) throw new InputError(this.path, this.#problems);
  }
}
