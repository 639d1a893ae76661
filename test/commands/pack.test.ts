import {
  existsSync,
  mkdirSync,
  readdirSync,
  readFileSync,
  statSync,
  symlinkSync,
  writeFileSync,
} from "node:fs";
import { join } from "node:path";
import { gunzipSync, gzipSync } from "node:zlib";
import { Header, type HeaderData } from "tar";
import { describe, expect, test } from "vitest";
import { packedFolder, unpackedFiles } from "../../lib/publish/packed-folder.ts";
import { commandHere } from "../support/command-here.ts";
import { contentFolder, SMALLEST_WORKSHOP } from "../support/content-folder.ts";
import { mullstone } from "../support/mullstone.ts";
import { filesIn } from "../support/files-in.ts";

const RECORDS = {
  ...SMALLEST_WORKSHOP,
  "photographs/soot.jpg": "not read here",
  "lots/lb-1.yaml": "number: LB-1\n",
  "manifests/published.json": "{}\n",
  "node_modules/config": "x",
};
describe("a content folder packed and brought back", () => {
  const { home, content } = contentFolder(RECORDS);
  const run = (...args: string[]) => commandHere(args, { cwd: home });

  test("comes back byte for byte, photographs, lots and manifests too, others' folders aside", async () => {
    const packed = await run("pack", "--output", "backup.tgz");
    expect([packed.code, packed.complaints]).toEqual([0, ""]);
    expect(packed.output).toContain("content is not under git");
    const back = await run("unpack", "backup.tgz", "--content", "again");
    expect([back.code, back.complaints]).toEqual([0, ""]);
    const again = join(home, "again");
    expect(filesIn(again)).toEqual(
      filesIn(content).filter((path) => !path.startsWith("node_modules/")),
    );
    for (const path of filesIn(again))
      expect(readFileSync(join(again, path)), path).toEqual(readFileSync(join(content, path)));
  });

  test("comes back with its empty folders, and without those of others", async () => {
    const empty = contentFolder(SMALLEST_WORKSHOP);
    for (const folder of ["trials", "photographs/old", ".git/refs"])
      mkdirSync(join(empty.content, folder), { recursive: true });
    const here = (...args: string[]) => commandHere(args, { cwd: empty.home });
    expect((await here("pack", "--output", "e.tgz")).code).toBe(0);
    expect((await here("unpack", "e.tgz", "--content", "again")).complaints).toBe("");
    const again = join(empty.home, "again");
    expect(
      readdirSync(again, { recursive: true, withFileTypes: true })
        .filter((entry) => entry.isDirectory())
        .map((entry) => join(entry.parentPath, entry.name).slice(again.length + 1))
        .sort(),
    ).toEqual(["colours", "photographs", "photographs/old", "pigments", "readings", "trials"]);
  });

  test("is never written over another, nor unpacked over records", async () => {
    const pack = () => run("pack", "--output", "older.tgz");
    expect((await pack()).complaints).toBe("");
    expect((await pack()).complaints).toBe(
      "older.tgz is there already: an older backup is never written over\n",
    );
    expect((await run("unpack", "older.tgz")).complaints).toContain("content is there already");
  });

  test("a folder that is not there is told as such", async () => {
    const { complaints, code } = await run("pack", "--content", "nowhere", "--output", "n.tgz");
    expect([code, complaints]).toEqual([
      1,
      "The content folder nowhere can't be read, since nothing is there: nothing was packed\n",
    ]);
  });

  test("the same folder gives the same bytes", () => {
    expect(packedFolder(content).bytes).toEqual(packedFolder(content).bytes);
  });

  test("a link in the folder is told, and not followed", () => {
    const other = contentFolder(SMALLEST_WORKSHOP).content;
    symlinkSync("/etc/hostname", join(other, "readings", "link.csv"));
    expect(() => packedFolder(other)).toThrow("readings/link.csv can't be packed: it is a link");
  });
});

describe("what is more than a pack may hold is refused on either way", () => {
  const { content } = contentFolder(SMALLEST_WORKSHOP);
  const roomy = { files: 100, fileBytes: 1e5, packBytes: 1e6 };
  const size = (limits: object) => ({ ...roomy, ...limits });
  const largest = Math.max(...filesIn(content).map((path) => statSync(join(content, path)).size));
  const { bytes, count } = packedFolder(content, roomy);
  // Of the archive as it is unpacked: every entry has a head and is filled up to whole blocks.
  const unpacked = gunzipSync(bytes).length;

  test("which just holds what it may", async () => {
    expect(packedFolder(content, size({ files: count })).count).toBe(count);
    expect(packedFolder(content, size({ fileBytes: largest })).count).toBe(count);
    const { files } = await unpackedFiles("b.tgz", bytes, size({ files: count }));
    expect(files.size).toBe(count);
  });

  test("too many files", async () => {
    expect(() => packedFolder(content, size({ files: count - 1 }))).toThrow(
      `holds ${count} files, and a pack at most ${count - 1}`,
    );
    await expect(unpackedFiles("b.tgz", bytes, size({ files: count - 1 }))).rejects.toThrow(
      "b.tgz is refused: it holds more than a pack may; nothing was written",
    );
  });

  test("a file that is too large", async () => {
    expect(() => packedFolder(content, size({ fileBytes: largest - 1 }))).toThrow(
      `has ${largest} bytes, and a pack takes files of at most ${largest - 1}`,
    );
    await expect(unpackedFiles("b.tgz", bytes, size({ fileBytes: largest - 1 }))).rejects.toThrow(
      "it holds more than a pack may",
    );
  });

  test("more bytes than it may, told before they are unpacked", async () => {
    expect(() => packedFolder(content, size({ packBytes: 100 }))).toThrow(
      /holds \d+ bytes, and a pack at most 100$/,
    );
    const limits = { ...roomy, files: 1, packBytes: unpacked - 1 - 2 * 512 };
    await expect(unpackedFiles("b.tgz", bytes, limits)).rejects.toThrow(
      `it unpacks to more than ${limits.packBytes} bytes`,
    );
  });
});

