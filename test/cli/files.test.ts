import { existsSync, mkdtempSync, readdirSync, readFileSync, symlinkSync, lstatSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { Readable } from "node:stream";
import { tmpdir } from "node:os";
import { describe, expect, it } from "vitest";
import { EXIT, Failure, gravest } from "../../src/cli/exit.js";
import { decoded, parsed } from "../../src/cli/files/read.js";
import { type FileSystem, writeWhole } from "../../src/cli/files/write.js";
import { linesOf } from "../../src/cli/commands/stream.js";

const freshFolder = (): string => mkdtempSync(join(tmpdir(), "pv-to-grid-cli-"));

const bytes = (text: string): Uint8Array => new TextEncoder().encode(text);

describe("reading", () => {
  it("takes a byte-order mark off", () => {
    expect(decoded(bytes("\ufeff{}"), "a.json")).toBe("{}");
  });

  it.each([
    ["UTF-16", Buffer.from("\ufeff{}", "utf16le")],
    ["UTF-16", Buffer.from("{\u0000}\u0000", "latin1")],
    ["UTF-32", Buffer.from([0xff, 0xfe, 0, 0, 0x7b, 0, 0, 0])],
    ["not UTF-8", Buffer.from('{"name":"Bäckerei"}', "latin1")],
    ["not UTF-8", Buffer.from([0x7b, 0xc3])],
  ])("refuses %s by name, with the way out", (name, found) => {
    expect(() => decoded(found, "a.json")).toThrow(new RegExp(`^a\\.json: .*${name}.*save it as UTF-8`));
  });

  it.each([
    ['{"a": 1', "it ends too early; was it cut off?"],
    ['{"a":', "it ends too early; was it cut off?"],
    ["", "there is nothing in it"],
    ['{\n  "a": 1,\n  "b" 2\n}', "at line 3, column 7"],
  ])("says of %j what is wrong and where", (text, why) => {
    expect(() => parsed(text, "a.json")).toThrow(why);
  });
});

describe("lines of a stream", () => {
  const read = async (...texts: readonly string[]): Promise<string[]> => {
    const found: string[] = [];
    for await (const { number, bytes: line } of linesOf(Readable.from(texts.map(bytes)))) {
      found.push(`${number}:${line === null ? "too long" : new TextDecoder().decode(line)}`);
    }
    return found;
  };

  it("are the same however they arrive, and the last needs no end", async () => {
    expect(await read("one\ntw", "o\n\nfo", "ur")).toEqual(["1:one", "2:two", "3:", "4:four"]);
  });

  it("that are endless are given up without being kept", async () => {
    const half = "x".repeat(9 * 1024 * 1024);
    expect(await read(half, half, "\nshort\n")).toEqual(["1:too long", "2:short"]);
  });
});

describe("writing", () => {
  it("replaces a file whole, and keeps a link a link", () => {
    const folder = freshFolder();
    writeFileSync(join(folder, "real.txt"), "old");
    symlinkSync("real.txt", join(folder, "link.txt"));
    writeWhole(join(folder, "link.txt"), "new");
    expect(readFileSync(join(folder, "real.txt"), "utf8")).toBe("new");
    expect(lstatSync(join(folder, "link.txt")).isSymbolicLink()).toBe(true);
    expect(readdirSync(folder).sort()).toEqual(["link.txt", "real.txt"]);
  });

  const failing = (at: keyof FileSystem, log: string[]): FileSystem => {
    const step = <T>(name: keyof FileSystem, value: T): T => {
      log.push(name);
      if (name === at) throw Object.assign(new Error("injected"), { code: "EIO" });
      return value;
    };
    return {
      open: () => step("open", 7),
      write: (_, part) => step("write", part.length),
      sync: () => step("sync", undefined),
      close: () => step("close", undefined),
      rename: () => step("rename", undefined),
      remove: () => step("remove", undefined),
    };
  };

  it.each(["open", "write", "sync", "close", "rename"] as const)(
    "a failure at %s leaves the old file and says so",
    (at) => {
      const folder = freshFolder();
      const file = join(folder, "report.html");
      writeFileSync(file, "old");
      const log: string[] = [];
      expect(() => writeWhole(file, "new", failing(at, log))).toThrow(
        /report\.html: cannot be written: the device failed \(EIO\)/,
      );
      expect(readFileSync(file, "utf8")).toBe("old");
      expect(log.at(-1)).toBe("remove");
      if (at !== "rename") expect(log).not.toContain("rename");
    },
  );

  it("writes on where the system took only a part", () => {
    const taken: string[] = [];
    const log: string[] = [];
    writeWhole("anywhere", "whole text", {
      ...failing("remove", log),
      remove: () => undefined,
      write: (_, part) => {
        taken.push(new TextDecoder().decode(part.subarray(0, 4)));
        return Math.min(4, part.length);
      },
    });
    expect(taken.join("")).toBe("whole text");
  });

  it("names the folder that is missing", () => {
    const file = join(freshFolder(), "nowhere", "report.html");
    expect(() => writeWhole(file, "x")).toThrow(Failure);
    expect(existsSync(file)).toBe(false);
  });
});

it("the gravest code of many wins", () => {
  expect(gravest([])).toBe(EXIT.allMet);
  expect(gravest([EXIT.somethingOpen, EXIT.allMet])).toBe(EXIT.somethingOpen);
  expect(gravest([EXIT.somethingNotMet, EXIT.somethingOpen])).toBe(EXIT.somethingNotMet);
  expect(gravest([EXIT.badInput, EXIT.somethingNotMet])).toBe(EXIT.badInput);
});
