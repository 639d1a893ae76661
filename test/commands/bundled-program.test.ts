import {
  cpSync,
  mkdirSync,
  mkdtempSync,
  readdirSync,
  readFileSync,
  statSync,
  symlinkSync,
  writeFileSync,
} from "node:fs";
import { join } from "node:path";
import { beforeAll, describe, expect, inject, test } from "vitest";
import { BIN, mullstone, type CommandRun } from "../support/mullstone.ts";

const PACKAGE_ROOT = join(BIN, "../..");

/** A copy of the package, whose bundles are the test's own. */
function copied(): string {
  const copy = mkdtempSync(join(inject("scratch"), "package-"));
  for (const name of ["lib", "eleventy.config.ts", "package.json"])
    cpSync(join(PACKAGE_ROOT, name), join(copy, name), { recursive: true });
  symlinkSync(join(PACKAGE_ROOT, "node_modules"), join(copy, "node_modules"));
  return copy;
}

/** The command of two modules, one of which is loaded late, with a rule of other letters than ASCII's: bundled as the whole is, and sooner. */
const COMMAND_LINE = `const HELP = /^[µμ°]$/.test("\\u03bc") ? "mullstone start\\n" : "other letters\\n";
export async function runCommand(asked: readonly string[]): Promise<number> {
  const { CODE } = await import("./code.ts");
  if (asked.includes("long")) process.cpuUsage = () => ({ user: 60e6, system: 0 });
  process.stdout.write(HELP);
  return CODE;
}
`;

/** A package with that command in place of ours, started and bundled by our own modules. */
function smallPackage(): string {
  const small = mkdtempSync(join(inject("scratch"), "small-package-"));
  const started = [
    "mullstone.js",
    ...["program", "bundled-program", "kept-code"].map((name) => `commands/${name}.js`),
  ];
  for (const name of ["eleventy.config.ts", "package.json", ...started.map((one) => `lib/${one}`)])
    cpSync(join(PACKAGE_ROOT, name), join(small, name), { recursive: true });
  symlinkSync(join(PACKAGE_ROOT, "node_modules"), join(small, "node_modules"));
  writeFileSync(join(small, "lib/commands/command-line.ts"), COMMAND_LINE);
  writeFileSync(join(small, "lib/commands/code.ts"), "export const CODE = 0;\n");
  mkdirSync(join(small, "lib/site"));
  for (const name of ["site-thread-work", "work-thread"])
    writeFileSync(join(small, `lib/site/${name}.ts`), "export {};\n");
  return small;
}

const copy = smallPackage();
const kept = join(copy, ".cache");
const bundles = (): string[] => readdirSync(kept).filter((name) => name.startsWith("program-"));
const help = (): Promise<CommandRun> =>
  mullstone(["--help"], { bin: join(copy, "lib", "mullstone.js") });
const source = join(copy, "lib", "commands", "command-line.ts");

beforeAll(async () => {
  expect((await help()).output).toContain("mullstone start");
});

