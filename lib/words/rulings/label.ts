import type { LabelStatement } from "../../hazard/statements.ts";
import { FRAMES, SIGNAL_WORDS, wordOf } from "../closed-sets.ts";
import { de, en, es, fr, sentences } from "../phrases-in-each.ts";
import { alike } from "../texts.ts";
import {
  ROUTES,
  named,
  LIMIT_KINDS,
  counted,
  shortForm,
  belowWhat,
  METAL_ADVICE,
  classByRoute,
  missing,
  excess,
  uncertain,
} from "./label-phrases.ts";
import type { RulingsInEach } from "./rulings-in-each.ts";
import { metalWord } from "./studio-phrases.ts";

/** Why each statement stands on a label or was left out, what is not known, and where the maker's label and the reckoning part. */
export const LABEL_RULINGS: RulingsInEach<LabelStatement> = {
  "ate-mix": ({ hazardClass, route, ingredients, ateMix, limit, unit, unknownFraction }) => ({
    en: `${hazardClass}, ${ROUTES[route].en}, from ${named(ingredients).en}: the estimate for the mixture is ${en.withUnit(en.significant(ateMix, 3), unit)}, ${limit === undefined ? "for which no limit is stated" : `the limit ${en.withUnit(en.significant(limit, 3), unit)}`}${unknownFraction > 0 ? `, with ${en.percent(unknownFraction)} of unknown toxicity` : ""}.`,
    de: `${hazardClass}, ${ROUTES[route].de} (${named(ingredients).de}): Der Schätzwert für das Gemisch ist ${de.withUnit(de.significant(ateMix, 3), unit)}, ${limit === undefined ? "ein Grenzwert ist dafür nicht angegeben" : `der Grenzwert ${de.withUnit(de.significant(limit, 3), unit)}`}${unknownFraction > 0 ? `; ${de.percent(unknownFraction)} sind von unbekannter Toxizität` : ""}.`,
    fr: `${hazardClass}, ${ROUTES[route].fr}, du fait ${fr.of(named(ingredients).fr)}\u202f: l’estimation pour le mélange est de ${fr.withUnit(fr.significant(ateMix, 3), unit)}, ${limit === undefined ? "pour laquelle aucune limite n’est indiquée" : `et la limite de ${fr.withUnit(fr.significant(limit, 3), unit)}`}${unknownFraction > 0 ? `, avec ${fr.percent(unknownFraction)} de composants de toxicité inconnue` : ""}.`,
    es: `${hazardClass}, ${ROUTES[route].es}, por ${named(ingredients).es}: la estimación para la mezcla es de ${es.withUnit(es.significant(ateMix, 3), unit)}, ${limit === undefined ? "para la que no se indica ningún límite" : `y el límite de ${es.withUnit(es.significant(limit, 3), unit)}`}${unknownFraction > 0 ? `, con un ${es.percent(unknownFraction)} de componentes de toxicidad desconocida` : ""}.`,
  }),
  "cut-off": ({ hazardClass, limit, limitKind, ingredients, massFraction, countedAs }) => ({
    en: `${hazardClass} from ${en.percent(limit)} (${LIMIT_KINDS[limitKind].en}): ${named(ingredients).en} at ${en.percent(massFraction)}${counted(countedAs).en}.`,
    de: `${hazardClass} ab ${de.percent(limit)} (${LIMIT_KINDS[limitKind].de}): ${named(ingredients).de} mit ${de.percent(massFraction)}${counted(countedAs).de}.`,
    fr: `${hazardClass} à partir de ${fr.percent(limit)} (${LIMIT_KINDS[limitKind].fr})\u202f: ${named(ingredients).fr} à ${fr.percent(massFraction)}${counted(countedAs).fr}.`,
    es: `${hazardClass} desde el ${es.percent(limit)} (${LIMIT_KINDS[limitKind].es}): ${named(ingredients).es} al ${es.percent(massFraction)}${counted(countedAs).es}.`,
  }),
  "cut-off-summed": ({ hazardClass, limit, limitKind, ingredients, massFraction, countedAs }) => ({
    en: `${hazardClass} from ${en.percent(limit)} (${LIMIT_KINDS[limitKind].en}): ${named(ingredients).en}, together ${en.percent(massFraction)}${counted(countedAs).en}.`,
    de: `${hazardClass} ab ${de.percent(limit)} (${LIMIT_KINDS[limitKind].de}): ${named(ingredients).de}, zusammen ${de.percent(massFraction)}${counted(countedAs).de}.`,
    fr: `${hazardClass} à partir de ${fr.percent(limit)} (${LIMIT_KINDS[limitKind].fr})\u202f: ${named(ingredients).fr}, ensemble ${fr.percent(massFraction)}${counted(countedAs).fr}.`,
    es: `${hazardClass} desde el ${es.percent(limit)} (${LIMIT_KINDS[limitKind].es}): ${named(ingredients).es}, en conjunto ${es.percent(massFraction)}${counted(countedAs).es}.`,
  }),
  "weighted-sum": ({ hazardClass, limit, limitKind, ingredients, weightedSum }) => ({
    en: `${hazardClass} from a weighted sum of ${en.percent(limit)}: ${named(ingredients).en}, weighted ${en.percent(weightedSum)}${limitKind === "specific" ? en.bracketed("by a limit of the substance's own") : ""}.`,
    de: `${hazardClass} ab einer gewichteten Summe von ${de.percent(limit)}: ${named(ingredients).de}, gewichtet ${de.percent(weightedSum)}${limitKind === "specific" ? de.bracketed("nach einem eigenen Grenzwert des Stoffes") : ""}.`,
    fr: `${hazardClass} à partir d’une somme pondérée de ${fr.percent(limit)}\u202f: ${named(ingredients).fr}, somme pondérée ${fr.percent(weightedSum)}${limitKind === "specific" ? fr.bracketed("selon une limite propre à la substance") : ""}.`,
    es: `${hazardClass} desde una suma ponderada del ${es.percent(limit)}: ${named(ingredients).es}, suma ponderada ${es.percent(weightedSum)}${limitKind === "specific" ? es.bracketed("según un límite propio de la sustancia") : ""}.`,
  }),
  "flash-point": ({ hazardClass, flashPointC }) => ({
    en: `${hazardClass} by the flash point of the mixture, ${en.degrees(flashPointC)}.`,
    de: `${hazardClass} nach dem Flammpunkt des Gemisches, ${de.degrees(flashPointC)}.`,
    fr: `${hazardClass} d’après le point d’éclair du mélange, ${fr.degrees(flashPointC)}.`,
    es: `${hazardClass} por el punto de inflamación de la mezcla, ${es.degrees(flashPointC)}.`,
  }),
  "flash-point-not-stated": ({ hazardClass, ingredients, massFraction }) => ({
    en: `${hazardClass}, as ${named(ingredients).en} (${en.percent(massFraction)}) has it: the flash point of the mixture is not recorded.`,
    de: `${hazardClass} wie ${named(ingredients).de} (${de.percent(massFraction)}): Der Flammpunkt des Gemisches ist nicht aufgezeichnet.`,
    fr: `${hazardClass}, comme ${named(ingredients).fr} (${fr.percent(massFraction)})\u202f: le point d’éclair du mélange n’est pas consigné.`,
    es: `${hazardClass}, como ${named(ingredients).es} (${es.percent(massFraction)}): el punto de inflamación de la mezcla no está registrado.`,
  }),
  "as-its-ingredient": ({ hazardClass, ingredients, massFraction }) => ({
    en: `${hazardClass}, as ${named(ingredients).en} has it, which is practically all of it (${en.percent(massFraction)}).`,
    de: `${hazardClass} wie ${named(ingredients).de}, woraus das Gemisch praktisch ganz besteht (${de.percent(massFraction)}).`,
    fr: `${hazardClass}, comme ${named(ingredients).fr}, qui en fait pratiquement la totalité (${fr.percent(massFraction)}).`,
    es: `${hazardClass}, como ${named(ingredients).es}, que es prácticamente toda ella (${es.percent(massFraction)}).`,
  }),
  "as-its-ingredients": ({ ingredients, limit, massFraction }) => ({
    en: `Comes along with ${named(ingredients).en} from ${en.percent(limit)} on: ${en.percent(massFraction)}.`,
    de: `Kommt ab ${de.percent(limit)} hinzu: ${named(ingredients).de}, ${de.percent(massFraction)}.`,
    fr: `Vient avec ${named(ingredients).fr} à partir de ${fr.percent(limit)}\u202f: ${fr.percent(massFraction)}.`,
    es: `Viene con ${named(ingredients).es} desde el ${es.percent(limit)}: ${es.percent(massFraction)}.`,
  }),
  elicitation: ({ substance, hazardClass, massFraction, limit }) =>
    sentences({
      en: `${en.within(substance)} (${hazardClass}) at ${en.percent(massFraction)}: from ${en.percent(limit)} on anyone already allergic to it may react`,
      de: `${de.within(substance)} (${hazardClass}) mit ${de.percent(massFraction)}: Ab ${de.percent(limit)} kann reagieren, wer schon dagegen allergisch ist`,
      fr: `${fr.within(substance)} (${hazardClass}) à ${fr.percent(massFraction)}\u202f: à partir de ${fr.percent(limit)}, une personne déjà allergique peut réagir`,
      es: `${es.within(substance)} (${hazardClass}) al ${es.percent(massFraction)}: desde el ${es.percent(limit)} puede reaccionar quien ya sea alérgico`,
    }),
  "lead-as-metal": ({ massFraction, ingredients, limit, ...size }) => ({
    en: `Lead, as metal, is ${en.percent(massFraction)} of the paint (${named(ingredients).en}), above ${en.percent(limit)}${shortForm(size).en}.`,
    de: `Blei, als Metall gerechnet, macht ${de.percent(massFraction)} der Farbe aus (${named(ingredients).de}), über ${de.percent(limit)}${shortForm(size).de}.`,
    fr: `Le plomb, en métal, fait ${fr.percent(massFraction)} de la peinture (${named(ingredients).fr}), au-dessus de ${fr.percent(limit)}${shortForm(size).fr}.`,
    es: `El plomo, como metal, es el ${es.percent(massFraction)} de la pintura (${named(ingredients).es}), por encima del ${es.percent(limit)}${shortForm(size).es}.`,
  }),
  "lead-share-not-stated": ({ ingredients, limit, ...size }) => ({
    en: `Holds lead in a share that is not stated (${named(ingredients).en}), so it counts as above ${en.percent(limit)}${shortForm(size).en}.`,
    de: `Enthält Blei in nicht angegebenem Anteil (${named(ingredients).de}) und zählt daher als über ${de.percent(limit)}${shortForm(size).de}.`,
    fr: `Contient du plomb en proportion non indiquée (${named(ingredients).fr}), et compte donc comme au-dessus de ${fr.percent(limit)}${shortForm(size).fr}.`,
    es: `Contiene plomo en una proporción que no se indica (${named(ingredients).es}), así que cuenta como por encima del ${es.percent(limit)}${shortForm(size).es}.`,
  }),
  "traces-in-an-unclassified-mixture": ({ ingredients }) => ({
    en: `Not classified, but ${named(ingredients).en} in it means that a safety data sheet must be given on request.`,
    de: `Nicht eingestuft, aber enthalten: ${named(ingredients).de}. Auf Anfrage ist daher ein Sicherheitsdatenblatt abzugeben.`,
    fr: `Non classé, mais la présence ${fr.of(named(ingredients).fr)} oblige à donner une fiche de données de sécurité sur demande.`,
    es: `No clasificada, pero por contener ${named(ingredients).es} debe darse una ficha de datos de seguridad a quien la pida.`,
  }),
  "as-its-supplier-states": ({ ingredients }) => ({
    en: `As the supplier of ${named(ingredients).en} states it.`,
    de: `Nach Angabe des Lieferanten (${named(ingredients).de}).`,
    fr: `Selon ce que déclare le fournisseur ${fr.of(named(ingredients).fr)}.`,
    es: `Según lo declara el proveedor de ${named(ingredients).es}.`,
  }),

  "below-its-limit": ({ ingredients, massFraction, ...what }) => ({
    en: `Left out: ${named(ingredients).en}, ${ingredients.length > 1 ? "together " : ""}${en.percent(massFraction)} of it, ${belowWhat(what).en}.`,
    de: `Weggelassen: ${named(ingredients).de}, ${ingredients.length > 1 ? "zusammen " : ""}${de.percent(massFraction)} davon; das ${belowWhat(what).de}.`,
    fr: `Laissé de côté\u202f: ${named(ingredients).fr}, ${ingredients.length > 1 ? "ensemble " : ""}${fr.percent(massFraction)} du tout, ${belowWhat(what).fr}.`,
    es: `Omitido: ${named(ingredients).es}, ${ingredients.length > 1 ? "en conjunto " : ""}${es.percent(massFraction)} del total, ${belowWhat(what).es}.`,
  }),
  "covered-by": ({ by }) => ({
    en: `Left out, since ${by} says more.`,
    de: `Weggelassen, denn ${by} sagt mehr.`,
    fr: `Laissé de côté, puisque ${by} en dit plus.`,
    es: `Omitido, puesto que ${by} dice más.`,
  }),
  "entry-annulled": ({ name }) => ({
    en: `Left out: annulled for ${en.within(name)}.`,
    de: `Weggelassen: für ${de.within(name)} für nichtig erklärt.`,
    fr: `Laissé de côté\u202f: annulé pour ${fr.within(name)}.`,
    es: `Omitido: anulado para ${es.within(name)}.`,
  }),
  "category-not-in-frame": ({ name, frame }) => ({
    en: `Left out: stated for ${en.within(name)}, and no category of ${frame}.`,
    de: `Weggelassen: für ${de.within(name)} angegeben, aber keine Kategorie nach ${frame}.`,
    fr: `Laissé de côté\u202f: déclaré pour ${fr.within(name)}, et ce n’est pas une catégorie de ${wordOf(FRAMES, frame, "fr")}.`,
    es: `Omitido: declarado para ${es.within(name)}, y no es una categoría de ${wordOf(FRAMES, frame, "es")}.`,
  }),
  "dust-not-from-a-paste": ({ name }) => ({
    en: `Left out: stated for the dust of ${en.within(name)}, and a paste gives off none.`,
    de: `Weggelassen: für den Staub angegeben (${de.within(name)}), und eine Paste gibt keinen ab.`,
    fr: `Laissé de côté\u202f: déclaré pour la poussière ${fr.of(fr.within(name))}, et une pâte n’en dégage pas.`,
    es: `Omitido: declarado para el polvo de ${es.within(name)}, y una pasta no lo desprende.`,
  }),
  "vapour-not-from-a-powder": ({ name }) => ({
    en: `Left out: stated for the vapour of ${en.within(name)}, and a powder gives off none.`,
    de: `Weggelassen: für den Dampf angegeben (${de.within(name)}), und ein Pulver gibt keinen ab.`,
    fr: `Laissé de côté\u202f: déclaré pour la vapeur ${fr.of(fr.within(name))}, et une poudre n’en dégage pas.`,
    es: `Omitido: declarado para el vapor de ${es.within(name)}, y un polvo no lo desprende.`,
  }),
  "not-a-liquid": ({ name }) => ({
    en: `Left out: stated for ${en.within(name)} as a liquid, and this is not one.`,
    de: `Weggelassen: für ${de.within(name)} als Flüssigkeit angegeben, und das ist keine.`,
    fr: `Laissé de côté\u202f: déclaré pour ${fr.within(name)} à l’état liquide, et ceci n’en est pas un.`,
    es: `Omitido: declarado para ${es.within(name)} como líquido, y esto no lo es.`,
  }),
  "flash-point-decides": ({ name }) => ({
    en: `Left out: stated for ${en.within(name)}, but the flash point of the mixture decides.`,
    de: `Weggelassen: für ${de.within(name)} angegeben, doch der Flammpunkt des Gemisches entscheidet.`,
    fr: `Laissé de côté\u202f: déclaré pour ${fr.within(name)}, mais c’est le point d’éclair du mélange qui décide.`,
    es: `Omitido: declarado para ${es.within(name)}, pero decide el punto de inflamación de la mezcla.`,
  }),
  "flammable-trace": ({ name }) => ({
    en: `Left out: there is too little of ${en.within(name)} to count; the flash point of the mixture would tell.`,
    de: `Weggelassen: Die Menge ist zu gering, um zu zählen (${de.within(name)}); der Flammpunkt des Gemisches würde es zeigen.`,
    fr: `Laissé de côté\u202f: trop peu ${fr.of(fr.within(name))} pour compter\u202f; le point d’éclair du mélange le dirait.`,
    es: `Omitido: hay demasiado poco de ${es.within(name)} para contar; lo diría el punto de inflamación de la mezcla.`,
  }),
  "too-viscous-to-aspirate": ({ name }) => ({
    en: `Left out: stated for ${en.within(name)}, and the mixture is too thick to be drawn into the lungs.`,
    de: `Weggelassen: für ${de.within(name)} angegeben, und das Gemisch ist zu zäh, um in die Lunge zu geraten.`,
    fr: `Laissé de côté\u202f: déclaré pour ${fr.within(name)}, et le mélange est trop épais pour être aspiré dans les poumons.`,
    es: `Omitido: declarado para ${es.within(name)}, y la mezcla es demasiado espesa para ser aspirada a los pulmones.`,
  }),
  "needs-a-test-of-the-mixture": ({ name }) => ({
    en: `Left out: stated for ${en.within(name)}, and only a test of the mixture itself would tell.`,
    de: `Weggelassen: für ${de.within(name)} angegeben, und nur eine Prüfung des Gemisches selbst würde es zeigen.`,
    fr: `Laissé de côté\u202f: déclaré pour ${fr.within(name)}, et seul un essai du mélange lui-même le dirait.`,
    es: `Omitido: declarado para ${es.within(name)}, y solo lo diría un ensayo de la propia mezcla.`,
  }),

  "by-severity": ({ answers }) => ({
    en: `Chosen by severity, for ${en.listed(answers)}.`,
    de: `Nach Schwere gewählt, für ${de.listed(answers)}.`,
    fr: `Choisi selon la gravité, pour ${fr.listed(answers)}.`,
    es: `Elegido por gravedad, para ${es.listed(answers)}.`,
  }),
  "children-first": ({ answers }) => ({
    en: `Comes first for whatever the public can buy${en.bracketed(en.listed(answers))}.`,
    de: `Steht an erster Stelle bei allem, was die breite Öffentlichkeit kaufen kann${de.bracketed(de.listed(answers))}.`,
    fr: `Vient en premier pour tout ce que le grand public peut acheter${fr.bracketed(fr.listed(answers))}.`,
    es: `Va primero en todo lo que el público puede comprar${es.bracketed(es.listed(answers))}.`,
  }),
  "disposal-for-the-public": ({ answers }) => ({
    en: `Disposal has its place on whatever the public can buy${en.bracketed(en.listed(answers))}.`,
    de: `Ein Hinweis zur Entsorgung gehört auf alles, was die breite Öffentlichkeit kaufen kann${de.bracketed(de.listed(answers))}.`,
    fr: `L’élimination a sa place sur tout ce que le grand public peut acheter${fr.bracketed(fr.listed(answers))}.`,
    es: `La eliminación tiene su sitio en todo lo que el público puede comprar${es.bracketed(es.listed(answers))}.`,
  }),
  "small-package": ({ packageMl, upToMl, statements }) => ({
    en: `The label of a package of ${en.millilitres(packageMl)} (up to ${en.millilitres(upToMl)}) may leave out ${en.listed(statements)} where neither it nor a fold-out label, a tie-on tag or a box can bear the whole; a page or card never does.`,
    de: `Das Etikett einer Packung von ${de.millilitres(packageMl)} (bis ${de.millilitres(upToMl)}) darf ${de.listed(statements)} weglassen, wenn weder das Etikett selbst noch ein Faltetikett, ein Anhängeetikett oder eine äußere Verpackung das Ganze tragen kann; eine Seite oder Karte lässt nichts weg.`,
    fr: `L’étiquette d’un emballage de ${fr.millilitres(packageMl)} (jusqu’à ${fr.millilitres(upToMl)}) peut omettre ${fr.listed(statements)} si ni elle, ni une étiquette dépliante, ni une étiquette volante, ni un emballage extérieur ne peut porter le tout\u202f; une page ou une carte ne l’omet jamais.`,
    es: `La etiqueta de un envase de ${es.millilitres(packageMl)} (hasta ${es.millilitres(upToMl)}) puede omitir ${es.listed(statements)} si ni ella, ni una etiqueta desplegable, ni una etiqueta colgada, ni un envase exterior pueden llevarlo todo; una página o una tarjeta nunca.`,
  }),

  "unknown-acute-toxicity": ({ massFraction, routes, ingredients }) => ({
    en: `${en.percent(massFraction)} of the mixture consists of ingredients of unknown acute toxicity (${en.listed(
      routes.map((route) => ROUTES[route].en),
      "or",
    )}): ${named(ingredients).en}.`,
    de: `${de.percent(massFraction)} des Gemisches bestehen aus Bestandteilen unbekannter akuter Toxizität (${de.listed(
      routes.map((route) => ROUTES[route].de),
      "or",
    )}): ${named(ingredients).de}.`,
    fr: `${fr.percent(massFraction)} du mélange sont constitués de composants de toxicité aiguë inconnue (${fr.listed(
      routes.map((route) => ROUTES[route].fr),
      "or",
    )})\u202f: ${named(ingredients).fr}.`,
    es: `El ${es.percent(massFraction)} de la mezcla está constituido por componentes de toxicidad aguda desconocida (${es.listed(
      routes.map((route) => ROUTES[route].es),
      "or",
    )}): ${named(ingredients).es}.`,
  }),
  "no-hazard-data": ({ name }) => ({
    en: `No hazard data recorded for ${en.within(name)}; treat as hazardous. Wanted: its supplier's safety data sheet, sections 2 and 3.`,
    de: `Keine Gefahrendaten aufgezeichnet für ${de.within(name)}; als gefährlich behandeln. Benötigt: das Sicherheitsdatenblatt des Lieferanten, Abschnitte 2 und 3.`,
    fr: `Aucune donnée de danger consignée pour ${fr.within(name)}\u202f; à traiter comme dangereux. Il faut la fiche de données de sécurité de son fournisseur, rubriques 2 et 3.`,
    es: `No hay datos de peligro registrados para ${es.within(name)}; tratar como peligroso. Hace falta la ficha de datos de seguridad de su proveedor, secciones 2 y 3.`,
  }),
  "total-short-of-the-whole": ({ unaccounted }) => ({
    en: `${en.percent(unaccounted)} of the mixture is not accounted for; treat it as hazardous.`,
    de: `${de.percent(unaccounted)} des Gemisches sind nicht belegt; als gefährlich behandeln.`,
    fr: `${fr.percent(unaccounted)} du mélange ne sont pas connus\u202f; à traiter comme dangereux.`,
    es: `No se sabe qué es el ${es.percent(unaccounted)} de la mezcla; tratarla como peligrosa.`,
  }),
  "statement-not-known": ({ statements, name }) => ({
    en: `The supplier of ${en.within(name)} states ${en.listed(statements)}, which is on none of our lists: look it up, and treat as hazardous.`,
    de: `Der Lieferant (${de.within(name)}) gibt ${de.listed(statements)} an; das steht auf keiner unserer Listen: nachschlagen und als gefährlich behandeln.`,
    fr: `Le fournisseur ${fr.of(fr.within(name))} déclare ${fr.listed(statements)}, qui n’est sur aucune de nos listes\u202f: à vérifier, et à traiter comme dangereux.`,
    es: `El proveedor de ${es.within(name)} declara ${es.listed(statements)}, que no está en ninguna de nuestras listas: consultarlo, y tratar como peligroso.`,
  }),

  "contains-metal": ({ metals, advice }) => ({
    en: `Contains ${en.listed(metals.map((one) => metalWord(one).en))}. ${METAL_ADVICE[advice].en}`,
    de: `Enthält ${de.listed(metals.map((one) => metalWord(one).de))}. ${METAL_ADVICE[advice].de}`,
    fr: `Contient\u202f: ${fr.listed(metals.map((one) => metalWord(one).fr))}. ${METAL_ADVICE[advice].fr}`,
    es: `Contiene ${es.listed(metals.map((one) => metalWord(one).es))}. ${METAL_ADVICE[advice].es}`,
  }),
  "child-resistant-fastening": ({ classes }) => ({
    en: `Sold to the public, its package needs a child-resistant fastening (${en.listed(classes.map((one) => classByRoute(one).en))}).`,
    de: `Beim Verkauf an die breite Öffentlichkeit braucht die Packung einen kindergesicherten Verschluss (${de.listed(classes.map((one) => classByRoute(one).de))}).`,
    fr: `Pour la vente au grand public, l’emballage demande une fermeture de sécurité pour enfants (${fr.listed(classes.map((one) => classByRoute(one).fr))}).`,
    es: `Para vender al público: envase con cierre de seguridad para niños (${es.listed(classes.map((one) => classByRoute(one).es))}).`,
  }),
  "tactile-warning": ({ classes }) => ({
    en: `Sold to the public, its package needs a tactile warning of danger (${en.listed(classes.map((one) => classByRoute(one).en))}).`,
    de: `Beim Verkauf an die breite Öffentlichkeit braucht die Packung einen tastbaren Gefahrenhinweis (${de.listed(classes.map((one) => classByRoute(one).de))}).`,
    fr: `Pour la vente au grand public, l’emballage demande une indication de danger détectable au toucher (${fr.listed(classes.map((one) => classByRoute(one).fr))}).`,
    es: `Para vender al público: envase con advertencia táctil de peligro (${es.listed(classes.map((one) => classByRoute(one).es))}).`,
  }),

  "frame-differs": ({ stated, workedOut }) => ({
    en: `The maker's label is by ${stated}, and it is worked out here by ${workedOut}.`,
    de: `Das Etikett des Herstellers folgt ${stated}, errechnet ist es hier nach ${workedOut}.`,
    fr: `L’étiquette du fabricant suit ${wordOf(FRAMES, stated, "fr")}, et elle est calculée ici selon ${wordOf(FRAMES, workedOut, "fr")}.`,
    es: `La etiqueta del fabricante sigue ${wordOf(FRAMES, stated, "es")}, y aquí se calcula según ${wordOf(FRAMES, workedOut, "es")}.`,
  }),
  "signal-word-differs": ({ stated, workedOut }) => ({
    en: `The maker states ${stated === "none" ? "no signal word" : `the signal word ${stated}`}; worked out it is ${workedOut}.`,
    de: `Der Hersteller gibt ${stated === "none" ? "kein Signalwort" : `das Signalwort ${wordOf(SIGNAL_WORDS, stated, "de")}`} an; errechnet ist ${workedOut === "none" ? "keines" : wordOf(SIGNAL_WORDS, workedOut, "de")}.`,
    fr: `Le fabricant ${stated === "none" ? "ne déclare aucune mention d’avertissement" : `déclare la mention d’avertissement ${wordOf(SIGNAL_WORDS, stated, "fr")}`}\u202f; d’après le calcul, c’est ${workedOut === "none" ? "aucune" : wordOf(SIGNAL_WORDS, workedOut, "fr")}.`,
    es: `El fabricante ${stated === "none" ? "no declara ninguna palabra de advertencia" : `declara la palabra de advertencia ${wordOf(SIGNAL_WORDS, stated, "es")}`}; según el cálculo es ${workedOut === "none" ? "ninguna" : wordOf(SIGNAL_WORDS, workedOut, "es")}.`,
  }),
  "pictogram-not-stated": ({ code }) => missing(alike(code)),
  "pictogram-not-worked-out": ({ code }) => excess(alike(code)),
  "supplement-not-stated": ({ code }) => missing(alike(code)),
  "supplement-not-worked-out": ({ code }) => excess(alike(code)),
  "statement-not-stated": ({ statement, ingredients, certain }) =>
    missing({
      en: `${statement} (${named(ingredients).en}${uncertain(certain).en})`,
      de: `${statement} (${named(ingredients).de}${uncertain(certain).de})`,
      fr: `${statement} (${named(ingredients).fr}${uncertain(certain).fr})`,
      es: `${statement} (${named(ingredients).es}${uncertain(certain).es})`,
    }),
  "statement-not-worked-out": ({ statement }) => excess(alike(statement)),
  "statement-differs": ({ stated, workedOut, ingredients, certain }) => ({
    en: `The maker states ${stated}; worked out it is ${workedOut} (${named(ingredients).en}${uncertain(certain).en}).`,
    de: `Der Hersteller gibt ${stated} an; errechnet ist ${workedOut} (${named(ingredients).de}${uncertain(certain).de}).`,
    fr: `Le fabricant déclare ${stated}\u202f; d’après le calcul, c’est ${workedOut} (${named(ingredients).fr}${uncertain(certain).fr}).`,
    es: `El fabricante declara ${stated}; según el cálculo es ${workedOut} (${named(ingredients).es}${uncertain(certain).es}).`,
  }),
  "statement-annulled": ({ statement }) => ({
    en: `${statement} was annulled and belongs on no label.`,
    de: `${statement} wurde für nichtig erklärt und gehört auf kein Etikett.`,
    fr: `${statement} a été annulé et n’a sa place sur aucune étiquette.`,
    es: `${statement} fue anulado y no tiene sitio en ninguna etiqueta.`,
  }),
  "not-of-the-frame": ({ statement, frame }) => ({
    en: `${statement} is no statement of ${frame}.`,
    de: `${statement} ist kein Hinweis nach ${frame}.`,
    fr: `${statement} n’est pas une mention de ${wordOf(FRAMES, frame, "fr")}.`,
    es: `${statement} no es una indicación de ${wordOf(FRAMES, frame, "es")}.`,
  }),
  "older-than-the-edition": ({ statement, edition, replacement }) => ({
    en: `${statement} is older than the edition (${edition}), which has ${replacement}.`,
    de: `${statement} ist älter als die Fassung (${edition}), in der ${replacement} steht.`,
    fr: `${statement} est plus ancien que l’édition (${edition}), qui porte ${replacement}.`,
    es: `${statement} es más antiguo que la edición (${edition}), que tiene ${replacement}.`,
  }),
  "label-older-than-the-edition": ({ date, asOf, edition }) => ({
    en: `The label is of ${en.dateWords(date)}, and the edition of ${en.dateWords(asOf)} (${edition}): check it against that.`,
    de: `Das Etikett ist vom ${de.dateWords(date)}, die Fassung vom ${de.dateWords(asOf)} (${edition}): Etikett daran prüfen.`,
    fr: `L’étiquette est du ${fr.dateWords(date)}, et l’édition du ${fr.dateWords(asOf)} (${edition})\u202f: la vérifier d’après celle-ci.`,
    es: `La etiqueta es del ${es.dateWords(date)}, y la edición del ${es.dateWords(asOf)} (${edition}): cotejarla con ella.`,
  }),
  "too-many-precautions": ({ count, atMost }) => ({
    en: `${count} precautionary statements, where a label has room for ${atMost}.`,
    de: `${count} Sicherheitshinweise; auf einem Etikett ist Platz für ${atMost}.`,
    fr: `${count} conseils de prudence, alors qu’une étiquette n’a de place que pour ${atMost}.`,
    es: `${count} consejos de prudencia, cuando en una etiqueta caben ${atMost}.`,
  }),
};
