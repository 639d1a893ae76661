import { fr } from "../phrases-in-each.ts";
import type { FigureTexts } from "./figure-words.ts";

/** What light does to a colour. */
export const PERMANENCE_FIGURES = {
  permanenceSection: {
    en: "Permanence in figures",
    de: "Beständigkeit in Zahlen",
    fr: "La permanence en chiffres",
    es: "La permanencia en cifras",
  },
  lightfastnessCategory: {
    en: "Lightfastness category",
    de: "Kategorie der Lichtechtheit",
    fr: "Catégorie de solidité à la lumière",
    es: "Categoría de solidez a la luz",
    gloss: {
      en: "I (excellent) to V, by colour change in the exposures of a standard",
      de: "I (ausgezeichnet) bis V, nach der Farbänderung in den Belichtungen einer Norm",
      fr: "de I (excellente) à V, d’après le changement de couleur aux expositions d’une norme",
      es: "de I (excelente) a V, por el cambio de color en las exposiciones de una norma",
    },
    found: {
      "as in the category, by colour change alone": {
        de: "wie in der Kategorie, allein nach der Farbänderung",
        fr: "comme dans la catégorie, par le seul changement de couleur",
        es: "como en la categoría, solo por el cambio de color",
      },
      "as stated for {a}": {
        de: "wie für {a} angegeben",
        fr: "selon ce qui est déclaré pour {a}",
        es: "según se declara para {a}",
      },
      "as stated for the colour": {
        de: "wie für die Farbe angegeben",
        fr: "selon ce qui est déclaré pour la couleur",
        es: "según se declara para el color",
      },
      "by colour change against the standard's limits": {
        de: "nach der Farbänderung gegen die Grenzen der Norm",
        fr: "d’après le changement de couleur, selon les limites de la norme",
        es: "por el cambio de color, según los límites de la norma",
      },
      "the exposure was another": {
        de: "es wurde anders belichtet",
        fr: "l’exposition n’était pas celle de la norme",
        es: "la exposición no fue la de la norma",
      },
    },
    missing: {
      "not exposed here, and no category is stated": {
        de: "hier nicht belichtet, und keine Kategorie ist angegeben",
        fr: "non exposée ici, et aucune catégorie n’est déclarée",
        es: "no expuesto aquí, y no hay ninguna categoría declarada",
      },
    },
  },
  lightfastnessExpectation: {
    en: "Lightfastness, expected",
    de: "Lichtechtheit, zu erwarten",
    fr: "Solidité à la lumière, à prévoir",
    es: "Solidez a la luz, previsible",
    found: {
      "by its pigments, of which the least lightfast form of the least lightfast decides": {
        de: "nach den Pigmenten: Es entscheidet das am wenigsten lichtechte in seiner am wenigsten lichtechten Form",
        fr: "d’après ses pigments\u202f: la forme la moins solide du moins solide décide",
        es: "por sus pigmentos: decide la forma menos sólida del menos sólido",
      },
    },
    missing: {
      "nothing is known of its pigments in light": {
        de: "über das Verhalten der Pigmente im Licht ist nichts bekannt",
        fr: "rien n’est connu de ses pigments à la lumière",
        es: "no se sabe nada de sus pigmentos a la luz",
      },
      "not needed: it was exposed, or is stated": {
        de: "nicht nötig: belichtet oder angegeben",
        fr: "inutile\u202f: elle a été exposée, ou sa tenue est déclarée",
        es: "no hace falta: se expuso, o su solidez está declarada",
      },
      "how {a} stands in light is not known, and a mixture is as good as its weakest": {
        de: "wie lichtecht {a} ist, ist nicht bekannt, und eine Mischung ist nur so lichtecht wie ihr am wenigsten lichtechtes Pigment",
        fr: (name) =>
          `la tenue ${fr.of(name)} à la lumière n’est pas connue, et un mélange ne vaut que ce que vaut son pigment le plus faible`,
        es: "no se sabe cómo aguanta a la luz {a}, y una mezcla vale solo lo que su pigmento más débil",
      },
    },
  },
  blueWool: {
    en: "Blue wool",
    de: "Blauwollskala",
    fr: "Laine bleue",
    es: "Lana azul",
    gloss: {
      en: "1 (fades first) to 8 (fades last); not the same scale as the categories",
      de: "1 (bleicht zuerst) bis 8 (bleicht zuletzt); nicht dieselbe Skala wie die Kategorien",
      fr: "de 1 (passe la première) à 8 (passe la dernière)\u202f; une autre échelle que les catégories",
      es: "de 1 (se desvanece la primera) a 8 (se desvanece la última); no es la misma escala que las categorías",
    },
    found: {
      "as stated, on the scale of ISO 105-B02": {
        de: "wie angegeben, nach der Skala von ISO 105-B02",
        fr: "selon ce qui est déclaré, sur l’échelle d’ISO 105-B02",
        es: "según se declara, en la escala de ISO 105-B02",
      },
      "the weakest of its pigments, as stated, on the scale of ISO 105-B02": {
        de: "das am wenigsten lichtechte ihrer Pigmente, wie angegeben, nach der Skala von ISO 105-B02",
        fr: "le plus faible de ses pigments, selon ce qui est déclaré, sur l’échelle d’ISO 105-B02",
        es: "el más débil de sus pigmentos, según se declara, en la escala de ISO 105-B02",
      },
    },
    missing: {
      "no blue wool reference is stated": {
        de: "keine Stufe der Blauwollskala ist angegeben",
        fr: "aucun degré de laine bleue n’est déclaré",
        es: "no hay declarado ningún grado de lana azul",
      },
    },
  },
  deltaEab: {
    en: "Colour change on exposure",
    de: "Farbänderung bei Belichtung",
    fr: "Changement de couleur à l’exposition",
    es: "Cambio de color por exposición",
    gloss: {
      en: "CIE 1976 ΔE*ab between the part exposed and the part kept dark",
      de: "CIE 1976 ΔE*ab zwischen belichtetem und dunkel gehaltenem Teil",
      fr: "ΔE*ab CIE 1976 entre la partie exposée et la partie gardée à l’obscurité",
      es: "ΔE*ab CIE 1976 entre la parte expuesta y la guardada a oscuras",
    },
    found: {
      "CIE 1976, exposed against kept dark": {
        de: "CIE 1976, belichtet gegen dunkel aufbewahrt",
        fr: "CIE 1976, partie exposée par rapport à la partie gardée à l’obscurité",
        es: "CIE 1976, expuesto frente a guardado a oscuras",
      },
      "CIE 1976, exposed against kept dark, of the form that changed most": {
        de: "CIE 1976, belichtet gegen dunkel aufbewahrt, an der Form, die sich am stärksten änderte",
        fr: "CIE 1976, partie exposée par rapport à la partie gardée à l’obscurité, pour la forme qui a le plus changé",
        es: "CIE 1976, expuesto frente a guardado a oscuras, de la forma que más cambió",
      },
      "CIE 1976, mean of {a} exposures": {
        de: "CIE 1976, Mittel aus {a} Belichtungen",
        fr: "CIE 1976, moyenne de {a} expositions",
        es: "CIE 1976, media de {a} exposiciones",
      },
    },
    missing: {
      "not exposed here": {
        de: "hier nicht belichtet",
        fr: "non exposée ici",
        es: "no expuesto aquí",
      },
    },
  },
} satisfies FigureTexts;
