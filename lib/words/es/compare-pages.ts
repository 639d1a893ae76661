import type { COMPARE_PAGES as ENGLISH_PAGES } from "../en/compare-pages.ts";
import type { AnyWords } from "../any-words.ts";
import { listed, within } from "./phrases.ts";

/** The pages that set colours side by side; the page's script carries these words too, so nothing else is imported here. */
export const COMPARE_PAGES: AnyWords<typeof ENGLISH_PAGES> = {
  heading: "Colores lado a lado",
  lead: "De dos a cuatro colores, puros y en cada blanco; luego qué difiere, qué está demasiado cerca para decidir, y qué es igual.",
  description: (names) =>
    `${listed(names)} lado a lado: en los blancos, fuerza, aceite, secado, permanencia, precauciones y pigmentos.`,
  pairHeading: (names) => listed(names),
  panelTitle: (names) => `Lado a lado: ${listed(names)}`,
  missing: "no indicado",
  swatches: {
    alone: "Puro",
    notRead: "no medido",
    notTried: "no probado",
    notReached: "no alcanzado",
    differs: undefined,
    "not told": undefined,
    same: "Lo mismo.",
    "not stated": undefined,
  },
  summary: (differs, notTold) => {
    const different = inShort(differs);
    const close = inShort(notTold).filter((name) => !different.includes(name));
    return [
      different.length === 0
        ? "Nada de lo que sabemos los distingue."
        : `Difieren en ${listed(different)}.`,
      close.length === 0 ? "" : `Demasiado cerca para decidir: ${listed(close)}.`,
    ]
      .join(" ")
      .trim();
  },
  parts: {
    differs: { id: "differs", heading: "Qué difiere" },
    "not told": { id: "not-told", heading: "Demasiado cerca para decidir" },
    same: { id: "same", heading: "Qué es igual" },
    "not stated": { id: "not-stated", heading: "No se sabe de uno de ellos" },
    figures: { id: "in-figures", heading: "Las muestras en cifras" },
  },
  foldedFigures: "Notaciones Munsell, a* y b*, partes de blanco",
  folded: (heads) => heads.map((head, i) => (i === 0 ? head : lowered(head))).join(", "),
  unstated: (heads) => `No se sabe de ninguno: ${listed(heads.map(lowered))}.`,
  property: "Propiedad",
  finding: "Qué quiere decir",
  rows: {
    masstone: { head: "Puro", unit: "Munsell" },
    strength: { head: "Fuerza" },
    whitens: { head: "Blanquea" },
    opacity: { head: "Opacidad" },
    oilByMass: { head: "Aceite", unit: "por 100 g de pigmento" },
    oilByVolume: { head: "Aceite en volumen", unit: "por 100 cm\u00b3 de pigmento" },
    finish: { head: "Acabado" },
    drying: { head: "Seca", unit: "al tacto" },
    lightfastness: { head: "Solidez" },
    label: { head: "Advertencia" },
    sale: { head: "Límites a la venta" },
    pigments: { head: "Pigmentos" },
    vehicle: { head: "Aglutinante" },
    dispersion: { head: "Molienda" },
  },
  white: {
    head: (white) => `En ${within(white)}`,
    unit: (level) => `a L*\u00a0${level}`,
  },
  partsOfWhite: {
    head: "Blanco para un tono medio",
    unit: (white) => `partes de ${within(white)} por 1 parte del color, tubo a tubo`,
  },
  cells: {
    tint: (a, b) => `a*\u00a0${a}, b*\u00a0${b}`,
    strength: (reference) => `de ${within(reference)}, tubo a tubo`,
    isReference: "la propia referencia",
    gloss: (gloss) => `${gloss} a 60\u00b0`,
    nothingClassified: "No hace falta",
    noData: "Sin datos de peligro",
    noLimit: "Ninguno registrado",
    limited: (markets) => `Solo con base legal: ${listed(markets)}`,
    asked: (markets) => `Con condiciones: ${listed(markets)}`,
    share: (name, share) => `${name}, ${share}`,
    dispersion: { mulled: "Con moleta", milled: "A máquina" },
    pictograms: (names) => `Pictogramas: ${listed(names.map((name) => name.toLowerCase()))}`,
  },
  form: {
    heading: "Elija dos, tres o cuatro colores",
    fold: "Elegir otros colores",
    result: "Lado a lado",
    without:
      "Para elegir colores aquí hacen falta el script de la página y un servidor web. Las comparaciones de abajo no necesitan ninguno.",
    tooFew: (first) =>
      first === undefined ? "Elija dos colores o más." : `${first}, ¿y cuál más?`,
    unknown: (slug, near) =>
      `Aquí no hay ningún color «${slug}»${near === undefined ? "" : `; quizá ${near}`}.`,
    some: (shown, all) =>
      `Aquí hay ${shown} de los ${all} colores. Cualquier otro viene desde su propia ficha, por el enlace para comparar.`,
    tooMany: "Caben cuatro lado a lado; quite uno antes.",
    leftOut: "Caben cuatro lado a lado; los demás se dejan fuera.",
    failed:
      "No se pudieron cargar las cifras. Abierta desde una carpeta, una página no puede leer otros archivos: abra el sitio con un servidor web.",
  },
  pairs: "Lo que más se pregunta",
  more: "Elegir otros colores",
  besides: "Comparar",
  beside: (name) => `Con ${within(name)}`,
  besideAny: "Con otro color",
  fromCatalogue: "Poner de dos a cuatro lado a lado",
};

function lowered(head: string): string {
  return head.charAt(0).toLowerCase() + head.slice(1);
}

/** What rows are about, in a word within a sentence, each once. */
const IN_SHORT: Readonly<Record<string, string>> = {
  masstone: "el tono pleno",
  white: "lo que hacen en blanco",
  strength: "la fuerza",
  whitens: "el poder blanqueador",
  parts: "la fuerza",
  opacity: "la opacidad",
  oilByMass: "el aceite",
  oilByVolume: "el aceite",
  finish: "el acabado",
  drying: "el secado",
  lightfastness: "lo que duran",
  label: "las advertencias",
  sale: "dónde pueden venderse",
  pigments: "los pigmentos",
  vehicle: "el aglutinante",
  dispersion: "la molienda",
};

function inShort(keys: readonly string[]): string[] {
  return [...new Set(keys.map((key) => IN_SHORT[key.split(".")[0] ?? key] ?? key))];
}
