import { createHash } from "node:crypto";
import { readdirSync, rmSync } from "node:fs";
import { join } from "node:path";
import type { ParticleModel } from "../optics/theory/particle-model.ts";
import {
  blackTheory,
  modelInputs,
  theoryProbe,
  whiteRuns,
  whiteTheory,
  type TheoryFigure,
  type TheoryModels,
} from "../optics/theory/theory-figure.ts";
import type { Records } from "../records/records.ts";
import { theoryModels } from "../sheet/pigments/theory-models.ts";
import { readWhenAsked } from "../kept/reads.ts";
import type { KeptFolder } from "../kept/work-cache.ts";
import { readKept, writeKept } from "../kept/kept-file.ts";

/** The first-principles figure of a range's pigments, when a page first asks for it. */
export function theoryOnce(records: Records, cache: KeptFolder | undefined): () => TheoryFigure {
  return readWhenAsked(() => theoryFigure(theoryModels(records), cache));
}

/**
 * The first-principles figure of a range: each pigment's part from the cache where it was
 * kept for these very inputs, else worked out and kept. A file that this user did not write
 * is not used; a folder that cannot be written does without.
 * @param cache undefined keeps and reads nothing.
 */
export function theoryFigure(models: TheoryModels, cache: KeptFolder | undefined): TheoryFigure {
  const probe = theoryProbe();
  let runs: ReturnType<typeof whiteRuns> | undefined;
  const ofWhites = (): ReturnType<typeof whiteRuns> => (runs ??= whiteRuns(models.whites));
  const part = <V>(
    kind: "white" | "black",
    model: ParticleModel,
    beside: readonly ParticleModel[],
    worked: () => V,
  ): V =>
    keptOrMade(
      cache,
      `${kind}-${model.slug}`,
      hashOf({ probe, model: modelInputs(model), beside: beside.map(modelInputs) }),
      worked,
    );
  return {
    whites: models.whites.map((white) =>
      part("white", white, [], () => whiteTheory(white, ofWhites().get(white.slug) ?? [])),
    ),
    blacks:
      models.whites.length === 0
        ? []
        : models.blacks.map((black) =>
            part("black", black, models.whites, () => blackTheory(black, ofWhites())),
          ),
  };
}

/** A kept value with the hash of its inputs. */
interface KeptFigure {
  readonly inputs: string;
  readonly value: unknown;
}

function keptOrMade<V>(
  cache: KeptFolder | undefined,
  name: string,
  inputs: string,
  made: () => V,
): V {
  if (cache === undefined) return made();
  const file = fileName(name, inputs);
  const found = readKept(cache.folder, file) as Partial<KeptFigure> | null | undefined;
  if (found?.inputs === inputs && found.value !== undefined) return found.value as V;
  const value = made();
  if (cache.keeps && writeKept(cache.folder, file, { inputs, value } satisfies KeptFigure))
    sweep(cache.folder, name, file);
  return value;
}

/** What the same pigment left before goes, as does what a killed run left aside. */
function sweep(folder: string, name: string, own: string): void {
  try {
    for (const other of readdirSync(folder))
      if (other !== own && isFileOf(name, other)) rmSync(join(folder, other), { force: true });
  } catch {
    // Files that nobody reads.
  }
}

function fileName(name: string, inputs: string): string {
  return `theory-${name}.${inputs.slice(0, 16)}.json`;
}

function isFileOf(name: string, file: string): boolean {
  return (
    file.startsWith(`theory-${name}.`) &&
    /^[0-9a-f]{16}\.json(\.[0-9a-f-]{36})?$/.test(file.slice(`theory-${name}.`.length))
  );
}

function hashOf(value: unknown): string {
  return createHash("sha256").update(JSON.stringify(value)).digest("hex");
}
