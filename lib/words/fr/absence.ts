import type { NotStated } from "../../quantities/figure.ts";
import { upperFirst } from "../letter-case.ts";
import { of } from "./phrases.ts";

/** Why a figure is missing, as the sheets have it; a reason that is not here stands as it is. */
const REASONS: Readonly<Record<string, string>> = {
  "it was drawn down over black and white, but the thickness of that film is not recorded":
    "appliqué sur noir et blanc, mais l’épaisseur de ce film n’est pas relevée",
  "its films tell nothing of hiding": "ses films ne disent rien du pouvoir couvrant",
  "no let-down in a white of the reference": "aucun dégradé dans un blanc de la référence",
  "the workshop names no colour to reckon strength against":
    "l’atelier ne nomme aucune couleur de référence pour la force",
  "not in the records": "pas dans les relevés",
  "no oil in the records": "aucune huile dans les relevés",
  "no drawdown of known thickness over black and white":
    "aucune application d’épaisseur connue sur noir et blanc",
  "not exposed here": "non exposé ici",
  "not exposed here, and no category is stated":
    "non exposé ici, et aucune catégorie n’est déclarée",
  "no trial to through dry": "aucun essai mené jusqu’au sec à cœur",
  "not needed: it was exposed, or is stated": "inutile\u202f: exposé, ou déclaré",
  "no blue wool reference is stated": "aucun degré de laine bleue n’est déclaré",
  "what a white or an extender does shows in a dark colour let down in it":
    "ce que fait un blanc ou une charge se voit à une couleur sombre dégradée avec",
  "no let-downs from which strength can be fitted":
    "aucun dégradé dont la force puisse être ajustée",
  "the parts of its pigments are not in the record":
    "les parts de ses pigments ne sont pas consignées",
  "its let-downs tell how much it scatters beside its whites, and not how much a film of it does":
    "ses dégradés disent combien elle diffuse par rapport à ses blancs, et non combien en diffuse un film",
  "neither its films nor let-downs tell how much it scatters":
    "ni ses films ni ses dégradés ne disent combien elle diffuse",
  "its estimate reaches from gloss to matte": "l’estimation va du brillant au mat",
  "how its pigment acts on drying oil is not known here":
    "ce que son pigment fait à l’huile siccative n’est pas connu ici",
  "how much metal is in it is not recorded": "la part de métal n’est pas consignée",
  "its paints were not weighed": "ses peintures n’ont pas été pesées",
  "it was weighed as paint, and how much of each paint is pigment is not recorded":
    "pesé en peinture, et la part de pigment de chaque peinture n’est pas consignée",
  "not even 5 mm hides": "même 5 mm ne couvrent pas",
  "nothing is known of its pigments in light": "rien n’est connu de ses pigments à la lumière",
  "the mixture itself was not let down in this white":
    "le mélange lui-même n’a pas été dégradé dans ce blanc",
  "the white is recorded as a pigment, not as a paint":
    "le blanc est consigné comme pigment, non comme peinture",
  "too dark for a class by contrast ratio, and how much it scatters is not told":
    "trop sombre pour une classe par rapport de contraste, et l’on ne sait combien elle diffuse",
};

/** Reasons that name something. */
const NAMING: readonly (readonly [RegExp, (name: string) => string])[] = [
  [
    /^its strength does not compare with (.+)'s$/,
    (name) => `sa force ne se compare pas à celle ${of(name)}`,
  ],
  [/^no paint is made of (.+) alone$/, (name) => `aucune peinture n’est faite ${of(name)} seul`],
  [
    /^how (.+) stands? in light is not known, and a mixture is as good as its weakest$/,
    (name) =>
      `la tenue ${of(name)} à la lumière n’est pas connue, et un mélange vaut son pigment le plus faible`,
  ],
];

/** Fields of the records, as the last part of a path. */
const FIELDS: Readonly<Record<string, string>> = {
  densityGPerCm3: "masse volumique",
  oilAbsorptionGPer100g: "prise d’huile",
  oilIndexGPer100g: "indice d’huile",
  bulkDensityLooseGPerMl: "masse volumique apparente, sans tassement",
  bulkDensityTappedGPerMl: "masse volumique apparente, après tassement",
  bulkDensityTappedGPerCm3: "masse volumique apparente, après tassement",
  sizeUm: "taille des particules",
  parts: "parts en masse",
  blueWool: "laine bleue",
  lightfastness: "solidité à la lumière",
  hazards: "données de danger",
  exposures: "expositions",
  films: "films",
  tints: "dégradés",
  masstone: "ton plein",
  dryingTrials: "essais de séchage",
  oilSeparation: "séparation d’huile",
  finenessOfGrindUm: "finesse de broyage",
  gloss60: "brillance à 60\u00b0",
  body: "corps",
  pigments: "pigments",
  vehicle: "liant",
  dispersion: "broyage",
  formula: "formule",
  surface: "surface",
  percentOfOil: "part sur l’huile",
  metalPercent: "part de métal",
};

/** A reason and what would be needed, in a sentence. */
export function absence({ reason, wanting }: Pick<NotStated, "reason" | "wanting">): string {
  const why = upperFirst(reasonText(reason));
  return wanting.length === 0
    ? `${why}.`
    : `${why}\u202f; il faut\u202f: ${wanting.map(fieldWords).join(", ")}.`;
}

function reasonText(reason: string): string {
  const known = REASONS[reason];
  if (known !== undefined) return known;
  for (const [form, wording] of NAMING) {
    const name = form.exec(reason)?.[1];
    if (name !== undefined) return wording(name);
  }
  const parts = reason.split("; ");
  return parts.length > 1 ? parts.map(reasonText).join("\u202f; ") : reason;
}

/** The last part of a record path as words: `pigments.lamp-black.densityGPerCm3` is "masse volumique (lamp black)". */
function fieldWords(path: string): string {
  const parts = path.split(".");
  const last = parts.at(-1) ?? path;
  const field = FIELDS[last] ?? last.replaceAll("-", " ");
  return parts.length > 2 && parts[0] === "pigments"
    ? `${field} (${(parts[1] ?? "").replaceAll("-", " ")})`
    : field;
}
