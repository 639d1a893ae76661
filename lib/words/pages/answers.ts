import { upperFirst } from "../letter-case.ts";
import { FORMS, SIGNAL_WORDS, wordOf } from "../closed-sets.ts";
import { de, en, es, fr } from "../phrases-in-each.ts";
import { alike, type Texts } from "../texts.ts";
import type { InEach } from "../in-each.ts";
import {
  COLOUR_INDEX_NAME,
  LIGHTFASTNESS,
  REPLY_TO_SEND,
  SIDE_BY_SIDE,
  SIGNAL_WORD,
  withinWhite,
} from "../shared-rows.ts";
import { given } from "../../quantities/given.ts";

/** "de 4 días", and "del de Lead White" of what begins with an article. */
function ofTheSpanish(limit: string): string {
  return limit.startsWith("el ") ? `del ${limit.slice(3)}` : `de ${limit}`;
}

/** What a plain part of a sheet is called, by its path; the first that fits. */
const FACTS: readonly (readonly [RegExp, InEach])[] = [
  [/^cautions\.signalWord$/, SIGNAL_WORD],
  [
    /^cautions\.(?:dryPigment\..*\.)?hazardStatements$/,
    {
      en: "Hazard statements",
      de: "Gefahrenhinweise",
      fr: "Mentions de danger",
      es: "Indicaciones de peligro",
    },
  ],
  [
    /^cautions\.supplemental$/,
    {
      en: "Supplemental statements",
      de: "Ergänzende Gefahrenhinweise",
      fr: "Informations supplémentaires",
      es: "Información suplementaria",
    },
  ],
  [
    /^cautions\.notForSale$/,
    {
      en: "Markets where it may not be sold for want of a legal basis",
      de: "Märkte, auf denen der Verkauf mangels Rechtsgrundlage nicht erlaubt ist",
      fr: "Marchés où la vente est exclue faute de base légale",
      es: "Mercados donde no puede venderse por falta de base legal",
    },
  ],
  [
    /^cautions\.unknown$/,
    {
      en: "Ingredients without hazard data",
      de: "Bestandteile ohne Gefahrendaten",
      fr: "Composants sans données de danger",
      es: "Componentes sin datos de peligro",
    },
  ],
  [
    /^cautions\.restrictions$/,
    {
      en: "Acts of its markets",
      de: "Vorschriften der Märkte",
      fr: "Règles de ses marchés",
      es: "Normas de sus mercados",
    },
  ],
  [
    /^cautions\.basis$/,
    {
      en: "Label elements",
      de: "Kennzeichnungselemente",
      fr: "Éléments d’étiquetage",
      es: "Elementos de la etiqueta",
    },
  ],
  [/^pigments$/, { en: "Pigments", de: "Pigmente", fr: "Pigments", es: "Pigmentos" }],
  [
    /^additions$/,
    {
      en: "Added to the oil",
      de: "Zusätze zum Öl",
      fr: "Ajouté à l’huile",
      es: "Añadido al aceite",
    },
  ],
  [
    /^permanence\.basis$/,
    {
      en: "Ground of the lightfastness",
      de: "Grundlage der Lichtechtheit",
      fr: "Fondement de la solidité à la lumière",
      es: "Fundamento de la solidez a la luz",
    },
  ],
  [/^dispersion$/, { en: "Ground by", de: "Anreiben", fr: "Broyé", es: "Molido" }],
  [/^family$/, { en: "Family", de: "Familie", fr: "Famille", es: "Familia" }],
  [/^vehicle\.oil$/, { en: "Made with", de: "Öl", fr: "Huile", es: "Aceite" }],
  [
    /^vehicle\.(?:name|slug)$/,
    { en: "Vehicle", de: "Bindemittel", fr: "Liant", es: "Aglutinante" },
  ],
  [/\.colourIndexName$/, COLOUR_INDEX_NAME],
  [/^drying\.layering$/, { en: "Layers", de: "Schichten", fr: "Couches", es: "Capas" }],
  [/^drying\.filmHealth$/, { en: "Film", de: "Film", fr: "Film", es: "Película" }],
  [
    /^drying\.grounds$/,
    { en: "Grounds", de: "Malgründe", fr: "Préparations", es: "Imprimaciones" },
  ],
  [
    /^permanence\.sensitivities$/,
    { en: "Other risks", de: "Andere Risiken", fr: "Autres risques", es: "Otros riesgos" },
  ],
  [
    /^permanence\.reasons$/,
    {
      en: "Grounds of the lightfastness",
      de: "Gründe der Lichtechtheit",
      fr: "Raisons de la solidité à la lumière",
      es: "Razones de la solidez a la luz",
    },
  ],
  [
    /^permanence\.weakest$/,
    {
      en: "Weakest in light",
      de: "Am wenigsten lichtecht",
      fr: "Le plus faible à la lumière",
      es: "El más débil a la luz",
    },
  ],
  [
    /^cautions\.notClassified$/,
    {
      en: "Contains, though not classified for it",
      de: "Enthalten, aber dafür nicht eingestuft",
      fr: "Contient, sans être classé pour cela",
      es: "Contiene, sin estar clasificado por ello",
    },
  ],
];

