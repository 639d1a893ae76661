import type { ColorimetryStatement } from "../../colorimetry/statements.ts";
import { de, en, es, fr } from "../phrases-in-each.ts";
import { underEach, shifted, LAMP_NAMES, viewingText } from "./colorimetry-phrases.ts";
import type { RulingsInEach } from "./rulings-in-each.ts";

/** Colour notations, lamplight, metamerism. */
export const COLORIMETRY_RULINGS: RulingsInEach<ColorimetryStatement> = {
  "holds-in-lamplight": (shifts) => ({
    en: `Holds its colour in lamplight: ${underEach(shifts).en}.`,
    de: `Behält ihre Farbe bei Lampenlicht: ${underEach(shifts).de}.`,
    fr: `Garde sa couleur sous la lampe\u202f: ${underEach(shifts).fr}.`,
    es: `Mantiene su color a la luz de lámpara: ${underEach(shifts).es}.`,
  }),
  "shifts-slightly-in-lamplight": (shift) =>
    shifted(shift, { en: "slightly", de: "leicht", fr: "légèrement", es: "ligeramente" }),
  "shifts-clearly-in-lamplight": (shift) =>
    shifted(shift, { en: "clearly", de: "deutlich", fr: "nettement", es: "claramente" }),

  "differs-in-daylight": ({ daylight }) => ({
    en: `The two differ in daylight already (${en.deltaE00Text(daylight)}).`,
    de: `Die beiden unterscheiden sich schon bei Tageslicht (${de.deltaE00Text(daylight)}).`,
    fr: `Les deux diffèrent déjà à la lumière du jour (${fr.deltaE00Text(daylight)}).`,
    es: `Los dos difieren ya a la luz del día (${es.deltaE00Text(daylight)}).`,
  }),
  "metameric-pair": ({ daylight, lamp, index }) => ({
    en: `A metameric pair: alike in daylight (${en.deltaE00Text(daylight)}), but different under ${LAMP_NAMES[lamp].en} (${en.deltaE00Text(index)} from the light alone).`,
    de: `Ein metameres Paar: gleich bei Tageslicht (${de.deltaE00Text(daylight)}), verschieden unter ${LAMP_NAMES[lamp].de} (${de.deltaE00Text(index)} durch das Licht allein).`,
    fr: `Une paire métamère\u202f: semblables à la lumière du jour (${fr.deltaE00Text(daylight)}), mais différentes sous ${LAMP_NAMES[lamp].fr} (${fr.deltaE00Text(index)} par le seul changement de lumière).`,
    es: `Un par metámero: iguales a la luz del día (${es.deltaE00Text(daylight)}), pero distintos bajo ${LAMP_NAMES[lamp].es} (${es.deltaE00Text(index)} por el solo cambio de luz).`,
  }),
  "matches-in-both-lights": ({ daylight, index }) => ({
    en: `Alike in daylight (${en.deltaE00Text(daylight)}), and also under an incandescent lamp, a white LED or a fluorescent tube. A change of light parts them by ${en.deltaE00Text(index)} at most.`,
    de: `Gleich bei Tageslicht (${de.deltaE00Text(daylight)}) und auch unter Glühlampe, weißer LED oder Leuchtstofflampe. Ein Wechsel des Lichts macht höchstens ${de.deltaE00Text(index)} aus.`,
    fr: `Semblables à la lumière du jour (${fr.deltaE00Text(daylight)}), et aussi sous une lampe à incandescence, une LED blanche ou un tube fluorescent. Un changement de lumière les écarte de ${fr.deltaE00Text(index)} au plus.`,
    es: `Iguales a la luz del día (${es.deltaE00Text(daylight)}) y también bajo una lámpara incandescente, un LED blanco o un tubo fluorescente. Un cambio de luz los separa en ${es.deltaE00Text(index)} como mucho.`,
  }),

  "impossible-colour": ({ viewing, ...lab }) => ({
    en: `No surface has this colour under ${viewingText(viewing).en}: ${en.labText(lab)}.`,
    de: `Keine Oberfläche hat diese Farbe unter ${viewingText(viewing).de}: ${de.labText(lab)}.`,
    fr: `Aucune surface n’a cette couleur sous ${viewingText(viewing).fr}\u202f: ${fr.labText(lab)}.`,
    es: `Ninguna superficie tiene este color bajo ${viewingText(viewing).es}: ${es.labText(lab)}.`,
  }),
  "lamplight-needs-a-spectrum": ({ from, to }) => ({
    en: `Only a spectrum tells how a colour changes from ${viewingText(from).en} to ${viewingText(to).en}.`,
    de: `Nur ein Spektrum sagt, wie sich eine Farbe von ${viewingText(from).de} zu ${viewingText(to).de} ändert.`,
    fr: `Seul un spectre dit comment une couleur change de ${viewingText(from).fr} à ${viewingText(to).fr}.`,
    es: `Solo un espectro dice cómo cambia un color de ${viewingText(from).es} a ${viewingText(to).es}.`,
  }),
  "lighter-than-munsell-white": ({ luminanceFactor }) => ({
    en: `Lighter than the white of the Munsell scale (Y ${en.decimals(luminanceFactor, 1)}), so it has no Munsell notation.`,
    de: `Heller als das Weiß der Munsell-Skala (Y ${de.decimals(luminanceFactor, 1)}), daher ohne Munsell-Notation.`,
    fr: `Plus clair que le blanc de l’échelle Munsell (Y ${fr.decimals(luminanceFactor, 1)}), donc sans notation Munsell.`,
    es: `Más claro que el blanco de la escala Munsell (Y ${es.decimals(luminanceFactor, 1)}), así que no tiene notación Munsell.`,
  }),
  "beyond-munsell-renotation": (lab) => ({
    en: `Beyond the Munsell renotation (${en.labText(lab)}), so it has no Munsell notation.`,
    de: `Außerhalb der Munsell-Renotation (${de.labText(lab)}), daher ohne Munsell-Notation.`,
    fr: `Hors de la renotation de Munsell (${fr.labText(lab)}), donc sans notation Munsell.`,
    es: `Fuera de la renotación de Munsell (${es.labText(lab)}), así que no tiene notación Munsell.`,
  }),
};
