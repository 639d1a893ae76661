import type { Language } from "../quantities/languages.ts";
import { MISSING } from "./figures/all-figures.ts";
import { textsIn, type InEach, type InOthers } from "./in-each.ts";
import { upperFirst } from "./letter-case.ts";
import { fr, phrasesIn } from "./phrases-in-each.ts";
import { slottedTexts, type SlottedText } from "./slotted-text.ts";
import type { Words } from "./words.ts";

/**
 * Why a figure is missing, by the English of sheet.json: a letter in braces stands for a name.
 * Why one alone is missing stands with its name, in `figures/`.
 * `npx vitest run --project units test/words/methods.test.ts` names a reason without a row.
 */
export const REASONS: Readonly<Record<string, Readonly<Record<keyof InOthers, SlottedText>>>> = {
  ...MISSING,
  "not in the records": {
    de: "nicht in den Aufzeichnungen",
    fr: "pas dans les relevés",
    es: "no está en los registros",
  },
  "no oil in the records": {
    de: "kein Öl in den Aufzeichnungen",
    fr: "aucune huile dans les relevés",
    es: "no hay aceite en los registros",
  },
  "no oil is recorded of a paint that it was weighed from": {
    de: "von einer Farbe, aus der sie gewogen wurde, ist kein Öl aufgezeichnet",
    fr: "l’huile de l’une des peintures pesées pour la faire n’est pas consignée",
    es: "no está registrado el aceite de una de las pinturas con las que se pesó",
  },
  "no drawdown of known thickness over black and white": {
    de: "kein Aufstrich bekannter Dicke über Schwarz und Weiß",
    fr: "aucune application d’épaisseur connue sur noir et blanc",
    es: "no hay aplicación de espesor conocido sobre negro y blanco",
  },
  "it was drawn down over black and white, but the thickness of that film is not recorded": {
    de: "über Schwarz und Weiß aufgestrichen, doch die Dicke dieses Films ist nicht aufgezeichnet",
    fr: "elle a été appliquée sur noir et blanc, mais l’épaisseur de ce film n’est pas consignée",
    es: "se extendió sobre negro y blanco, pero el espesor de esa película no está registrado",
  },
  "its films were read without a spectrum, and what a film hides is worked out from one": {
    de: "die Filme wurden ohne Spektrum gemessen, und was ein Film deckt, wird aus einem errechnet",
    fr: "ses films ont été mesurés sans spectre, et ce qu’un film couvre se calcule à partir d’un spectre",
    es: "sus películas se midieron sin espectro, y lo que cubre una película se calcula a partir de uno",
  },
  "two-constant theory does not hold for its pigments": {
    de: "die Zwei-Konstanten-Theorie gilt nicht für die Pigmente darin",
    fr: "la théorie à deux constantes ne vaut pas pour ses pigments",
    es: "la teoría de dos constantes no vale para sus pigmentos",
  },
  "its films tell nothing of hiding": {
    de: "die Filme sagen nichts über das Deckvermögen",
    fr: "ses films ne disent rien du pouvoir couvrant",
    es: "sus películas no dicen nada de cómo cubre",
  },
  "the workshop names no colour to reckon strength against": {
    de: "die Werkstatt nennt keine Bezugsfarbe für die Farbstärke",
    fr: "l’atelier ne nomme aucune couleur de référence pour la force",
    es: "el taller no nombra ningún color de referencia para la fuerza",
  },
  "what a white or an extender does shows in a dark colour let down in it": {
    de: "was ein Weiß oder ein Füllstoff bewirkt, zeigt eine dunkle Farbe, die damit aufgehellt ist",
    fr: "l’effet d’un blanc ou d’une charge se voit sur une couleur sombre qu’on y coupe",
    es: "el efecto de un blanco o de una carga se ve en un color oscuro rebajado con ellos",
  },
  "no let-downs from which strength can be fitted": {
    de: "keine Aufhellungen, aus denen sich die Farbstärke anpassen ließe",
    fr: "aucun dégradé d’où déduire la force",
    es: "no hay rebajes de los que deducir la fuerza",
  },
  "no let-down in a white of the reference": {
    de: "keine Aufhellung in einem Weiß der Bezugsfarbe",
    fr: "la couleur de référence n’a de dégradé dans aucun blanc",
    es: "el color de referencia no tiene ningún rebaje en un blanco",
  },
  "its paints were not weighed": {
    de: "die Farben darin wurden nicht gewogen",
    fr: "ses peintures n’ont pas été pesées",
    es: "sus pinturas no se pesaron",
  },
  "how its pigment acts on drying oil is not known here": {
    de: "wie das Pigment auf trocknendes Öl wirkt, ist hier nicht bekannt",
    fr: "l’effet de son pigment sur l’huile siccative n’est pas connu ici",
    es: "aquí no se sabe qué efecto tiene su pigmento sobre el aceite secante",
  },
  "the white is recorded as a pigment, not as a paint": {
    de: "das Weiß ist als Pigment aufgezeichnet, nicht als Farbe",
    fr: "le blanc est consigné comme pigment, non comme peinture",
    es: "el blanco está registrado como pigmento, no como pintura",
  },
  "it was weighed as paint, and how much of each paint is pigment is not recorded": {
    de: "gewogen wurde Farbe, und wie viel Pigment in jeder ist, ist nicht aufgezeichnet",
    fr: "elle a été pesée en peintures, et la part de pigment de chacune n’est pas consignée",
    es: "se pesó como pintura, y no está registrado cuánto pigmento hay en cada una",
  },
  "the parts of its pigments are not in the record": {
    de: "die Teile der Pigmente sind nicht aufgezeichnet",
    fr: "les parts de ses pigments ne sont pas consignées",
    es: "las partes de sus pigmentos no están en el registro",
  },
  "its strength does not compare with {a}'s": {
    de: "die Farbstärke lässt sich nicht mit der von {a} vergleichen",
    fr: (name) => `sa force ne se compare pas à celle ${fr.of(name)}`,
    es: "su fuerza no se compara con la de {a}",
  },
  "{a}, which strength is reckoned against, has no let-downs from which it can be fitted": {
    de: "{a}, woran die Farbstärke gemessen wird, hat keine Aufhellungen, aus denen sie sich anpassen ließe",
    fr: "{a}, référence pour la force, n’a aucun dégradé d’où la déduire",
    es: "{a}, la referencia para la fuerza, no tiene rebajes de los que deducirla",
  },
  "no paint is made of {a} alone": {
    de: "als einziges Pigment kommt {a} in keiner Farbe vor",
    fr: "aucune peinture n’a {a} pour seul pigment",
    es: "ninguna pintura tiene {a} como único pigmento",
  },
};

