/** The sentence on what a colour does in a white: which rule, and the figures it speaks of. */
import { labToLch } from "../../colorimetry/lab.ts";
import type { Lab } from "../../colorimetry/viewing.ts";
import type { StatementOf } from "../../quantities/statement.ts";
import { colourWord, hueToward, hueTurn, type ColourWord, type HueWord } from "./hue-word.ts";

/** A let-down that a sentence may rest on. */
export interface JudgedTint {
  readonly lab: Lab;
  readonly basis: "measured" | "predicted" | "interpolated";
  readonly massRatio?: number;
  /** About 68 %, Delta-E00; of a predicted one. */
  readonly uncertainty?: number;
}

/** A let-down that is judged: where it lies (D65/10), on what it rests. */
type Judged = {
  readonly white: string;
  readonly L: number;
  readonly a: number;
  readonly b: number;
  readonly chroma: number;
  readonly hue: ColourWord;
  readonly basis: JudgedTint["basis"];
  readonly massRatio?: number;
  readonly uncertainty?: number;
};

/** What became of the hue [degree]: turned where `toward` names the way. */
type TurnOfHue = {
  readonly turn: "keeps-hue" | "turns-toward" | "no-hue-to-compare";
  readonly hueShift?: number;
  readonly toward?: HueWord;
};

/** What a colour that could be judged does in a white. */
export type JudgedTintStatement =
  | StatementOf<"stays-near-neutral" | "leans" | "turns-clearly" | "turns-strongly", Judged>
  | StatementOf<
      "gains-chroma" | "keeps-chroma" | "loses-chroma",
      Judged & TurnOfHue & { readonly masstoneChroma: number; readonly chromaChange: number }
    >;

export type TintStatement =
  | JudgedTintStatement
  | StatementOf<
      "no-tint-to-judge",
      {
        white: string;
        wantedL?: number;
        nearestL?: number;
        /** Of let-downs that show their ground. */
        contrast?: number;
      }
    >;

export type WhitesStatement =
  | StatementOf<"one-white-only", { L: number }>
  | StatementOf<
      "differs-by-white" | "alike-in-whites" | "whites-not-told-apart",
      {
        L: number;
        from: string;
        to: string;
        distance: number;
        aChange: number;
        bChange: number;
        /** Standard uncertainty of the distance [1], where it is more than the distance. */
        uncertainty?: number;
      }
    >;

export type NotLetDown = StatementOf<"not-let-down-in", { whites: readonly string[] }>;

/**
 * Every threshold of the sentences, in D65/10. A grey is judged by its own a*, b*,
 * never by the shift from its white, whose yellow a mid grey does not share, and
 * never by its masstone, which in carbon goes the opposite way.
 * @source optics-practice
 */
export const TINT_RULES = {
  /**
   * L* that is spoken of: 50, of a pale colour so much above its masstone; how much lighter than its
   * masstone a let-down is at least, since a nearer one is the masstone again; how far from the wanted
   * one it may lie; and from which masstone on there is nothing to speak of.
   */
  lightness: { wanted: 50, aboveMasstone: 10, lighterMin: 8, within: 30, masstoneMax: 85 },
  /** Largest C*ab of masstone and of let-down for the colour to be spoken of as a grey. */
  grey: { masstoneChromaMax: 15, tintChromaMax: 10 },
  /** Greys by C*ab of the let-down; each row holds below its limit. */
  leanings: [
    { chromaBelow: 1.5, rule: "stays-near-neutral" },
    { chromaBelow: 3.5, rule: "leans" },
    { chromaBelow: 6, rule: "turns-clearly" },
    { chromaBelow: Infinity, rule: "turns-strongly" },
  ],
  /** Chromatic colours: least change of C*ab, and of hue [degree], that is spoken of. */
  chromaChangeMin: 5,
  hueTurnMin: 5,
  /** Least C*ab of masstone and let-down for a turn of hue to mean anything. */
  hueChromaMin: 5,
  /** Least distance in a*b* at equal L* between two whites that is spoken of. */
  whitesApartMin: 2,
} as const;

