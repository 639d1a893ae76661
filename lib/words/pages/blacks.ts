import { es, fr } from "../phrases-in-each.ts";
import type { Texts } from "../texts.ts";
import { twoCoordinates, WAVELENGTH } from "../shared-rows.ts";

/** What answers show of the range's blacks in its whites, of the whites themselves, and of what theory says of both. */
export const BLACKS = {
  table: {
    caption: (level: string) => ({
      en: `Blacks of the range at L* ${level}: a* and b* in each white`,
      de: `Die Schwarztöne des Sortiments bei L* ${level}: a* und b* in jedem Weiß`,
      fr: `Les noirs de la gamme à L* ${level}\u202f: a* et b* dans chaque blanc`,
      es: `Los negros de la gama a L* ${level}: a* y b* en cada blanco`,
    }),
    colour: { en: "Black", de: "Schwarz", fr: "Noir", es: "Negro" },
    cell: twoCoordinates,
    note: {
      en: "a* and b*, under D65 for the 10\u00b0 observer. 0, 0 is neutral; b* below zero is blue, above it yellow. A dash: not tried in that white, or not at that lightness.",
      de: "a* und b*, unter D65 für den 10\u00b0-Beobachter. 0, 0 ist neutral; b* unter null ist Blau, darüber Gelb. Ein Strich: in diesem Weiß nicht erprobt oder nicht bei dieser Helligkeit.",
      fr: "a* et b*, sous D65 pour l’observateur 10\u00b0. 0, 0 est neutre\u202f; b* au-dessous de zéro est bleu, au-dessus jaune. Un tiret\u202f: non essayé dans ce blanc, ou pas à cette clarté.",
      es: "a* y b*, bajo D65 para el observador de 10\u00b0. 0, 0 es neutro; b* por debajo de cero es azul, por encima amarillo. Una raya: no probado en ese blanco, o no a esa claridad.",
    },
  },
  picture: {
    title: (level: string) => ({
      en: `b* of each black in each white, all at L*\u00a0${level}; the bars are one standard uncertainty`,
      de: `b* der Schwarztöne in jedem Weiß, alle bei L*\u00a0${level}; die Balken zeigen eine Standardunsicherheit`,
      fr: `b* de chaque noir dans chaque blanc, tous à L*\u00a0${level}\u202f; les barres valent une incertitude type`,
      es: `b* de cada negro en cada blanco, todos a L*\u00a0${level}; las barras valen una incertidumbre típica`,
    }),
    axis: {
      en: "b* at equal lightness",
      de: "b* bei gleicher Helligkeit",
      fr: "b* à clarté égale",
      es: "b* a igual claridad",
    },
    ends: {
      minus: { en: "\u2039 blue", de: "\u2039 Blau", fr: "\u2039 bleu", es: "\u2039 azul" },
      plus: { en: "yellow \u203a", de: "Gelb \u203a", fr: "jaune \u203a", es: "amarillo \u203a" },
    },
    description: inOneSentence,
    row: rowOf,
    lane: (white: string, b: string) => ({
      en: `b* ${b} in ${white}`,
      de: `b* ${b} in ${white}`,
      fr: `b* ${b} dans ${white}`,
      es: `b* ${b} en ${white}`,
    }),
    short: (white: string) => ({
      en: white.replace(/\s+white$/, ""),
      de: white.replace(/\s+white$/, ""),
      fr: fr.shortWhite(white),
      es: es.shortWhite(white),
    }),
  },
  scattering: {
    title: (white: string) => ({
      en: `How ${white} scatters light over the spectrum`,
      de: `Wie ${white} Licht über dem Spektrum streut`,
      fr: `Comment ${white} diffuse la lumière sur le spectre`,
      es: `Cómo dispersa ${white} la luz a lo largo del espectro`,
    }),
    wavelength: WAVELENGTH,
    axis: {
      en: "Scattering beside 560 nm",
      de: "Streuung, bezogen auf 560\u00a0nm",
      fr: "Diffusion par rapport à 560\u00a0nm",
      es: "Dispersión frente a 560\u00a0nm",
    },
    read: (filmsUm: readonly number[]) => ({
      en: `line: worked out from its own films of ${filmsUm.join(", ")}\u00a0\u00b5m over an opacity chart, as far as they did not hide it`,
      de: `Linie: errechnet aus den eigenen Filmen von ${filmsUm.join(", ")}\u00a0\u00b5m über einer Prüfkarte, soweit sie diese nicht deckten`,
      fr: `ligne\u202f: calculée d’après ses propres films de ${filmsUm.join(", ")}\u00a0\u00b5m sur une carte de contraste, tant qu’ils ne la couvraient pas`,
      es: `línea: calculada a partir de sus propias películas de ${filmsUm.join(", ")}\u00a0\u00b5m sobre una carta de contraste, en la medida en que no la cubrían`,
    }),
    band: {
      en: "band: what theory says, from the grain and what is not known of it",
      de: "Band: was die Theorie sagt, aus dem Korn und dem, was davon nicht bekannt ist",
      fr: "bande\u202f: ce que dit la théorie, d’après le grain et ce qu’on n’en sait pas",
      es: "banda: lo que dice la teoría, por el grano y lo que de él no se sabe",
    },
    description: (white: string, parts: readonly string[]) => ({
      en: `${white}: ${parts.join("; ")}.`,
      de: `${white}: ${parts.join("; ")}.`,
      fr: `${white}\u202f: ${parts.join("\u202f; ")}.`,
      es: `${white}: ${parts.join("; ")}.`,
    }),
    at: (kind: string, nm: string, value: string) => ({
      en: `${kind} ${value} at ${nm} nm`,
      de: `${kind} ${value} bei ${nm}\u00a0nm`,
      fr: `${kind} ${value} à ${nm}\u00a0nm`,
      es: `${kind} ${value} a ${nm}\u00a0nm`,
    }),
    kinds: {
      read: {
        en: "from its films",
        de: "aus den Filmen",
        fr: "d’après ses films",
        es: "por sus películas",
      },
      band: {
        en: "by theory",
        de: "nach der Theorie",
        fr: "selon la théorie",
        es: "según la teoría",
      },
    },
    span: (low: string, high: string) => ({
      en: `${low} to ${high}`,
      de: `${low} bis ${high}`,
      fr: `${low} à ${high}`,
      es: `${low} a ${high}`,
    }),
  },
  theory: {
    title: (level: string) => ({
      en: `What theory allows at L*\u00a0${level}: ranges, not a figure of any paint`,
      de: `Was die Theorie bei L*\u00a0${level} zulässt: Bereiche, kein Wert einer bestimmten Farbe`,
      fr: `Ce que la théorie permet à L*\u00a0${level}\u202f: des intervalles, non un chiffre d’une peinture`,
      es: `Lo que permite la teoría a L*\u00a0${level}: intervalos, no una cifra de una pintura`,
    }),
    description: inOneSentence,
    row: rowOf,
    lane: (white: string, low: string, high: string) => ({
      en: `b* ${low} to ${high} in ${white}`,
      de: `b* ${low} bis ${high} in ${white}`,
      fr: `b* ${low} à ${high} dans ${white}`,
      es: `b* ${low} a ${high} en ${white}`,
    }),
    axis: {
      en: "b*, the middle four fifths of the cases tried",
      de: "b*, die mittleren vier Fünftel der gerechneten Fälle",
      fr: "b*, les quatre cinquièmes du milieu des cas essayés",
      es: "b*, los cuatro quintos centrales de los casos probados",
    },
    statements: (isTold: boolean) => ({
      en: isTold ? "What theory can say" : "What theory cannot say",
      de: isTold ? "Was die Theorie sagen kann" : "Was die Theorie nicht sagen kann",
      fr: isTold ? "Ce que la théorie peut dire" : "Ce que la théorie ne peut pas dire",
      es: isTold ? "Lo que la teoría puede decir" : "Lo que la teoría no puede decir",
    }),
    statementsNote: (runs: number, robust: string) => ({
      en: `Each of ${runs} cases takes other sizes, spreads, indices and oil. Theory can say what comes out the same way in ${robust} of them.`,
      de: `Jeder der ${runs} Fälle geht von anderen Größen, Streubreiten, Indizes und anderem Öl aus. Sagen kann die Theorie, was in ${robust} davon gleich herauskommt.`,
      fr: `Chacun des ${runs} cas prend d’autres tailles, d’autres étalements, d’autres indices et une autre huile. La théorie peut dire ce qui va dans le même sens dans ${robust} d’entre eux.`,
      es: `Cada uno de los ${runs} casos toma otros tamaños, otras anchuras, otros índices y otro aceite. La teoría puede decir lo que va en el mismo sentido en ${robust} de ellos.`,
    }),
    /** Of which it is told, whatever black it is mixed from. */
    grey: { en: "a grey", de: "ein Grau", fr: "un gris", es: "un gris" },
    pair: (black: string, white: string) => ({
      en: `${black} in ${white}`,
      de: `${black} in ${white}`,
      fr: `${black} dans ${white}`,
      es: `${black} en ${white}`,
    }),
    inputs: {
      caption: {
        en: "What theory was given",
        de: "Was der Theorie vorgegeben wurde",
        fr: "Ce qu’on a donné à la théorie",
        es: "Lo que se dio a la teoría",
      },
      pigment: { en: "Pigment", de: "Pigment", fr: "Pigment", es: "Pigmento" },
      size: {
        en: "Grain, \u00b5m",
        de: "Korn, \u00b5m",
        fr: "Grain, \u00b5m",
        es: "Grano, \u00b5m",
      },
      spread: {
        en: "Spread of sizes",
        de: "Streubreite der Größen",
        fr: "Étalement des tailles",
        es: "Anchura de tamaños",
      },
      indices: {
        en: "Refractive index",
        de: "Brechungsindex",
        fr: "Indice de réfraction",
        es: "Índice de refracción",
      },
      sizeKinds: {
        "volume median": {
          en: "middle, by volume",
          de: "Median, nach Volumen",
          fr: "médiane, en volume",
          es: "mediana, en volumen",
        },
        "number mean": {
          en: "mean, by number",
          de: "Mittelwert, nach Anzahl",
          fr: "moyenne, en nombre",
          es: "media, en número",
        },
      },
      note: (oils: readonly string[]) => ({
        en: `Oil of index ${oils.join(", ")}, by chance. Spread: the geometric standard deviation. The theory is of spheres far apart; real grains are crowded and of other shapes, so it cannot say how strong a colour is, and no swatch is drawn from it.`,
        de: `Öl mit dem Brechungsindex ${oils.join(", ")}, zufällig gewählt. Streubreite: die geometrische Standardabweichung. Die Theorie gilt für Kugeln, die weit auseinanderliegen. Wirkliche Körner liegen dicht und haben andere Formen; wie farbstark eine Farbe ist, kann die Theorie daher nicht sagen, und kein Farbfeld ist nach ihr gezeichnet.`,
        fr: `Huile d’indice ${oils.join(", ")}, au hasard. Étalement\u202f: l’écart type géométrique. La théorie est celle de sphères éloignées les unes des autres\u202f; les vrais grains sont serrés et d’autres formes, et elle ne peut dire si une couleur est forte\u202f: aucun échantillon n’en est tiré.`,
        es: `Aceite de índice ${oils.join(", ")}, al azar. Anchura: la desviación típica geométrica. La teoría es de esferas alejadas entre sí; los granos reales están apretados y tienen otras formas, así que no puede decir si un color es fuerte, y no se dibuja ninguna muestra con ella.`,
      }),
    },
  },
} satisfies Texts;

function inOneSentence(parts: readonly string[]) {
  return {
    en: `${parts.join("; ")}.`,
    de: `${parts.join("; ")}.`,
    fr: `${parts.join("\u202f; ")}.`,
    es: `${parts.join("; ")}.`,
  };
}

function rowOf(black: string, lanes: readonly string[]) {
  return {
    en: `${black}: ${lanes.join(", ")}`,
    de: `${black}: ${lanes.join(", ")}`,
    fr: `${black}\u202f: ${lanes.join(", ")}`,
    es: `${black}: ${lanes.join(", ")}`,
  };
}
