import type { CARDS as ENGLISH_CARDS } from "../en/cards.ts";
import type { AnyWords } from "../any-words.ts";
import { shortWhite } from "./short-white.ts";

/** What a shelf card says beside what its sheet says, and the page of all cards. */
export const CARDS: AnyWords<typeof ENGLISH_CARDS> = {
  white: shortWhite,
  tint: (white, level) => `${white}, ${level}`,
  masstone: "Tono pleno",
  noColour: "aún no medido",
  chip: "aplicación pintada",
  noTint: "Qué hace en un blanco no está indicado.",
  extender: "Un médium de carga.",
  isWhite: (count) =>
    count === 1
      ? "Un blanco: se rebajó en él un color de la gama."
      : `Un blanco: se rebajaron en él ${count} colores de la gama.`,
  overleaf: "Indicaciones al dorso.",
  ragLead: "Los trapos con aceite pueden prenderse solos: véase al dorso.",
  ragShort: "Los trapos con aceite pueden prenderse solos.",
  basisWorkedOut: (frame, edition) => `Etiqueta según ${frame}: ${edition}.`,
  drawdown: "El color impreso solo se acerca: manda una aplicación pintada.",
  approximateNote: "Este se midió bajo otra luz y se adaptó.",
  lot: (number) => `Lote\u00a0${number}`,
  revision: (revision) => `Tarjeta\u00a0${revision}`,
  address: (address) => `Código QR de la dirección de la ficha, ${address}`,
  continued: (name) => `${name}, continuación`,
  document: {
    title: (workshop, size) => `${workshop}: tarjetas de estante, ${size}`,
    subject: (count) => `${count} tarjeta${count === 1 ? "" : "s"} de estante`,
    card: (name) => `Tarjeta de ${name}`,
  },
  page: {
    heading: "Tarjetas de estante",
    lead: (size, width, height) =>
      `Cada tarjeta tal como se imprime en el tamaño ${size}, ${width} \u00d7 ${height} mm: anverso y dorso. Una pantalla no muestra una pintura; una impresora tampoco del todo.`,
    sizes: "Tamaños",
    front: "anverso",
    back: "dorso",
    leaf: (leaf, side) => `hoja ${leaf}, ${side}`,
    withoutHeading: "Sin tarjeta",
    without: (markets) =>
      `solo puede venderse con base legal, o no puede venderse (${markets.join(", ")}): ni tarjeta, ni precio`,
    lacks: (lacks) =>
      lacks
        .map((lack) => (lack === "colour" ? "ningún color medido aún" : "sin precio"))
        .join(", "),
    notClassified:
      "aún no está clasificado, por falta de una ficha de datos de seguridad, así que no está a la venta: ni tarjeta, ni precio",
    pdf: (size) => `estas tarjetas para imprimir y cortar, ${size}`,
    link: "tarjetas de estante, cada una tal como se imprime",
  },
  reprint: {
    fresh: "una tarjeta nueva",
    gone: "ya no hay tarjeta: retírela del estante",
    changed: (what, before, now) => `${what}: «${before}» es ahora «${now}»`,
    added: (what, now) => `${what}: ahora «${now}»`,
    removed: (what, before) => `${what}: ya no «${before}»`,
  },
  states: {
    name: "Nombre",
    madeOf: "Hecho de",
    masstone: "Tono pleno",
    tints: "Rebajes",
    sentence: "En los blancos",
    lightfastness: "Solidez",
    opacity: "Opacidad",
    drying: "Seca",
    strength: "Fuerza",
    signalWord: "Palabra de advertencia",
    pictograms: "Pictogramas",
    statements: "Indicaciones",
    precautions: "Consejos de prudencia",
    unknown: "Contenido y datos de peligro",
    rags: "Trapos",
    sizes: "Tamaños y precios",
    poisonCentre: "Centro de toxicología",
    basis: "Fundamento de la etiqueta",
    address: "Dirección",
    lot: "Lote",
    imprint: "Datos del editor",
  },
};
