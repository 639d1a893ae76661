/**
 * Cautions of the studio and workshop, by operation, each with its reason. They
 * stand beside the label and never instead of it; local codes and licensed
 * practice come first.
 *
 * @source practice-hazard
 */
import type { StatementOf } from "../../quantities/statement.ts";
import type { SourceKey } from "../../sources/source.ts";
import { dustiness, type Powder } from "./dustiness.ts";
import type { MetalRow } from "./metal-content.ts";
import type { Ingredient } from "../classify/composition.ts";
import { GAS_RELEASES, GASES, type GasGivenOff } from "./gas-given-off.ts";
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
  type GasOfPigments,
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
  readonly givesOff?: GasGivenOff | undefined;
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

/** What weighing and mulling one dry pigment goes by. */
interface Powdered {
  readonly dry: Material;
  /** How it dusts. */
  readonly dusts: StudioReason;
  /** What is known of its dust that a light mask does not do for; or may be so, for all that is known. */
  readonly known: StudioReason | undefined;
  readonly grave: StudioReason | undefined;
  readonly nature: PigmentNature | undefined;
  readonly gases: readonly GasOfPigments[];
}

/** What the other operations go by: the paint wet, the dust of its film, and its powder. */
interface Painted extends StudioPaint {
  readonly wet: Material;
  /** Why its dust is not only a nuisance. */
  readonly dust: StudioReason | undefined;
  readonly gases: readonly GasOfPigments[];
  readonly hasPowder: boolean;
}

/** A caution with why it is called for; undefined where it is not. */
type CalledFor<R extends string, Facts> = (
  of: Facts,
) => { readonly rule: R; readonly reason: StudioReason } | undefined;

function cautions<Facts>() {
  return <const R extends string>(
      rule: R,
      why: (of: Facts) => StudioReason | undefined,
    ): CalledFor<R, Facts> =>
    (of) => {
      const reason = why(of);
      return reason && { rule, reason };
    };
}
const ofPowder = cautions<Powdered>();
const ofPaint = cautions<Painted>();

const NUISANCE: StudioReason = { rule: "nuisance-dust", values: {} };
const NO_FOOD: StudioReason = { rule: "paint-is-no-food", values: {} };
const DRYING_OIL: StudioReason = { rule: "drying-oil", values: {} };

const WEIGHING = [
  ofPowder("captured-exhaust-first", ({ dusts }) => dusts),
  ofPowder("no-draught-across-powder", ({ dusts }) => dusts),
  ofPowder("respirator-ffp2", ({ grave }) => (grave === undefined ? NUISANCE : undefined)),
  ofPowder("respirator-p3", ({ grave }) => grave),
  ofPowder("no-ignition-source", ({ dry, nature }) =>
    nature === "mineral"
      ? reasonOf(dry, noMetal, BURNS)
      : { rule: "dust-can-burn", values: { nature: nature ?? "not known" } },
  ),
  ofPowder("no-acid", ({ gases }) => setFree(gases)),
  ofPowder("gloves", ({ dry }) => reasonOf(dry, forSkin, SKIN, true)),
  ofPowder("eye-protection", ({ dry }) => reasonOf(dry, noMetal, EYES)),
  ofPowder("pregnant-or-nursing-keep-away", ({ dry }) => reasonOf(dry, forUnborn, UNBORN)),
  ofPowder("workplace-lead-rules", ({ dry }) => reasonOf(dry, isLead, undefined)),
  ofPowder("work-clothes-apart", ({ known }) => known),
  ofPowder("children-keep-away", ({ known }) => known ?? NUISANCE),
  ofPowder("no-food-in-the-room", ({ known }) => known ?? NUISANCE),
] as const;

const PAINTING = [
  ofPaint("no-food-no-brush-in-mouth", graveOrNoFood),
  ofPaint("not-on-skin-or-food", () => NO_FOOD),
  ofPaint(
    "gloves",
    ({ wet, sensitisers }) =>
      reasonOf(wet, forSkin, SKIN, true) ??
      (sensitisers.length === 0
        ? undefined
        : { rule: "holds-sensitiser", values: { names: sensitisers } }),
  ),
  ofPaint("eye-protection", ({ wet }) => reasonOf(wet, noMetal, EYES)),
  ofPaint("fresh-air", ({ wet }) => reasonOf(wet, noMetal, VAPOURS)),
  ofPaint("no-ignition-source", ({ wet }) => reasonOf(wet, noMetal, BURNS)),
  ofPaint("pregnant-or-nursing-keep-away", ({ wet }) => reasonOf(wet, forUnborn, UNBORN)),
  ofPaint("children-keep-away", graveOrNoFood),
] as const;

const SANDING = [
  ofPaint("no-dry-sanding", ({ dust }) =>
    dust === undefined ? { rule: "film-turns-to-dust", values: {} } : undefined,
  ),
  ofPaint("never-sand-dry", ({ dust }) => dust),
] as const;

const HEATING_OR_SPRAYING = [
  ofPaint("spray-only-with-captured-exhaust", ({ wet, dust }) =>
    fumes(wet) === undefined
      ? (dust ?? { rule: "droplets-are-breathed-in", values: {} })
      : undefined,
  ),
  ofPaint("no-spraying-no-heating", ({ wet }) => fumes(wet)),
  ofPaint(
    "no-heating-of-oil",
    (of) =>
      setFree(of.gases.filter(({ release }) => release === "strong heat or strong acid")) ??
      ofDryingOil(of),
  ),
] as const;

