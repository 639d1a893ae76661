import type { FigureTexts } from "./figure-words.ts";

/** Days and conditions of drying. */
export const DRYING_FIGURES = {
  dryingSection: {
    en: "Drying in figures",
    de: "Trocknung in Zahlen",
    fr: "Le séchage en chiffres",
    es: "El secado en cifras",
  },
  dryingClass: {
    en: "Drying",
    de: "Trocknung",
    fr: "Séchage",
    es: "Secado",
    found: {
      "class by days to touch dry": {
        de: "Klasse nach Tagen bis grifftrocken",
        fr: "classe selon les jours jusqu’au sec au toucher",
        es: "clase según los días hasta el secado al tacto",
      },
    },
  },
  touchDryDays: { en: "Touch dry", de: "Grifftrocken", fr: "Sec au toucher", es: "Seco al tacto" },
  throughDryDays: {
    en: "Through dry",
    de: "Durchgetrocknet",
    fr: "Sec à cœur",
    es: "Seco en profundidad",
    missing: {
      "no trial to through dry": {
        de: "kein Versuch bis durchgetrocknet",
        fr: "aucun essai mené jusqu’au sec à cœur",
        es: "ningún ensayo hasta el secado en profundidad",
      },
    },
  },
  expectedDays: {
    en: "Touch dry, by rule of thumb",
    de: "Grifftrocken, nach Faustregel",
    fr: "Sec au toucher, selon la règle empirique",
    es: "Seco al tacto, por regla práctica",
  },
  linseedDays: {
    en: "Linseed oil alone, touch dry",
    de: "Leinöl allein, grifftrocken",
    fr: "Huile de lin seule, sèche au toucher",
    es: "Aceite de linaza solo, seco al tacto",
    found: {
      "linseed oil alone, thin film, 20–23 °C": {
        de: "Leinöl allein, dünner Film, 20 bis 23\u00a0°C",
        fr: "huile de lin seule, film mince, 20 à 23\u00a0°C",
        es: "aceite de linaza solo, película fina, de 20 a 23\u00a0°C",
      },
    },
  },
  dryingFactor: {
    en: "Factor",
    de: "Faktor",
    fr: "Facteur",
    es: "Factor",
    found: {
      "days over days without it": {
        de: "Tage geteilt durch die Tage ohne diesen Einfluss",
        fr: "nombre de jours divisé par ce qu’il serait sans lui",
        es: "número de días dividido entre el que sería sin él",
      },
    },
  },
  filmThickness: { en: "Wet film", de: "Nassfilm", fr: "Film humide", es: "Película húmeda" },
  temperature: { en: "Temperature", de: "Temperatur", fr: "Température", es: "Temperatura" },
  humidity: { en: "Humidity", de: "Luftfeuchte", fr: "Humidité", es: "Humedad" },
} satisfies FigureTexts;
