import { GEOMETRIES, wordOf } from "./closed-sets.ts";
import { FOUND } from "./figures/all-figures.ts";
import type { InOthers } from "./in-each.ts";
import type { SlottedText } from "./slotted-text.ts";

/**
 * How figures are found, by the English of sheet.json: a letter in braces stands for a name or a
 * number. What one figure alone is found by stands with its name, in `figures/`.
 * `npx vitest run --project units test/words/methods.test.ts` names a method without a row.
 */
export const METHODS: Readonly<Record<string, Readonly<Record<keyof InOthers, SlottedText>>>> = {
  ...FOUND,
  "CIE sums of {a}, d/8 excluded": {
    de: "CIE-Summen von {a}, d/8 ohne Glanz",
    fr: "sommes CIE de {a}, d/8 reflet exclu",
    es: "sumas CIE de {a}, d/8 brillo excluido",
  },
  "CIE sums of {a}, d/8 included": {
    de: "CIE-Summen von {a}, d/8 mit Glanz",
    fr: "sommes CIE de {a}, d/8 reflet inclus",
    es: "sumas CIE de {a}, d/8 brillo incluido",
  },
  "CIE sums of {a}, 45/0": {
    de: "CIE-Summen von {a}, 45/0",
    fr: "sommes CIE de {a}, 45/0",
    es: "sumas CIE de {a}, 45/0",
  },
  "CIE sums of {a}, {b}, 10 degree observer of CIE 2006": {
    de: "CIE-Summen von {a}, {b}, 10°-Beobachter von CIE 2006",
    fr: "sommes CIE de {a}, {b}, observateur 10° de CIE 2006",
    es: "sumas CIE de {a}, {b}, observador de 10° de CIE 2006",
  },
  "CSS colour from D65/2": {
    de: "CSS-Farbe aus D65/2",
    fr: "couleur CSS depuis D65/2",
    es: "color CSS a partir de D65/2",
  },
  "CSS colour, approximate: adapted from {a}": {
    de: "CSS-Farbe, angenähert: aus {a} angepasst",
    fr: "couleur CSS, approchée\u202f: adaptée de {a}",
    es: "color CSS, aproximado: adaptado de {a}",
  },
  "ΔE00 of {a} and {b} carried over by CAT16": {
    de: "ΔE00 von {a} und {b}, mit CAT16 übertragen",
    fr: "ΔE00 de {a} et {b}, transposé par CAT16",
    es: "ΔE00 de {a} y {b}, trasladado por CAT16",
  },
  "K and S from films of {a} µm over the workshop's own opacity chart as read (Y {b} and {c}, {d})":
    {
      de: (um, black, white, geometry = "") =>
        `K und S aus Filmen von ${um}\u00a0µm über der eigenen Prüfkarte, wie gemessen (Y ${black} und ${white}, ${wordOf(GEOMETRIES, geometry, "de")})`,
      fr: (um, black, white, geometry = "") =>
        `K et S d’après des films de ${um}\u00a0µm sur la carte de contraste de l’atelier, telle que mesurée (Y ${black} et ${white}, ${wordOf(GEOMETRIES, geometry, "fr")})`,
      es: (um, black, white, geometry = "") =>
        `K y S según películas de ${um}\u00a0µm sobre la carta de contraste del taller, tal como se midió (Y ${black} y ${white}, ${wordOf(GEOMETRIES, geometry, "es")})`,
    },
  "K and S from films of {a} µm over an opacity chart assumed to read {b} and {c}": {
    de: "K und S aus Filmen von {a}\u00a0µm über einer Prüfkarte, angenommen mit {b} und {c}",
    fr: "K et S d’après des films de {a}\u00a0µm sur une carte de contraste supposée de {b} et {c}",
    es: "K y S según películas de {a}\u00a0µm sobre una carta de contraste que se supone de {b} y {c}",
  },
  "K and S from its films": {
    de: "K und S aus ihren Filmen",
    fr: "K et S d’après ses films",
    es: "K y S según sus películas",
  },
  "K and S from its let-downs in {a}, those of {b} from its films": {
    de: "K und S aus ihren Aufhellungen in {a}, die von {b} aus dessen Filmen",
    fr: "K et S d’après ses dégradés dans {a}, ceux de {b} d’après ses films",
    es: "K y S según sus rebajes en {a}, los de {b} según sus películas",
  },
  "K and S of its components' own paints, added": {
    de: "K und S der Farben ihrer Komponenten, addiert",
    fr: "K et S des peintures de ses composants, additionnés",
    es: "K y S de las pinturas de sus componentes, sumados",
  },
  "K and S of its components' own paints, one of them less by what it lost": {
    de: "K und S der Farben ihrer Komponenten, eine davon um den Verlust vermindert",
    fr: "K et S des peintures de ses composants, l’une diminuée de ce qu’elle a perdu",
    es: "K y S de las pinturas de sus componentes, una de ellas menos lo que perdió",
  },
  "K and S of {a} from its let-downs in {b}, of {c} and of the medium from their films, mixed by volume":
    {
      de: "K und S von {a} aus den Aufhellungen in {b}, von {c} und dem Streckmedium aus deren Filmen, nach Volumen gemischt",
      fr: "K et S de {a} d’après ses dégradés dans {b}, de {c} et du médium d’après leurs films, mélangés en volume",
      es: "K y S de {a} según sus rebajes en {b}, de {c} y del médium según sus películas, mezclados por volumen",
    },
  "Lab as read, {a}": {
    de: "Lab wie gemessen, {a}",
    fr: "Lab tel que mesuré, {a}",
    es: "Lab tal como se midió, {a}",
  },
  "Munsell chip, by eye": {
    de: "Munsell-Muster, nach Augenmaß",
    fr: "échantillon Munsell, à l’œil",
    es: "muestra Munsell, a ojo",
  },
  "PVC / CPVC": { de: "PVK / KPVK", fr: "CPV / CPVC", es: "PVC / CPVC" },
  "as recorded": { de: "wie aufgezeichnet", fr: "selon les relevés", es: "según los registros" },
  "as recorded with the readings": {
    de: "wie mit den Messungen aufgezeichnet",
    fr: "selon les relevés, avec les mesures",
    es: "según los registros, con las mediciones",
  },
  "as seen by the workshop": {
    de: "wie in der Werkstatt gesehen",
    fr: "d’après ce qu’on a vu à l’atelier",
    es: "según lo que se vio en el taller",
  },
  "an opacity chart as it is usually printed": {
    de: "eine Prüfkarte, wie sie üblicherweise gedruckt wird",
    fr: "une carte de contraste telle qu’on l’imprime d’ordinaire",
    es: "una carta de contraste tal como se imprime de ordinario",
  },
  "between what its parts take alone, as tried or by the rules, each by its share": {
    de: "zwischen dem, was ihre Teile allein brauchen, wie erprobt oder nach den Regeln, jeder nach seinem Anteil",
    fr: "entre les jours que demande chaque constituant seul, à l’essai ou selon les règles, selon sa part",
    es: "entre los días que tarda cada componente solo, por ensayo o según las reglas, según su proporción",
  },
  "oils of the paints that it was weighed from, by volume": {
    de: "Öle der Farben, aus denen sie gewogen wurde, nach Volumen",
    fr: "huiles des peintures pesées pour la faire, selon le volume",
    es: "aceites de las pinturas con las que se pesó, por volumen",
  },
  "what of the paints that it was weighed from is not pigment": {
    de: "was in den Farben, aus denen sie gewogen wurde, kein Pigment ist",
    fr: "ce qui n’est pas du pigment dans les peintures pesées pour la faire",
    es: "lo que no es pigmento en las pinturas con las que se pesó",
  },
  "by its Colour Index name": {
    de: "nach seinem Colour-Index-Namen",
    fr: "d’après son nom du Colour Index",
    es: "según su nombre del Colour Index",
  },
  "condition of the trial": {
    de: "Bedingung des Versuchs",
    fr: "condition de l’essai",
    es: "condición del ensayo",
  },
  "from Lab": { de: "aus Lab", fr: "depuis Lab", es: "a partir de Lab" },
  "gloss included, D65/10": {
    de: "mit Glanz, D65/10",
    fr: "reflet inclus, D65/10",
    es: "brillo incluido, D65/10",
  },
  "handbook range for {a}": {
    de: "Handbuchbereich für {a}",
    fr: "intervalle des manuels pour {a}",
    es: "intervalo de manual para {a}",
  },
  "how far S of a white's films is trusted": {
    de: "wie weit S aus Filmen eines Weiß gilt",
    fr: "jusqu’où se fier au S des films d’un blanc",
    es: "hasta dónde se confía en la S de las películas de un blanco",
  },
  "how well the let-downs of both tell it": {
    de: "wie genau die Aufhellungen beider es zeigen",
    fr: "avec quelle précision les dégradés des deux le disent",
    es: "con qué precisión lo dicen los rebajes de ambos",
  },
  "its own K and S, the white's S by what other colours do in both whites": {
    de: "eigenes K und S, das S des Weiß danach, wie sich andere Farben in beiden Weiß verhalten",
    fr: "ses propres K et S, le S du blanc d’après ce que d’autres couleurs font dans les deux blancs",
    es: "sus propias K y S, la S del blanco por lo que otros colores hacen en ambos blancos",
  },
  "linseed oil alone x what oil, pigment, drier, film and room each do": {
    de: "Leinöl allein x je ein Faktor für Öl, Pigment, Sikkativ, Film und Raum",
    fr: "huile de lin seule x effets de l’huile, du pigment, du siccatif, du film et de la pièce",
    es: "aceite de linaza solo x efectos del aceite, el pigmento, el secante, la película y la sala",
  },
  "of those tried, the pair by which left-out let-downs are predicted best": {
    de: "von den erprobten das Paar, das weggelassene Aufhellungen am besten vorhersagt",
    fr: "parmi celles essayées, la paire qui prévoit le mieux les dégradés laissés de côté",
    es: "de los pares probados, el que mejor prevé los rebajes apartados",
  },
  "one over colour to white at L* 50": {
    de: "eins durch Farbe zu Weiß bei L* 50",
    fr: "inverse du rapport couleur/blanc à L* 50",
    es: "inverso de la proporción color/blanco a L* 50",
  },
  "the reference's colour to white at L* 50": {
    de: "Farbe zu Weiß der Bezugsfarbe bei L* 50",
    fr: "rapport couleur/blanc de la référence à L* 50",
    es: "proporción color/blanco de la referencia a L* 50",
  },
  "over white, gloss excluded": {
    de: "über Weiß, ohne Glanz",
    fr: "sur blanc, reflet exclu",
    es: "sobre blanco, brillo excluido",
  },
  "parts of paint by mass, as recorded": {
    de: "Masseteile Farbe, wie aufgezeichnet",
    fr: "parties de peinture en masse, selon les relevés",
    es: "partes de pintura en masa, según los registros",
  },
  "relative standard uncertainty of {a}, by wavelength": {
    de: "relative Standardunsicherheit von {a}, nach Wellenlänge",
    fr: "incertitude type relative de {a}, par longueur d’onde",
    es: "incertidumbre típica relativa de {a}, por longitud de onda",
  },
  "renotation of the chip": {
    de: "Renotation des Musters",
    fr: "renotation de l’échantillon",
    es: "renotación de la muestra",
  },
  "renotation, interpolated in LCHab": {
    de: "Renotation, in LCHab interpoliert",
    fr: "renotation, interpolée en LCHab",
    es: "renotación, interpolada en LCHab",
  },
  "renotation, interpolated in LCHab, approximate: adapted from {a}": {
    de: "Renotation, in LCHab interpoliert, angenähert: aus {a} angepasst",
    fr: "renotation, interpolée en LCHab, approchée\u202f: adaptée de {a}",
    es: "renotación, interpolada en LCHab, aproximada: adaptada de {a}",
  },
  "straight between measured neighbours": {
    de: "gerade zwischen gemessenen Nachbarn",
    fr: "par interpolation linéaire entre mesures voisines",
    es: "por interpolación lineal entre mediciones vecinas",
  },
  "surface light of an oil film taken off": {
    de: "Oberflächenlicht eines Ölfilms abgezogen",
    fr: "lumière de surface d’un film d’huile ôtée",
    es: "luz de superficie de una película de aceite restada",
  },
  "surface light of an oil film taken off and put on": {
    de: "Oberflächenlicht eines Ölfilms abgezogen und zugegeben",
    fr: "lumière de surface d’un film d’huile ôtée et ajoutée",
    es: "luz de superficie de una película de aceite restada y sumada",
  },
  "surface light of an oil film taken off and put on: {a} % of it for satin": {
    de: "Oberflächenlicht eines Ölfilms abgezogen und zugegeben: {a}\u00a0% davon für seidenmatt",
    fr: "lumière de surface d’un film d’huile ôtée et ajoutée\u202f: {a}\u00a0% pour le satiné",
    es: "luz de superficie de una película de aceite restada y sumada: {a}\u00a0% para el satinado",
  },
  "the dry pigment alone": {
    de: "das trockene Pigment allein",
    fr: "le pigment sec seul",
    es: "el pigmento seco solo",
  },
  "the same by volume of paint": {
    de: "dasselbe nach Farbvolumen",
    fr: "la même chose, par volume de peinture",
    es: "lo mismo por volumen de pintura",
  },
  "the usual one of its geometry": {
    de: "die übliche für seine Geometrie",
    fr: "valeur usuelle pour sa géométrie",
    es: "valor habitual de su geometría",
  },
  "the workshop's own trial": {
    de: "eigener Versuch der Werkstatt",
    fr: "essai de l’atelier",
    es: "ensayo propio del taller",
  },
  "the workshop's own trial: {a} part to {b} parts of {c}": {
    de: "eigener Versuch der Werkstatt: {a} Teil auf {b} Teile {c}",
    fr: "essai de l’atelier\u202f: {a} partie pour {b} parties de {c}",
    es: "ensayo propio del taller: {a} parte por {b} partes de {c}",
  },
  "the workshop's own trial: {a}": {
    de: "eigener Versuch der Werkstatt: {a}",
    fr: "essai de l’atelier\u202f: {a}",
    es: "ensayo propio del taller: {a}",
  },
  "two-constant fit through all drawdowns": {
    de: "Zwei-Konstanten-Anpassung durch alle Aufstriche",
    fr: "ajustement à deux constantes sur toutes les applications",
    es: "ajuste de dos constantes a todas las aplicaciones",
  },
  "two-constant fit, in units of the scattering of {a} to one part of it by mass of paint, by wavelength":
    {
      de: "Zwei-Konstanten-Anpassung, in Einheiten der Streuung von {a}, auf einen Masseteil Farbe, nach Wellenlänge",
      fr: "ajustement à deux constantes, en unités de la diffusion de {a}, pour une partie en masse de peinture, par longueur d’onde",
      es: "ajuste de dos constantes, en unidades de la dispersión de {a}, por una parte en masa de pintura, por longitud de onda",
    },
  "usual range of {a} oil": {
    de: "üblicher Bereich dieses Öls ({a})",
    fr: "intervalle usuel de cette huile ({a})",
    es: "intervalo habitual de este aceite ({a})",
  },
  "solvents among its components, as many of its volume as of its mass": {
    de: "Lösemittel unter den Bestandteilen, so viel vom Volumen wie von der Masse",
    fr: "solvants parmi ses composants, même part en volume qu’en masse",
    es: "disolventes entre sus componentes, igual proporción en volumen que en masa",
  },
};
