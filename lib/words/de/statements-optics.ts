import type { PaintStatement } from "../../optics/statements.ts";
import { TINT_RULES } from "../../optics/tints/tint-statement.ts";
import { tintSentences } from "../tint-sentence.ts";
import { waysApart, type Way } from "../tint-words.ts";
import { TINT_WORDS } from "./tint-words.ts";
import type { WordingsOf } from "../../quantities/statement.ts";
import { inGerman } from "./closed-sets.ts";
import { GEOMETRY_NAMES } from "./geometry-names.ts";
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

const KINDS = { pigment: "trockenes Pigment", paint: "Farbe" } as const;

/** Colours in whites, strength, hiding, gloss, mulled against milled. */
export const OPTICS_RULINGS: WordingsOf<PaintStatement> = {
  ...tintSentences(TINT_WORDS),
  "no-tint-to-judge": (v) =>
    sentence(`was sie in ${within(v.white)} tut, lässt sich nicht sagen: ${whyNotJudged(v)}`),
  "differs-by-white": (v) =>
    `Bei ${lightnessText(v.L)} ist sie in ${within(v.to)} ${apart(v)} als in ${within(v.from)}.`,
  "alike-in-whites": (v) =>
    `Bei ${lightnessText(v.L)} ist ihr Buntton in jedem Weiß derselbe, innerhalb von ${decimals(v.distance, 1)} in a*, b*.`,
  "whites-not-told-apart": (v) =>
    `Bei ${lightnessText(v.L)} lässt sich kein Weiß vom anderen unterscheiden: worin sie sich am meisten unterscheiden, ${decimals(v.distance, 1)} in a*, b*, liegt innerhalb der \u00b1\u00a0${decimals(v.uncertainty ?? 0, 1)} der Aufhellungen.`,
  "one-white-only": (v) =>
    `Bei ${lightnessText(v.L)} ist sie nicht in zwei Weiß bekannt, daher kein Vergleich der Weiß.`,

  "geometries-differ": (v) =>
    `Sie lassen sich nicht zusammen auswerten: eine wurde ${geometry(v.sample)} gemessen, die andere ${geometry(v.reference)}.`,
  "not-let-down-in": (v) => `Nicht erprobt in ${namesWithin(v.whites, "or")}.`,

  "whites-differ": (v) =>
    `Kein Vergleich der Farbstärke: eine wurde in ${within(v.sample)} aufgehellt, die andere in ${within(v.reference)}.`,
  "ratio-kinds-differ": (v) =>
    `Kein Vergleich der Farbstärke: eine Aufhellung wurde als ${KINDS[v.sample]} gewogen, die andere als ${KINDS[v.reference]}.`,
  "grey-beside-colour": () =>
    "Kein Vergleich der Farbstärke: eine der beiden gibt in Weiß ein Grau, die andere eine bunte Farbe.",
  "hues-not-comparable": (v) =>
    `Kein Vergleich der Farbstärke: die beiden absorbieren an verschiedenen Stellen am stärksten (${decimals(v.sampleNm, 0)} und ${decimals(v.referenceNm, 0)}\u00a0nm).`,
  "milled-stronger": (v) =>
    `Von Hand angerieben hat sie ${percent(v.strength)} der Farbstärke der gewalzten${comparedIn(v)}.`,
  "mulled-stronger": (v) =>
    `Von Hand angerieben ist sie stärker: ${percent(v.strength)} der Farbstärke der gewalzten${comparedIn(v)}.`,
  "alike-mulled-and-milled": (v) =>
    `Von Hand angerieben oder gewalzt, die Farbstärke ist gleich: ${percent(v.strength)} der gewalzten${comparedIn(v)}.`,
  "mulled-weaker": () =>
    "Von Hand angerieben ist sie voraussichtlich schwächer als gewalzt: Klümpchen behalten einen Teil der Farbe für sich.",
  "mulled-weaker-paler-bluer": (v) =>
    `Von Hand angerieben behält sie voraussichtlich ${percent(v.kept)} ihrer Farbstärke (Klümpchen von ${micrometres(v.lumpsUm)}), mit blasseren und blaueren Aufhellungen als gewalzt.`,

  "films-hid-their-grounds": (v) =>
    `Die gemessenen Filme (${micrometres(v.filmsUm)}) deckten die Prüfkarte schon bei den meisten Wellenlängen: ein dünnerer Film als der angegebene kann genügen.`,
  "strength-by-absorption": (v) =>
    `Die Farbstärke ist gegen ${v.reference} gemessen, nach dem, was beide in ${within(v.white)} absorbieren; bei gleicher Stärke bleibt ein Unterschied von \u0394E00 ${decimals(v.residualDeltaE00, 1)}.`,
  "strength-by-equal-depth": (v) =>
    `Die Farbstärke ist gegen ${v.reference} gemessen, danach, wie viel von jeder ${within(v.white)} auf eine Helligkeit bringt, denn die Aufhellungen reichen nicht zu denen der anderen; bei dieser Helligkeit bleibt ein Unterschied von \u0394E00 ${decimals(v.residualDeltaE00, 1)}.`,
  "contrast-without-gloss": (v) =>
    `Der Glanz ist darin: ohne ihn hat ein Film von ${micrometres(v.filmUm)} ein Kontrastverhältnis von ${decimals(v.excluded, 2)}, mit ihm ${decimals(v.included, 2)}.`,
  "masstone-by-both-grounds": (v) =>
    `Der Vollton wurde an einem Film gemessen, der seinen Grund durchscheinen lässt (Kontrastverhältnis ${decimals(v.contrast, 2)}). Aufhellungen und Mischungen sind aus dem errechnet, was beide Gründe über einen deckenden Auftrag sagen.`,
  "masstone-is-a-film": (v) =>
    `Was als Vollton gezeigt wird, ist ein Film über Weiß, der seinen Grund durchscheinen lässt (Kontrastverhältnis ${decimals(v.contrast, 2)}). Ein dickerer Auftrag wirkt dunkler, und was wir daraus errechnen, ist weniger verlässlich.`,
  "does-not-hide": (v) =>
    `Selbst ein Film von ${decimals(v.filmUm / 1000, 0)}\u00a0mm deckt nicht: sein Kontrastverhältnis ist ${decimals(v.contrastRatio, 2)}, nötig wäre ${decimals(v.target, 2)}.`,
  "gloss-deepens": (v) =>
    `Ein glänzender Film wirkt dunkler als ein matter (Helligkeit L* ${decimals(v.glossyL, 0)} gegen ${decimals(v.matteL, 0)}).`,
  "gloss-hardly-deepens": (v) =>
    `Glanz macht sie kaum dunkler (Helligkeit L* ${decimals(v.glossyL, 0)} gegen ${decimals(v.matteL, 0)} matt).`,
  "extender-hardly-lightens": (v) =>
    `Ein Streckmedium, kein Weiß: ${significant(v.volumes, 2)} Volumenteile Medium auf einen Teil ${extended(v)} heben L* nur um ${decimals(v.change, 1)}, von ${decimals(v.fromL, 0)} aus (mit Glanz).`,
  "extender-lightens": (v) =>
    `${significant(v.volumes, 2)} Volumenteile Medium auf einen Teil ${extended(v)} heben L* von ${decimals(v.fromL, 0)} auf ${decimals(v.toL, 0)} (mit Glanz).`,
};

