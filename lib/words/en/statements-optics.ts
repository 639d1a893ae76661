import { TINT_RULES } from "../../optics/tints/tint-statement.ts";
import type { Statement } from "../../quantities/statement.ts";
import type { StatementWording } from "../words.ts";
import { DRAWDOWN_RULINGS } from "./statements-drawdowns.ts";
import {
  bracketed,
  decimals,
  listed,
  micrometres,
  namesWithin,
  percent,
  sentence,
  significant,
  within,
} from "./statements-phrases.ts";
import {
  hasValue,
  numberOf,
  quantityOf,
  textOf,
  textsOf,
  wordOf,
  type Values,
} from "./statement-params.ts";

const BASES = {
  measured: "",
  predicted: "predicted",
  interpolated: "between two let-downs",
} as const;
const TURNS = {
  "keeps-hue": "keeps its hue",
  "turns-toward": "turns toward",
  "no-hue-to-compare": "",
} as const;
const KINDS = { pigment: "dry pigment", paint: "paint" } as const;

/** What a colour does in a white, without saying which. */
export const TINT_PHRASES = {
  "stays-near-neutral": () => "stays near neutral",
  leans: (v) => `leans ${textOf(v, "hue")}`,
  "turns-clearly": (v) => `turns clearly ${textOf(v, "hue")}`,
  "turns-strongly": (v) => `turns strongly ${textOf(v, "hue")}`,
  "gains-chroma": (v) =>
    textOf(v, "turn") === "no-hue-to-compare"
      ? `gains chroma and comes out ${textOf(v, "hue")}`
      : `gains chroma${turn(v)}`,
  "keeps-chroma": (v) =>
    textOf(v, "turn") === "keeps-hue" ? "keeps chroma and hue" : `keeps its chroma${turn(v)}`,
  "loses-chroma": (v) => `loses chroma${turn(v)}`,
} as const satisfies Record<string, (values: Values) => string>;

export type TintRule = keyof typeof TINT_PHRASES;

