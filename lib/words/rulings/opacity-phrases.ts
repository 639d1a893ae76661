import { scatteringPowerLimit, type OpacityClass } from "../../optics/films/opacity.ts";
import { OPACITIES } from "../closed-sets.ts";
import type { InEach } from "../in-each.ts";
import { inEach } from "../phrases-in-each.ts";

export function limitOf(word: OpacityClass): InEach {
  const { from, below = 0 } = scatteringPowerLimit(word);
  return inEach((p, language) =>
    from === undefined
      ? `${BELOW[language]} ${p.significant(below, 2)}`
      : `${FROM[language]} ${p.significant(from, 2)}`,
  );
}

const BELOW: InEach = { en: "below", de: "unter", fr: "au-dessous de", es: "por debajo de" };
const FROM: InEach = { en: "from", de: "ab", fr: "à partir de", es: "desde" };

/** The classes that an estimate reaches into; undefined where it is one. */
export function reach(spans: readonly OpacityClass[]): InEach | undefined {
  const [first, last] = [spans[0], spans.at(-1)];
  if (spans.length < 2 || first === undefined || last === undefined) return undefined;
  return {
    en: `the range reaches from ${first} to ${last}`,
    de: `der Bereich reicht von ${OPACITIES[first].de} bis ${OPACITIES[last].de}`,
    fr: `l’intervalle va de ${OPACITIES[first].fr} à ${OPACITIES[last].fr}`,
    es: `el intervalo va de ${OPACITIES[first].es} a ${OPACITIES[last].es}`,
  };
}

export const OUR_LIMITS: InEach = {
  en: "The limits of these words are our own, not a standard’s.",
  de: "Die Grenzen dieser Wörter sind unsere eigenen, nicht die einer Norm.",
  fr: "Les limites de ces mots sont les nôtres, non celles d’une norme.",
  es: "Los límites de estas palabras son nuestros, no de una norma.",
};
