import { describe, expect, it } from "vitest";
import { ladderFigure, lineDiagrams, pathFigure, profileFigure, windowFigure } from "../../src/report/index.js";
import { scale, spread, ticks } from "../../src/report/figure/scale.js";
import { bakery, coldUnknown, tooThin } from "./records.js";

const plain = (text: string): string => text.replace(/\u202f/g, " ");

describe("figures", () => {
  const [string] = bakery.strings;
  const [roof, , toBoard] = bakery.routes;

  // U_OC 38.9 V · (1 − 0.0025 · (−16 − 25)) · 13 = 557.53425 V; limit 1000 V: 442.5 V to spare.
  it("the ladder says its finding in words, margins in volts", () => {
    const { finding, svg } = ladderFigure(string!)!;
    expect(plain(finding)).toBe(
      "13 modules reach 557.5 V at −16 °C, 442.5 V below the limit of 1000 V; they work at 358.0 V at 70 °C, 158.0 V above the lower end of 200 V.",
    );
    expect(svg).toContain(`aria-label="`);
  });

  it("the window runs from the coldest to the hottest cell", () => {
    expect(plain(windowFigure(string!)!.finding)).toContain(
      "From −16 °C to 70 °C the open-circuit voltage falls from 557.5 V to 448.8 V",
    );
  });

  it("the path draws its stretches to scale", () => {
    const { svg } = pathFigure(roof!)!;
    // 9 m of 24 m between 56 and 624.
    expect(svg).toContain(`x1="${56 + ((624 - 56) * 9) / 24}"`);
  });

  it("the profile stands between the limits of the supply", () => {
    expect(plain(profileFigure(bakery, "Inverter")!.finding)).toContain("highest supply voltage 440 V");
  });

  it("the line diagram underlines what was chosen and leaves plain what was stated", () => {
    const [whole] = lineDiagrams(bakery);
    const underlined = [...whole!.svg.matchAll(/text-decoration="underline"[^>]*>(.*?)<\/text>/g)].map(([, inner]) =>
      plain(inner!.replace(/<[^>]+>/g, "")),
    );
    expect(underlined).toEqual(["4 mm²", "4 mm²", "2.5 mm²", "10 mm²", "PE 10 mm²", "C 25 A"]);
  });

  it("use the accent where something is not met, and only there", () => {
    expect(pathFigure(toBoard!)!.svg).not.toContain("--not-met");
    expect(pathFigure(tooThin.routes[2]!)!.svg).toContain("--not-met");
    expect(pathFigure(tooThin.routes[2]!)!.svg).toContain("▲");
  });

  it("are left out where a voltage is not known", () => {
    expect(ladderFigure(coldUnknown.strings[0]!)).toBeNull();
  });

  it("are documents of their own without scripts, styles or links", () => {
    for (const { svg } of [ladderFigure(string!)!, windowFigure(string!)!, ...lineDiagrams(bakery)]) {
      expect(svg).toMatch(/^<svg xmlns="http:\/\/www\.w3\.org\/2000\/svg"/);
      expect(svg).not.toMatch(/<(script|style|a|image|foreignObject)\b/);
      expect(svg).not.toContain("NaN");
    }
  });
});

describe("scales", () => {
  it("map ends to ends, and a range without extent to the middle", () => {
    expect([scale([0, 10], [100, 0])(0), scale([0, 10], [100, 0])(10), scale([5, 5], [0, 10])(5)]).toEqual([100, 0, 5]);
  });

  it("tick at round values", () => {
    expect(ticks(0, 1000, 5)).toEqual([0, 200, 400, 600, 800, 1000]);
    expect(ticks(-16, 70, 4)).toEqual([0, 50]);
  });

  it("spread blocks that would cover each other", () => {
    expect(spread([10, 12], [10, 10], 0, 100)).toEqual([10, 20]);
    expect(spread([95, 95], [10, 10], 0, 100)).toEqual([80, 90]);
  });
});