/** Colours in whites, strength, hiding, gloss, mulled against milled. */
export const OPTICS_RULINGS = {
  "stays-near-neutral": (v) => tintSentence("stays-near-neutral", v),
  leans: (v) => tintSentence("leans", v),
  "turns-clearly": (v) => tintSentence("turns-clearly", v),
  "turns-strongly": (v) => tintSentence("turns-strongly", v),
  "gains-chroma": (v) => tintSentence("gains-chroma", v),
  "keeps-chroma": (v) => tintSentence("keeps-chroma", v),
  "loses-chroma": (v) => tintSentence("loses-chroma", v),
  "no-tint-to-judge": (v) =>
    sentence(`we cannot say what it does in ${within(textOf(v, "white"))}: ${whyNotJudged(v)}`),
  "differs-by-white": (v) =>
    `At ${lightness(v, "L")} it is ${apart(v)} in ${within(textOf(v, "to"))} than in ${within(textOf(v, "from"))}.`,
  "alike-in-whites": (v) =>
    `At ${lightness(v, "L")} its hue is the same in every white, within ${decimals(numberOf(v, "distance"), 1)} of a*, b*.`,
  "one-white-only": (v) =>
    `At ${lightness(v, "L")} we do not know it in two whites, so whites are not compared.`,

  "not-let-down-in": (v) => `Not tried in ${namesWithin(textsOf(v, "whites"), "or")}.`,

  "whites-differ": (v) =>
    `Strength is not compared: one was let down in ${within(textOf(v, "sample"))}, the other in ${within(textOf(v, "reference"))}.`,
  "ratio-kinds-differ": (v) =>
    `Strength is not compared: one let-down was weighed as ${KINDS[wordOf(v, "sample", KINDS)]}, the other as ${KINDS[wordOf(v, "reference", KINDS)]}.`,
  "grey-beside-colour": () =>
    "Strength is not compared: one of the two makes a grey in the white and the other a colour.",
  "hues-not-comparable": (v) =>
    `Strength is not compared: the two absorb most in different places (${decimals(numberOf(v, "sampleNm"), 0)} and ${decimals(numberOf(v, "referenceNm"), 0)}\u00a0nm).`,
  "milled-stronger": (v) =>
    `Mulled, it has ${percent(numberOf(v, "strength"))} of its strength when milled${comparedIn(v)}.`,
  "mulled-stronger": (v) =>
    `Mulled, it is the stronger: ${percent(numberOf(v, "strength"))} of its strength when milled${comparedIn(v)}.`,
  "alike-mulled-and-milled": (v) =>
    `Mulled or milled, its strength is the same: ${percent(numberOf(v, "strength"))} of milled${comparedIn(v)}.`,
  "mulled-weaker": () =>
    "Mulled, expect it weaker than milled: lumps keep part of the colour to themselves.",
  "mulled-weaker-paler-bluer": (v) =>
    `Mulled, expect it to keep ${percent(quantityOf(v, "kept"))} of its strength (lumps of ${micrometres(quantityOf(v, "lumpsUm"))}), with tints paler and bluer than milled.`,

  "films-hid-their-grounds": (v) =>
    `The films read (${micrometres(quantityOf(v, "filmsUm"))}) already hid the chart at most wavelengths: a thinner film than the one given may do.`,
  "strength-by-absorption": (v) =>
    `Strength is measured against ${textOf(v, "reference")} by what both absorb in ${within(textOf(v, "white"))}; at equal strength they still differ by \u0394E00 ${decimals(numberOf(v, "residualDeltaE00"), 1)}.`,
  "strength-by-equal-depth": (v) =>
    `Strength is measured against ${textOf(v, "reference")} by how much of each brings ${within(textOf(v, "white"))} to one lightness, since its let-downs do not reach the other's; at that lightness they still differ by \u0394E00 ${decimals(numberOf(v, "residualDeltaE00"), 1)}.`,
  "contrast-without-gloss": (v) =>
    `That includes the shine: without it, a film of ${micrometres(numberOf(v, "filmUm"))} has a contrast ratio of ${decimals(numberOf(v, "excluded"), 2)}; with it, ${decimals(numberOf(v, "included"), 2)}.`,
  "masstone-by-both-grounds": (v) =>
    `The masstone was read on a film that lets its ground show through (contrast ratio ${decimals(numberOf(v, "contrast"), 2)}). Tints and mixtures are worked out from what both grounds tell of a coat that hides.`,
  "masstone-is-a-film": (v) =>
    `What is shown as the masstone is a film over white that lets its ground show through (contrast ratio ${decimals(numberOf(v, "contrast"), 2)}). A thicker coat looks darker, and what we work out from it is less certain.`,
  "does-not-hide": (v) =>
    `Even a film of ${decimals(numberOf(v, "filmUm") / 1000, 0)}\u00a0mm does not hide: its contrast ratio is ${decimals(numberOf(v, "contrastRatio"), 2)}, and ${decimals(numberOf(v, "target"), 2)} would.`,
  "gloss-deepens": (v) =>
    `A glossy film looks darker than a matte one by ${decimals(numberOf(v, "valueChange"), 1)} of Munsell value (L* ${decimals(numberOf(v, "glossyL"), 0)} against ${decimals(numberOf(v, "matteL"), 0)}).`,
  "gloss-hardly-deepens": (v) =>
    `Gloss hardly darkens it: by ${decimals(numberOf(v, "valueChange"), 1)} of Munsell value (L* ${decimals(numberOf(v, "glossyL"), 0)} against ${decimals(numberOf(v, "matteL"), 0)} matte).`,
  "extender-hardly-lightens": (v) =>
    `An extender, not a white: ${significant(numberOf(v, "volumes"), 2)} volumes of the medium to one of ${extended(v)} lift its L* by only ${decimals(numberOf(v, "change"), 1)}, from ${decimals(numberOf(v, "fromL"), 0)} (gloss included).`,
  "extender-lightens": (v) =>
    `${significant(numberOf(v, "volumes"), 2)} volumes of the medium to one of ${extended(v)} lift its L* from ${decimals(numberOf(v, "fromL"), 0)} to ${decimals(numberOf(v, "toL"), 0)} (gloss included).`,
  ...DRAWDOWN_RULINGS,
} as const satisfies Record<string, StatementWording>;

