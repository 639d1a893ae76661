import { execFileSync } from "node:child_process";
import {
  existsSync,
  lstatSync,
  mkdirSync,
  mkdtempSync,
  readdirSync,
  readFileSync,
  symlinkSync,
  truncateSync,
  writeFileSync,
} from "node:fs";
import { join } from "node:path";
import { beforeAll, describe, expect, inject, test } from "vitest";
import { earlierCards } from "../../lib/site/earlier-manifest.ts";
import { outputFile } from "../../lib/site/output-file.ts";

let home = "";
const at = (name: string): string => (name.startsWith("/") ? name : join(home, name));
const OURS = "%PDF-1.7\n<pdf:Producer>Mullstone</pdf:Producer>\n%%EOF";

beforeAll(() => {
  home = mkdtempSync(join(inject("scratch"), "output-file-"));
  mkdirSync(at("content/colours"), { recursive: true });
  writeFileSync(at("content/workshop.yaml"), "name: Mine\n");
  mkdirSync(at("folder"));
  symlinkSync(at("content"), at("way"));
  symlinkSync(at("content/workshop.yaml"), at("way.pdf"));
  execFileSync("mkfifo", [at("pipe")]);
  writeFileSync(at("letter.txt"), "dear");
  writeFileSync(at("other.pdf"), "%PDF-1.7 of another program");
});

describe("a PDF of cards", () => {
  test.each([
    ["content/workshop.yaml", "lies in the content folder"],
    ["content/new.pdf", "lies in the content folder"],
    ["content", "lies in the content folder"],
    ["way/colours/new.pdf", "lies in the content folder"],
    ["way.pdf", "lies in the content folder"],
    ["folder", "is a file, and .*folder is a folder"],
    ["pipe", "is a plain file, and .*pipe is none"],
    ["/dev/null", "is a plain file, and /dev/null is none"],
    ["letter.txt", "what is there is no PDF of cards, and is left as it is"],
    ["other.pdf", "what is there is no PDF of cards, and is left as it is"],
    ["no/such/folder.pdf", "there is no folder .*no/such"],
    ["letter.txt/cards.pdf", "part of its path is not a folder"],
  ])("is not written to %s", (name, complaint) => {
    expect(() => outputFile(at(name), at("content"))).toThrow(new RegExp(complaint));
  });

  test("takes the place of an earlier one, of an empty file, and of nothing; a link stays a link", () => {
    writeFileSync(at("empty.pdf"), "");
    writeFileSync(at("real.pdf"), OURS);
    symlinkSync(at("real.pdf"), at("link.pdf"));
    for (const name of ["new.pdf", "new.pdf", "empty.pdf", "link.pdf"]) {
      outputFile(at(name), at("content")).write(Buffer.from(OURS));
      expect(readFileSync(at(name), "utf8"), name).toBe(OURS);
    }
    expect(lstatSync(at("link.pdf")).isSymbolicLink()).toBe(true);
    expect(readdirSync(home).filter((name) => /building|lock/.test(name))).toEqual([]);
  });

  test("is not written over what came there meanwhile", () => {
    const output = outputFile(at("meanwhile.pdf"), at("content"));
    writeFileSync(at("meanwhile.pdf"), "a letter");
    expect(() => output.write(Buffer.from(OURS))).toThrow(/is no PDF of cards/);
    expect(readFileSync(at("meanwhile.pdf"), "utf8")).toBe("a letter");
    expect(existsSync(at("meanwhile.pdf.lock"))).toBe(false);
  });

  test("clears away what a killed run left beside it", () => {
    writeFileSync(at("killed.pdf.building"), "%PDF-1.7 hal");
    outputFile(at("killed.pdf"), at("content")).write(Buffer.from(OURS));
    expect(existsSync(at("killed.pdf.building"))).toBe(false);
  });
});

describe("--since", () => {
  test.each([
    ["/dev/zero", "it is no plain file"],
    ["pipe", "it is no plain file"],
    ["folder", "it is no plain file"],
    ["nothing.json", "there is no such file"],
    ["letter.txt", "it can't be read as JSON"],
  ])("reads a plain file and not %s", (name, complaint) => {
    expect(() => earlierCards(at(name))).toThrow(new RegExp(complaint));
  });

  test("reads a file of bounded size", () => {
    writeFileSync(at("huge.json"), "");
    truncateSync(at("huge.json"), 32 * 1024 * 1024 + 1);
    expect(() => earlierCards(at("huge.json"))).toThrow(
      /it has 33554433 bytes, and at most 33554432 are read$/,
    );
  });
});
