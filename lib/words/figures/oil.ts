import type { FigureTexts } from "./figure-words.ts";

/** Oil demand, packing and finish. */
export const OIL_FIGURES = {
  oilSection: {
    en: "Oil and how the pigment packs",
    de: "Öl und Pigmentpackung",
    fr: "Huile et compacité",
    es: "Aceite y empaquetamiento",
  },
  oilIndex: {
    en: "Oil index",
    de: "Ölindex",
    fr: "Indice d’huile",
    es: "Índice de aceite",
    gloss: {
      en: "grams of oil to 100 g of pigment, in the paint as made",
      de: "Gramm Öl auf 100 g Pigment, in der fertigen Farbe",
      fr: "grammes d’huile pour 100\u00a0g de pigment, dans la peinture telle que nous la faisons",
      es: "gramos de aceite por 100\u00a0g de pigmento, en la pintura tal como la hacemos",
    },
    found: {
      "rub-out figure x 1.1 to 2": {
        de: "Ölzahl (angerieben) x 1,1 bis 2",
        fr: "prise d’huile au couteau x 1,1 à 2",
        es: "absorción de aceite (amasado) x de 1,1 a 2",
      },
      "main oil, and the oils added to it": {
        de: "Hauptöl mit den zugesetzten Ölen",
        fr: "huile principale et huiles ajoutées",
        es: "aceite principal y aceites añadidos",
      },
    },
  },
  mainOil: {
    en: "Main oil alone",
    de: "Hauptöl allein",
    fr: "Huile principale seule",
    es: "Aceite principal solo",
    gloss: {
      en: "the same without the other oils in it",
      de: "dasselbe ohne die anderen Öle darin",
      fr: "la même chose, sans les autres huiles qu’elle contient",
      es: "lo mismo, sin los demás aceites que contiene",
    },
    found: {
      "oil index / (1 + the oils added to it)": {
        de: "Ölindex / (1 + die zugesetzten Öle)",
        fr: "indice d’huile / (1 + les huiles ajoutées)",
        es: "índice de aceite / (1 + los aceites añadidos)",
      },
    },
  },
  oilIndexClass: {
    en: "Oil demand",
    de: "Ölbedarf",
    fr: "Besoin en huile",
    es: "Consumo de aceite",
    found: {
      "class of oil index": {
        de: "Klasse des Ölindex",
        fr: "classe de l’indice d’huile",
        es: "clase del índice de aceite",
      },
    },
    missing: {
      "its estimate reaches over several classes": {
        de: "die Schätzung reicht über mehrere Klassen",
        fr: "l’estimation couvre plusieurs classes",
        es: "la estimación abarca varias clases",
      },
    },
  },
  oilByVolume: {
    en: "Oil by volume of pigment",
    de: "Öl auf das Volumen des Pigments",
    fr: "Huile par volume de pigment",
    es: "Aceite por volumen de pigmento",
    gloss: {
      en: "the same for 100 cm³ of pigment, so that light and heavy pigments can be compared",
      de: "dasselbe für 100 cm³ Pigment, damit sich leichte und schwere Pigmente vergleichen lassen",
      fr: "la même chose pour 100\u00a0cm³ de pigment, pour comparer pigments légers et pigments lourds",
      es: "lo mismo por 100\u00a0cm³ de pigmento, para comparar pigmentos ligeros y pesados",
    },
    found: {
      "oil index x density of the pigment": {
        de: "Ölindex x Dichte des Pigments",
        fr: "indice d’huile x masse volumique du pigment",
        es: "índice de aceite x densidad del pigmento",
      },
    },
  },
  cpvc: {
    en: "CPVC",
    de: "KPVK",
    fr: "CPVC",
    es: "CPVC",
    gloss: {
      en: "the share of pigment in the dry film at which the oil just fills the gaps",
      de: "Kritische Pigmentvolumenkonzentration: der Anteil Pigment im trockenen Film, bei dem das Öl die Lücken gerade füllt",
      fr: "la part de pigment du film sec où l’huile comble tout juste les vides",
      es: "la parte de pigmento de la película seca en que el aceite llena justo los huecos",
    },
    found: {
      "CPVC = 1/(1 + OA rho/93.5)": {
        de: "KPVK = 1/(1 + ÖZ rho/93,5)",
        fr: "CPVC = 1/(1 + PH rho/93,5)",
        es: "CPVC = 1/(1 + AA rho/93,5)",
      },
    },
  },
  dispersionFactor: {
    en: "Dispersion factor",
    de: "Dispergierfaktor",
    fr: "Facteur de broyage",
    es: "Factor de molienda",
    found: {
      "clumps hold oil: factor by pigment and dispersion": {
        de: "Agglomerate halten Öl fest: Faktor nach Pigment und Anreiben",
        fr: "les amas retiennent de l’huile\u202f: facteur selon le pigment et le broyage",
        es: "los grumos retienen aceite: factor por pigmento y molienda",
      },
    },
  },
  effectiveCpvc: {
    en: "Effective CPVC",
    de: "Wirksame KPVK",
    fr: "CPVC effective",
    es: "CPVC efectiva",
    gloss: {
      en: "the CPVC after the oil that clumps hold back",
      de: "die KPVK nach Abzug des Öls, das Agglomerate festhalten",
      fr: "la CPVC une fois déduite l’huile que retiennent les amas",
      es: "la CPVC una vez restado el aceite que retienen los grumos",
    },
    found: {
      "CPVC x dispersion factor": {
        de: "KPVK x Dispergierfaktor",
        fr: "CPVC x facteur de broyage",
        es: "CPVC x factor de molienda",
      },
    },
  },
  pvc: {
    en: "PVC",
    de: "PVK",
    fr: "CPV",
    es: "PVC",
    gloss: {
      en: "the share of pigment in the dry film, by volume",
      de: "Pigmentvolumenkonzentration: der Anteil Pigment im trockenen Film, nach Volumen",
      fr: "la part de pigment du film sec, en volume",
      es: "la parte de pigmento de la película seca, en volumen",
    },
    found: {
      "PVC = pigment volume / (pigment + oil and medium volume)": {
        de: "PVK = Pigmentvolumen / (Pigment- + Öl- und Malmittelvolumen)",
        fr: "CPV = volume de pigment / (volume de pigment, d’huile et de médium)",
        es: "PVC = volumen de pigmento / (volumen de pigmento, aceite y médium)",
      },
      "PVC = pigment volume / (pigment + oil volume)": {
        de: "PVK = Pigmentvolumen / (Pigment- + Ölvolumen)",
        fr: "CPV = volume de pigment / (volume de pigment et d’huile)",
        es: "PVC = volumen de pigmento / (volumen de pigmento y aceite)",
      },
    },
  },
  reducedPvc: { en: "PVC over CPVC", de: "PVK zu KPVK", fr: "CPV sur CPVC", es: "PVC entre CPVC" },
  effectiveReducedPvc: {
    en: "PVC over effective CPVC",
    de: "PVK zu wirksamer KPVK",
    fr: "CPV sur CPVC effective",
    es: "PVC entre CPVC efectiva",
    gloss: {
      en: "below 1 there is oil to spare and the film is glossy; above 1 it has voids and is matte",
      de: "unter 1 ist Öl übrig, und der Film glänzt; über 1 hat der Film Hohlräume und ist matt",
      fr: "au-dessous de 1 l’huile est en excès et le film brille\u202f; au-dessus de 1 il a des vides et il est mat",
      es: "por debajo de 1 sobra aceite y la película brilla; por encima de 1 tiene huecos y es mate",
    },
  },
  paintDensity: {
    en: "Density of the paint",
    de: "Dichte der Farbe",
    fr: "Masse volumique de la peinture",
    es: "Densidad de la pintura",
    found: {
      "mass / volume of all that is in it": {
        de: "Masse / Volumen all dessen, was darin ist",
        fr: "masse / volume de tout ce qu’elle contient",
        es: "masa / volumen de todo lo que contiene",
      },
      "measured on one lot": {
        de: "an einer Charge gemessen",
        fr: "mesurée sur un lot",
        es: "medida en un lote",
      },
      "median measured on {a} lots": {
        de: "Median aus {a} gemessenen Chargen",
        fr: "médiane mesurée sur {a} lots",
        es: "mediana medida en {a} lotes",
      },
    },
  },
  pigmentMassFraction: {
    en: "Pigment of the paint, by mass",
    de: "Pigment in der Farbe, nach Masse",
    fr: "Pigment dans la peinture, en masse",
    es: "Pigmento en la pintura, en masa",
    found: {
      "mass of dry pigment / mass of all that is in it": {
        de: "Masse des trockenen Pigments / Masse all dessen, was darin ist",
        fr: "masse de pigment sec / masse de tout ce qu’elle contient",
        es: "masa de pigmento seco / masa de todo lo que contiene",
      },
    },
  },
  pigmentByVolume: {
    en: "Pigment in a millilitre of paint",
    de: "Pigment in einem Milliliter Farbe",
    fr: "Pigment dans un millilitre de peinture",
    es: "Pigmento en un mililitro de pintura",
    found: {
      "mass of dry pigment / volume of all that is in it": {
        de: "Masse des trockenen Pigments / Volumen all dessen, was darin ist",
        fr: "masse de pigment sec / volume de tout ce qu’elle contient",
        es: "masa de pigmento seco / volumen de todo lo que contiene",
      },
      "density of the paint x share of dry pigment": {
        de: "Dichte der Farbe x Anteil des trockenen Pigments",
        fr: "masse volumique de la peinture x part de pigment sec",
        es: "densidad de la pintura x parte de pigmento seco",
      },
    },
  },
  finish: {
    en: "Finish",
    de: "Glanzgrad",
    fr: "Aspect",
    es: "Acabado",
    found: {
      "finish by gloss at 60 degrees": {
        de: "Glanzgrad nach Glanz bei 60°",
        fr: "aspect selon la brillance à 60°",
        es: "acabado según el brillo a 60°",
      },
      "finish expected of reduced PVC": {
        de: "Glanzgrad, wie nach der reduzierten PVK zu erwarten",
        fr: "aspect à prévoir d’après la CPV réduite",
        es: "acabado previsible según la PVC reducida",
      },
    },
    missing: {
      "its estimate reaches from gloss to matte": {
        de: "die Schätzung reicht von glänzend bis matt",
        fr: "l’estimation va du brillant au mat",
        es: "su estimación va de brillante a mate",
      },
    },
  },
  gloss60: {
    en: "Gloss at 60°",
    de: "Glanz bei 60°",
    fr: "Brillance à 60°",
    es: "Brillo a 60°",
    units: {
      GU: {
        en: "gloss units",
        de: "Glanzeinheiten",
        fr: "unités de brillance",
        es: "unidades de brillo",
      },
    },
  },
  finenessOfGrind: {
    en: "Fineness of grind",
    de: "Mahlfeinheit",
    fr: "Finesse de broyage",
    es: "Finura de molienda",
    gloss: {
      en: "depth on the gauge at which the coarsest grains begin to show (ISO 1524)",
      de: "Tiefe auf dem Grindometer, bei der sich die gröbsten Körner zu zeigen beginnen (ISO 1524)",
      fr: "profondeur de la jauge où les plus gros grains commencent à se voir (ISO 1524)",
      es: "profundidad de la galga en que empiezan a verse los granos más gruesos (ISO 1524)",
    },
  },
  oilVolumeFraction: {
    en: "Oil of the dry film, by volume",
    de: "Öl im trockenen Film, nach Volumen",
    fr: "Huile du film sec, en volume",
    es: "Aceite de la película seca, en volumen",
    found: {
      "1 - PVC": { de: "1 − PVK", fr: "1 - CPV", es: "1 - PVC" },
    },
  },
  oilBeforeFat: {
    en: "Oil it takes before it is fat",
    de: "Ölzugabe, bis die Farbe fett ist",
    fr: "Huile qu’elle admet avant d’être grasse",
    es: "Aceite antes de ser grasa",
    gloss: {
      en: "a limit, not a recipe: oil added, by volume of paint from the tube, until a thick stroke may wrinkle",
      de: "eine Grenze, keine empfohlene Zugabe: zugesetztes Öl, bezogen auf das Volumen der Farbe aus der Tube, von dem an ein dicker Auftrag runzelig auftrocknen kann",
      fr: "une limite et non une recette\u202f: huile ajoutée, en volume de peinture sortie du tube, jusqu’à ce qu’une touche épaisse puisse se rider",
      es: "un límite y no una receta: aceite añadido, por volumen de pintura del tubo, hasta que una pincelada gruesa pueda arrugarse",
    },
    found: {
      "oil added until {a} % of the dry film is oil / volume of the wet paint": {
        de: "zugesetztes Öl, bis {a}\u00a0% des trockenen Films Öl sind / Volumen der nassen Farbe",
        fr: "huile ajoutée jusqu’à ce que {a}\u00a0% du film sec soit de l’huile / volume de la peinture fraîche",
        es: "aceite añadido hasta que el {a}\u00a0% de la película seca sea aceite / volumen de la pintura fresca",
      },
    },
  },
  volumeSolids: {
    en: "Volume solids",
    de: "Festkörpervolumen",
    fr: "Extrait sec en volume",
    es: "Sólidos en volumen",
    gloss: {
      en: "the share of the wet paint that stays in the film",
      de: "der Anteil der nassen Farbe, der im Film bleibt",
      fr: "la part de la peinture fraîche qui reste dans le film",
      es: "la parte de la pintura fresca que queda en la película",
    },
    found: {
      "volume of all but thinner / volume of the wet paint": {
        de: "Volumen von allem außer Verdünner / Volumen der nassen Farbe",
        fr: "volume de tout sauf le diluant / volume de la peinture fraîche",
        es: "volumen de todo menos el diluyente / volumen de la pintura fresca",
      },
    },
  },
  body: { en: "Body", de: "Konsistenz", fr: "Consistance", es: "Consistencia" },
  oilSeparation: {
    en: "Oil separation",
    de: "Ölabscheidung",
    fr: "Séparation d’huile",
    es: "Separación de aceite",
  },
} satisfies FigureTexts;
