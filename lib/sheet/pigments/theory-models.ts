import {
  particleModel,
  type ParticleModel,
  type RecordedParticle,
} from "../../optics/theory/particle-model.ts";
import type { TheoryModels } from "../../optics/theory/theory-figure.ts";
import { isStatement, type Statement } from "../../quantities/statement.ts";
import type { Quantity } from "../../quantities/interval.ts";
import type { Records } from "../../records/records.ts";
import type { PigmentRecord } from "../../records/schema/pigment.ts";

/** Whites and blacks among the pigments that theory can speak of, and why it says nothing of the others. */
export interface RangeModels extends TheoryModels {
  readonly refusals: readonly Statement[];
}

/** From the pigments' records; an extender is no white that a painter lets down in. */
export function theoryModels({ pigments }: Records): RangeModels {
  const of = (family: "white" | "black"): (ParticleModel | Statement)[] =>
    [...pigments.values()]
      .filter(({ record }) => record.family === family)
      .map(({ slug, record }) => particleModel(recordedParticle(slug, record, family === "white")));
  const [whites, blacks] = [of("white"), of("black")];
  const modelled = (found: readonly (ParticleModel | Statement)[]): ParticleModel[] =>
    found.filter((one): one is ParticleModel => !isStatement(one));
  return {
    whites: modelled(whites),
    blacks: modelled(blacks),
    refusals: [...whites, ...blacks].filter(isStatement),
  };
}

function recordedParticle(
  slug: string,
  { name, colourIndexName, particle }: PigmentRecord,
  isClear: boolean,
): RecordedParticle {
  return {
    slug,
    name,
    colourIndexName,
    isClear,
    sizeUm: quantityIn(particle?.sizeUm),
    refractiveIndex: quantityIn(particle?.refractiveIndex),
    absorptionIndex: quantityIn(particle?.absorptionIndex),
  };
}

function quantityIn(
  amount: NonNullable<PigmentRecord["particle"]>["sizeUm"],
): Quantity | undefined {
  return typeof amount === "object" ? amount.value : amount;
}
