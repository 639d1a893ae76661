import type { DrierMetal } from "../drying/added-drier.ts";
import type { ContributionStatement } from "../drying/contribution.ts";
import type { Oil } from "../drying/oils.ts";
import type { Statement, ValuesOf, WordingsOf } from "../quantities/statement.ts";
import type { Language } from "../quantities/languages.ts";
import { byRule } from "./by-rule.ts";
import { METALS, OILS } from "./closed-sets.ts";
import { textsIn } from "./in-each.ts";
import { upperFirst } from "./letter-case.ts";
import { de, en, es, fr, phrasesIn } from "./phrases-in-each.ts";
import { withUnit, type printedFigures } from "./phrases.ts";
import { saidIn, type Texts } from "./texts.ts";

/** What a language calls that which moves the days to dry. */
export interface ContributionWords {
  readonly oils: Readonly<Record<Oil, string>>;
  readonly oilNotRecorded: string;
  readonly drier: (metal: DrierMetal, percentOnOil: number) => string;
  readonly wetFilm: string;
  readonly room: string;
  readonly listed: (texts: readonly string[]) => string;
  readonly figures: Pick<ReturnType<typeof printedFigures>, "micrometres" | "degrees">;
}

/** Metal on oil: "0.05 %". */
const onOil = (percent: number, { significant }: Pick<typeof en, "significant">): string =>
  withUnit(significant(percent, 2), "%");

const NAMES = {
  oilNotRecorded: {
    en: "Oil, not recorded",
    de: "Öl, nicht aufgezeichnet",
    fr: "Huile, non consignée",
    es: "Aceite, no registrado",
  },
  drier: (metal: DrierMetal, percentOnOil: number) => ({
    en: `${metal} drier, ${onOil(percentOnOil, en)} on oil`,
    de: `${METALS[metal].de}-Sikkativ, ${onOil(percentOnOil, de)} auf Öl`,
    fr: `Siccatif au ${METALS[metal].fr}, ${onOil(percentOnOil, fr)} sur l’huile`,
    es: `Secante de ${METALS[metal].es}, ${onOil(percentOnOil, es)} sobre el aceite`,
  }),
  wetFilm: { en: "Wet film", de: "Nassfilm", fr: "Film humide", es: "Película húmeda" },
  room: { en: "Room", de: "Raum", fr: "Pièce", es: "Sala" },
} satisfies Texts;

export function contributionWords(language: Language): ContributionWords {
  const { listed, micrometres, degrees } = phrasesIn(language);
  return {
    ...saidIn(language, NAMES),
    oils: textsIn<Language, string, Oil>(language, OILS),
    listed,
    figures: { micrometres, degrees },
  };
}

type Of<R extends ContributionStatement["rule"]> = ValuesOf<ContributionStatement, R>;

function namings(words: ContributionWords): WordingsOf<ContributionStatement> {
  const { micrometres, degrees } = words.figures;
  const oil = (v: Of<"linseed-sets-the-days" | "oil-slower-than-linseed">) => words.oils[v.oil];
  const pigment = (v: { readonly pigment: string }) => v.pigment;
  const drier = (v: Of<"added-drier">) => words.drier(v.metal, v.percentOnOil);
  const film = (v: { readonly filmThicknessUm: number }) =>
    `${words.wetFilm}, ${micrometres(v.filmThicknessUm)}`;
  const room = (v: { readonly temperatureC: number }) =>
    `${words.room}, ${degrees(v.temperatureC)}`;
  return {
    "linseed-sets-the-days": oil,
    "oil-slower-than-linseed": oil,
    "vehicle-not-stated": () => words.oilNotRecorded,
    "pigment-speeds-drying": pigment,
    "white-speeds-drying": pigment,
    "pigment-slows-drying": pigment,
    "white-slows-drying": pigment,
    "pigment-takes-no-part-in-drying": pigment,
    "white-takes-no-part-in-drying": pigment,
    "brown-earth-not-told": pigment,
    "pigment-parts-not-recorded": ({ pigments }) => words.listed(pigments),
    "added-drier": drier,
    "carbon-takes-up-drier": drier,
    "film-as-classed": film,
    "thick-film-slows": film,
    "thin-film-speeds": film,
    "temperature-as-classed": room,
    "cold-slows": room,
    "warmth-speeds": room,
  };
}

/**
 * What a contribution to drying is of, in a word or two; its sentence says the rest.
 * @throws RangeError for a sentence that is of no contribution.
 */
export function contributionName({ rule, values }: Statement, words: ContributionWords): string {
  const name = byRule<ContributionStatement>(namings(words))[rule];
  if (name === undefined)
    throw new RangeError(
      `The contribution to drying is ${rule}; right would be one of a pigment, oil, drier, film or room`,
    );
  return upperFirst(name(values));
}
