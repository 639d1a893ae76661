/**
 * Cautions of the studio and workshop, by operation, each with its reason. They
 * stand beside the label and never instead of it; local codes and licensed
 * practice come first.
 *
 * @source practice-hazard
 */
import type { Statement } from "../../quantities/statement.ts";
import { dustiness, type Powder } from "./dustiness.ts";
import type { CautionRule } from "../classify/hazard-rules.ts";
import type { Ingredient } from "../classify/composition.ts";
import { pigmentNature, type PigmentNature } from "./pigment-nature.ts";
import {
  BURNS,
  DUST_METALS,
  EYES,
  FUME_METALS,
  LIGHT_FILTER_NOT_ENOUGH,
  material,
  reasonOf,
  SKIN,
  SPECIAL_WASTE,
  UNBORN,
  VAPOURS,
  WATER,
  type Material,
  type StudioReason,
} from "./studio-material.ts";
import type { PigmentIdentity } from "../classify/substance.ts";

export const STUDIO_OPERATIONS = [
  "weighing and mulling",
  "painting",
  "sanding",
  "heating or spraying",
  "cleaning",
  "disposal",
] as const;
export type StudioOperation = (typeof STUDIO_OPERATIONS)[number];

export interface StudioPigment extends PigmentIdentity, Powder {
  readonly slug: string;
  readonly name: string;
  readonly colourIndexNumber?: string | undefined;
  /** What the dry pigment is made of, fractions of the pigment: itself at 1, or its parts. */
  readonly ingredients: readonly Ingredient[];
  /** On the dry pigment's label. */
  readonly hazardStatements: readonly string[];
  /** Left out, it follows from Colour Index number or name. */
  readonly nature?: PigmentNature | undefined;
}

export interface StudioPaint {
  readonly ingredients: readonly Ingredient[];
  readonly hazardStatements: readonly string[];
  /** Names of sensitisers below the limit that classifies (EUH208). */
  readonly sensitisers: readonly string[];
  /** Whether the vehicle holds an oil that dries by itself. */
  readonly dryingOil: boolean;
}

export interface StudioCaution extends Statement {
  readonly rule: CautionRule;
  readonly operation: StudioOperation;
  /** Why: the metal, the statement, the dustiness, the oil. */
  readonly reason: StudioReason;
}

/** The cautions, in the order of the operations; one a rule, however many pigments call for it. */
export function studioCautions(
  pigments: readonly StudioPigment[],
  paint: StudioPaint,
): StudioCaution[] {
  const wet = material(paint.ingredients, paint.hazardStatements);
  return [
    ...merged(pigments.flatMap(weighing)),
    ...painting(wet, paint),
    ...sanding(wet),
    ...heatingOrSpraying(wet, paint),
    ...cleaning(wet, paint, pigments.length > 0),
    ...disposal(wet, paint),
  ];
}

function caution(
  operation: StudioOperation,
  rule: CautionRule,
  reason: StudioReason,
  values: Statement["values"] = {},
): StudioCaution {
  return {
    operation,
    rule,
    values,
    reason,
    source: rule === "oily-rags" ? "29-cfr-1926-252" : "practice-hazard",
  };
}

function when(
  reason: StudioReason | undefined,
  make: (reason: StudioReason) => StudioCaution,
): StudioCaution[] {
  return reason === undefined ? [] : [make(reason)];
}

function weighing(pigment: StudioPigment): StudioCaution[] {
  const operation = "weighing and mulling";
  const dry = material(pigment.ingredients, pigment.hazardStatements);
  const of = { pigments: [pigment.slug] };
  const dusts = dustReason(pigment);
  const grave = reasonOf(dry, DUST_METALS, LIGHT_FILTER_NOT_ENOUGH, true);
  const nature = pigment.nature ?? pigmentNature(pigment);
  const burns: StudioReason | undefined =
    nature === "mineral"
      ? reasonOf(dry, [], BURNS)
      : { rule: "dust-can-burn", values: { nature: nature ?? "not known" } };
  return [
    caution(operation, "captured-exhaust-first", dusts, of),
    caution(operation, "no-draught-across-powder", dusts, of),
    grave === undefined
      ? caution(operation, "respirator-ffp2", { rule: "nuisance-dust", values: {} }, of)
      : caution(operation, "respirator-p3", grave, of),
    ...when(burns, (reason) => caution(operation, "no-ignition-source", reason, of)),
    ...when(reasonOf(dry, DUST_METALS, SKIN, true), (reason) =>
      caution(operation, "gloves", reason, of),
    ),
    ...when(reasonOf(dry, [], EYES), (reason) => caution(operation, "eye-protection", reason, of)),
    ...when(reasonOf(dry, ["lead"], UNBORN), (reason) =>
      caution(operation, "pregnant-or-nursing-keep-away", reason, of),
    ),
    ...when(reasonOf(dry, ["lead"], undefined), (reason) =>
      caution(operation, "workplace-lead-rules", reason, of),
    ),
    caution(operation, "children-keep-away", grave ?? { rule: "nuisance-dust", values: {} }, of),
    caution(operation, "no-food-in-the-room", grave ?? { rule: "nuisance-dust", values: {} }, of),
  ];
}