function geometry(of: string): string {
  return inGerman(GEOMETRY_NAMES, of);
}

function extended({ colour }: { readonly colour?: string }): string {
  return colour === undefined ? "Farbe" : within(colour);
}

/** In which white the two were held against each other. */
function comparedIn({ white }: { readonly white?: string }): string {
  return white === undefined ? "" : ` (in ${within(white)})`;
}

/** From the warmer white to the cooler: bluer, and redder or greener where that counts. */
function apart(changes: { readonly aChange: number; readonly bChange: number }): string {
  return listed(
    waysApart(changes).map(
      ({ by, toward, axis }) => `um ${decimals(by, 1)} in ${axis} ${NEARER[toward]}`,
    ),
  );
}

const NEARER: Readonly<Record<Way["toward"], string>> = {
  blue: "blauer",
  yellow: "gelber",
  green: "grüner",
  red: "röter",
};

type NotJudged = {
  readonly wantedL?: number;
  readonly nearestL?: number;
  readonly contrast?: number;
};

function whyNotJudged({ wantedL, nearestL, contrast }: NotJudged): string {
  if (contrast !== undefined)
    return `ihre Aufhellungen lassen dort den Grund durchscheinen (Kontrastverhältnis ${decimals(contrast, 2)}), und ein deckender Auftrag sieht anders aus`;
  if (wantedL === undefined || nearestL === undefined)
    return "dazu braucht es eine Messung des Volltons und eine Aufhellung nahe L* 50";
  const { masstoneMax, aboveMasstone } = TINT_RULES.lightness;
  if (wantedL > masstoneMax + aboveMasstone)
    return "sie ist selbst zu hell, um dort viel zu bewirken";
  return `dazu braucht es eine Aufhellung nahe ${lightnessText(wantedL)}; die nächste liegt bei ${lightnessText(nearestL)}`;
}