function extended(values: Values): string {
  return hasValue(values, "colour") ? within(textOf(values, "colour")) : "the colour";
}

/** In which white the two were held against each other. */
function comparedIn(values: Values): string {
  return hasValue(values, "white") ? ` (in ${within(textOf(values, "white"))})` : "";
}

/** A colour in one white, with the white's name as its record gives it. */
export interface InNamedWhite {
  readonly white: string;
  readonly ruling: Statement;
}

const LENGTH_MAX = 180;
const OTHERS_BELOW = "other whites below";

/**
 * The one sentence of the first screen: every white that can be judged, the
 * strongest turn first, whites that do the same together. Past about 180
 * characters all figures but the first go, then the mildest whites.
 */
export function combinedTintSentence(tints: readonly InNamedWhite[]): string {
  const clauses = tints
    .flatMap(({ white, ruling }) =>
      ruling.rule === "no-tint-to-judge"
        ? []
        : [tintClause(white, tintRule(ruling.rule), ruling.values)],
    )
    .toSorted((one, other) => other.strength - one.strength);
  const [first] = clauses;
  if (first === undefined) return "Not yet tried in white.";
  const groups = [...new Set(clauses.map(({ phrase }) => phrase))].map((phrase) =>
    clauses.filter((clause) => clause.phrase === phrase),
  );
  const told = (figuresOfAll: boolean): string[] =>
    groups.map((group) => {
      const whites = group.map(
        (clause) =>
          `${clause.white}${clause === first || figuresOfAll ? ` (${figureBeside(clause, first)})` : ""}`,
      );
      return `${group[0]?.phrase ?? ""} in ${listed(whites)}`;
    });
  return sentence(fitted(told(true)) ?? fitted(told(false)) ?? shortened(told(false)));
}

function fitted(parts: readonly string[]): string | undefined {
  const text = parts.join("; ");
  return text.length < LENGTH_MAX ? text : undefined;
}

/** The strongest always stands; others as far as they fit. */
function shortened([strongest = "", ...others]: readonly string[]): string {
  const room = LENGTH_MAX - OTHERS_BELOW.length - 3;
  const kept = others.reduce(
    (text, part) => (`${text}; ${part}`.length <= room ? `${text}; ${part}` : text),
    strongest,
  );
  return `${kept}; ${OTHERS_BELOW}`;
}

interface TintClause {
  readonly phrase: string;
  readonly white: string;
  /** The one coordinate that is given, "b*"; undefined for a figure that names its own two. */
  readonly axis: string | undefined;
  readonly figure: string;
  readonly L: string;
  /** How far it goes in a*, b*: for the order alone. */
  readonly strength: number;
}

export function tintRule(rule: string): TintRule {
  if (Object.hasOwn(TINT_PHRASES, rule)) return rule as TintRule;
  throw new RangeError(
    `The rule is ${rule}; right would be ${Object.keys(TINT_PHRASES).join(" | ")} | no-tint-to-judge`,
  );
}

function tintClause(white: string, rule: TintRule, values: Values): TintClause {
  return {
    phrase: TINT_PHRASES[rule](values),
    white: within(white),
    ...(hasValue(values, "chromaChange") ? ofColour(values) : ofGrey(values)),
    L: lightness(values, "L"),
  };
}

function tintSentence(rule: TintRule, values: Values): string {
  const clause = tintClause(textOf(values, "white"), rule, values);
  return sentence(
    `${clause.phrase} in ${clause.white}${bracketed(figureBeside(clause), BASES[wordOf(values, "basis", BASES)])}`,
  );
}

