import { LAMPS, type ByLamp, type Lamp } from "../../colorimetry/lamps.ts";
import type { LampShift } from "../../colorimetry/lamplight.ts";
import { viewingIn } from "../phrases.ts";
import { bracketed, decimals, deltaE00Text, listed, sentence } from "./phrases.ts";

/** Lamps as they are bought. */
export const LAMP_NAMES: Readonly<Record<Lamp, string>> = {
  incandescent: "an incandescent or halogen lamp",
  led: "a white LED (4100\u00a0K)",
  fluorescent: "a fluorescent tube (4000\u00a0K)",
};

export const viewingText = viewingIn("lamplight");

export function underEach(shifts: ByLamp, lamps: readonly Lamp[] = LAMPS): string {
  return listed(
    lamps.map(
      (lamp, i) =>
        `${i === 0 ? "\u0394E00 " : ""}${decimals(shifts[lamp], 1)} under ${LAMP_NAMES[lamp]}`,
    ),
  );
}

export function shifted(shift: LampShift, how: string): string {
  const changes = [shift.lightness, shift.chroma].filter((change) => change !== "same");
  const also = changes.length === 0 ? "" : `, and turns ${listed(changes)}`;
  const others = LAMPS.filter((lamp) => lamp !== shift.lamp);
  return sentence(
    `shifts ${how} towards ${shift.towards} under ${LAMP_NAMES[shift.lamp]}${also}${bracketed(deltaE00Text(shift[shift.lamp]))}; ${underEach(shift, others)}`,
  );
}
