import { spawnSync } from "node:child_process";
import {
  cpSync,
  existsSync,
  mkdirSync,
  readdirSync,
  readFileSync,
  rmSync,
  writeFileSync,
} from "node:fs";
import { join } from "node:path";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { fileDifferences } from "../../lib/publish/file-differences.ts";
import { deletionRules } from "../../lib/publish/rsync-target.ts";
import { commandHere } from "../support/command-here.ts";
import { bucketServer, KEYS, type BucketServer } from "../support/bucket-server.ts";
import { contentFolder, SMALLEST_WORKSHOP } from "../support/content-folder.ts";
import { mullstone, type CommandRun } from "../support/mullstone.ts";
import { filesIn } from "../support/files-in.ts";

const COLOUR = `---
name: Soot
pigments: [{ pigment: soot }]
sizes: [{ ml: 40, price: 8 }]
date: 2026-05-01
---
`;
const RECORDS = {
  ...SMALLEST_WORKSHOP,
  "workshop.yaml":
    "name: Test Workshop\nsiteAddress: https://saltreach.example/\ncurrency: GBP\nvehicle: linseed-oil\n",
  "vehicles/linseed-oil.yaml":
    "name: Linseed oil\nkind: oil\noil: linseed\ndensityGPerCm3: 0.93\nhazards: []\n",
  "pigments/lamp-black.yaml": "name: Lamp black\nhazards: []\n",
  "pigments/soot.yaml":
    "name: Soot\nhazards: [{ statement: H410, hazardClass: Aquatic Chronic 1 }]\n",
  "colours/lamp-black.md": SMALLEST_WORKSHOP["colours/lamp-black.md"].replace(
    "name: Lamp Black",
    "name: Lamp Black\ndate: 2026-05-01",
  ),
  "colours/soot.md": COLOUR,
};

/** A workshop that publishes; its site is built into `_site` beside its records. */
const { home, content } = contentFolder(RECORDS);
const write = (path: string, text: string): void => writeFileSync(join(content, path), text);
const remove = (path: string): void => rmSync(join(content, path));
const publish = (to: string, ...options: string[]): Promise<CommandRun> =>
  commandHere(["publish", "--to", to, ...options], { cwd: home, env: KEYS });

/** Each state of the workshop is built once, and published to all that take it: a store, a folder, by rsync. */
const [www, byRsync] = [join(home, "www"), join(home, "by-rsync")];
const hasRsync = spawnSync("rsync", ["--version"]).status === 0;

let store: BucketServer;
beforeAll(async () => {
  store = await bucketServer();
});
afterAll(() => store.close());
const ship = (...options: string[]): Promise<CommandRun> =>
  publish("s3:colours/shop", "--endpoint", store.address, ...options);

test("in several languages a second publish of the same records finds nothing to move", async () => {
  const other = contentFolder({
    ...RECORDS,
    "workshop.yaml": `${RECORDS["workshop.yaml"]}pageLanguages: [en, de]\n`,
  });
  const publishes = (): Promise<CommandRun> =>
    commandHere(["publish", "--to", "www"], { cwd: other.home, env: KEYS });
  expect((await publishes()).code).toBe(0);
  const first = readFileSync(join(other.home, "www", "de", "feed.xml"), "utf8");
  expect((await publishes()).output).toContain("www holds this site already");
  expect(readFileSync(join(other.home, "www", "de", "feed.xml"), "utf8")).toBe(first);
});

