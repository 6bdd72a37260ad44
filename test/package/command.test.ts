/** The command of the packed tarball, from the outside. */
import { existsSync, readdirSync, readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { VERSION } from "../../src/plant/index.js";
import { bakeryWith } from "../plant/demo.js";
import { BAKERY, freshFolder, plantFile, run, shell } from "./command.js";

describe("a newcomer", () => {
  it("is shown the commands, with examples, codes and the caution", () => {
    const { code, out } = run(["help"]);
    expect(code).toBe(0);
    for (const word of ["start", "size", "stream", "Examples", "Exit codes", "licensed", VERSION])
      expect(out).toContain(word);
    expect(run(["help", "size"]).out).toContain("--html FILE");
  });

  it("writes a starting description, edits it, is told every slip at once, and reads the report", () => {
    const folder = freshFolder();
    const file = join(folder, "roof.json");
    expect(run(["start", file]).code).toBe(0);
    expect(readdirSync(folder).sort()).toEqual(["plant.schema.json", "roof.json"]);
    expect(run(["start", file]).errors).toContain("is there already");

    const text = readFileSync(file, "utf8");
    writeFileSync(
      file,
      text
        .replace('"39.2 V"', '"39,2 V"')
        .replace('"mppVoltage"', '"mppVolt"')
        .replace('"250 V"', '"250"')
        .replace('"phases": 3', '"phases": 4'),
    );
    const wrong = run(["size", file, "--into", join(folder, "out")]);
    expect(wrong.code).toBe(65);
    for (const part of [
      "roof.json: ",
      "openCircuitVoltage: ",
      "decimal comma",
      "did you mean mppVoltage?",
      "inverters[0].phases",
      "nothing was written",
    ]) {
      expect(wrong.errors).toContain(part);
    }
    expect(existsSync(join(folder, "out"))).toBe(false);

    writeFileSync(file, text);
    const right = run(["size", file, "--into", join(folder, "out"), "--brief"]);
    expect([0, 2]).toContain(right.code);
    expect(readdirSync(join(folder, "out")).sort()).toEqual([
      "roof.checks.csv",
      "roof.html",
      "roof.json",
      "roof.material.csv",
      "roof.md",
      "roof.readings.csv",
      "roof.sheet.html",
      "roof.txt",
    ]);
    expect(right.out).toContain("Written:");
  });
});

describe("the exit code", () => {
  it("says open, not met, and nothing where it is asked to", () => {
    const thin = JSON.stringify(bakeryWith({ "routes[2].cable.size": "1.5 mm2" }));
    expect(run(["size", BAKERY, "--brief"]).code).toBe(2);
    expect(run(["size", "--brief"], thin).code).toBe(1);
    expect(run(["size", "--brief", "--verdict-code", "off"], thin).code).toBe(0);
  });

  it.each([
    [["sise"], 64, "did you mean size?"],
    [["size", "--htm", "x"], 64, "unknown option"],
    [["size", "a.json", "b.json", "--html", "x"], 64, "--into FOLDER"],
    [["size", "nowhere.json"], 74, "nowhere.json: cannot be read: there is no such file"],
    [["size", "."], 74, "this is a folder"],
    [["list", "everything"], 64, "say what to list"],
    [["explain", "module/open-circuit-voltage"], 65, "did you mean module/open-circuit-voltage-at?"],
  ])("%j ends with %i and says why", (args, code, why) => {
    const { code: found, errors } = run(args);
    expect([found, errors]).toEqual([code, expect.stringContaining(why)]);
  });
});

describe("output", () => {
  it("of one format goes to standard output alone", () => {
    const { out } = run(["size", BAKERY, "--json", "-"]);
    expect((JSON.parse(out) as { format: string }).format).toBe("pv-to-grid/record@1");
  });

  it("is refused clearly by a full device and by a closed pipe", () => {
    const full = shell("$PV list formulas > /dev/full");
    expect([full.code, full.errors]).toEqual([74, expect.stringContaining("no space is left")]);
    const closed = shell("set -o pipefail; $PV list formulas | true; echo ${PIPESTATUS[0]}");
    expect(closed.out.trim()).toMatch(/^(0|74)$/);
    expect(closed.errors).not.toContain("    at ");
  });

  it("writes no progress where nobody watches", () => {
    expect(run(["size", BAKERY, plantFile("prairie-clinic"), "--into", freshFolder(), "--quiet"]).errors).toBe("");
  });

  it("of a record is the report of its plant", () => {
    const folder = freshFolder();
    const record = join(folder, "record.json");
    run(["size", BAKERY, "--json", record, "--quiet"]);
    expect(run(["report", record, "--html", "-"]).out).toBe(run(["size", BAKERY, "--html", "-"]).out);
    writeFileSync(record, readFileSync(record, "utf8").replace("record@1", "record@0"));
    expect(run(["report", record]).errors).toContain("size its plant again");
  });
});

describe("a measurement sheet", () => {
  it("is written, filled in and verified", () => {
    const folder = freshFolder();
    const sheet = join(folder, "bakery.csv");
    run(["size", BAKERY, "--readings", sheet, "--quiet"]);
    const empty = run(["verify", sheet, "--of", BAKERY]);
    expect([empty.code, empty.out]).toEqual([2, expect.stringContaining("none outside")]);
    const [head = "", ...lines] = readFileSync(sheet, "utf8").split(/\r?\n/);
    const at = head.split(",").indexOf("value");
    const written = lines.map((line) => {
      const cells = line.split(/,(?=(?:[^"]*"[^"]*")*[^"]*$)/);
      const [place, reading] = cells;
      if (place === "Inverter/A" && reading === "insulationPositive") cells[at] = "0.2";
      return cells.join(",");
    });
    writeFileSync(sheet, [head, ...written].join("\n"));
    const judged = run(["verify", sheet, "--of", BAKERY, "--html", join(folder, "judged.html")]);
    expect([judged.code, judged.out]).toEqual([
      1,
      expect.stringContaining("▲ outside: Inverter/A, insulation resistance"),
    ]);
    expect(existsSync(join(folder, "judged.html"))).toBe(true);
    writeFileSync(sheet, "at,reading\nInverter/A,openCircuitVoltage\n");
    expect(run(["verify", sheet, "--of", BAKERY]).errors).toContain("the column value is missing");
  });
});

describe("a stream", () => {
  it("answers each line in order, and one bad line does not lose the others", () => {
    const good = JSON.stringify(bakeryWith({}));
    const latin = Buffer.from('{"name":"é"}\n', "latin1");
    const input = Buffer.concat([
      Buffer.from(`\ufeff${good}\n{"format":1}\nnot json\n`),
      latin,
      Buffer.from(`\n${good}`),
    ]);
    const { out, code } = run(["stream", "--outcome-only"], input);
    const lines = out
      .trim()
      .split("\n")
      .map((line) => JSON.parse(line) as { line: number; ok: boolean });
    expect(lines.map(({ line, ok }) => [line, ok])).toEqual([
      [1, true],
      [2, false],
      [3, false],
      [4, false],
      [6, true],
    ]);
    expect(code).toBe(65);
  });
});

it("finds its reference data where it is installed", () => {
  expect(run(["audit", "--json"]).out).toContain('"format": "pv-to-grid/audit@1"');
});

describe("what the library declares", () => {
  it("is listed, explained and given as schemas", () => {
    expect(run(["list", "formulas", "--subject", "string"]).out).toContain("string/string-voltage");
    expect(run(["explain", "string/string-voltage"]).out).toContain("U_string = n · U_mod");
    expect((JSON.parse(run(["schema", "plant"]).out) as { title: string }).title).toContain("plant description");
  });

  it("explains a check of a plant, inputs before results", () => {
    const { out } = run(["explain", "string/cold-voltage-within-inverter/Inverter/A", "--of", BAKERY]);
    expect(out.indexOf("38.9 V")).toBeLessThan(out.indexOf("557.53425 V"));
  });

  it("compares two plants", () => {
    const folder = freshFolder();
    const other = join(folder, "thin.json");
    writeFileSync(other, JSON.stringify(bakeryWith({ "routes[2].cable.size": "1.5 mm2" })));
    const { code, out } = run(["compare", BAKERY, other]);
    expect(code).toBe(0);
    expect(out).toContain("plant.routes[2].cable.size: choose -> 1.5 mm2");
    expect(out).toMatch(/conductor\/within-ampacity\/Inverter-Main board\/design current: met -> not-met/);
  });
});
