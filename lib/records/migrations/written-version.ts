import { isScalar } from "yaml";
import type { ContentFile } from "../content-tree.ts";
import { drierMetals } from "./drier-metals.ts";
import { lotTints } from "./lot-tints.ts";
import type { Migration } from "./migration.ts";
import { priceContents } from "./price-contents.ts";
import { editedText, lineBreak, lineEnd, lineStart, nextLine } from "./text-edit.ts";
import { writtenMap, writtenPair, writtenPairs } from "./yaml-text.ts";

/** In order of version, each from the one before it. */
export const MIGRATIONS: readonly Migration[] = [drierMetals, lotTints, priceContents];

/** Of records that say none: what was written before there was a version. */
const FIRST_VERSION = 1;
const KEY = "recordsVersion";

/** The version that a folder's records say they are of, by its workshop.yaml. */
interface WrittenVersion {
  readonly version: number;
  /** Offset of the figure in the text, 0 where none is written. */
  readonly at: number;
}

/** @returns undefined of a text that is no record, and of a version that is no whole number from 1 on: its own faults tell */
export function writtenVersion(text: string): WrittenVersion | undefined {
  const map = writtenMap(text);
  if (map === undefined) return undefined;
  const pair = writtenPair(map, KEY);
  if (pair === undefined) return { version: FIRST_VERSION, at: 0 };
  const value = isScalar(pair.value) ? pair.value.value : undefined;
  return Number.isInteger(value) && Number(value) >= FIRST_VERSION
    ? { version: Number(value), at: pair.value?.range?.[0] ?? pair.from }
    : undefined;
}

/** workshop.yaml with another version. The first is none: a program that knew no other refuses the key. */
export function withVersion(text: string, version: number): string {
  const map = writtenMap(text);
  if (map === undefined) return text;
  const pair = writtenPair(map, KEY);
  const isFlow = map.flow === true;
  if (pair?.value?.range) {
    const [from, to] = pair.value.range;
    if (version !== FIRST_VERSION) return editedText(text, [{ from, to, text: String(version) }]);
    const next = writtenPairs(map).find((one) => one.from > pair.from);
    const cut = isFlow
      ? { from: pair.from, to: next?.from ?? pair.to }
      : { from: lineStart(text, pair.from), to: nextLine(text, lineEnd(text, to)) };
    return editedText(text, [{ ...cut, text: "" }]);
  }
  const [first] = writtenPairs(map);
  if (version === FIRST_VERSION || first === undefined) return text;
  const indent = isFlow ? "" : text.slice(lineStart(text, first.from), first.from);
  const parted = isFlow ? ", " : `${lineBreak(text)}${indent}`;
  return editedText(text, [
    { from: first.from, to: first.from, text: `${KEY}: ${version}${parted}` },
  ]);
}

export function isWorkshop({ folder }: Pick<ContentFile, "folder">): boolean {
  return folder === "workshop";
}
