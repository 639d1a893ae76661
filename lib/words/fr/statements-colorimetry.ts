import { LAMPS, type ByLamp, type Lamp } from "../../colorimetry/lamps.ts";
import type { LampShift } from "../../colorimetry/lamplight.ts";
import type { ColorimetryStatement } from "../../colorimetry/statements.ts";
import type { WordingsOf } from "../../quantities/statement.ts";
import { TOWARD } from "./closed-words.ts";
import { viewingIn } from "../phrases.ts";
import { bracketed, decimals, deltaE00Text, labText, listed, sentence } from "./phrases.ts";

/** Lamps as they are bought. */
const LAMP_NAMES: Readonly<Record<Lamp, string>> = {
  incandescent: "une lampe à incandescence ou halogène",
  led: "une LED blanche (4\u202f100 K)",
  fluorescent: "un tube fluorescent (4\u202f000 K)",
};

const CHANGES = {
  lighter: "s’éclaircit",
  darker: "s’assombrit",
  stronger: "devient plus vif",
  duller: "devient plus terne",
} as const;

const viewingText = viewingIn("lampe");

/** Colour notations, lamplight, metamerism. */
export const COLORIMETRY_RULINGS: WordingsOf<ColorimetryStatement> = {
  "holds-in-lamplight": (shifts) => `Garde sa couleur sous la lampe\u202f: ${underEach(shifts)}.`,
  "shifts-slightly-in-lamplight": (shift) => shifted(shift, "légèrement"),
  "shifts-clearly-in-lamplight": (shift) => shifted(shift, "nettement"),

  "differs-in-daylight": ({ daylight }) =>
    `Les deux diffèrent déjà à la lumière du jour (${deltaE00Text(daylight)}).`,
  "metameric-pair": ({ daylight, lamp, index }) =>
    `Une paire métamère\u202f: semblables à la lumière du jour (${deltaE00Text(daylight)}), mais différentes sous ${LAMP_NAMES[lamp]} (${deltaE00Text(index)} du fait de la seule lumière).`,
  "matches-in-both-lights": ({ daylight, index }) =>
    `Semblables à la lumière du jour (${deltaE00Text(daylight)}) et, sous une lampe à incandescence, une LED blanche ou un tube fluorescent, pas plus éloignées que ${deltaE00Text(index)}.`,

  "impossible-colour": ({ viewing, ...lab }) =>
    `Aucune surface n’a cette couleur sous ${viewingText(viewing)}\u202f: ${labText(lab)}.`,
  "lamplight-needs-a-spectrum": ({ from, to }) =>
    `Seul un spectre dit comment une couleur change de ${viewingText(from)} à ${viewingText(to)}.`,
  "lighter-than-munsell-white": ({ luminanceFactor }) =>
    `Plus clair que le blanc de l’échelle de Munsell (Y ${decimals(luminanceFactor, 1)}), donc sans notation Munsell.`,
  "beyond-munsell-renotation": (lab) =>
    `Hors de la renotation de Munsell (${labText(lab)}), donc sans notation Munsell.`,
};

function underEach(shifts: ByLamp, lamps: readonly Lamp[] = LAMPS): string {
  return listed(
    lamps.map(
      (lamp, i) =>
        `${i === 0 ? "\u0394E00 " : ""}${decimals(shifts[lamp], 1)} sous ${LAMP_NAMES[lamp]}`,
    ),
  );
}

function shifted(shift: LampShift, how: string): string {
  const changes = [shift.lightness, shift.chroma].flatMap((change) =>
    change === "same" ? [] : [CHANGES[change]],
  );
  const also = changes.length === 0 ? "" : `, et ${listed(changes)}`;
  const others = LAMPS.filter((lamp) => lamp !== shift.lamp);
  return sentence(
    `tourne ${how} ${TOWARD[shift.towards]} sous ${LAMP_NAMES[shift.lamp]}${also}${bracketed(deltaE00Text(shift[shift.lamp]))}\u202f; ${underEach(shift, others)}`,
  );
}
