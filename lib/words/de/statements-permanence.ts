import type { ExpectedContradiction } from "../../permanence/expected-contradiction.ts";
import type { ExposureStatement, StatedContradiction } from "../../permanence/exposure.ts";
import type { SensitivityStatement } from "../../permanence/sensitivity.ts";
import type { PermanenceStatement } from "../../permanence/statements.ts";
import type { WordingsOf } from "../../quantities/statement.ts";
import { EXPECTATION_WORDS, FORM_WORDS, inGerman } from "./closed-sets.ts";
import { pigmentWord } from "../pigment-words.ts";
import {
  bracketed,
  decimals,
  deltaEabText,
  listed,
  namesWithin,
  sentence,
  within,
} from "./phrases.ts";

/** What the pigment does, of one and of several; what stands in the third place follows the circumstances. */
const EFFECTS: Readonly<
  Record<
    SensitivityStatement["values"]["effect"],
    readonly [one: string, several: string, after?: string]
  >
> = {
  bleaches: ["bleicht", "bleichen", "aus"],
  darkens: ["dunkelt", "dunkeln", "nach"],
  browns: ["wird", "werden", "braun"],
  reddens: ["wird", "werden", "rot"],
  whitens: ["wird", "werden", "weiß"],
  "turns violet": ["wird", "werden", "violett"],
  dissolves: ["löst sich", "lösen sich", "auf"],
  "loses its ash": ["verliert", "verlieren", "die Knochenasche und behält den Kohlenstoff"],
  fades: ["verblasst", "verblassen"],
};
const IN_OIL: Readonly<Record<SensitivityStatement["values"]["inOil"], string>> = {
  shielded: "Öl schützt davor",
  "partly shielded": "Öl schützt zum Teil davor",
  "not shielded": "Öl schützt nicht davor",
};

/** Gender of the form that was exposed: "der Vollton", "die Aufhellung". */
const THE_FORM = { masstone: "der Vollton", tint: "die Aufhellung" } as const;

