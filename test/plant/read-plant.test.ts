import { describe, expect, it } from "vitest";
import { InputError, readPlant, sizePlant } from "../../src/index.js";
import { bakeryWith, villageBakery } from "./demo.js";

function problemsOf(input: unknown): [code: string, path: string, message: string][] {
  const read = readPlant(input);
  return read.ok ? [] : read.problems.map(({ code, path, message }) => [code, path, message]);
}

describe("a good description", () => {
  it("is read from an object and from JSON text, with a byte order mark too", () => {
    expect(readPlant(villageBakery()).ok).toBe(true);
    expect(readPlant(JSON.stringify(villageBakery())).ok).toBe(true);
    expect(readPlant(`\uFEFF${JSON.stringify(villageBakery())}`).ok).toBe(true);
  });

  it("may name a practice in place of its rules", () => {
    expect(readPlant(bakeryWith({ rules: undefined, practice: "IEC" })).ok).toBe(true);
  });

  it("may give an implausible value when its unit stands beside it", () => {
    expect(readPlant(bakeryWith({ "inverters[0].startVoltage": "1 V" })).ok).toBe(true);
    expect(problemsOf(bakeryWith({ "inverters[0].startVoltage": 39200 }))[0]![2]).toContain("did you mean mV?");
  });
});

describe("each kind of mistake names its path", () => {
  it.each([
    [{ name: undefined }, "missing", "name"],
    [{ format: "plant@9" }, "not-in-list", "format"],
    [{ "site.coldst": "-3 °C" }, "unknown-key", "site.coldst"],
    [{ "site.coldest": "-3,5 °C" }, "decimal-comma", "site.coldest"],
    [{ "site.coldest": "" }, "empty", "site.coldest"],
    [{ "site.coldest": null }, "wrong-type", "site.coldest"],
    [{ "site.coldest": "-3 K" }, "other-dimension", "site.coldest"],
    [{ "site.coldest": "60 °C" }, "out-of-domain", "site.coldest"],
    [{ "roofs[0].modules": 0 }, "out-of-domain", "roofs[0].modules"],
    [{ "roofs[0].modules": "26" }, "wrong-type", "roofs[0].modules"],
    [{ "roofs[0].mounting": "open rak" }, "not-in-list", "roofs[0].mounting"],
    [{ "inverters[0].phases": 4 }, "not-in-list", "inverters[0].phases"],
    [{ "inverters[0].apparentPower": "-15 kVA" }, "out-of-domain", "inverters[0].apparentPower"],
    [{ "inverters[0].apparentPower": "15 kW" }, "other-dimension", "inverters[0].apparentPower"],
    [{ "inverters[0].apparentPower": "Infinity" }, "not-finite", "inverters[0].apparentPower"],
    [{ battery: {} }, "refused", "battery"],
    [{ practice: "IEC" }, "contradiction", "practice"],
    [{ rules: undefined }, "missing", "rules"],
    [{ "site.coldest": "38 °C" }, "contradiction", "site.coldest"],
    [{ "inverters[0].mppVoltageRange": ["850 V", "200 V"] }, "contradiction", "inverters[0].mppVoltageRange"],
    [{ "inverters[0].mppVoltageRange": ["200 V", "1100 V"] }, "contradiction", "inverters[0].mppVoltageRange"],
    [{ "strings[0].tracker": "Z" }, "contradiction", "strings[0].tracker"],
    [{ "strings[0].roof": "North" }, "contradiction", "strings[0].roof"],
    [{ "strings[0].count": 3 }, "contradiction", "strings[0]"],
    [{ "strings[2].modules": 20 }, "contradiction", "roofs[1].modules"],
    [{ "roofs[0].moduleType": "Other" }, "contradiction", "roofs[0].moduleType"],
    [{ "roofs[1].name": "East face" }, "contradiction", "roofs[1].name"],
    [{ "routes[2].to": "Nowhere" }, "contradiction", "routes[2].to"],
    [{ "routes[2].from": "East face" }, "contradiction", "inverters[0].name"],
  ])("%j is %s at %s", (changes, code, path) => {
    expect(problemsOf(bakeryWith(changes)).map(([found, at]) => [found, at])).toContainEqual([code, path]);
  });

  it("reports every problem at once, contradictions beside slips", () => {
    const problems = problemsOf(
      bakeryWith({
        name: undefined,
        "site.coldst": "1 °C",
        "strings[0].tracker": "Z",
        "inverters[0].startVoltage": 39200,
      }),
    );
    expect(problems.map(([code]) => code)).toEqual(["missing", "unknown-key", "implausible", "contradiction"]);
    expect(problems[1]![2]).toContain("did you mean coldest?");
  });

  it.each([
    ["not JSON", "not-readable"],
    ["[]", "wrong-type"],
    ["null", "wrong-type"],
    [42, "wrong-type"],
    [undefined, "wrong-type"],
  ])("%j is %s", (input, code) => {
    expect(problemsOf(input)[0]![0]).toBe(code);
  });

  it("is not led astray by prototype keys or deep nesting", () => {
    const text = JSON.stringify(villageBakery()).replace(
      '"site":',
      '"__proto__":{"polluted":true},"constructor":1,"site":',
    );
    expect(problemsOf(text).map(([, path]) => path)).toEqual(expect.arrayContaining(["__proto__", "constructor"]));
    expect(({} as { polluted?: boolean }).polluted).toBeUndefined();
    let deep: unknown = "x";
    for (let level = 0; level < 5000; level += 1) deep = { deep };
    expect(problemsOf({ ...villageBakery(), site: deep })[0]![0]).toBe("refused");
  });
});

describe("sizing", () => {
  it("throws one InputError with every problem", () => {
    const call = () => sizePlant(bakeryWith({ name: undefined, "site.coldst": "1 °C" }) as never);
    expect(call).toThrow(InputError);
    expect(call).toThrow(/name: missing.*site\.coldst/);
  });

  it("lists the known connection rules where the name is another", () => {
    expect(() => sizePlant(bakeryWith({ "rules.grid": "EN 50549" }) as never)).toThrow(/EN 50549-1:2019/);
  });
});
