import { STATED_QUARTZ } from "../../hazard/studio/quartz.ts";
import { hazardEffects } from "../../hazard/texts/hazard-effect.ts";
import type { StudioStatement } from "../../hazard/statements.ts";
import type { BenchTestUse } from "../../hazard/studio/bench-test.ts";
import type { Quantity } from "../../quantities/interval.ts";
import type { WordingsOf } from "../../quantities/statement.ts";
import { HAZARD_EFFECTS } from "./hazard-effects.ts";
import { bracketed, listed, micrometres, namesWithin, significant, withUnit } from "./phrases.ts";

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
export const STUDIO_WORDINGS: WordingsOf<StudioStatement> = {
  "captured-exhaust-first": (v) =>
    `Weigh and mull ${pigments(v)} where an extractor catches the dust, or under a cover; a mask comes on top of that.`,
  "no-draught-across-powder": (v) => `No draught and no fan across the powder of ${pigments(v)}.`,
  "respirator-ffp2": (v) =>
    `For ${pigments(v)} wear a fitted mask of FFP2 or N95 at least, as well as the extractor and never in its place.`,
  "respirator-p3": (v) =>
    `For ${pigments(v)} wear a fitted respirator with a P3 or P100 filter, or a mask of FFP3, as well as the extractor and never in its place.`,
  "no-ignition-source": (v) => `No flame, spark or other source of ignition near ${it(v)}.`,
  gloves: ({ pigments: of }) =>
    of === undefined ? "Wear gloves." : `Wear gloves with ${namesWithin(of)}.`,
  "eye-protection": (v) => `Protect the eyes from ${it(v)}.`,
  "pregnant-or-nursing-keep-away": (v) =>
    `Anyone who is or may become pregnant, or is nursing, keeps away from ${it(v)}.`,
  "workplace-lead-rules": (v) =>
    `The workplace rules on lead apply to ${it(v)}; local codes and licensed practice come first.`,
  "work-clothes-apart": (v) =>
    `Clothes worn for ${pigments(v)} stay in the workshop: change before going home, wash them apart, and neither shake nor blow the dust out.`,
  "children-keep-away": (v) => `Keep children away from ${it(v)}.`,
  "no-food-in-the-room": (v) => `No eating, drinking or smoking in the room with ${it(v)}.`,
  "no-food-no-brush-in-mouth": () =>
    "No food or drink beside the paint, and do not point a brush in the mouth.",
  "not-on-skin-or-food": () =>
    "Not for a child's use; not on skin, not on food or what touches food. Put the lid on.",
  "fresh-air": () => "Air the room while you paint and while the paint dries.",
  "no-dry-sanding": () => "Do not sand the film dry: sand it wet and wipe it up.",
  "never-sand-dry": () => "Never sand the film dry.",
  "no-spraying-no-heating": () => "Never spray it, and never heat it.",
  "spray-only-with-captured-exhaust": () =>
    "Spray it only where an extractor catches the mist, with a fitted respirator as well.",
  "no-heating-of-oil": () => "Do not heat the oil or the paint.",
  "wet-wipe-no-sweeping": () =>
    "Wipe up wet: no dry sweeping and no household vacuum, only one with a class H filter.",
  "wash-hands": () => "Wash hands after work and before eating.",
  "oily-rags": () =>
    "Rags, paper and filters soaked in drying oil can catch fire by themselves: spread them singly outdoors to dry hard, or soak them in water in a closed metal can that is emptied daily; never in a bin or a heap.",
  "not-down-the-drain": () => "Neither paint nor oil nor rinsings go down the drain.",
  "hazardous-waste": () => "Leftovers are hazardous waste: hand them in by local rules.",

  dustiness: ({
    class: of,
    bulkDensityLooseGPerMl: loose,
    bulkDensityTappedGPerMl: tapped,
    particleSizeUm,
  }) =>
    `${DUSTINESS[of]}${bracketed(bulk(loose, "as poured"), bulk(tapped, "tapped"), grain(particleSizeUm))}.`,
  "nuisance-dust": () => "Any fine dust is bad for the lungs.",
  "dust-can-burn": ({ nature }) => NATURES[nature],
  "dust-goes-up-again": () => "Sweeping puts the dust back into the air.",
  "film-turns-to-dust": () => "Sanding turns the film to dust.",
  "droplets-are-breathed-in": () => "Spray is breathed in.",
  "holds-metal": ({ metals }) => `It holds ${listed(metals.map(metalWord))}.`,
  "states-hazard": ({ statements }) => `It ${effects(statements)}.`,
  "hazard-data-missing": ({ ingredients }) =>
    `No hazard data recorded for ${namesWithin(ingredients)}; treat as hazardous.`,
  "holds-sensitiser": ({ names }) =>
    `It holds ${namesWithin(names)}, to which skin can become allergic.`,
  "may-hold-quartz": ({ what }) =>
    what === STATED_QUARTZ
      ? "By its supplier's paper it holds respirable quartz, which scars the lungs and can cause cancer."
      : `It is ${withArticle(what)}. Its dust may hold respirable quartz, which scars the lungs and can cause cancer, unless its supplier's paper says that there is none.`,
  "quartz-in-the-paint": ({ pigments: of, known }) =>
    known === "stated"
      ? `There is respirable quartz in ${namesWithin(of)}: breathed in, it scars the lungs and can cause cancer.`
      : `There may be respirable quartz in ${namesWithin(of)}: breathed in, it scars the lungs and can cause cancer.`,
  "hazard-of-its-dust": ({ pigments: of, statements }) =>
    `The dust of ${namesWithin(of)} ${effects(statements)}.`,
  "bench-test-with-care": ({ uses }) =>
    `${uses.map((use) => BENCH_CARE[use]).join(" ")} A pinch is enough; eye protection, and nothing near that burns or is eaten.`,
  "paint-is-no-food": () => "Do not swallow paint.",
  "drying-oil": () => "A drying oil takes up oxygen and grows warm by itself.",
  "paint-and-oil-foul-water": () => "Paint and oil foul water.",
};

