import type { LabelStatement } from "../../hazard/statements.ts";
import type { MetalAdvice } from "../../hazard/texts/contents-line.ts";
import type { ValuesOf, WordingsOf } from "../../quantities/statement.ts";
import { SIGNAL_WORDS } from "./label-words.ts";
import {
  bracketed,
  dateWords,
  degrees,
  listed,
  millilitres,
  namesWithin,
  of,
  percent,
  sentence,
  significant,
  within,
  withUnit,
} from "./phrases.ts";
import { wordOf } from "./closed-words.ts";
import { MARKET_WORDINGS } from "./statements-markets.ts";
import { metalWord, STUDIO_WORDINGS } from "./statements-studio.ts";

const ROUTES = {
  oral: "par ingestion",
  dermal: "par contact cutané",
  dust: "par inhalation de poussières",
  vapour: "par inhalation de vapeurs",
} as const;
const LIMIT_KINDS = {
  generic: "la limite générale",
  specific: "la limite propre à la substance",
} as const;

/** Stands among ingredients for a share that nobody accounts for. */
const UNACCOUNTED = "(unaccounted)";

type Of<R extends LabelStatement["rule"]> = ValuesOf<LabelStatement, R>;

/** Why each statement stands on a label or was left out, what is not known, and where the maker's label and the reckoning part. */
const LABEL_WORDINGS: WordingsOf<LabelStatement> = {
  "ate-mix": ({ hazardClass, route, ingredients, ateMix, limit, unit, unknownFraction }) =>
    `${hazardClass}, ${ROUTES[route]}, du fait ${of(named(ingredients))}\u202f: l’estimation pour le mélange est de ${withUnit(significant(ateMix, 3), unit)}, ${limit === undefined ? "pour quoi aucune limite n’est indiquée" : `la limite de ${withUnit(significant(limit, 3), unit)}`}${unknownFraction > 0 ? `, avec ${percent(unknownFraction)} de composants de toxicité inconnue` : ""}.`,
  "cut-off": ({ hazardClass, limit, limitKind, ingredients, massFraction, countedAs }) =>
    `${hazardClass} à partir de ${percent(limit)} (${LIMIT_KINDS[limitKind]})\u202f: ${named(ingredients)} à ${percent(massFraction)}${counted(countedAs)}.`,
  "cut-off-summed": ({ hazardClass, limit, limitKind, ingredients, massFraction, countedAs }) =>
    `${hazardClass} à partir de ${percent(limit)} (${LIMIT_KINDS[limitKind]})\u202f: ${named(ingredients)}, ensemble ${percent(massFraction)}${counted(countedAs)}.`,
  "weighted-sum": ({ hazardClass, limit, limitKind, ingredients, weightedSum }) =>
    `${hazardClass} à partir d’une somme pondérée de ${percent(limit)}\u202f: ${named(ingredients)}, pondéré ${percent(weightedSum)}${limitKind === "specific" ? bracketed("selon une limite propre à la substance") : ""}.`,
  "flash-point": ({ hazardClass, flashPointC }) =>
    `${hazardClass} d’après le point d’éclair du mélange, ${degrees(flashPointC)}.`,
  "flash-point-not-stated": ({ hazardClass, ingredients, massFraction }) =>
    `${hazardClass}, comme ${named(ingredients)} (${percent(massFraction)})\u202f: le point d’éclair du mélange n’est pas consigné.`,
  "as-its-ingredient": ({ hazardClass, ingredients, massFraction }) =>
    `${hazardClass}, comme ${named(ingredients)}, qui en fait pratiquement la totalité (${percent(massFraction)}).`,
  "as-its-ingredients": ({ ingredients, limit, massFraction }) =>
    `Vient avec ${named(ingredients)} à partir de ${percent(limit)}\u202f: ${percent(massFraction)}.`,
  elicitation: ({ substance, hazardClass, massFraction, limit }) =>
    sentence(
      `${within(substance)} (${hazardClass}) à ${percent(massFraction)}\u202f: à partir de ${percent(limit)}, une personne déjà allergique peut réagir`,
    ),
  "lead-as-metal": ({ massFraction, ingredients, limit, ...size }) =>
    `Le plomb, en métal, fait ${percent(massFraction)} de la peinture (${named(ingredients)}), au-dessus de ${percent(limit)}${shortForm(size)}.`,
  "lead-share-not-stated": ({ ingredients, limit, ...size }) =>
    `Contient du plomb dans une part qui n’est pas indiquée (${named(ingredients)}), et compte donc comme au-dessus de ${percent(limit)}${shortForm(size)}.`,
  "traces-in-an-unclassified-mixture": ({ ingredients }) =>
    `Non classé, mais la présence ${of(named(ingredients))} oblige à donner une fiche de données de sécurité sur demande.`,
  "as-its-supplier-states": ({ ingredients }) =>
    `Selon ce que déclare le fournisseur ${of(named(ingredients))}.`,

  "below-its-limit": ({ ingredients, massFraction, ...what }) =>
    `Laissé de côté\u202f: ${named(ingredients)}, ${ingredients.length > 1 ? "ensemble " : ""}${percent(massFraction)} du tout, ${belowWhat(what)}.`,
  "covered-by": ({ by }) => `Laissé de côté, puisque ${by} en dit plus.`,
  "entry-annulled": ({ name }) => `Laissé de côté\u202f: annulé pour ${within(name)}.`,
  "category-not-in-frame": ({ name, frame }) =>
    `Laissé de côté\u202f: déclaré pour ${within(name)}, et aucune catégorie de ${frame}.`,
  "dust-not-from-a-paste": ({ name }) =>
    `Laissé de côté\u202f: déclaré pour la poussière ${of(within(name))}, et une pâte n’en dégage pas.`,
  "vapour-not-from-a-powder": ({ name }) =>
    `Laissé de côté\u202f: déclaré pour la vapeur ${of(within(name))}, et une poudre n’en dégage pas.`,
  "not-a-liquid": ({ name }) =>
    `Laissé de côté\u202f: déclaré pour ${within(name)} à l’état liquide, et ceci n’en est pas un.`,
  "flash-point-decides": ({ name }) =>
    `Laissé de côté\u202f: déclaré pour ${within(name)}, mais le point d’éclair du mélange décide.`,
  "flammable-trace": ({ name }) =>
    `Laissé de côté\u202f: trop peu ${of(within(name))} pour compter\u202f; le point d’éclair du mélange le dirait.`,
  "too-viscous-to-aspirate": ({ name }) =>
    `Laissé de côté\u202f: déclaré pour ${within(name)}, et le mélange est trop épais pour être aspiré dans les poumons.`,
  "needs-a-test-of-the-mixture": ({ name }) =>
    `Laissé de côté\u202f: déclaré pour ${within(name)}, et seul un essai du mélange lui-même le dirait.`,

  "by-severity": ({ answers }) => `Choisi selon la gravité, pour ${listed(answers)}.`,
  "children-first": ({ answers }) =>
    `Vient en premier pour tout ce que le grand public peut acheter${bracketed(listed(answers))}.`,
  "disposal-for-the-public": ({ answers }) =>
    `L’élimination a sa place sur tout ce que le grand public peut acheter${bracketed(listed(answers))}.`,
  "small-package": ({ packageMl, upToMl, statements }) =>
    `L’étiquette d’un emballage de ${millilitres(packageMl)} (jusqu’à ${millilitres(upToMl)}) peut omettre ${listed(statements)} si ni elle, ni une étiquette dépliante, ni une étiquette volante, ni un emballage extérieur ne peut porter le tout\u202f; une page ou une carte ne l’omet jamais.`,

  "unknown-acute-toxicity": ({ massFraction, routes, ingredients }) =>
    `${percent(massFraction)} du mélange sont constitués de composants de toxicité aiguë inconnue (${listed(
      routes.map((route) => ROUTES[route]),
      "or",
    )})\u202f: ${named(ingredients)}.`,
  "no-hazard-data": ({ name }) =>
    `Aucune donnée de danger consignée pour ${within(name)}\u202f; à traiter comme dangereux. Il faut la fiche de données de sécurité de son fournisseur, rubriques 2 et 3.`,
  "total-short-of-the-whole": ({ unaccounted }) =>
    `${percent(unaccounted)} du mélange ne sont pas connus\u202f; à traiter comme dangereux.`,
  "statement-not-known": ({ statements, name }) =>
    `Le fournisseur ${of(within(name))} déclare ${listed(statements)}, qui n’est sur aucune de nos listes\u202f: à chercher, et à traiter comme dangereux.`,

  "contains-metal": ({ metals, advice }) =>
    `Contient\u202f: ${listed(metals.map(metalWord))}. ${METAL_ADVICE[advice]}`,
  "child-resistant-fastening": ({ classes }) =>
    `Vendu au grand public, son emballage demande une fermeture de sécurité pour enfants (${listed(classes.map(classByRoute))}).`,
  "tactile-warning": ({ classes }) =>
    `Vendu au grand public, son emballage demande une indication de danger détectable au toucher (${listed(classes.map(classByRoute))}).`,

  "frame-differs": ({ stated, workedOut }) =>
    `L’étiquette du fabricant suit ${stated}, et elle est calculée ici selon ${workedOut}.`,
  "signal-word-differs": ({ stated, workedOut }) =>
    `Le fabricant ${stated === "none" ? "ne déclare aucune mention d’avertissement" : `déclare la mention d’avertissement ${wordOf(SIGNAL_WORDS, stated)}`}\u202f; d’après le calcul, c’est ${workedOut === "none" ? "aucune" : wordOf(SIGNAL_WORDS, workedOut)}.`,
  "pictogram-not-stated": ({ code }) => missing(code),
  "pictogram-not-worked-out": ({ code }) => excess(code),
  "supplement-not-stated": ({ code }) => missing(code),
  "supplement-not-worked-out": ({ code }) => excess(code),
  "statement-not-stated": ({ statement, ingredients, certain }) =>
    missing(`${statement} (${named(ingredients)}${uncertain(certain)})`),
  "statement-not-worked-out": ({ statement }) => excess(statement),
  "statement-differs": ({ stated, workedOut, ingredients, certain }) =>
    `Le fabricant déclare ${stated}\u202f; d’après le calcul, c’est ${workedOut} (${named(ingredients)}${uncertain(certain)}).`,
  "statement-annulled": ({ statement }) =>
    `${statement} a été annulé et n’a sa place sur aucune étiquette.`,
  "not-of-the-frame": ({ statement, frame }) => `${statement} n’est pas une mention de ${frame}.`,
  "older-than-the-edition": ({ statement, edition, replacement }) =>
    `${statement} est plus ancien que l’édition (${edition}), qui porte ${replacement}.`,
  "label-older-than-the-edition": ({ date, asOf, edition }) =>
    `L’étiquette est du ${dateWords(date)}, et l’édition du ${dateWords(asOf)} (${edition})\u202f: la vérifier d’après celle-ci.`,
  "too-many-precautions": ({ count, atMost }) =>
    `${count} conseils de prudence, alors qu’une étiquette a place pour ${atMost}.`,
};