/** Lightfastness and what else harms a colour. A category is only ever an exposure's or somebody's word; an estimate is an expectation. */
export const PERMANENCE_RULINGS: WordingsOf<PermanenceStatement> = {
  "exposed-under-standard": (v) =>
    `Kategorie\u00a0${v.category}: ${THE_FORM[v.form]} änderte sich um ${deltaEabText(v.meanDeltaEab)}${limit(v.deltaEabMax)}, belichtet nach ${sources(v)}.`,
  "exposed-not-under-standard": (v) =>
    sentence(
      `${THE_FORM[v.form]} änderte sich um ${deltaEabText(v.meanDeltaEab)}, wie in Kategorie\u00a0${v.category}${limit(v.deltaEabMax)}; die Belichtung (${sources(v)}) ist nicht alles, was die Norm verlangt`,
    ),
  "exposure-as-stated": (v) =>
    `Nach Angabe anderer änderte sich ${THE_FORM[v.form]} um ${deltaEabText(v.meanDeltaEab)}, wie in Kategorie\u00a0${v.category}${limit(v.deltaEabMax)} (${sources(v)}); hier nicht belichtet.`,
  "exposure-better-than-stated": (v) =>
    contradicted(v, "besser", `die angegebene Kategorie\u00a0${v.stated}`),
  "exposure-worse-than-stated": (v) =>
    contradicted(v, "schlechter", `die angegebene Kategorie\u00a0${v.stated}`),
  "exposure-better-than-expected": (v) =>
    contradicted(v, "besser", `nach ihren Pigmenten zu erwarten (${expected(v)})`),
  "exposure-worse-than-expected": (v) =>
    contradicted(v, "schlechter", `nach ihren Pigmenten zu erwarten (${expected(v)})`),
  "category-stated": ({ category, form }) =>
    `Kategorie\u00a0${category} ist für die Farbe angegeben${bracketed(formWord(form))}; hier nicht geprüft.`,
  "pigment-category-stated": ({ category, form, pigment }) =>
    `Kategorie\u00a0${category} ist die Angabe des Lieferanten für ${within(pigment)}${bracketed(formWord(form))}; hier nicht geprüft.`,
  "expected-by-colour-index-name": ({ pigment, colourIndexName, expectation, kinds }) =>
    sentence(
      `${within(pigment)}${bracketed(colourIndexName, kindsBeside(kinds, pigment))}: Lichtechtheit voraussichtlich ${EXPECTATION_WORDS[expectation]}; hier nicht geprüft`,
    ),
  "pigment-exposed-in-its-own-paint": ({ pigment, form, deltaEab, category }) =>
    sentence(
      `${within(pigment)} wurde hier in einer eigenen Farbe belichtet: ${THE_FORM[form]} änderte sich um ${deltaEabText(deltaEab)}, wie in Kategorie\u00a0${category}`,
    ),
  "pigment-exposed-as-stated": ({ pigment, form, deltaEab, category }) =>
    sentence(
      `${within(pigment)} in einer eigenen Farbe änderte sich im Licht um ${deltaEabText(deltaEab)} (${FORM_WORDS[form]}), wie in Kategorie\u00a0${category}, nach Angabe anderer`,
    ),
  "weaker-in-tints": ({ pigment, expectation }) =>
    `In Aufhellungen und dünnen Lasuren hält ${within(pigment)} weniger gut: voraussichtlich ${EXPECTATION_WORDS[expectation]}; hier nicht geprüft.`,
  "mixture-with-unknown-pigment": ({ pigments }) =>
    `Wie ${namesWithin(pigments)} im Licht ${hold(pigments)}, wissen wir nicht, und eine Mischung hält nur so lange wie ihr schwächstes Pigment: daher keine Angabe zur Lichtechtheit.`,
  "pigments-alike": ({ pigments }) =>
    `Die Pigmente sind gleich lichtecht: ${namesWithin(pigments)}.`,
  "weakest-pigment-decides": ({ pigments }) =>
    `Das am wenigsten lichtechte Pigment entscheidet: ${namesWithin(pigments)}.`,
  "lightfastness-of-pigment-unknown": ({ pigments }) =>
    `Wie ${namesWithin(pigments)} im Licht ${hold(pigments)}, wissen wir nicht.`,
  "least-lightfast-by-exposure": ({ pigments, deltaEab }) =>
    leastLightfast(
      pigments,
      deltaEab === undefined
        ? undefined
        : `${deltaEabText(deltaEab)}, wo die eigene Farbe belichtet wurde`,
    ),
  "least-lightfast-as-stated": ({ pigments, category }) =>
    leastLightfast(pigments, `Kategorie\u00a0${category}, wie angegeben`),
  "least-lightfast-expected": ({ pigments }) =>
    leastLightfast(pigments, "zu erwarten, nicht geprüft"),
  "components-alike-in-light": ({ pigments }) =>
    sentence(
      `${namesWithin(pigments)} verhalten sich im Licht gleich, soweit bekannt: keines gibt eher nach als die anderen`,
    ),
  "components-in-light-not-known": ({ pigments }) =>
    `Wie ${namesWithin(pigments)} im Licht ${hold(pigments)}, wissen wir nicht, und daher auch nicht, welche Komponente zuerst nachgibt.`,
  "blue-wool-is-another-scale": ({ reference, category }) =>
    `Stufe ${reference} der Blauwollskala ist die Angabe eines Lieferanten und gehört zu einer anderen Skala; nach altem Brauch entspricht sie Kategorie\u00a0${category}, doch keine Norm sagt das.`,
  "change-beside-grey-scale": ({ deltaEab, grade }) =>
    `Eine Änderung von ${deltaEabText(deltaEab)} liegt am nächsten bei Stufe ${grade} des Graumaßstabs, auf dem 5 keine Änderung ist.`,

  "label-not-tested": () => "Lichtechtheit hier nicht geprüft.",
  "label-category-as-stated": ({ category }) =>
    `Lichtechtheit ${category} nach Angabe anderer; hier nicht geprüft.`,
  "label-category-under-standard": ({ category, forms }) =>
    `Lichtechtheit ${category} nach ASTM D4303${bracketed(formsListed(forms))}.`,
  "label-own-exposure": ({ category, forms }) =>
    `Lichtechtheit: änderte sich wie in Kategorie\u00a0${category} in unserer eigenen Belichtung${bracketed(formsListed(forms))}, nicht der der Norm.`,
  "listed-as-suitable": ({ category }) =>
    `Kategorie\u00a0${category} ist eine der zwei, die die Norm für Künstler-Ölfarben aufführt.`,
  "below-suitable": ({ category }) =>
    `Kategorie\u00a0${category} liegt unter den zwei, die die Norm für Künstler-Ölfarben aufführt.`,

  "harmed-by-alkali": (v) => harm(v, "in Lauge"),
  "harmed-by-acid": (v) => harm(v, "in Säure"),
  "harmed-by-sulphur": (v) => harm(v, "in schwefelhaltiger Luft"),
  "harmed-by-heat": (v) => harm(v, "beim Erhitzen"),
  "harmed-by-damp": (v) => harm(v, "in starkem Licht mit Feuchte"),
  "harmed-by-light": (v) => harm(v, v.effect === "fades" ? "im Licht" : "in starkem Licht"),
  "said-to-be-harmed": ({ pigments, effect }) =>
    `Alte Bücher sagen: ${does(pigments, effect, "neben sulfidhaltigen Farben")}; ob das in Öl geschieht, ist umstritten.`,
};

