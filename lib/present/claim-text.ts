import { factMember, type Fact } from "../claims/fact-at.ts";
import type { HeldClaim } from "../claims/held-claims.ts";
import { pathParts, type RangeFigure } from "../claims/figure-index.ts";
import { isKnown } from "../quantities/figure.ts";
import type { ClaimRecord } from "../records/schema/answer.ts";
import type { FigureRow } from "../sheet/figure-table.ts";
import type { Statement } from "../quantities/statement.ts";
import type { Sheet } from "../sheet/sheet.ts";
import { statementText } from "./statement-text.ts";
import { figureName } from "./figure-name.ts";
import { figureText, unitText } from "./figure-text.ts";
import type { Words } from "../words/words.ts";

type NameOf = (slug: string) => string;
type SheetOf = (slug: string) => Sheet | undefined;

/** A claim as a sentence: "Iron Oxide Black: b* in titanium white at L* 50 is below −3". */
export function claimText(
  { claim, figures }: Pick<HeldClaim, "claim" | "figures">,
  nameOf: NameOf,
  words: Words,
  sheetOf: SheetOf,
): string {
  const text = words.pages.answers.claims;
  if ("every" in claim)
    return text.about(
      text.every((claim.but ?? []).map(nameOf)),
      rangeStatement(claim, words, sheetOf),
    );
  const { colour } = pathParts("fact" in claim ? claim.fact : claim.figure);
  if ("fact" in claim)
    return text.about(nameOf(colour), factStatement(claim, words, sheetOf(colour)));
  const [own, other] = figures;
  const statement =
    own === undefined ? claim.figure : figureStatement(claim, own, other, nameOf, words);
  return text.about(
    nameOf(colour),
    claim.standing === undefined
      ? statement
      : text.standing(statement, words.standings[claim.standing].word),
  );
}

/** The thing by the name that a colour which has it gives it. */
function rangeStatement(
  { every, lacks, but: [first = ""] = [] }: Extract<ClaimRecord, { every: string }>,
  words: Words,
  sheetOf: SheetOf,
): string {
  const sheet = sheetOf(first);
  const member = memberText(lacks, sheet && factMember(sheet, every, lacks), words);
  return words.pages.answers.claims.lacks(words.pages.answers.fact(every), member);
}

function factStatement(
  claim: Extract<ClaimRecord, { fact: string }>,
  words: Words,
  sheet: Sheet | undefined,
): string {
  const text = words.pages.answers.claims;
  const path = pathParts(claim.fact).figure;
  const name = words.pages.answers.fact(path);
  const member = (named: string): string =>
    memberText(named, sheet && factMember(sheet, path, named), words);
  if ("includes" in claim) return text.includes(name, member(claim.includes));
  if ("lacks" in claim) return text.lacks(name, member(claim.lacks));
  if ("count" in claim) return text.count(name, claim.count);
  return text.is(name, factText(claim.is, words));
}

/** A member of a list as a reader has it: a sentence in full, a thing by its name, else by the word that the claim holds. */
function memberText(named: string, member: unknown, words: Words): string {
  const { rule, values, name } = (
    typeof member === "object" && member !== null ? member : {}
  ) as Partial<Statement> & { readonly name?: unknown };
  if (rule !== undefined && values !== undefined && words.rulings[rule] !== undefined)
    return words.pages.quoted(statementText({ rule, values }, words).replace(/\.$/, ""));
  if (typeof name === "string") return name;
  return wordText(named, words);
}

/** A word of a closed set, or the name of a rule. */
function wordText(word: string, words: Words): string {
  return words.factWords[word] ?? word.replace(/(?<=[a-z])-(?=[a-z])/g, " ");
}

/** A plain part of a sheet as a reader has it. */
export function factText(fact: Fact, words: Words): string {
  const text = words.pages.answers.claims;
  if (fact === null) return text.nothing;
  if (typeof fact === "boolean") return fact ? text.yes : text.no;
  if (typeof fact === "object")
    return fact.length === 0 ? text.none : fact.map((each) => wordText(each, words)).join(", ");
  return typeof fact === "string" ? wordText(fact, words) : String(fact);
}

function figureStatement(
  claim: Extract<ClaimRecord, { figure: string }>,
  own: RangeFigure,
  other: RangeFigure | undefined,
  nameOf: NameOf,
  words: Words,
): string {
  const text = words.pages.answers.claims;
  const { row, figure } = own.leaf;
  const name = figureName(own.leaf, own.sheet, words);
  const number = (value: number): string =>
    limitText(value, row, isKnown(figure) ? figure.unit : row.unit, words);
  if ("is" in claim) {
    if (typeof claim.is === "number") return text.is(name, number(claim.is));
    const word = claim.is === "not stated" ? words.standings["not stated"].word : claim.is;
    return text.is(name, words.terms[word] ?? word);
  }
  if ("between" in claim)
    return text.between(name, number(claim.between[0]), number(claim.between[1]));
  if ("lowestOf" in claim || "highestOf" in claim) {
    const [sentence, rivals] =
      "lowestOf" in claim
        ? ([text.lowest, claim.lowestOf] as const)
        : ([text.highest, claim.highestOf] as const);
    const among =
      typeof rivals === "string"
        ? text.family(words.families[rivals])
        : rivals.map(nameOf).join(", ");
    const statement = sentence(name, among);
    return claim.by === undefined ? statement : text.by(statement, number(claim.by));
  }
  const wanted = "below" in claim ? claim.below : claim.above;
  const limit =
    typeof wanted === "number" ? number(wanted) : otherText(own, other, nameOf, name, words);
  const side =
    "below" in claim
      ? ([text.below, text.belowBy] as const)
      : ([text.above, text.aboveBy] as const);
  return claim.by === undefined ? side[0](name, limit) : side[1](name, limit, number(claim.by));
}

/** Of another colour its name; of another figure what that is. */
function otherText(
  own: RangeFigure,
  other: RangeFigure | undefined,
  nameOf: NameOf,
  name: string,
  words: Words,
): string {
  if (other === undefined) return "";
  const otherName = figureName(other.leaf, other.sheet, words);
  if (other.sheet.slug === own.sheet.slug) return words.lowerFirst(otherName);
  return words.pages.answers.claims.other(
    nameOf(other.sheet.slug),
    otherName === name ? "" : words.lowerFirst(otherName),
  );
}

/** A limit as its author wrote it, with the unit of the figure. */
function limitText(value: number, row: FigureRow, unit: string, words: Words): string {
  if (row.kind === "share")
    return `${words.numbers.plain(Number((value * 100).toPrecision(12)))}\u00a0%`;
  const number = words.numbers.plain(value).replace("-", "\u2212");
  const symbol = unitText(unit, words, number);
  return symbol === "" ? number : `${number}\u00a0${symbol}`;
}

/** The figure of a claim as it is today; nothing where it is not stated. */
export function todayText(
  { leaf: { row, figure } }: RangeFigure,
  words: Words,
): string | undefined {
  return isKnown(figure) ? figureText(row, figure, words) : undefined;
}
