import { describe, expect, test } from "vitest";
import { importsOf, libModules } from "./lib-modules.ts";

const SCIENCES = [
  "colorimetry",
  "optics",
  "formulation",
  "permanence",
  "drying",
  "hazard",
  "patches",
];

/** Rooms from the bottom up: one may import from any below it, and from none of its own height but those named next. */
const FLOORS: readonly (readonly string[])[] = [
  ["diagnostics"],
  ["kept"],
  ["sources"],
  ["quantities"],
  SCIENCES,
  ["lots", "mixing"],
  ["knowledge"],
  ["records"],
  ["exchange"],
  ["photographs"],
  ["sheet"],
  ["collection"],
  ["claims"],
  ["planning"],
  ["changes"],
  ["words"],
  ["present"],
  ["plots"],
  ["blocks"],
  ["pages"],
  ["answers", "print"],
  ["pictures", "workshop"],
  ["site"],
  ["publish"],
  ["commands"],
];
/** The spectral sciences look up colours; what only wires Eleventy belongs to the site that it wires. */
const FURTHER: Readonly<Record<string, readonly string[]>> = {
  optics: ["colorimetry"],
  permanence: ["colorimetry"],
  patches: ["colorimetry"],
  site: ["eleventy.config.ts"],
  commands: ["eleventy.config.ts"],
};

function allowed(room: string): Set<string> {
  const floor = FLOORS.findIndex((rooms) => rooms.includes(room));
  return new Set([room, ...FLOORS.slice(0, floor).flat(), ...(FURTHER[room] ?? [])]);
}

/** Packages that belong to few rooms; `munsell` to one file. */
const PACKAGES: Readonly<Record<string, RegExp>> = {
  munsell: /^lib\/colorimetry\/munsell-inversion\.ts$/,
  culori: /^lib\/colorimetry\//,
  "ml-matrix": /^lib\/patches\//,
  zod: /^lib\/(?:knowledge|records)\//,
  yaml: /^lib\/(?:knowledge|records)\//,
  aws4fetch: /^lib\/publish\/bucket-target\.ts$/,
  mrmime: /^lib\/publish\/bucket-target\.ts$/,
  diff: /^lib\/commands\/migrate\.ts$/,
  fflate: /^lib\/pictures\/listing-assets\.ts$/,
  tar: /^lib\/publish\/packed-folder\.ts$/,
  saxes: /^lib\/records\/readings\//,
  "csv-parse": /^lib\/(?:knowledge|records\/readings)\//,
  "csv-stringify": /^lib\/(?:site|records\/readings)\//,
  acorn: /^lib\/site\//,
  esbuild: /^lib\/site\//,
  "@11ty/eleventy": /^lib\/site\//,
  nunjucks: /^lib\/site\//,
  pdfkit: /^lib\/print\//,
  sharp: /^lib\/(?:photographs\/|pictures\/)/,
  qr: /^lib\/print\/qr-figure\.ts$/,
  hyphen: /^lib\/print\/hyphenation\.ts$/,
  jsbarcode: /^lib\/print\/ean-symbol\.ts$/,
  send: /^lib\/site\/site-server\.ts$/,
  "markdown-it": /^lib\/(?:pages\/markdown|answers\/answer-markdown)\.ts$/,
  "node:crypto":
    /^lib\/(?:kept\/[\w-]+|sheet\/revision|site\/build-lock|site\/theory-cache|site\/work-folder)\.ts$/,
};

/** `csv-parse` of "csv-parse/sync", `@11ty/eleventy` of a path in it; Node's own modules keep their whole name. */
function packageOf(specifier: string): string {
  return specifier.startsWith("node:")
    ? specifier
    : specifier
        .split("/")
        .slice(0, specifier.startsWith("@") ? 2 : 1)
        .join("/");
}

/** Rooms that may touch files and whatever else Node has. */
const NODE_ROOMS = new Set([
  "kept",
  "knowledge",
  "records",
  "photographs",
  "pictures",
  "print",
  "publish",
  "site",
  "commands",
]);

const MODULES = libModules();

test("modules were found in every room", () => {
  const rooms = new Set(MODULES.map(({ room }) => room));
  expect(FLOORS.flat().filter((room) => !rooms.has(room))).toEqual([]);
  expect([...rooms].filter((room) => !FLOORS.flat().includes(room))).toEqual([]);
});

