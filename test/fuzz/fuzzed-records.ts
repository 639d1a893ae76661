import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import type { RecordTexts } from "../support/content-folder.ts";

/** Numbers from 0 to 1, the same for a seed: mulberry32, in the public domain. */
export type Chance = () => number;
export function chanceOf(seed: number): Chance {
  let state = seed >>> 0;
  return () => {
    state = (state + 0x6d2b79f5) >>> 0;
    let mixed = Math.imul(state ^ (state >>> 15), 1 | state);
    mixed = (mixed + Math.imul(mixed ^ (mixed >>> 7), 61 | mixed)) ^ mixed;
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 4_294_967_296;
  };
}

const chosen = <T>(chance: Chance, among: readonly T[]): T => {
  const one = among[Math.floor(chance() * among.length)];
  if (one === undefined) throw new RangeError("Nothing to choose from");
  return one;
};

const COLOURS = ["lamp-black", "titanium-white", "cadmium-red", "chromium-oxide-green"];

/** An answer that uses figures, tables, folds and claims of these colours. */
const ANSWER = `---
question: Why does lamp black take so much oil?
summary: It takes {% figure lamp-black.oil.oilIndexGPer100g %}, since its grains are small.
colours: [lamp-black]
claims:
  - { figure: lamp-black.oil.oilIndexGPer100g, above: 50 }
---
A fine powder has much surface: {% figure lamp-black.oil.oilIndexGPer100g %} against
{% figure titanium-white.oil.oilIndexGPer100g %} of titanium white.
`;

/** Part of the demonstration with every form of record and of reading: CSV, CGATS and CxF. */
export function soundRecords(): RecordTexts {
  const read = (path: string): string => readFileSync(join("content", path), "utf8");
  const all = (folder: string): string[] =>
    readdirSync(join("content", folder)).map((file) => `${folder}/${file}`);
  const record = (path: string): string =>
    read(path)
      .replace(/^(?:leadingPair|standard):.*\n/m, "")
      .replace(/^pairs:\n(?: .*\n)+/m, "")
      .replace(/^.*\b(?:lead|zinc)-white\b.*\n/gm, "");
  const colours = COLOURS.map(
    (slug) => [`colours/${slug}.md`, record(`colours/${slug}.md`)] as const,
  );
  const isUsed = (path: string): boolean => {
    const slug = path.replace(/^.*\/|\.\w+$/g, "");
    return colours.some(([, text]) => new RegExp(`\\b${slug}\\b`).test(text));
  };
  return Object.fromEntries([
    ["workshop.yaml", record("workshop.yaml")],
    ...colours,
    ["answers/so-much-oil.md", ANSWER],
    ...[...all("pigments"), ...all("vehicles")].filter(isUsed).map((path) => [path, record(path)]),
    ...all("sources").map((path) => [path, read(path)]),
    ...all("readings")
      .filter(
        (path) =>
          path.includes("opacity-chart") ||
          COLOURS.some((slug) => path.startsWith(`readings/${slug}.`)),
      )
      .map((path) => [path, read(path)]),
  ]) as RecordTexts;
}

/** What slips, scripts and broken programs write. */
const TOKENS = [
  "&a [*a]",
  "*a",
  "- ".repeat(60),
  "{% figure lamp-black.drying.class %}",
  "{% ",
  "{{ ",
  "---\n",
  "\t",
  "\u202e",
  "\u200b",
  "\ufeff",
  "\0",
  "黒",
  "🎨",
  "<script>",
  "]]>",
  "<!ENTITY x SYSTEM 'file:///etc/passwd'>",
  "BEGIN_DATA",
  "null",
  "true",
  "[]",
  "{}",
  "''",
  "!!binary x",
  "!!set {a}",
  "<<: *a",
  "2026-13-45",
  "__proto__",
  "constructor",
  "x".repeat(5000),
  ",,,,",
  ";",
  '"',
] as const;

/** From the smallest to the largest that a number can be, and what is none. */
const NUMBERS = [
  "1e-300",
  "1e300",
  "1.7e308",
  "5e-324",
  "1e-9",
  "1e9",
  "1e21",
  "-1",
  "-0",
  "0",
  "0.0001",
  "1e6",
  ".inf",
  "-.inf",
  ".nan",
  "0x1f",
  "007",
  "1,5",
  "1_000",
  "[1, 2]",
  "[2, 1]",
  "{ value: 3, uncertainty: 1e-300 }",
  "{ value: 3, uncertainty: 8 }",
  "{ value: [1, 1] }",
] as const;

type Mutation = (text: string, chance: Chance) => string;

const spot = (text: string, chance: Chance): number => Math.floor(chance() * (text.length + 1));
const withLines =
  (change: (lines: string[], at: number, chance: Chance) => string[]): Mutation =>
  (text, chance) => {
    const lines = text.split("\n");
    return change(lines, Math.floor(chance() * lines.length), chance).join("\n");
  };

const MUTATIONS: readonly Mutation[] = [
  (text, chance) => {
    const at = spot(text, chance);
    return text.slice(0, at) + chosen(chance, TOKENS) + text.slice(at);
  },
  (text, chance) => {
    const [a, b] = [spot(text, chance), spot(text, chance)].sort((one, other) => one - other);
    return (b ?? 0) - (a ?? 0) > 400
      ? text.slice(0, a) + text.slice((a ?? 0) + 3)
      : text.slice(0, a) + text.slice(b);
  },
  (text, chance) => {
    const numbers = [...text.matchAll(/(?<![\w.-])-?\d+(?:\.\d+)?(?![\w.-])/g)];
    if (numbers.length === 0) return text;
    const found = chosen(chance, numbers);
    return (
      text.slice(0, found.index) +
      chosen(chance, NUMBERS) +
      text.slice(found.index + found[0].length)
    );
  },
  withLines((lines, at) => lines.toSpliced(at, 1)),
  withLines((lines, at) => lines.toSpliced(at, 0, lines[at] ?? "")),
  withLines((lines, at, chance) =>
    lines.with(at, `${" ".repeat(Math.floor(chance() * 5))}${lines[at] ?? ""}`),
  ),
  withLines((lines, at, chance) => {
    const other = Math.floor(chance() * lines.length);
    return lines.with(at, lines[other] ?? "").with(other, lines[at] ?? "");
  }),
  withLines((lines, at, chance) =>
    lines.with(
      at,
      (lines[at] ?? "").replace(/:.*$/, `: ${chosen(chance, [...TOKENS, ...NUMBERS])}`),
    ),
  ),
];

/** One file of sound records with one to three mutations. */
export function mutated(
  sound: RecordTexts,
  chance: Chance,
): { readonly path: string; readonly text: string } {
  const path = chosen(chance, Object.keys(sound));
  let text = sound[path] ?? "";
  for (let times = 1 + Math.floor(chance() * 3); times > 0; times--)
    text = chosen(chance, MUTATIONS)(text, chance);
  return { path, text };
}
