import { MADE_EACH_TIME, type Keep, type Origin } from "../kept/kept-result.ts";
import type { FoundStep, KeptSteps, Step } from "../kept/kept-steps.ts";
import { readAside, readBy } from "../kept/reads.ts";
import { partHash, partText, textHash } from "../kept/part-hashes.ts";
import type { UsableDrawdowns } from "../optics/fit/drawdown.ts";
import { finishedFit } from "../optics/fit/finished-fit.ts";
import { surfaceTrial } from "../optics/fit/surface-trial.ts";
import { fittedColours } from "../optics/fit/fitted-colour.ts";
import { remembered } from "../quantities/remembered.ts";
import type { Records } from "../records/records.ts";
import { colourSheet } from "./colour-sheet.ts";
import { evidenceHash, packedSheet, unpackedSheet, type PackedSheet } from "./kept-sheet.ts";
import { drawdownSet } from "./tints/drawdown-set.ts";
import { fitsAmongOthers } from "./tints/other-whites.ts";
import type { Sheet } from "./sheet.ts";
import type { Fits } from "./tints/strength.ts";

/** A sheet that is loaded, where it was kept, when it is first asked for. */
export interface LazySheet {
  readonly slug: string;
  /** Tells it from every other; undefined where nothing is kept. */
  readonly identity: string | undefined;
  /** What is known of it without loading it. */
  readonly head: SheetHead;
  readonly sheet: () => Sheet;
}

/** Plain facts by which sheets are chosen and put in order. Each key is there, so that what a sheet does not state is known as soon. */
export type SheetHead = {
  readonly [Fact in "name" | "family" | "discontinued"]: Sheet[Fact] | undefined;
};

function headOf({ name, family, discontinued }: Sheet): SheetHead {
  return { name, family, discontinued };
}

/** Every colour's sheet, in order of slug. Fits come first, because strength is reckoned against another colour's. */
export function allSheets(records: Records, fits: Fits = allFits(records)): Sheet[] {
  return lazySheets(records, fits).map(({ sheet }) => sheet());
}

/**
 * The same, each loaded when it is asked for.
 * @param kept sheets of earlier builds, by what they read of these very records and fits.
 */
export function lazySheets(records: Records, fits: Fits, kept?: KeptSteps): LazySheet[] {
  const begun = [...records.colours.values()].map((colour) => {
    const { slug } = colour;
    const step: Step = { ...WORKING_OUT, of: slug };
    const made = (): Sheet => colourSheet(colour, fits, records);
    const found = kept?.found(step);
    return found === undefined
      ? { slug, step, made: readBy(made) }
      : { slug, found, sheet: readAside(() => loaded(found) ?? made()) };
  });
  // Only once all are worked out stands every figure where it belongs.
  const sheets = begun.map((one): LazySheet => {
    const { slug } = one;
    if (one.made === undefined) {
      const { identity, sooner } = one.found;
      return { slug, identity, head: sooner as SheetHead, sheet: one.sheet };
    }
    const { value, names } = one.made;
    const head = headOf(value);
    if (kept === undefined) return { slug, identity: undefined, head, sheet: () => value };
    const identity = evidenceHash(value);
    kept.keep(one.step, names, identity, () => packedSheet(value), head);
    return { slug, identity, head, sheet: () => value };
  });
  // Whatever becomes of the pages, and for whoever asks while these are made.
  if (begun.some(({ made }) => made !== undefined)) kept?.keepBook(WORKING_OUT);
  return sheets;
}

const WORKING_OUT = { modules: ["lib/sheet/all-sheets.ts"], name: "sheets" };

function loaded({ value }: FoundStep): Sheet | undefined {
  const kept = value() as PackedSheet | undefined;
  return kept && unpackedSheet(kept);
}

/** K and S of every colour by slug, or why there are none: all at once, since colours read alike share a surface and tell one another's whites. */
export function allFits(records: Records, kept: Keep = MADE_EACH_TIME): Fits {
  const sets = new Map(
    [...records.colours.values()].map((colour) => [colour.slug, drawdownSet(colour, records)]),
  );
  return fitsAmongOthers(
    fittedColours(sets, {}, surfaceTrial, finishedFit, {
      tried: ([usable, surface], made) => kept(originOf(usable, surface), made),
      fitted: ([usable, ...beside], made) => kept(originOf(usable, ...beside), made),
    }),
  );
}

/** Fits with the hash of each, kept beside them: a fit that stands is not hashed again. */
export interface ToldFits {
  readonly fits: Fits;
  readonly hashes: ReadonlyMap<string, string>;
}

export function toldFits(fits: Fits): ToldFits {
  return { fits, hashes: new Map([...fits].map(([slug, fit]) => [slug, partHash(fit)])) };
}

/** Of what is made of a colour's drawdowns. They are many numbers, and hashed once for all that is made of them. */
function originOf(usable: UsableDrawdowns, ...beside: readonly unknown[]): Origin {
  return {
    modules: ["lib/optics/fit/fitted-colour.ts"],
    inputs: [drawdownsHash(usable), ...beside],
  };
}

const drawdownsHash = remembered((usable: UsableDrawdowns): string => textHash([partText(usable)]));
