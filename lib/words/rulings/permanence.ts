import { upperFirst } from "../letter-case.ts";
import type { PermanenceStatement } from "../../permanence/statements.ts";
import { EXPECTED, FORMS, wordOf } from "../closed-sets.ts";
import * as en from "../en/phrases.ts";
import * as enPermanence from "../en/permanence-phrases.ts";
import * as de from "../de/phrases.ts";
import * as dePermanence from "../de/permanence-phrases.ts";
import * as fr from "../fr/phrases.ts";
import * as frPermanence from "../fr/permanence-phrases.ts";
import * as es from "../es/phrases.ts";
import * as esPermanence from "../es/permanence-phrases.ts";
import type { NamingRulings } from "./rulings-in-each.ts";

/** Lightfastness and what else harms a colour. A category is only ever an exposure's or somebody's word; an estimate is an expectation. */
export const PERMANENCE_RULINGS: NamingRulings<PermanenceStatement> = {
  "exposed-under-standard": (v) => ({
    en: `Category ${v.category}: the ${v.form} changed by ${en.deltaEabText(v.meanDeltaEab)}${enPermanence.limit(v.deltaEabMax)}, exposed by ${enPermanence.sources(v)}.`,
    de: `Kategorie\u00a0${v.category}: ${dePermanence.THE_FORM[v.form]} änderte sich um ${de.deltaEabText(v.meanDeltaEab)}${dePermanence.limit(v.deltaEabMax)}, belichtet nach ${dePermanence.sources(v)}.`,
    fr: `Catégorie\u00a0${v.category}\u202f: le ${wordOf(FORMS, v.form, "fr")} a changé de ${fr.deltaEabText(v.meanDeltaEab)}${frPermanence.limit(v.deltaEabMax)}, exposé selon ${frPermanence.sources(v)}.`,
    es: `Categoría\u00a0${v.category}: el ${wordOf(FORMS, v.form, "es")} cambió en ${es.deltaEabText(v.meanDeltaEab)}${esPermanence.limit(v.deltaEabMax)}, expuesto según ${esPermanence.sources(v)}.`,
  }),
  "exposed-not-under-standard": (v) => ({
    en: `The ${v.form} changed by ${en.deltaEabText(v.meanDeltaEab)}, as in category ${v.category}${enPermanence.limit(v.deltaEabMax)}; the exposure (${enPermanence.sources(v)}) is not all that the standard asks for.`,
    de: de.sentence(
      `${dePermanence.THE_FORM[v.form]} änderte sich um ${de.deltaEabText(v.meanDeltaEab)}, wie in Kategorie\u00a0${v.category}${dePermanence.limit(v.deltaEabMax)}; die Belichtung (${dePermanence.sources(v)}) umfasst nicht alles, was die Norm verlangt`,
    ),
    fr: `Le ${wordOf(FORMS, v.form, "fr")} a changé de ${fr.deltaEabText(v.meanDeltaEab)}, comme en catégorie\u00a0${v.category}${frPermanence.limit(v.deltaEabMax)}\u202f; l’exposition (${frPermanence.sources(v)}) n’est pas tout ce que demande la norme.`,
    es: `El ${wordOf(FORMS, v.form, "es")} cambió en ${es.deltaEabText(v.meanDeltaEab)}, como en la categoría\u00a0${v.category}${esPermanence.limit(v.deltaEabMax)}; la exposición (${esPermanence.sources(v)}) no es todo lo que pide la norma.`,
  }),
  "exposure-as-stated": (v) => ({
    en: `As stated by others, the ${v.form} changed by ${en.deltaEabText(v.meanDeltaEab)}, as in category ${v.category}${enPermanence.limit(v.deltaEabMax)} (${enPermanence.sources(v)}); not exposed here.`,
    de: `Nach Angabe anderer änderte sich ${dePermanence.THE_FORM[v.form]} um ${de.deltaEabText(v.meanDeltaEab)}, wie in Kategorie\u00a0${v.category}${dePermanence.limit(v.deltaEabMax)} (${dePermanence.sources(v)}); hier nicht belichtet.`,
    fr: `Selon d’autres, le ${wordOf(FORMS, v.form, "fr")} a changé de ${fr.deltaEabText(v.meanDeltaEab)}, comme en catégorie\u00a0${v.category}${frPermanence.limit(v.deltaEabMax)} (${frPermanence.sources(v)})\u202f; non exposé ici.`,
    es: `Según otros, el ${wordOf(FORMS, v.form, "es")} cambió en ${es.deltaEabText(v.meanDeltaEab)}, como en la categoría\u00a0${v.category}${esPermanence.limit(v.deltaEabMax)} (${esPermanence.sources(v)}); no expuesto aquí.`,
  }),
  "change-beyond-record": (v) => ({
    en: `Another ${v.form} of ours has changed by ${en.deltaEabText(v.deltaEab)} already, as in category ${v.category}, and on record stands ${en.deltaEabText(v.recordedDeltaEab)}.`,
    de: `Bei uns hat sich ${dePermanence.ANOTHER_FORM[v.form]} schon um ${de.deltaEabText(v.deltaEab)} verändert, wie in Kategorie\u00a0${v.category}; aufgezeichnet ist ${de.deltaEabText(v.recordedDeltaEab)}.`,
    fr: `Un autre ${wordOf(FORMS, v.form, "fr")} de notre atelier a déjà changé de ${fr.deltaEabText(v.deltaEab)}, comme en catégorie\u00a0${v.category}\u202f; le relevé donne ${fr.deltaEabText(v.recordedDeltaEab)}.`,
    es: `Otro ${wordOf(FORMS, v.form, "es")} nuestro ya ha cambiado en ${es.deltaEabText(v.deltaEab)}, como en la categoría\u00a0${v.category}; el registro da ${es.deltaEabText(v.recordedDeltaEab)}.`,
  }),
  "exposure-better-than-stated": (v) => ({
    en: enPermanence.contradicted(v, "better", `the category ${v.stated} that is stated`),
    de: dePermanence.contradicted(v, "besser", `die angegebene Kategorie\u00a0${v.stated}`),
    fr: frPermanence.contradicted(v, "mieux", `la catégorie\u00a0${v.stated} déclarée`),
    es: esPermanence.contradicted(v, "mejor", `la categoría\u00a0${v.stated} declarada`),
  }),
  "exposure-worse-than-stated": (v) => ({
    en: enPermanence.contradicted(v, "less well", `the category ${v.stated} that is stated`),
    de: dePermanence.contradicted(v, "schlechter", `die angegebene Kategorie\u00a0${v.stated}`),
    fr: frPermanence.contradicted(v, "moins bien", `la catégorie\u00a0${v.stated} déclarée`),
    es: esPermanence.contradicted(v, "peor", `la categoría\u00a0${v.stated} declarada`),
  }),
  "exposure-better-than-expected": (v) => ({
    en: enPermanence.contradicted(v, "better", `its pigments lead us to expect (${v.expectation})`),
    de: dePermanence.contradicted(
      v,
      "besser",
      `nach den Pigmenten zu erwarten (${dePermanence.expected(v)})`,
    ),
    fr: frPermanence.contradicted(
      v,
      "mieux",
      `ce que ses pigments font prévoir (${EXPECTED[v.expectation].fr})`,
    ),
    es: esPermanence.contradicted(
      v,
      "mejor",
      `lo que hacen prever sus pigmentos (${EXPECTED[v.expectation].es})`,
    ),
  }),
  "exposure-worse-than-expected": (v) => ({
    en: enPermanence.contradicted(
      v,
      "less well",
      `its pigments lead us to expect (${v.expectation})`,
    ),
    de: dePermanence.contradicted(
      v,
      "schlechter",
      `nach den Pigmenten zu erwarten (${dePermanence.expected(v)})`,
    ),
    fr: frPermanence.contradicted(
      v,
      "moins bien",
      `ce que ses pigments font prévoir (${EXPECTED[v.expectation].fr})`,
    ),
    es: esPermanence.contradicted(
      v,
      "peor",
      `lo que hacen prever sus pigmentos (${EXPECTED[v.expectation].es})`,
    ),
  }),
  "category-stated": ({ category, form }) => ({
    en: `Category ${category} is stated for the colour${en.bracketed(form)}; not tested here.`,
    de: `Kategorie\u00a0${category} ist für die Farbe angegeben${de.bracketed(dePermanence.formWord(form))}; hier nicht geprüft.`,
    fr: `La catégorie\u00a0${category} est déclarée pour la couleur${fr.bracketed(frPermanence.formText(form))}\u202f; non testée ici.`,
    es: `La categoría\u00a0${category} está declarada para el color${es.bracketed(esPermanence.formText(form))}; no ensayada aquí.`,
  }),
  "pigment-category-stated": ({ category, form, pigment }) => ({
    en: `Category ${category} is the supplier's word for ${en.within(pigment)}${en.bracketed(form)}; not tested here.`,
    de: `Kategorie\u00a0${category} ist die Angabe des Lieferanten für ${de.within(pigment)}${de.bracketed(dePermanence.formWord(form))}; hier nicht geprüft.`,
    fr: `La catégorie\u00a0${category} est déclarée par le fournisseur pour ${fr.within(pigment)}${fr.bracketed(frPermanence.formText(form))}\u202f; non testée ici.`,
    es: `La categoría\u00a0${category} es la que declara el proveedor para ${es.within(pigment)}${es.bracketed(esPermanence.formText(form))}; no ensayada aquí.`,
  }),
  "expected-by-colour-index-name": (
    { pigment, colourIndexName, expectation, kinds },
    substance,
  ) => ({
    en: en.sentence(
      `${en.within(pigment)}${en.bracketed(colourIndexName, enPermanence.kindsBeside(kinds, pigment))}: expected ${expectation}; not tested here`,
    ),
    de: de.sentence(
      `${de.within(pigment)}${de.bracketed(colourIndexName, dePermanence.kindsBeside(kinds, pigment, substance))}: Lichtechtheit voraussichtlich ${EXPECTED[expectation].de}; hier nicht geprüft`,
    ),
    fr: fr.sentence(
      `${fr.within(pigment)}${fr.bracketed(colourIndexName, frPermanence.kindsBeside(kinds, pigment, substance))}\u202f: solidité à prévoir ${EXPECTED[expectation].fr}\u202f; non testée ici`,
    ),
    es: es.sentence(
      `${es.within(pigment)}${es.bracketed(colourIndexName, esPermanence.kindsBeside(kinds, pigment, substance))}: solidez previsible ${EXPECTED[expectation].es}; no ensayada aquí`,
    ),
  }),
  "pigment-exposed-in-its-own-paint": ({ pigment, form, deltaEab, category }) => ({
    en: en.sentence(
      `${en.within(pigment)} in a paint of its own was exposed here: its ${form} changed by ${en.deltaEabText(deltaEab)}, as in category ${category}`,
    ),
    de: de.sentence(
      `${de.within(pigment)} wurde hier als einziges Pigment einer Farbe belichtet: ${upperFirst(dePermanence.THE_FORM[form])} änderte sich um ${de.deltaEabText(deltaEab)}, wie in Kategorie\u00a0${category}`,
    ),
    fr: fr.sentence(
      `${fr.within(pigment)} a été exposé ici dans une peinture dont il est le seul pigment\u202f: le ${wordOf(FORMS, form, "fr")} a changé de ${fr.deltaEabText(deltaEab)}, comme en catégorie\u00a0${category}`,
    ),
    es: es.sentence(
      `${es.within(pigment)} se expuso aquí en una pintura de ese solo pigmento: el ${wordOf(FORMS, form, "es")} cambió en ${es.deltaEabText(deltaEab)}, como en la categoría\u00a0${category}`,
    ),
  }),
  "pigment-exposed-as-stated": ({ pigment, form, deltaEab, category }) => ({
    en: en.sentence(
      `${en.within(pigment)} in a paint of its own changed in light by ${en.deltaEabText(deltaEab)} in the ${form}, as in category ${category}, as stated by others`,
    ),
    de: de.sentence(
      `${de.within(pigment)} als einziges Pigment einer Farbe änderte sich im Licht um ${de.deltaEabText(deltaEab)} (${FORMS[form].de}), wie in Kategorie\u00a0${category}, nach Angabe anderer`,
    ),
    fr: fr.sentence(
      `${fr.within(pigment)}, dans une peinture dont il est le seul pigment, a changé à la lumière de ${fr.deltaEabText(deltaEab)} en ${wordOf(FORMS, form, "fr")}, comme en catégorie\u00a0${category}, selon d’autres`,
    ),
    es: es.sentence(
      `${es.within(pigment)}, en una pintura de ese solo pigmento, cambió a la luz en ${es.deltaEabText(deltaEab)} en ${wordOf(FORMS, form, "es")}, como en la categoría\u00a0${category}, según otros`,
    ),
  }),
  "weaker-in-tints": ({ pigment, expectation }) => ({
    en: `In tints and thin glazes ${en.within(pigment)} lasts less well: expected ${expectation}; not tested here.`,
    de: `In Aufhellungen und dünnen Lasuren ist ${de.within(pigment)} weniger lichtecht: voraussichtlich ${EXPECTED[expectation].de}; hier nicht geprüft.`,
    fr: `En dégradés et en glacis minces, ${fr.within(pigment)} tient moins bien\u202f: solidité à prévoir ${EXPECTED[expectation].fr}\u202f; non testée ici.`,
    es: `En rebajes y veladuras finas, ${es.within(pigment)} dura menos: solidez previsible ${EXPECTED[expectation].es}; no ensayada aquí.`,
  }),
  "mixture-with-unknown-pigment": ({ pigments }) => ({
    en: `We do not know how ${en.namesWithin(pigments)} ${enPermanence.stand(pigments)} up to light, and a mixture lasts only as long as its weakest pigment: so no lightfastness is given.`,
    de: `Wie lichtecht ${de.namesWithin(pigments)} ${dePermanence.are(pigments)}, wissen wir nicht, und eine Mischung ist nur so lichtecht wie ihr am wenigsten lichtechtes Pigment: daher keine Angabe zur Lichtechtheit.`,
    fr: `Nous ne savons pas comment ${frPermanence.holds(pigments)} à la lumière, et un mélange ne dure qu’autant que son pigment le plus faible\u202f: aucune solidité n’est donc donnée.`,
    es: `No sabemos cómo ${esPermanence.holds(pigments)} a la luz, y una mezcla dura solo lo que su pigmento más débil: así que no se da ninguna solidez.`,
  }),
  "pigments-alike": ({ pigments }) => ({
    en: `Its pigments last alike: ${en.namesWithin(pigments)}.`,
    de: `Die Pigmente sind gleich lichtecht: ${de.namesWithin(pigments)}.`,
    fr: `Ses pigments tiennent aussi longtemps\u202f: ${fr.namesWithin(pigments)}.`,
    es: `Sus pigmentos duran igual: ${es.namesWithin(pigments)}.`,
  }),
  "weakest-pigment-decides": ({ pigments }) => ({
    en: `The least lightfast pigment decides: ${en.namesWithin(pigments)}.`,
    de: `Das am wenigsten lichtechte Pigment entscheidet: ${de.namesWithin(pigments)}.`,
    fr: `Le pigment le moins solide décide\u202f: ${fr.namesWithin(pigments)}.`,
    es: `Decide el pigmento menos sólido a la luz: ${es.namesWithin(pigments)}.`,
  }),
  "lightfastness-of-pigment-unknown": ({ pigments }) => ({
    en: `We do not know how ${en.namesWithin(pigments)} ${enPermanence.stand(pigments)} up to light.`,
    de: `Wie lichtecht ${de.namesWithin(pigments)} ${dePermanence.are(pigments)}, wissen wir nicht.`,
    fr: `Nous ne savons pas comment ${frPermanence.holds(pigments)} à la lumière.`,
    es: `No sabemos cómo ${esPermanence.holds(pigments)} a la luz.`,
  }),
  "least-lightfast-by-exposure": ({ pigments, deltaEab }) => ({
    en: enPermanence.leastLightfast(
      pigments,
      deltaEab === undefined
        ? undefined
        : `${en.deltaEabText(deltaEab)} where its own paint was exposed`,
    ),
    de: dePermanence.leastLightfast(
      pigments,
      deltaEab === undefined
        ? undefined
        : `${de.deltaEabText(deltaEab)}, belichtet als einziges Pigment einer Farbe`,
    ),
    fr: frPermanence.leastLightfast(
      pigments,
      deltaEab === undefined
        ? undefined
        : `${fr.deltaEabText(deltaEab)} là où sa propre peinture a été exposée`,
    ),
    es: esPermanence.leastLightfast(
      pigments,
      deltaEab === undefined
        ? undefined
        : `${es.deltaEabText(deltaEab)} donde se expuso su propia pintura`,
    ),
  }),
  "least-lightfast-as-stated": ({ pigments, category }) => ({
    en: enPermanence.leastLightfast(pigments, `category ${category}, as stated`),
    de: dePermanence.leastLightfast(pigments, `Kategorie\u00a0${category}, wie angegeben`),
    fr: frPermanence.leastLightfast(pigments, `catégorie\u00a0${category}, déclarée`),
    es: esPermanence.leastLightfast(pigments, `categoría\u00a0${category}, declarada`),
  }),
  "least-lightfast-expected": ({ pigments }) => ({
    en: enPermanence.leastLightfast(pigments, "expected, not tested"),
    de: dePermanence.leastLightfast(pigments, "zu erwarten, nicht geprüft"),
    fr: frPermanence.leastLightfast(pigments, "à prévoir, non testé"),
    es: esPermanence.leastLightfast(pigments, "previsible, no ensayado"),
  }),
  "components-alike-in-light": ({ pigments }) => ({
    en: `${en.sentence(`${en.namesWithin(pigments)} are alike in light, as far as is known`).replace(/\.$/, "")}: none of them is more likely to go first.`,
    de: de.sentence(
      `${de.namesWithin(pigments)} sind gleich lichtecht, soweit bekannt: Keine Komponente verblasst voraussichtlich früher als die andere`,
    ),
    fr: `Pour autant qu’on sache, ${fr.namesWithin(pigments)} se valent à la lumière\u202f: aucun n’a plus de chances de passer le premier.`,
    es: `Hasta donde se sabe, ${es.namesWithin(pigments)} valen lo mismo a la luz: ninguno tiene más probabilidad de desvanecerse primero.`,
  }),
  "components-in-light-not-known": ({ pigments }) => ({
    en: `We do not know how ${en.namesWithin(pigments)} ${enPermanence.stand(pigments)} up to light, nor therefore which component goes first.`,
    de: `Wie lichtecht ${de.namesWithin(pigments)} ${dePermanence.are(pigments)}, wissen wir nicht, und daher auch nicht, welche Komponente zuerst verblasst.`,
    fr: `Nous ne savons pas comment ${frPermanence.holds(pigments)} à la lumière, ni donc quel composant passe le premier.`,
    es: `No sabemos cómo ${esPermanence.holds(pigments)} a la luz, ni por tanto qué componente se desvanece primero.`,
  }),
  "blue-wool-is-another-scale": ({ reference, category }) => ({
    en: `Blue wool ${reference} is a supplier's word, and of another scale; by custom it goes with category ${category}, but no standard says so.`,
    de: `Stufe ${reference} der Blauwollskala ist die Angabe eines Lieferanten und gehört zu einer anderen Skala; üblicherweise setzt man sie mit Kategorie\u00a0${category} gleich, doch keine Norm sagt das.`,
    fr: `Le degré ${reference} de laine bleue est déclaré par un fournisseur, sur une autre échelle\u202f; l’usage le rapproche de la catégorie\u00a0${category}, mais aucune norme ne le dit.`,
    es: `El grado ${reference} de lana azul lo declara un proveedor, en otra escala; por costumbre se equipara a la categoría\u00a0${category}, pero ninguna norma lo dice.`,
  }),
  "change-beside-grey-scale": ({ deltaEab, grade }) => ({
    en: `A change of ${en.deltaEabText(deltaEab)} is nearest grade ${grade} of the grey scale, where 5 is no change.`,
    de: `Eine Änderung von ${de.deltaEabText(deltaEab)} liegt am nächsten bei Stufe ${grade} des Graumaßstabs, auf dem 5 keine Änderung ist.`,
    fr: `Un changement de ${fr.deltaEabText(deltaEab)} est le plus proche du degré ${grade} de l’échelle des gris, où 5 est l’absence de changement.`,
    es: `Un cambio de ${es.deltaEabText(deltaEab)} es el más próximo al grado ${grade} de la escala de grises, donde 5 significa ningún cambio.`,
  }),

  "label-not-tested": {
    en: "Lightfastness not tested here.",
    de: "Lichtechtheit hier nicht geprüft.",
    fr: "Solidité à la lumière non testée ici.",
    es: "Solidez a la luz no ensayada aquí.",
  },
  "label-category-as-stated": ({ category }) => ({
    en: `Lightfastness ${category} as stated by others; not tested here.`,
    de: `Lichtechtheit ${category} nach Angabe anderer; hier nicht geprüft.`,
    fr: `Solidité à la lumière ${category}, déclarée par d’autres\u202f; non testée ici.`,
    es: `Solidez a la luz ${category}, declarada por otros; no ensayada aquí.`,
  }),
  "label-category-under-standard": ({ category, forms }) => ({
    en: `Lightfastness ${category} by ASTM D4303${en.bracketed(en.listed(forms))}.`,
    de: `Lichtechtheit ${category} nach ASTM D4303${de.bracketed(dePermanence.formsListed(forms))}.`,
    fr: `Solidité à la lumière ${category} selon ASTM D4303${fr.bracketed(fr.listed(forms.map((form) => wordOf(FORMS, form, "fr"))))}.`,
    es: `Solidez a la luz ${category} según ASTM D4303${es.bracketed(es.listed(forms.map((form) => wordOf(FORMS, form, "es"))))}.`,
  }),
  "label-own-exposure": ({ category, forms }) => ({
    en: `Lightfastness: changed as in category ${category} in our own exposure${en.bracketed(en.listed(forms))}, not the standard's.`,
    de: `Lichtechtheit: änderte sich wie in Kategorie\u00a0${category} in unserer eigenen Belichtung${de.bracketed(dePermanence.formsListed(forms))}, nicht in der Belichtung der Norm.`,
    fr: `Solidité à la lumière\u202f: a changé comme en catégorie\u00a0${category} dans notre propre exposition${fr.bracketed(fr.listed(forms.map((form) => wordOf(FORMS, form, "fr"))))}, non celle de la norme.`,
    es: `Solidez a la luz: cambió como en la categoría\u00a0${category} en nuestra propia exposición${es.bracketed(es.listed(forms.map((form) => wordOf(FORMS, form, "es"))))}, no la de la norma.`,
  }),
  "listed-as-suitable": ({ category }) => ({
    en: `Category ${category} is one of the two that the specification for artists' oil paints lists.`,
    de: `Kategorie\u00a0${category} ist eine der beiden, die die Norm für Künstler-Ölfarben als geeignet aufführt.`,
    fr: `La catégorie\u00a0${category} est l’une des deux que retient la spécification des peintures à l’huile pour artistes.`,
    es: `La categoría\u00a0${category} es una de las dos que recoge la especificación de las pinturas al óleo para artistas.`,
  }),
  "below-suitable": ({ category }) => ({
    en: `Category ${category} lies below the two that the specification for artists' oil paints lists.`,
    de: `Kategorie\u00a0${category} liegt unter den beiden, die die Norm für Künstler-Ölfarben als geeignet aufführt.`,
    fr: `La catégorie\u00a0${category} est au-dessous des deux que retient la spécification des peintures à l’huile pour artistes.`,
    es: `La categoría\u00a0${category} está por debajo de las dos que recoge la especificación de las pinturas al óleo para artistas.`,
  }),

  "harmed-by-alkali": (v) => ({
    en: enPermanence.harm(v, "in alkali"),
    de: dePermanence.harm(v, "in Lauge"),
    fr: frPermanence.harm(v, "en milieu alcalin"),
    es: esPermanence.harm(v, "en medio alcalino"),
  }),
  "harmed-by-acid": (v) => ({
    en: enPermanence.harm(v, "in acid"),
    de: dePermanence.harm(v, "in Säure"),
    fr: frPermanence.harm(v, "en milieu acide"),
    es: esPermanence.harm(v, "en medio ácido"),
  }),
  "harmed-by-sulphur": (v) => ({
    en: enPermanence.harm(v, "in sulphurous air"),
    de: dePermanence.harm(v, "in schwefelhaltiger Luft"),
    fr: frPermanence.harm(v, "à l’air sulfureux"),
    es: esPermanence.harm(v, "en aire sulfuroso"),
  }),
  "harmed-by-heat": (v) => ({
    en: enPermanence.harm(v, "when heated"),
    de: dePermanence.harm(v, "beim Erhitzen"),
    fr: frPermanence.harm(v, "à la chaleur"),
    es: esPermanence.harm(v, "con el calor"),
  }),
  "harmed-by-damp": (v) => ({
    en: enPermanence.harm(v, "in strong light with damp"),
    de: dePermanence.harm(v, "in starkem Licht bei Feuchte"),
    fr: frPermanence.harm(v, "à une lumière forte et à l’humidité"),
    es: esPermanence.harm(v, "a la luz fuerte con humedad"),
  }),
  "harmed-by-light": (v) => ({
    en: enPermanence.harm(v, v.effect === "fades" ? "in light" : "in strong light"),
    de: dePermanence.harm(v, v.effect === "fades" ? "im Licht" : "in starkem Licht"),
    fr: frPermanence.harm(v, v.effect === "fades" ? "à la lumière" : "à une lumière forte"),
    es: esPermanence.harm(v, v.effect === "fades" ? "a la luz" : "a la luz fuerte"),
  }),
  "said-to-be-harmed": ({ pigments, effect }) => ({
    en: en.sentence(
      `old books say that ${en.namesWithin(pigments)} ${enPermanence.EFFECTS[effect][pigments.length < 2 ? 0 : 1]} beside colours that hold sulphides; whether that happens in oil is disputed`,
    ),
    de: `In alten Büchern heißt es: ${dePermanence.does(pigments, effect, "neben sulfidhaltigen Farben")}; ob das in Öl geschieht, ist umstritten.`,
    fr: fr.sentence(
      `d’après de vieux livres, ${fr.namesWithin(pigments)} ${frPermanence.EFFECTS[effect][pigments.length < 2 ? 0 : 1]} auprès de couleurs qui contiennent des sulfures\u202f; il n’est pas établi que cela arrive dans l’huile`,
    ),
    es: es.sentence(
      `según libros antiguos, ${es.namesWithin(pigments)} ${esPermanence.EFFECTS[effect][pigments.length < 2 ? 0 : 1]} junto a colores que contienen sulfuros; no está claro que eso ocurra en el óleo`,
    ),
  }),
};
