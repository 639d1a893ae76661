import { scatteringPowerLimit, type OpacityClass } from "../../optics/films/opacity.ts";
import { OPACITIES } from "../closed-sets.ts";
import { significant } from "./phrases.ts";

export const OWN_LIMITS = "Les limites de ces mots sont les nôtres, non celles d’une norme.";

export function limitOf(word: OpacityClass): string {
  const { from, below = 0 } = scatteringPowerLimit(word);
  return from === undefined
    ? `au-dessous de ${significant(below, 2)}`
    : `à partir de ${significant(from, 2)}`;
}

export function reach(spans: readonly OpacityClass[]): string | undefined {
  const [first] = spans;
  const last = spans.at(-1);
  return spans.length < 2 || first === undefined || last === undefined
    ? undefined
    : `l’intervalle va de ${OPACITIES[first].fr} à ${OPACITIES[last].fr}`;
}