function dustReason(pigment: StudioPigment): StudioReason {
  const {
    bulkDensityLooseGPerMl: loose,
    bulkDensityTappedGPerMl: tapped,
    particleSizeUm,
  } = pigment;
  return {
    rule: "dustiness",
    values: {
      class: dustiness(pigment) ?? "not known",
      ...(loose === undefined ? {} : { bulkDensityLooseGPerMl: loose }),
      ...(tapped === undefined ? {} : { bulkDensityTappedGPerMl: tapped }),
      ...(particleSizeUm === undefined ? {} : { particleSizeUm }),
    },
  };
}

/** Two pigments that call for the same thing for the same reason share a line. */
function merged(cautions: readonly StudioCaution[]): StudioCaution[] {
  const lines = new Map<string, StudioCaution>();
  for (const each of cautions) {
    const key = JSON.stringify([each.rule, each.reason]);
    const line = lines.get(key);
    const pigments = [...new Set([...slugsOf(line), ...slugsOf(each)])].sort();
    lines.set(key, { ...each, values: { ...each.values, pigments } });
  }
  return [...lines.values()];
}

function slugsOf(line: StudioCaution | undefined): readonly string[] {
  const pigments = line?.values["pigments"];
  return Array.isArray(pigments) ? pigments.map(String) : [];
}

function painting(wet: Material, { sensitisers }: StudioPaint): StudioCaution[] {
  const operation = "painting";
  const grave = reasonOf(wet, DUST_METALS, LIGHT_FILTER_NOT_ENOUGH, true);
  const skin =
    reasonOf(wet, DUST_METALS, SKIN, true) ??
    (sensitisers.length === 0
      ? undefined
      : { rule: "holds-sensitiser", values: { names: sensitisers } });
  const any = grave ?? { rule: "paint-is-no-food", values: {} };
  return [
    caution(operation, "no-food-no-brush-in-mouth", any),
    ...when(skin, (reason) => caution(operation, "gloves", reason)),
    ...when(reasonOf(wet, [], EYES), (reason) => caution(operation, "eye-protection", reason)),
    ...when(reasonOf(wet, [], VAPOURS), (reason) => caution(operation, "fresh-air", reason)),
    ...when(reasonOf(wet, [], BURNS), (reason) => caution(operation, "no-ignition-source", reason)),
    ...when(reasonOf(wet, ["lead"], UNBORN), (reason) =>
      caution(operation, "pregnant-or-nursing-keep-away", reason),
    ),
    caution(operation, "children-keep-away", any),
  ];
}

function sanding(wet: Material): StudioCaution[] {
  const grave = reasonOf(wet, DUST_METALS, LIGHT_FILTER_NOT_ENOUGH, true);
  return [
    grave === undefined
      ? caution("sanding", "no-dry-sanding", { rule: "film-turns-to-dust", values: {} })
      : caution("sanding", "never-sand-dry", grave),
  ];
}

function heatingOrSpraying(wet: Material, { dryingOil }: StudioPaint): StudioCaution[] {
  const operation = "heating or spraying";
  const fumes = reasonOf(wet, FUME_METALS, undefined);
  return [
    fumes === undefined
      ? caution(
          operation,
          "spray-only-with-captured-exhaust",
          reasonOf(wet, DUST_METALS, LIGHT_FILTER_NOT_ENOUGH, true) ?? {
            rule: "droplets-are-breathed-in",
            values: {},
          },
        )
      : caution(operation, "no-spraying-no-heating", fumes),
    ...(dryingOil
      ? [caution(operation, "no-heating-of-oil", { rule: "drying-oil", values: {} })]
      : []),
  ];
}

function cleaning(wet: Material, { dryingOil }: StudioPaint, hasPowder: boolean): StudioCaution[] {
  const operation = "cleaning";
  return [
    ...(hasPowder
      ? [
          caution(
            operation,
            "wet-wipe-no-sweeping",
            reasonOf(wet, DUST_METALS, LIGHT_FILTER_NOT_ENOUGH, true) ?? {
              rule: "dust-goes-up-again",
              values: {},
            },
          ),
        ]
      : []),
    caution(operation, "wash-hands", { rule: "paint-is-no-food", values: {} }),
    ...(dryingOil ? [caution(operation, "oily-rags", { rule: "drying-oil", values: {} })] : []),
  ];
}

function disposal(wet: Material, { dryingOil }: StudioPaint): StudioCaution[] {
  const operation = "disposal";
  // Manganese and cobalt are bound fast in their pigments: a label of their own sends them to the special waste, not their name.
  const special = reasonOf(wet, FUME_METALS, SPECIAL_WASTE, true);
  return [
    ...(dryingOil ? [caution(operation, "oily-rags", { rule: "drying-oil", values: {} })] : []),
    caution(
      operation,
      "not-down-the-drain",
      reasonOf(wet, DUST_METALS, WATER) ?? { rule: "paint-and-oil-foul-water", values: {} },
    ),
    ...when(special, (reason) => caution(operation, "hazardous-waste", reason)),
  ];
}