function factOf(path: string): InEach {
  const ofPigment = /^cautions\.dryPigment\.[^.]+\.(.+)$/.exec(path)?.[1];
  if (ofPigment !== undefined) {
    const fact = factOf(`cautions.${ofPigment}`);
    return {
      en: `${fact.en} of the dry pigment`,
      de: `${fact.de} des trockenen Pigments`,
      fr: `${fact.fr} du pigment sec`,
      es: `${fact.es} del pigmento seco`,
    };
  }
  const named = FACTS.find(([form]) => form.test(path))?.[1];
  const last = path.split(".").at(-1) ?? path;
  return (
    named ??
    alike(upperFirst(last).replace(/(?<=[a-z])[A-Z]/g, (letter) => ` ${letter.toLowerCase()}`))
  );
}

/** Headings, captions and sentences of answers, their claims and replies. */
export const ANSWERS = {
  heading: { en: "Questions", de: "Fragen", fr: "Questions", es: "Preguntas" },
  lead: {
    en: "What painters ask us: the answer first, then why.",
    de: "Was Malerinnen und Maler uns fragen: erst die Antwort, dann die Begründung.",
    fr: "Ce que les peintres nous demandent\u202f: la réponse d’abord, puis le pourquoi.",
    es: "Lo que nos preguntan los pintores: primero la respuesta, luego el porqué.",
  },
  themes: {
    whites: {
      en: "Whites and mixing",
      de: "Weiß und Mischen",
      fr: "Blancs et mélanges",
      es: "Blancos y mezclas",
    },
    choice: {
      en: "Choosing a colour",
      de: "Eine Farbe wählen",
      fr: "Choisir une couleur",
      es: "Elegir un color",
    },
    drying: {
      en: "Drying and layers",
      de: "Trocknung und Schichten",
      fr: "Séchage et couches",
      es: "Secado y capas",
    },
    lasting: {
      en: "Will it last",
      de: "Beständigkeit",
      fr: "Sa tenue dans le temps",
      es: "¿Durará?",
    },
    tube: {
      en: "What is in the tube",
      de: "Was in der Tube ist",
      fr: "Ce qu’il y a dans le tube",
      es: "Qué hay en el tubo",
    },
    safety: {
      en: "Safety and law",
      de: "Sicherheit und Recht",
      fr: "Sécurité et droit",
      es: "Seguridad y ley",
    },
    others: { en: "Others", de: "Weitere", fr: "Autres", es: "Otras" },
  },
  none: {
    en: "No question has been answered yet.",
    de: "Noch ist keine Frage beantwortet.",
    fr: "Aucune question n’a encore de réponse.",
    es: "Aún no se ha respondido ninguna pregunta.",
  },
  all: {
    en: "All answers",
    de: "Alle Antworten",
    fr: "Toutes les réponses",
    es: "Todas las respuestas",
  },
  description: (summary: string) =>
    alike(summary.length <= 300 ? summary : `${summary.slice(0, 297).replace(/\s+\S*$/, "")}...`),
  claims: {
    checked: (count: number, date: string | undefined) => ({
      en: `${count} ${count === 1 ? "statement" : "statements"} checked against our records${date === undefined ? "" : ` to ${date}`}`,
      de: `${count} ${count === 1 ? "Aussage" : "Aussagen"} an unseren Aufzeichnungen${date === undefined ? "" : ` bis ${date}`} geprüft`,
      fr: `${count} ${count === 1 ? "affirmation vérifiée" : "affirmations vérifiées"} d’après nos relevés${date === undefined ? "" : ` jusqu’au ${date}`}`,
      es: `${count} ${count === 1 ? "afirmación cotejada" : "afirmaciones cotejadas"} con nuestros registros${date === undefined ? "" : ` hasta el ${date}`}`,
    }),
    caption: {
      en: "What the answer says, and what our records say today",
      de: "Was die Antwort sagt und was unsere Aufzeichnungen heute sagen",
      fr: "Ce que dit la réponse, et ce que disent nos relevés aujourd’hui",
      es: "Lo que dice la respuesta, y lo que dicen hoy nuestros registros",
    },
    columns: {
      statement: { en: "Statement", de: "Aussage", fr: "Affirmation", es: "Afirmación" },
      today: { en: "Today", de: "Heute", fr: "Aujourd’hui", es: "Hoy" },
      records: {
        en: "Records to",
        de: "Aufzeichnungen bis",
        fr: "Relevés jusqu’au",
        es: "Registros hasta",
      },
    },
    undated: { en: "undated", de: "ohne Datum", fr: "sans date", es: "sin fecha" },
    broken: {
      en: "does not hold today",
      de: "gilt heute nicht",
      fr: "ne tient pas aujourd’hui",
      es: "hoy no se cumple",
    },
    every: (but: readonly string[]) => ({
      en: but.length === 0 ? "All colours" : `All colours but ${en.listed(but)}`,
      de: but.length === 0 ? "Alle Farben" : `Alle Farben außer ${de.listed(but)}`,
      fr: but.length === 0 ? "Toutes les couleurs" : `Toutes les couleurs sauf ${fr.listed(but)}`,
      es: but.length === 0 ? "Todos los colores" : `Todos los colores salvo ${es.listed(but)}`,
    }),
    about: (colour: string, statement: string) => ({
      en: `${colour}: ${statement}`,
      de: `${colour}: ${statement}`,
      fr: `${colour}\u202f: ${statement}`,
      es: `${colour}: ${statement}`,
    }),
    below: (name: string, limit: string) => ({
      en: `${name} is below ${limit}`,
      de: `${name} liegt unter ${limit}`,
      fr: `${name}\u202f: au-dessous de ${limit}`,
      es: `${name}: por debajo ${ofTheSpanish(limit)}`,
    }),
    above: (name: string, limit: string) => ({
      en: `${name} is above ${limit}`,
      de: `${name} liegt über ${limit}`,
      fr: `${name}\u202f: au-dessus de ${limit}`,
      es: `${name}: por encima ${ofTheSpanish(limit)}`,
    }),
    belowBy: (name: string, limit: string, by: string) => ({
      en: `${name} is at least ${by} below ${limit}`,
      de: `${name} liegt mindestens ${by} unter ${limit}`,
      fr: `${name}\u202f: au-dessous de ${limit}, de ${by} au moins`,
      es: `${name}: por debajo ${ofTheSpanish(limit)}, en ${by} al menos`,
    }),
    aboveBy: (name: string, limit: string, by: string) => ({
      en: `${name} is at least ${by} above ${limit}`,
      de: `${name} liegt mindestens ${by} über ${limit}`,
      fr: `${name}\u202f: au-dessus de ${limit}, de ${by} au moins`,
      es: `${name}: por encima ${ofTheSpanish(limit)}, en ${by} al menos`,
    }),
    other: (colour: string, name: string) => ({
      en: `that of ${colour}${name === "" ? "" : `, ${name}`}`,
      de: `dem Wert von ${colour}${name === "" ? "" : `, ${name}`}`,
      fr: `celui ${fr.of(colour)}${name === "" ? "" : `, ${name}`}`,
      es: `el de ${colour}${name === "" ? "" : `, ${name}`}`,
    }),
    between: (name: string, from: string, to: string) => ({
      en: `${name} lies between ${from} and ${to}`,
      de: `${name} liegt zwischen ${from} und ${to}`,
      fr: `${name}\u202f: entre ${from} et ${to}`,
      es: `${name}: entre ${from} y ${to}`,
    }),
    is: (name: string, value: string) => ({
      en: `${name} is ${value}`,
      de: `${name} ist ${value}`,
      fr: `${name}\u202f: ${value}`,
      es: `${name}: ${value}`,
    }),
    family: (name: string) => ({
      en: `the ${name.toLowerCase()}`,
      de: `der Familie ${name}`,
      fr: `les ${name.toLowerCase()}`,
      es: `${/^Tierras/.test(name) ? "las" : "los"} ${name.toLowerCase()}`,
    }),
    lowest: (name: string, rivals: string) => ({
      en: `${name} is the lowest of ${rivals}`,
      de: `${name} ist am niedrigsten im Vergleich mit ${rivals}`,
      fr: `${name}\u202f: la plus basse valeur parmi ${rivals}`,
      es: `${name}: el valor más bajo entre ${rivals}`,
    }),
    highest: (name: string, rivals: string) => ({
      en: `${name} is the highest of ${rivals}`,
      de: `${name} ist am höchsten im Vergleich mit ${rivals}`,
      fr: `${name}\u202f: la plus haute valeur parmi ${rivals}`,
      es: `${name}: el valor más alto entre ${rivals}`,
    }),
    by: (statement: string, by: string) => ({
      en: `${statement}, by ${by} at least`,
      de: `${statement}, um mindestens ${by}`,
      fr: `${statement}, de ${by} au moins`,
      es: `${statement}, en ${by} al menos`,
    }),
    includes: (name: string, value: string) => ({
      en: `${name}: ${value} is among them`,
      de: `${name}: ${value} ist dabei`,
      fr: `${name}\u202f: ${value} en fait partie`,
      es: `${name}: ${value} está entre ellos`,
    }),
    lacks: (name: string, value: string) => ({
      en: `${name}: ${value} is not among them`,
      de: `${name}: ${value} ist nicht dabei`,
      fr: `${name}\u202f: ${value} n’en fait pas partie`,
      es: `${name}: ${value} no está entre ellos`,
    }),
    among: { en: "among them", de: "dabei", fr: "en fait partie", es: "está entre ellos" },
    notAmong: {
      en: "not among them",
      de: "nicht dabei",
      fr: "n’en fait pas partie",
      es: "no está entre ellos",
    },
    count: (name: string, count: number) => ({
      en: `${name}: ${count === 0 ? "none" : `${count} of them`}`,
      de: `${name}: ${count === 0 ? "keine" : `${count} davon`}`,
      fr: `${name}\u202f: ${count === 0 ? "aucun" : `${count} en tout`}`,
      es: `${name}: ${count === 0 ? "ninguno" : `${count} en total`}`,
    }),
    standing: (statement: string, standing: string) => ({
      en: `${statement} (${standing} throughout)`,
      de: `${statement} (durchweg ${standing})`,
      fr: `${statement} (toujours ${standing})`,
      es: `${statement} (siempre ${standing})`,
    }),
    none: { en: "none", de: "keine", fr: "aucun", es: "ninguno" },
    nothing: { en: "none", de: "nichts", fr: "aucun", es: "ninguno" },
    yes: { en: "yes", de: "ja", fr: "oui", es: "sí" },
    no: { en: "no", de: "nein", fr: "non", es: "no" },
  },
  place: {
    inWhite: withinWhite,
    atL: (level: string) => ({
      en: `at L* ${level}`,
      de: `bei L* ${level}`,
      fr: `à L* ${level}`,
      es: `a L* ${level}`,
    }),
    at: (ratio: string) => ({
      en: `at ${ratio}`,
      de: `bei ${ratio}`,
      fr: `à ${ratio}`,
      es: `a ${ratio}`,
    }),
    masstone: {
      en: "of the masstone",
      de: "des Volltons",
      fr: "du ton plein",
      es: "del tono pleno",
    },
    under: (viewing: string) => ({
      en: `under ${viewing}`,
      de: `unter ${viewing}`,
      fr: `sous ${viewing}`,
      es: `bajo ${viewing}`,
    }),
    of: (name: string) => ({
      en: `of ${name}`,
      de: `von ${name}`,
      fr: fr.of(name),
      es: `de ${name}`,
    }),
    form: (form: string) => ({
      en: `as a ${form}`,
      de: `als ${wordOf(FORMS, form, "de")}`,
      fr: `en ${wordOf(FORMS, form, "fr")}`,
      es: `en ${wordOf(FORMS, form, "es")}`,
    }),
  },
  fact: factOf,
  table: {
    colour: { en: "Colour", de: "Farbe", fr: "Couleur", es: "Color" },
    caption: SIDE_BY_SIDE,
    none: {
      en: "not on this sheet",
      de: "nicht auf diesem Blatt",
      fr: "absent de cette fiche",
      es: "no está en esta ficha",
    },
  },
  picture: {
    swatchesTitle: (level: string, white: string) => ({
      en: `Mixed with ${white} to one lightness, L*\u00a0${level}`,
      de: `Mit ${white} auf dieselbe Helligkeit gemischt, L*\u00a0${level}`,
      fr: `Mélangées à ${white} jusqu’à une même clarté, L*\u00a0${level}`,
      es: `Mezclados con ${white} hasta una misma claridad, L*\u00a0${level}`,
    }),
    swatchesAxis: (level: string, white: string) => ({
      en: `With ${white}, at L*\u00a0${level}`,
      de: `Mit ${white}, bei L*\u00a0${level}`,
      fr: `Avec ${white}, à L*\u00a0${level}`,
      es: `Con ${white}, a L*\u00a0${level}`,
    }),
    swatchDescription: (name: string, a: string, b: string) => alike(`${name}, a* ${a}, b* ${b}`),
    trailTitle: (white: string) => ({
      en: `Where ${white} takes each of them: a* and b* of the mixtures`,
      de: `Wohin ${white} jede führt: a* und b* der Mischungen`,
      fr: `Où ${white} mène chacune\u202f: a* et b* des mélanges`,
      es: `Adónde lleva ${white} a cada uno: a* y b* de las mezclas`,
    }),
    ladderTitle: (name: string, white: string) => ({
      en: `${name} mixed with ${white}`,
      de: `${name} mit ${white} gemischt`,
      fr: `${name} avec ${white}`,
      es: `${name} mezclado con ${white}`,
    }),
  },
  answered: (date: string | undefined, newest: string | undefined) => ({
    en: given([
      date !== undefined && `Answered on ${date}.`,
      newest !== undefined && `By our records to ${newest}.`,
    ]).join(" "),
    de: given([
      date !== undefined && `Beantwortet am ${date}.`,
      newest !== undefined && `Nach unseren Aufzeichnungen bis ${newest}.`,
    ]).join(" "),
    fr: given([
      date !== undefined && `Répondu le ${date}.`,
      newest !== undefined && `D’après nos relevés jusqu’au ${newest}.`,
    ]).join(" "),
    es: given([
      date !== undefined && `Respondida el ${date}.`,
      newest !== undefined && `Según nuestros registros hasta el ${newest}.`,
    ]).join(" "),
  }),
  coloursHeading: {
    en: "Colours that it names",
    de: "Farben, die sie nennt",
    fr: "Couleurs qu’elle nomme",
    es: "Colores que nombra",
  },

  /** Under a tile, of its lower part. */
  tintIn: (white: string) => ({
    en: `below: a tint with ${en.namesWithin([white])}`,
    de: `unten: eine Aufhellung mit ${de.namesWithin([white])}`,
    fr: `en bas\u202f: un dégradé avec ${fr.namesWithin([white])}`,
    es: `abajo: un rebaje con ${es.namesWithin([white])}`,
  }),
  coloursNote: (whites: readonly string[], count: number) => ({
    en: `${count === 1 ? "Alone" : "Each alone"}, then as a middle tone with ${en.namesWithin(whites)}.`,
    de: `${count === 1 ? "Allein" : "Jede allein"}, dann als Mittelton mit ${de.namesWithin(whites)}.`,
    fr: `${count === 1 ? "Pure" : "Chacune pure"}, puis en ton moyen avec ${fr.namesWithin(whites)}.`,
    es: `${count === 1 ? "Puro" : "Cada uno puro"}, y luego en tono medio con ${es.namesWithin(whites)}.`,
  }),
  reply: {
    heading: REPLY_TO_SEND,
    lead: {
      en: "Plain text, ready to paste into a letter. The figures are those of the sheets.",
      de: "Reiner Text, fertig zum Einfügen in einen Brief. Die Werte stammen von den Blättern.",
      fr: "Texte simple, prêt à coller dans une lettre. Les chiffres sont ceux des fiches.",
      es: "Texto sencillo, listo para pegar en una carta. Las cifras son las de las fichas.",
    },
    text: { en: "Reply", de: "Antwort", fr: "Réponse", es: "Respuesta" },
    copy: {
      en: "Copy the reply",
      de: "Antwort kopieren",
      fr: "Copier la réponse",
      es: "Copiar la respuesta",
    },
    copied: { en: "Copied.", de: "Kopiert.", fr: "Copié.", es: "Copiado." },
    notCopied: {
      en: "It could not be copied: select the text and copy it by hand.",
      de: "Das Kopieren ist nicht gelungen: Markieren Sie den Text und kopieren Sie ihn von Hand.",
      fr: "La copie a échoué\u202f: sélectionner le texte et le copier à la main.",
      es: "No se pudo copiar: seleccione el texto y cópielo a mano.",
    },
    question: {
      en: "What was asked",
      de: "Was gefragt wurde",
      fr: "Ce qui a été demandé",
      es: "Lo que se preguntó",
    },
    colours: { en: "Colours", de: "Farben", fr: "Couleurs", es: "Colores" },
    figures: { en: "Figures", de: "Werte", fr: "Chiffres", es: "Cifras" },
    thanks: {
      en: "Thank you for asking.",
      de: "Danke für Ihre Frage.",
      fr: "Merci de votre question.",
      es: "Gracias por su pregunta.",
    },
    asked: {
      en: "You asked:",
      de: "Sie fragten:",
      fr: "Vous avez demandé\u202f:",
      es: "Usted preguntó:",
    },
    sheetQuestion: (name: string) => ({
      en: `What should I know of ${name}?`,
      de: `Was sollte ich über ${name} wissen?`,
      fr: `Que faut-il savoir de la couleur «\u202f${name}\u202f»\u202f?`,
      es: `¿Qué conviene saber de ${name}?`,
    }),
    line: (name: string, value: string, standing: string) => ({
      en: `${name}: ${value} (${standing})`,
      de: `${name}: ${value} (${standing})`,
      fr: `${name}\u202f: ${value} (${standing})`,
      es: `${name}: ${value} (${standing})`,
    }),
    notStated: (name: string) => ({
      en: `${name}: not stated`,
      de: `${name}: keine Angabe`,
      fr: `${name}\u202f: non indiqué`,
      es: `${name}: no indicado`,
    }),
    lightfastness: LIGHTFASTNESS,
    caution: (name: string, signalWord: string, statements: readonly string[]) => ({
      en: `Label of ${name}: ${[signalWord, ...statements].filter((part) => part !== "").join(" ")}`,
      de: `Etikett von ${name}: ${[wordOf(SIGNAL_WORDS, signalWord, "de"), ...statements].filter((part) => part !== "").join(" ")}`,
      fr: `Étiquette (${name})\u202f: ${[signalWord, ...statements].filter((part) => part !== "").join(" ")}`,
      es: `Etiqueta de ${name}: ${[signalWord, ...statements].filter((part) => part !== "").join(" ")}`,
    }),
    cautionLine: {
      en: "The label, the safety data sheet and your local rules come first.",
      de: "Das Etikett, das Sicherheitsdatenblatt und Ihre örtlichen Vorschriften gehen vor.",
      fr: "L’étiquette, la fiche de données de sécurité et vos règles locales priment.",
      es: "La etiqueta, la ficha de datos de seguridad y sus normas locales tienen prioridad.",
    },
    more: (address: string) => ({
      en: `In full, with how each figure is known: ${address}`,
      de: `Ausführlich, mit der Herkunft jedes Werts: ${address}`,
      fr: `En entier, avec l’origine de chaque chiffre\u202f: ${address}`,
      es: `Completo, con el origen de cada cifra: ${address}`,
    }),
    closing: {
      en: "With kind regards,",
      de: "Mit freundlichen Grüßen",
      fr: "Bien à vous,",
      es: "Un cordial saludo,",
    },
    invented: {
      en: "(A demonstration: workshop, colours and readings are invented.)",
      de: "(Eine Demonstration: Werkstatt, Farben und Messungen sind erfunden.)",
      fr: "(Démonstration\u202f: atelier, couleurs et mesures sont inventés.)",
      es: "(Demostración: el taller, los colores y las mediciones son inventados.)",
    },
  },
} satisfies Texts;
