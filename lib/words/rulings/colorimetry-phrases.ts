import type { LampShift } from "../../colorimetry/lamplight.ts";
import { LAMPS, type ByLamp, type Lamp } from "../../colorimetry/lamps.ts";
import type { LabViewing } from "../../colorimetry/viewing.ts";
import { TOWARD } from "../closed-sets.ts";
import type { InEach } from "../in-each.ts";
import { inEach } from "../phrases-in-each.ts";

/** Lamps as they are bought. */
export const LAMP_NAMES: Readonly<Record<Lamp, InEach>> = {
  incandescent: {
    en: "an incandescent or halogen lamp",
    de: "einer Glüh- oder Halogenlampe",
    fr: "une lampe à incandescence ou halogène",
    es: "una lámpara incandescente o halógena",
  },
  led: {
    en: "a white LED (4100\u00a0K)",
    de: "einer weißen LED (4100 K)",
    fr: "une LED blanche (4\u202f100\u00a0K)",
    es: "un LED blanco (4100\u00a0K)",
  },
  fluorescent: {
    en: "a fluorescent tube (4000\u00a0K)",
    de: "einer Leuchtstofflampe (4000 K)",
    fr: "un tube fluorescent (4\u202f000\u00a0K)",
    es: "un tubo fluorescente (4000\u00a0K)",
  },
};

/** "D65/10" as "D65, 10°"; a viewing of lamplight says so. */
export function viewingText(viewing: LabViewing): InEach {
  const [light = "", observer = ""] = viewing.split("/");
  return inEach(
    (_, language) => `${light === "A" ? `A (${LAMPLIGHT[language]})` : light}, ${observer}\u00b0`,
  );
}

const LAMPLIGHT: InEach = { en: "lamplight", de: "Lampenlicht", fr: "lampe", es: "lámpara" };

const UNDER: InEach = { en: "under", de: "unter", fr: "sous", es: "bajo" };

export function underEach(shifts: ByLamp, lamps: readonly Lamp[] = LAMPS): InEach {
  return inEach((p, language) =>
    p.listed(
      lamps.map(
        (lamp, i) =>
          `${i === 0 ? "\u0394E00 " : ""}${p.decimals(shifts[lamp], 1)} ${UNDER[language]} ${LAMP_NAMES[lamp][language]}`,
      ),
    ),
  );
}

/** @param how far, after the verb. */
export function shifted(shift: LampShift, how: InEach): InEach {
  const { towards, lamp } = shift;
  const lit = LAMP_NAMES[lamp];
  const changes = [shift.lightness, shift.chroma].filter((change) => change !== "same");
  const turns = inEach(({ listed }, language) =>
    changes.length === 0
      ? ""
      : `${TURNS[language]}${listed(changes.map((change) => CHANGES[change][language]))}`,
  );
  const by = inEach((p) => p.deltaE00Text(shift[lamp]));
  const others = underEach(
    shift,
    LAMPS.filter((other) => other !== lamp),
  );
  return {
    en: `Shifts ${how.en} towards ${towards} under ${lit.en}${turns.en} (${by.en}); ${others.en}.`,
    de: `Verschiebt sich ${how.de} nach ${TOWARD[towards].de} unter ${lit.de}${turns.de} (${by.de}); ${others.de}.`,
    fr: `Vire ${how.fr} ${TOWARD[towards].fr} sous ${lit.fr}${turns.fr} (${by.fr})\u202f; ${others.fr}.`,
    es: `Vira ${how.es} ${TOWARD[towards].es} bajo ${lit.es}${turns.es} (${by.es}); ${others.es}.`,
  };
}

const TURNS: InEach = { en: ", and turns ", de: " und wird ", fr: ", et ", es: ", y " };

const CHANGES: Readonly<Record<Exclude<LampShift["lightness" | "chroma"], "same">, InEach>> = {
  lighter: { en: "lighter", de: "heller", fr: "s’éclaircit", es: "se aclara" },
  darker: { en: "darker", de: "dunkler", fr: "s’assombrit", es: "se oscurece" },
  stronger: { en: "stronger", de: "kräftiger", fr: "devient plus vif", es: "se aviva" },
  duller: { en: "duller", de: "stumpfer", fr: "devient plus terne", es: "se apaga" },
};