/** One folder of bundles, as it grows. */
describe("bundles beside the program", { shuffle: false }, () => {
  test("the program is bundled once, whole, with nothing half-made beside it", async () => {
    const before = bundles();
    expect(before).toEqual([expect.stringMatching(/^program-[0-9a-f]{16}$/)]);
    await Promise.all([help(), help()]);
    expect(bundles()).toEqual(before);
  });

  test("a bundle that was damaged is never run: it is made anew", async () => {
    const entry = join(kept, bundles()[0] ?? "", "program.cjs");
    const whole = readFileSync(entry, "utf8");
    for (const damage of [
      whole.slice(0, 200),
      whole.replace("mullstone start", "mullstone stArt"),
    ]) {
      writeFileSync(entry, damage);
      const { code, output, complaints } = await help();
      expect([code, complaints]).toEqual([0, ""]);
      expect(output).toContain("mullstone start");
      expect(readFileSync(entry, "utf8")).toBe(whole);
    }
  });

  test("what V8 made of a bundle is kept beside it, and made anew where it was damaged", async () => {
    const folder = join(kept, bundles()[0] ?? "");
    const code = (): string => {
      const [name = "", ...others] = readdirSync(folder).filter((one) => one.startsWith("code-"));
      expect([name, others]).toEqual([expect.stringMatching(/^code-command-\d+\.kept$/), []]);
      return join(folder, name);
    };
    const whole = readFileSync(code());
    for (const damaged of [
      whole.subarray(0, -1),
      whole.map((byte, i) => (i === 500 ? ~byte : byte)),
    ]) {
      writeFileSync(code(), damaged);
      const { code: exit, output, complaints } = await help();
      expect([exit, output, complaints]).toEqual([0, "mullstone start\n", ""]);
      expect(readFileSync(code()).equals(damaged)).toBe(false);
    }
    const before = statSync(code(), { bigint: true });
    await help();
    // What is as it was kept is taken, and not written again.
    expect(statSync(code(), { bigint: true }).ino).toBe(before.ino);
  });

  test("what a long run has left of it counts until one is over soon", async () => {
    const folder = join(kept, bundles()[0] ?? "");
    const states = (): string[] =>
      readdirSync(folder)
        .filter((name) => /^code-(left-)?work-\d+\.kept$/.test(name))
        .map((name) => `${name.replace(/-\d+/, "")} ${statSync(join(folder, name)).ino}`);
    const run = async (...args: readonly string[]): Promise<string[]> => {
      expect(
        await mullstone(["work", ...args], { bin: join(copy, "lib", "mullstone.js") }),
      ).toEqual({ code: 0, output: "mullstone start\n", complaints: "" });
      return states();
    };
    const left = await run("long");
    expect(left).toEqual([expect.stringMatching(/^code-left-work\.kept /)]);
    expect(await run("long")).toEqual(left);
    const both = await run();
    expect(both).toEqual([...left, expect.stringMatching(/^code-work\.kept /)]);
    // Then no run makes it again.
    expect([await run(), await run("long")]).toEqual([both, both]);
  });

  test("an edited table makes another program, whose modules are others for what is kept of them", async () => {
    const listOf = (bundle: string): Record<string, string> =>
      JSON.parse(readFileSync(join(kept, bundle, "modules.json"), "utf8")) as Record<
        string,
        string
      >;
    const [before = ""] = bundles();
    const module = "lib/commands/code.ts";
    expect(listOf(before)[module]).toMatch(/^[0-9a-f]{16}$/);
    writeFileSync(join(copy, "lib", "commands", "densities.csv"), "name,gPerCm3\nchalk,2.7\n");
    await help();
    const after = bundles().find((name) => name !== before) ?? "";
    expect(listOf(after)[module]).toMatch(/^[0-9a-f]{16}$/);
    expect(listOf(after)[module]).not.toBe(listOf(before)[module]);
  });

  test("an edited module is run as it is now, and old bundles are let go", async () => {
    const text = readFileSync(source, "utf8");
    for (const edition of [1, 2, 3]) {
      writeFileSync(source, text.replace("mullstone start", `edition ${edition}`));
      expect((await help()).output).toBe(`edition ${edition}\n`);
    }
    expect(bundles()).toHaveLength(3);
  });
});

test("where the package can't be written, the program runs from its sources", async () => {
  const fixed = copied();
  // A plain file stands where the bundles' folder would: no permission is needed to see it fail.
  writeFileSync(join(fixed, ".cache"), "");
  const { code, output } = await mullstone(["--help"], {
    bin: join(fixed, "lib", "mullstone.js"),
  });
  expect([code, output]).toEqual([0, expect.stringContaining("mullstone start")]);
});

test("a package that is loaded late is asked of whoever loads the bundle, whose script can import none", () => {
  const late = readdirSync(join(PACKAGE_ROOT, "lib"), { recursive: true, encoding: "utf8" })
    .filter((name) => name.endsWith(".ts") && name !== "kept/beside-program.ts")
    .filter((name) =>
      /\bimport\((?!\s*["']\.)/.test(readFileSync(join(PACKAGE_ROOT, "lib", name), "utf8")),
    );
  expect(late).toEqual([]);
});
