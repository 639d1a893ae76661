import { HIDING_CONTRAST_RATIO } from "../../optics/films/hiding.ts";
import { OPACITY_FILM } from "../../optics/films/opacity.ts";
import { printedNumbers } from "../number-text.ts";
import type { FigureTexts } from "./figure-words.ts";

/** Strength, hiding, gloss and the fit of K and S. */
export const OPTICS_FIGURES = {
  strengthSection: {
    en: "Strength, hiding, glaze",
    de: "Farbstärke, Deckvermögen, Lasur",
    fr: "Force, opacité, glacis",
    es: "Fuerza, opacidad, veladura",
  },
  tintingStrengthByVolume: {
    en: "Tinting strength, tube to tube",
    de: "Farbstärke, Tube zu Tube",
    fr: "Pouvoir colorant, tube pour tube",
    es: "Poder colorante, tubo a tubo",
    gloss: {
      en: "the same by volume of paint, as it is squeezed out",
      de: "dasselbe nach Volumen der Farbe, wie sie aus der Tube kommt",
      fr: "la même chose par volume de peinture, comme on la sort du tube",
      es: "lo mismo por volumen de pintura, tal como se saca del tubo",
    },
    found: {
      "K/S of let-downs equal by volume of paint in {a}, against {b} = 1": {
        de: "K/S von Aufhellungen gleichen Farbvolumens in {a}, gegen {b} = 1",
        fr: "K/S de dégradés à volume égal de peinture dans {a}, par rapport à {b} = 1",
        es: "K/S de rebajes a igual volumen de pintura en {a}, frente a {b} = 1",
      },
    },
  },
  coverage: {
    en: "Coverage",
    de: "Ergiebigkeit",
    fr: "Rendement",
    es: "Rendimiento",
    gloss: {
      en: `area that one millilitre from the tube hides, to a contrast ratio of ${HIDING_CONTRAST_RATIO}`,
      de: `Fläche, die ein Milliliter aus der Tube deckt, bis zu einem Kontrastverhältnis von ${printedNumbers(",").plain(HIDING_CONTRAST_RATIO)}`,
      fr: `surface que couvre un millilitre sorti du tube, à un rapport de contraste de ${printedNumbers(",").plain(HIDING_CONTRAST_RATIO)}`,
      es: `superficie que cubre un mililitro salido del tubo, a una relación de contraste de ${printedNumbers(",").plain(HIDING_CONTRAST_RATIO)}`,
    },
    found: {
      "10 000 / film that hides [µm] x volume solids": {
        de: "10 000 / deckender Film [µm] x Festkörpervolumen",
        fr: "10 000 / film couvrant [µm] x extrait sec en volume",
        es: "10 000 / película que cubre [µm] x sólidos en volumen",
      },
    },
  },
  extendedFromL: {
    en: "L* of the black, shine included",
    de: "L* des Schwarz, mit Glanz",
    fr: "L* du noir, reflet inclus",
    es: "L* del negro, brillo incluido",
  },
  extendedToL: {
    en: "L* with the medium in it",
    de: "L* mit dem Medium darin",
    fr: "L* du noir mêlé au médium",
    es: "L* del negro mezclado con el médium",
  },
  mulledStrength: {
    en: "Strength mulled by hand, against milled",
    de: "Farbstärke, von Hand angerieben gegen gewalzt",
    fr: "Force du broyage à la molette, par rapport à la machine",
    es: "Fuerza a moleta, frente a máquina",
    found: {
      "K/S of let-downs equal by mass of dry pigment in {a}, mulled against milled": {
        de: "K/S von Aufhellungen gleicher Masse an trockenem Pigment in {a}, von Hand angerieben gegen gewalzt",
        fr: "K/S de dégradés à masse égale de pigment sec dans {a}, broyage à la molette par rapport au broyage à la machine",
        es: "K/S de rebajes a igual masa de pigmento seco en {a}, molienda a moleta frente a molienda a máquina",
      },
    },
  },
  surfaceK1: {
    en: "Surface constant k1",
    de: "Oberflächenkonstante k1",
    fr: "Constante de surface k1",
    es: "Constante de superficie k1",
  },
  surfaceK2: {
    en: "Surface constant k2",
    de: "Oberflächenkonstante k2",
    fr: "Constante de surface k2",
    es: "Constante de superficie k2",
  },
  weightedResidual: {
    en: "Weighted residual of the fit",
    de: "Gewichtete Abweichung der Anpassung",
    fr: "Résidu pondéré de l’ajustement",
    es: "Residuo ponderado del ajuste",
    gloss: {
      en: "mean square of the misses, against what reading and weighing allow: near 1 is as good as the drawdowns themselves",
      de: "mittleres Quadrat der Abweichungen, bezogen auf das, was Messen und Wiegen zulassen: Nahe 1 ist die Anpassung so gut wie die Aufstriche selbst",
      fr: "moyenne des carrés des écarts, rapportés à ce que permettent la mesure et la pesée\u202f: près de 1, l’ajustement vaut les applications elles-mêmes",
      es: "media de los cuadrados de los errores, frente a lo que permiten la medición y la pesada: cerca de 1 vale tanto como las propias aplicaciones",
    },
    found: {
      "mean square of residual over the noise of reading and weighing": {
        de: "mittleres Quadrat der Abweichung, bezogen auf das Rauschen von Messen und Wiegen",
        fr: "carré moyen du résidu divisé par le bruit de mesure et de pesée",
        es: "cuadrado medio del residuo dividido entre el ruido de medición y pesada",
      },
    },
  },
  masstoneResidual: {
    en: "Masstone missed by the fit",
    de: "Abweichung der Anpassung vom Vollton",
    fr: "Écart de l’ajustement sur le ton plein",
    es: "Error del ajuste en el tono pleno",
  },
  seriesK: {
    en: "Absorption K",
    de: "Absorption K",
    fr: "Absorption K",
    es: "Absorción K",
    found: {
      "two-constant fit, in units of the scattering of {a} to one part of it by mass of dry pigment, by wavelength":
        {
          de: "Zwei-Konstanten-Anpassung, in Einheiten der Streuung von {a}, auf einen Masseteil trockenes Pigment, nach Wellenlänge",
          fr: "ajustement à deux constantes, en unités de la diffusion de {a}, pour une partie en masse de pigment sec, par longueur d’onde",
          es: "ajuste de dos constantes, en unidades de la dispersión de {a}, por una parte en masa de pigmento seco, por longitud de onda",
        },
    },
  },
  seriesKUncertainty: {
    en: "Relative uncertainty of K",
    de: "Relative Unsicherheit von K",
    fr: "Incertitude relative de K",
    es: "Incertidumbre relativa de K",
  },
  seriesS: { en: "Scattering S", de: "Streuung S", fr: "Diffusion S", es: "Dispersión S" },
  seriesSUncertainty: {
    en: "Relative uncertainty of S",
    de: "Relative Unsicherheit von S",
    fr: "Incertitude relative de S",
    es: "Incertidumbre relativa de S",
  },
  seriesSUpper: {
    en: "Scattering S, at most",
    de: "Streuung S, höchstens",
    fr: "Diffusion S, au plus",
    es: "Dispersión S, como máximo",
    found: {
      "two-constant fit, in units of the scattering of {a} to one part of it by mass of dry pigment: what S hardly passes (97.5 %), by wavelength":
        {
          de: "Zwei-Konstanten-Anpassung, in Einheiten der Streuung von {a}, auf einen Masseteil trockenes Pigment: was S kaum übersteigt (97,5\u00a0%), nach Wellenlänge",
          fr: "ajustement à deux constantes, en unités de la diffusion de {a}, pour une partie en masse de pigment sec\u202f: ce que S ne dépasse guère (97,5\u00a0%), par longueur d’onde",
          es: "ajuste de dos constantes, en unidades de la dispersión de {a}, por una parte en masa de pigmento seco: lo que S apenas supera (97,5\u00a0%), por longitud de onda",
        },
      "two-constant fit, in units of the scattering of {a} to one part of it by mass of paint: what S hardly passes (97.5 %), by wavelength":
        {
          de: "Zwei-Konstanten-Anpassung, in Einheiten der Streuung von {a}, auf einen Masseteil Farbe: was S kaum übersteigt (97,5\u00a0%), nach Wellenlänge",
          fr: "ajustement à deux constantes, en unités de la diffusion de {a}, pour une partie en masse de peinture\u202f: ce que S ne dépasse guère (97,5\u00a0%), par longueur d’onde",
          es: "ajuste de dos constantes, en unidades de la dispersión de {a}, por una parte en masa de pintura: lo que S apenas supera (97,5\u00a0%), por longitud de onda",
        },
    },
  },
  tintingStrength: {
    en: "Tinting strength",
    de: "Farbstärke",
    fr: "Pouvoir colorant",
    es: "Poder colorante",
    gloss: {
      en: "how much it colours a white, against our reference colour, by mass",
      de: "wie stark die Farbe ein Weiß färbt, verglichen mit unserer Bezugsfarbe, nach Masse",
      fr: "à quel point elle colore un blanc, par rapport à notre couleur de référence, en masse",
      es: "cuánto colorea un blanco, frente a nuestro color de referencia, en masa",
    },
    found: {
      "K/S of let-downs equal by mass of paint in {a}, against {b} = 1": {
        de: "K/S von Aufhellungen gleicher Farbmasse in {a}, gegen {b} = 1",
        fr: "K/S de dégradés à masse égale de peinture dans {a}, par rapport à {b} = 1",
        es: "K/S de rebajes a igual masa de pintura en {a}, frente a {b} = 1",
      },
    },
  },
  contrastRatio: {
    en: "Contrast ratio",
    de: "Kontrastverhältnis",
    fr: "Rapport de contraste",
    es: "Relación de contraste",
    gloss: {
      en: "1.00 means that nothing of a black-and-white chart shows through",
      de: "1,00 heißt, dass von einer schwarzweißen Prüfkarte nichts durchscheint",
      fr: "1,00 veut dire que rien d’une carte noire et blanche ne transparaît",
      es: "1,00 quiere decir que de una carta en blanco y negro no se transparenta nada",
    },
    found: {
      "for {a} µm, gloss included": {
        de: "für {a}\u00a0µm, mit Glanz",
        fr: "pour {a}\u00a0µm, reflet inclus",
        es: "para {a}\u00a0µm, brillo incluido",
      },
    },
  },
  hidingFilm: {
    en: "Film that hides",
    de: "Deckender Film",
    fr: "Film qui couvre",
    es: "Película que cubre",
    gloss: {
      en: `dry film with a contrast ratio of ${HIDING_CONTRAST_RATIO}`,
      de: `trockener Film mit einem Kontrastverhältnis von ${printedNumbers(",").plain(HIDING_CONTRAST_RATIO)}`,
      fr: `film sec dont le rapport de contraste est de ${printedNumbers(",").plain(HIDING_CONTRAST_RATIO)}`,
      es: `película seca con una relación de contraste de ${printedNumbers(",").plain(HIDING_CONTRAST_RATIO)}`,
    },
    found: {
      "for {a} µm, gloss included: thinnest film of contrast ratio {b}": {
        de: "für {a}\u00a0µm, mit Glanz: dünnster Film mit Kontrastverhältnis {b}",
        fr: "pour {a}\u00a0µm, reflet inclus\u202f: film le plus mince de rapport de contraste {b}",
        es: "para {a}\u00a0µm, brillo incluido: la película más fina con relación de contraste {b}",
      },
    },
    missing: {
      "not even 5 mm hides": {
        de: "nicht einmal 5\u00a0mm decken",
        fr: "même 5\u00a0mm ne couvrent pas",
        es: "ni 5\u00a0mm cubren",
      },
    },
  },
  scatteringPower: {
    en: `Scattering of a film of ${OPACITY_FILM.um}\u00a0µm`,
    de: `Streuung eines Films von ${OPACITY_FILM.um}\u00a0µm`,
    fr: `Diffusion d’un film de ${OPACITY_FILM.um}\u00a0µm`,
    es: `Dispersión de una película de ${OPACITY_FILM.um}\u00a0µm`,
    gloss: {
      en: "says how transparent a dark paint is: it hides a chart because it absorbs, but only what it scatters veils the layer below",
      de: "sagt, wie lasierend eine dunkle Farbe ist: Eine Prüfkarte deckt sie, weil sie absorbiert, aber nur was sie streut, verschleiert die Schicht darunter",
      fr: "dit à quel point une peinture sombre est transparente\u202f: elle couvre une carte parce qu’elle absorbe, mais seul ce qu’elle diffuse voile la couche du dessous",
      es: "dice hasta qué punto es transparente una pintura oscura: cubre una carta porque absorbe, pero solo lo que dispersa vela la capa de debajo",
    },
    found: {
      "S of its films times {a} µm, averaged over the light that it throws back": {
        de: "S ihrer Filme mal {a}\u00a0µm, gemittelt über das Licht, das sie zurückwirft",
        fr: "S de ses films fois {a}\u00a0µm, en moyenne sur la lumière qu’il renvoie",
        es: "S de sus películas por {a}\u00a0µm, promediada sobre la luz que devuelve",
      },
      "S of its let-downs in units of the white's S, times that of the white's films and {a} µm": {
        de: "S ihrer Aufhellungen in Einheiten des S des Weiß, mal S der Filme des Weiß und {a}\u00a0µm",
        fr: "S de ses dégradés en unités du S du blanc, fois celui des films du blanc et {a}\u00a0µm",
        es: "S de sus rebajes en unidades de la S del blanco, por la de las películas del blanco y por {a}\u00a0µm",
      },
      "S of its let-downs in units of the white's S, times that of the white's films and {a} µm, and no less than its own films, which hid the chart, allow":
        {
          de: "S ihrer Aufhellungen in Einheiten des S des Weiß, mal S der Filme des Weiß und {a}\u00a0µm, und nicht weniger, als ihre eigenen Filme zulassen, die die Prüfkarte deckten",
          fr: "S de ses dégradés en unités du S du blanc, fois celui des films du blanc et {a}\u00a0µm, et pas moins que ne le permettent ses propres films, qui couvraient la carte",
          es: "S de sus rebajes en unidades de la S del blanco, por la de las películas del blanco y por {a}\u00a0µm, y no menos de lo que permiten sus propias películas, que cubrían la carta",
        },
    },
    missing: {
      "its let-downs tell how much it scatters beside its whites, and not how much a film of it does":
        {
          de: "die Aufhellungen sagen, wie stark die Farbe im Vergleich zum Weiß streut, und nicht, wie stark ein Film von ihr streut",
          fr: "ses dégradés disent combien elle diffuse par rapport à ses blancs, non combien diffuse un de ses films",
          es: "sus rebajes dicen cuánto dispersa en comparación con sus blancos, no cuánto dispersa una película suya",
        },
      "neither its films nor let-downs tell how much it scatters": {
        de: "weder Filme noch Aufhellungen sagen, wie stark die Farbe streut",
        fr: "ni ses films ni ses dégradés ne disent combien elle diffuse",
        es: "ni sus películas ni sus rebajes dicen cuánto dispersa",
      },
    },
  },
  opacityClass: {
    en: "Opacity",
    de: "Deckvermögen",
    fr: "Opacité",
    es: "Opacidad",
    found: {
      "opacity of a film of {a} µm, by contrast ratio": {
        de: "Deckvermögen eines Films von {a}\u00a0µm, nach Kontrastverhältnis",
        fr: "opacité d’un film de {a}\u00a0µm, par rapport de contraste",
        es: "opacidad de una película de {a}\u00a0µm, por relación de contraste",
      },
      "opacity of a film of {a} µm, by how much it scatters: it is too dark for the contrast ratio":
        {
          de: "Deckvermögen eines Films von {a}\u00a0µm, danach, wie stark er streut: Für das Kontrastverhältnis ist der Film zu dunkel",
          fr: "opacité d’un film de {a}\u00a0µm, selon ce qu’il diffuse\u202f: il est trop sombre pour le rapport de contraste",
          es: "opacidad de una película de {a}\u00a0µm, por cuánto dispersa: es demasiado oscura para la relación de contraste",
        },
    },
    missing: {
      "too dark for a class by contrast ratio, and how much it scatters is not told": {
        de: "zu dunkel für eine Klasse nach Kontrastverhältnis, und wie stark die Farbe streut, ist nicht bekannt",
        fr: "trop sombre pour être classée par rapport de contraste, et l’on ne sait pas combien elle diffuse",
        es: "demasiado oscura para clasificarla por relación de contraste, y no se sabe cuánto dispersa",
      },
    },
  },
  glossyL: {
    en: "L* of a glossy film",
    de: "L* eines glänzenden Films",
    fr: "L* d’un film brillant",
    es: "L* de una película brillante",
  },
  matteL: {
    en: "L* of the same film matte",
    de: "L* desselben Films, matt",
    fr: "L* du même film mat",
    es: "L* de la misma película mate",
  },
  glossyValue: {
    en: "Munsell value, glossy",
    de: "Munsell-Helligkeit, glänzend",
    fr: "Valeur Munsell, brillant",
    es: "Valor Munsell, brillante",
  },
  matteValue: {
    en: "Munsell value, matte",
    de: "Munsell-Helligkeit, matt",
    fr: "Valeur Munsell, mat",
    es: "Valor Munsell, mate",
  },
} satisfies FigureTexts;
