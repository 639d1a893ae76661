import type { AcuteRoute } from "../../hazard/texts/hazard-statement.ts";
import type { LabelStatement } from "../../hazard/statements.ts";
import type { MetalAdvice } from "../../hazard/texts/contents-line.ts";
import type { ValuesOf, WordingsOf } from "../../quantities/statement.ts";
import { inGerman, SIGNAL_WORDS } from "./closed-sets.ts";
import {
  bracketed,
  dateWords,
  degrees,
  listed,
  millilitres,
  namesWithin,
  percent,
  sentence,
  significant,
  within,
  withUnit,
} from "./phrases.ts";
import { MARKET_WORDINGS } from "./statements-markets.ts";
import { metalWord, STUDIO_WORDINGS } from "./statements-studio.ts";

const ROUTES: Readonly<Record<AcuteRoute, string>> = {
  oral: "bei Verschlucken",
  dermal: "bei Hautkontakt",
  dust: "beim Einatmen als Staub",
  vapour: "beim Einatmen als Dampf",
};
const LIMIT_KINDS = {
  generic: "allgemeiner Grenzwert",
  specific: "eigener Grenzwert des Stoffes",
} as const;

/** Stands among ingredients for a share that nobody accounts for. */
const UNACCOUNTED = "(unaccounted)";

type Of<R extends LabelStatement["rule"]> = ValuesOf<LabelStatement, R>;

