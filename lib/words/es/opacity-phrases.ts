import { scatteringPowerLimit, type OpacityClass } from "../../optics/films/opacity.ts";
import { OPACITIES } from "../closed-sets.ts";
import { significant } from "./phrases.ts";

export const OWN_LIMITS = "Los límites de estas palabras son nuestros, no de una norma.";

export function limitOf(word: OpacityClass): string {
  const { from, below = 0 } = scatteringPowerLimit(word);
  return from === undefined
    ? `por debajo de ${significant(below, 2)}`
    : `desde ${significant(from, 2)}`;
}

export function reach(spans: readonly OpacityClass[]): string | undefined {
  const [first] = spans;
  const last = spans.at(-1);
  return spans.length < 2 || first === undefined || last === undefined
    ? undefined
    : `el intervalo va de ${OPACITIES[first].es} a ${OPACITIES[last].es}`;
}
