import { LAMPS, type ByLamp, type Lamp } from "../../colorimetry/lamps.ts";
import type { LampShift } from "../../colorimetry/lamplight.ts";
import type { ColorimetryStatement } from "../../colorimetry/statements.ts";
import type { WordingsOf } from "../../quantities/statement.ts";
import { TOWARD } from "./closed-words.ts";
import { viewingIn } from "../phrases.ts";
import { bracketed, decimals, deltaE00Text, labText, listed, sentence } from "./phrases.ts";

/** Lamps as they are bought. */
const LAMP_NAMES: Readonly<Record<Lamp, string>> = {
  incandescent: "una lámpara incandescente o halógena",
  led: "un LED blanco (4100 K)",
  fluorescent: "un tubo fluorescente (4000 K)",
};

const CHANGES = {
  lighter: "se aclara",
  darker: "se oscurece",
  stronger: "se aviva",
  duller: "se apaga",
} as const;

const viewingText = viewingIn("lámpara");

/** Colour notations, lamplight, metamerism. */
export const COLORIMETRY_RULINGS: WordingsOf<ColorimetryStatement> = {
  "holds-in-lamplight": (shifts) => `Mantiene su color a la luz de lámpara: ${underEach(shifts)}.`,
  "shifts-slightly-in-lamplight": (shift) => shifted(shift, "ligeramente"),
  "shifts-clearly-in-lamplight": (shift) => shifted(shift, "claramente"),

  "differs-in-daylight": ({ daylight }) =>
    `Los dos difieren ya a la luz del día (${deltaE00Text(daylight)}).`,
  "metameric-pair": ({ daylight, lamp, index }) =>
    `Un par metámero: iguales a la luz del día (${deltaE00Text(daylight)}), pero distintos bajo ${LAMP_NAMES[lamp]} (${deltaE00Text(index)} por la sola luz).`,
  "matches-in-both-lights": ({ daylight, index }) =>
    `Iguales a la luz del día (${deltaE00Text(daylight)}) y, bajo una lámpara incandescente, un LED blanco o un tubo fluorescente, a no más de ${deltaE00Text(index)}.`,

  "impossible-colour": ({ viewing, ...lab }) =>
    `Ninguna superficie tiene este color bajo ${viewingText(viewing)}: ${labText(lab)}.`,
  "lamplight-needs-a-spectrum": ({ from, to }) =>
    `Solo un espectro dice cómo cambia un color de ${viewingText(from)} a ${viewingText(to)}.`,
  "lighter-than-munsell-white": ({ luminanceFactor }) =>
    `Más claro que el blanco de la escala de Munsell (Y ${decimals(luminanceFactor, 1)}), así que no tiene notación Munsell.`,
  "beyond-munsell-renotation": (lab) =>
    `Fuera de la renotación de Munsell (${labText(lab)}), así que no tiene notación Munsell.`,
};

function underEach(shifts: ByLamp, lamps: readonly Lamp[] = LAMPS): string {
  return listed(
    lamps.map(
      (lamp, i) =>
        `${i === 0 ? "\u0394E00 " : ""}${decimals(shifts[lamp], 1)} bajo ${LAMP_NAMES[lamp]}`,
    ),
  );
}

function shifted(shift: LampShift, how: string): string {
  const changes = [shift.lightness, shift.chroma].flatMap((change) =>
    change === "same" ? [] : [CHANGES[change]],
  );
  const also = changes.length === 0 ? "" : `, y ${listed(changes)}`;
  const others = LAMPS.filter((lamp) => lamp !== shift.lamp);
  return sentence(
    `vira ${how} ${TOWARD[shift.towards]} bajo ${LAMP_NAMES[shift.lamp]}${also}${bracketed(deltaE00Text(shift[shift.lamp]))}; ${underEach(shift, others)}`,
  );
}
