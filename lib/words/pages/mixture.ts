import { fr } from "../phrases-in-each.ts";
import { STEP_COLUMNS } from "./step-columns.ts";
import { alike, type Texts } from "../texts.ts";
import { inWhite, PAINT_BY_MASS, twoCoordinates } from "../shared-rows.ts";

/** What the sheet says of a colour of several pigments: what its components predict, its greys, and drift. */
export const MIXTURE = {
  caption: {
    en: "What it is mixed from",
    de: "Woraus die Farbe gemischt ist",
    fr: "Ce qui la compose",
    es: "De qué es mezcla",
  },
  columns: {
    pigment: { en: "Pigment", de: "Pigment", fr: "Pigment", es: "Pigmento" },
    paint: {
      en: "Paint of it alone",
      de: "Farbe daraus allein",
      fr: "Sa peinture pure",
      es: "Su pintura pura",
    },
    pigmentMass: {
      en: "Dry, by mass",
      de: "Trocken, nach Masse",
      fr: "Sec, en masse",
      es: "Seco, en masa",
    },
    pigmentVolume: {
      en: "Dry, by volume",
      de: "Trocken, nach Volumen",
      fr: "Sec, en volume",
      es: "Seco, en volumen",
    },
    paintMass: PAINT_BY_MASS,
    paintVolume: {
      en: "Tube to tube",
      de: "Tube zu Tube",
      fr: "Tube pour tube",
      es: "Tubo a tubo",
    },
  },
  note: {
    en: "Left, the dry pigment in it. Right, what to squeeze from the single tubes to mix the same on the palette.",
    de: "Links das trockene Pigment darin. Rechts, was aus den einzelnen Tuben zu drücken ist, um auf der Palette dasselbe zu mischen.",
    fr: "À gauche, le pigment sec qu’elle contient. À droite, ce qu’il faut prendre des tubes simples pour refaire ce mélange sur la palette.",
    es: "A la izquierda, el pigmento seco que contiene. A la derecha, qué sacar de los tubos simples para mezclar lo mismo en la paleta.",
  },
  noPaint: {
    en: "none is made of it alone",
    de: "daraus allein ist keine gemacht",
    fr: "aucune ne l’a pour seul pigment",
    es: "ninguna lo tiene como único pigmento",
  },
  lead: {
    en: "Everything here is worked out from the paints of its single pigments. Where we painted out the mixture itself, the two are shown side by side.",
    de: "Alles hier ist aus den Farben der einzelnen Pigmente errechnet. Wo wir die Mischung selbst aufgestrichen haben, steht beides nebeneinander.",
    fr: "Tout ici est calculé d’après les peintures de ses pigments simples. Là où nous avons peint le mélange lui-même, les deux sont montrés côte à côte.",
    es: "Todo aquí está calculado a partir de las pinturas de sus pigmentos solos. Donde pintamos la propia mezcla, las dos se muestran lado a lado.",
  },
  heading: inWhite,
  met: (white: string, count: number, middle: string, largest: string) => ({
    en: `In ${white} its components predict ${count === 1 ? "its one let-down" : `its ${count} let-downs`} to \u0394E00 ${middle}${count === 1 ? "" : ` in the middle, ${largest} at most`}.`,
    de:
      count === 1
        ? `In ${white} sagen die Komponenten die eine Aufhellung auf \u0394E00 ${middle} vorher.`
        : `In ${white} sagen die Komponenten die ${count} Aufhellungen vorher, in der Mitte auf \u0394E00 ${middle}, die am weitesten verfehlte auf ${largest}.`,
    fr: `Dans ${white}, ses composants prévoient ${count === 1 ? "son unique dégradé" : `ses ${count} dégradés`} à \u0394E00 ${middle} près${count === 1 ? "" : ` en médiane, ${largest} au plus`}.`,
    es: `En ${white} sus componentes prevén ${count === 1 ? "su único rebaje" : `sus ${count} rebajes`} con un error de \u0394E00 ${middle}${count === 1 ? "" : ` de mediana, ${largest} como máximo`}.`,
  }),
  metWithMasstone: (white: string, count: number, middle: string, largest: string) => ({
    en: `In ${white} its components predict its ${count} drawdowns, the colour alone included, to \u0394E00 ${middle} in the middle, ${largest} at most.`,
    de: `In ${white} sagen die Komponenten die ${count} Aufstriche vorher, die Farbe allein eingeschlossen, in der Mitte auf \u0394E00 ${middle}, den am weitesten verfehlten auf ${largest}.`,
    fr: `Dans ${white}, ses composants prévoient ses ${count} applications, la couleur pure comprise, à \u0394E00 ${middle} près en médiane, ${largest} au plus.`,
    es: `En ${white} sus componentes prevén sus ${count} aplicaciones, con el color puro incluido, con un error de \u0394E00 ${middle} de mediana, ${largest} como máximo.`,
  }),
  metAlone: (white: string, miss: string) => ({
    en: `By their let-downs in ${white} its components predict the colour alone, without white, to \u0394E00 ${miss}.`,
    de: `Nach ihren Aufhellungen in ${white} sagen die Komponenten die Farbe allein, ohne Weiß, auf \u0394E00 ${miss} vorher.`,
    fr: `D’après leurs dégradés dans ${white}, ses composants prévoient la couleur pure, sans blanc, à \u0394E00 ${miss} près.`,
    es: `Por sus rebajes en ${white}, sus componentes prevén el color puro, sin blanco, con un error de \u0394E00 ${miss}.`,
  }),
  notMet: (white: string) => ({
    en: `We have not tried it in ${white}: this is a prediction alone.`,
    de: `In ${white} haben wir die Mischung nicht erprobt: Das ist nur eine Vorhersage.`,
    fr: `Nous ne l’avons pas essayée dans ${white}\u202f: c’est une simple prévision.`,
    es: `No lo hemos probado en ${white}: es solo una previsión.`,
  }),
  steps: (count: number) => ({
    en: `Predicted beside what was read: ${count === 1 ? "one step" : `${count} steps`}`,
    de: `Vorhergesagt neben gemessen: ${count === 1 ? "eine Stufe" : `${count} Stufen`}`,
    fr: `Prévision et mesure côte à côte\u202f: ${count === 1 ? "un degré" : `${count} degrés`}`,
    es: `Previsión junto a medición: ${count === 1 ? "un paso" : `${count} pasos`}`,
  }),
  stepsCaption: (white: string) => ({
    en: `Colour to ${white}, as its components predict it`,
    de: `Farbe zu ${white}, wie die Komponenten es vorhersagen`,
    fr: `Couleur/${white}, comme ses composants la prévoient`,
    es: `Color/${white}, tal como lo prevén sus componentes`,
  }),
  masstone: { en: "masstone", de: "Vollton", fr: "ton plein", es: "tono pleno" },
  stepColumns: {
    ...STEP_COLUMNS,
    uncertainty: alike("\u00b1"),
    miss: { en: "Missed by", de: "Abweichung", fr: "Écart", es: "Error" },
  },
  stepsNote: {
    en: "L* a* b* under D65, 10\u00b0 observer. \u00b1: about 68\u00a0% of predictions stay within it, in \u0394E00, by measured oil paints and by our own let-downs, each left out in turn. Missed by: the \u0394E00 to our own drawdown.",
    de: "L* a* b* unter D65, 10\u00b0-Beobachter. \u00b1: etwa 68\u00a0% der Vorhersagen bleiben darin, in \u0394E00, nach gemessenen Ölfarben und nach unseren eigenen Aufhellungen, jede der Reihe nach weggelassen. Abweichung: das \u0394E00 zu unserem eigenen Aufstrich.",
    fr: "L* a* b* sous D65, observateur 10\u00b0. \u00b1\u202f: environ 68\u00a0% des prévisions restent en deçà, en \u0394E00, d’après des peintures à l’huile mesurées et nos propres dégradés, chacun écarté à son tour. Écart\u202f: le \u0394E00 par rapport à notre propre application.",
    es: "L* a* b* bajo D65, observador de 10\u00b0. \u00b1: alrededor del 68\u00a0% de las previsiones quedan dentro, en \u0394E00, según óleos medidos y nuestros propios rebajes, cada uno dejado fuera por turno. Error: el \u0394E00 respecto a nuestra propia aplicación.",
  },
  drift: {
    heading: {
      en: "If a pigment in it fades",
      de: "Wenn eines der Pigmente verblasst",
      fr: "Si l’un de ses pigments passe",
      es: "Si uno de sus pigmentos se desvanece",
    },
    figures: {
      en: "Drift in figures",
      de: "Verschiebung in Zahlen",
      fr: "La dérive en chiffres",
      es: "La deriva en cifras",
    },
    caption: (white: string) => ({
      en: `A middle tint in ${white}, and the same with one pigment weaker`,
      de: `Eine mittlere Aufhellung in ${white}, und dieselbe mit einem schwächeren Pigment`,
      fr: `Un ton moyen dans ${white}, et le même avec un pigment plus faible`,
      es: `Un tono medio en ${white}, y el mismo con un pigmento más débil`,
    }),
    asMade: { en: "as made", de: "wie hergestellt", fr: "tel quel", es: "tal como se hizo" },
    lost: (name: string, percent: string) => ({
      en: `${name}, ${percent}\u00a0% lost`,
      de: `${name}, ${percent}\u00a0% verloren`,
      fr: `${name}, ${percent}\u00a0% de perdu`,
      es: `${name}, ${percent}\u00a0% perdido`,
    }),
    columns: {
      what: { en: "Tint", de: "Aufhellung", fr: "Dégradé", es: "Rebaje" },
      L: alike("L*"),
      a: alike("a*"),
      b: alike("b*"),
      change: alike("\u0394E00"),
      hue: {
        en: "Of it in a* b*",
        de: "Davon in a* b*",
        fr: "Dont en a* b*",
        es: "De ello en a* b*",
      },
    },
    note: {
      en: "Worked out, not seen: so much of the pigment taken away. The last column leaves lightness out; it is the change of hue.",
      de: "Errechnet, nicht beobachtet: So viel vom Pigment ist weggenommen. Die letzte Spalte lässt die Helligkeit außer Acht und zeigt nur die Änderung des Bunttons.",
      fr: "Calculé, non observé\u202f: on ôte cette part du pigment. La dernière colonne laisse la clarté de côté\u202f; c’est le changement de teinte.",
      es: "Calculado, no observado: se quita esa parte del pigmento. La última columna deja fuera la claridad; es el cambio de matiz.",
    },
    single: (sentence: string) => ({
      en: `For comparison, a black of one pigment: ${sentence}`,
      de: `Zum Vergleich ein Schwarz aus einem Pigment: ${sentence}`,
      fr: `Pour comparer, un noir d’un seul pigment\u202f: ${sentence}`,
      es: `Para comparar, un negro de un solo pigmento: ${sentence}`,
    }),
    title: (white: string) => ({
      en: `How its middle tint in ${white} shifts if one pigment fades by 30 and 60\u00a0%`,
      de: `Wie sich ihre mittlere Aufhellung in ${white} verschiebt, wenn ein Pigment um 30 und 60\u00a0% verblasst`,
      fr: `Comment son ton moyen dans ${white} se déplace si un pigment passe de 30 et de 60\u00a0%`,
      es: `Cómo se desplaza su tono medio en ${white} si un pigmento se desvanece un 30 y un 60\u00a0%`,
    }),
    description: (paths: readonly string[]) => ({
      en: `${paths.join("; ")}.`,
      de: `${paths.join("; ")}.`,
      fr: `${paths.join("\u202f; ")}.`,
      es: `${paths.join("; ")}.`,
    }),
    path: (name: string, a: string, b: string) => ({
      en: `${name} 60 % weaker: a* ${a}, b* ${b}`,
      de: `${name} 60\u00a0% schwächer: a* ${a}, b* ${b}`,
      fr: `${name} plus faible de 60\u00a0%\u202f: a* ${a}, b* ${b}`,
      es: `${name} un 60\u00a0% más débil: a* ${a}, b* ${b}`,
    }),
    less: (name: string) => ({
      en: `less ${name}`,
      de: `weniger ${name}`,
      fr: `moins ${fr.of(name)}`,
      es: `menos ${name}`,
    }),
    percent: (percent: string) => alike(`${percent}\u00a0%`),
  },
  pair: {
    title: (first: string, second: string) => ({
      en: `Middle tints of ${first} and ${second}, beside blacks of one pigment`,
      de: `Mittlere Aufhellungen von ${first} und ${second}, neben Schwarz aus einem Pigment`,
      fr: `Tons moyens ${fr.of(first)} et ${second}, à côté des noirs d’un seul pigment`,
      es: `Tonos medios de ${first} y ${second}, junto a negros de un solo pigmento`,
    }),
    description: (
      first: string,
      second: string,
      share: string,
      chroma: string,
      blacks: readonly string[],
    ) => ({
      en: `From all ${second} to all ${first}, nearest to neutral at ${share} of ${first} by mass, C*ab ${chroma}. ${blacks.join("; ")}.`,
      de: `Von ganz ${second} bis ganz ${first}, am nächsten an Neutral bei ${share} ${first} nach Masse, C*ab ${chroma}. ${blacks.join("; ")}.`,
      fr: `De ${second} seul à ${first} seul, au plus près du neutre à ${share} ${fr.of(first)} en masse, C*ab ${chroma}. ${blacks.join("\u202f; ")}.`,
      es: `De ${second} solo a ${first} solo, lo más cerca del neutro con ${share} de ${first} en masa, C*ab ${chroma}. ${blacks.join("; ")}.`,
    }),
    single: {
      en: "blacks of one pigment",
      de: "Schwarz aus einem Pigment",
      fr: "noirs d’un seul pigment",
      es: "negros de un solo pigmento",
    },
    black: (name: string, a: string, b: string) => ({
      en: `${name}: a* ${a}, b* ${b}`,
      de: `${name}: a* ${a}, b* ${b}`,
      fr: `${name}\u202f: a* ${a}, b* ${b}`,
      es: `${name}: a* ${a}, b* ${b}`,
    }),
    neutral: (
      first: string,
      second: string,
      share: string,
      volume: string | undefined,
      chroma: string,
    ) => ({
      en: `The most neutral middle tint of ${first} and ${second} takes ${share} of ${first} by weight of paint${volume === undefined ? "" : ` (${volume} by volume)`}; C*ab ${chroma}.`,
      de: `Die neutralste mittlere Aufhellung von ${first} und ${second} braucht ${share} ${first} nach Gewicht der Farbe${volume === undefined ? "" : ` (${volume} nach Volumen)`}; C*ab ${chroma}.`,
      fr: `Le ton moyen le plus neutre ${fr.of(first)} et ${second} prend ${share} ${fr.of(first)} en poids de peinture${volume === undefined ? "" : ` (${volume} en volume)`}\u202f; C*ab ${chroma}.`,
      es: `El tono medio más neutro de ${first} y ${second} lleva ${share} de ${first} en peso de pintura${volume === undefined ? "" : ` (${volume} en volumen)`}; C*ab ${chroma}.`,
    }),
    share: (percent: string) => alike(`${percent}\u00a0%`),
  },
  blacks: {
    summary: (count: number, all: number) => ({
      en:
        count === all
          ? `Beside blacks of one pigment: ${count} of the range`
          : `Beside blacks of one pigment: the ${count} nearest to it of ${all}`,
      de:
        count === all
          ? `Neben Schwarz aus einem Pigment: ${count} aus dem Sortiment`
          : `Neben Schwarz aus einem Pigment: von ${all} die ${count}, die ihm am nächsten kommen`,
      fr:
        count === all
          ? `À côté des noirs d’un seul pigment\u202f: ${count} de la gamme`
          : `À côté des noirs d’un seul pigment\u202f: les ${count} plus proches sur ${all}`,
      es:
        count === all
          ? `Junto a negros de un solo pigmento: ${count} de la gama`
          : `Junto a negros de un solo pigmento: los ${count} más próximos de ${all}`,
    }),
    caption: (white: string) => ({
      en: `At equal lightness in ${white}: a* and b*`,
      de: `Bei gleicher Helligkeit in ${white}: a* und b*`,
      fr: `À clarté égale dans ${white}\u202f: a* et b*`,
      es: `A igual claridad en ${white}: a* y b*`,
    }),
    columns: {
      colour: { en: "Colour", de: "Farbe", fr: "Couleur", es: "Color" },
      at: (level: string) => alike(`L* ${level}`),
    },
    cell: twoCoordinates,
    note: {
      en: "a* and b*, under D65 for the 10\u00b0 observer. 0, 0 is neutral; b* below zero is blue, above it yellow. A dash: not at that lightness.",
      de: "a* und b*, unter D65 für den 10\u00b0-Beobachter. 0, 0 ist neutral; b* unter null ist Blau, darüber Gelb. Ein Strich: nicht bei dieser Helligkeit.",
      fr: "a* et b*, sous D65 pour l’observateur 10\u00b0. 0, 0 est neutre\u202f; b* au-dessous de zéro est bleu, au-dessus jaune. Un tiret\u202f: pas à cette clarté.",
      es: "a* y b*, bajo D65 para el observador de 10\u00b0. 0, 0 es neutro; b* por debajo de cero es azul, por encima amarillo. Una raya: no a esa claridad.",
    },
  },
} satisfies Texts;
