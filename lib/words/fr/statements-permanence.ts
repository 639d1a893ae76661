import type { ExpectedContradiction } from "../../permanence/expected-contradiction.ts";
import type { ExposureStatement, StatedContradiction } from "../../permanence/exposure.ts";
import type { SensitivityStatement } from "../../permanence/sensitivity.ts";
import type { PermanenceStatement } from "../../permanence/statements.ts";
import type { WordingsOf } from "../../quantities/statement.ts";
import { EXPECTED, FORMS, wordOf } from "./closed-words.ts";
import {
  bracketed,
  decimals,
  deltaEabText,
  listed,
  namesWithin,
  sentence,
  within,
} from "./phrases.ts";
import { pigmentWord } from "../pigment-words.ts";

/** What the pigment does, of one and of several. */
const EFFECTS: Readonly<
  Record<SensitivityStatement["values"]["effect"], readonly [one: string, several: string]>
> = {
  bleaches: ["se décolore", "se décolorent"],
  darkens: ["fonce", "foncent"],
  browns: ["brunit", "brunissent"],
  reddens: ["rougit", "rougissent"],
  whitens: ["blanchit", "blanchissent"],
  "turns violet": ["vire au violet", "virent au violet"],
  dissolves: ["se dissout", "se dissolvent"],
  "loses its ash": [
    "perd sa cendre d’os et garde son carbone",
    "perdent leur cendre d’os et gardent leur carbone",
  ],
  fades: ["passe", "passent"],
};

/** Of one and of several. */
const IN_OIL: Readonly<
  Record<SensitivityStatement["values"]["inOil"], readonly [one: string, several: string]>
> = {
  shielded: ["l’huile l’en protège", "l’huile les en protège"],
  "partly shielded": ["l’huile l’en protège en partie", "l’huile les en protège en partie"],
  "not shielded": ["l’huile ne l’en protège pas", "l’huile ne les en protège pas"],
};

/** Lightfastness and what else harms a colour. A category is only ever an exposure's or somebody's word; an estimate is an expectation. */
export const PERMANENCE_RULINGS: WordingsOf<PermanenceStatement> = {
  "exposed-under-standard": (v) =>
    `Catégorie\u00a0${v.category}\u202f: le ${wordOf(FORMS, v.form)} a changé de ${deltaEabText(v.meanDeltaEab)}${limit(v.deltaEabMax)}, exposé selon ${sources(v)}.`,
  "exposed-not-under-standard": (v) =>
    `Le ${wordOf(FORMS, v.form)} a changé de ${deltaEabText(v.meanDeltaEab)}, comme en catégorie\u00a0${v.category}${limit(v.deltaEabMax)}\u202f; l’exposition (${sources(v)}) n’est pas tout ce que demande la norme.`,
  "exposure-as-stated": (v) =>
    `Selon d’autres, le ${wordOf(FORMS, v.form)} a changé de ${deltaEabText(v.meanDeltaEab)}, comme en catégorie\u00a0${v.category}${limit(v.deltaEabMax)} (${sources(v)})\u202f; non exposé ici.`,
  "exposure-better-than-stated": (v) =>
    contradicted(v, "mieux", `la catégorie\u00a0${v.stated} déclarée`),
  "exposure-worse-than-stated": (v) =>
    contradicted(v, "moins bien", `la catégorie\u00a0${v.stated} déclarée`),
  "exposure-better-than-expected": (v) =>
    contradicted(v, "mieux", `ce que ses pigments font prévoir (${EXPECTED[v.expectation]})`),
  "exposure-worse-than-expected": (v) =>
    contradicted(v, "moins bien", `ce que ses pigments font prévoir (${EXPECTED[v.expectation]})`),
  "category-stated": ({ category, form }) =>
    `La catégorie\u00a0${category} est déclarée pour la couleur${bracketed(formText(form))}\u202f; non testée ici.`,
  "pigment-category-stated": ({ category, form, pigment }) =>
    `La catégorie\u00a0${category} est déclarée par le fournisseur pour ${within(pigment)}${bracketed(formText(form))}\u202f; non testée ici.`,
  "expected-by-colour-index-name": ({ pigment, colourIndexName, expectation, kinds }) =>
    sentence(
      `${within(pigment)}${bracketed(colourIndexName, kindsBeside(kinds, pigment))}\u202f: solidité à prévoir ${EXPECTED[expectation]}\u202f; non testée ici`,
    ),
  "pigment-exposed-in-its-own-paint": ({ pigment, form, deltaEab, category }) =>
    sentence(
      `${within(pigment)} a été exposé ici dans une peinture à lui seul\u202f: le ${wordOf(FORMS, form)} a changé de ${deltaEabText(deltaEab)}, comme en catégorie\u00a0${category}`,
    ),
  "pigment-exposed-as-stated": ({ pigment, form, deltaEab, category }) =>
    sentence(
      `${within(pigment)}, dans une peinture à lui seul, a changé à la lumière de ${deltaEabText(deltaEab)} en ${wordOf(FORMS, form)}, comme en catégorie\u00a0${category}, selon d’autres`,
    ),
  "weaker-in-tints": ({ pigment, expectation }) =>
    `En dégradés et en glacis minces, ${within(pigment)} tient moins bien\u202f: solidité à prévoir ${EXPECTED[expectation]}\u202f; non testée ici.`,
  "mixture-with-unknown-pigment": ({ pigments }) =>
    `Nous ne savons pas comment ${holds(pigments)} à la lumière, et un mélange ne dure qu’autant que son pigment le plus faible\u202f: aucune solidité n’est donc donnée.`,
  "pigments-alike": ({ pigments }) => `Ses pigments durent autant\u202f: ${namesWithin(pigments)}.`,
  "weakest-pigment-decides": ({ pigments }) =>
    `Le pigment le moins solide décide\u202f: ${namesWithin(pigments)}.`,
  "lightfastness-of-pigment-unknown": ({ pigments }) =>
    `Nous ne savons pas comment ${holds(pigments)} à la lumière.`,
  "least-lightfast-by-exposure": ({ pigments, deltaEab }) =>
    leastLightfast(
      pigments,
      deltaEab === undefined
        ? undefined
        : `${deltaEabText(deltaEab)} là où sa propre peinture a été exposée`,
    ),
  "least-lightfast-as-stated": ({ pigments, category }) =>
    leastLightfast(pigments, `catégorie\u00a0${category}, déclarée`),
  "least-lightfast-expected": ({ pigments }) => leastLightfast(pigments, "à prévoir, non testé"),
  "components-alike-in-light": ({ pigments }) =>
    `Autant qu’on sache, ${namesWithin(pigments)} se valent à la lumière\u202f: aucun n’a plus de chances de passer le premier.`,
  "components-in-light-not-known": ({ pigments }) =>
    `Nous ne savons pas comment ${holds(pigments)} à la lumière, ni donc quel composant passe le premier.`,
  "blue-wool-is-another-scale": ({ reference, category }) =>
    `Le degré ${reference} de laine bleue est l’indication d’un fournisseur, sur une autre échelle\u202f; l’usage le rapproche de la catégorie\u00a0${category}, mais aucune norme ne le dit.`,
  "change-beside-grey-scale": ({ deltaEab, grade }) =>
    `Un changement de ${deltaEabText(deltaEab)} est au plus près du degré ${grade} de l’échelle des gris, où 5 est l’absence de changement.`,

  "label-not-tested": () => "Solidité à la lumière non testée ici.",
  "label-category-as-stated": ({ category }) =>
    `Solidité à la lumière ${category}, déclarée par d’autres\u202f; non testée ici.`,
  "label-category-under-standard": ({ category, forms }) =>
    `Solidité à la lumière ${category} selon ASTM D4303${bracketed(listed(forms.map((form) => wordOf(FORMS, form))))}.`,
  "label-own-exposure": ({ category, forms }) =>
    `Solidité à la lumière\u202f: a changé comme en catégorie\u00a0${category} dans notre propre exposition${bracketed(listed(forms.map((form) => wordOf(FORMS, form))))}, non celle de la norme.`,
  "listed-as-suitable": ({ category }) =>
    `La catégorie\u00a0${category} est l’une des deux que retient la spécification des peintures à l’huile pour artistes.`,
  "below-suitable": ({ category }) =>
    `La catégorie\u00a0${category} est au-dessous des deux que retient la spécification des peintures à l’huile pour artistes.`,

  "harmed-by-alkali": (v) => harm(v, "en milieu alcalin"),
  "harmed-by-acid": (v) => harm(v, "à l’acide"),
  "harmed-by-sulphur": (v) => harm(v, "à l’air soufré"),
  "harmed-by-heat": (v) => harm(v, "à la chaleur"),
  "harmed-by-damp": (v) => harm(v, "à une lumière forte et à l’humidité"),
  "harmed-by-light": (v) => harm(v, v.effect === "fades" ? "à la lumière" : "à une lumière forte"),
  "said-to-be-harmed": ({ pigments, effect }) =>
    sentence(
      `de vieux livres disent que ${namesWithin(pigments)} ${EFFECTS[effect][pigments.length < 2 ? 0 : 1]} auprès de couleurs qui contiennent des sulfures\u202f; que cela arrive dans l’huile est contesté`,
    ),
};