const CLEANING = [
  ofPaint("wet-wipe-no-sweeping", ({ dust, hasPowder }) =>
    hasPowder ? (dust ?? { rule: "dust-goes-up-again", values: {} }) : undefined,
  ),
  ofPaint("no-acid", ({ gases }) => setFree(gases)),
  ofPaint("wash-hands", () => NO_FOOD),
  ofPaint("oily-rags", ofDryingOil),
] as const;

const DISPOSAL = [
  ofPaint("oily-rags", ofDryingOil),
  ofPaint(
    "not-down-the-drain",
    ({ wet }) => reasonOf(wet, anyMetal, WATER) ?? { rule: "paint-and-oil-foul-water", values: {} },
  ),
  ofPaint("hazardous-waste", ({ wet }) => reasonOf(wet, specialWaste, SPECIAL_WASTE, true)),
] as const;

/** Rules of the paint, by operation. */
const OF_PAINT = {
  painting: PAINTING,
  sanding: SANDING,
  "heating or spraying": HEATING_OR_SPRAYING,
  cleaning: CLEANING,
  disposal: DISPOSAL,
} as const satisfies Record<
  Exclude<StudioOperation, "weighing and mulling">,
  readonly CalledFor<string, Painted>[]
>;

type Caution = NonNullable<
  ReturnType<(typeof WEIGHING)[number] | (typeof OF_PAINT)[keyof typeof OF_PAINT][number]>
>["rule"];

type OfPigments = {
  /** Slugs; of the paint when left out. */
  readonly pigments?: readonly string[];
};

/** Cautions that name the pigments they are for, or else speak of the paint. */
export type CautionStatement = { readonly [R in Caution]: StatementOf<R, OfPigments> }[Caution];

/** Any of them, with what it belongs to: one form, since a compiler takes no more than 25 kinds apart. */
export interface StudioCaution {
  readonly rule: Caution;
  readonly values: OfPigments;
  readonly source: SourceKey;
  readonly operation: StudioOperation;
  /** Why: the metal, the statement, the dustiness, the oil. */
  readonly reason: StudioReason;
  /** Whether it holds for every colour alike: said once for all of them. */
  readonly general: boolean;
}

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
  const gases = gasesGivenOff(pigments);
  const of: Painted = { ...paint, wet, dust, gases, hasPowder: pigments.length > 0 };
  return STUDIO_OPERATIONS.map((operation) =>
    operation === "weighing and mulling"
      ? merged(
          pigments.flatMap((pigment) =>
            called(operation, WEIGHING, powdered(pigment, knowledge), { pigments: [pigment.slug] }),
          ),
        )
      : called(operation, OF_PAINT[operation], of),
  ).flatMap((operation) =>
    operation.toSorted((one, other) => Number(one.general) - Number(other.general)),
  );
}

function called<Facts>(
  operation: StudioOperation,
  rules: readonly CalledFor<Caution, Facts>[],
  of: Facts,
  values: OfPigments = {},
): StudioCaution[] {
  return rules.flatMap((rule): StudioCaution[] => {
    const caution = rule(of);
    return caution === undefined
      ? []
      : [
          {
            operation,
            ...caution,
            values,
            general: isGeneralReason(caution.reason),
            source: caution.rule === "oily-rags" ? "29-cfr-1926-252" : "practice-hazard",
          },
        ];
  });
}

function powdered(
  pigment: StudioPigment,
  { metals, quartz }: Pick<HazardKnowledge, "metals" | "quartz">,
): Powdered {
  const dry = material(pigment.ingredients, pigment.hazardStatements, metals);
  const stone = mayHoldQuartz(pigment, quartz);
  const quartzDust: StudioReason | undefined =
    stone === undefined ? undefined : { rule: "may-hold-quartz", values: { what: stone } };
  const known =
    reasonOf(dry, graveDust, undefined) ??
    (stone === STATED_QUARTZ ? quartzDust : undefined) ??
    reasonOf(dry, noMetal, LIGHT_FILTER_NOT_ENOUGH);
  return {
    dry,
    dusts: dustReason(pigment),
    known,
    grave: known ?? quartzDust ?? reasonOf(dry, noMetal, undefined, true),
    nature: pigment.nature,
    gases: gasesGivenOff([pigment]),
  };
}

function graveOrNoFood({ wet }: Painted): StudioReason {
  return reasonOf(wet, graveDust, LIGHT_FILTER_NOT_ENOUGH, true) ?? NO_FOOD;
}

/** What nobody has classified may hold a metal that gives off fumes. */
function fumes(wet: Material): StudioReason | undefined {
  return reasonOf(wet, noHeat, undefined, true);
}

function gasesGivenOff(pigments: readonly StudioPigment[]): GasOfPigments[] {
  return GASES.flatMap((gas) =>
    GAS_RELEASES.flatMap((release) => {
      const names = pigments
        .filter(({ givesOff }) => givesOff?.gas === gas && givesOff.release === release)
        .map(({ name }) => name);
      return names.length === 0 ? [] : [{ gas, release, names }];
    }),
  );
}

function setFree(gases: readonly GasOfPigments[]): StudioReason | undefined {
  return gases.length === 0 ? undefined : { rule: "gives-off-gas", values: { gases } };
}

function ofDryingOil({ dryingOil }: Painted): StudioReason | undefined {
  return dryingOil ? DRYING_OIL : undefined;
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
      ...(loose !== undefined && { bulkDensityLooseGPerMl: loose }),
      ...(tapped !== undefined && { bulkDensityTappedGPerMl: tapped }),
      ...(particleSizeUm !== undefined && { particleSizeUm }),
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
