import { upperFirst } from "../letter-case.ts";
import type { PermanenceStatement } from "../../permanence/statements.ts";
import { EXPECTED, FORMS, wordOf, THE_FORM } from "../closed-sets.ts";
import {
  limit,
  sources,
  BETTER,
  categoryStated,
  contradicted,
  ledToExpect,
  LESS_WELL,
  kindsBeside,
  leastLightfast,
  formsListed,
  harm,
  does,
  unknownInLight,
} from "./permanence-phrases.ts";
import { de, en, es, fr, sentences } from "../phrases-in-each.ts";
import type { NamingRulings } from "./rulings-in-each.ts";

/** Lightfastness and what else harms a colour. A category is only ever an exposure's or somebody's word; an estimate is an expectation. */
export const PERMANENCE_RULINGS: NamingRulings<PermanenceStatement> = {
  "exposed-under-standard": (v) => ({
    en: `Category ${v.category}: the ${v.form} changed by ${en.deltaEabText(v.meanDeltaEab)}${limit(v.deltaEabMax).en}, exposed by ${sources(v).en}.`,
    de: `Kategorie\u00a0${v.category}: ${THE_FORM[v.form].de} änderte sich um ${de.deltaEabText(v.meanDeltaEab)}${limit(v.deltaEabMax).de}, belichtet nach ${sources(v).de}.`,
    fr: `Catégorie\u00a0${v.category}\u202f: le ${wordOf(FORMS, v.form, "fr")} a changé de ${fr.deltaEabText(v.meanDeltaEab)}${limit(v.deltaEabMax).fr}, exposé selon ${sources(v).fr}.`,
    es: `Categoría\u00a0${v.category}: el ${wordOf(FORMS, v.form, "es")} cambió en ${es.deltaEabText(v.meanDeltaEab)}${limit(v.deltaEabMax).es}, expuesto según ${sources(v).es}.`,
  }),
  "exposed-not-under-standard": (v) => ({
    en: `The ${v.form} changed by ${en.deltaEabText(v.meanDeltaEab)}, as in category ${v.category}${limit(v.deltaEabMax).en}; the exposure (${sources(v).en}) is not all that the standard asks for.`,
    de: de.sentence(
      `${THE_FORM[v.form].de} änderte sich um ${de.deltaEabText(v.meanDeltaEab)}, wie in Kategorie\u00a0${v.category}${limit(v.deltaEabMax).de}; die Belichtung (${sources(v).de}) umfasst nicht alles, was die Norm verlangt`,
    ),
    fr: `Le ${wordOf(FORMS, v.form, "fr")} a changé de ${fr.deltaEabText(v.meanDeltaEab)}, comme en catégorie\u00a0${v.category}${limit(v.deltaEabMax).fr}\u202f; l’exposition (${sources(v).fr}) n’est pas tout ce que demande la norme.`,
    es: `El ${wordOf(FORMS, v.form, "es")} cambió en ${es.deltaEabText(v.meanDeltaEab)}, como en la categoría\u00a0${v.category}${limit(v.deltaEabMax).es}; la exposición (${sources(v).es}) no es todo lo que pide la norma.`,
  }),
  "exposure-as-stated": (v) => ({
    en: `As stated by others, the ${v.form} changed by ${en.deltaEabText(v.meanDeltaEab)}, as in category ${v.category}${limit(v.deltaEabMax).en} (${sources(v).en}); not exposed here.`,
    de: `Nach Angabe anderer änderte sich ${THE_FORM[v.form].de} um ${de.deltaEabText(v.meanDeltaEab)}, wie in Kategorie\u00a0${v.category}${limit(v.deltaEabMax).de} (${sources(v).de}); hier nicht belichtet.`,
    fr: `Selon d’autres, le ${wordOf(FORMS, v.form, "fr")} a changé de ${fr.deltaEabText(v.meanDeltaEab)}, comme en catégorie\u00a0${v.category}${limit(v.deltaEabMax).fr} (${sources(v).fr})\u202f; non exposé ici.`,
    es: `Según otros, el ${wordOf(FORMS, v.form, "es")} cambió en ${es.deltaEabText(v.meanDeltaEab)}, como en la categoría\u00a0${v.category}${limit(v.deltaEabMax).es} (${sources(v).es}); no expuesto aquí.`,
  }),
  "change-beyond-record": (v) => ({
    en: `Another ${v.form} of ours has changed by ${en.deltaEabText(v.deltaEab)} already, as in category ${v.category}, and on record stands ${en.deltaEabText(v.recordedDeltaEab)}.`,
    de: `Bei uns hat sich ${v.form === "masstone" ? "ein anderer Vollton" : "eine andere Aufhellung"} schon um ${de.deltaEabText(v.deltaEab)} verändert, wie in Kategorie\u00a0${v.category}; aufgezeichnet ist ${de.deltaEabText(v.recordedDeltaEab)}.`,
    fr: `Un autre ${wordOf(FORMS, v.form, "fr")} de notre atelier a déjà changé de ${fr.deltaEabText(v.deltaEab)}, comme en catégorie\u00a0${v.category}\u202f; le relevé donne ${fr.deltaEabText(v.recordedDeltaEab)}.`,
    es: `Otro ${wordOf(FORMS, v.form, "es")} nuestro ya ha cambiado en ${es.deltaEabText(v.deltaEab)}, como en la categoría\u00a0${v.category}; el registro da ${es.deltaEabText(v.recordedDeltaEab)}.`,
  }),
  "exposure-better-than-stated": (v) => contradicted(v, BETTER, categoryStated(v)),
  "exposure-worse-than-stated": (v) => contradicted(v, LESS_WELL, categoryStated(v)),
  "exposure-better-than-expected": (v) => contradicted(v, BETTER, ledToExpect(v)),
  "exposure-worse-than-expected": (v) => contradicted(v, LESS_WELL, ledToExpect(v)),
  "category-stated": ({ category, form }) => ({
    en: `Category ${category} is stated for the colour${en.bracketed(form)}; not tested here.`,
    de: `Kategorie\u00a0${category} ist für die Farbe angegeben${de.bracketed(formsListed(form).de)}; hier nicht geprüft.`,
    fr: `La catégorie\u00a0${category} est déclarée pour la couleur${fr.bracketed(formsListed(form).fr)}\u202f; non testée ici.`,
    es: `La categoría\u00a0${category} está declarada para el color${es.bracketed(formsListed(form).es)}; no ensayada aquí.`,
  }),
  "pigment-category-stated": ({ category, form, pigment }) => ({
    en: `Category ${category} is the supplier's word for ${en.within(pigment)}${en.bracketed(form)}; not tested here.`,
    de: `Kategorie\u00a0${category} ist die Angabe des Lieferanten für ${de.within(pigment)}${de.bracketed(formsListed(form).de)}; hier nicht geprüft.`,
    fr: `La catégorie\u00a0${category} est déclarée par le fournisseur pour ${fr.within(pigment)}${fr.bracketed(formsListed(form).fr)}\u202f; non testée ici.`,
    es: `La categoría\u00a0${category} es la que declara el proveedor para ${es.within(pigment)}${es.bracketed(formsListed(form).es)}; no ensayada aquí.`,
  }),
  "expected-by-colour-index-name": ({ pigment, colourIndexName, expectation, kinds }, substance) =>
    sentences({
      en: `${en.within(pigment)}${en.bracketed(colourIndexName, kindsBeside(kinds, pigment, substance).en)}: expected ${expectation}; not tested here`,
      de: `${de.within(pigment)}${de.bracketed(colourIndexName, kindsBeside(kinds, pigment, substance).de)}: Lichtechtheit voraussichtlich ${EXPECTED[expectation].de}; hier nicht geprüft`,
      fr: `${fr.within(pigment)}${fr.bracketed(colourIndexName, kindsBeside(kinds, pigment, substance).fr)}\u202f: solidité à prévoir ${EXPECTED[expectation].fr}\u202f; non testée ici`,
      es: `${es.within(pigment)}${es.bracketed(colourIndexName, kindsBeside(kinds, pigment, substance).es)}: solidez previsible ${EXPECTED[expectation].es}; no ensayada aquí`,
    }),
  "pigment-exposed-in-its-own-paint": ({ pigment, form, deltaEab, category }) =>
    sentences({
      en: `${en.within(pigment)} in a paint of its own was exposed here: its ${form} changed by ${en.deltaEabText(deltaEab)}, as in category ${category}`,
      de: `${de.within(pigment)} wurde hier als einziges Pigment einer Farbe belichtet: ${upperFirst(THE_FORM[form].de)} änderte sich um ${de.deltaEabText(deltaEab)}, wie in Kategorie\u00a0${category}`,
      fr: `${fr.within(pigment)} a été exposé ici dans une peinture dont il est le seul pigment\u202f: le ${wordOf(FORMS, form, "fr")} a changé de ${fr.deltaEabText(deltaEab)}, comme en catégorie\u00a0${category}`,
      es: `${es.within(pigment)} se expuso aquí en una pintura de ese solo pigmento: el ${wordOf(FORMS, form, "es")} cambió en ${es.deltaEabText(deltaEab)}, como en la categoría\u00a0${category}`,
    }),
  "pigment-exposed-as-stated": ({ pigment, form, deltaEab, category }) =>
    sentences({
      en: `${en.within(pigment)} in a paint of its own changed in light by ${en.deltaEabText(deltaEab)} in the ${form}, as in category ${category}, as stated by others`,
      de: `${de.within(pigment)} als einziges Pigment einer Farbe änderte sich im Licht um ${de.deltaEabText(deltaEab)} (${FORMS[form].de}), wie in Kategorie\u00a0${category}, nach Angabe anderer`,
      fr: `${fr.within(pigment)}, dans une peinture dont il est le seul pigment, a changé à la lumière de ${fr.deltaEabText(deltaEab)} en ${wordOf(FORMS, form, "fr")}, comme en catégorie\u00a0${category}, selon d’autres`,
      es: `${es.within(pigment)}, en una pintura de ese solo pigmento, cambió a la luz en ${es.deltaEabText(deltaEab)} en ${wordOf(FORMS, form, "es")}, como en la categoría\u00a0${category}, según otros`,
    }),
  "weaker-in-tints": ({ pigment, expectation }) => ({
    en: `In tints and thin glazes ${en.within(pigment)} lasts less well: expected ${expectation}; not tested here.`,
    de: `In Aufhellungen und dünnen Lasuren ist ${de.within(pigment)} weniger lichtecht: voraussichtlich ${EXPECTED[expectation].de}; hier nicht geprüft.`,
    fr: `En dégradés et en glacis minces, ${fr.within(pigment)} tient moins bien\u202f: solidité à prévoir ${EXPECTED[expectation].fr}\u202f; non testée ici.`,
    es: `En rebajes y veladuras finas, ${es.within(pigment)} dura menos: solidez previsible ${EXPECTED[expectation].es}; no ensayada aquí.`,
  }),
  "mixture-with-unknown-pigment": ({ pigments }) => ({
    en: `${unknownInLight(pigments).en}, and a mixture lasts only as long as its weakest pigment: so no lightfastness is given.`,
    de: `${unknownInLight(pigments).de}, und eine Mischung ist nur so lichtecht wie ihr am wenigsten lichtechtes Pigment: daher keine Angabe zur Lichtechtheit.`,
    fr: `${unknownInLight(pigments).fr}, et un mélange ne dure qu’autant que son pigment le plus faible\u202f: aucune solidité n’est donc donnée.`,
    es: `${unknownInLight(pigments).es}, y una mezcla dura solo lo que su pigmento más débil: así que no se da ninguna solidez.`,
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
    en: `${unknownInLight(pigments).en}.`,
    de: `${unknownInLight(pigments).de}.`,
    fr: `${unknownInLight(pigments).fr}.`,
    es: `${unknownInLight(pigments).es}.`,
  }),
  "least-lightfast-by-exposure": ({ pigments, deltaEab }) =>
    leastLightfast(
      pigments,
      deltaEab === undefined
        ? {}
        : {
            en: `${en.deltaEabText(deltaEab)} where its own paint was exposed`,
            de: `${de.deltaEabText(deltaEab)}, belichtet als einziges Pigment einer Farbe`,
            fr: `${fr.deltaEabText(deltaEab)} là où sa propre peinture a été exposée`,
            es: `${es.deltaEabText(deltaEab)} donde se expuso su propia pintura`,
          },
    ),
  "least-lightfast-as-stated": ({ pigments, category }) =>
    leastLightfast(pigments, {
      en: `category ${category}, as stated`,
      de: `Kategorie\u00a0${category}, wie angegeben`,
      fr: `catégorie\u00a0${category}, déclarée`,
      es: `categoría\u00a0${category}, declarada`,
    }),
  "least-lightfast-expected": ({ pigments }) =>
    leastLightfast(pigments, {
      en: "expected, not tested",
      de: "zu erwarten, nicht geprüft",
      fr: "à prévoir, non testé",
      es: "previsible, no ensayado",
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
    en: `${unknownInLight(pigments).en}, nor therefore which component goes first.`,
    de: `${unknownInLight(pigments).de}, und daher auch nicht, welche Komponente zuerst verblasst.`,
    fr: `${unknownInLight(pigments).fr}, ni donc quel composant passe le premier.`,
    es: `${unknownInLight(pigments).es}, ni por tanto qué componente se desvanece primero.`,
  }),
  "blue-wool-is-another-scale": ({ reference, category }) => ({
    en: `Blue wool ${reference} is a supplier's word, on another scale. By custom it goes with category ${category}, but no standard says so.`,
    de: `Stufe ${reference} der Blauwollskala ist die Angabe eines Lieferanten und gehört zu einer anderen Skala. Üblicherweise setzt man sie mit Kategorie\u00a0${category} gleich, doch keine Norm sagt das.`,
    fr: `Le degré ${reference} de laine bleue est déclaré par un fournisseur, sur une autre échelle. L’usage le rapproche de la catégorie\u00a0${category}, mais aucune norme ne le dit.`,
    es: `El grado ${reference} de lana azul lo declara un proveedor, en otra escala. Por costumbre se equipara a la categoría\u00a0${category}, pero ninguna norma lo dice.`,
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
    de: `Lichtechtheit ${category} nach ASTM D4303${de.bracketed(formsListed(...forms).de)}.`,
    fr: `Solidité à la lumière ${category} selon ASTM D4303${fr.bracketed(formsListed(...forms).fr)}.`,
    es: `Solidez a la luz ${category} según ASTM D4303${es.bracketed(formsListed(...forms).es)}.`,
  }),
  "label-own-exposure": ({ category, forms }) => ({
    en: `Lightfastness: within category ${category} in our own exposure${en.bracketed(en.listed(forms))}; not the standard's test.`,
    de: `Lichtechtheit: im Bereich der Kategorie\u00a0${category} in unserer eigenen Belichtung${de.bracketed(formsListed(...forms).de)}; keine Prüfung nach der Norm.`,
    fr: `Solidité à la lumière\u202f: dans les limites de la catégorie\u00a0${category} lors de notre propre exposition${fr.bracketed(formsListed(...forms).fr)}, non de l’essai de la norme.`,
    es: `Solidez a la luz: dentro de la categoría\u00a0${category} en nuestra propia exposición${es.bracketed(formsListed(...forms).es)}; no es el ensayo de la norma.`,
  }),
  "listed-as-suitable": ({ category }) => ({
    en: `The specification for artists' oil paints lists two categories as suitable, and ${category} is one of them.`,
    de: `Die Norm für Künstler-Ölfarben führt zwei Kategorien als geeignet auf; Kategorie\u00a0${category} ist eine davon.`,
    fr: `La spécification des peintures à l’huile pour artistes retient deux catégories, dont la catégorie\u00a0${category}.`,
    es: `La especificación de las pinturas al óleo para artistas recoge dos categorías, y la ${category} es una de ellas.`,
  }),
  "below-suitable": ({ category }) => ({
    en: `Category ${category} lies below the two that the specification for artists' oil paints lists.`,
    de: `Kategorie\u00a0${category} liegt unter den beiden, die die Norm für Künstler-Ölfarben als geeignet aufführt.`,
    fr: `La catégorie\u00a0${category} est au-dessous des deux que retient la spécification des peintures à l’huile pour artistes.`,
    es: `La categoría\u00a0${category} está por debajo de las dos que recoge la especificación de las pinturas al óleo para artistas.`,
  }),

  "harmed-by-alkali": (v) =>
    harm(v, { en: "in alkali", de: "in Lauge", fr: "en milieu alcalin", es: "en medio alcalino" }),
  "harmed-by-acid": (v) =>
    harm(v, { en: "in acid", de: "in Säure", fr: "en milieu acide", es: "en medio ácido" }),
  "harmed-by-sulphur": (v) =>
    harm(v, {
      en: "in sulphurous air",
      de: "in schwefelhaltiger Luft",
      fr: "à l’air sulfureux",
      es: "en aire sulfuroso",
    }),
  "harmed-by-heat": (v) =>
    harm(v, { en: "when heated", de: "beim Erhitzen", fr: "à la chaleur", es: "con el calor" }),
  "harmed-by-damp": (v) =>
    harm(v, {
      en: "in strong light with damp",
      de: "in starkem Licht bei Feuchte",
      fr: "à une lumière forte et à l’humidité",
      es: "a la luz fuerte con humedad",
    }),
  "harmed-by-light": (v) =>
    harm(v, {
      en: v.effect === "fades" ? "in light" : "in strong light",
      de: v.effect === "fades" ? "im Licht" : "in starkem Licht",
      fr: v.effect === "fades" ? "à la lumière" : "à une lumière forte",
      es: v.effect === "fades" ? "a la luz" : "a la luz fuerte",
    }),
  "said-to-be-harmed": (v) => {
    const harmed = does(v, {
      en: "beside colours that hold sulphides",
      de: "neben sulfidhaltigen Farben",
      fr: "auprès de couleurs qui contiennent des sulfures",
      es: "junto a colores que contienen sulfuros",
    });
    return {
      en: `Old books say that ${harmed.en}; whether that happens in oil is disputed.`,
      de: `In alten Büchern heißt es: ${harmed.de}; ob das in Öl geschieht, ist umstritten.`,
      fr: `D’après de vieux livres, ${harmed.fr}\u202f; il n’est pas établi que cela arrive dans l’huile.`,
      es: `Según libros antiguos, ${harmed.es}; no está claro que eso ocurra en el óleo.`,
    };
  },
};
