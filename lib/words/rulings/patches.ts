import type { PhotographStatement } from "../../patches/statements.ts";
import { de, en, es, fr } from "../phrases-in-each.ts";
import { ends } from "./patch-phrases.ts";
import type { RulingsInEach } from "./rulings-in-each.ts";

export const PATCH_RULINGS: RulingsInEach<PhotographStatement> = {
  "photograph-corrected": ({ patches, median, largest }) => ({
    en: `Colours corrected by ${patches} patches that were read. A patch left out is missed by \u0394E00 ${en.NUMBERS.decimal(median, 1)} (median), the worst by ${en.NUMBERS.decimal(largest, 1)}.`,
    de: `Farben korrigiert nach ${patches} gemessenen Feldern. Ein weggelassenes Feld wird um \u0394E00 ${de.NUMBERS.decimal(median, 1)} verfehlt (Median), das schlechteste um ${de.NUMBERS.decimal(largest, 1)}.`,
    fr: `Couleurs corrigées d’après ${patches} plages mesurées. Une plage mise de côté s’écarte de \u0394E00 ${fr.NUMBERS.decimal(median, 1)} (médiane), la pire de ${fr.NUMBERS.decimal(largest, 1)}.`,
    es: `Colores corregidos según ${patches} muestras medidas. El error en una muestra apartada es de \u0394E00 ${es.NUMBERS.decimal(median, 1)} (mediana), y en la peor de ${es.NUMBERS.decimal(largest, 1)}.`,
  }),
  "photograph-not-corrected": ({ median, limit }) => ({
    en: `Not colour-corrected: patches left out are missed by \u0394E00 ${en.NUMBERS.decimal(median, 1)} (median), and at most ${en.NUMBERS.decimal(limit, 0)} would do.`,
    de: `Farben nicht korrigiert: Weggelassene Felder werden um \u0394E00 ${de.NUMBERS.decimal(median, 1)} verfehlt (Median); zulässig wären höchstens ${de.NUMBERS.decimal(limit, 0)}.`,
    fr: `Couleurs non corrigées\u202f: les plages mises de côté s’écartent de \u0394E00 ${fr.NUMBERS.decimal(median, 1)} (médiane), et il faudrait ${fr.NUMBERS.decimal(limit, 0)} au plus.`,
    es: `Colores sin corregir: el error en las muestras apartadas es de \u0394E00 ${es.NUMBERS.decimal(median, 1)} (mediana), y se admite ${es.NUMBERS.decimal(limit, 0)} como máximo.`,
  }),
  "photograph-as-it-came": {
    en: "Not colour-corrected.",
    de: "Farben nicht korrigiert.",
    fr: "Couleurs non corrigées.",
    es: "Colores sin corregir.",
  },
  "light-evened": ({ percent }) => ({
    en: `Its light is evened by the bare ground: its darkest corner had ${en.NUMBERS.decimal(percent, 0)} % of the light of its brightest.`,
    de: `Das Licht ist nach dem unbestrichenen Grund ausgeglichen: Auf die dunkelste Ecke fielen ${de.NUMBERS.decimal(percent, 0)}\u00a0% dessen, was auf die hellste fiel.`,
    fr: `La lumière est égalisée d’après le fond nu\u202f: le coin le plus sombre recevait ${fr.NUMBERS.decimal(percent, 0)}\u00a0% de ce que recevait le plus clair.`,
    es: `La luz está igualada según el fondo desnudo: en la esquina más oscura caía el ${es.NUMBERS.decimal(percent, 0)}\u00a0% de lo que caía en la más clara.`,
  }),
  "colour-of-photograph": ({ L, a, b }) => ({
    en: `Estimated from this photograph: L* ${ends(L).en}, a* ${ends(a).en}, b* ${ends(b).en} (D65, 2\u00b0).`,
    de: `Geschätzt nach diesem Foto: L* ${ends(L).de}, a* ${ends(a).de}, b* ${ends(b).de} (D65, 2\u00b0).`,
    fr: `Estimé d’après cette photographie\u202f: L* ${ends(L).fr}, a* ${ends(a).fr}, b* ${ends(b).fr} (D65, 2\u00b0).`,
    es: `Estimado según esta fotografía: L* ${ends(L).es}, a* ${ends(a).es}, b* ${ends(b).es} (D65, 2\u00b0).`,
  }),
  "photograph-beside-reading": ({ deltaE00 }) => ({
    en: `The paint as read and in the picture differ by \u0394E00 ${en.NUMBERS.decimal(deltaE00, 1)}; the reading counts.`,
    de: `Die gemessene Farbe und die im Bild weichen um \u0394E00 ${de.NUMBERS.decimal(deltaE00, 1)} voneinander ab; es gilt die Messung.`,
    fr: `La couleur mesurée et celle de l’image diffèrent de \u0394E00 ${fr.NUMBERS.decimal(deltaE00, 1)}\u202f; la mesure fait foi.`,
    es: `El color medido y el de la imagen difieren en \u0394E00 ${es.NUMBERS.decimal(deltaE00, 1)}; vale la medición.`,
  }),
  "texture-in-read-colour": {
    en: "The film alone: its texture as in the picture, its colour as read.",
    de: "Der Film allein: Oberfläche wie im Bild, Farbe wie gemessen.",
    fr: "Le film seul\u202f: sa surface telle que sur l’image, sa couleur telle que mesurée.",
    es: "La película sola: su superficie tal como en la imagen, su color tal como se midió.",
  },
};
