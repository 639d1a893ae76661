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
  bleaches: ["se decolora", "se decoloran"],
  darkens: ["oscurece", "oscurecen"],
  browns: ["se vuelve pardo", "se vuelven pardos"],
  reddens: ["enrojece", "enrojecen"],
  whitens: ["blanquea", "blanquean"],
  "turns violet": ["vira al violeta", "viran al violeta"],
  dissolves: ["se disuelve", "se disuelven"],
  "loses its ash": [
    "pierde su ceniza de hueso y conserva su carbono",
    "pierden su ceniza de hueso y conservan su carbono",
  ],
  fades: ["se desvanece", "se desvanecen"],
};

/** Of one and of several. */
const IN_OIL: Readonly<
  Record<SensitivityStatement["values"]["inOil"], readonly [one: string, several: string]>
> = {
  shielded: ["el aceite lo protege", "el aceite los protege"],
  "partly shielded": ["el aceite lo protege en parte", "el aceite los protege en parte"],
  "not shielded": ["el aceite no lo protege", "el aceite no los protege"],
};

/** Lightfastness and what else harms a colour. A category is only ever an exposure's or somebody's word; an estimate is an expectation. */
export const PERMANENCE_RULINGS: WordingsOf<PermanenceStatement> = {
  "exposed-under-standard": (v) =>
    `Categoría\u00a0${v.category}: el ${wordOf(FORMS, v.form)} cambió en ${deltaEabText(v.meanDeltaEab)}${limit(v.deltaEabMax)}, expuesto según ${sources(v)}.`,
  "exposed-not-under-standard": (v) =>
    `El ${wordOf(FORMS, v.form)} cambió en ${deltaEabText(v.meanDeltaEab)}, como en la categoría\u00a0${v.category}${limit(v.deltaEabMax)}; la exposición (${sources(v)}) no es todo lo que pide la norma.`,
  "exposure-as-stated": (v) =>
    `Según otros, el ${wordOf(FORMS, v.form)} cambió en ${deltaEabText(v.meanDeltaEab)}, como en la categoría\u00a0${v.category}${limit(v.deltaEabMax)} (${sources(v)}); no expuesto aquí.`,
  "exposure-better-than-stated": (v) =>
    contradicted(v, "mejor", `la categoría\u00a0${v.stated} declarada`),
  "exposure-worse-than-stated": (v) =>
    contradicted(v, "peor", `la categoría\u00a0${v.stated} declarada`),
  "exposure-better-than-expected": (v) =>
    contradicted(v, "mejor", `lo que hacen prever sus pigmentos (${EXPECTED[v.expectation]})`),
  "exposure-worse-than-expected": (v) =>
    contradicted(v, "peor", `lo que hacen prever sus pigmentos (${EXPECTED[v.expectation]})`),
  "category-stated": ({ category, form }) =>
    `La categoría\u00a0${category} está declarada para el color${bracketed(formText(form))}; no ensayada aquí.`,
  "pigment-category-stated": ({ category, form, pigment }) =>
    `La categoría\u00a0${category} es dato del proveedor para ${within(pigment)}${bracketed(formText(form))}; no ensayada aquí.`,
  "expected-by-colour-index-name": ({ pigment, colourIndexName, expectation, kinds }) =>
    sentence(
      `${within(pigment)}${bracketed(colourIndexName, kindsBeside(kinds, pigment))}: solidez previsible ${EXPECTED[expectation]}; no ensayada aquí`,
    ),
  "pigment-exposed-in-its-own-paint": ({ pigment, form, deltaEab, category }) =>
    sentence(
      `${within(pigment)} se expuso aquí en una pintura suya: el ${wordOf(FORMS, form)} cambió en ${deltaEabText(deltaEab)}, como en la categoría\u00a0${category}`,
    ),
  "pigment-exposed-as-stated": ({ pigment, form, deltaEab, category }) =>
    sentence(
      `${within(pigment)}, en una pintura suya, cambió a la luz en ${deltaEabText(deltaEab)} en ${wordOf(FORMS, form)}, como en la categoría\u00a0${category}, según otros`,
    ),
  "weaker-in-tints": ({ pigment, expectation }) =>
    `En rebajes y veladuras finas, ${within(pigment)} dura menos: solidez previsible ${EXPECTED[expectation]}; no ensayada aquí.`,
  "mixture-with-unknown-pigment": ({ pigments }) =>
    `No sabemos cómo ${holds(pigments)} a la luz, y una mezcla dura solo lo que su pigmento más débil: así que no se da ninguna solidez.`,
  "pigments-alike": ({ pigments }) => `Sus pigmentos duran igual: ${namesWithin(pigments)}.`,
  "weakest-pigment-decides": ({ pigments }) =>
    `Decide el pigmento menos sólido a la luz: ${namesWithin(pigments)}.`,
  "lightfastness-of-pigment-unknown": ({ pigments }) =>
    `No sabemos cómo ${holds(pigments)} a la luz.`,
  "least-lightfast-by-exposure": ({ pigments, deltaEab }) =>
    leastLightfast(
      pigments,
      deltaEab === undefined
        ? undefined
        : `${deltaEabText(deltaEab)} donde se expuso su propia pintura`,
    ),
  "least-lightfast-as-stated": ({ pigments, category }) =>
    leastLightfast(pigments, `categoría\u00a0${category}, declarada`),
  "least-lightfast-expected": ({ pigments }) => leastLightfast(pigments, "previsible, no ensayado"),
  "components-alike-in-light": ({ pigments }) =>
    `Hasta donde se sabe, ${namesWithin(pigments)} valen lo mismo a la luz: ninguno tiene más probabilidad de desvanecerse primero.`,
  "components-in-light-not-known": ({ pigments }) =>
    `No sabemos cómo ${holds(pigments)} a la luz, ni por tanto qué componente se desvanece primero.`,
  "blue-wool-is-another-scale": ({ reference, category }) =>
    `El grado ${reference} de lana azul es dato de un proveedor, y de otra escala; por costumbre se equipara a la categoría\u00a0${category}, pero ninguna norma lo dice.`,
  "change-beside-grey-scale": ({ deltaEab, grade }) =>
    `Un cambio de ${deltaEabText(deltaEab)} es el más próximo al grado ${grade} de la escala de grises, donde 5 significa ningún cambio.`,

  "label-not-tested": () => "Solidez a la luz no ensayada aquí.",
  "label-category-as-stated": ({ category }) =>
    `Solidez a la luz ${category}, declarada por otros; no ensayada aquí.`,
  "label-category-under-standard": ({ category, forms }) =>
    `Solidez a la luz ${category} según ASTM D4303${bracketed(listed(forms.map((form) => wordOf(FORMS, form))))}.`,
  "label-own-exposure": ({ category, forms }) =>
    `Solidez a la luz: cambió como en la categoría\u00a0${category} en nuestra propia exposición${bracketed(listed(forms.map((form) => wordOf(FORMS, form))))}, no la de la norma.`,
  "listed-as-suitable": ({ category }) =>
    `La categoría\u00a0${category} es una de las dos que recoge la especificación de las pinturas al óleo para artistas.`,
  "below-suitable": ({ category }) =>
    `La categoría\u00a0${category} está por debajo de las dos que recoge la especificación de las pinturas al óleo para artistas.`,

  "harmed-by-alkali": (v) => harm(v, "en medio alcalino"),
  "harmed-by-acid": (v) => harm(v, "en ácido"),
  "harmed-by-sulphur": (v) => harm(v, "en aire con azufre"),
  "harmed-by-heat": (v) => harm(v, "con el calor"),
  "harmed-by-damp": (v) => harm(v, "a la luz fuerte con humedad"),
  "harmed-by-light": (v) => harm(v, v.effect === "fades" ? "a la luz" : "a la luz fuerte"),
  "said-to-be-harmed": ({ pigments, effect }) =>
    sentence(
      `libros antiguos dicen que ${namesWithin(pigments)} ${EFFECTS[effect][pigments.length < 2 ? 0 : 1]} junto a colores que contienen sulfuros; que eso ocurra en el aceite se discute`,
    ),
};

