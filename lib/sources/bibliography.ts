import { COLORIMETRY_SOURCES } from "./colorimetry.ts";
import { DRYING_SOURCES } from "./drying.ts";
import { FORMULATION_SOURCES } from "./formulation.ts";
import { HAZARD_SOURCES } from "./hazard.ts";
import { LABEL_SOURCES } from "./labels.ts";
import { LOT_SOURCES } from "./lots.ts";
import { OPTICS_SOURCES } from "./optics.ts";
import { PERMANENCE_SOURCES } from "./permanence.ts";
import { PIGMENT_SOURCES } from "./pigments.ts";
import type { Bibliography } from "./source.ts";

const TEXTS = {
  ...COLORIMETRY_SOURCES,
  ...OPTICS_SOURCES,
  ...FORMULATION_SOURCES,
  ...DRYING_SOURCES,
  ...PERMANENCE_SOURCES,
  ...PIGMENT_SOURCES,
  ...HAZARD_SOURCES,
  ...LABEL_SOURCES,
  ...LOT_SOURCES,
} satisfies Bibliography;

/** A text that the engine itself cites: a key that is none does not compile. */
export type EngineSource = keyof typeof TEXTS;

/** The engine's own bibliography: a workshop's records may cite these keys, and may not define them again. */
export const BIBLIOGRAPHY: Bibliography = TEXTS;
