import { scatteringPowerLimit, type OpacityClass } from "../../optics/films/opacity.ts";
import { OPACITIES } from "../closed-sets.ts";
import { significant } from "./phrases.ts";

export const OUR_LIMITS = "Die Grenzen dieser Wörter sind unsere eigenen, nicht die einer Norm.";

export function limitOf(word: OpacityClass): string {
  const { from, below = 0 } = scatteringPowerLimit(word);
  return from === undefined ? `unter ${significant(below, 2)}` : `ab ${significant(from, 2)}`;
}

export function reach(spans: readonly OpacityClass[]): string | undefined {
  const [first, last] = [spans[0], spans.at(-1)];
  return spans.length < 2 || first === undefined || last === undefined
    ? undefined
    : `der Bereich reicht von ${OPACITIES[first].de} bis ${OPACITIES[last].de}`;
}