function formText(form: string | undefined): string | undefined {
  return form === undefined ? undefined : wordOf(FORMS, form);
}

/** The last category has no upper limit to name. */
function limit(deltaEabMax: number | undefined): string {
  return deltaEabMax === undefined ? "" : bracketed(`hasta ${decimals(deltaEabMax, 0)}`);
}

function sources({ standards, exposures }: ExposureStatement["values"]): string {
  return [...standards, listed(exposures)].join(", ");
}

function contradicted(
  { form, exposed, meanDeltaEab }: StatedContradiction["values"] | ExpectedContradiction["values"],
  held: string,
  than: string,
): string {
  return `Expuesto aquí, el ${wordOf(FORMS, form)} aguantó ${held} (como en la categoría\u00a0${exposed}, ${deltaEabText(meanDeltaEab)}) que ${than}; cuenta la exposición.`;
}

function holds(pigments: readonly string[]): string {
  return `${pigments.length > 1 ? "aguantan" : "aguanta"} ${namesWithin(pigments)}`;
}

/** What the pigment stands among in the list, unless that is its own name. */
function kindsBeside(kinds: string, pigment: string): string | undefined {
  return kinds.toLowerCase() === pigment.toLowerCase()
    ? undefined
    : `entre: ${pigmentWord(kinds, "es")}`;
}

/** Of the components of a mixture: the one whose loss is the likeliest. */
function leastLightfast(pigments: readonly string[], ground: string | undefined): string {
  return pigments.length > 1
    ? `Los menos sólidos a la luz, hasta donde se sabe${bracketed(ground)}: ${namesWithin(pigments)}; son los que hay que vigilar.`
    : `El menos sólido a la luz, hasta donde se sabe${bracketed(ground)}: ${namesWithin(pigments)}; es el que hay que vigilar.`;
}

function harm({ pigments, effect, inOil }: SensitivityStatement["values"], where: string): string {
  const i = pigments.length < 2 ? 0 : 1;
  return sentence(`${namesWithin(pigments)} ${EFFECTS[effect][i]} ${where}; ${IN_OIL[inOil][i]}`);
}
