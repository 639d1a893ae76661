import type { ANSWER_PAGES as ENGLISH_PAGES } from "../en/answer-pages.ts";
import type { AnyWords } from "../any-words.ts";
import { upperFirst } from "../letter-case.ts";
import { FORMS, wordOf } from "./closed-words.ts";
import { listed, namesWithin } from "./phrases.ts";

/** What a plain part of a sheet is called, by its path; the first that fits. */
const FACTS: readonly (readonly [RegExp, string])[] = [
  [/^cautions\.signalWord$/, "Palabra de advertencia"],
  [/^cautions\.(?:dryPigment\..*\.)?hazardStatements$/, "Indicaciones de peligro"],
  [/^cautions\.supplemental$/, "Información suplementaria"],
  [/^cautions\.notForSale$/, "Mercados donde no puede venderse por falta de base legal"],
  [/^cautions\.unknown$/, "Componentes sin datos de peligro"],
  [/^cautions\.restrictions$/, "Normas de sus mercados"],
  [/^cautions\.basis$/, "Elementos de la etiqueta"],
  [/^pigments$/, "Pigmentos"],
  [/^additions$/, "Añadido al aceite"],
  [/^permanence\.basis$/, "Fundamento de la solidez a la luz"],
  [/^dispersion$/, "Molido"],
  [/^family$/, "Familia"],
  [/^vehicle\.oil$/, "Aceite"],
  [/^vehicle\.(?:name|slug)$/, "Aglutinante"],
  [/\.colourIndexName$/, "Nombre del Colour Index"],
  [/^drying\.layering$/, "Capas"],
  [/^drying\.filmHealth$/, "Película"],
  [/^drying\.grounds$/, "Imprimaciones"],
  [/^permanence\.sensitivities$/, "Otros riesgos"],
  [/^permanence\.reasons$/, "Razones de la solidez"],
  [/^permanence\.weakest$/, "El más débil a la luz"],
  [/^cautions\.notClassified$/, "Contenido, sin clasificación por ello"],
];

