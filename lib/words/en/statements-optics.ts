import type { PaintStatement } from "../../optics/statements.ts";
import { TINT_RULES } from "../../optics/tints/tint-statement.ts";
import { tintSentences } from "../tint-sentence.ts";
import { waysApart, type Way } from "../tint-words.ts";
import { TINT_WORDS } from "./tint-words.ts";
import type { WordingsOf } from "../../quantities/statement.ts";
import {
  decimals,
  lightnessText,
  listed,
  micrometres,
  namesWithin,
  percent,
  sentence,
  significant,
  within,
} from "./phrases.ts";

const KINDS = { pigment: "dry pigment", paint: "paint" } as const;

/** Colours in whites, strength, hiding, gloss, mulled against milled. */
export const OPTICS_RULINGS: WordingsOf<PaintStatement> = {
  ...tintSentences(TINT_WORDS),
  "no-tint-to-judge": (v) =>
    sentence(`we cannot say what it does in ${within(v.white)}: ${whyNotJudged(v)}`),
  "differs-by-white": (v) =>
    `At ${lightnessText(v.L)} it is ${apart(v)} in ${within(v.to)} than in ${within(v.from)}.`,
  "alike-in-whites": (v) =>
    `At ${lightnessText(v.L)} its hue is the same in every white, within ${decimals(v.distance, 1)} of a*, b*.`,
  "whites-not-told-apart": (v) =>
    `At ${lightnessText(v.L)} no white is told from another: the most they differ by, ${decimals(v.distance, 1)} of a*, b*, lies within the \u00b1\u00a0${decimals(v.uncertainty ?? 0, 1)} of the let-downs.`,
  "one-white-only": (v) =>
    `At ${lightnessText(v.L)} we do not know it in two whites, so whites are not compared.`,

  "geometries-differ": (v) =>
    `They cannot be worked out together: one was read ${v.sample}, the other ${v.reference}.`,
  "not-let-down-in": (v) => `Not tried in ${namesWithin(v.whites, "or")}.`,

  "whites-differ": (v) =>
    `Strength is not compared: one was let down in ${within(v.sample)}, the other in ${within(v.reference)}.`,
  "ratio-kinds-differ": (v) =>
    `Strength is not compared: one let-down was weighed as ${KINDS[v.sample]}, the other as ${KINDS[v.reference]}.`,
  "grey-beside-colour": () =>
    "Strength is not compared: one of the two makes a grey in the white and the other a colour.",
  "hues-not-comparable": (v) =>
    `Strength is not compared: the two absorb most in different places (${decimals(v.sampleNm, 0)} and ${decimals(v.referenceNm, 0)}\u00a0nm).`,
  "milled-stronger": (v) =>
    `Mulled, it has ${percent(v.strength)} of its strength when milled${comparedIn(v)}.`,
  "mulled-stronger": (v) =>
    `Mulled, it is the stronger: ${percent(v.strength)} of its strength when milled${comparedIn(v)}.`,
  "alike-mulled-and-milled": (v) =>
    `Mulled or milled, its strength is the same: ${percent(v.strength)} of milled${comparedIn(v)}.`,
  "mulled-weaker": () =>
    "Mulled, expect it weaker than milled: lumps keep part of the colour to themselves.",
  "mulled-weaker-paler-bluer": (v) =>
    `Mulled, expect it to keep ${percent(v.kept)} of its strength (lumps of ${micrometres(v.lumpsUm)}), with tints paler and bluer than milled.`,

  "films-hid-their-grounds": (v) =>
    `The films read (${micrometres(v.filmsUm)}) already hid the chart at most wavelengths: a thinner film than the one given may do.`,
  "strength-by-absorption": (v) =>
    `Strength is measured against ${v.reference} by what both absorb in ${within(v.white)}; at equal strength they still differ by \u0394E00 ${decimals(v.residualDeltaE00, 1)}.`,
  "strength-by-equal-depth": (v) =>
    `Strength is measured against ${v.reference} by how much of each brings ${within(v.white)} to one lightness, since its let-downs do not reach the other's; at that lightness they still differ by \u0394E00 ${decimals(v.residualDeltaE00, 1)}.`,
  "contrast-without-gloss": (v) =>
    `That includes the shine: without it, a film of ${micrometres(v.filmUm)} has a contrast ratio of ${decimals(v.excluded, 2)}; with it, ${decimals(v.included, 2)}.`,
  "masstone-by-both-grounds": (v) =>
    `The masstone was read on a film that lets its ground show through (contrast ratio ${decimals(v.contrast, 2)}). Tints and mixtures are worked out from what both grounds tell of a coat that hides.`,
  "masstone-is-a-film": (v) =>
    `What is shown as the masstone is a film over white that lets its ground show through (contrast ratio ${decimals(v.contrast, 2)}). A thicker coat looks darker, and what we work out from it is less certain.`,
  "does-not-hide": (v) =>
    `Even a film of ${decimals(v.filmUm / 1000, 0)}\u00a0mm does not hide: its contrast ratio is ${decimals(v.contrastRatio, 2)}, and ${decimals(v.target, 2)} would.`,
  "gloss-deepens": (v) =>
    `A glossy film looks darker than a matte one (lightness L* ${decimals(v.glossyL, 0)} against ${decimals(v.matteL, 0)}).`,
  "gloss-hardly-deepens": (v) =>
    `Gloss hardly darkens it (lightness L* ${decimals(v.glossyL, 0)} against ${decimals(v.matteL, 0)} matte).`,
  "extender-hardly-lightens": (v) =>
    `An extender, not a white: ${significant(v.volumes, 2)} volumes of the medium to one of ${extended(v)} lift its L* by only ${decimals(v.change, 1)}, from ${decimals(v.fromL, 0)} (gloss included).`,
  "extender-lightens": (v) =>
    `${significant(v.volumes, 2)} volumes of the medium to one of ${extended(v)} lift its L* from ${decimals(v.fromL, 0)} to ${decimals(v.toL, 0)} (gloss included).`,
};

function extended({ colour }: { readonly colour?: string }): string {
  return colour === undefined ? "the colour" : within(colour);
}

/** In which white the two were held against each other. */
function comparedIn({ white }: { readonly white?: string }): string {
  return white === undefined ? "" : ` (in ${within(white)})`;
}

/** From the warmer white to the cooler: bluer, and redder or greener where that counts. */
function apart(changes: { readonly aChange: number; readonly bChange: number }): string {
  return listed(
    waysApart(changes).map(
      ({ by, toward, axis }) => `${NEARER[toward]} by ${decimals(by, 1)} of ${axis}`,
    ),
  );
}

const NEARER: Readonly<Record<Way["toward"], string>> = {
  blue: "bluer",
  yellow: "yellower",
  green: "greener",
  red: "redder",
};

type NotJudged = {
  readonly wantedL?: number;
  readonly nearestL?: number;
  readonly contrast?: number;
};

function whyNotJudged({ wantedL, nearestL, contrast }: NotJudged): string {
  if (contrast !== undefined)
    return `its let-downs show their ground there (contrast ratio ${decimals(contrast, 2)}), and a coat that hides looks otherwise`;
  if (wantedL === undefined || nearestL === undefined)
    return "it takes a reading of the masstone and a let-down near L* 50";
  const { masstoneMax, aboveMasstone } = TINT_RULES.lightness;
  if (wantedL > masstoneMax + aboveMasstone) return "it is too pale itself to do much there";
  return `it takes a let-down near ${lightnessText(wantedL)}; the nearest is at ${lightnessText(nearestL)}`;
}
