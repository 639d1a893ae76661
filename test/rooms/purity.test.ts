import { readFileSync } from "node:fs";
import { join } from "node:path";
import { build } from "esbuild";
import { describe, expect, test } from "vitest";
import { libModules } from "./lib-modules.ts";

const ROOT = join(import.meta.dirname, "../..");
/** Rooms that a browser can run as they are. */
const PURE_ROOMS = [
  "diagnostics",
  "quantities",
  "colorimetry",
  "optics",
  "formulation",
  "permanence",
  "drying",
  "hazard",
  "mixing",
  "collection",
  "words",
  "present",
  "plots",
];
/** Lists of words, and functions of them and nothing else, which a sheet's declaration goes by. */
const PLAIN_OF_RECORDS = [
  "lib/records/schema/terms.ts",
  "lib/records/drier-metals.ts",
  "lib/records/readings/reading-endings.ts",
];
const KEPT_OUT = [
  "sharp",
  "pdfkit",
  "yaml",
  "zod",
  "nunjucks",
  "@11ty/eleventy",
  "esbuild",
  "saxes",
  "csv-parse",
];

interface Bundle {
  /** What esbuild could not put into a bundle for a browser. */
  readonly faults: readonly string[];
  /** Packages of node_modules, and rooms of lib/, that got into it. */
  readonly packages: readonly string[];
  readonly rooms: readonly string[];
}

/** One bundle of modules for a browser; types are stripped, code that nothing uses is kept. */
async function bundled(contents: string): Promise<Bundle> {
  try {
    const { metafile } = await build({
      absWorkingDir: ROOT,
      stdin: { contents, resolveDir: ROOT },
      bundle: true,
      write: false,
      metafile: true,
      format: "esm",
      platform: "browser",
      target: "es2023",
      treeShaking: false,
      ignoreAnnotations: true,
      logLevel: "silent",
    });
    const inputs = Object.keys(metafile.inputs);
    return {
      faults: [],
      packages: [
        ...new Set(
          inputs.flatMap(
            (input) => /^(?:.*\/)?node_modules\/((?:@[^/]+\/)?[^/]+)\//.exec(input)?.[1] ?? [],
          ),
        ),
      ],
      rooms: [
        ...new Set(
          inputs
            .filter((input) => !PLAIN_OF_RECORDS.includes(input))
            .flatMap((input) => /^lib\/([^/]+)\//.exec(input)?.[1] ?? []),
        ),
      ],
    };
  } catch (error) {
    return {
      faults: (error as { errors?: { text: string }[] }).errors?.map(({ text }) => text) ?? [
        String(error),
      ],
      packages: [],
      rooms: [],
    };
  }
}

const MODULES = libModules();

describe.each(PURE_ROOMS.map((room) => ({ room })))("$room in a browser", ({ room }) => {
  const files = MODULES.filter((module) => module.room === room).map(({ file }) => file);

  test("bundles with nothing of Node, files, images, paper or record formats in it", async () => {
    expect(files.length).toBeGreaterThan(0);
    const bundle = await bundled(files.map((file) => `import "./${file}";`).join("\n"));
    expect(bundle.faults).toEqual([]);
    expect(bundle.rooms).toContain(room);
    expect(bundle.packages.filter((name) => KEPT_OUT.includes(name))).toEqual([]);
    expect(
      bundle.rooms.filter((name) =>
        ["knowledge", "records", "site", "commands", "pages"].includes(name),
      ),
    ).toEqual([]);
  });
});

test("no module is imported for what it does, so that a script leaves out those of which it uses nothing", () => {
  const effects = MODULES.filter(({ text }) => /^import "/m.test(text));
  expect(effects.map(({ file }) => file)).toEqual([]);
  const { sideEffects } = JSON.parse(readFileSync(join(ROOT, "package.json"), "utf8")) as {
    readonly sideEffects?: boolean;
  };
  expect(sideEffects).toBe(false);
});

describe("the bundle tells", () => {
  test.each([
    [`import { readFileSync } from "node:fs"; readFileSync("a");`, "node:fs"],
    [`import { createHash } from "node:crypto"; createHash("md5");`, "node:crypto"],
    [`import { readFileSync } from "fs"; readFileSync("a");`, "fs"],
  ])("of %s", async (contents, name) => {
    expect((await bundled(contents)).faults.join("\n")).toContain(`Could not resolve "${name}"`);
  });

  test("of zod, reached through the records", async () => {
    const bundle = await bundled(`import "./lib/records/schema/workshop.ts";`);
    expect(bundle.packages).toEqual(["zod"]);
    expect(bundle.rooms).toContain("records");
  });
});
