import { describe, expect, it } from "vitest";
import { fc, test } from "@fast-check/vitest";
import { designTemperatures, readEpw, readHourlyCsv, type TextChunks } from "../../src/climate/index.js";
import { isInputError } from "../../src/quantity/index.js";
import { header, leapYear, row, year } from "./epw-file.js";

const mild = (hour: number): string => (hour === 300 ? "-14.2" : hour === 5000 ? "34.1" : "8.0");
const whole = [...header, ...year(mild)].join("\r\n");

async function refusal(reading: Promise<unknown>): Promise<string> {
  try {
    await reading;
  } catch (error) {
    if (isInputError(error)) return error.problems.map(({ path, message }) => `${path}: ${message}`).join("; ");
    throw error;
  }
  return "none";
}

const epw = (rows: readonly string[]): Promise<string> => refusal(readEpw([...header, ...rows].join("\n")));

describe("an hourly weather file", () => {
  it("yields the extremes of its hours, with their lines, and its place", async () => {
    const { hours, lowest, highest, location } = await readEpw(whole);
    expect([hours, lowest.temperature.text, lowest.line, highest.temperature.text, highest.line]).toEqual([
      8760,
      "-14.2",
      309,
      "34.1",
      5009,
    ]);
    expect(location).toMatchObject({ name: "Boathouse", station: "000000", latitude: "47.00", elevation: "410.0" });
  });

  it("yields the design conditions of its header, ready for a practice", async () => {
    const { designConditions } = await readEpw(whole);
    expect(designConditions!.statedIn).toBe("Climate Design Data 2009 ASHRAE Handbook");
    const { coldest, hottest } = designTemperatures("return period", { ...designConditions!, returnPeriod: "50 a" });
    // The header's own 50-year extremes are −21.7 and 36.8 °C.
    expect(coldest).toMatchObject({ unit: "°C" });
    expect("number" in coldest && coldest.number.toFixed(1)).toBe("-21.7");
    expect("number" in hottest && hottest.number.toFixed(1)).toBe("36.8");
  });

  it("has no design conditions where its header has none", async () => {
    const bare = [header[0]!, "DESIGN CONDITIONS,0", ...header.slice(2), ...year(mild)].join("\n");
    expect((await readEpw(bare)).designConditions).toBeNull();
  });

  it("may be of a leap year, or of two years", async () => {
    expect((await readEpw([...header, ...year(mild, leapYear)].join("\n"))).hours).toBe(8784);
    expect((await readEpw([...header, ...year(mild), ...year(mild, leapYear)].join("\n"))).hours).toBe(17544);
  });

  it("is read in well under a second", async () => {
    const start = performance.now();
    await readEpw(whole);
    expect(performance.now() - start).toBeLessThan(500);
  });

  test.prop([fc.array(fc.integer({ min: 0, max: whole.length }), { maxLength: 30 }), fc.boolean()], { numRuns: 5 })(
    "reads the same however it is cut into pieces",
    async (cuts, asynchronous) => {
      const ends = [...cuts.sort((a, b) => a - b), whole.length];
      const pieces = ends.map((end, index) => whole.slice(ends[index - 1] ?? 0, end));
      const chunks: TextChunks = asynchronous ? streamOf(pieces) : pieces;
      expect(await readEpw(chunks)).toMatchObject({ hours: 8760, lowest: { line: 309 }, highest: { line: 5009 } });
    },
  );
});

async function* streamOf(pieces: readonly string[]): AsyncGenerator<string> {
  for (const piece of pieces) yield Promise.resolve(piece);
}

