import { chosen, index, type Chance } from "../chance.ts";
import { NUMBERS, TOKENS } from "./tokens.ts";

export type Mutation = (text: string, chance: Chance) => string;

const spot = (text: string, chance: Chance): number => index(chance, text.length + 1);

const withLines =
  (change: (lines: string[], at: number, chance: Chance) => string[]): Mutation =>
  (text, chance) => {
    const lines = text.split("\n");
    return change(lines, index(chance, lines.length), chance).join("\n");
  };

/** Slips of hand and file: pieces put in, torn out, doubled, moved; a number exchanged. */
export const TEXT_MUTATIONS: readonly Mutation[] = [
  (text, chance) => {
    const at = spot(text, chance);
    return text.slice(0, at) + chosen(chance, TOKENS) + text.slice(at);
  },
  (text, chance) => {
    const at = spot(text, chance);
    return text.slice(0, at) + text.slice(at + 1 + index(chance, 40));
  },
  (text, chance) => text.slice(0, spot(text, chance)),
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
  (text, chance) => {
    const at = spot(text, chance);
    return `${text.slice(0, at)}${String.fromCharCode(32 + index(chance, 95))}${text.slice(at + 1)}`;
  },
  withLines((lines, at) => lines.toSpliced(at, 1)),
  withLines((lines, at) => lines.toSpliced(at, 0, lines[at] ?? "")),
  withLines((lines, at, chance) =>
    lines.with(at, `${" ".repeat(index(chance, 5))}${lines[at] ?? ""}`),
  ),
  withLines((lines, at, chance) => {
    const other = index(chance, lines.length);
    return lines.with(at, lines[other] ?? "").with(other, lines[at] ?? "");
  }),
  withLines((lines, at, chance) =>
    lines.with(
      at,
      (lines[at] ?? "").replace(/:.*$/, () => `: ${chosen(chance, [...TOKENS, ...NUMBERS])}`),
    ),
  ),
];