/** What makes each kind of test hold no harm. */
const BENCH_CARE: Readonly<Record<BenchTestUse, string>> = {
  heat: "With heat: under captured exhaust or outdoors, on a metal spoon held with tongs, and never with a pigment of lead, cadmium, mercury, arsenic, chromate, antimony or copper.",
  acid: "With acid: a drop and no more, in fresh air, gloves on; never on a sulphide, a cyanide or an arsenic pigment in any quantity.",
  lye: "With lye or soda: gloves on, and not near the eyes.",
  peroxide: "With peroxide: three per cent and no stronger, gloves on, never in a closed vessel.",
  solvent: "With a solvent: in fresh air, and no flame in the room.",
};

/** What the hazards of a label do, after a subject. */
function effects(statements: readonly string[]): string {
  return listed(hazardEffects(statements).map((effect) => HAZARD_EFFECTS[effect]));
}

interface OfPigments {
  readonly pigments?: readonly string[];
}

function withArticle(what: string): string {
  return /^(kaolin|mica|gypsum|talc|silica|green earth|natural chalk)/.test(what)
    ? what
    : `a ${what}`;
}

function pigments({ pigments: of }: OfPigments): string {
  return of === undefined ? "the pigment" : namesWithin(of);
}

/** The pigments that a caution names, or the paint when it names none. */
function it({ pigments: of }: OfPigments): string {
  return of === undefined ? "the paint" : namesWithin(of);
}

/** As a reader knows it. */
export function metalWord(metal: string): string {
  if (metal === "chromate") return "hexavalent chromium";
  return metal === "barium" ? "soluble barium" : metal;
}

function bulk(density: Quantity | undefined, how: string): string | undefined {
  return density === undefined ? undefined : `${withUnit(significant(density, 2), "g/ml")} ${how}`;
}

function grain(um: Quantity | undefined): string | undefined {
  return um === undefined ? undefined : `grain ${micrometres(um)}`;
}