/** Why each statement stands on a label or was left out, what is not known, and where the maker's label and the reckoning part. */
const LABEL_WORDINGS: WordingsOf<LabelStatement> = {
  "ate-mix": ({ hazardClass, route, ingredients, ateMix, limit, unit, unknownFraction }) =>
    `${hazardClass}, ${ROUTES[route]} (${named(ingredients)}): der Schätzwert für das Gemisch ist ${withUnit(significant(ateMix, 3), unit)}, ${limit === undefined ? "ein Grenzwert ist dafür nicht angegeben" : `der Grenzwert ${withUnit(significant(limit, 3), unit)}`}${unknownFraction > 0 ? `; ${percent(unknownFraction)} sind von unbekannter Toxizität` : ""}.`,
  "cut-off": ({ hazardClass, limit, limitKind, ingredients, massFraction, countedAs }) =>
    `${hazardClass} ab ${percent(limit)} (${LIMIT_KINDS[limitKind]}): ${named(ingredients)} mit ${percent(massFraction)}${counted(countedAs)}.`,
  "cut-off-summed": ({ hazardClass, limit, limitKind, ingredients, massFraction, countedAs }) =>
    `${hazardClass} ab ${percent(limit)} (${LIMIT_KINDS[limitKind]}): ${named(ingredients)}, zusammen ${percent(massFraction)}${counted(countedAs)}.`,
  "weighted-sum": ({ hazardClass, limit, limitKind, ingredients, weightedSum }) =>
    `${hazardClass} ab einer gewichteten Summe von ${percent(limit)}: ${named(ingredients)}, gewichtet ${percent(weightedSum)}${limitKind === "specific" ? bracketed("nach einem eigenen Grenzwert des Stoffes") : ""}.`,
  "flash-point": ({ hazardClass, flashPointC }) =>
    `${hazardClass} nach dem Flammpunkt des Gemisches, ${degrees(flashPointC)}.`,
  "flash-point-not-stated": ({ hazardClass, ingredients, massFraction }) =>
    `${hazardClass} wie ${named(ingredients)} (${percent(massFraction)}): der Flammpunkt des Gemisches ist nicht aufgezeichnet.`,
  "as-its-ingredient": ({ hazardClass, ingredients, massFraction }) =>
    `${hazardClass} wie ${named(ingredients)}, woraus es praktisch ganz besteht (${percent(massFraction)}).`,
  "as-its-ingredients": ({ ingredients, limit, massFraction }) =>
    `Kommt mit ${named(ingredients)} ab ${percent(limit)} hinzu: ${percent(massFraction)}.`,
  elicitation: ({ substance, hazardClass, massFraction, limit }) =>
    sentence(
      `${within(substance)} (${hazardClass}) mit ${percent(massFraction)}: ab ${percent(limit)} kann reagieren, wer schon dagegen allergisch ist`,
    ),
  "lead-as-metal": ({ massFraction, ingredients, limit, ...size }) =>
    `Blei, als Metall gerechnet, macht ${percent(massFraction)} der Farbe aus (${named(ingredients)}), über ${percent(limit)}${shortForm(size)}.`,
  "lead-share-not-stated": ({ ingredients, limit, ...size }) =>
    `Enthält Blei in nicht angegebenem Anteil (${named(ingredients)}) und zählt daher als über ${percent(limit)}${shortForm(size)}.`,
  "traces-in-an-unclassified-mixture": ({ ingredients }) =>
    `Nicht eingestuft, doch wegen ${named(ingredients)} darin ist auf Anfrage ein Sicherheitsdatenblatt zu geben.`,
  "as-its-supplier-states": ({ ingredients }) =>
    `Nach Angabe des Lieferanten von ${named(ingredients)}.`,

  "below-its-limit": ({ ingredients, massFraction, ...what }) =>
    `Weggelassen: ${named(ingredients)}, ${ingredients.length > 1 ? "zusammen " : ""}${percent(massFraction)} davon, ${belowWhat(what)}.`,
  "covered-by": ({ by }) => `Weggelassen, denn ${by} sagt mehr.`,
  "entry-annulled": ({ name }) => `Weggelassen: für ${within(name)} für nichtig erklärt.`,
  "category-not-in-frame": ({ name, frame }) =>
    `Weggelassen: für ${within(name)} angegeben, aber keine Kategorie nach ${frame}.`,
  "dust-not-from-a-paste": ({ name }) =>
    `Weggelassen: für den Staub von ${within(name)} angegeben, und eine Paste gibt keinen ab.`,
  "vapour-not-from-a-powder": ({ name }) =>
    `Weggelassen: für den Dampf von ${within(name)} angegeben, und ein Pulver gibt keinen ab.`,
  "not-a-liquid": ({ name }) =>
    `Weggelassen: für ${within(name)} als Flüssigkeit angegeben, und das ist keine.`,
  "flash-point-decides": ({ name }) =>
    `Weggelassen: für ${within(name)} angegeben, doch der Flammpunkt des Gemisches entscheidet.`,
  "flammable-trace": ({ name }) =>
    `Weggelassen: es ist zu wenig ${within(name)} darin, um zu zählen; der Flammpunkt des Gemisches würde es sagen.`,
  "too-viscous-to-aspirate": ({ name }) =>
    `Weggelassen: für ${within(name)} angegeben, und das Gemisch ist zu zäh, um in die Lunge zu geraten.`,
  "needs-a-test-of-the-mixture": ({ name }) =>
    `Weggelassen: für ${within(name)} angegeben, und nur eine Prüfung des Gemisches selbst würde es sagen.`,

  "by-severity": ({ answers }) => `Nach Schwere gewählt, für ${listed(answers)}.`,
  "children-first": ({ answers }) =>
    `Steht zuerst bei allem, was die breite Öffentlichkeit kaufen kann${bracketed(listed(answers))}.`,
  "disposal-for-the-public": ({ answers }) =>
    `Die Entsorgung hat ihren Platz auf allem, was die breite Öffentlichkeit kaufen kann${bracketed(listed(answers))}.`,
  "small-package": ({ packageMl, upToMl, statements }) =>
    `Das Etikett einer Packung von ${millilitres(packageMl)} (bis ${millilitres(upToMl)}) darf ${listed(statements)} weglassen, wenn weder es selbst noch ein Faltetikett, ein Anhänger oder eine Schachtel das Ganze tragen kann; eine Seite oder Karte tut es nie.`,

  "unknown-acute-toxicity": ({ massFraction, routes, ingredients }) =>
    `${percent(massFraction)} des Gemisches bestehen aus Bestandteilen unbekannter akuter Toxizität (${listed(
      routes.map((route) => ROUTES[route]),
      "or",
    )}): ${named(ingredients)}.`,
  "no-hazard-data": ({ name }) =>
    `Keine Gefahrendaten aufgezeichnet für ${within(name)}; als gefährlich behandeln. Gesucht: das Sicherheitsdatenblatt des Lieferanten, Abschnitte 2 und 3.`,
  "total-short-of-the-whole": ({ unaccounted }) =>
    `${percent(unaccounted)} des Gemisches sind nicht belegt; als gefährlich behandeln.`,
  "statement-not-known": ({ statements, name }) =>
    `Der Lieferant von ${within(name)} gibt ${listed(statements)} an, auf keiner unserer Listen: nachschlagen und als gefährlich behandeln.`,

  "contains-metal": ({ metals, advice }) =>
    `Enthält ${listed(metals.map(metalWord))}. ${METAL_ADVICE[advice]}`,
  "child-resistant-fastening": ({ classes }) =>
    `Beim Verkauf an die breite Öffentlichkeit braucht die Packung einen kindergesicherten Verschluss (${listed(classes.map(classByRoute))}).`,
  "tactile-warning": ({ classes }) =>
    `Beim Verkauf an die breite Öffentlichkeit braucht die Packung einen tastbaren Gefahrenhinweis (${listed(classes.map(classByRoute))}).`,

  "frame-differs": ({ stated, workedOut }) =>
    `Das Etikett des Herstellers folgt ${stated}, errechnet ist es hier nach ${workedOut}.`,
  "signal-word-differs": ({ stated, workedOut }) =>
    `Der Hersteller gibt ${stated === "none" ? "kein Signalwort" : `das Signalwort ${signalWord(stated)}`} an; errechnet ist ${signalWord(workedOut)}.`,
  "pictogram-not-stated": ({ code }) => missing(code),
  "pictogram-not-worked-out": ({ code }) => excess(code),
  "supplement-not-stated": ({ code }) => missing(code),
  "supplement-not-worked-out": ({ code }) => excess(code),
  "statement-not-stated": ({ statement, ingredients, certain }) =>
    missing(`${statement} (${named(ingredients)}${uncertain(certain)})`),
  "statement-not-worked-out": ({ statement }) => excess(statement),
  "statement-differs": ({ stated, workedOut, ingredients, certain }) =>
    `Der Hersteller gibt ${stated} an; errechnet ist ${workedOut} (${named(ingredients)}${uncertain(certain)}).`,
  "statement-annulled": ({ statement }) =>
    `${statement} wurde für nichtig erklärt und gehört auf kein Etikett.`,
  "not-of-the-frame": ({ statement, frame }) => `${statement} ist kein Hinweis nach ${frame}.`,
  "older-than-the-edition": ({ statement, edition, replacement }) =>
    `${statement} ist älter als die Fassung (${edition}), in der ${replacement} steht.`,
  "label-older-than-the-edition": ({ date, asOf, edition }) =>
    `Das Etikett ist vom ${dateWords(date)}, die Fassung vom ${dateWords(asOf)} (${edition}): daran prüfen.`,
  "too-many-precautions": ({ count, atMost }) =>
    `${count} Sicherheitshinweise, wo ein Etikett Platz für ${atMost} hat.`,
};

