import type { ColorimetryStatement } from "../../colorimetry/statements.ts";
import * as en from "../en/phrases.ts";
import * as enColorimetry from "../en/colorimetry-phrases.ts";
import * as de from "../de/phrases.ts";
import * as deColorimetry from "../de/colorimetry-phrases.ts";
import * as fr from "../fr/phrases.ts";
import * as frColorimetry from "../fr/colorimetry-phrases.ts";
import * as es from "../es/phrases.ts";
import * as esColorimetry from "../es/colorimetry-phrases.ts";
import type { RulingsInEach } from "./rulings-in-each.ts";

/** Colour notations, lamplight, metamerism. */
export const COLORIMETRY_RULINGS: RulingsInEach<ColorimetryStatement> = {
  "holds-in-lamplight": (shifts) => ({
    en: `Holds its colour in lamplight: ${enColorimetry.underEach(shifts)}.`,
    de: `Behält ihre Farbe bei Lampenlicht: ${deColorimetry.underEach(shifts)}.`,
    fr: `Garde sa couleur sous la lampe\u202f: ${frColorimetry.underEach(shifts)}.`,
    es: `Mantiene su color a la luz de lámpara: ${esColorimetry.underEach(shifts)}.`,
  }),
  "shifts-slightly-in-lamplight": (shift) => ({
    en: enColorimetry.shifted(shift, "slightly"),
    de: deColorimetry.shifted(shift, "leicht"),
    fr: frColorimetry.shifted(shift, "légèrement"),
    es: esColorimetry.shifted(shift, "ligeramente"),
  }),
  "shifts-clearly-in-lamplight": (shift) => ({
    en: enColorimetry.shifted(shift, "clearly"),
    de: deColorimetry.shifted(shift, "deutlich"),
    fr: frColorimetry.shifted(shift, "nettement"),
    es: esColorimetry.shifted(shift, "claramente"),
  }),

  "differs-in-daylight": ({ daylight }) => ({
    en: `The two differ in daylight already (${en.deltaE00Text(daylight)}).`,
    de: `Die beiden unterscheiden sich schon bei Tageslicht (${de.deltaE00Text(daylight)}).`,
    fr: `Les deux diffèrent déjà à la lumière du jour (${fr.deltaE00Text(daylight)}).`,
    es: `Los dos difieren ya a la luz del día (${es.deltaE00Text(daylight)}).`,
  }),
  "metameric-pair": ({ daylight, lamp, index }) => ({
    en: `A metameric pair: alike in daylight (${en.deltaE00Text(daylight)}), but different under ${enColorimetry.LAMP_NAMES[lamp]} (${en.deltaE00Text(index)} from the light alone).`,
    de: `Ein metameres Paar: gleich bei Tageslicht (${de.deltaE00Text(daylight)}), verschieden unter ${deColorimetry.LAMP_NAMES[lamp]} (${de.deltaE00Text(index)} durch das Licht allein).`,
    fr: `Une paire métamère\u202f: semblables à la lumière du jour (${fr.deltaE00Text(daylight)}), mais différentes sous ${frColorimetry.LAMP_NAMES[lamp]} (${fr.deltaE00Text(index)} par le seul changement de lumière).`,
    es: `Un par metámero: iguales a la luz del día (${es.deltaE00Text(daylight)}), pero distintos bajo ${esColorimetry.LAMP_NAMES[lamp]} (${es.deltaE00Text(index)} por el solo cambio de luz).`,
  }),
  "matches-in-both-lights": ({ daylight, index }) => ({
    en: `Alike in daylight (${en.deltaE00Text(daylight)}), and under an incandescent lamp, a white LED or a fluorescent tube too: the change of light alone parts them by ${en.deltaE00Text(index)} at most.`,
    de: `Gleich bei Tageslicht (${de.deltaE00Text(daylight)}) und auch unter Glühlampe, weißer LED oder Leuchtstofflampe: Der Wechsel des Lichts allein macht höchstens ${de.deltaE00Text(index)} aus.`,
    fr: `Semblables à la lumière du jour (${fr.deltaE00Text(daylight)}), et aussi sous une lampe à incandescence, une LED blanche ou un tube fluorescent\u202f: le changement de lumière seul les écarte de ${fr.deltaE00Text(index)} au plus.`,
    es: `Iguales a la luz del día (${es.deltaE00Text(daylight)}) y también bajo una lámpara incandescente, un LED blanco o un tubo fluorescente: el cambio de luz los separa en ${es.deltaE00Text(index)} como mucho.`,
  }),

  "impossible-colour": ({ viewing, ...lab }) => ({
    en: `No surface has this colour under ${enColorimetry.viewingText(viewing)}: ${en.labText(lab)}.`,
    de: `Keine Oberfläche hat diese Farbe unter ${deColorimetry.viewingText(viewing)}: ${de.labText(lab)}.`,
    fr: `Aucune surface n’a cette couleur sous ${frColorimetry.viewingText(viewing)}\u202f: ${fr.labText(lab)}.`,
    es: `Ninguna superficie tiene este color bajo ${esColorimetry.viewingText(viewing)}: ${es.labText(lab)}.`,
  }),
  "lamplight-needs-a-spectrum": ({ from, to }) => ({
    en: `Only a spectrum tells how a colour changes from ${enColorimetry.viewingText(from)} to ${enColorimetry.viewingText(to)}.`,
    de: `Nur ein Spektrum sagt, wie sich eine Farbe von ${deColorimetry.viewingText(from)} zu ${deColorimetry.viewingText(to)} ändert.`,
    fr: `Seul un spectre dit comment une couleur change de ${frColorimetry.viewingText(from)} à ${frColorimetry.viewingText(to)}.`,
    es: `Solo un espectro dice cómo cambia un color de ${esColorimetry.viewingText(from)} a ${esColorimetry.viewingText(to)}.`,
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
