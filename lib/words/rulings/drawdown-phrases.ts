import type { InEach } from "../in-each.ts";
import { de, en, es, fr, inEach } from "../phrases-in-each.ts";
import { within } from "../phrases.ts";

type NamedTint = { readonly tint: string; readonly white: string };

/** "titanium-white 1:20" as "The let-down 1:20 in titanium white". */
export function letDown({ tint, white }: NamedTint): InEach {
  return tint.startsWith(`${white} `)
    ? inEach(
        (_, language) =>
          `${THE_LET_DOWN[language]} ${tint.slice(white.length + 1)} ${IN[language]} ${within(white)}`,
      )
    : inEach((_, language) => `${THE_LET_DOWN[language]} ${tint}`);
}

const THE_LET_DOWN: InEach = {
  en: "The let-down",
  de: "Die Aufhellung",
  fr: "Le dégradé",
  es: "El rebaje",
};
const IN: InEach = { en: "in", de: "in", fr: "dans", es: "en" };

/** A drawdown by its name; in German after "die Messung": whose it is. */
export function drawdown(name: string): InEach {
  const [, white, ratio] = /^(\S+) (\S+)$/.exec(name) ?? [];
  if (white !== undefined && ratio !== undefined)
    return {
      en: `the let-down ${ratio} in ${within(white)}`,
      de: `der Aufhellung ${ratio} in ${within(white)}`,
      fr: `le dégradé ${ratio} dans ${within(white)}`,
      es: `el rebaje ${ratio} en ${within(white)}`,
    };
  return name === "masstone"
    ? { en: "the masstone", de: "des Volltons", fr: "le ton plein", es: "el tono pleno" }
    : {
        en: `the ${within(name)}`,
        de: `von ${within(name)}`,
        fr: `l’application ${within(name)}`,
        es: `la aplicación ${within(name)}`,
      };
}

export function wavelengths(count: number): InEach {
  return {
    en: `${count} wavelength${count === 1 ? "" : "s"}`,
    de: `${count} Wellenlänge${count === 1 ? "" : "n"}`,
    fr: `${count} longueur${count === 1 ? "" : "s"} d’onde`,
    es: `${count} ${count === 1 ? "longitud" : "longitudes"} de onda`,
  };
}

export function luminances(one: number, other: number): InEach {
  return {
    en: `Y ${en.percent(one)} against ${en.significant(other * 100, 2)}`,
    de: `Y ${de.percent(one)} gegen ${de.significant(other * 100, 2)}`,
    fr: `Y ${fr.percent(one)} contre ${fr.significant(other * 100, 2)}`,
    es: `Y ${es.percent(one)} frente a ${es.significant(other * 100, 2)}`,
  };
}
