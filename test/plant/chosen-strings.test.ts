import { describe, expect, it } from "vitest";
import { InputError, sizePlant } from "../../src/index.js";
import { bakeryWith } from "./demo.js";

describe("strings left to choice", () => {
  it.each(["choose", undefined])("are found by the search, with its rule (%s)", (strings) => {
    const record = sizePlant(bakeryWith({ strings }) as never);
    expect(record.strings.map(({ tracker, roof, modules, count }) => [tracker, roof, modules, count])).toEqual([
      ["A", "East face", 13, 1],
      ["B", "East face", 13, 1],
      ["C", "West face", 14, 1],
    ]);
    expect(record.chosen).toContain("strings");
    expect(record.verified).not.toContain("strings");
    expect(record.strings.every(({ path }) => path === null)).toBe(true);
    expect(record.cautions.some((text) => text.includes("proven the best"))).toBe(true);
  });

  it("say which modules stay over", () => {
    const record = sizePlant(bakeryWith({ strings: "choose", "roofs[1].modules": 3 }) as never);
    expect(record.toDo.map(({ text }) => text)).toContainEqual(
      expect.stringContaining("3 modules of West face find no string"),
    );
  });

  it("are refused with the reason where nothing fits", () => {
    const call = () =>
      sizePlant(bakeryWith({ strings: "choose", "roofs[0].modules": 2, "roofs[1].modules": 3 }) as never);
    expect(call).toThrow(InputError);
    expect(call).toThrow(/strings/);
  });
});