describe.each(FLOORS.flat().map((room) => ({ room })))("$room", ({ room }) => {
  const modules = MODULES.filter((module) => module.room === room);
  const offending = (
    wrong: (file: string, imported: (typeof MODULES)[number]["imports"][number]) => boolean,
  ): string[] =>
    modules.flatMap(({ file, imports }) =>
      imports
        .filter((imported) => wrong(file, imported))
        .map(({ specifier }) => `${file} <- ${specifier}`),
    );

  test("imports only from rooms below it", () => {
    const may = allowed(room);
    expect(offending((_, { target }) => target !== undefined && !may.has(target.room))).toEqual([]);
  });

  test("names modules of ours with their ending, as Node wants them", () => {
    expect(
      offending((_, { target }) => target !== undefined && !target.file.endsWith(".ts")),
    ).toEqual([]);
  });

  test("imports only packages that belong to it", () => {
    expect(
      offending((file, { specifier, target }) => {
        if (target !== undefined) return false;
        const place = PACKAGES[packageOf(specifier)];
        return place === undefined
          ? !(specifier.startsWith("node:") && NODE_ROOMS.has(room))
          : !place.test(file);
      }),
    ).toEqual([]);
  });
});

test("present takes nothing but types from records", () => {
  const crossing = MODULES.filter(({ room }) => room === "present").flatMap(({ file, imports }) =>
    imports
      .filter(({ target, typeOnly }) => target?.room === "records" && !typeOnly)
      .map(({ specifier }) => `${file} <- ${specifier}`),
  );
  expect(crossing).toEqual([]);
});

test("one file alone imports npm munsell", () => {
  expect(
    MODULES.filter(({ imports }) => imports.some(({ specifier }) => specifier === "munsell")).map(
      ({ file }) => file,
    ),
  ).toEqual(["lib/colorimetry/munsell-inversion.ts"]);
});

test("no modules import one another round in a circle, types left out", () => {
  const next = new Map(
    MODULES.map(({ file, imports }) => [
      file,
      imports.flatMap(({ target, typeOnly }) =>
        target === undefined || typeOnly ? [] : [target.file],
      ),
    ]),
  );
  const done = new Set<string>();
  const circles: string[] = [];
  const visit = (file: string, trail: readonly string[]): void => {
    if (trail.includes(file))
      circles.push([...trail.slice(trail.indexOf(file)), file].join(" -> "));
    else if (!done.has(file))
      for (const target of next.get(file) ?? []) visit(target, [...trail, file]);
    done.add(file);
  };
  for (const { file } of MODULES) visit(file, []);
  expect(circles).toEqual([]);
});

describe("what counts as an import", () => {
  const of = (text: string): [string, boolean][] =>
    importsOf(`${import.meta.dirname}/../../lib/optics/example.ts`, text).map(
      ({ specifier, typeOnly }) => [specifier, typeOnly],
    );

  test.each<[string, [string, boolean][]]>([
    [`import { a } from "../records/a.ts";`, [["../records/a.ts", false]]],
    [`import type { A } from "../records/a.ts";`, [["../records/a.ts", true]]],
    [`import { type A, type B } from "../records/a.ts";`, [["../records/a.ts", true]]],
    [`import { type A, b } from "../records/a.ts";`, [["../records/a.ts", false]]],
    [`import a, { type A } from "a";`, [["a", false]]],
    [`import * as all from "a";`, [["a", false]]],
    [`import "a";`, [["a", false]]],
    [`export { a } from "a";`, [["a", false]]],
    [`export type { A } from "a";`, [["a", true]]],
    [`export * from "a";`, [["a", false]]],
    [`const a = await import("a");`, [["a", false]]],
    [`const a = await import("a" as string);`, [["a", false]]],
    [`let a: import("a").A;`, [["a", true]]],
    [`// import { a } from "a";\nconst text = 'import "a"';`, []],
  ])("%s", (text, found) => {
    expect(of(text)).toEqual(found);
  });

  test("a target has its room", () => {
    expect(
      importsOf(
        `${import.meta.dirname}/../../lib/site/example.ts`,
        `import "../records/schema/terms.ts"; import "../../eleventy.config.ts";`,
      ).map(({ target }) => target),
    ).toEqual([
      { file: "lib/records/schema/terms.ts", room: "records" },
      { file: "eleventy.config.ts", room: "eleventy.config.ts" },
    ]);
  });
});
