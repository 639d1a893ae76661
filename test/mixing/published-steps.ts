import type { Mix } from "../../lib/mixing/mix.ts";
import type { MixingRange } from "../../lib/mixing/mixing-range.ts";
import { predictedMix } from "../../lib/mixing/prediction/predicted-mix.ts";
import { isStatement } from "../../lib/quantities/statement.ts";

interface PublishedStep {
  readonly massRatio: string;
  readonly standing?: string;
  readonly lab: {
    readonly "D65/10"?: { readonly L: number; readonly a: number; readonly b: number };
  };
  readonly uncertainty?: number;
}

/** What of a sheet.json the bench has to repeat. */
export interface PublishedSheetJson {
  readonly slug: string;
  readonly tints: readonly {
    readonly white: { readonly slug: string };
    readonly massRatioKind: "paint" | "pigment";
    readonly steps: readonly PublishedStep[];
  }[];
  readonly pigments: readonly { readonly slug: string; readonly massFraction?: number }[];
  readonly oil: { readonly pigmentMassFraction?: number | readonly number[] };
  readonly mixture?: {
    readonly components: readonly {
      readonly slug: string;
      readonly paint?: { readonly slug: string };
    }[];
    readonly whites: readonly {
      readonly white: { readonly slug: string };
      readonly steps: readonly PublishedStep[];
    }[];
  };
}

export interface StepError {
  readonly step: string;
  /** Largest of the differences of L*, a*, b* and of the uncertainty. */
  readonly error: number;
}

/** How far the bench lies from every step of a sheet that a model predicts. */
export function stepErrors(sheet: PublishedSheetJson, range: MixingRange): StepError[] {
  return [...letDowns(sheet, range), ...mixtureSteps(sheet, range)].map(({ step, mix, read }) => {
    const found = predictedMix(mix, range);
    if (isStatement(found)) throw new Error(`Unexpected refusal of ${step}: ${found.rule}`);
    const { L, a, b } = read.lab["D65/10"] ?? { L: NaN, a: NaN, b: NaN };
    const differences = [
      found.lab.L - L,
      found.lab.a - a,
      found.lab.b - b,
      found.uncertainty.p68 - (read.uncertainty ?? NaN),
    ];
    return { step, error: Math.max(...differences.map(Math.abs)) };
  });
}

interface WantedStep {
  readonly step: string;
  readonly mix: Mix;
  readonly read: PublishedStep;
}

function letDowns({ slug, tints }: PublishedSheetJson, range: MixingRange): WantedStep[] {
  return tints.flatMap(({ white, steps, massRatioKind }) =>
    steps
      .filter(({ standing }) => standing === "derived")
      .map((read) => {
        const [one = NaN, other = NaN] = read.massRatio.split(":").map(Number);
        const scale =
          massRatioKind === "paint" ? 1 : fraction(range, white.slug) / fraction(range, slug);
        return {
          step: `${slug} ${read.massRatio} in ${white.slug}`,
          read,
          mix: {
            by: "mass",
            colours: [{ slug, parts: one * scale }],
            white: { slug: white.slug, parts: other },
          },
        };
      }),
  );
}

/** Paints of the components that bring the pigment of a mixture, per part of its own paint by mass. */
function mixtureSteps(
  { slug, mixture, pigments }: PublishedSheetJson,
  range: MixingRange,
): WantedStep[] {
  if (mixture === undefined) return [];
  const parts = mixture.components.map((component) => {
    const paint = component.paint?.slug ?? "";
    const share = pigments.find((one) => one.slug === component.slug)?.massFraction ?? NaN;
    return { slug: paint, parts: (share / fraction(range, paint)) * fraction(range, slug) };
  });
  return mixture.whites.flatMap(({ white, steps }) =>
    steps.map((read) => {
      const [one = NaN, other = NaN] = read.massRatio.split(":").map(Number);
      return {
        step: `${slug} ${read.massRatio} in ${white.slug} by its components`,
        read,
        mix: {
          by: "mass" as const,
          colours: parts.map((part) => ({ ...part, parts: part.parts * one })),
          white: { slug: white.slug, parts: other },
        },
      };
    }),
  );
}

function fraction(range: MixingRange, slug: string): number {
  return range.paint(slug)?.pigmentMassFraction ?? NaN;
}
