import type { FigureTexts } from "./figure-words.ts";
import { PAINT_BY_MASS } from "../shared-rows.ts";

const OIL_TO_KEEP_BACK = {
  en: "Oil to keep back",
  de: "Zurückzuhaltendes Öl",
  fr: "Huile à garder en réserve",
  es: "Aceite para reservar",
};

/** What to weigh, and what jars and tubes hold. */
export const BATCH_FIGURES = {
  holdBack: OIL_TO_KEEP_BACK,
  batchLoss: {
    en: "Lost on slab or mill",
    de: "Verlust auf Reibplatte oder Walzwerk",
    fr: "Perte sur le marbre ou la broyeuse",
    es: "Pérdida en la losa o el molino",
    found: {
      "what lots lost, least and most": {
        de: "was bei Chargen verloren ging, vom kleinsten zum größten Verlust",
        fr: "pertes des lots, de la plus faible à la plus forte",
        es: "pérdidas de los lotes, de la menor a la mayor",
      },
    },
  },
  batchPigment: {
    en: "Pigment to weigh",
    de: "Pigment, einzuwiegen",
    fr: "Pigment à peser",
    es: "Pigmento para pesar",
  },
  batchOil: { en: "Oil in all", de: "Öl insgesamt", fr: "Huile en tout", es: "Aceite en total" },
  batchOilAtFirst: {
    en: "Oil to start with",
    de: "Öl zu Beginn",
    fr: "Huile pour commencer",
    es: "Aceite para empezar",
  },
  batchOilHeldBack: OIL_TO_KEEP_BACK,
  batchAddition: { en: "Added", de: "Zusatz", fr: "Ajouté", es: "Añadido" },
  batchPaint: PAINT_BY_MASS,
  batchVolume: {
    en: "Paint, by volume",
    de: "Farbe, nach Volumen",
    fr: "Peinture, en volume",
    es: "Pintura, en volumen",
  },
  batchLossMl: { en: "Lost", de: "Verlust", fr: "Perdu", es: "Perdido" },
  batchYield: { en: "To fill", de: "Abzufüllen", fr: "À conditionner", es: "Para envasar" },
  batchTubes: { en: "Tubes filled", de: "Gefüllte Tuben", fr: "Tubes remplis", es: "Tubos llenos" },
  batchCost: { en: "Cost", de: "Kosten", fr: "Coût", es: "Coste" },
  fillHolds: {
    en: "Holds",
    de: "Fasst",
    fr: "Contient",
    es: "Contiene",
    found: {
      "{a} ml x density": {
        de: "{a}\u00a0ml x Dichte",
        fr: "{a}\u00a0ml x masse volumique",
        es: "{a}\u00a0ml x densidad",
      },
    },
  },
  fillTakes: {
    en: "100 g take",
    de: "100\u00a0g nehmen ein",
    fr: "100\u00a0g occupent",
    es: "100\u00a0g ocupan",
    found: {
      "100 g / density": {
        de: "100\u00a0g / Dichte",
        fr: "100\u00a0g / masse volumique",
        es: "100\u00a0g / densidad",
      },
    },
  },
} satisfies FigureTexts;