/** "b* -4.1 at L* 50"; beside the first of a sentence only what differs from it. */
function figureBeside(clause: TintClause, first: TintClause = clause): string {
  const { axis, figure, L } = clause;
  const isFirst = clause === first;
  return `${axis === undefined || (!isFirst && axis === first.axis) ? "" : `${axis} `}${figure}${isFirst || L !== first.L ? ` at ${L}` : ""}`;
}

/** A grey by the coordinate that it goes along; by both where it goes between. */
function ofGrey(values: Values): Pick<TintClause, "axis" | "figure" | "strength"> {
  const [a, b] = [numberOf(values, "a"), numberOf(values, "b")];
  const [aText, bText] = [decimals(a, 1), decimals(b, 1)];
  const strength = numberOf(values, "chroma");
  if (Math.min(Math.abs(a), Math.abs(b)) >= BOTH_FROM * Math.max(Math.abs(a), Math.abs(b)))
    return { axis: undefined, figure: `a* ${aText}, b* ${bText}`, strength };
  return Math.abs(b) >= Math.abs(a)
    ? { axis: "b*", figure: bText, strength }
    : { axis: "a*", figure: aText, strength };
}

/** Share of the larger coordinate from which the smaller one is told as well. */
const BOTH_FROM = 0.5;

function ofColour(values: Values): Pick<TintClause, "axis" | "figure" | "strength"> {
  const [chroma, own] = [numberOf(values, "chroma"), numberOf(values, "masstoneChroma")];
  const turned = hasValue(values, "hueShift") ? (numberOf(values, "hueShift") * Math.PI) / 180 : 0;
  const [from, to] = [decimals(own, 0), decimals(chroma, 0)];
  return {
    axis: "C*",
    figure: from === to ? to : `${from} to ${to}`,
    strength: Math.hypot(chroma - own, 2 * Math.sqrt(chroma * own) * Math.sin(turned / 2)),
  };
}

function turn(values: Values): string {
  const kind = wordOf(values, "turn", TURNS);
  if (kind === "no-hue-to-compare") return "";
  return ` and ${TURNS[kind]}${kind === "turns-toward" ? ` ${textOf(values, "toward")}` : ""}`;
}

/** From the warmer white to the cooler: bluer, and redder or greener where that counts. */
function apart(values: Values): string {
  const [a, b] = [numberOf(values, "aChange"), numberOf(values, "bChange")];
  const ways = [
    {
      by: Math.abs(b),
      text: `${b <= 0 ? "bluer" : "yellower"} by ${decimals(Math.abs(b), 1)} of b*`,
    },
    {
      by: Math.abs(a),
      text: `${a < 0 ? "greener" : "redder"} by ${decimals(Math.abs(a), 1)} of a*`,
    },
  ].toSorted((one, other) => other.by - one.by);
  const most = ways[0]?.by ?? 0;
  return listed(ways.filter(({ by }) => by >= BOTH_FROM * most).map(({ text }) => text));
}

function whyNotJudged(values: Values): string {
  if (hasValue(values, "contrast"))
    return `its let-downs show their ground there (contrast ratio ${decimals(numberOf(values, "contrast"), 2)}), and a coat that hides looks otherwise`;
  if (!hasValue(values, "wantedL"))
    return "it takes a reading of the masstone and a let-down near L* 50";
  const { masstoneMax, aboveMasstone } = TINT_RULES.lightness;
  if (numberOf(values, "wantedL") > masstoneMax + aboveMasstone)
    return "it is too pale itself to do much there";
  return `it takes a let-down near ${lightness(values, "wantedL")}; the nearest is at ${lightness(values, "nearestL")}`;
}

function lightness(values: Values, name: string): string {
  return `L* ${decimals(numberOf(values, name), 0)}`;
}