/** The last category has no upper limit to name. */
function limit(deltaEabMax: number | undefined): string {
  return deltaEabMax === undefined ? "" : bracketed(`bis ${decimals(deltaEabMax, 0)}`);
}

function sources({ standards, exposures }: ExposureStatement["values"]): string {
  return [...standards, listed(exposures)].join(", ");
}

function expected({ expectation }: ExpectedContradiction["values"]): string {
  return EXPECTATION_WORDS[expectation];
}

function contradicted(
  { form, exposed, meanDeltaEab }: StatedContradiction["values"] | ExpectedContradiction["values"],
  held: string,
  than: string,
): string {
  return `Hier belichtet hielt ${THE_FORM[form]} ${held} (wie in Kategorie\u00a0${exposed}, ${deltaEabText(meanDeltaEab)}) als ${than}; die Belichtung zählt.`;
}

function formWord(form: string | undefined): string | undefined {
  return form === undefined ? undefined : inGerman(FORM_WORDS, form);
}

function formsListed(forms: readonly string[]): string {
  return listed(forms.map((form) => inGerman(FORM_WORDS, form)));
}

function hold(pigments: readonly string[]): string {
  return pigments.length > 1 ? "halten" : "hält";
}

/** What the pigment stands among in the list, unless that is its own name. */
function kindsBeside(kinds: string, pigment: string): string | undefined {
  return kinds.toLowerCase() === pigment.toLowerCase()
    ? undefined
    : `Gruppe: ${pigmentWord(kinds, "de")}`;
}

/** Of the components of a mixture: the one whose loss is the likeliest. */
function leastLightfast(pigments: readonly string[], ground: string | undefined): string {
  return sentence(
    `${namesWithin(pigments)} ${pigments.length > 1 ? "sind" : "ist"} am wenigsten lichtecht, soweit bekannt${bracketed(ground)}: darauf ist zu achten`,
  );
}

function does(
  pigments: readonly string[],
  effect: SensitivityStatement["values"]["effect"],
  where: string,
): string {
  const [one, several, after] = EFFECTS[effect];
  const last =
    effect === "loses its ash" && pigments.length > 1
      ? "die Knochenasche und behalten den Kohlenstoff"
      : after;
  return [namesWithin(pigments), pigments.length < 2 ? one : several, where, last]
    .filter((part) => part !== undefined)
    .join(" ");
}

function harm({ pigments, effect, inOil }: SensitivityStatement["values"], where: string): string {
  return sentence(`${does(pigments, effect, where)}; ${IN_OIL[inOil]}`);
}
