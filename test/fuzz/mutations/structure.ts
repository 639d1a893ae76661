import { parse, stringify } from "yaml";
import { chosen, index, type Chance } from "../chance.ts";
import { LETTERS } from "./tokens.ts";

type Holder = Record<string, unknown>;
interface Place {
  readonly holder: Holder;
  readonly key: string;
}

/** A record's data after a change, written again above the text below it. */
export function withData(text: string, change: (data: unknown) => void): string {
  const { sound, body } = parted(text);
  const data = structuredClone(sound);
  change(data);
  const written = stringify(data, { lineWidth: 0 });
  return body === undefined ? written : `---\n${written}${body}`;
}

interface Parted {
  readonly sound: unknown;
  /** From the line that closes the front matter on; only a Markdown record has one. */
  readonly body: string | undefined;
}

const parts = new Map<string, Parted>();

/** The same few sound records are taken apart again and again. */
function parted(text: string): Parted {
  const [, yaml, body] = /^---\n([^]*?\n)(---\n[^]*)$/.exec(text) ?? [];
  const own = parts.get(text) ?? { sound: parse(yaml ?? text) as unknown, body };
  parts.set(text, own);
  return own;
}

/** Every value of a record, with what holds it. */
export function places(value: unknown): Place[] {
  if (typeof value !== "object" || value === null) return [];
  const holder = value as Holder;
  return Object.keys(holder).flatMap((key) => [{ holder, key }, ...places(holder[key])]);
}

/** Values that a key does not take, or only by chance. */
const odd = (chance: Chance): unknown =>
  chosen<() => unknown>(chance, [
    () => null,
    () => true,
    () => "",
    () => "x",
    () => chosen(chance, LETTERS),
    () => 0,
    () => -1,
    () => 1e9,
    () => [],
    () => ({}),
    () => [[[[]]]],
    () => ({ value: 1 }),
    () => ({ value: [1, 2] }),
    () => ["titanium-white", "titanium-white"],
    () => Array.from({ length: 300 }, (_, i) => i),
    () => "2026-02-30",
    () => "9999-12-31",
    () => "0001-01-01",
    () => "PW 6",
    () => "1:0.000001",
    () => "999999:0.000001",
  ])();

const renamed = (key: string, chance: Chance): string =>
  chosen(chance, [key.toUpperCase(), `${key}s`, key.slice(1), "__proto__", `${key} `, "0"]);

type Change = (all: readonly Place[], chance: Chance) => void;

const CHANGES: readonly Change[] = [
  (all, chance) => {
    const { holder, key } = chosen(chance, all);
    Reflect.deleteProperty(holder, key);
  },
  (all, chance) => {
    const { holder, key } = chosen(chance, all);
    holder[key] = odd(chance);
  },
  (all, chance) => {
    const { holder, key } = chosen(chance, all);
    holder[key] = [holder[key]];
  },
  (all, chance) => {
    const [one, other] = [chosen(chance, all), chosen(chance, all)];
    // Swapped through copies, so that nothing comes to hold itself.
    const [first, second] = [one.holder[one.key], other.holder[other.key]].map((value) =>
      structuredClone(value),
    );
    one.holder[one.key] = second;
    other.holder[other.key] = first;
  },
  (all, chance) => {
    const { holder, key } = chosen(chance, all);
    const value = holder[key];
    Reflect.deleteProperty(holder, key);
    Object.defineProperty(holder, renamed(key, chance), {
      value,
      enumerable: true,
      writable: true,
      configurable: true,
    });
  },
  (all, chance) => {
    const lists = all.flatMap(({ holder, key }) => {
      const value = holder[key];
      return Array.isArray(value) && value.length > 0 ? [value as unknown[]] : [];
    });
    if (lists.length === 0) return;
    const list = chosen(chance, lists);
    const times = chosen(chance, [1, 1, 2, 60, 250]);
    for (let i = 0; i < times; i++) list.push(structuredClone(list[index(chance, list.length)]));
  },
  (all, chance) => {
    const { holder, key } = chosen(chance, all);
    const { holder: to } = chosen(chance, all);
    if (!Array.isArray(to)) to[key] = structuredClone(holder[key]);
  },
];

/** One to three changes of what a record holds, rather than of how it is written. */
export function restructured(text: string, chance: Chance): string {
  return withData(text, (data) => {
    for (let times = 1 + index(chance, 3); times > 0; times--) {
      const all = places(data);
      if (all.length > 0) chosen(chance, CHANGES)(all, chance);
    }
  });
}

/** Letters of all sorts in one to three of a record's texts, or in the text below it. */
export function withLetters(text: string, chance: Chance): string {
  const put = (into: string): string => {
    const at = index(chance, into.length + 1);
    return into.slice(0, at) + chosen(chance, LETTERS) + into.slice(at);
  };
  if (text.startsWith("---\n") && chance() < 0.3) return put(text);
  return withData(text, (data) => {
    for (let times = 1 + index(chance, 3); times > 0; times--) {
      const words = places(data).filter(({ holder, key }) => typeof holder[key] === "string");
      if (words.length === 0) return;
      const { holder, key } = chosen(chance, words);
      holder[key] = put(String(holder[key]));
    }
  });
}
