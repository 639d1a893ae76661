import { BIBLIOGRAPHY } from "../sources/bibliography.ts";
import type { Records } from "./records.ts";
import type { Language } from "../quantities/languages.ts";

/** Texts of a page that are not in its language. */
export type OwnTexts = ReadonlyMap<
  string,
  {
    readonly language: Language;
    /** It stands inside sentences, wherever it is told. */
    readonly isWithin: boolean;
  }
>;

/** What records say in free words, by key; everything else is a figure, a code, or a word of a closed set. */
const FREE =
  /^(?:name|whatItIs|origin|chemistry|mineral|shape|benchTest|about|heading|why|method|citation|note|contact|address|telephone)$/;
/** Of these, what sentences of the program repeat. */
const WITHIN = /^(?:poisonCentre|exposure|standard|buyers)$/;

/**
 * What a workshop says in its own language and nobody translated into the page's, so that a page can say in which
 * language it is.
 * @param own language that the records are written in.
 * @param nameOf how a page cites a source in passing, by its key.
 * @param systemNames names of an English system of colour names that pages print.
 */
export function ownTexts(
  records: Records,
  language: Language,
  own: Language,
  nameOf: (key: string) => string,
  systemNames: readonly string[],
): OwnTexts {
  const { workshop, pigments, vehicles, colours, answers, sources } = records;
  const texts = new Map<string, { readonly language: Language; readonly isWithin: boolean }>();
  const translated = new Set<string>();
  const gather = (value: unknown, key: string): void => {
    if (typeof value === "string") {
      const isWithin = WITHIN.test(key);
      if ((isWithin || FREE.test(key)) && /\p{L}/u.test(value))
        texts.set(lineOf(value), { language: own, isWithin });
    } else if (Array.isArray(value)) value.forEach((each) => gather(each, key));
    else if (typeof value === "object" && value !== null)
      for (const [name, part] of Object.entries(value)) {
        if (name !== "translations") gather(part, name);
        else gatherTranslated((part as Partial<Record<Language, unknown>>)[language]);
      }
  };
  const gatherTranslated = (value: unknown): void => {
    if (typeof value === "string") translated.add(lineOf(value));
    else if (typeof value === "object" && value !== null)
      Object.values(value).forEach(gatherTranslated);
  };
  if (language !== own) {
    gather(workshop, "");
    for (const all of [pigments, vehicles, colours, answers])
      for (const { record } of all.values()) gather(record, "");
    for (const [key, { citation, note }] of sources)
      if (!(key in BIBLIOGRAPHY)) {
        gather([citation, note], "note");
        if (citation.startsWith(nameOf(key))) gather(nameOf(key), "name");
      }
  }
  if (language !== "en")
    for (const text of [...englishTexts(records, nameOf), ...systemNames])
      texts.set(text, { language: "en", isWithin: false });
  for (const text of translated) texts.delete(text);
  return texts;
}

function lineOf(text: string): string {
  return text.replace(/\s+/g, " ").trim();
}

/** What the program itself says in English everywhere: its bibliography, and pigments by their handbook names. */
function englishTexts({ knowledge }: Records, nameOf: (key: string) => string): string[] {
  const cited = Object.entries(BIBLIOGRAPHY).flatMap(([key, { citation, note = "", short }]) => [
    citation,
    note,
    ...(short !== undefined || citation.startsWith(nameOf(key)) ? [nameOf(key)] : []),
  ]);
  const named = knowledge.names.map((name) => knowledge.pigment(name).identity?.name ?? "");
  return [...cited, ...named].filter((text) => text !== "").map(lineOf);
}
