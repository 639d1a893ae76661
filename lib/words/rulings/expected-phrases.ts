import { de, en, es, fr } from "../phrases-in-each.ts";
import type { InEach } from "../in-each.ts";
import { within } from "../phrases.ts";

/** By name as long as a reader takes them in. */
const NAMED_MAX = 3;

/** Those that do so in both whites; in German after "was". */
export function named(colours: readonly string[]): InEach {
  const [first] = colours;
  if (colours.length > NAMED_MAX)
    return {
      en: `${colours.length} other colours do`,
      de: `${colours.length} anderen Farben`,
      fr: `font ${colours.length} autres couleurs`,
      es: `hacen otros ${colours.length} colores`,
    };
  return colours.length === 1 && first !== undefined
    ? {
        en: `${within(first)} does`,
        de: within(first),
        fr: `fait ${within(first)}`,
        es: `hace ${within(first)}`,
      }
    : {
        en: `${en.namesWithin(colours)} do`,
        de: de.namesWithin(colours),
        fr: `font ${fr.namesWithin(colours)}`,
        es: `hacen ${es.namesWithin(colours)}`,
      };
}