/** Fields of the records, as a path ends. */
const FIELDS: Readonly<Record<string, InOthers>> = {
  densityGPerCm3: { de: "Dichte", fr: "masse volumique", es: "densidad" },
  densityGPerMl: { de: "Dichte", fr: "masse volumique", es: "densidad" },
  oilAbsorptionGPer100g: { de: "Ölzahl", fr: "prise d’huile", es: "absorción de aceite" },
  oilIndexGPer100g: { de: "Ölindex", fr: "indice d’huile", es: "índice de aceite" },
  bulkDensityLooseGPerMl: {
    de: "Schüttdichte, lose",
    fr: "masse volumique apparente, sans tassement",
    es: "densidad aparente, sin compactar",
  },
  bulkDensityTappedGPerMl: {
    de: "Stampfdichte",
    fr: "masse volumique apparente, après tassement",
    es: "densidad aparente, compactada",
  },
  sizeUm: { de: "Teilchengröße", fr: "taille des particules", es: "tamaño de partícula" },
  particleSizeUm: { de: "Teilchengröße", fr: "taille des particules", es: "tamaño de partícula" },
  finenessOfGrindUm: { de: "Mahlfeinheit", fr: "finesse de broyage", es: "finura de molienda" },
  gloss60: { de: "Glanz bei 60°", fr: "brillance à 60°", es: "brillo a 60°" },
  parts: { de: "Teile", fr: "parts en masse", es: "partes en masa" },
  tints: { de: "Aufhellungen", fr: "dégradés", es: "rebajes" },
  films: { de: "Filme", fr: "films", es: "películas" },
  masstone: { de: "Vollton", fr: "ton plein", es: "tono pleno" },
  dryingTrials: { de: "Trockenversuche", fr: "essais de séchage", es: "ensayos de secado" },
  touchDryDays: {
    de: "Tage bis grifftrocken",
    fr: "jours jusqu’au sec au toucher",
    es: "días hasta el secado al tacto",
  },
  throughDryDays: {
    de: "Tage bis durchgetrocknet",
    fr: "jours jusqu’au sec à cœur",
    es: "días hasta el secado en profundidad",
  },
  exposures: { de: "Belichtungen", fr: "expositions", es: "exposiciones" },
  lightfastness: { de: "Lichtechtheit", fr: "solidité à la lumière", es: "solidez a la luz" },
  blueWool: { de: "Blauwollskala", fr: "laine bleue", es: "lana azul" },
  colours: { de: "Farben", fr: "couleurs", es: "colores" },
  colourIndexName: {
    de: "Colour-Index-Name",
    fr: "nom du Colour Index",
    es: "nombre del Colour Index",
  },
  pigments: { de: "Pigmente", fr: "pigments", es: "pigmentos" },
  vehicle: { de: "Bindemittel", fr: "liant", es: "aglutinante" },
  formula: { de: "Formel", fr: "formule", es: "fórmula" },
  mineral: { de: "Mineral", fr: "minéral", es: "mineral" },
  year: { de: "Jahr", fr: "année", es: "año" },
  price: { de: "Preis", fr: "prix", es: "precio" },
  body: { de: "Konsistenz", fr: "consistance", es: "consistencia" },
  oilSeparation: { de: "Ölabscheidung", fr: "séparation d’huile", es: "separación de aceite" },
  dispersion: { de: "Anreiben", fr: "broyage", es: "molienda" },
  bulkDensityTappedGPerCm3: {
    de: "Stampfdichte",
    fr: "masse volumique apparente, après tassement",
    es: "densidad aparente, compactada",
  },
  hazards: { de: "Gefahrenangaben", fr: "données de danger", es: "datos de peligro" },
  surface: { de: "Oberfläche", fr: "surface", es: "superficie" },
  percentOfOil: {
    de: "Anteil am Öl",
    fr: "part rapportée à l’huile",
    es: "proporción sobre el aceite",
  },
  metalPercent: { de: "Metallgehalt", fr: "part de métal", es: "proporción de metal" },
};

