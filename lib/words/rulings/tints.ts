/** What a colour does in a white, and how sentences of whites are joined. */
import type { HueWord } from "../../optics/tints/hue-word.ts";
import type { JudgedTintStatement } from "../../optics/tints/tint-statement.ts";
import type { Language } from "../../quantities/languages.ts";
import { HUES, TOWARD } from "../closed-sets.ts";
import type { InEach } from "../in-each.ts";
import { de, phrasesIn } from "../phrases-in-each.ts";
import { alike, saidIn, type Texts } from "../texts.ts";
import type { JudgedColour, TintWords } from "../tint-words.ts";
import { wordingsIn, type RulingsInEach } from "./rulings-in-each.ts";
import { NOT_TRIED } from "../shared-rows.ts";

type TintRulings = RulingsInEach<JudgedTintStatement>;

/** What a colour does in a white, without saying which. */
const PHRASES: TintRulings = {
  "stays-near-neutral": {
    en: "stays near neutral",
    de: "bleibt nahezu neutral",
    fr: "reste près du neutre",
    es: "se queda cerca del neutro",
  },
  leans: (v) => ({
    en: `leans ${v.hue}`,
    de: `neigt zu ${TOWARD[v.hue].de}`,
    fr: `tire ${TOWARD[v.hue].fr}`,
    es: `tira ${TOWARD[v.hue].es}`,
  }),
  "turns-clearly": (v) => ({
    en: `turns clearly ${v.hue}`,
    de: `wird deutlich ${HUES[v.hue].de}`,
    fr: `vire nettement ${TOWARD[v.hue].fr}`,
    es: `vira claramente ${TOWARD[v.hue].es}`,
  }),
  "turns-strongly": (v) => ({
    en: `turns strongly ${v.hue}`,
    de: `wird stark ${HUES[v.hue].de}`,
    fr: `vire fortement ${TOWARD[v.hue].fr}`,
    es: `vira con fuerza ${TOWARD[v.hue].es}`,
  }),
  "gains-chroma": (v) => ({
    en:
      v.turn === "no-hue-to-compare"
        ? `gains chroma and comes out ${v.hue}`
        : `gains chroma${turn(v).en}`,
    de:
      v.turn === "no-hue-to-compare"
        ? `gewinnt Chroma und wird ${HUES[v.hue].de}`
        : `gewinnt Chroma${turn(v).de}`,
    fr:
      v.turn === "no-hue-to-compare"
        ? `gagne en chroma et vire ${TOWARD[v.hue].fr}`
        : `gagne en chroma${turn(v).fr}`,
    es:
      v.turn === "no-hue-to-compare"
        ? `gana croma y vira ${TOWARD[v.hue].es}`
        : `gana croma${turn(v).es}`,
  }),
  "keeps-chroma": (v) => ({
    en: v.turn === "keeps-hue" ? "keeps chroma and hue" : `keeps its chroma${turn(v).en}`,
    de: v.turn === "keeps-hue" ? "behält Chroma und Buntton" : `behält ihr Chroma${turn(v).de}`,
    fr: v.turn === "keeps-hue" ? "garde chroma et teinte" : `garde son chroma${turn(v).fr}`,
    es: v.turn === "keeps-hue" ? "conserva croma y matiz" : `conserva su croma${turn(v).es}`,
  }),
  "loses-chroma": (v) => ({
    en: `loses chroma${turn(v).en}`,
    de: `verliert Chroma${turn(v).de}`,
    fr: `perd en chroma${turn(v).fr}`,
    es: `pierde croma${turn(v).es}`,
  }),
};

function turn({ turn: kind, toward }: JudgedColour): InEach {
  if (kind === "no-hue-to-compare") return alike("");
  return kind === "keeps-hue"
    ? {
        en: " and keeps its hue",
        de: " und behält den Buntton",
        fr: " et garde sa teinte",
        es: " y conserva su matiz",
      }
    : {
        en: ` and turns towards${toward === undefined ? "" : ` ${toward}`}`,
        de: ` und verschiebt sich${toward === undefined ? "" : ` nach ${TOWARD[toward].de}`}`,
        fr: ` et vire${toward === undefined ? "" : ` ${TOWARD[toward].fr}`}`,
        es: ` y vira${toward === undefined ? "" : ` ${TOWARD[toward].es}`}`,
      };
}

