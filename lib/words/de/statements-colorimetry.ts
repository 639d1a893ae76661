import { LAMPS, type ByLamp, type Lamp } from "../../colorimetry/lamps.ts";
import type { LampShift } from "../../colorimetry/lamplight.ts";
import type { ColorimetryStatement } from "../../colorimetry/statements.ts";
import type { WordingsOf } from "../../quantities/statement.ts";
import { HUE_NOUNS } from "./closed-sets.ts";
import { viewingIn } from "../phrases.ts";
import { bracketed, decimals, deltaE00Text, labText, listed, sentence } from "./phrases.ts";

/** Lamps as they are bought, after "unter". */
const LAMP_NAMES: Readonly<Record<Lamp, string>> = {
  incandescent: "einer Glüh- oder Halogenlampe",
  led: "einer weißen LED (4100 K)",
  fluorescent: "einer Leuchtstofflampe (4000 K)",
};

const CHANGES = {
  lighter: "heller",
  darker: "dunkler",
  stronger: "kräftiger",
  duller: "stumpfer",
} as const;

const viewingText = viewingIn("Lampenlicht");

/** Colour notations, lamplight, metamerism. */
export const COLORIMETRY_RULINGS: WordingsOf<ColorimetryStatement> = {
  "holds-in-lamplight": (shifts) => `Hält ihre Farbe bei Lampenlicht: ${underEach(shifts)}.`,
  "shifts-slightly-in-lamplight": (shift) => shifted(shift, "leicht"),
  "shifts-clearly-in-lamplight": (shift) => shifted(shift, "deutlich"),

  "differs-in-daylight": ({ daylight }) =>
    `Die beiden unterscheiden sich schon bei Tageslicht (${deltaE00Text(daylight)}).`,
  "metameric-pair": ({ daylight, lamp, index }) =>
    `Ein metameres Paar: gleich bei Tageslicht (${deltaE00Text(daylight)}), verschieden unter ${LAMP_NAMES[lamp]} (${deltaE00Text(index)} durch das Licht allein).`,
  "matches-in-both-lights": ({ daylight, index }) =>
    `Gleich bei Tageslicht (${deltaE00Text(daylight)}) und unter Glühlampe, weißer LED oder Leuchtstofflampe nicht weiter auseinander als ${deltaE00Text(index)}.`,

  "impossible-colour": ({ viewing, ...lab }) =>
    `Keine Oberfläche hat diese Farbe unter ${viewingText(viewing)}: ${labText(lab)}.`,
  "lamplight-needs-a-spectrum": ({ from, to }) =>
    `Nur ein Spektrum sagt, wie sich eine Farbe von ${viewingText(from)} zu ${viewingText(to)} ändert.`,
  "lighter-than-munsell-white": ({ luminanceFactor }) =>
    `Heller als das Weiß der Munsell-Skala (Y ${decimals(luminanceFactor, 1)}), daher ohne Munsell-Notation.`,
  "beyond-munsell-renotation": (lab) =>
    `Außerhalb der Munsell-Renotation (${labText(lab)}), daher ohne Munsell-Notation.`,
};

function underEach(shifts: ByLamp, lamps: readonly Lamp[] = LAMPS): string {
  return listed(
    lamps.map(
      (lamp, i) =>
        `${i === 0 ? "\u0394E00 " : ""}${decimals(shifts[lamp], 1)} unter ${LAMP_NAMES[lamp]}`,
    ),
  );
}

function shifted(shift: LampShift, how: string): string {
  const changes = [shift.lightness, shift.chroma].flatMap((change) =>
    change === "same" ? [] : [CHANGES[change]],
  );
  const also = changes.length === 0 ? "" : ` und wird ${listed(changes)}`;
  const others = LAMPS.filter((lamp) => lamp !== shift.lamp);
  return sentence(
    `verschiebt sich ${how} nach ${HUE_NOUNS[shift.towards]} unter ${LAMP_NAMES[shift.lamp]}${also}${bracketed(deltaE00Text(shift[shift.lamp]))}; ${underEach(shift, others)}`,
  );
}