function formText(form: string | undefined): string | undefined {
  return form === undefined ? undefined : wordOf(FORMS, form);
}

/** The last category has no upper limit to name. */
function limit(deltaEabMax: number | undefined): string {
  return deltaEabMax === undefined ? "" : bracketed(`jusqu’à ${decimals(deltaEabMax, 0)}`);
}

function sources({ standards, exposures }: ExposureStatement["values"]): string {
  return [...standards, listed(exposures)].join(", ");
}

function contradicted(
  { form, exposed, meanDeltaEab }: StatedContradiction["values"] | ExpectedContradiction["values"],
  held: string,
  than: string,
): string {
  return `Exposé ici, le ${wordOf(FORMS, form)} a tenu ${held} (comme en catégorie\u00a0${exposed}, ${deltaEabText(meanDeltaEab)}) que ${than}\u202f; l’exposition fait foi.`;
}

function holds(pigments: readonly string[]): string {
  return `${namesWithin(pigments)} ${pigments.length > 1 ? "tiennent" : "tient"}`;
}

/** What the pigment stands among in the list, unless that is its own name. */
function kindsBeside(kinds: string, pigment: string): string | undefined {
  return kinds.toLowerCase() === pigment.toLowerCase()
    ? undefined
    : `parmi\u202f: ${pigmentWord(kinds, "fr")}`;
}

/** Of the components of a mixture: the one whose loss is the likeliest. */
function leastLightfast(pigments: readonly string[], ground: string | undefined): string {
  return pigments.length > 1
    ? `Les moins solides à la lumière, autant qu’on sache${bracketed(ground)}\u202f: ${namesWithin(pigments)}\u202f; ce sont eux qu’il faut surveiller.`
    : `Le moins solide à la lumière, autant qu’on sache${bracketed(ground)}\u202f: ${namesWithin(pigments)}\u202f; c’est lui qu’il faut surveiller.`;
}

function harm({ pigments, effect, inOil }: SensitivityStatement["values"], where: string): string {
  const i = pigments.length < 2 ? 0 : 1;
  return sentence(
    `${namesWithin(pigments)} ${EFFECTS[effect][i]} ${where}\u202f; ${IN_OIL[inOil][i]}`,
  );
}