/** One workshop, through one state after the other: what is published is held against what was published before. */
describe("a workshop that publishes", { shuffle: false }, () => {
  describe("to a store that speaks as S3 does", () => {
    test("a dry run asks and puts nothing", async () => {
      expect((await ship("--dry-run")).code).toBe(0);
      expect(store.log).toEqual(["GET /colours/shop/manifest.json"]);
    });

    test("every file goes out signed, what pages load first and manifest.json last", async () => {
      store.log.length = 0;
      store.fail("/colours/shop/index.html", 2);
      const { code, complaints } = await ship();
      expect([code, complaints]).toEqual([0, ""]);
      const at = (path: string): Buffer | undefined =>
        store.objects.get(`/colours/shop/${path}`)?.bytes;
      const built = filesIn(join(home, "_site"));
      expect(
        built.filter((path) => at(path)?.equals(readFileSync(join(home, "_site", path))) !== true),
      ).toEqual([]);
      expect(store.objects.size).toBe(built.length);
      const puts = store.log.filter((line) => line.startsWith("PUT")).map((line) => line.slice(18));
      expect(puts.at(-1)).toBe("manifest.json");
      expect(puts.findLastIndex((path) => path.startsWith("assets/"))).toBeLessThan(
        puts.findIndex((path) => path.endsWith(".html")),
      );
      expect(puts.filter((path) => path === "index.html")).toHaveLength(3);
    });

    test("a page is asked for anew each time, a style with a hash in its name never", () => {
      const headers = [...store.objects].map(([path, one]) => [path, one.headers] as const);
      expect(headers.find(([path]) => path.endsWith("/shop/index.html"))?.[1]).toEqual({
        type: "text/html; charset=utf-8",
        cache: "no-cache",
      });
      expect(headers.find(([path]) => path.endsWith(".css"))?.[1]).toEqual({
        type: "text/css; charset=utf-8",
        cache: "public, max-age=31536000, immutable",
      });
    });

    test.each([
      [
        { AWS_SECRET_ACCESS_KEY: "wrong" },
        /answered 403 to GET of manifest\.json: SignatureDoesNotMatch/,
      ],
      [{ AWS_SECRET_ACCESS_KEY: "" }, /There are no keys for s3:colours\/shop/],
    ])("with the keys %j it is refused in a sentence", async (keys, sentence) => {
      const { code, complaints } = await mullstone(
        ["publish", "--to", "s3:colours/shop", "--endpoint", store.address],
        { cwd: home, env: { ...KEYS, ...keys } },
      );
      expect(code).toBe(1);
      expect(complaints).toMatch(sentence);
    });
  });

  describe("the same to a folder", () => {
    test("a dry run says what is new, and moves nothing", async () => {
      const { code, output } = await publish("www", "--dry-run");
      expect(code).toBe(0);
      expect(output).toContain("Soot: A new colour.");
      expect(output).toMatch(/^new {6}colours\/soot\/index\.html$/m);
      expect(output).toMatch(/\d+ new files, 0 changed, 0 removed, .*: nothing was moved/);
      expect(existsSync(www)).toBe(false);
    });

    test("of records elsewhere it builds beside those, and not where one stands", async () => {
      const { home: here } = contentFolder({});
      for (const built of ["_site", "_workshop"]) rmSync(join(home, built), { recursive: true });
      const { code } = await commandHere(
        ["publish", "--content", content, "--to", "www", "--dry-run"],
        { cwd: here, env: KEYS },
      );
      expect(code).toBe(0);
      expect(readdirSync(here)).toEqual(["content"]);
      expect(readdirSync(home)).toEqual(expect.arrayContaining(["_site", "_workshop"]));
    });

    test("a publish brings what was built", async () => {
      expect((await publish("www")).code).toBe(0);
      expect(filesIn(www)).toEqual(filesIn(join(home, "_site")));
      expect(readFileSync(join(www, "index.html"), "utf8")).toBe(
        readFileSync(join(home, "_site", "index.html"), "utf8"),
      );
    });

    test.skipIf(!hasRsync)("and by rsync", async () => {
      mkdirSync(byRsync);
      expect((await publish(`rsync:${byRsync}`)).code).toBe(0);
      expect(filesIn(byRsync)).toEqual(filesIn(join(home, "_site")));
    });

    test("where it lies already nothing is moved", async () => {
      expect((await publish("www")).output).toContain("www holds this site already");
    });

    test("over somebody else's manifest nothing is published", async () => {
      const other = join(home, "other");
      mkdirSync(other);
      writeFileSync(join(other, "manifest.json"), `{ "kind": "another" }`);
      const { code, complaints } = await publish("other");
      expect(code).toBe(1);
      expect(complaints).toContain("neither empty nor made by an earlier build");
      expect(filesIn(other)).toEqual(["manifest.json"]);
      store.objects.set("/another/manifest.json", {
        bytes: Buffer.from(`{ "kind": "another" }`),
        headers: {},
      });
      expect((await publish("s3:another", "--endpoint", store.address)).complaints).toContain(
        "manifest.json of the target is no manifest of ours",
      );
    });

    test("a folder of somebody else's is refused before anything is built", async () => {
      const { home: elsewhere } = contentFolder(RECORDS);
      mkdirSync(join(elsewhere, "letters"));
      writeFileSync(join(elsewhere, "letters", "to-a-friend.txt"), "Dear A.");
      const { code, output, complaints } = await commandHere(["publish", "--to", "letters"], {
        cwd: elsewhere,
        env: KEYS,
      });
      expect([code, output]).toEqual([1, ""]);
      expect(complaints).toContain("letters is neither empty nor made by an earlier build");
      expect(existsSync(join(elsewhere, "_site"))).toBe(false);
      expect(existsSync(join(elsewhere, "content", ".mullstone-cache"))).toBe(false);
    });

    test.skipIf(hasRsync)("rsync that is not there is told in a sentence", async () => {
      const { complaints } = await publish("rsync:host:/www");
      expect(complaints).toBe(
        "There is no rsync on this machine: it is what --to rsync: sends by\n",
      );
    });
  });

  describe("another price", () => {
    test("goes out to a store and nothing else does; what is another's stays", async () => {
      store.objects.set("/colours/shop/CNAME", { bytes: Buffer.from("x"), headers: {} });
      write("colours/soot.md", COLOUR.replace("price: 8", "price: 9"));
      store.log.length = 0;
      expect((await ship()).code).toBe(0);
      expect(store.log).toContain("PUT /colours/shop/colours/soot/index.html");
      expect(store.log.filter((line) => line.includes("/assets/"))).toEqual([]);
      expect(store.log.filter((line) => line.startsWith("DELETE"))).toEqual([]);
      expect(store.objects.has("/colours/shop/CNAME")).toBe(true);
    });

    test("is told, and goes out to a folder; what no publish wrote stays", async () => {
      writeFileSync(join(www, "CNAME"), "saltreach.example\n");
      const { code, output } = await publish("www");
      expect(code).toBe(0);
      expect(output).toMatch(/^Soot: Price of 40.ml: £9\.00; it was £8\.00\.$/m);
      expect(output).not.toContain("Sizes and prices");
      expect(readFileSync(join(www, "CNAME"), "utf8")).toBe("saltreach.example\n");
      expect(readFileSync(join(www, "feed.xml"), "utf8")).toContain(
        "Price of 40\u00a0ml: £9.00; it was £8.00.",
      );
    });
  });

  test("a weaker caution waits until it is confirmed", async () => {
    write("pigments/soot.yaml", "name: Soot\nhazards: []\n");
    const refused = await publish("www");
    expect([refused.code, refused.complaints]).toEqual([
      1,
      "--confirm cautions is missing: nothing was moved\n",
    ]);
    expect(refused.output).toContain("a weaker caution: Soot: Hazard statement: no longer H410.");
    expect(readFileSync(join(www, "colours/soot/sheet.json"), "utf8")).toContain("H410");
    expect((await publish("www", "--confirm", "cautions")).code).toBe(0);
    expect(readFileSync(join(www, "colours/soot/sheet.json"), "utf8")).not.toContain("H410");
  });

  describe("a colour that goes", () => {
    test("leaves a page of its own, and waits until it is confirmed", async () => {
      // What rsync has to bring to the same state.
      rmSync(byRsync, { recursive: true, force: true });
      cpSync(www, byRsync, { recursive: true });
      remove("colours/soot.md");
      remove("pigments/soot.yaml");
      const lost = await publish("www");
      expect(lost.code).toBe(1);
      expect(lost.complaints).toContain("The page colours/soot/ was published and would be gone");
      write(
        "workshop.yaml",
        `${RECORDS["workshop.yaml"]}former:\n  - { address: colours/soot/, name: Soot, replacedBy: colours/lamp-black/ }\n  - { address: pigments/soot/, name: Soot }\n`,
      );
      const refused = await publish("www");
      expect(refused.complaints).toBe("--confirm removals is missing: nothing was moved\n");
      expect((await publish("www", "--confirm", "removals")).code).toBe(0);
      expect(readFileSync(join(www, "colours/soot/sheet.json"), "utf8")).toContain(
        '"sheet": "colours/lamp-black/sheet.json"',
      );
      expect(existsSync(join(www, "colours/soot/readings.cxf"))).toBe(false);
      expect(readFileSync(join(www, "colours/soot/index.html"), "utf8")).toContain(
        "In its place: Lamp Black",
      );
    });

    test.skipIf(!hasRsync)(
      "goes by rsync too, which sends what changed, deletes what was its own, and leaves the rest",
      async () => {
        writeFileSync(join(byRsync, "colours/soot/mine.txt"), "x");
        const { code, complaints } = await publish(`rsync:${byRsync}`, "--confirm", "removals");
        expect([code, complaints.replaceAll(/^.*warning.*\n/gm, "")]).toEqual([0, ""]);
        expect(filesIn(byRsync)).toEqual(
          [...filesIn(join(home, "_site")), "CNAME", "colours/soot/mine.txt"].sort(),
        );
        for (const file of ["manifest.json", "index.html", "colours/soot/index.html"])
          expect(readFileSync(join(byRsync, file), "utf8"), file).toBe(
            readFileSync(join(home, "_site", file), "utf8"),
          );
      },
    );

    // basis: published, rsync(1), FILTER RULES: the first rule that matches decides; "risk" may be deleted, "protect" may not.
    test("by rules for deletion that name each file and its folders, then protect the rest", () => {
      expect(deletionRules(["a/b/x.html", "a/y[1].html"])).toBe(
        "risk /a/\nrisk /a/b/\nrisk /a/b/x.html\nrisk /a/y\\[1].html\nprotect *\n",
      );
    });
  });
});

describe("files that differ", () => {
  test("by their hashes; of a manifest without them all are sent", () => {
    const now = { files: ["a", "b", "c"], hashes: { a: "1", b: "2", c: "3" } };
    expect(
      fileDifferences({ files: ["a", "b", "d"], hashes: { a: "1", b: "9", d: "4" } }, now),
    ).toEqual({
      added: ["c"],
      changed: ["b"],
      sent: ["b", "c"],
      removed: ["d"],
    });
    expect(fileDifferences({ files: ["a"] }, now).sent).toEqual(["a", "b", "c"]);
  });

  test.each(["../x", "/etc/passwd", "a/../../x", "a//b", "a\\b", "", "a\nb", "./a"])(
    "a path %j in the target's manifest is passed over",
    (path) => {
      expect(fileDifferences({ files: [path] }, { hashes: {} }).removed).toEqual([]);
    },
  );
});