/** Headings, captions and sentences of answers, their claims and replies. */
export const ANSWER_PAGES: AnyWords<typeof ENGLISH_PAGES> = {
  heading: "Preguntas",
  lead: "Lo que nos preguntan los pintores: primero la respuesta, luego el porqué.",
  themes: {
    whites: "Blancos y mezclas",
    choice: "Elegir un color",
    drying: "Secado y capas",
    lasting: "¿Durará?",
    tube: "Qué hay en el tubo",
    safety: "Seguridad y ley",
    others: "Otras",
  },
  none: "Aún no se ha respondido ninguna pregunta.",
  all: "Todas las respuestas",
  description: (summary) =>
    summary.length <= 300 ? summary : `${summary.slice(0, 297).replace(/\s+\S*$/, "")}...`,
  claims: {
    checked: (count, date) =>
      `${count} ${count === 1 ? "afirmación cotejada" : "afirmaciones cotejadas"} con nuestros registros${date === undefined ? "" : ` hasta el ${date}`}`,
    caption: "Lo que dice la respuesta, y lo que dicen hoy nuestros registros",
    columns: { statement: "Afirmación", today: "Hoy", records: "Registros hasta" },
    undated: "sin fecha",
    broken: "hoy no se cumple",
    every: (but) =>
      but.length === 0 ? "Todos los colores" : `Todos los colores salvo ${listed(but)}`,
    about: (colour, statement) => `${colour}: ${statement}`,
    below: (name, limit) => `${name}: por debajo ${ofThe(limit)}`,
    above: (name, limit) => `${name}: por encima ${ofThe(limit)}`,
    belowBy: (name, limit, by) => `${name}: por debajo ${ofThe(limit)}, en ${by} al menos`,
    aboveBy: (name, limit, by) => `${name}: por encima ${ofThe(limit)}, en ${by} al menos`,
    other: (colour, name) => `el de ${colour}${name === "" ? "" : `, ${name}`}`,
    between: (name, from, to) => `${name}: entre ${from} y ${to}`,
    is: (name, value) => `${name}: ${value}`,
    family: (name) => `${/^Tierras/.test(name) ? "las" : "los"} ${name.toLowerCase()}`,
    lowest: (name, rivals) => `${name}: el valor más bajo entre ${rivals}`,
    highest: (name, rivals) => `${name}: el valor más alto entre ${rivals}`,
    by: (statement, by) => `${statement}, en ${by} al menos`,
    includes: (name, value) => `${name}: ${value} está entre ellos`,
    lacks: (name, value) => `${name}: ${value} no está entre ellos`,
    among: "está entre ellos",
    notAmong: "no está entre ellos",
    count: (name, count) => `${name}: ${count === 0 ? "ninguno" : `${count} en total`}`,
    standing: (statement, standing) => `${statement} (siempre ${standing})`,
    none: "ninguno",
    nothing: "ninguno",
    yes: "sí",
    no: "no",
  },
  place: {
    inWhite: (white) => `en ${white}`,
    atL: (level) => `a L* ${level}`,
    at: (ratio) => `a ${ratio}`,
    masstone: "del tono pleno",
    under: (viewing) => `bajo ${viewing}`,
    of: (name) => `de ${name}`,
    form: (form) => `en ${wordOf(FORMS, form)}`,
  },
  facts: FACTS,
  fact: (path) => {
    const ofPigment = /^cautions\.dryPigment\.[^.]+\.(.+)$/.exec(path)?.[1];
    if (ofPigment !== undefined)
      return `${ANSWER_PAGES.fact(`cautions.${ofPigment}`)} del pigmento seco`;
    const named = FACTS.find(([form]) => form.test(path))?.[1];
    const last = path.split(".").at(-1) ?? path;
    return (
      named ?? upperFirst(last).replace(/(?<=[a-z])[A-Z]/g, (letter) => ` ${letter.toLowerCase()}`)
    );
  },
  table: { colour: "Color", caption: "Colores lado a lado", none: "no está en esta ficha" },
  picture: {
    swatchesTitle: (level, white) =>
      `Mezclados con ${white} hasta una misma claridad, L*\u00a0${level}`,
    swatchesAxis: (level, white) => `Con ${white}, a L*\u00a0${level}`,
    swatchDescription: (name, a, b) => `${name}, a* ${a}, b* ${b}`,
    trailTitle: (white) => `Adónde lleva ${white} a cada uno: a* y b* de las mezclas`,
    ladderTitle: (name, white) => `${name} mezclado con ${white}`,
  },
  answered: (date, newest) =>
    [
      ...(date === undefined ? [] : [`Respondida el ${date}.`]),
      ...(newest === undefined ? [] : [`Según nuestros registros hasta el ${newest}.`]),
    ].join(" "),
  coloursHeading: "Colores que nombra",
  /** Under a tile, of its lower part. */
  tintIn: (white) => `abajo: un tono rebajado con ${namesWithin([white])}`,
  coloursNote: (whites) => `Cada uno puro, y luego en tono medio con ${namesWithin(whites)}.`,
  reply: {
    heading: "Una respuesta para enviar",
    lead: "Texto sencillo, listo para pegar en una carta. Las cifras son las de las fichas.",
    text: "Respuesta",
    copy: "Copiar la respuesta",
    copied: "Copiado.",
    notCopied: "No se pudo copiar: seleccione el texto y cópielo a mano.",
    question: "Lo que se preguntó",
    colours: "Colores",
    figures: "Cifras",
    thanks: "Gracias por su pregunta.",
    asked: "Usted preguntó:",
    sheetQuestion: (name) => `¿Qué conviene saber de ${name}?`,
    line: (name, value, standing) => `${name}: ${value} (${standing})`,
    notStated: (name) => `${name}: no indicado`,
    lightfastness: "Solidez a la luz",
    caution: (name, signalWord, statements) =>
      `Etiqueta de ${name}: ${[signalWord, ...statements].filter((part) => part !== "").join(" ")}`,
    cautionLine:
      "La etiqueta, la ficha de datos de seguridad y sus normas locales tienen prioridad.",
    more: (address) => `Completo, con el origen de cada cifra: ${address}`,
    closing: "Un cordial saludo,",
    invented: "(Demostración: el taller, los colores y las mediciones son inventados.)",
  },
};

/** "de 4 días", and "del de Lead White" of what begins with an article. */
function ofThe(limit: string): string {
  return limit.startsWith("el ") ? `del ${limit.slice(3)}` : `de ${limit}`;
}
