import type { ExpectedContradiction } from "../../permanence/expected-contradiction.ts";
import type { ExposureStatement, StatedContradiction } from "../../permanence/exposure.ts";
import type { SensitivityStatement } from "../../permanence/sensitivity.ts";
import type { Language } from "../../quantities/languages.ts";
import { EXPECTED, FORMS, THE_FORM } from "../closed-sets.ts";
import type { InEach } from "../in-each.ts";
import { inEach } from "../phrases-in-each.ts";
import type { Substance } from "../words.ts";

type Harmed = SensitivityStatement["values"];

/** Of one and of several. */
type OneOrSeveral = Readonly<Record<Language, readonly [one: string, several: string]>>;

/** What pigments do; where their circumstances do not stand behind it, as `…` where they do. */
const EFFECTS: Readonly<Record<Harmed["effect"], OneOrSeveral>> = {
  bleaches: {
    en: ["bleaches", "bleach"],
    de: ["bleicht … aus", "bleichen … aus"],
    fr: ["se décolore", "se décolorent"],
    es: ["se decolora", "se decoloran"],
  },
  darkens: {
    en: ["darkens", "darken"],
    de: ["dunkelt … nach", "dunkeln … nach"],
    fr: ["fonce", "foncent"],
    es: ["oscurece", "oscurecen"],
  },
  browns: {
    en: ["turns brown", "turn brown"],
    de: ["wird … braun", "werden … braun"],
    fr: ["brunit", "brunissent"],
    es: ["se vuelve pardo", "se vuelven pardos"],
  },
  reddens: {
    en: ["reddens", "redden"],
    de: ["wird … rot", "werden … rot"],
    fr: ["rougit", "rougissent"],
    es: ["enrojece", "enrojecen"],
  },
  whitens: {
    en: ["whitens", "whiten"],
    de: ["wird … weiß", "werden … weiß"],
    fr: ["blanchit", "blanchissent"],
    es: ["blanquea", "blanquean"],
  },
  "turns violet": {
    en: ["turns violet", "turn violet"],
    de: ["wird … violett", "werden … violett"],
    fr: ["vire au violet", "virent au violet"],
    es: ["vira al violeta", "viran al violeta"],
  },
  dissolves: {
    en: ["dissolves", "dissolve"],
    de: ["löst sich … auf", "lösen sich … auf"],
    fr: ["se dissout", "se dissolvent"],
    es: ["se disuelve", "se disuelven"],
  },
  "loses its ash": {
    en: ["loses its bone ash and keeps its carbon", "lose their bone ash and keep their carbon"],
    de: [
      "verliert … die Knochenasche und behält den Kohlenstoff",
      "verlieren … die Knochenasche und behalten den Kohlenstoff",
    ],
    fr: [
      "perd sa cendre d’os et garde son carbone",
      "perdent leur cendre d’os et gardent leur carbone",
    ],
    es: [
      "pierde su ceniza de hueso y conserva su carbono",
      "pierden su ceniza de hueso y conservan su carbono",
    ],
  },
  fades: {
    en: ["fades", "fade"],
    de: ["verblasst", "verblassen"],
    fr: ["passe", "passent"],
    es: ["se desvanece", "se desvanecen"],
  },
};

const IN_OIL: Readonly<Record<Harmed["inOil"], OneOrSeveral>> = {
  shielded: {
    en: ["oil shields it", "oil shields them"],
    de: ["Öl schützt davor", "Öl schützt davor"],
    fr: ["l’huile l’en protège", "l’huile les en protège"],
    es: ["el aceite lo protege", "el aceite los protege"],
  },
  "partly shielded": {
    en: ["oil shields it in part", "oil shields them in part"],
    de: ["Öl schützt zum Teil davor", "Öl schützt zum Teil davor"],
    fr: ["l’huile l’en protège en partie", "l’huile les en protège en partie"],
    es: ["el aceite lo protege en parte", "el aceite los protege en parte"],
  },
  "not shielded": {
    en: ["oil does not shield it", "oil does not shield them"],
    de: ["Öl schützt nicht davor", "Öl schützt nicht davor"],
    fr: ["l’huile ne l’en protège pas", "l’huile ne les en protège pas"],
    es: ["el aceite no lo protege", "el aceite no los protege"],
  },
};

/** The last category has no upper limit to name. */
export function limit(deltaEabMax: number | undefined): InEach {
  return inEach((p, language) =>
    deltaEabMax === undefined ? "" : ` (${UP_TO[language]} ${p.decimals(deltaEabMax, 0)})`,
  );
}

const UP_TO: InEach = { en: "up to", de: "bis", fr: "jusqu’à", es: "hasta" };

export function sources({ standards, exposures }: ExposureStatement["values"]): InEach {
  return inEach((p) => [...standards, p.listed(exposures)].join(", "));
}