/**
 * What a black or a grey that has not been read alone does in one white: it is judged by its let-down, as any grey is.
 *
 * @param tints as of {@link tintRuling}.
 * @returns `stays-near-neutral`, `leans`, `turns-clearly` or `turns-strongly`; `no-tint-to-judge` where the let-down
 *   is no grey, of which only beside its masstone anything could be said.
 * @source optics-practice
 */
export function greyTintRuling(white: string, tints: readonly JudgedTint[]): TintStatement {
  const ruling = tintRuling(white, tints, BLACK);
  return "chroma" in ruling.values && ruling.values.chroma > TINT_RULES.grey.tintChromaMax
    ? { rule: "no-tint-to-judge", values: { white } }
    : ruling;
}

/** The darkest neutral: a colour to which no let-down is too near. */
const BLACK: Lab = { L: 0, a: 0, b: 0 };

/**
 * What a colour does in one white.
 *
 * @param tints let-downs in that white, at equal L* or as measured; the one nearest L* 50
 *   is judged, of a colour that is paler itself the one nearest 10 above its masstone; never one that is
 *   not 8 L* lighter than its masstone.
 * @param masstone Lab (D65/10) of the colour itself.
 * @returns for a grey `stays-near-neutral`, `leans`, `turns-clearly` or `turns-strongly`, with the hue
 *   it goes to; for a chromatic colour `gains-chroma`, `keeps-chroma` or `loses-chroma`, with `turn`
 *   ("keeps-hue", "turns-toward" and the hue, or "no-hue-to-compare"); `no-tint-to-judge`.
 * @source optics-practice
 */
export function tintRuling(
  white: string,
  tints: readonly JudgedTint[],
  masstone: Lab,
): TintStatement {
  const { lightness } = TINT_RULES;
  const wanted = Math.max(lightness.wanted, masstone.L + lightness.aboveMasstone);
  const nearest = tints.toSorted(
    (one, other) => Math.abs(one.lab.L - wanted) - Math.abs(other.lab.L - wanted),
  );
  const [judged = nearest[0]] = nearest.filter(
    ({ lab: { L } }) => L >= masstone.L + lightness.lighterMin,
  );
  if (judged === undefined) return { rule: "no-tint-to-judge", values: { white } };
  const { lab } = judged;
  if (
    masstone.L > lightness.masstoneMax ||
    lab.L < masstone.L + lightness.lighterMin ||
    Math.abs(lab.L - wanted) > lightness.within
  ) {
    return {
      rule: "no-tint-to-judge",
      values: { white, wantedL: wanted, nearestL: lab.L },
      source: "optics-practice",
    };
  }
  const tint = labToLch(lab);
  const values = {
    white,
    L: lab.L,
    a: lab.a,
    b: lab.b,
    chroma: tint.C,
    hue: colourWord(tint),
    basis: judged.basis,
    ...(judged.massRatio !== undefined && { massRatio: judged.massRatio }),
    ...(judged.uncertainty !== undefined && { uncertainty: judged.uncertainty }),
  };
  const own = labToLch(masstone);
  const isGrey =
    own.C <= TINT_RULES.grey.masstoneChromaMax && tint.C <= TINT_RULES.grey.tintChromaMax;
  if (isGrey) return { rule: leaning(tint.C), values, source: "optics-practice" };

  const chromaChange = tint.C - own.C;
  const rule =
    Math.abs(chromaChange) < TINT_RULES.chromaChangeMin
      ? "keeps-chroma"
      : chromaChange > 0
        ? "gains-chroma"
        : "loses-chroma";
  return {
    rule,
    values: { ...values, masstoneChroma: own.C, chromaChange, ...turnOfHue(own, tint) },
    source: "optics-practice",
  };
}

function leaning(chroma: number): (typeof TINT_RULES.leanings)[number]["rule"] {
  const row = TINT_RULES.leanings.find(({ chromaBelow }) => chroma < chromaBelow);
  if (row === undefined)
    throw new RangeError(`The chroma is ${chroma}; right would be 0 <= C*ab < Infinity`);
  return row.rule;
}

