import { parseSync, Visitor, type Expression } from "oxc-parser";

/** One small slip in a text: what stands from `start` to `end` is written as `slip`. */
export interface Mutant {
  readonly start: number;
  readonly end: number;
  readonly slip: string;
}

/** Each operator, and what a slip makes of it: signs and factors change, limits shift by their own point. */
const SLIPS: Readonly<Record<string, string>> = {
  "+": "-",
  "-": "+",
  "*": "/",
  "/": "*",
  "**": "*",
  "<": "<=",
  "<=": "<",
  ">": ">=",
  ">=": ">",
  "===": "!==",
  "!==": "===",
  "&&": "||",
  "||": "&&",
};

/** Slips that a module can have in its arithmetic, its conditions and its numbers; types have none. */
export function mutantsOfModule(file: string, text: string): Mutant[] {
  const found: Mutant[] = [];
  let types = 0;
  const operator = (left: Expression, right: Expression, sign: string): void => {
    const slip = SLIPS[sign];
    const start = text.indexOf(sign, left.end);
    if (slip !== undefined && start >= 0 && start < right.start)
      found.push({ start, end: start + sign.length, slip });
  };
  new Visitor({
    BinaryExpression: ({ left, right, operator: sign }) => {
      operator(left, right, sign);
    },
    LogicalExpression: ({ left, right, operator: sign }) => {
      operator(left, right, sign);
    },
    ConditionalExpression: ({ consequent, alternate }) => {
      const slip = `${text.slice(alternate.start, alternate.end)} : ${text.slice(consequent.start, consequent.end)}`;
      found.push({ start: consequent.start, end: alternate.end, slip });
    },
    Literal: ({ start, end, value }) => {
      if (types === 0 && typeof value === "number")
        found.push({ start, end, slip: slipOfNumber(value, text.slice(start, end)) });
    },
    TSLiteralType: () => {
      types += 1;
    },
    "TSLiteralType:exit": () => {
      types -= 1;
    },
  }).visit(parseSync(file, text).program);
  return found;
}

/** A digit counts or ranks, and a tenth of it is nothing: one more; any other number a tenth larger. */
function slipOfNumber(value: number, written: string): string {
  return Number.isInteger(value) && value < 10 ? `${value + 1}` : `(${written} * 1.1)`;
}

/** Each number of a table's rows, a tenth larger, or 1 for 0; its head and the cells of words stay. */
export function mutantsOfTable(text: string): Mutant[] {
  const head = text.indexOf("\n") + 1;
  return [...text.slice(head).matchAll(/(?<=^|,)\d+(?:\.\d+)?(?=,|$)/gm)].map(
    ({ 0: cell, index }) => ({
      start: head + index,
      end: head + index + cell.length,
      slip: String(Number(cell) === 0 ? 1 : Number((Number(cell) * 1.1).toPrecision(6))),
    }),
  );
}
