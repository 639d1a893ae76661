import { listed, NUMBERS } from "./phrases.ts";
import { NEXT_STEPS as ENGLISH_STEPS } from "../en/next-steps.ts";
import type { AnyWords } from "../any-words.ts";

/** What the page What to do next, and its command, say. */
export const NEXT_STEPS: AnyWords<typeof ENGLISH_STEPS> = {
  heading: "Qué hacer ahora",
  lead: "Cada línea se ha probado: un valor plausible entró en los registros, las fichas se calcularon de nuevo, y se contó lo que ganaban. Primero viene la mayor ganancia por hora de trabajo; las horas son de manos, no de espera, y son estimación nuestra.",
  steps: "Lo que más aclara",
  stepsCaption: "Qué averiguar, qué ganan las fichas, y el trabajo que cuesta",
  columns: {
    what: "Qué",
    gain: "Gana cada una",
    hours: "Trabajo",
    record: "Dónde escribirlo",
  },
  none: "Nada que un taller pueda averiguar aclararía o afirmaría una línea.",
  due: "Lo que vence",
  dueCaption: "Lo que el tiempo ha hecho necesario",
  dueColumns: { what: "Qué", where: "Registro" },
  nothingDue: "Nada vence.",
  open: "Lo que queda abierto",
  openCaption: "Lo que aún falta a etiquetas y lotes, sin plazo",
  things: {
    densityGPerCm3: "Densidad",
    oilAbsorptionGPer100g: "Absorción de aceite por amasado",
    bulkDensities: "Una medida de polvo pesada, sin compactar y compactada",
    lightfastness: "La solidez a la luz que declara el proveedor",
    hazards: "La ficha de datos de seguridad del proveedor",
    parts: "Las partes de sus pigmentos, del libro de fabricación",
    oilIndexGPer100g: "El aceite pesado en la próxima fabricación",
    masstone: "Una aplicación del tono pleno, medida",
    tints: "Tres rebajes en un blanco, medidos",
    films: "Películas de espesor conocido sobre negro y blanco, medidas",
    dryingTrials: "Un ensayo de secado",
    exposures: "Una exposición bajo vidrio, tono pleno y rebaje",
    gloss60: "El brillo de una aplicación a 60\u00b0",
    finenessOfGrindUm: "La finura en la galga",
    bodyAndSeparation: "El cuerpo y la separación de aceite, observados",
  },
  of: (thing, names) =>
    `${thing}: ${listed(names.length > 4 ? [...names.slice(0, 4), `${names.length - 4} más`] : names)}`,
  triedOn: (tried, all) =>
    `contado en ${tried} de los ${all} colores, y supuesto igual en los demás`,
  gain: (cleared, firmer, added, claims) =>
    [
      ...(cleared === 0
        ? []
        : [`${lines(cleared)} que ya no ${cleared === 1 ? "es" : "son"} «no indicado»`]),
      ...(firmer === 0
        ? []
        : [`${lines(firmer)} que ya no ${firmer === 1 ? "es" : "son"} una estimación`]),
      ...(added === 0 ? [] : [`${lines(added)} más`]),
      ...(claims === 0
        ? []
        : [`${claims} ${claims === 1 ? "afirmación" : "afirmaciones"} de respuestas`]),
    ].join(", "),
  mask: "con mascarilla P3 y la extracción en marcha",
  maskFor: (names) => `con mascarilla P3 y la extracción en marcha para ${names}`,
  hours: (hours) =>
    hours < 1 ? `${Math.round(60 * hours)}\u00a0min` : `${NUMBERS.plain(hours)}\u00a0h`,
  file: ENGLISH_STEPS.file,
  reprintsUnknown:
    "Qué tarjetas de estante hay que volver a imprimir se sabe en cuanto cards las ha impreso: lo que decían entonces queda junto a los registros, en printed-cards.json.",
  dueLines: {
    reprint: (changes) => `Tarjeta de estante que hay que volver a imprimir: ${changes.join("; ")}`,
    "old-paper": (name, date) =>
      `${name}: sus peligros son del ${date}, hace más de tres años; pida al proveedor la ficha de datos de seguridad actual`,
    trial: (name, date) => `${name}: hay que mirarlo el ${date}`,
    "exposure-result": (name, date, deltaEab, category) =>
      `${name}: terminado el ${date} con \u0394E*ab ${deltaEab} (categoría\u00a0${category}); el registro del color aún no lo tiene: escríbalo en exposures`,
    "drying-result": (name, date, from, to) =>
      `${name}: terminado el ${date}, seco al tacto entre el día ${from} y el día ${to}; el registro del color aún no lo tiene: escríbalo en dryingTrials`,
    "second-lot": (lots, colours) =>
      lots === 0
        ? `De estos aún no hay ningún lote registrado, así que nada dice cómo difieren sus lotes: ${colours}`
        : `De estos hay un solo lote registrado; un segundo diría cómo difieren sus lotes: ${colours}`,
    "lot-planned": (number) =>
      `El lote ${number} está previsto y sin hacer: su hoja de fabricación está lista`,
    "lot-unread": (number) =>
      `El lote ${number} no se ha comparado aún con nada: extiéndalo y mídalo`,
    "lot-unjudged": (number) =>
      `El lote ${number} se midió, pero no como su patrón: su página dice qué rebajar o medir otra vez`,
    "lot-recalled": (number) => `El lote ${number} está retirado: recupere lo que salió de él`,
    "lot-conceded": (number) =>
      `El lote ${number} se vende por concesión: que el próximo sea conforme`,
    "lot-failed": (number) =>
      `El lote ${number} no pasa frente a su patrón: su página dice por qué y qué hacer`,
    "undated-paper": (name) =>
      `${name}: sus peligros no llevan fecha; anote de qué día es el documento del proveedor`,
  },
};

function lines(count: number): string {
  return `${count} ${count === 1 ? "línea" : "líneas"}`;
}
