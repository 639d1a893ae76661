import { domainError } from "../diagnostics/diagnostic.ts";
import type { EqualLightness } from "../sheet/tints/tint-figures.ts";
import type { ComparedAmount, ComparedColour } from "./compared-colour.ts";
import { TIMES, type ComparisonStatement, type Times } from "./statements.ts";
import { daysApart, masstonesApart, numbersApart, tintsApart, type Apart } from "./apart.ts";

/** What is compared, in reading order; `white` and `parts` are as many rows as there are whites. */
export const COMPARED = [
  "white",
  "masstone",
  "label",
  "strength",
  "whitens",
  "parts",
  "opacity",
  "oilByMass",
  "oilByVolume",
  "finish",
  "drying",
  "lightfastness",
  "sale",
  "pigments",
  "vehicle",
  "dispersion",
] as const;
export type Compared = (typeof COMPARED)[number];

/**
 * `not told` where what is known does not bear a difference: estimates overlap, figures lie within
 * their uncertainty. `not stated` where one of them has no figure: nothing can be said of it.
 */
export const VERDICTS = ["differs", "not told", "same", "not stated"] as const;
export type Verdict = (typeof VERDICTS)[number];

export interface ComparedRow {
  /** "oilByMass", "white.titanium-white". */
  readonly key: string;
  readonly verdict: Verdict;
  /** Of tints, the lightness that most of them reach. */
  readonly level?: EqualLightness;
  /** By how much, or why it is not told; absent where the cells say all. */
  readonly ruling?: ComparisonStatement;
}

export interface SideBySide {
  /** In reading order; the reader sorts them by verdict. */
  readonly rows: readonly ComparedRow[];
  /** What none of them states. */
  readonly unstated: readonly string[];
}

/** @throws RangeError for fewer than two colours, more than four, or one twice. */
export function sideBySide(colours: readonly ComparedColour[]): SideBySide {
  if (!(colours.length >= 2 && colours.length <= 4))
    throw domainError("count of colours", colours.length, "2 to 4");
  if (new Set(colours.map(({ slug }) => slug)).size < colours.length)
    throw new RangeError(`A colour stands twice in ${colours.map(({ slug }) => slug).join(", ")}`);
  const keys = COMPARED.flatMap((key) => keysOf(key, colours));
  const stated = keys.filter((key) => colours.some(({ amounts }) => amounts[key] !== undefined));
  return {
    rows: stated.map((key) => ({ key, ...compared(key, colours) })),
    unstated: keys.filter((key) => !stated.includes(key)),
  };
}

/** A row of whites is a row for each white that one of the colours was let down in, in the order met. Only whites whiten. */
function keysOf(key: Compared, colours: readonly ComparedColour[]): string[] {
  if (key === "whitens")
    return colours.some(({ amounts }) => amounts[key] !== undefined) ? [key] : [];
  if (key !== "white" && key !== "parts") return [key];
  return [
    ...new Set(
      colours.flatMap(({ amounts }) =>
        Object.keys(amounts).filter((each) => each.startsWith(`${key}.`)),
      ),
    ),
  ];
}

interface Stated {
  readonly name: string;
  readonly amount: ComparedAmount;
}
type Finding = Omit<ComparedRow, "key">;

function compared(key: string, colours: readonly ComparedColour[]): Finding {
  const stated = colours.flatMap(({ name, amounts: { [key]: amount } }): Stated[] =>
    amount === undefined ? [] : [{ name, amount }],
  );
  const absent = colours
    .filter(({ amounts }) => amounts[key] === undefined)
    .map(({ name }) => name);
  const comparable = inOneGeometry(stated.filter(({ amount }) => amount.kind !== "apart"));
  const apart = stated.filter((one) => !comparable.includes(one)).map(({ name }) => name);
  const found = comparable.length < 2 ? undefined : comparedStated(key, comparable);
  const films = stated.filter(({ amount }) => amount.kind === "apart" && amount.isFilm === true);
  if (apart.length > 0 && found?.verdict !== "differs")
    return {
      ...found,
      verdict: "not told",
      ruling:
        films.length > 0
          ? { rule: "compared-shows-ground", values: { names: films.map(({ name }) => name) } }
          : { rule: "compared-otherwise-known", values: { names: apart } },
    };
  if (found === undefined || (absent.length > 0 && found.verdict === "same"))
    return {
      ...found,
      verdict: "not stated",
      ruling: { rule: "compared-not-stated", values: { names: absent } },
    };
  return found;
}

