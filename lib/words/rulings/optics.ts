import type { PaintStatement } from "../../optics/statements.ts";
import type { JudgedTintStatement } from "../../optics/tints/tint-statement.ts";
import { GEOMETRIES, wordOf } from "../closed-sets.ts";
import { de, en, es, fr } from "../phrases-in-each.ts";
import { whyNotJudged, apart, KINDS, comparedIn, extended } from "./optics-phrases.ts";
import type { RulingsInEach } from "./rulings-in-each.ts";

/** Colours in whites, strength, hiding, gloss, mulled against milled. */
export const OPTICS_RULINGS: RulingsInEach<Exclude<PaintStatement, JudgedTintStatement>> = {
  "no-tint-to-judge": (v) => ({
    en: `We cannot say what it does in ${en.within(v.white)}: ${whyNotJudged(v).en}.`,
    de: `Wie sie sich in ${de.within(v.white)} verhält, lässt sich nicht sagen: ${whyNotJudged(v).de}.`,
    fr: `Nous ne pouvons dire ce qu’elle donne dans ${fr.within(v.white)}\u202f: ${whyNotJudged(v).fr}.`,
    es: `No podemos decir cómo queda en ${es.within(v.white)}: ${whyNotJudged(v).es}.`,
  }),
  "differs-by-white": (v) => ({
    en: `At ${en.lightnessText(v.L)} it is ${apart(v).en} in ${en.within(v.to)} than in ${en.within(v.from)}.`,
    de: `Bei ${de.lightnessText(v.L)} ist die Farbe in ${de.within(v.to)} ${apart(v).de} als in ${de.within(v.from)}.`,
    fr: `À ${fr.lightnessText(v.L)} elle est ${apart(v).fr} dans ${fr.within(v.to)} que dans ${fr.within(v.from)}.`,
    es: `A ${es.lightnessText(v.L)} es ${apart(v).es} en ${es.within(v.to)} que en ${es.within(v.from)}.`,
  }),
  "alike-in-whites": (v) => ({
    en: `At ${en.lightnessText(v.L)} its hue is the same in every white, within ${en.decimals(v.distance, 1)} of a*, b*.`,
    de: `Bei ${de.lightnessText(v.L)} ist der Buntton in jedem Weiß derselbe, innerhalb von ${de.decimals(v.distance, 1)} in a*, b*.`,
    fr: `À ${fr.lightnessText(v.L)} sa teinte est la même dans tous les blancs, à ${fr.decimals(v.distance, 1)} près en a*, b*.`,
    es: `A ${es.lightnessText(v.L)} su matiz es el mismo en todos los blancos, con una diferencia de ${es.decimals(v.distance, 1)} en a*, b* como máximo.`,
  }),
  "whites-not-told-apart": (v) => ({
    en: `At ${en.lightnessText(v.L)} no white is told from another: the most they differ by, ${en.decimals(v.distance, 1)} of a*, b*, lies within the \u00b1\u00a0${en.decimals(v.uncertainty ?? 0, 1)} of the let-downs.`,
    de: `Bei ${de.lightnessText(v.L)} lässt sich kein Weiß vom anderen unterscheiden: Der größte Unterschied, ${de.decimals(v.distance, 1)} in a*, b*, liegt innerhalb der \u00b1\u00a0${de.decimals(v.uncertainty ?? 0, 1)} der Aufhellungen.`,
    fr: `À ${fr.lightnessText(v.L)} aucun blanc ne se distingue d’un autre\u202f: le plus grand écart, ${fr.decimals(v.distance, 1)} en a*, b*, reste dans les \u00b1\u00a0${fr.decimals(v.uncertainty ?? 0, 1)} des dégradés.`,
    es: `A ${es.lightnessText(v.L)} ningún blanco se distingue de otro: la mayor diferencia, ${es.decimals(v.distance, 1)} en a*, b*, queda dentro de los \u00b1\u00a0${es.decimals(v.uncertainty ?? 0, 1)} de los rebajes.`,
  }),
  "one-white-only": (v) => ({
    en: `At ${en.lightnessText(v.L)} we do not know it in two whites, so whites are not compared.`,
    de: `Bei ${de.lightnessText(v.L)} ist die Farbe nicht in zweierlei Weiß bekannt, daher kein Vergleich.`,
    fr: `À ${fr.lightnessText(v.L)} elle n’est pas connue dans deux blancs, et les blancs ne sont donc pas comparés.`,
    es: `A ${es.lightnessText(v.L)} no se conoce en dos blancos, así que los blancos no se comparan.`,
  }),

  "geometries-differ": (v) => ({
    en: `They cannot be worked out together: one was read ${v.sample}, the other ${v.reference}.`,
    de: `Die beiden lassen sich nicht zusammen auswerten: Die eine wurde ${wordOf(GEOMETRIES, v.sample, "de")} gemessen, die andere ${wordOf(GEOMETRIES, v.reference, "de")}.`,
    fr: `Ils ne peuvent être calculés ensemble\u202f: l’un a été mesuré en ${wordOf(GEOMETRIES, v.sample, "fr")}, l’autre en ${wordOf(GEOMETRIES, v.reference, "fr")}.`,
    es: `No pueden calcularse juntos: uno se midió en ${wordOf(GEOMETRIES, v.sample, "es")}, el otro en ${wordOf(GEOMETRIES, v.reference, "es")}.`,
  }),
  "not-let-down-in": (v) => ({
    en: `Not tried in ${en.namesWithin(v.whites, "or")}.`,
    de: `Nicht erprobt in ${de.namesWithin(v.whites, "or")}.`,
    fr: `Non essayée dans ${fr.namesWithin(v.whites, "or")}.`,
    es: `No probado en ${es.namesWithin(v.whites, "or")}.`,
  }),

  "whites-differ": (v) => ({
    en: `Strength is not compared: one was let down in ${en.within(v.sample)}, the other in ${en.within(v.reference)}.`,
    de: `Kein Vergleich der Farbstärke: Die eine wurde in ${de.within(v.sample)} aufgehellt, die andere in ${de.within(v.reference)}.`,
    fr: `La force n’est pas comparée\u202f: l’une a été coupée avec ${fr.within(v.sample)}, l’autre avec ${fr.within(v.reference)}.`,
    es: `La fuerza no se compara: uno se rebajó con ${es.within(v.sample)}, el otro con ${es.within(v.reference)}.`,
  }),
  "ratio-kinds-differ": (v) => ({
    en: `Strength is not compared: one let-down was weighed as ${KINDS[v.sample].en}, the other as ${KINDS[v.reference].en}.`,
    de: `Kein Vergleich der Farbstärke: Die eine Aufhellung wurde als ${KINDS[v.sample].de} gewogen, die andere als ${KINDS[v.reference].de}.`,
    fr: `La force n’est pas comparée\u202f: l’un des dégradés a été pesé ${KINDS[v.sample].fr}, l’autre ${KINDS[v.reference].fr}.`,
    es: `La fuerza no se compara: un rebaje se pesó ${KINDS[v.sample].es}, el otro ${KINDS[v.reference].es}.`,
  }),
  "grey-beside-colour": {
    en: "Strength is not compared: one of the two makes a grey in the white and the other a colour.",
    de: "Kein Vergleich der Farbstärke: Eine der beiden ergibt in Weiß ein Grau, die andere eine bunte Farbe.",
    fr: "La force n’est pas comparée\u202f: dans le blanc, l’une des deux donne un gris et l’autre une couleur.",
    es: "La fuerza no se compara: en el blanco uno de los dos da un gris y el otro un color.",
  },
  "hues-not-comparable": (v) => ({
    en: `Strength is not compared: the two absorb most in different places (${en.decimals(v.sampleNm, 0)} and ${en.decimals(v.referenceNm, 0)}\u00a0nm).`,
    de: `Kein Vergleich der Farbstärke: Die beiden absorbieren an verschiedenen Stellen am stärksten (${de.decimals(v.sampleNm, 0)} und ${de.decimals(v.referenceNm, 0)}\u00a0nm).`,
    fr: `La force n’est pas comparée\u202f: les deux absorbent le plus à des endroits différents (${fr.decimals(v.sampleNm, 0)} et ${fr.decimals(v.referenceNm, 0)}\u00a0nm).`,
    es: `La fuerza no se compara: los dos tienen su mayor absorción en lugares distintos (${es.decimals(v.sampleNm, 0)} y ${es.decimals(v.referenceNm, 0)}\u00a0nm).`,
  }),
  "milled-stronger": (v) => ({
    en: `Mulled, it has ${en.percent(v.strength)} of its strength when milled${comparedIn(v).en}.`,
    de: `Von Hand angerieben hat die Farbe ${de.percent(v.strength)} der Farbstärke der gewalzten Farbe${comparedIn(v).de}.`,
    fr: `Broyée à la molette, elle a ${fr.percent(v.strength)} de la force que lui donne la machine${comparedIn(v).fr}.`,
    es: `Molido con moleta, tiene el ${es.percent(v.strength)} de la fuerza que tiene molido a máquina${comparedIn(v).es}.`,
  }),
  "mulled-stronger": (v) => ({
    en: `Mulled, it is the stronger: ${en.percent(v.strength)} of its strength when milled${comparedIn(v).en}.`,
    de: `Von Hand angerieben ist die Farbe stärker: ${de.percent(v.strength)} der Farbstärke der gewalzten Farbe${comparedIn(v).de}.`,
    fr: `Broyée à la molette, elle est plus forte\u202f: ${fr.percent(v.strength)} de la force que lui donne la machine${comparedIn(v).fr}.`,
    es: `Molido con moleta, es más fuerte: el ${es.percent(v.strength)} de la fuerza que tiene molido a máquina${comparedIn(v).es}.`,
  }),
  "alike-mulled-and-milled": (v) => ({
    en: `Mulled or milled, its strength is the same: ${en.percent(v.strength)} of milled${comparedIn(v).en}.`,
    de: `Von Hand angerieben und gewalzt ist die Farbstärke gleich: ${de.percent(v.strength)} der gewalzten Farbe${comparedIn(v).de}.`,
    fr: `À la molette ou à la machine, sa force est la même\u202f: à la molette, ${fr.percent(v.strength)} de celle de la machine${comparedIn(v).fr}.`,
    es: `Con moleta o a máquina, su fuerza es la misma: con moleta, el ${es.percent(v.strength)} de la de máquina${comparedIn(v).es}.`,
  }),
  "mulled-weaker": {
    en: "Mulled, expect it weaker than milled: lumps keep part of the colour to themselves.",
    de: "Von Hand angerieben ist die Farbe voraussichtlich schwächer als gewalzt: Agglomerate halten einen Teil des Pigments zurück.",
    fr: "Broyée à la molette, elle sera sans doute plus faible qu’à la machine\u202f: des amas retiennent une part de la couleur.",
    es: "Molido con moleta, será probablemente más débil que a máquina: los grumos retienen parte del color.",
  },
  "mulled-weaker-paler-bluer": (v) => ({
    en: `Mulled, expect it to keep ${en.percent(v.kept)} of its strength (lumps of ${en.micrometres(v.lumpsUm)}), with tints paler and bluer than milled.`,
    de: `Von Hand angerieben behält die Farbe voraussichtlich ${de.percent(v.kept)} ihrer Farbstärke (Agglomerate von ${de.micrometres(v.lumpsUm)}); die Aufhellungen sind heller und blauer als gewalzt.`,
    fr: `Broyée à la molette, elle gardera sans doute ${fr.percent(v.kept)} de sa force (amas de ${fr.micrometres(v.lumpsUm)}), avec des dégradés plus pâles et plus bleus qu’à la machine.`,
    es: `Molido con moleta, conservará probablemente el ${es.percent(v.kept)} de su fuerza (grumos de ${es.micrometres(v.lumpsUm)}), con rebajes más pálidos y más azules que a máquina.`,
  }),

  "films-hid-their-grounds": (v) => ({
    en: `The films read (${en.micrometres(v.filmsUm)}) already hid the chart at most wavelengths: a thinner film than the one given may do.`,
    de: `Die gemessenen Filme (${de.micrometres(v.filmsUm)}) deckten die Prüfkarte schon bei den meisten Wellenlängen: Ein dünnerer Film als der angegebene kann genügen.`,
    fr: `Les films mesurés (${fr.micrometres(v.filmsUm)}) couvraient déjà la carte à la plupart des longueurs d’onde\u202f: un film plus mince que celui qui est donné peut suffire.`,
    es: `Las películas medidas (${es.micrometres(v.filmsUm)}) ya cubrían la carta en la mayoría de las longitudes de onda: puede bastar una película más fina que la indicada.`,
  }),
  "strength-by-absorption": (v) => ({
    en: `Strength is measured against ${v.reference} by what both absorb in ${en.within(v.white)}; at equal strength they still differ by \u0394E00 ${en.decimals(v.residualDeltaE00, 1)}.`,
    de: `Die Farbstärke ist im Vergleich mit ${v.reference} gemessen, nach dem, was beide in ${de.within(v.white)} absorbieren; bei gleicher Stärke bleibt ein Unterschied von \u0394E00 ${de.decimals(v.residualDeltaE00, 1)}.`,
    fr: `La force est mesurée par rapport à ${v.reference} d’après ce que les deux absorbent dans ${fr.within(v.white)}\u202f; à force égale elles diffèrent encore de \u0394E00 ${fr.decimals(v.residualDeltaE00, 1)}.`,
    es: `La fuerza se mide frente a ${v.reference} según lo que ambos absorben en ${es.within(v.white)}; a igual fuerza aún difieren en \u0394E00 ${es.decimals(v.residualDeltaE00, 1)}.`,
  }),
  "strength-by-equal-depth": (v) => ({
    en: `Strength is measured against ${v.reference} by how much of each brings ${en.within(v.white)} to one lightness, since its let-downs do not reach the other's; at that lightness they still differ by \u0394E00 ${en.decimals(v.residualDeltaE00, 1)}.`,
    de: `Die Farbstärke ist im Vergleich mit ${v.reference} gemessen, und zwar danach, wie viel von jeder ${de.within(v.white)} auf dieselbe Helligkeit bringt, denn die Aufhellungen der beiden überschneiden sich nicht; bei dieser Helligkeit bleibt ein Unterschied von \u0394E00 ${de.decimals(v.residualDeltaE00, 1)}.`,
    fr: `La force est mesurée par rapport à ${v.reference} d’après ce qu’il faut de chacune pour mener ${fr.within(v.white)} à une même clarté, puisque ses dégradés n’atteignent pas ceux de l’autre\u202f; à cette clarté elles diffèrent encore de \u0394E00 ${fr.decimals(v.residualDeltaE00, 1)}.`,
    es: `La fuerza se mide frente a ${v.reference} según cuánto de cada uno lleva ${es.within(v.white)} a una misma claridad, ya que sus rebajes no alcanzan los del otro; a esa claridad aún difieren en \u0394E00 ${es.decimals(v.residualDeltaE00, 1)}.`,
  }),
  "contrast-without-gloss": (v) => ({
    en: `That includes the shine: without it, a film of ${en.micrometres(v.filmUm)} has a contrast ratio of ${en.decimals(v.excluded, 2)}; with it, ${en.decimals(v.included, 2)}.`,
    de: `Das ist mit Glanz gemessen: Ohne Glanz hat ein Film von ${de.micrometres(v.filmUm)} ein Kontrastverhältnis von ${de.decimals(v.excluded, 2)}, mit Glanz ${de.decimals(v.included, 2)}.`,
    fr: `Reflet compris\u202f: sans lui, un film de ${fr.micrometres(v.filmUm)} a un rapport de contraste de ${fr.decimals(v.excluded, 2)}\u202f; avec lui, de ${fr.decimals(v.included, 2)}.`,
    es: `Eso incluye el brillo: sin él, una película de ${es.micrometres(v.filmUm)} tiene una relación de contraste de ${es.decimals(v.excluded, 2)}; con él, de ${es.decimals(v.included, 2)}.`,
  }),
  "masstone-by-both-grounds": (v) => ({
    en: `The masstone was read on a film that lets its ground show through (contrast ratio ${en.decimals(v.contrast, 2)}). Tints and mixtures are worked out from what both grounds tell of a coat that hides.`,
    de: `Der Vollton wurde an einem Film gemessen, der seinen Grund durchscheinen lässt (Kontrastverhältnis ${de.decimals(v.contrast, 2)}). Aufhellungen und Mischungen sind aus dem errechnet, was die Messungen über beiden Gründen über einen deckenden Auftrag sagen.`,
    fr: `Le ton plein a été mesuré sur un film qui laisse voir son fond (rapport de contraste ${fr.decimals(v.contrast, 2)}). Les dégradés et les mélanges sont calculés d’après ce que les deux fonds disent d’une couche qui couvre.`,
    es: `El tono pleno se midió en una película que deja ver su fondo (relación de contraste ${es.decimals(v.contrast, 2)}). Los rebajes y las mezclas se calculan por lo que ambos fondos dicen de una capa que cubre.`,
  }),
  "masstone-is-a-film": (v) => ({
    en: `What is shown as the masstone is a film over white that lets its ground show through (contrast ratio ${en.decimals(v.contrast, 2)}). A thicker coat looks darker, and what we work out from it is less certain.`,
    de: `Was als Vollton gezeigt wird, ist ein Film über Weiß, der seinen Grund durchscheinen lässt (Kontrastverhältnis ${de.decimals(v.contrast, 2)}). Ein dickerer Auftrag wirkt dunkler, und was wir daraus errechnen, ist weniger verlässlich.`,
    fr: `Ce qui est montré comme ton plein est un film sur du blanc qui laisse voir son fond (rapport de contraste ${fr.decimals(v.contrast, 2)}). Une couche plus épaisse paraît plus sombre, et ce que nous en calculons est moins certain.`,
    es: `Lo que se muestra como tono pleno es una película sobre blanco que deja ver su fondo (relación de contraste ${es.decimals(v.contrast, 2)}). Una capa más gruesa parece más oscura, y lo que calculamos de ella es más incierto.`,
  }),
  "does-not-hide": (v) => ({
    en: `Even a film of ${en.decimals(v.filmUm / 1000, 0)}\u00a0mm does not hide: its contrast ratio is ${en.decimals(v.contrastRatio, 2)}, and ${en.decimals(v.target, 2)} would.`,
    de: `Selbst ein Film von ${de.decimals(v.filmUm / 1000, 0)}\u00a0mm deckt nicht: Sein Kontrastverhältnis ist ${de.decimals(v.contrastRatio, 2)}, nötig wäre ${de.decimals(v.target, 2)}.`,
    fr: `Même un film de ${fr.decimals(v.filmUm / 1000, 0)}\u00a0mm ne couvre pas\u202f: son rapport de contraste est de ${fr.decimals(v.contrastRatio, 2)}, et il faudrait ${fr.decimals(v.target, 2)}.`,
    es: `Ni una película de ${es.decimals(v.filmUm / 1000, 0)}\u00a0mm cubre: su relación de contraste es ${es.decimals(v.contrastRatio, 2)}, y haría falta ${es.decimals(v.target, 2)}.`,
  }),
  "gloss-deepens": (v) => ({
    en: `A glossy film looks darker than a matte one (lightness L* ${en.decimals(v.glossyL, 0)} against ${en.decimals(v.matteL, 0)}).`,
    de: `Ein glänzender Film wirkt dunkler als ein matter (Helligkeit L* ${de.decimals(v.glossyL, 0)} gegenüber ${de.decimals(v.matteL, 0)}).`,
    fr: `Un film brillant paraît plus sombre qu’un film mat (clarté L* ${fr.decimals(v.glossyL, 0)} contre ${fr.decimals(v.matteL, 0)}).`,
    es: `Una película brillante parece más oscura que una mate (claridad L* ${es.decimals(v.glossyL, 0)} frente a ${es.decimals(v.matteL, 0)}).`,
  }),
  "gloss-hardly-deepens": (v) => ({
    en: `Gloss hardly darkens it (lightness L* ${en.decimals(v.glossyL, 0)} against ${en.decimals(v.matteL, 0)} matte).`,
    de: `Glanz macht die Farbe kaum dunkler (Helligkeit L* ${de.decimals(v.glossyL, 0)} gegenüber ${de.decimals(v.matteL, 0)} matt).`,
    fr: `Le brillant l’assombrit à peine (clarté L* ${fr.decimals(v.glossyL, 0)} contre ${fr.decimals(v.matteL, 0)} mat).`,
    es: `El brillo apenas lo oscurece (claridad L* ${es.decimals(v.glossyL, 0)} frente a ${es.decimals(v.matteL, 0)} mate).`,
  }),
  "extender-hardly-lightens": (v) => ({
    en: `An extender, not a white: ${en.significant(v.volumes, 2)} volumes of the medium to one of ${extended(v).en} lift its L* by only ${en.decimals(v.change, 1)}, from ${en.decimals(v.fromL, 0)} (gloss included).`,
    de: `Ein Streckmedium, kein Weiß: ${de.significant(v.volumes, 2)} Volumenteile Medium auf einen Teil ${extended(v).de} heben L* nur um ${de.decimals(v.change, 1)}, von ${de.decimals(v.fromL, 0)} aus (mit Glanz).`,
    fr: `Une charge, non un blanc\u202f: ${fr.significant(v.volumes, 2)} volumes du médium pour un ${extended(v).fr} ne relèvent son L* que de ${fr.decimals(v.change, 1)}, depuis ${fr.decimals(v.fromL, 0)} (reflet inclus).`,
    es: `Una carga, no un blanco: ${es.significant(v.volumes, 2)} volúmenes del médium por uno ${extended(v).es} solo suben su L* en ${es.decimals(v.change, 1)}, desde ${es.decimals(v.fromL, 0)} (brillo incluido).`,
  }),
  "extender-lightens": (v) => ({
    en: `${en.significant(v.volumes, 2)} volumes of the medium to one of ${extended(v).en} lift its L* from ${en.decimals(v.fromL, 0)} to ${en.decimals(v.toL, 0)} (gloss included).`,
    de: `${de.significant(v.volumes, 2)} Volumenteile Medium auf einen Teil ${extended(v).de} heben L* von ${de.decimals(v.fromL, 0)} auf ${de.decimals(v.toL, 0)} (mit Glanz).`,
    fr: `${fr.significant(v.volumes, 2)} volumes du médium pour un ${extended(v).fr} relèvent son L* de ${fr.decimals(v.fromL, 0)} à ${fr.decimals(v.toL, 0)} (reflet inclus).`,
    es: `${es.significant(v.volumes, 2)} volúmenes del médium por uno ${extended(v).es} suben su L* de ${es.decimals(v.fromL, 0)} a ${es.decimals(v.toL, 0)} (brillo incluido).`,
  }),
};