describe("a weather file that is refused", () => {
  const rows = year(mild);
  const changed = (at: number, text: string): readonly string[] =>
    rows.map((line, index) => (index === at ? text : line));

  it("with a row cut short, by its line", async () => {
    expect(await epw(changed(99, "2001,1,5,4,0,A7,8.0"))).toBe("line 108: the row is cut short");
  });

  it("with a temperature that is no number, missing, or marked as missing", async () => {
    const reason = "line 108: the dry-bulb temperature is missing or no such number";
    for (const text of ["", "n/a", "8.0.1", "99.9", "1e3", "Infinity", "0x10"]) {
      expect(await epw(changed(99, row(1, 5, 4, text)))).toBe(reason);
    }
  });

  it("with an hour out of order or left out", async () => {
    const reason = "the hour does not follow that of the row before";
    expect(await epw(rows.filter((_, index) => index !== 99))).toBe(`line 108: ${reason}`);
    expect(await epw(changed(99, row(1, 5, 5, "8.0")))).toBe(`line 108: ${reason}`);
    expect(await epw(rows.slice(1))).toBe(`line 9: ${reason}`);
    expect(await epw(changed(99, row(1, 5, 4.5, "8.0")))).toBe(`line 108: ${reason}`);
  });

  it("that ends inside a year or inside its header", async () => {
    expect(await epw(rows.slice(0, -1))).toBe("end of file: the file ends inside a year, after 8759 hours");
    expect(await epw([])).toBe("end of file: the file ends inside a year, after 0 hours");
    expect(await refusal(readEpw(header.slice(0, 5).join("\n")))).toBe("end of file: the file ends inside its header");
    expect(await refusal(readEpw(""))).toBe("end of file: the file ends inside its header");
  });

  it("with another header", async () => {
    expect(await refusal(readEpw(whole.replace("LOCATION", "PLACE")))).toBe(
      "line 1: the header must have LOCATION here",
    );
    expect(await refusal(readEpw(whole.replace(",9.00,1.0,410.0", "")))).toBe("line 1: the line is cut short");
    expect(await refusal(readEpw(whole.replace("-12.6,32.9", "32.9,-12.6")))).toContain(
      "line 2: the mean annual minimum is not below",
    );
    expect(await refusal(readEpw(whole.replace("-12.6,32.9", ",32.9")))).toContain(
      "line 2: the extremes of the design conditions",
    );
  });
});

describe("a plain hourly file", () => {
  const layout = { column: "t_air", unit: "°C", separator: ";" } as const;
  const lines = ["hour;t_air;wind", ...Array.from({ length: 8760 }, (_, hour) => `${hour};${mild(hour)};2`)];
  const csv = (text: string, change = {}) => readHourlyCsv(text, { ...layout, ...change });

  it("yields the extremes of the column that is named", async () => {
    const { hours, lowest, highest } = await csv(lines.join("\n"));
    expect([hours, lowest.temperature.text, lowest.line, highest.temperature.text]).toEqual([
      8760,
      "-14.2",
      302,
      "34.1",
    ]);
  });

  it("may have quotes, a byte-order mark, Fahrenheit and other separators", async () => {
    const text = `\ufeff${lines
      .map((line) =>
        line
          .split(";")
          .map((field) => `"${field}"`)
          .join("\t"),
      )
      .join("\r\n")}\r\n`;
    const { lowest } = await csv(text, { unit: "°F", separator: "\t" });
    expect(lowest.temperature.unit).toBe("°C");
    expect(lowest.temperature.number).toBeCloseTo((-14.2 - 32) / 1.8, 9);
  });

  it("is refused by the line that is wrong", async () => {
    const changed = (text: string): string => lines.map((line, index) => (index === 50 ? text : line)).join("\n");
    expect(await refusal(csv(changed("49;8.0")))).toBe("line 51: the row does not have the fields of the first line");
    expect(await refusal(csv(changed("49;8,0;2")))).toBe(
      "line 51: the dry-bulb temperature is missing or no such number",
    );
    expect(await refusal(csv(lines.slice(0, 100).join("\n")))).toBe(
      "end of file: the file ends inside a year, after 99 hours",
    );
    expect(await refusal(csv(lines.join("\n"), { column: "t" }))).toBe("column: the first line has no such name");
    expect(await refusal(csv(""))).toContain("after 0 hours");
  });
});
