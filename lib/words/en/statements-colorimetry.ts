import { LAMPS, type ByLamp, type Lamp } from "../../colorimetry/lamps.ts";
import type { LampShift } from "../../colorimetry/lamplight.ts";
import type { ColorimetryStatement } from "../../colorimetry/statements.ts";
import type { WordingsOf } from "../../quantities/statement.ts";
import { viewingIn } from "../phrases.ts";
import { bracketed, decimals, deltaE00Text, labText, listed, sentence } from "./phrases.ts";

/** Lamps as they are bought. */
const LAMP_NAMES: Readonly<Record<Lamp, string>> = {
  incandescent: "an incandescent or halogen lamp",
  led: "a white LED (4,100 K)",
  fluorescent: "a fluorescent tube (4,000 K)",
};

const viewingText = viewingIn("lamplight");

/** Colour notations, lamplight, metamerism. */
export const COLORIMETRY_RULINGS: WordingsOf<ColorimetryStatement> = {
  "holds-in-lamplight": (shifts) => `Holds its colour in lamplight: ${underEach(shifts)}.`,
  "shifts-slightly-in-lamplight": (shift) => shifted(shift, "slightly"),
  "shifts-clearly-in-lamplight": (shift) => shifted(shift, "clearly"),

  "differs-in-daylight": ({ daylight }) =>
    `The two differ in daylight already (${deltaE00Text(daylight)}).`,
  "metameric-pair": ({ daylight, lamp, index }) =>
    `A metameric pair: alike in daylight (${deltaE00Text(daylight)}), but different under ${LAMP_NAMES[lamp]} (${deltaE00Text(index)} from the light alone).`,
  "matches-in-both-lights": ({ daylight, index }) =>
    `Alike in daylight (${deltaE00Text(daylight)}), and under an incandescent lamp, a white LED or a fluorescent tube no further apart than ${deltaE00Text(index)}.`,

  "impossible-colour": ({ viewing, ...lab }) =>
    `No surface has this colour under ${viewingText(viewing)}: ${labText(lab)}.`,
  "lamplight-needs-a-spectrum": ({ from, to }) =>
    `Only a spectrum tells how a colour changes from ${viewingText(from)} to ${viewingText(to)}.`,
  "lighter-than-munsell-white": ({ luminanceFactor }) =>
    `Lighter than the white of the Munsell scale (Y ${decimals(luminanceFactor, 1)}), so it has no Munsell notation.`,
  "beyond-munsell-renotation": (lab) =>
    `Beyond the Munsell renotation (${labText(lab)}), so it has no Munsell notation.`,
};

function underEach(shifts: ByLamp, lamps: readonly Lamp[] = LAMPS): string {
  return listed(
    lamps.map(
      (lamp, i) =>
        `${i === 0 ? "\u0394E00 " : ""}${decimals(shifts[lamp], 1)} under ${LAMP_NAMES[lamp]}`,
    ),
  );
}

function shifted(shift: LampShift, how: string): string {
  const changes = [shift.lightness, shift.chroma].filter((change) => change !== "same");
  const also = changes.length === 0 ? "" : `, and turns ${listed(changes)}`;
  const others = LAMPS.filter((lamp) => lamp !== shift.lamp);
  return sentence(
    `shifts ${how} toward ${shift.towards} under ${LAMP_NAMES[shift.lamp]}${also}${bracketed(deltaE00Text(shift[shift.lamp]))}; ${underEach(shift, others)}`,
  );
}
