/**
 * Cautions of the studio and workshop, by operation, each with its reason. They
 * stand beside the label and never instead of it; local codes and licensed
 * practice come first.
 *
 * @source practice-hazard
 */
import type { StatementOf } from "../../quantities/statement.ts";
import { dustiness, type Powder } from "./dustiness.ts";
import type { MetalRow } from "./metal-content.ts";
import type { Ingredient } from "../classify/composition.ts";
import type { PigmentNature } from "./pigment-nature.ts";
import {
  anyMetal,
  BURNS,
  EYES,
  forSkin,
  forUnborn,
  graveDust,
  isGeneralReason,
  LIGHT_FILTER_NOT_ENOUGH,
  material,
  noHeat,
  noMetal,
  reasonOf,
  SKIN,
  SPECIAL_WASTE,
  specialWaste,
  UNBORN,
  VAPOURS,
  WATER,
  type Material,
  type StudioReason,
} from "./studio-material.ts";
import type { PigmentIdentity } from "../classify/substance.ts";
import type { HazardKnowledge } from "../hazard-knowledge.ts";
import { classElements } from "../classify/hazard-class.ts";
import { isHazardCode, statementMeaning } from "../texts/hazard-statement.ts";
import { singleStatements } from "../texts/single-statements.ts";
import { mayHoldQuartz, STATED_QUARTZ } from "./quartz.ts";

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
  /** Left out, nobody knows it: its dust is treated as if it could burn. */
  readonly nature?: PigmentNature | undefined;
  /** As a paper states it; 0 where it states none. */
  readonly respirableQuartzPercent?: number | undefined;
}

export interface StudioPaint {
  readonly ingredients: readonly Ingredient[];
  readonly hazardStatements: readonly string[];
  /** What ingredients state of their dust: the label of a paste leaves it out, and a dry film gives it off again. */
  readonly ofDust: readonly string[];
  /** Names of sensitisers below the limit that classifies (EUH208). */
  readonly sensitisers: readonly string[];
  /** Whether the vehicle holds an oil that dries by itself. */
  readonly dryingOil: boolean;
}

interface OfPigments {
  /** Slugs; of the paint when left out. */
  readonly pigments?: readonly string[];
}

/** Cautions that name the pigments they are for, or else speak of the paint. */
export const CAUTIONS = [
  "captured-exhaust-first",
  "no-draught-across-powder",
  "respirator-ffp2",
  "respirator-p3",
  "no-ignition-source",
  "gloves",
  "eye-protection",
  "pregnant-or-nursing-keep-away",
  "workplace-lead-rules",
  "work-clothes-apart",
  "children-keep-away",
  "no-food-in-the-room",
  "no-food-no-brush-in-mouth",
  "not-on-skin-or-food",
  "fresh-air",
  "no-dry-sanding",
  "never-sand-dry",
  "spray-only-with-captured-exhaust",
  "no-spraying-no-heating",
  "no-heating-of-oil",
  "wet-wipe-no-sweeping",
  "wash-hands",
  "oily-rags",
  "not-down-the-drain",
  "hazardous-waste",
] as const;
type Caution = (typeof CAUTIONS)[number];

export type CautionStatement = { readonly [R in Caution]: StatementOf<R, OfPigments> }[Caution];

export type StudioCaution = CautionStatement & {
  readonly operation: StudioOperation;
  /** Why: the metal, the statement, the dustiness, the oil. */
  readonly reason: StudioReason;
  /** Whether it holds for every colour alike: said once for all of them. */
  readonly general: boolean;
};

/**
 * The cautions, in the order of the operations; in each, what is particular to this
 * colour comes first. One a rule, however many pigments call for it.
 */
export function studioCautions(
  pigments: readonly StudioPigment[],
  paint: StudioPaint,
  knowledge: Pick<HazardKnowledge, "metals" | "quartz">,
): StudioCaution[] {
  const wet = material(paint.ingredients, paint.hazardStatements, knowledge.metals);
  const dust = paintDust(wet, pigments, paint, knowledge.quartz);
  return [
    merged(pigments.flatMap((pigment) => weighing(pigment, knowledge))),
    painting(wet, paint),
    sanding(dust),
    heatingOrSpraying(wet, dust, paint),
    cleaning(dust, paint, pigments.length > 0),
    disposal(wet, paint),
  ].flatMap((operation) =>
    operation.toSorted((one, other) => Number(one.general) - Number(other.general)),
  );
}