/** Before what would be needed. */
const NEEDS: InEach = {
  en: "; needs ",
  de: "; es fehlt: ",
  fr: "\u202f; il faut\u202f: ",
  es: "; hace falta: ",
};

/** Why a figure is missing and what would be needed, in a sentence of a language. */
export function absenceIn(language: Language): Words["absence"] {
  const reasonText = language === "en" ? undefined : slottedTexts(textsIn(language, REASONS));
  const field = language === "en" ? englishField : fieldIn(language);
  return ({ reason, wanting }) => {
    const why = upperFirst(
      reason
        .split("; ")
        .map((part) => reasonText?.(part) ?? part)
        .join(phrasesIn(language).SEMICOLON),
    );
    return wanting.length === 0
      ? `${why}.`
      : `${why}${NEEDS[language]}${wanting.map(field).join(", ")}.`;
  };
}

/** The last part of a record path as words: `pigments.lamp-black.densityGPerCm3` is "Dichte (lamp black)". */
function fieldIn(language: keyof InOthers): (path: string) => string {
  return (path) => {
    const [last, owner] = fieldAndOwner(path);
    const field = FIELDS[last]?.[language] ?? last.replaceAll("-", " ");
    return owner === undefined ? field : `${field} (${owner})`;
  };
}

/** The same in English: "density of lamp black". */
function englishField(path: string): string {
  const [last, owner] = fieldAndOwner(path);
  const field = last
    .replace(/(GPer100g|GPerCm3|GPerMl|Um|Days|G60)$/, "")
    .replace(/[A-Z0-9]+/g, (capital) => ` ${capital.toLowerCase()}`)
    .trim();
  return owner === undefined ? field : `${field} of ${owner}`;
}

function fieldAndOwner(path: string): readonly [field: string, owner?: string] {
  const parts = path.split(".");
  const last = parts.at(-1) ?? path;
  return parts.length > 2 && parts[0] === "pigments"
    ? [last, (parts[1] ?? "").replaceAll("-", " ")]
    : [last];
}
