import type { OwnTexts } from "../records/own-texts.ts";
import type { Language } from "../quantities/languages.ts";

/** A start tag that a text follows, and the end tag that may follow the text. */
const TEXT = /<([a-z][a-z0-9]*)((?:\s[^<>]*)?)>([^<]+)(?=(<\/\1>)?)|>([^<]+)/g;
const UNMARKED = /^(?:title|script|style|text|desc|tspan|option|textarea)$/;

const ENTITIES: Readonly<Record<string, string>> = {
  "&amp;": "&",
  "&#39;": "'",
  "&quot;": '"',
  "&lt;": "<",
  "&gt;": ">",
};
const ENTITY = /&(?:amp|#39|quot|lt|gt);/g;
const ESCAPED: Readonly<Record<string, string>> = Object.fromEntries(
  Object.entries(ENTITIES).map(([entity, letter]) => [letter, entity]),
);

/** A page on which each text says its language where that is not the page's: an element that holds no other, else a part of a sentence. */
export function markedTexts(page: string, texts: OwnTexts): string {
  if (texts.size === 0) return page;
  const parts = partsOf(texts);
  return page.replace(
    TEXT,
    (
      found: string,
      name: string | undefined,
      attributes: string | undefined,
      after: string | undefined,
      end: string | undefined,
      beside: string | undefined,
    ) => {
      if (name === undefined) {
        const text = beside ?? "";
        const whole = texts.get(plain(text));
        return `>${whole === undefined ? marked(text, parts) : span(text, whole.language)}`;
      }
      const [said, text] = [attributes ?? "", after ?? ""];
      if (UNMARKED.test(name) || /\slang=/.test(said)) return found;
      const whole = texts.get(plain(text));
      if (whole === undefined) return `<${name}${said}>${marked(text, parts)}`;
      return end === undefined
        ? `<${name}${said}>${span(text, whole.language)}`
        : `<${name}${said} lang="${whole.language}">${text}`;
    },
  );
}

interface Parts {
  /** Texts that a sentence of the program may go on after, by their first letters. */
  readonly starts: ReadonlyMap<string, readonly (readonly [string, Language])[]>;
  /** Texts that stand anywhere in a sentence. */
  readonly within: readonly (readonly [string, Language])[];
}

const HEAD = 12;
const PARTS = new WeakMap<OwnTexts, Parts>();

function partsOf(texts: OwnTexts): Parts {
  const known = PARTS.get(texts);
  if (known !== undefined) return known;
  const starts = new Map<string, (readonly [string, Language])[]>();
  const within: (readonly [string, Language])[] = [];
  for (const [text, { language, isWithin }] of texts) {
    const written = escaped(text);
    if (isWithin) within.push([written, language]);
    else if (written.length > HEAD) {
      const head = written.slice(0, HEAD);
      starts.set(head, [...(starts.get(head) ?? []), [written, language]]);
    }
  }
  const parts = { starts, within };
  PARTS.set(texts, parts);
  return parts;
}

function marked(text: string, { starts, within }: Parts): string {
  const space = /^\s*/.exec(text)?.[0] ?? "";
  const from = text.slice(space.length);
  const [start, language] =
    (starts.get(from.slice(0, HEAD)) ?? [])
      .filter(([own]) => from.startsWith(own))
      .toSorted(([one], [other]) => other.length - one.length)[0] ?? [];
  if (start !== undefined && language !== undefined)
    return `${space}${span(start, language)}${from.slice(start.length)}`;
  return within.reduce(
    (said, [own, of]) => (said.includes(own) ? said.replace(own, () => span(own, of)) : said),
    text,
  );
}

function span(text: string, language: string): string {
  return `<span lang="${language}">${text}</span>`;
}

function plain(text: string): string {
  return text
    .replace(ENTITY, (entity) => ENTITIES[entity] ?? entity)
    .replace(/\s+/g, " ")
    .trim();
}

function escaped(text: string): string {
  return text.replace(/[&'"<>]/g, (letter) => ESCAPED[letter] ?? letter);
}
