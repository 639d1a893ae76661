import { GEOMETRIES, wordOf } from "../closed-sets.ts";
import { alike, type Texts } from "../texts.ts";
import type { InEach } from "../in-each.ts";
import { WAVELENGTH } from "../shared-rows.ts";

/** Notations and screen colours of a sheet. */
export const NOTATIONS = {
  readBy: (geometry: string) => ({
    en: `Read ${wordOf(GEOMETRIES, geometry, "en")}.`,
    de: `Gemessen ${wordOf(GEOMETRIES, geometry, "de")}.`,
    fr: `Mesuré en ${wordOf(GEOMETRIES, geometry, "fr")}.`,
    es: `Medido en ${wordOf(GEOMETRIES, geometry, "es")}.`,
  }),
  /** Of a reading by an instrument: what its \u00b1 covers. */
  howSure: (L: string, a: string, b: string) => ({
    en: `Its L* is known to ± ${L}, a* to ± ${a} and b* to ± ${b}, by the instrument and by the place on the drawdown that was read; another drawdown or batch may lie farther.`,
    de: `L* ist auf ± ${L} bekannt, a* auf ± ${a} und b* auf ± ${b}, nach dem Messgerät und der gemessenen Stelle des Aufstrichs; ein anderer Aufstrich oder Ansatz kann weiter abweichen.`,
    fr: `L* est connu à ± ${L} près, a* à ± ${a} et b* à ± ${b}, selon l’instrument et l’endroit mesuré de l’application\u202f; une autre application ou fabrication peut s’écarter davantage.`,
    es: `L* se conoce con ± ${L}, a* con ± ${a} y b* con ± ${b}, según el instrumento y el lugar medido de la aplicación; otra aplicación o fabricación puede diferir más.`,
  }),
  included: (L: string) => ({
    en: `Read with the shine included; without it L* would be about ${L}.`,
    de: `Mit Glanz gemessen; ohne ihn läge L* bei etwa ${L}.`,
    fr: `Mesuré reflet inclus\u202f; sans lui L* serait d’environ ${L}.`,
    es: `Medido con el brillo incluido; sin él L* sería alrededor de ${L}.`,
  }),
  byEye: {
    en: "Matched to a Munsell chip by eye, which is good to half a step of value and one of chroma.",
    de: "Nach Augenmaß mit einem Munsell-Muster verglichen; das ist auf eine halbe Stufe Helligkeit und eine Stufe Chroma genau.",
    fr: "Comparé à l’œil à un échantillon Munsell, ce qui est juste à un demi-degré de valeur et à un degré de chroma près.",
    es: "Igualado a ojo a una muestra Munsell, lo que acierta con medio paso de valor y uno de croma.",
  },
  none: {
    en: "None yet: no drawdown has been read or matched by eye.",
    de: "Noch keine: Es ist kein Aufstrich gemessen oder nach Augenmaß verglichen worden.",
    fr: "Aucune pour l’instant\u202f: aucune application n’a été mesurée ni comparée à l’œil.",
    es: "Ninguna aún: no se ha medido ni igualado a ojo ninguna aplicación.",
  },
  labCaption: {
    en: "The colour alone, under each light",
    de: "Die Farbe allein, unter jedem Licht",
    fr: "La couleur pure, sous chaque lumière",
    es: "El color puro, bajo cada luz",
  },
  light: {
    en: "Light, observer",
    de: "Licht, Beobachter",
    fr: "Lumière, observateur",
    es: "Luz, observador",
  },
  viewings: {
    "C/2": alike("C, 2\u00b0"),
    "D65/2": alike("D65, 2\u00b0"),
    "D65/10": alike("D65, 10\u00b0"),
    "D50/2": alike("D50, 2\u00b0"),
    "A/10": {
      en: "A (lamplight), 10\u00b0",
      de: "A (Lampenlicht), 10\u00b0",
      fr: "A (lampe), 10\u00b0",
      es: "A (lámpara), 10\u00b0",
    },
    "A/2": {
      en: "A (lamplight), 2\u00b0",
      de: "A (Lampenlicht), 2\u00b0",
      fr: "A (lampe), 2\u00b0",
      es: "A (lámpara), 2\u00b0",
    },
    "C/10": alike("C, 10\u00b0"),
    "D50/10": alike("D50, 10\u00b0"),
    "D65/2006": {
      en: "D65, 10\u00b0 of CIE 2006",
      de: "D65, 10\u00b0 nach CIE 2006",
      fr: "D65, 10\u00b0 de la CIE 2006",
      es: "D65, 10\u00b0 de la CIE 2006",
    },
  } as Record<string, InEach>,
  caption: {
    en: "Names and screen colours",
    de: "Namen und Bildschirmfarben",
    fr: "Noms et couleurs d’écran",
    es: "Nombres y colores de pantalla",
  },
  curveTitle: {
    en: "Reflectance of the masstone over the spectrum",
    de: "Reflexion des Volltons über dem Spektrum",
    fr: "Réflectance du ton plein sur le spectre",
    es: "Reflectancia del tono pleno a lo largo del espectro",
  },
  curveDescription: (low: string, high: string, lowNm: string, highNm: string) => ({
    en: `Between ${low} at ${lowNm}\u00a0nm and ${high} at ${highNm}\u00a0nm.`,
    de: `Zwischen ${low} bei ${lowNm}\u00a0nm und ${high} bei ${highNm}\u00a0nm.`,
    fr: `Entre ${low} à ${lowNm}\u00a0nm et ${high} à ${highNm}\u00a0nm.`,
    es: `Entre ${low} a ${lowNm}\u00a0nm y ${high} a ${highNm}\u00a0nm.`,
  }),
  curveLabel: (geometry: string) => ({
    en: `masstone, ${wordOf(GEOMETRIES, geometry, "en")}`,
    de: `Vollton, ${wordOf(GEOMETRIES, geometry, "de")}`,
    fr: `ton plein, ${wordOf(GEOMETRIES, geometry, "fr")}`,
    es: `tono pleno, ${wordOf(GEOMETRIES, geometry, "es")}`,
  }),
  excludedLabel: {
    en: "worked out without the shine",
    de: "ohne Glanz errechnet",
    fr: "calculé sans le reflet",
    es: "calculado sin el brillo",
  },
  wavelength: WAVELENGTH,
  reflectance: {
    en: "Reflectance factor",
    de: "Reflexionsgrad",
    fr: "Facteur de réflectance",
    es: "Factor de reflectancia",
  },
  reflectanceTo: (end: string) => ({
    en: `Reflectance factor, enlarged: the axis ends at ${end}`,
    de: `Reflexionsgrad, vergrößert: Die Achse endet bei ${end}`,
    fr: `Facteur de réflectance, agrandi\u202f: l’axe s’arrête à ${end}`,
    es: `Factor de reflectancia, ampliado: el eje acaba en ${end}`,
  }),
} satisfies Texts;
