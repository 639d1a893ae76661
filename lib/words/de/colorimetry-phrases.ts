import { LAMPS, type ByLamp, type Lamp } from "../../colorimetry/lamps.ts";
import type { LampShift } from "../../colorimetry/lamplight.ts";
import { TOWARD } from "../closed-sets.ts";
import { viewingIn } from "../phrases.ts";
import { bracketed, decimals, deltaE00Text, listed, sentence } from "./phrases.ts";

/** Lamps as they are bought, after "unter". */
export const LAMP_NAMES: Readonly<Record<Lamp, string>> = {
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

export const viewingText = viewingIn("Lampenlicht");

export function underEach(shifts: ByLamp, lamps: readonly Lamp[] = LAMPS): string {
  return listed(
    lamps.map(
      (lamp, i) =>
        `${i === 0 ? "\u0394E00 " : ""}${decimals(shifts[lamp], 1)} unter ${LAMP_NAMES[lamp]}`,
    ),
  );
}

export function shifted(shift: LampShift, how: string): string {
  const changes = [shift.lightness, shift.chroma].flatMap((change) =>
    change === "same" ? [] : [CHANGES[change]],
  );
  const also = changes.length === 0 ? "" : ` und wird ${listed(changes)}`;
  const others = LAMPS.filter((lamp) => lamp !== shift.lamp);
  return sentence(
    `verschiebt sich ${how} nach ${TOWARD[shift.towards].de} unter ${LAMP_NAMES[shift.lamp]}${also}${bracketed(deltaE00Text(shift[shift.lamp]))}; ${underEach(shift, others)}`,
  );
}