/** Labels, studio and markets. */
export const HAZARD_RULINGS = { ...LABEL_WORDINGS, ...STUDIO_WORDINGS, ...MARKET_WORDINGS };

function named(ingredients: readonly string[]): string {
  return namesWithin([
    ...new Set(ingredients.map((slug) => (slug === UNACCOUNTED ? "der nicht belegte Rest" : slug))),
  ]);
}

/** What a label says of a metal that no statement tells of, as the table of label texts has it. */
const METAL_ADVICE: Readonly<Record<MetalAdvice, string>> = {
  "do not spray or heat": "Nicht sprühen, nicht trocken schleifen, nicht erhitzen.",
  "do not sand dry": "Nicht trocken schleifen; Staub und Aerosol nicht einatmen.",
  "do not heat": "Nicht erhitzen; nichts in den Ausguss geben.",
};

function signalWord(word: string): string {
  return word === "none" ? "keines" : inGerman(SIGNAL_WORDS, word);
}

/** "Acute Tox. 2 dermal" with its route in words; any other class as it is. */
function classByRoute(name: string): string {
  const [, hazardClass, route] = /^(.+) (oral|dermal|dust|vapour)$/.exec(name) ?? [];
  return hazardClass === undefined || route === undefined
    ? name
    : `${hazardClass} (${ROUTES[route as keyof typeof ROUTES]})`;
}

/** The least share that counts; of an acute toxicity the estimate, which decides; else that it is too little. */
function belowWhat({
  limit,
  ate,
  upTo,
  unit,
  others,
}: Omit<Of<"below-its-limit">, "ingredients" | "massFraction">): string {
  if (ate !== undefined && upTo !== undefined && unit !== undefined) {
    return `bringt das Gemisch${others === undefined ? "" : `, mit ${named(others)},`} auf einen Schätzwert von ${withUnit(significant(ate, 2), unit)}, und der liegt über ${withUnit(significant(upTo, 3), unit)}`;
  }
  return limit === undefined ? "ist zu wenig, um zu zählen" : `bleibt unter ${percent(limit)}`;
}

function counted(as: string): string {
  return as === "substance" ? "" : `, gerechnet als ${metalWord(as)}`;
}

function shortForm({
  packageMl,
  shortBelowMl,
}: Pick<Of<"lead-as-metal">, "packageMl" | "shortBelowMl">): string {
  if (packageMl === undefined || packageMl >= (shortBelowMl ?? 0)) return "";
  return `; eine Packung von ${millilitres(packageMl)} trägt die Kurzform`;
}

function uncertain(certain: "yes" | "no"): string {
  return certain === "no" ? ", ungewiss" : "";
}

function missing(code: string): string {
  return sentence(`${code} ist errechnet und steht nicht auf dem Etikett des Herstellers`);
}

function excess(code: string): string {
  return sentence(`${code} steht auf dem Etikett des Herstellers und ist nicht errechnet`);
}
