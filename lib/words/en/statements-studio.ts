import type { CautionReason, CautionRule } from "../../hazard/classify/hazard-rules.ts";
import type { StatementWording } from "../words.ts";
import {
  bracketed,
  listed,
  micrometres,
  namesWithin,
  significant,
  withUnit,
} from "./statements-phrases.ts";
import { hasValue, quantityOf, textsOf, wordOf, type Values } from "./statement-params.ts";

const DUSTINESS = {
  "very dusty": "A very dusty powder",
  dusty: "A dusty powder",
  "less dusty": "A heavy powder, less dusty than most",
  "not known": "How dusty the powder is has not been recorded; treat it as very dusty",
} as const;
const NATURES = {
  "fine carbon": "The dust of fine carbon can burn.",
  organic: "The dust of an organic pigment can burn.",
  "not known": "Whether its dust can burn is not known; treat it as if it could.",
} as const;

/** Cautions of studio and workshop, then the reasons that stand after them, each a sentence of its own. */
export const STUDIO_RULINGS = {
  "captured-exhaust-first": (v) =>
    `Weigh and mull ${pigments(v)} under captured exhaust, or closed in: that comes before any mask.`,
  "no-draught-across-powder": (v) => `No draught and no fan across the powder of ${pigments(v)}.`,
  "respirator-ffp2": (v) =>
    `For ${pigments(v)}, beside the exhaust and not in its place, a fitted mask of FFP2 or N95 at the least.`,
  "respirator-p3": (v) =>
    `For ${pigments(v)}, beside the exhaust and not in its place, a fitted respirator with a P3 or P100 filter.`,
  "no-ignition-source": (v) => `No flame, spark or other source of ignition near ${it(v)}.`,
  gloves: (v) => (hasValue(v, "pigments") ? `Wear gloves with ${pigments(v)}.` : "Wear gloves."),
  "eye-protection": (v) => `Protect the eyes from ${it(v)}.`,
  "pregnant-or-nursing-keep-away": (v) =>
    `Anyone who is or may become pregnant, or is nursing, keeps away from ${it(v)}.`,
  "workplace-lead-rules": (v) =>
    `Workplace rules on lead hold for ${it(v)}; local codes and licensed practice come first.`,
  "children-keep-away": (v) => `Keep children away from ${it(v)}.`,
  "no-food-in-the-room": (v) => `No eating, drinking or smoking in the room with ${it(v)}.`,
  "no-food-no-brush-in-mouth": () =>
    "No food or drink beside the paint, and no brush pointed in the mouth.",
  "fresh-air": () => "Let fresh air through the room while the paint is worked and while it dries.",
  "no-dry-sanding": () => "Do not sand the film dry: sand it wet and wipe it up.",
  "never-sand-dry": () => "Never sand the film dry.",
  "no-spraying-no-heating": () => "Never spray it, and never heat it.",
  "spray-only-with-captured-exhaust": () =>
    "Spray it only under captured exhaust, with a fitted respirator beside it.",
  "no-heating-of-oil": () => "Do not heat the oil or the paint.",
  "wet-wipe-no-sweeping": () =>
    "Wipe up wet: no dry sweeping and no household vacuum, only one with a class H filter.",
  "wash-hands": () => "Wash hands after work and before eating.",
  "oily-rags": () =>
    "Rags, paper and filters soaked in drying oil can catch fire by themselves: spread them singly outdoors to dry hard, or soak them in water in a closed metal can that is emptied daily; never in a bin or a heap.",
  "not-down-the-drain": () => "Neither paint nor oil nor rinsings go down the drain.",
  "hazardous-waste": () => "Leftovers are hazardous waste: hand them in by local rules.",

  dustiness: (v) =>
    `${DUSTINESS[wordOf(v, "class", DUSTINESS)]}${bracketed(bulk(v, "bulkDensityLooseGPerMl", "as poured"), bulk(v, "bulkDensityTappedGPerMl", "tapped"), grain(v))}.`,
  "nuisance-dust": () => "Any fine dust burdens the lungs.",
  "dust-can-burn": (v) => NATURES[wordOf(v, "nature", NATURES)],
  "dust-goes-up-again": () => "Swept dust goes up again.",
  "film-turns-to-dust": () => "Sanding turns the film to dust.",
  "droplets-are-breathed-in": () => "Sprayed droplets are breathed in.",
  "holds-metal": (v) => `It holds ${listed(textsOf(v, "metals").map(metalWord))}.`,
  "states-hazard": (v) => `It carries ${listed(textsOf(v, "statements"))}.`,
  "hazard-data-missing": (v) =>
    `No hazard data recorded for ${namesWithin(textsOf(v, "ingredients"))}; treat as hazardous.`,
  "holds-sensitiser": (v) =>
    `It holds ${namesWithin(textsOf(v, "names"))}, to which skin can become allergic.`,
  "paint-is-no-food": () => "Paint is not for swallowing.",
  "drying-oil": () => "A drying oil takes up oxygen and grows warm by itself.",
  "paint-and-oil-foul-water": () => "Paint and oil foul water.",
} as const satisfies Record<CautionRule | CautionReason, StatementWording>;

function pigments(values: Values): string {
  return namesWithin(textsOf(values, "pigments"));
}

/** The pigments that a caution names, or the paint when it names none. */
function it(values: Values): string {
  return hasValue(values, "pigments") ? pigments(values) : "the paint";
}

/** As a reader knows it. */
export function metalWord(metal: string): string {
  return metal === "chromate" ? "hexavalent chromium" : metal;
}

function bulk(values: Values, name: string, how: string): string | undefined {
  return hasValue(values, name)
    ? `${withUnit(significant(quantityOf(values, name), 2), "g/ml")} ${how}`
    : undefined;
}

function grain(values: Values): string | undefined {
  return hasValue(values, "particleSizeUm")
    ? `grain ${micrometres(quantityOf(values, "particleSizeUm"))}`
    : undefined;
}