function turnOfHue(masstone: { C: number; h: number }, tint: { C: number; h: number }): TurnOfHue {
  if (Math.min(masstone.C, tint.C) < TINT_RULES.hueChromaMin) return { turn: "no-hue-to-compare" };
  const hueShift = hueTurn(masstone.h, tint.h);
  if (Math.abs(hueShift) < TINT_RULES.hueTurnMin) return { turn: "keeps-hue", hueShift };
  return { turn: "turns-toward", hueShift, toward: hueToward(masstone.h, hueShift) };
}

/** Contrast ratio [1] under which a let-down shows its ground, and says little of a coat that hides. Our own limit. */
export const SHOWS_GROUND = 0.85;

/**
 * Why nothing is said of a white whose let-downs were read on films that let their ground through.
 * @param contrasts Y over black to Y over white of those that were read over both [1].
 * @returns `no-tint-to-judge` with the least of them; undefined where all hide well enough.
 * @source kubelka-1948
 */
export function groundShownRuling(
  white: string,
  contrasts: readonly number[],
): TintStatement | undefined {
  const contrast = Math.min(...contrasts);
  return contrast < SHOWS_GROUND
    ? { rule: "no-tint-to-judge", values: { white, contrast }, source: "kubelka-1948" }
    : undefined;
}

/** A colour at one lightness in one white. */
export interface InWhite {
  readonly white: string;
  readonly a: number;
  readonly b: number;
  /** Standard uncertainties of both [1]. */
  readonly uncertainty: { readonly a: number; readonly b: number };
}

/**
 * Whether the white makes a difference, at one L*.
 * @param L the L* (D65/10) that all were taken at.
 * @returns `differs-by-white` with the two whites furthest apart, of those that are further apart than the
 *   uncertainty of both, and the change in a*, b* from the first to the second; `whites-not-told-apart` where
 *   they lie apart and none further than that; `alike-in-whites`; `one-white-only` for fewer than two.
 * @source optics-practice
 */
export function whitesRuling(L: number, colours: readonly InWhite[]): WhitesStatement {
  const pairs = colours.flatMap((one, i) =>
    colours.slice(i + 1).map((other) => ({ one, other, ...apart(one, other) })),
  );
  const [furthest, ...nearer] = pairs.toSorted((first, second) => second.distance - first.distance);
  if (furthest === undefined) return { rule: "one-white-only", values: { L } };
  const told = [furthest, ...nearer].find(
    ({ distance, uncertainty }) => distance >= TINT_RULES.whitesApartMin && distance > uncertainty,
  );
  const widest = told ?? furthest;
  // From the warmer to the cooler white, so that a change of b* is read as "bluer by".
  const [from, to] =
    widest.one.b >= widest.other.b ? [widest.one, widest.other] : [widest.other, widest.one];
  const isUntold = told === undefined && widest.distance >= TINT_RULES.whitesApartMin;
  return {
    rule:
      told !== undefined
        ? "differs-by-white"
        : isUntold
          ? "whites-not-told-apart"
          : "alike-in-whites",
    values: {
      L,
      from: from.white,
      to: to.white,
      distance: widest.distance,
      aChange: to.a - from.a,
      bChange: to.b - from.b,
      ...(isUntold ? { uncertainty: widest.uncertainty } : {}),
    },
    source: "optics-practice",
  };
}

/** Distance of two colours in a*b*, and its standard uncertainty along the line between them [1]. */
function apart(one: InWhite, other: InWhite): { distance: number; uncertainty: number } {
  const [a, b] = [other.a - one.a, other.b - one.b];
  const distance = Math.hypot(a, b);
  if (distance === 0) return { distance, uncertainty: 0 };
  const errors = [one, other].flatMap(({ uncertainty }) => [uncertainty.a * a, uncertainty.b * b]);
  return { distance, uncertainty: Math.hypot(...errors) / distance };
}

/** In which whites of the range a colour was not let down: silence would be read as "nothing to tell". */
export function notLetDownRuling(whites: readonly string[]): NotLetDown | undefined {
  return whites.length === 0 ? undefined : { rule: "not-let-down-in", values: { whites } };
}
