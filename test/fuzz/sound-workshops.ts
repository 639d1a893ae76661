import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import type { RecordTexts } from "../support/content-folder.ts";

/** Which part of the demonstration a workshop is: its colours, and of these the let-downs and films that stay. */
interface Part {
  readonly colours: readonly string[];
  readonly ratios: readonly string[];
  readonly filmsUm: readonly number[];
  /** With all that is said of pigments and oils in words, and the papers behind it. */
  readonly isFull?: boolean;
  readonly answer?: string;
}

const answerAbout = (colour: string, other: string): string => `---
question: Why does it take so much oil?
summary: It takes {% figure ${colour}.oil.oilIndexGPer100g %}, since its grains are small.
colours: [${colour}]
theme: tube
claims:
  - { figure: ${colour}.oil.oilIndexGPer100g, above: ${other}.oil.oilIndexGPer100g, by: 1 }
  - { figure: ${colour}.oil.oilIndexGPer100g, between: [5, 150] }
reply: { colours: [${colour}], figures: [oil.oilIndexGPer100g, drying.touchDryDays] }
---
A fine powder has much surface: {% figure ${colour}.oil.oilIndexGPer100g %} against
{% figure ${other}.oil.oilIndexGPer100g %} of {% colour ${other} %}.

{% table colours="${colour}, ${other}" figures="oil.oilIndexGPer100g, oil.cpvc" caption="Oil" %}

{% fold "In the white" %}
{% ladder ${colour} %}
{% endfold %}
`;

/** Between them every form of record and of reading: CSV, CGATS.17, CxF3, L*a*b*, chip; label, legal basis, drier, mixture. */
const PARTS: readonly Part[] = [
  {
    colours: ["lamp-black", "titanium-white"],
    ratios: ["1:5", "1:50"],
    filmsUm: [12, 50],
    isFull: true,
    answer: answerAbout("lamp-black", "titanium-white"),
  },
  { colours: ["cadmium-red", "titanium-white"], ratios: ["1:1", "1:5"], filmsUm: [50] },
  {
    colours: ["chromium-oxide-green", "zinc-white"],
    ratios: ["1:2", "1:20"],
    filmsUm: [50],
    answer: answerAbout("chromium-oxide-green", "zinc-white"),
  },
  {
    colours: ["cerulean-blue", "green-earth", "bismuth-yellow", "titanium-white"],
    ratios: ["1:1", "1:5"],
    filmsUm: [],
    answer: answerAbout("cerulean-blue", "green-earth"),
  },
  {
    colours: ["lead-white", "viridian-quinacridone-black", "slate-grey"],
    ratios: ["1:5", "1:20"],
    filmsUm: [],
  },
];

/** Small workshops that `check` finds nothing wrong with; a small one is read, checked and worked out in little time. */
export function soundWorkshops(): RecordTexts[] {
  return PARTS.map(workshopOf);
}

function workshopOf(part: Part): RecordTexts {
  const colours = part.colours.map(
    (slug) => [`colours/${slug}.md`, colourText(slug, part)] as const,
  );
  const workshop = read("workshop.yaml")
    .replace(/^(?:leadingPair|firstQuestions):.*\n/gm, "")
    .replace(/^pairs:\n(?: .*\n)+/m, "")
    .replace(/^strengthReference:.*\n/m, "")
    .replace(/^ {2}- \{ name: (?:105x74|strip),.*\n/gm, "");
  const texts = [workshop, ...colours.map(([, text]) => text)];
  const named = (folder: string): (readonly [string, string])[] =>
    readdirSync(join("content", folder))
      .filter((file) => texts.some((text) => mentions(text, file.replace(/\.\w+$/, ""))))
      .map((file) => {
        const text = read(`${folder}/${file}`);
        return [`${folder}/${file}`, part.isFull === true ? text : terse(text)] as const;
      });
  const things = [...named("pigments"), ...named("vehicles")];
  texts.push(...things.map(([, text]) => text));
  const readings = readdirSync(join("content", "readings"))
    .filter((file) => texts.some((text) => text.includes(`reading: ${file}`)))
    .map((file) => [`readings/${file}`, trimmed(file, texts)] as const);
  const prices = read("prices.csv")
    .split("\n")
    .filter((row, i) => i < 2 || part.colours.includes(row.split(",")[0] ?? ""));
  return Object.fromEntries([
    ["workshop.yaml", workshop],
    ["prices.csv", `${prices.join("\n")}\n`],
    ...colours,
    ...things,
    ...named("sources"),
    ...readings,
    ...(part.answer === undefined ? [] : [["answers/so-much-oil.md", part.answer] as const]),
  ]);
}

/** A pigment or an oil without what is said of it in words. */
function terse(text: string): string {
  return text
    .replace(/^#.*\n/gm, "")
    .replace(/^(?:whatItIs|origin|chemistry|benchTest|note|supplier):.*\n(?: {2}.*\n)*/gm, "")
    .replace(/^benchTestWith:.*\n/gm, "")
    .replace(/,? source: [\w-]+(?= \})/g, "")
    .replace(/^ +source: [\w-]+\n/gm, "");
}

function read(path: string): string {
  return readFileSync(join("content", path), "utf8");
}

function mentions(text: string, slug: string): boolean {
  return new RegExp(`(?<![\\w-])${slug}(?![\\w-])`).test(text);
}

/** A colour's record without the let-downs and films that the part leaves out. */
function colourText(slug: string, { colours, ratios, filmsUm }: Part): string {
  const kept = read(`colours/${slug}.md`)
    .replace(/^standard:.*\n/m, "")
    .split("\n")
    .filter((line) => {
      const tint = /^ {2}- \{ white: ([\w-]+), massRatio: "([\d:]+)"/.exec(line);
      const film = /^ {2}- \{ ground: \w+, filmThicknessUm: (\d+)/.exec(line);
      const trial = /tintedWith: ([\w-]+)/.exec(line);
      if (trial !== null) return colours.includes(trial[1] ?? "");
      if (tint !== null) return colours.includes(tint[1] ?? "") && ratios.includes(tint[2] ?? "");
      return film === null || filmsUm.includes(Number(film[1]));
    })
    .join("\n");
  return kept.replace(/^(?:tints|films|dryingTrials):\n(?! {2})/gm, "");
}

/** Readings with the columns, sets or objects that some record names. */
function trimmed(file: string, texts: readonly string[]): string {
  const text = read(`readings/${file}`);
  const isNamed = (name: string): boolean => texts.some((record) => record.includes(name));
  if (file.endsWith(".cxf"))
    return text.replaceAll(
      /\s*<cc:Object [^>]*Name="([^"]*)"[^]*?<\/cc:Object>/g,
      (object, name: string) => (isNamed(name) ? object : ""),
    );
  if (file.endsWith(".txt")) {
    const kept = text.split("\n").filter((line) => {
      const name = /^\w+\t"([^"]+)"\t/.exec(line)?.[1];
      return name === undefined || isNamed(name);
    });
    const sets = kept.filter((line) => /^\w+\t"[^"]+"\t/.test(line)).length;
    return kept.join("\n").replace(/NUMBER_OF_SETS\t\d+/, `NUMBER_OF_SETS\t${sets}`);
  }
  if (!file.endsWith(".csv")) return text;
  const rows = text.split("\n").map((row) => row.split(","));
  const isKept = (rows[0] ?? []).map((name, i) => i === 0 || isNamed(name));
  return rows.map((row) => row.filter((_, i) => isKept[i]).join(",")).join("\n");
}