/** Colours read as the first of them was: with gloss included and shut out they do not compare. */
function inOneGeometry(stated: readonly Stated[]): readonly Stated[] {
  const gloss = ({ amount }: Stated) => ("gloss" in amount ? amount.gloss : undefined);
  const [first] = stated;
  return first === undefined ? [] : stated.filter((one) => gloss(one) === gloss(first));
}

function comparedStated(key: string, stated: readonly Stated[]): Finding {
  const [first] = stated;
  switch (first?.amount.kind) {
    case "number":
      return ofPairs(stated, (one, other) =>
        key === "drying" ? daysApart(one, other) : numbersApart(one, other, timesOf(key)),
      );
    case "colour":
      return ofPairs(stated, masstonesApart);
    case "tint":
      return tints(stated);
    case "word":
      return words(stated);
    default:
      return sets(stated);
  }
}

/** What a row of numbers is compared by; a row of parts stands for one white. */
function timesOf(key: string): Times {
  const of = TIMES.find((each) => each === key.split(".")[0]);
  if (of !== undefined) return of;
  throw new RangeError(`${key} is compared by no ratio`);
}

/** The pair that lies farthest apart speaks for the row. */
function ofPairs(stated: readonly Stated[], apart: (one: Stated, other: Stated) => Apart): Finding {
  const pairs = stated.flatMap((one, i) => stated.slice(i + 1).map((other) => apart(one, other)));
  const [farthest] = pairs
    .filter(({ differs }) => differs)
    .toSorted((one, other) => other.size - one.size);
  if (farthest !== undefined) return { verdict: "differs", ruling: farthest.ruling };
  const [untold] = pairs
    .filter(({ equal }) => !equal)
    .toSorted((one, other) => other.size - one.size);
  return untold === undefined
    ? { verdict: "same" }
    : { verdict: "not told", ruling: untold.ruling };
}

const LEVELS: readonly EqualLightness[] = ["50", "70", "30"];

function tints(stated: readonly Stated[]): Finding {
  const at = (level: EqualLightness) =>
    stated.flatMap(({ name, amount }) => {
      const place = amount.kind === "tint" ? amount.atL[level] : undefined;
      return place === undefined ? [] : [{ name, place }];
    });
  const counts = LEVELS.map((level) => at(level).length);
  const level = LEVELS[counts.indexOf(Math.max(...counts))] ?? "50";
  const reached = at(level);
  if (reached.length < 2)
    return {
      verdict: "not told",
      ruling: { rule: "compared-no-lightness", values: {} },
      ...(reached.length > 0 && { level }),
    };
  const pairs = reached.map(({ name, place }): Stated => ({
    name,
    amount: { kind: "colour", L: Number(level), ...place },
  }));
  return { ...ofPairs(pairs, tintsApart), level };
}

function words(stated: readonly Stated[]): Finding {
  const values = stated.map(({ amount }) =>
    amount.kind === "word" ? amount : { value: "", standing: undefined },
  );
  if (new Set(values.map(({ value }) => value)).size > 1) return { verdict: "differs" };
  const expected = new Set(values.map(({ standing }) => standing === "estimated"));
  return expected.size > 1
    ? { verdict: "not told", ruling: { rule: "compared-one-expected", values: {} } }
    : { verdict: "same" };
}

function sets(stated: readonly Stated[]): Finding {
  const members = stated.map(({ amount }) =>
    amount.kind === "set" ? [...amount.members].sort().join(" ") : "",
  );
  return { verdict: new Set(members).size > 1 ? "differs" : "same" };
}