function caution(
  operation: StudioOperation,
  rule: Caution,
  reason: StudioReason,
  values: OfPigments = {},
): StudioCaution {
  return {
    operation,
    rule,
    values,
    reason,
    general: isGeneralReason(reason),
    source: rule === "oily-rags" ? "29-cfr-1926-252" : "practice-hazard",
  };
}

function when(
  reason: StudioReason | undefined,
  make: (reason: StudioReason) => StudioCaution,
): StudioCaution[] {
  return reason === undefined ? [] : [make(reason)];
}

function weighing(
  pigment: StudioPigment,
  { metals, quartz }: Pick<HazardKnowledge, "metals" | "quartz">,
): StudioCaution[] {
  const operation = "weighing and mulling";
  const dry = material(pigment.ingredients, pigment.hazardStatements, metals);
  const of = { pigments: [pigment.slug] };
  const dusts = dustReason(pigment);
  const stone = mayHoldQuartz(pigment, quartz);
  const quartzDust: StudioReason | undefined =
    stone === undefined ? undefined : { rule: "may-hold-quartz", values: { what: stone } };
  const known =
    reasonOf(dry, graveDust, undefined) ??
    (stone === STATED_QUARTZ ? quartzDust : undefined) ??
    reasonOf(dry, noMetal, LIGHT_FILTER_NOT_ENOUGH);
  const grave = known ?? quartzDust ?? reasonOf(dry, noMetal, undefined, true);
  const { nature } = pigment;
  const burns: StudioReason | undefined =
    nature === "mineral"
      ? reasonOf(dry, noMetal, BURNS)
      : { rule: "dust-can-burn", values: { nature: nature ?? "not known" } };
  return [
    caution(operation, "captured-exhaust-first", dusts, of),
    caution(operation, "no-draught-across-powder", dusts, of),
    grave === undefined
      ? caution(operation, "respirator-ffp2", { rule: "nuisance-dust", values: {} }, of)
      : caution(operation, "respirator-p3", grave, of),
    ...when(burns, (reason) => caution(operation, "no-ignition-source", reason, of)),
    ...when(reasonOf(dry, forSkin, SKIN, true), (reason) =>
      caution(operation, "gloves", reason, of),
    ),
    ...when(reasonOf(dry, noMetal, EYES), (reason) =>
      caution(operation, "eye-protection", reason, of),
    ),
    ...when(reasonOf(dry, forUnborn, UNBORN), (reason) =>
      caution(operation, "pregnant-or-nursing-keep-away", reason, of),
    ),
    ...when(reasonOf(dry, isLead, undefined), (reason) =>
      caution(operation, "workplace-lead-rules", reason, of),
    ),
    ...when(known, (reason) => caution(operation, "work-clothes-apart", reason, of)),
    caution(operation, "children-keep-away", known ?? { rule: "nuisance-dust", values: {} }, of),
    caution(operation, "no-food-in-the-room", known ?? { rule: "nuisance-dust", values: {} }, of),
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
  return line?.values.pigments ?? [];
}

function isLead({ metal }: MetalRow): boolean {
  return metal === "lead";
}

function painting(wet: Material, { sensitisers }: StudioPaint): StudioCaution[] {
  const operation = "painting";
  const plain: StudioReason = { rule: "paint-is-no-food", values: {} };
  const grave = reasonOf(wet, graveDust, LIGHT_FILTER_NOT_ENOUGH, true);
  const skin =
    reasonOf(wet, forSkin, SKIN, true) ??
    (sensitisers.length === 0
      ? undefined
      : { rule: "holds-sensitiser", values: { names: sensitisers } });
  const any = grave ?? plain;
  return [
    caution(operation, "no-food-no-brush-in-mouth", any),
    caution(operation, "not-on-skin-or-food", plain),
    ...when(skin, (reason) => caution(operation, "gloves", reason)),
    ...when(reasonOf(wet, noMetal, EYES), (reason) => caution(operation, "eye-protection", reason)),
    ...when(reasonOf(wet, noMetal, VAPOURS), (reason) => caution(operation, "fresh-air", reason)),
    ...when(reasonOf(wet, noMetal, BURNS), (reason) =>
      caution(operation, "no-ignition-source", reason),
    ),
    ...when(reasonOf(wet, forUnborn, UNBORN), (reason) =>
      caution(operation, "pregnant-or-nursing-keep-away", reason),
    ),
    caution(operation, "children-keep-away", any),
  ];
}

/**
 * Why the dust of the dry film, spilt powder and a mist of the paint are not only a nuisance: its
 * metals, quartz that a paper states, what the label says or leaves out since a paste gives off no
 * dust, stone that may hold quartz, missing data.
 */
function paintDust(
  wet: Material,
  pigments: readonly StudioPigment[],
  { ofDust }: StudioPaint,
  rows: HazardKnowledge["quartz"],
): StudioReason | undefined {
  const stones = pigments.map((pigment) => ({
    slug: pigment.slug,
    stone: mayHoldQuartz(pigment, rows),
  }));
  const quartz = (known: "stated" | "not known"): StudioReason | undefined => {
    const found = stones.filter(
      ({ stone }) => stone !== undefined && (stone === STATED_QUARTZ) === (known === "stated"),
    );
    return found.length === 0
      ? undefined
      : {
          rule: "quartz-in-the-paint",
          values: { pigments: found.map(({ slug }) => slug), known },
        };
  };
  const left = new Set(ofDust.filter(isGraveDust).map(aspectOf));
  const dusts = pigments.map(({ slug, hazardStatements }) => ({
    slug,
    // A pigment that holds too little of it for its own label gives off no such dust.
    statements: hazardStatements
      .flatMap(singleStatements)
      .filter((code) => isGraveDust(code) && left.has(aspectOf(code))),
  }));
  const grave = dusts.filter(({ statements }) => statements.length > 0);
  return (
    reasonOf(wet, graveDust, undefined) ??
    quartz("stated") ??
    reasonOf(wet, noMetal, LIGHT_FILTER_NOT_ENOUGH) ??
    (grave.length === 0
      ? undefined
      : {
          rule: "hazard-of-its-dust",
          values: {
            pigments: grave.map(({ slug }) => slug),
            statements: [...new Set(grave.flatMap(({ statements }) => statements))],
          },
        }) ??
    quartz("not known") ??
    reasonOf(wet, noMetal, undefined, true)
  );
}

function isGraveDust(code: string): boolean {
  return LIGHT_FILTER_NOT_ENOUGH.test(code);
}

/** What a statement is about: H372 and H373 alike. */
function aspectOf(code: string): string {
  if (!isHazardCode(code)) return code;
  const { classes, route } = statementMeaning(code);
  return `${classElements(classes[0]).family} ${route ?? ""}`;
}

function sanding(dust: StudioReason | undefined): StudioCaution[] {
  return [
    dust === undefined
      ? caution("sanding", "no-dry-sanding", { rule: "film-turns-to-dust", values: {} })
      : caution("sanding", "never-sand-dry", dust),
  ];
}

function heatingOrSpraying(
  wet: Material,
  dust: StudioReason | undefined,
  { dryingOil }: StudioPaint,
): StudioCaution[] {
  const operation = "heating or spraying";
  // What nobody has classified may hold a metal that gives off fumes.
  const fumes = reasonOf(wet, noHeat, undefined, true);
  return [
    fumes === undefined
      ? caution(
          operation,
          "spray-only-with-captured-exhaust",
          dust ?? { rule: "droplets-are-breathed-in", values: {} },
        )
      : caution(operation, "no-spraying-no-heating", fumes),
    ...(dryingOil
      ? [caution(operation, "no-heating-of-oil", { rule: "drying-oil", values: {} })]
      : []),
  ];
}

function cleaning(
  dust: StudioReason | undefined,
  { dryingOil }: StudioPaint,
  hasPowder: boolean,
): StudioCaution[] {
  const operation = "cleaning";
  return [
    ...(hasPowder
      ? [
          caution(
            operation,
            "wet-wipe-no-sweeping",
            dust ?? { rule: "dust-goes-up-again", values: {} },
          ),
        ]
      : []),
    caution(operation, "wash-hands", { rule: "paint-is-no-food", values: {} }),
    ...(dryingOil ? [caution(operation, "oily-rags", { rule: "drying-oil", values: {} })] : []),
  ];
}

function disposal(wet: Material, { dryingOil }: StudioPaint): StudioCaution[] {
  const operation = "disposal";
  const special = reasonOf(wet, specialWaste, SPECIAL_WASTE, true);
  return [
    ...(dryingOil ? [caution(operation, "oily-rags", { rule: "drying-oil", values: {} })] : []),
    caution(
      operation,
      "not-down-the-drain",
      reasonOf(wet, anyMetal, WATER) ?? { rule: "paint-and-oil-foul-water", values: {} },
    ),
    ...when(special, (reason) => caution(operation, "hazardous-waste", reason)),
  ];
}
