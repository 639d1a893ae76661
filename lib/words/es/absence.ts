import type { NotStated } from "../../quantities/figure.ts";
import { upperFirst } from "../letter-case.ts";

/** Why a figure is missing, as the sheets have it; a reason that is not here stands as it is. */
const REASONS: Readonly<Record<string, string>> = {
  "it was drawn down over black and white, but the thickness of that film is not recorded":
    "se extendió sobre negro y blanco, pero el espesor de esa película no consta",
  "its films tell nothing of hiding": "sus películas no dicen nada de cómo cubre",
  "no let-down in a white of the reference": "ningún rebaje en un blanco de la referencia",
  "the workshop names no colour to reckon strength against":
    "el taller no nombra ningún color de referencia para la fuerza",
  "not in the records": "no está en los registros",
  "no oil in the records": "no hay aceite en los registros",
  "no drawdown of known thickness over black and white":
    "no hay aplicación de espesor conocido sobre negro y blanco",
  "not exposed here": "no expuesto aquí",
  "not exposed here, and no category is stated":
    "no expuesto aquí, y no hay ninguna categoría declarada",
  "no trial to through dry": "ningún ensayo hasta seco en profundidad",
  "not needed: it was exposed, or is stated": "no hace falta: se expuso, o está declarado",
  "no blue wool reference is stated": "no hay declarado ningún grado de lana azul",
  "what a white or an extender does shows in a dark colour let down in it":
    "lo que hace un blanco o una carga se ve en un color oscuro rebajado con él",
  "no let-downs from which strength can be fitted":
    "no hay rebajes de los que pueda ajustarse la fuerza",
  "the parts of its pigments are not in the record":
    "las partes de sus pigmentos no están en el registro",
  "its let-downs tell how much it scatters beside its whites, and not how much a film of it does":
    "sus rebajes dicen cuánto dispersa junto a sus blancos, y no cuánto dispersa una película suya",
  "neither its films nor let-downs tell how much it scatters":
    "ni sus películas ni sus rebajes dicen cuánto dispersa",
  "its estimate reaches from gloss to matte": "su estimación va de brillante a mate",
  "how its pigment acts on drying oil is not known here":
    "aquí no se sabe qué hace su pigmento al aceite secante",
  "how much metal is in it is not recorded": "cuánto metal contiene no está registrado",
  "its paints were not weighed": "sus pinturas no se pesaron",
  "it was weighed as paint, and how much of each paint is pigment is not recorded":
    "se pesó como pintura, y cuánto de cada pintura es pigmento no está registrado",
  "not even 5 mm hides": "ni 5 mm cubren",
  "nothing is known of its pigments in light": "no se sabe nada de sus pigmentos a la luz",
  "the mixture itself was not let down in this white":
    "la mezcla misma no se rebajó en este blanco",
  "the white is recorded as a pigment, not as a paint":
    "el blanco está registrado como pigmento, no como pintura",
  "too dark for a class by contrast ratio, and how much it scatters is not told":
    "demasiado oscuro para una clase por relación de contraste, y no se sabe cuánto dispersa",
};

/** Reasons that name something. */
const NAMING: readonly (readonly [RegExp, (name: string) => string])[] = [
  [
    /^its strength does not compare with (.+)'s$/,
    (name) => `su fuerza no se compara con la de ${name}`,
  ],
  [/^no paint is made of (.+) alone$/, (name) => `ninguna pintura está hecha de ${name} solo`],
  [
    /^how (.+) stands? in light is not known, and a mixture is as good as its weakest$/,
    (name) =>
      `no se sabe cómo aguanta a la luz ${name}, y una mezcla vale lo que su pigmento más débil`,
  ],
];

/** Fields of the records, as the last part of a path. */
const FIELDS: Readonly<Record<string, string>> = {
  densityGPerCm3: "densidad",
  oilAbsorptionGPer100g: "absorción de aceite",
  oilIndexGPer100g: "índice de aceite",
  bulkDensityLooseGPerMl: "densidad aparente, sin compactar",
  bulkDensityTappedGPerMl: "densidad aparente, compactada",
  sizeUm: "tamaño de partícula",
  parts: "partes en masa",
  blueWool: "lana azul",
  lightfastness: "solidez a la luz",
  hazards: "datos de peligro",
  exposures: "exposiciones",
  films: "películas",
  tints: "rebajes",
  masstone: "tono pleno",
  dryingTrials: "ensayos de secado",
  oilSeparation: "separación de aceite",
  finenessOfGrindUm: "finura de molienda",
  gloss60: "brillo a 60\u00b0",
  body: "cuerpo",
  pigments: "pigmentos",
  vehicle: "aglutinante",
  dispersion: "molienda",
  formula: "fórmula",
  surface: "superficie",
  percentOfOil: "parte sobre el aceite",
  metalPercent: "parte de metal",
};

/** A reason and what would be needed, in a sentence. */
export function absence({ reason, wanting }: Pick<NotStated, "reason" | "wanting">): string {
  const why = upperFirst(reasonText(reason));
  return wanting.length === 0
    ? `${why}.`
    : `${why}; hace falta: ${wanting.map(fieldWords).join(", ")}.`;
}

function reasonText(reason: string): string {
  const known = REASONS[reason];
  if (known !== undefined) return known;
  for (const [form, wording] of NAMING) {
    const name = form.exec(reason)?.[1];
    if (name !== undefined) return wording(name);
  }
  const parts = reason.split("; ");
  return parts.length > 1 ? parts.map(reasonText).join("; ") : reason;
}

/** The last part of a record path as words: `pigments.lamp-black.densityGPerCm3` is "densidad (lamp black)". */
function fieldWords(path: string): string {
  const parts = path.split(".");
  const last = parts.at(-1) ?? path;
  const field = FIELDS[last] ?? last.replaceAll("-", " ");
  return parts.length > 2 && parts[0] === "pigments"
    ? `${field} (${(parts[1] ?? "").replaceAll("-", " ")})`
    : field;
}