/** The same in words alone. */
const IN_WORDS: TintRulings = {
  "stays-near-neutral": {
    en: "neutral",
    de: "neutral",
    fr: "neutre",
    es: "neutro",
  },
  leans: (v) => ({
    en: `slightly ${v.hue}`,
    de: `etwas ${HUES[v.hue].de}`,
    fr: `légèrement ${HUES[v.hue].fr}`,
    es: `ligeramente ${HUES[v.hue].es}`,
  }),
  "turns-clearly": (v) => ({
    en: `clearly ${v.hue}`,
    de: `deutlich ${HUES[v.hue].de}`,
    fr: `nettement ${HUES[v.hue].fr}`,
    es: `claramente ${HUES[v.hue].es}`,
  }),
  "turns-strongly": (v) => ({
    en: `strongly ${v.hue}`,
    de: `stark ${HUES[v.hue].de}`,
    fr: `fortement ${HUES[v.hue].fr}`,
    es: `fuertemente ${HUES[v.hue].es}`,
  }),
  "gains-chroma": (v) => ({
    en:
      v.turn === "no-hue-to-compare"
        ? `strongly ${v.hue}`
        : v.toward === undefined
          ? `a brighter ${v.hue}`
          : `brighter${turned(v).en}`,
    de:
      v.turn === "no-hue-to-compare"
        ? `stark ${HUES[v.hue].de}`
        : v.toward === undefined
          ? `leuchtender ${HUES[v.hue].de}`
          : `leuchtender${turned(v).de}`,
    fr:
      v.turn === "no-hue-to-compare"
        ? `fortement ${HUES[v.hue].fr}`
        : v.toward === undefined
          ? `d’un ${HUES[v.hue].fr} plus vif`
          : `plus vif${turned(v).fr}`,
    es:
      v.turn === "no-hue-to-compare"
        ? `fuertemente ${HUES[v.hue].es}`
        : v.toward === undefined
          ? `de un ${HUES[v.hue].es} más vivo`
          : `más vivo${turned(v).es}`,
  }),
  "keeps-chroma": (v) => ({
    en:
      v.toward !== undefined
        ? TURNED[v.toward]
        : v.turn === "keeps-hue"
          ? "true to its colour"
          : "as bright",
    de:
      v.turn === "keeps-hue"
        ? "farbtreu"
        : v.toward === undefined
          ? "ebenso leuchtend"
          : `nach ${TOWARD[v.toward].de} verschoben`,
    fr:
      v.turn === "keeps-hue"
        ? "fidèle à sa couleur"
        : v.toward === undefined
          ? "aussi vif"
          : `tirant ${TOWARD[v.toward].fr}`,
    es:
      v.turn === "keeps-hue"
        ? "fiel a su color"
        : v.toward === undefined
          ? "igual de vivo"
          : `tirando ${TOWARD[v.toward].es}`,
  }),
  "loses-chroma": (v) => ({
    en: `duller${turned(v).en}`,
    de: `stumpfer${turned(v).de}`,
    fr: `plus terne${turned(v).fr}`,
    es: `más apagado${turned(v).es}`,
  }),
};

/** Of a hue that turned: "bluer". */
const TURNED: Readonly<Record<HueWord, string>> = {
  red: "redder",
  brown: "browner",
  yellow: "yellower",
  olive: "more olive",
  green: "greener",
  "blue-green": "more blue-green",
  blue: "bluer",
  violet: "more violet",
  purple: "more purple",
};

function turned({ toward }: { readonly toward?: HueWord }): InEach {
  return toward === undefined
    ? alike("")
    : {
        en: ` and ${TURNED[toward]}`,
        de: ` und nach ${TOWARD[toward].de} verschoben`,
        fr: ` et tirant ${TOWARD[toward].fr}`,
        es: ` y tirando ${TOWARD[toward].es}`,
      };
}

/** Of a grey its hue says it all; of a colour what the first screen of its sheet says. */
const ON_CARDS: TintRulings = {
  ...IN_WORDS,
  leans: PHRASES.leans,
  "stays-near-neutral": {
    en: "near neutral",
    de: "nahezu neutral",
    fr: "presque neutre",
    es: "casi neutro",
  },
};

const JOINING = {
  bases: {
    measured: alike(""),
    predicted: { en: "predicted", de: "vorhergesagt", fr: "prévu", es: "previsto" },
    interpolated: {
      en: "between two let-downs",
      de: "zwischen zwei Aufhellungen",
      fr: "entre deux dégradés",
      es: "entre dos rebajes",
    },
  },
  in: { en: "in", de: "in", fr: "dans", es: "en" },
  at: { en: "at", de: "bei", fr: "à", es: "a" },
  to: { en: "to", de: "auf", fr: "à", es: "a" },
  notTried: NOT_TRIED,
  othersBelow: {
    en: "other whites below",
    de: "weitere Weiß unten",
    fr: "autres blancs plus bas",
    es: "otros blancos más abajo",
  },
  lengthMax: { en: 180, de: 180, fr: 200, es: 200 },
  shortWhite: (name: string) => ({
    en: name.replace(/^(\S+) white$/i, "$1"),
    de: de.withoutWhite(name),
    fr: name,
    es: name,
  }),
} satisfies Texts;

/** What a language brings to its sentences on tints. */
export function tintWords(language: Language): TintWords {
  const { listed, decimals, SEMICOLON } = phrasesIn(language);
  return {
    ...saidIn(language, JOINING),
    semicolon: SEMICOLON,
    phrases: wordingsIn<JudgedTintStatement>(language, PHRASES),
    inWords: wordingsIn<JudgedTintStatement>(language, IN_WORDS),
    onCards: wordingsIn<JudgedTintStatement>(language, ON_CARDS),
    listed,
    decimals,
  };
}
