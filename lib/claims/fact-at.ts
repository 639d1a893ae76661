import { nearestWord } from "../diagnostics/nearest-word.ts";
import { isFigure } from "../quantities/figure.ts";
import { memberName } from "../sheet/figure-path.ts";
import type { Sheet } from "../sheet/sheet.ts";
import { lost, type LostPath } from "./figure-index.ts";

export type Fact = string | number | boolean | null | readonly string[];

/**
 * A plain part of a sheet, which is no figure: label elements, markets, pigments.
 * Of a list of things each goes by its slug, operation, or market and what its act does; a sentence by
 * its rule. What the sheet leaves out, a list that is not there among it, is null.
 */
export function factAt(sheet: Sheet, path: string): { readonly fact: Fact } | LostPath {
  const found = nodeAt(sheet, path);
  if ("lost" in found) return found;
  const { node } = found;
  if (isFigure(node)) return { lost: "figure", nearest: "a claim with the key `figure`" };
  if (node === undefined || node === null) return { fact: null };
  if (Array.isArray(node))
    return {
      fact: node.map((member, i) => (typeof member === "string" ? member : nameOf(member, i))),
    };
  if (typeof node === "string" || typeof node === "number" || typeof node === "boolean")
    return { fact: node };
  return { lost: "figure", within: [...membersOf(node).keys()].map((key) => `${path}.${key}`) };
}

/** A member of a list on a sheet, by the name that a claim gives it: a sentence, a pigment, an act of a market. */
export function factMember(sheet: Sheet, path: string, name: string): unknown {
  const found = nodeAt(sheet, path);
  return "lost" in found ? undefined : membersOf(found.node).get(name);
}

function nodeAt(sheet: Sheet, path: string): { readonly node: unknown } | LostPath {
  let node: unknown = sheet;
  for (const key of path.split(".")) {
    const member = memberAt(node, key);
    if (member === undefined) return lost("figure", nearestWord(key, membersOf(node).keys()));
    node = member.value;
  }
  return { node };
}

/** Of a thing with keys no other key is asked for. */
function memberAt(node: unknown, key: string): { readonly value: unknown } | undefined {
  if (typeof node === "object" && node !== null && !Array.isArray(node))
    return Object.keys(node).includes(key)
      ? { value: (node as Readonly<Record<string, unknown>>)[key] }
      : undefined;
  const members = membersOf(node);
  return members.has(key) ? { value: members.get(key) } : undefined;
}

function membersOf(node: unknown): ReadonlyMap<string, unknown> {
  if (Array.isArray(node)) return new Map(node.map((member, i) => [nameOf(member, i), member]));
  return typeof node === "object" && node !== null ? new Map(Object.entries(node)) : new Map();
}

/** A market goes with what its act does, since one market has several acts: "EU: forbidden unless"; a line on metals goes by these. */
function nameOf(member: unknown, index: number): string {
  const { market, effect, operation, statement, rule, values } = (
    typeof member === "object" && member !== null ? member : {}
  ) as Readonly<Record<string, unknown>>;
  if (typeof market === "string")
    return typeof effect === "string" ? `${market}: ${effect}` : market;
  if (
    rule === "contains-metal" &&
    typeof values === "object" &&
    values !== null &&
    "metals" in values
  )
    return String(values.metals);
  return typeof operation === "string"
    ? operation
    : typeof statement === "string"
      ? statement
      : (sentenceName(rule, values) ?? memberName(member, index));
}

/** A sentence of a sheet goes by its rule: "harmed-by-alkali". */
function sentenceName(rule: unknown, values: unknown): string | undefined {
  return typeof rule === "string" && typeof values === "object" ? rule : undefined;
}
