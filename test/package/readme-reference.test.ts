import { existsSync, readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, test } from "vitest";
import { SHORTCODES } from "../../lib/answers/shortcode-table.ts";
import { recordSchemas } from "../../lib/records/json-schemas.ts";
import { mullstone } from "../support/mullstone.ts";
import { firstColumn, README, section } from "./readme.ts";

const ROOT = join(import.meta.dirname, "../..");
const DEVELOPERS = readFileSync(join(ROOT, "DEVELOPERS.md"), "utf8");

interface Schema {
  readonly properties?: Readonly<Record<string, Schema>>;
  readonly anyOf?: readonly Schema[];
  readonly items?: Schema;
  readonly enum?: readonly string[];
}

const schemaOf = (kind: string): Schema =>
  recordSchemas().find(({ name }) => name === kind)?.schema ?? {};

/** Every key at any depth. */
function keysIn({ properties = {}, anyOf = [], items }: Schema): string[] {
  return [
    ...Object.keys(properties),
    ...[...Object.values(properties), ...anyOf, ...(items === undefined ? [] : [items])].flatMap(
      keysIn,
    ),
  ];
}

/** Every word of a closed set, at any depth. */
function wordsIn({ properties = {}, anyOf = [], items, enum: words = [] }: Schema): string[] {
  return [
    ...words,
    ...[...Object.values(properties), ...anyOf, ...(items === undefined ? [] : [items])].flatMap(
      wordsIn,
    ),
  ];
}

describe.each([
  ["workshop", "### `workshop.yaml`"],
  ["pigment", "### `pigments/NAME.yaml`"],
  ["vehicle", "### `vehicles/NAME.yaml`"],
  ["colour", "### `colours/NAME.md`"],
  ["source", "### `sources/NAME.yaml`"],
  ["answer", "### `answers/NAME.md`"],
])("the table of a %s", (kind, heading) => {
  const schema = schemaOf(kind);

  test("has every key of its schema and no other", () => {
    const readingKeys = firstColumn(heading).filter(
      (key) => !Object.hasOwn(schema.properties ?? {}, key),
    );
    expect(readingKeys).toEqual([]);
    expect(
      Object.keys(schema.properties ?? {}).filter((key) => !firstColumn(heading).includes(key)),
    ).toEqual([]);
  });

  test("names every inner key and every word of a closed set, there or in the parts that it points to", () => {
    const text = section("## Records");
    expect(keysIn(schema).filter((key) => !new RegExp(`\\b${key}\\b`).test(text))).toEqual([]);
    expect(wordsIn(schema).filter((word) => !text.includes(word))).toEqual([]);
  });
});

test("the table of shortcodes has each with its values and what it gives, and the line below says which stand in a sentence", () => {
  const text = section("### Shortcodes of an answer");
  const rows = text
    .split("\n")
    .filter((line) => line.startsWith("| `"))
    .map((line) => line.slice(2, -2).split(" | "));
  expect(rows.map(([name]) => name)).toEqual(SHORTCODES.map(({ name }) => `\`${name}\``));
  expect(rows.map(([, , gives]) => gives?.replaceAll("\\*", "*"))).toEqual(
    SHORTCODES.map(({ does }) => does),
  );
  expect(rows.map(([, values]) => values)).toEqual(
    SHORTCODES.map(({ args }) =>
      args
        .map(({ name, kind }) =>
          name === "" ? `${/^[ao]/.test(kind) ? "an" : "a"} ${kind}` : `\`${name}\``,
        )
        .join(", "),
    ),
  );
  expect(
    SHORTCODES.slice(0, 3).every(({ place }) => place === "in a sentence") &&
      SHORTCODES.slice(3).every(({ place }) => place === "on a line of its own"),
  ).toBe(true);
});

describe("commands", () => {
  test("are those of the command line, with its options", async () => {
    const { output } = await mullstone(["--help"]);
    const commands = [...output.matchAll(/^ {2}mullstone (\w+)/gm)].map(
      ([, command = ""]) => command,
    );
    const options = [...output.matchAll(/^ {2}(--[a-z]+)/gm)].map(([, option = ""]) => option);
    const text = section("## Commands");
    expect(commands.length).toBeGreaterThan(3);
    expect(
      firstColumn("## Commands")
        .map((code) => code.replace(/^npm (?:run )?/, "").replace(/ .*/, ""))
        .filter((code) => !code.startsWith("--")),
    ).toEqual(commands);
    expect([...text.matchAll(/^\| `(--[a-z]+)/gm)].map(([, option]) => option)).toEqual([
      ...options,
      "--help",
    ]);
  });
});

describe.each([
  ["README", README],
  ["DEVELOPERS", DEVELOPERS],
])("%s", (_, text) => {
  test("names files that are there", () => {
    const named = [
      ...text.matchAll(/`((?:lib|test|assets|templates|bin|content)\/[\w./*-]+)`/g),
    ].map(([, path = ""]) => path.replace(/\/?[\w-]*\*.*$/, ""));
    expect(named.length).toBeGreaterThan(3);
    expect(named.filter((path) => !existsSync(join(ROOT, path)))).toEqual([]);
  });

  test("names scripts that package.json has", () => {
    const { scripts } = JSON.parse(readFileSync(join(ROOT, "package.json"), "utf8")) as {
      scripts: Record<string, string>;
    };
    const named = [...text.matchAll(/npm run ([a-z-]+)/g)].map(([, name = ""]) => name);
    expect(named.length).toBeGreaterThan(1);
    expect(named.filter((name) => scripts[name] === undefined)).toEqual([]);
  });
});

test("DEVELOPERS gives every room of lib/ and every dependency its line, and each is pinned", () => {
  const rooms = [...DEVELOPERS.matchAll(/^\| `([a-z]+)` \|/gm)].map(([, room = ""]) => room);
  expect(rooms.toSorted()).toEqual(
    readdirSync(join(ROOT, "lib"), { withFileTypes: true })
      .flatMap((entry) => (entry.isDirectory() ? [entry.name] : []))
      .toSorted(),
  );
  const { dependencies, devDependencies } = JSON.parse(
    readFileSync(join(ROOT, "package.json"), "utf8"),
  ) as Record<"dependencies" | "devDependencies", Record<string, string>>;
  const packages = { ...dependencies, ...devDependencies };
  const named = DEVELOPERS.slice(DEVELOPERS.indexOf("| package | for |"))
    .split("\n\n")[0]
    ?.split("\n")
    .slice(2)
    .flatMap((line) => line.split(" | ")[0]?.replace("| ", "").split(", ") ?? []);
  expect(named?.toSorted()).toEqual(Object.keys(packages).toSorted());
  for (const [name, version] of Object.entries(packages))
    expect(version, name).toMatch(/^\d+\.\d+\.\d+$/);
});