/** Labels, studio and markets. */
export const HAZARD_RULINGS = { ...LABEL_WORDINGS, ...STUDIO_WORDINGS, ...MARKET_WORDINGS };

function named(ingredients: readonly string[]): string {
  return namesWithin([
    ...new Set(ingredients.map((slug) => (slug === UNACCOUNTED ? "la part non connue" : slug))),
  ]);
}

/** As the tables of label texts have it. */
const METAL_ADVICE: Readonly<Record<MetalAdvice, string>> = {
  "do not spray or heat": "Ne pas pulvériser, ne pas poncer à sec, ne pas chauffer.",
  "do not sand dry": "Ne pas poncer à sec\u202f; ne pas respirer ses poussières ni ses aérosols.",
  "do not heat": "Ne pas chauffer\u202f; ne rien jeter à l’égout.",
};

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
    return `ce qui${others === undefined ? "" : `, avec ${named(others)},`} mène le mélange à une estimation de ${withUnit(significant(ate, 2), unit)}, au-dessus de ${withUnit(significant(upTo, 3), unit)}`;
  }
  return limit === undefined ? "trop peu pour compter" : `au-dessous de ${percent(limit)}`;
}

function counted(as: string): string {
  return as === "substance" ? "" : `, compté en ${metalWord(as)}`;
}

function shortForm({
  packageMl,
  shortBelowMl,
}: Pick<Of<"lead-as-metal">, "packageMl" | "shortBelowMl">): string {
  if (packageMl === undefined || packageMl >= (shortBelowMl ?? 0)) return "";
  return `\u202f; un emballage de ${millilitres(packageMl)} porte la forme courte`;
}

function uncertain(certain: "yes" | "no"): string {
  return certain === "no" ? ", sans certitude" : "";
}

function missing(code: string): string {
  return sentence(`${code} résulte du calcul, et n’est pas sur l’étiquette du fabricant`);
}

function excess(code: string): string {
  return sentence(`${code} est sur l’étiquette du fabricant, et ne résulte pas du calcul`);
}
