import type { Lamp, ByLamp } from "../../colorimetry/lamps.ts";
import type { LampShift } from "../../colorimetry/lamplight.ts";
import type { ColorimetryStatement } from "../../colorimetry/statements.ts";
import type { Lab, LabViewing } from "../../colorimetry/viewing.ts";
import type { WordingsOf } from "../../quantities/statement.ts";
import { bracketed, decimals, listed, sentence } from "./statements-phrases.ts";

/** Lamps as they are bought. */
const LAMP_NAMES: Readonly<Record<Lamp, string>> = {
  incandescent: "an incandescent or halogen lamp",
  led: "a white LED (4,100 K)",
  fluorescent: "a fluorescent tube (4,000 K)",
};

/** Colour notations, lamplight, metamerism. */
export const COLORIMETRY_RULINGS: WordingsOf<ColorimetryStatement> = {
  "holds-in-lamplight": (shifts) => `Holds its colour in lamplight: ${underEach(shifts)}.`,
  "shifts-slightly-in-lamplight": (shift) => shifted(shift, "slightly"),
  "shifts-clearly-in-lamplight": (shift) => shifted(shift, "clearly"),

  "differs-in-daylight": ({ daylight }) =>
    `The two differ in daylight already (${deltaE(daylight)}).`,
  "metameric-pair": ({ daylight, lamp, index }) =>
    `A metameric pair: alike in daylight (${deltaE(daylight)}), but different under ${LAMP_NAMES[lamp]} (${deltaE(index)} from the light alone).`,
  "matches-in-both-lights": ({ daylight, index }) =>
    `Alike in daylight (${deltaE(daylight)}), and under an incandescent lamp, a white LED or a fluorescent tube no further apart than ${deltaE(index)}.`,

  "impossible-colour": ({ viewing, ...lab }) =>
    `No surface has this colour under ${viewingText(viewing)}: ${labText(lab)}.`,
  "lamplight-needs-a-spectrum": ({ from, to }) =>
    `Only a spectrum tells how a colour changes from ${viewingText(from)} to ${viewingText(to)}.`,
  "lighter-than-munsell-white": ({ luminanceFactor }) =>
    `Lighter than the white of the Munsell scale (Y ${decimals(luminanceFactor, 1)}), so it has no Munsell notation.`,
  "beyond-munsell-renotation": (lab) =>
    `Beyond the Munsell renotation (${labText(lab)}), so it has no Munsell notation.`,
};

function deltaE(difference: number): string {
  return `\u0394E00 ${decimals(difference, 1)}`;
}

function labText({ L, a, b }: Lab): string {
  return `L* ${decimals(L, 1)}, a* ${decimals(a, 1)}, b* ${decimals(b, 1)}`;
}

function underEach(shifts: ByLamp, lamps: readonly Lamp[] = LAMPS_IN_ORDER): string {
  return listed(
    lamps.map(
      (lamp, i) =>
        `${i === 0 ? "\u0394E00 " : ""}${decimals(shifts[lamp], 1)} under ${LAMP_NAMES[lamp]}`,
    ),
  );
}

const LAMPS_IN_ORDER: readonly Lamp[] = ["incandescent", "led", "fluorescent"];

function shifted(shift: LampShift, how: string): string {
  const changes = [shift.lightness, shift.chroma].filter((change) => change !== "same");
  const also = changes.length === 0 ? "" : `, and turns ${listed(changes)}`;
  const others = LAMPS_IN_ORDER.filter((lamp) => lamp !== shift.lamp);
  return sentence(
    `shifts ${how} toward ${shift.towards} under ${LAMP_NAMES[shift.lamp]}${also}${bracketed(deltaE(shift[shift.lamp]))}; ${underEach(shift, others)}`,
  );
}

/** "D65/10" as "D65, 10\u00b0"; a viewing of lamplight says so. */
function viewingText(viewing: LabViewing): string {
  const [light = "", observer = ""] = viewing.split("/");
  return `${light === "A" ? "A (lamplight)" : light}, ${observer}\u00b0`;
}
