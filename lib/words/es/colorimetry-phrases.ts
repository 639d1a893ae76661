import { LAMPS, type ByLamp, type Lamp } from "../../colorimetry/lamps.ts";
import type { LampShift } from "../../colorimetry/lamplight.ts";
import { TOWARD } from "../closed-sets.ts";
import { viewingIn } from "../phrases.ts";
import { bracketed, decimals, deltaE00Text, listed, sentence } from "./phrases.ts";

/** Lamps as they are bought. */
export const LAMP_NAMES: Readonly<Record<Lamp, string>> = {
  incandescent: "una lámpara incandescente o halógena",
  led: "un LED blanco (4100\u00a0K)",
  fluorescent: "un tubo fluorescente (4000\u00a0K)",
};

const CHANGES = {
  lighter: "se aclara",
  darker: "se oscurece",
  stronger: "se aviva",
  duller: "se apaga",
} as const;

export const viewingText = viewingIn("lámpara");

export function underEach(shifts: ByLamp, lamps: readonly Lamp[] = LAMPS): string {
  return listed(
    lamps.map(
      (lamp, i) =>
        `${i === 0 ? "\u0394E00 " : ""}${decimals(shifts[lamp], 1)} bajo ${LAMP_NAMES[lamp]}`,
    ),
  );
}

export function shifted(shift: LampShift, how: string): string {
  const changes = [shift.lightness, shift.chroma].flatMap((change) =>
    change === "same" ? [] : [CHANGES[change]],
  );
  const also = changes.length === 0 ? "" : `, y ${listed(changes)}`;
  const others = LAMPS.filter((lamp) => lamp !== shift.lamp);
  return sentence(
    `vira ${how} ${TOWARD[shift.towards].es} bajo ${LAMP_NAMES[shift.lamp]}${also}${bracketed(deltaE00Text(shift[shift.lamp]))}; ${underEach(shift, others)}`,
  );
}
