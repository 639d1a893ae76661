/** What several pages say alike: reworded here, it is so on each of them. */

export const PAINT_BY_MASS = {
  en: "Paint, by mass",
  de: "Farbe, nach Masse",
  fr: "Peinture, en masse",
  es: "Pintura, en masa",
};

export const WHITE_TUBE_TO_TUBE = {
  en: "White to L* 50, tube to tube",
  de: "Weiß bis L* 50, Tube zu Tube",
  fr: "Blanc jusqu’à L* 50, tube pour tube",
  es: "Blanco hasta L* 50, tubo a tubo",
};

export const LET_DOWN_AT_EQUAL_STRENGTH = {
  en: "Let-down at equal strength",
  de: "Aufhellung bei gleicher Stärke",
  fr: "Dégradé à force égale",
  es: "Rebaje a igual fuerza",
};

export const FINENESS = {
  en: "Fineness of grind",
  de: "Mahlfeinheit",
  fr: "Finesse de broyage",
  es: "Finura de molienda",
};

export const SIGNAL_WORD = {
  en: "Signal word",
  de: "Signalwort",
  fr: "Mention d’avertissement",
  es: "Palabra de advertencia",
};

export const COLOUR_INDEX_NAME = {
  en: "Colour Index name",
  de: "Colour-Index-Name",
  fr: "Nom du Colour Index",
  es: "Nombre del Colour Index",
};

export const withinWhite = (white: string) => ({
  en: `in ${white}`,
  de: `in ${white}`,
  fr: `dans ${white}`,
  es: `en ${white}`,
});

export const SIDE_BY_SIDE = {
  en: "Colours side by side",
  de: "Farben nebeneinander",
  fr: "Couleurs côte à côte",
  es: "Colores lado a lado",
};

export const REPLY_TO_SEND = {
  en: "A reply to send",
  de: "Eine Antwort zum Verschicken",
  fr: "Une réponse à envoyer",
  es: "Una respuesta para enviar",
};

export const LIGHTFASTNESS = {
  en: "Lightfastness",
  de: "Lichtechtheit",
  fr: "Solidité à la lumière",
  es: "Solidez a la luz",
};

export const twoCoordinates = (a: string, b: string) => ({
  en: `${a}, ${b}`,
  de: `${a}; ${b}`,
  fr: `${a}\u202f; ${b}`,
  es: `${a}; ${b}`,
});

export const WAVELENGTH = {
  en: "Wavelength, nm",
  de: "Wellenlänge, nm",
  fr: "Longueur d’onde, nm",
  es: "Longitud de onda, nm",
};

export const NOT_READ_YET = {
  en: "not read yet",
  de: "noch nicht gemessen",
  fr: "pas encore mesuré",
  es: "aún no medido",
};

export const PRECAUTIONS = {
  en: "Precautions",
  de: "Sicherheitshinweise",
  fr: "Conseils de prudence",
  es: "Consejos de prudencia",
};

export const SIZES_AND_PRICES = {
  en: "Sizes and prices",
  de: "Größen und Preise",
  fr: "Contenances et prix",
  es: "Tamaños y precios",
};

export const NOT_KNOWN_YET = {
  en: "Not known yet",
  de: "Noch nicht bekannt",
  fr: "Pas encore connu",
  es: "Aún no se sabe",
};

export const discontinuedFrom = (date: string) => ({
  en: `Discontinued from ${date}.`,
  de: `Wird ab dem ${date} nicht mehr hergestellt.`,
  fr: `Fabrication arrêtée au ${date}.`,
  es: `Se deja de fabricar el ${date}.`,
});

export const HOW_WE_KNOW = {
  en: "How we know",
  de: "Woher wir es wissen",
  fr: "Comment nous le savons",
  es: "Cómo lo sabemos",
};

export const LABEL_TEXT = {
  en: "Label text",
  de: "Etikettentext",
  fr: "Texte d’étiquette",
  es: "Texto de la etiqueta",
};

export const OIL_AND_FINISH = {
  en: "Oil and finish",
  de: "Öl und Glanzgrad",
  fr: "Huile et aspect",
  es: "Aceite y acabado",
};

export const WHAT_IT_WOULD_TAKE = {
  en: "Not known yet, and what it would take",
  de: "Noch nicht bekannt und was dazu nötig wäre",
  fr: "Pas encore connu, et ce qu’il faudrait pour le savoir",
  es: "Aún no se sabe, y qué haría falta para saberlo",
};

export const TREAT_AS_HAZARDOUS = {
  en: "Treat as hazardous",
  de: "Als gefährlich behandeln",
  fr: "À traiter comme dangereux",
  es: "Tratar como peligroso",
};

export const dryPigment = (name: string) => ({
  en: `${name}, dry`,
  de: `${name}, trocken`,
  fr: `${name}, sec`,
  es: `${name}, seco`,
});

export const lotNumber = (number: string) => ({
  en: `Lot ${number}`,
  de: `Charge ${number}`,
  fr: `Lot ${number}`,
  es: `Lote ${number}`,
});

export const AMOUNT_ABOVE_NOUGHT = {
  en: "Give an amount above 0.",
  de: "Geben Sie eine Menge über 0 an.",
  fr: "Donner une quantité supérieure à 0.",
  es: "Dé una cantidad mayor que 0.",
};

export const FIND_RECIPE = {
  en: "Find a recipe",
  de: "Rezept finden",
  fr: "Trouver une recette",
  es: "Buscar una receta",
};

export const MAP_OF_RANGE = {
  en: "Map of the range",
  de: "Karte des Sortiments",
  fr: "Carte de la gamme",
  es: "Mapa de la gama",
};

export const inWhite = (white: string) => ({
  en: `In ${white}`,
  de: `In ${white}`,
  fr: `Dans ${white}`,
  es: `En ${white}`,
});

export const partsInOneLine = (parts: readonly string[]) => ({
  en: `${parts.join("; ")}.`,
  de: `${parts.join("; ")}.`,
  fr: `${parts.join("\u202f; ")}.`,
  es: `${parts.join("; ")}.`,
});

export const IN_WHICH_WHITE = {
  en: "In which white",
  de: "In welchem Weiß",
  fr: "Dans quel blanc",
  es: "En qué blanco",
};

export const shareAtLightness = (share: string, L: number) => ({
  en: `${share} at L* ${L}`,
  de: `${share} bei L* ${L}`,
  fr: `${share} à L* ${L}`,
  es: `${share} a L* ${L}`,
});

export const TOUCH_DRY = {
  en: "Dries to the touch",
  de: "Grifftrocken",
  fr: "Sèche au toucher",
  es: "Seca al tacto",
};

export const NOT_TRIED = {
  en: "Not yet tried in white.",
  de: "Noch in keinem Weiß erprobt.",
  fr: "Pas encore essayée dans un blanc.",
  es: "Aún no probado en un blanco.",
};

export const WEIGHING_AND_MULLING = {
  en: "Weighing and mulling",
  de: "Abwiegen und Anreiben",
  fr: "Pesée et broyage à la molette",
  es: "Pesar y moler con moleta",
};
