import { LAMPS, type ByLamp, type Lamp } from "../../colorimetry/lamps.ts";
import type { LampShift } from "../../colorimetry/lamplight.ts";
import { TOWARD } from "../closed-sets.ts";
import { viewingIn } from "../phrases.ts";
import { bracketed, decimals, deltaE00Text, listed, sentence } from "./phrases.ts";

/** Lamps as they are bought. */
export const LAMP_NAMES: Readonly<Record<Lamp, string>> = {
  incandescent: "une lampe à incandescence ou halogène",
  led: "une LED blanche (4\u202f100\u00a0K)",
  fluorescent: "un tube fluorescent (4\u202f000\u00a0K)",
};

const CHANGES = {
  lighter: "s’éclaircit",
  darker: "s’assombrit",
  stronger: "devient plus vif",
  duller: "devient plus terne",
} as const;

export const viewingText = viewingIn("lampe");

export function underEach(shifts: ByLamp, lamps: readonly Lamp[] = LAMPS): string {
  return listed(
    lamps.map(
      (lamp, i) =>
        `${i === 0 ? "\u0394E00 " : ""}${decimals(shifts[lamp], 1)} sous ${LAMP_NAMES[lamp]}`,
    ),
  );
}

export function shifted(shift: LampShift, how: string): string {
  const changes = [shift.lightness, shift.chroma].flatMap((change) =>
    change === "same" ? [] : [CHANGES[change]],
  );
  const also = changes.length === 0 ? "" : `, et ${listed(changes)}`;
  const others = LAMPS.filter((lamp) => lamp !== shift.lamp);
  return sentence(
    `vire ${how} ${TOWARD[shift.towards].fr} sous ${LAMP_NAMES[shift.lamp]}${also}${bracketed(deltaE00Text(shift[shift.lamp]))}\u202f; ${underEach(shift, others)}`,
  );
}