export function contradicted(
  { form, exposed, meanDeltaEab }: StatedContradiction["values"] | ExpectedContradiction["values"],
  held: InEach,
  than: InEach,
): InEach {
  const subject = THE_FORM[form];
  const change = inEach((p) => p.deltaEabText(meanDeltaEab));
  return {
    en: `Exposed here, ${subject.en} held ${held.en} (as in category ${exposed}, ${change.en}) than ${than.en}; the exposure counts.`,
    de: `Hier belichtet hielt sich ${subject.de} ${held.de} (wie in Kategorie\u00a0${exposed}, ${change.de}) als ${than.de}; die Belichtung zählt.`,
    fr: `Exposé ici, ${subject.fr} a tenu ${held.fr} (comme en catégorie\u00a0${exposed}, ${change.fr}) que ${than.fr}\u202f; l’exposition fait foi.`,
    es: `Expuesto aquí, ${subject.es} aguantó ${held.es} (como en la categoría\u00a0${exposed}, ${change.es}) que ${than.es}; cuenta la exposición.`,
  };
}

export const BETTER: InEach = { en: "better", de: "besser", fr: "mieux", es: "mejor" };
export const LESS_WELL: InEach = {
  en: "less well",
  de: "schlechter",
  fr: "moins bien",
  es: "peor",
};

/** What an exposure is held against. */
export function categoryStated({ stated }: StatedContradiction["values"]): InEach {
  return {
    en: `the category ${stated} that is stated`,
    de: `die angegebene Kategorie\u00a0${stated}`,
    fr: `la catégorie\u00a0${stated} déclarée`,
    es: `la categoría\u00a0${stated} declarada`,
  };
}

/** The same where nobody stated a category. */
export function ledToExpect({ expectation }: ExpectedContradiction["values"]): InEach {
  return {
    en: `its pigments lead us to expect (${expectation})`,
    de: `nach den Pigmenten zu erwarten (${EXPECTED[expectation].de})`,
    fr: `ce que ses pigments font prévoir (${EXPECTED[expectation].fr})`,
    es: `lo que hacen prever sus pigmentos (${EXPECTED[expectation].es})`,
  };
}

/** What the pigment stands among in the list, unless that is its own name. */
export function kindsBeside(kinds: string, pigment: string, substance: Substance): Partial<InEach> {
  return kinds.toLowerCase() === pigment.toLowerCase()
    ? {}
    : {
        en: kinds,
        de: `Gruppe: ${substance(kinds, "de")}`,
        fr: `groupe\u202f: ${substance(kinds, "fr")}`,
        es: `grupo: ${substance(kinds, "es")}`,
      };
}

/** Of the components of a mixture: the one whose loss is the likeliest. @param ground of the estimate. */
export function leastLightfast(pigments: readonly string[], ground: Partial<InEach>): InEach {
  const names = inEach((p) => p.namesWithin(pigments));
  const by = inEach((p, language) => p.bracketed(ground[language]));
  return pigments.length > 1
    ? {
        en: `${names.en} are the least lightfast as far as is known${by.en}: the ones to watch.`,
        de: `${names.de} sind am wenigsten lichtecht, soweit bekannt${by.de}; darauf ist zu achten.`,
        fr: `Les moins solides à la lumière, pour autant qu’on sache${by.fr}\u202f: ${names.fr}\u202f; ce sont eux qu’il faut surveiller.`,
        es: `Los menos sólidos a la luz, hasta donde se sabe${by.es}: ${names.es}; son los que hay que vigilar.`,
      }
    : {
        en: `${names.en} is the least lightfast as far as is known${by.en}: the one to watch.`,
        de: `${names.de} ist am wenigsten lichtecht, soweit bekannt${by.de}; darauf ist zu achten.`,
        fr: `Le moins solide à la lumière, pour autant qu’on sache${by.fr}\u202f: ${names.fr}\u202f; c’est lui qu’il faut surveiller.`,
        es: `El menos sólido a la luz, hasta donde se sabe${by.es}: ${names.es}; es el que hay que vigilar.`,
      };
}

/** What pigments do under some circumstances. */
export function does(
  { pigments, effect }: Pick<Harmed, "pigments" | "effect">,
  where: InEach,
): InEach {
  return inEach((p, language) => {
    const verb = EFFECTS[effect][language][pigments.length < 2 ? 0 : 1];
    const done = /…/.test(verb) ? verb : `${verb} …`;
    return `${p.namesWithin(pigments)} ${done.replace("…", where[language])}`;
  });
}

export function harm({ inOil, ...harmed }: Harmed, where: InEach): InEach {
  const shield = IN_OIL[inOil];
  return inEach((p, language) =>
    p.sentence(
      `${does(harmed, where)[language]}${p.SEMICOLON}${shield[language][harmed.pigments.length < 2 ? 0 : 1]}`,
    ),
  );
}

/** A form of the paint, or several, as what they are said of. */
export function formsListed(...forms: readonly (keyof typeof FORMS | undefined)[]): InEach {
  const told = forms.filter((form) => form !== undefined);
  return inEach((p, language) =>
    p.listed(told.map((form) => (language === "en" ? form : FORMS[form][language]))),
  );
}

export function unknownInLight(pigments: readonly string[]): InEach {
  const several = pigments.length > 1;
  const names = inEach((p) => p.namesWithin(pigments));
  return {
    en: `We do not know how ${names.en} ${several ? "stand" : "stands"} up to light`,
    de: `Wie lichtecht ${names.de} ${several ? "sind" : "ist"}, wissen wir nicht`,
    fr: `Nous ne savons pas comment ${names.fr} ${several ? "tiennent" : "tient"} à la lumière`,
    es: `No sabemos cómo ${several ? "aguantan" : "aguanta"} ${names.es} a la luz`,
  };
}