test("of a folder under git nothing is recommended", async () => {
  const { home, content } = contentFolder(SMALLEST_WORKSHOP);
  mkdirSync(join(home, ".git"));
  const packed = await mullstone(["pack", "--content", content], { cwd: home });
  expect([packed.code, packed.complaints]).toEqual([0, ""]);
  expect(packed.output).toMatch(/^4 files, \d+ bytes, \d+\.\d s: content\.tgz\n$/);
});

describe("a pack that is not to be trusted", () => {
  const { content } = contentFolder(SMALLEST_WORKSHOP);
  const tar = gunzipSync(packedFolder(content).bytes).subarray(0, -1024);
  /** A further entry, made by the library's own header with whatever is asked of it. */
  const withEntry = (fields: HeaderData, text = ""): Uint8Array => {
    const header = new Header({
      mode: 0o644,
      mtime: new Date(0),
      type: "File",
      ...fields,
      size: text.length,
    });
    header.encode();
    const padded = Buffer.alloc(Math.ceil(text.length / 512) * 512);
    padded.write(text);
    return gzipSync(
      Buffer.concat([tar, header.block ?? Buffer.alloc(512), padded, Buffer.alloc(1024)]),
    );
  };
  test.each<[string, Uint8Array, string]>([
    [
      "a path above",
      withEntry({ path: "content/../../evil.yaml" }, "x"),
      "leads out of the content folder",
    ],
    [
      "a path from the root",
      withEntry({ path: "/etc/evil" }, "x"),
      "leads out of the content folder",
    ],
    [
      "a path of another system",
      withEntry({ path: "content/a\\..\\evil" }, "x"),
      "leads out of the content folder",
    ],
    ["a drive", withEntry({ path: "content/C:evil" }, "x"), "leads out of the content folder"],
    [
      "a link",
      withEntry({ path: "content/link", type: "SymbolicLink", linkpath: "/etc/passwd" }),
      "is a SymbolicLink",
    ],
    [
      "a hard link",
      withEntry({ path: "content/link", type: "Link", linkpath: "content/workshop.yaml" }),
      "is a Link",
    ],
    [
      "a device",
      withEntry({ path: "content/dev", type: "CharacterDevice" }),
      "is a CharacterDevice",
    ],
    ["a file twice", withEntry({ path: "content/WORKSHOP.yaml" }, "x"), "comes twice"],
    [
      "a file that nobody listed",
      withEntry({ path: "content/more.yaml" }, "x"),
      "more.yaml is not in its list",
    ],
    ["no pack", Buffer.from("nothing of the kind"), "it is no pack, or was damaged"],
    [
      "an archive with nothing in it",
      gzipSync(Buffer.alloc(1024)),
      "it is no pack, or was damaged",
    ],
  ])("%s is refused", async (_, bytes, why) => {
    await expect(unpackedFiles("backup.tgz", bytes)).rejects.toThrow(why);
  });

  test.each(["../evil", "/etc/evil", "a/../../evil", ""])(
    "an empty folder %j is refused",
    async (folder) => {
      const entries = tar.indexOf("pack.json");
      const [listed, rest] = (() => {
        const bytes = parseInt(tar.toString("ascii", entries + 124, entries + 135), 8);
        return [
          tar.toString("utf8", entries + 512, entries + 512 + bytes),
          entries + 512 + Math.ceil(bytes / 512) * 512,
        ];
      })();
      const text = JSON.stringify({ ...(JSON.parse(listed) as object), emptyFolders: [folder] });
      const header = new Header({
        path: "pack.json",
        mode: 0o644,
        mtime: new Date(0),
        type: "File",
        size: text.length,
      });
      header.encode();
      const padded = Buffer.alloc(Math.ceil(text.length / 512) * 512);
      padded.write(text);
      const forged = gzipSync(
        Buffer.concat([
          header.block ?? Buffer.alloc(512),
          padded,
          tar.subarray(rest),
          Buffer.alloc(1024),
        ]),
      );
      await expect(unpackedFiles("backup.tgz", forged)).rejects.toThrow(
        "leads out of the content folder",
      );
    },
  );

  test("one byte changed is found", async () => {
    const spoilt = Buffer.from(tar);
    const at = spoilt.indexOf("name: Test Workshop");
    spoilt.write("N", at);
    await expect(
      unpackedFiles("backup.tgz", gzipSync(Buffer.concat([spoilt, Buffer.alloc(1024)]))),
    ).rejects.toThrow("workshop.yaml is not what was packed");
  });

  test("nothing of it is written", async () => {
    const { home } = contentFolder(SMALLEST_WORKSHOP);
    mkdirSync(join(home, "in"));
    writeFileSync(join(home, "evil.tgz"), withEntry({ path: "content/../../evil.yaml" }, "x"));
    const { code } = await mullstone(["unpack", "evil.tgz", "--content", "in/new"], { cwd: home });
    expect(code).toBe(1);
    expect(existsSync(join(home, "in/new"))).toBe(false);
    expect(filesIn(join(home, "in"))).toEqual([]);
  });
});
