import { de, en, es, fr } from "../phrases-in-each.ts";
import { alike, type Texts } from "../texts.ts";
import type { InEach } from "../in-each.ts";
import {
  inWhite,
  partsInOneLine,
  WAVELENGTH,
  WHITE_TUBE_TO_TUBE,
  withinWhite,
} from "../shared-rows.ts";

/** Words of the pages on what colours do in whites, in films and under gloss. */
export const OPTICS = {
  strength: {
    byPigment: {
      en: "By mass of dry pigment",
      de: "Nach Masse des trockenen Pigments",
      fr: "Par masse de pigment sec",
      es: "Por masa de pigmento seco",
    },
    dispersion: {
      en: "Mulled and milled",
      de: "Von Hand angerieben und gewalzt",
      fr: "À la molette et à la machine",
      es: "Con moleta y a máquina",
    },
    glossTitle: {
      en: "Gloss and depth: the same colour glossy, satin and matte",
      de: "Glanz und Tiefe: dieselbe Farbe glänzend, seidenmatt und matt",
      fr: "Brillance et profondeur\u202f: la même couleur brillante, satinée et mate",
      es: "Brillo y profundidad: el mismo color brillante, satinado y mate",
    },
    glossAxis: {
      en: "As you see it, turned away from the shine; the last with the shine included",
      de: "Wie Sie sie sehen, vom Glanz abgewandt; zuletzt mit Glanz",
      fr: "Telle qu’on la voit, hors du reflet\u202f; la dernière reflet inclus",
      es: "Tal como se ve, fuera del brillo; el último con el brillo incluido",
    },
    glossIncluded: { en: "included", de: "mit Glanz", fr: "inclus", es: "incluido" },
    glossDepth: (L: string, value: string) => ({
      en: `L* ${L}, value ${value}`,
      de: `L* ${L}, Helligkeit ${value}`,
      fr: `L* ${L}, valeur ${value}`,
      es: `L* ${L}, valor ${value}`,
    }),
    glossLabelDepth: (L: string) => alike(`L* ${L}`),
    glossDescription: partsInOneLine,
    finishes: {
      glossy: { en: "glossy", de: "glänzend", fr: "brillant", es: "brillante" },
      satin: { en: "satin", de: "seidenmatt", fr: "satiné", es: "satinado" },
      matte: { en: "matte", de: "matt", fr: "mat", es: "mate" },
    } as Record<string, InEach>,
    glossColumns: {
      finish: { en: "Finish", de: "Glanzgrad", fr: "Aspect", es: "Acabado" },
      excludedL: {
        en: "Away from the shine: L*",
        de: "Vom Glanz abgewandt: L*",
        fr: "Hors du reflet\u202f: L*",
        es: "Fuera del brillo: L*",
      },
      excludedValue: {
        en: "Away from the shine: value",
        de: "Vom Glanz abgewandt: Helligkeit",
        fr: "Hors du reflet\u202f: valeur",
        es: "Fuera del brillo: valor",
      },
      includedL: {
        en: "Shine included: L*",
        de: "Mit Glanz: L*",
        fr: "Reflet inclus\u202f: L*",
        es: "Brillo incluido: L*",
      },
      includedValue: {
        en: "Shine included: value",
        de: "Mit Glanz: Helligkeit",
        fr: "Reflet inclus\u202f: valeur",
        es: "Brillo incluido: valor",
      },
    },
    glossNote: {
      en: "Away from the shine is how you look at a picture. An instrument that takes the shine in reads every finish alike. Value is Munsell\u2019s.",
      de: "Ein Bild betrachtet man vom Glanz abgewandt. Ein Messgerät, das den Glanz einschließt, misst jeden Glanzgrad gleich. Helligkeit ist hier der Value nach Munsell.",
      fr: "C’est hors du reflet qu’on regarde un tableau. Un instrument qui compte le reflet donne la même mesure pour tous les aspects. La valeur est celle de Munsell.",
      es: "Un cuadro se mira fuera del brillo. Un instrumento que cuenta el brillo da la misma medición para todos los acabados. El valor es el de Munsell.",
    },
  },
  fit: {
    title: {
      en: "Absorption K and scattering S over the spectrum",
      de: "Absorption K und Streuung S über dem Spektrum",
      fr: "Absorption K et diffusion S sur le spectre",
      es: "Absorción K y dispersión S a lo largo del espectro",
    },
    wavelength: WAVELENGTH,
    K: {
      en: "Absorption K, in units of each white\u2019s own scattering",
      de: "Absorption K, in Einheiten der Streuung jedes Weiß",
      fr: "Absorption K, en unités de la diffusion propre de chaque blanc",
      es: "Absorción K, en unidades de la dispersión propia de cada blanco",
    },
    S: {
      en: "Scattering S, in the same units",
      de: "Streuung S, in denselben Einheiten",
      fr: "Diffusion S, dans les mêmes unités",
      es: "Dispersión S, en las mismas unidades",
    },
    SUpper: {
      en: "Scattering S, in the same units: only a limit is known, it lies below the line",
      de: "Streuung S, in denselben Einheiten: Bekannt ist nur eine Grenze, S liegt unter der Linie",
      fr: "Diffusion S, dans les mêmes unités\u202f: on n’en connaît qu’une limite\u202f: S est sous la ligne",
      es: "Dispersión S, en las mismas unidades: solo se conoce un límite: S queda por debajo de la línea",
    },
    description: partsInOneLine,
    part: (white: string, least: string, greatest: string) => ({
      en: `In ${white}, K from ${least} to ${greatest}`,
      de: `In ${white}, K von ${least} bis ${greatest}`,
      fr: `Dans ${white}, K de ${least} à ${greatest}`,
      es: `En ${white}, K de ${least} a ${greatest}`,
    }),
    list: {
      en: "How K and S were fitted",
      de: "Wie K und S angepasst wurden",
      fr: "Comment K et S ont été ajustés",
      es: "Cómo se ajustaron K y S",
    },
    leftOut: {
      en: "Drawdowns left out of the fit",
      de: "Aufstriche, die nicht in die Anpassung eingehen",
      fr: "Applications laissées hors de l’ajustement",
      es: "Aplicaciones dejadas fuera del ajuste",
    },
    series: (count: number, least: string, greatest: string) => ({
      en: `${least} to ${greatest} over ${count} wavelengths`,
      de: `${least} bis ${greatest} über ${count} Wellenlängen`,
      fr: `${least} à ${greatest} sur ${count} longueurs d’onde`,
      es: `${least} a ${greatest} en ${count} longitudes de onda`,
    }),
  },
  whites: {
    linkToAll: {
      en: "All our blacks and greys in each white",
      de: "Alle unsere Schwarz- und Grautöne in jedem Weiß",
      fr: "Tous nos noirs et nos gris dans chaque blanc",
      es: "Todos nuestros negros y grises en cada blanco",
    },
  },
  byStrength: {
    ranked: (reference: string) => ({
      en: `Against ${reference}, the strongest first`,
      de: `Verglichen mit ${reference}, die stärkste zuerst`,
      fr: `Par rapport à ${reference}, la plus forte d’abord`,
      es: `Frente a ${reference}, el más fuerte primero`,
    }),
    notCompared: {
      en: "Not compared in strength",
      de: "In der Farbstärke nicht verglichen",
      fr: "Non comparées en force",
      es: "No comparados en fuerza",
    },
    lead: {
      en: "How strongly each colour tints a white, tube for tube, beside our reference colour; and how much white brings it to a middle tone. Compare parts of white only between colours of one hue: a dark colour takes more white without being stronger.",
      de: "Wie stark jede Farbe ein Weiß färbt, Tube zu Tube, verglichen mit unserer Bezugsfarbe; und wie viel Weiß sie bis zu einem Mittelton braucht. Teile Weiß nur zwischen Farben eines Bunttons vergleichen: Eine dunkle Farbe braucht mehr Weiß, ohne stärker zu färben.",
      fr: "À quel point chacune colore un blanc, tube pour tube, par rapport à notre couleur de référence\u202f; et combien de blanc il lui faut pour un ton moyen. Ne comparer les parts de blanc qu’entre couleurs d’une même teinte\u202f: une couleur foncée demande plus de blanc sans être plus forte.",
      es: "Cuánto colorea cada uno un blanco, tubo a tubo, frente a nuestro color de referencia; y cuánto blanco hace falta para un tono medio. Compare las partes de blanco solo entre colores de un mismo matiz: un color oscuro pide más blanco sin ser más fuerte.",
    },
    columns: {
      colour: { en: "Colour", de: "Farbe", fr: "Couleur", es: "Color" },
      byMass: { en: "By mass", de: "Nach Masse", fr: "En masse", es: "En masa" },
      byVolume: { en: "Tube to tube", de: "Tube zu Tube", fr: "Tube pour tube", es: "Tubo a tubo" },
      white: WHITE_TUBE_TO_TUBE,
    },
    inWhite: withinWhite,
  },
  inTheWhites: {
    heading: {
      en: "Blacks and greys in each white",
      de: "Schwarz und Grau in jedem Weiß",
      fr: "Noirs et gris dans chaque blanc",
      es: "Negros y grises en cada blanco",
    },
    lead: {
      en: "Judge a black by its grey, not by the tube: here is every one of ours, mixed with each white to the same middle grey.",
      de: "Beurteilen Sie ein Schwarz nach seinem Grau, nicht nach der Tube: Hier sind alle unsere, jedes mit jedem Weiß zum selben mittleren Grau gemischt.",
      fr: "Un noir se juge à son gris, non au tube\u202f: voici tous les nôtres, mélangés à chaque blanc jusqu’au même gris moyen.",
      es: "Un negro se juzga por su gris, no por el tubo: aquí están todos los nuestros, mezclados con cada blanco hasta el mismo gris medio.",
    },
    orders: {
      en: "Blacks and greys",
      de: "Schwarz und Grau",
      fr: "Noirs et gris",
      es: "Negros y grises",
    },
    sections: {
      swatches: { en: "Side by side", de: "Nebeneinander", fr: "Côte à côte", es: "Lado a lado" },
      trails: {
        en: "Where each white takes them",
        de: "Wohin jedes Weiß sie führt",
        fr: "Où chaque blanc les mène",
        es: "Adónde los lleva cada blanco",
      },
      figures: { en: "In figures", de: "In Zahlen", fr: "En chiffres", es: "En cifras" },
    },
    board: {
      caption: {
        en: "Blacks and greys alone, and mixed with each white to L* 50; the bluest first",
        de: "Schwarz und Grau allein und mit jedem Weiß auf L* 50 gemischt; die blauesten zuerst",
        fr: "Noirs et gris purs, et mélangés à chaque blanc jusqu’à L* 50\u202f; les plus bleus d’abord",
        es: "Negros y grises puros, y mezclados con cada blanco hasta L* 50; los más azules primero",
      },
      alone: { en: "Alone", de: "Allein", fr: "Pur", es: "Puro" },
      said: { en: "In words", de: "In Worten", fr: "En mots", es: "En palabras" },
      notRead: { en: "not read", de: "nicht gemessen", fr: "non mesuré", es: "no medido" },
      notTried: { en: "not tried", de: "nicht erprobt", fr: "non essayé", es: "no probado" },
      figures: (a: string, b: string) => alike(`a*\u00a0${a}, b*\u00a0${b}`),
    },
    readWithGloss: (names: readonly string[]) => ({
      en: `${en.listed(names)} ${names.length === 1 ? "was" : "were"} read with gloss included, the others without: as read, the two kinds do not compare.`,
      de: `${de.listed(names)} ${names.length === 1 ? "wurde" : "wurden"} mit Glanz gemessen, die anderen ohne: So gemessen lassen sich die beiden Arten nicht vergleichen.`,
      fr: `Reflet inclus à la mesure\u202f: ${fr.listed(names)}\u202f; reflet exclu pour les autres. Ainsi mesurées, les deux sortes ne se comparent pas.`,
      es: `Medidos con el brillo incluido: ${es.listed(names)}; los demás sin él. Tal como se midieron, las dos clases no se comparan.`,
    }),
    group: (white: string, index: string | undefined) =>
      alike(`${white}${index === undefined ? "" : ` (${index})`}`),
    picture: inWhite,
    description: (parts: readonly string[]) => ({
      en: `At L* 50: ${parts.join("; ")}.`,
      de: `Bei L* 50: ${parts.join("; ")}.`,
      fr: `À L* 50\u202f: ${parts.join("\u202f; ")}.`,
      es: `A L* 50: ${parts.join("; ")}.`,
    }),
    descriptionPart: (name: string, a: string, b: string) => alike(`${name} a* ${a}, b* ${b}`),
    key: {
      en: "The cross is neutral: up is yellow, down blue, left green, right red. Filled marks are what we painted out and read, from L* 30 to the palest; dashed lines are worked out between them. An arrow at the edge names a black that leaves the greys, with its a* and b*.",
      de: "Das Kreuz ist neutral: Oben ist Gelb, unten Blau, links Grün, rechts Rot. Gefüllte Marken zeigen, was wir aufgestrichen und gemessen haben, von L* 30 bis zur hellsten Aufhellung; gestrichelte Linien sind dazwischen errechnet. Ein Pfeil am Rand nennt ein Schwarz, das den Bereich der Grautöne verlässt, mit a* und b*.",
      fr: "La croix est le neutre\u202f: en haut le jaune, en bas le bleu, à gauche le vert, à droite le rouge. Les marques pleines sont ce que nous avons peint et mesuré, de L* 30 au plus pâle\u202f; les tirets sont calculés entre elles. Une flèche au bord nomme un noir qui sort des gris, avec son a* et son b*.",
      es: "La cruz es el neutro: arriba el amarillo, abajo el azul, a la izquierda el verde, a la derecha el rojo. Las marcas rellenas son lo que pintamos y medimos, de L* 30 a lo más pálido; las líneas de trazos están calculadas entre ellas. Una flecha en el borde nombra un negro que sale de los grises, con su a* y su b*.",
    },
    caption: (white: string) => ({
      en: `In ${white}, the bluest at L* 50 first`,
      de: `In ${white}, das bei L* 50 blaueste zuerst`,
      fr: `Dans ${white}, le plus bleu à L* 50 d’abord`,
      es: `En ${white}, el más azul a L* 50 primero`,
    }),
    columns: {
      colour: { en: "Colour", de: "Farbe", fr: "Couleur", es: "Color" },
      a: { en: "a* at L* 50", de: "a* bei L* 50", fr: "a* à L* 50", es: "a* a L* 50" },
      b: { en: "b* at L* 50", de: "b* bei L* 50", fr: "b* à L* 50", es: "b* a L* 50" },
      b70: { en: "b* at L* 70", de: "b* bei L* 70", fr: "b* à L* 70", es: "b* a L* 70" },
      b30: { en: "b* at L* 30", de: "b* bei L* 30", fr: "b* à L* 30", es: "b* a L* 30" },
    },
    note: {
      en: "D65, 10\u00b0 observer. A dash: not at that lightness.",
      de: "D65, 10\u00b0-Beobachter. Ein Strich: nicht bei dieser Helligkeit.",
      fr: "D65, observateur 10\u00b0. Un tiret\u202f: pas à cette clarté.",
      es: "D65, observador de 10\u00b0. Una raya: no a esa claridad.",
    },
    none: {
      en: "No black or grey of the range has been tried in a white yet.",
      de: "Noch kein Schwarz oder Grau des Sortiments wurde in einem Weiß erprobt.",
      fr: "Aucun noir ni gris de la gamme n’a encore été essayé dans un blanc.",
      es: "Aún no se ha probado en un blanco ningún negro ni gris de la gama.",
    },
  },
} satisfies Texts;
