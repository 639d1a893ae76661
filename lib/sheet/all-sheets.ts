import { MADE_EACH_TIME, type Keep } from "../kept/kept-result.ts";
import type { FoundStep, KeptSteps, Step } from "../kept/kept-steps.ts";
import { readAside, readBy } from "../kept/reads.ts";
import { surfaceTrial } from "../optics/fit/surface-trial.ts";
import { fittedColours } from "../optics/fit/fitted-colour.ts";
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
  readonly sheet: () => Sheet;
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
    const step: Step = {
      modules: ["lib/sheet/colour-sheet.ts", "lib/sheet/kept-sheet.ts"],
      name: `sheet ${slug}`,
    };
    const made = (): Sheet => colourSheet(colour, fits, records);
    const found = kept?.found(step);
    return found === undefined
      ? { slug, step, made: readBy(made) }
      : { slug, found, sheet: readAside(() => loaded(found) ?? made()) };
  });
  // Only once all are worked out stands every figure where it belongs.
  return begun.map((one): LazySheet => {
    const { slug } = one;
    if (one.made === undefined) return { slug, identity: one.found.identity, sheet: one.sheet };
    const { value, names } = one.made;
    if (kept === undefined) return { slug, identity: undefined, sheet: () => value };
    const identity = evidenceHash(value);
    kept.keep(one.step, names, identity, () => packedSheet(value));
    return { slug, identity, sheet: () => value };
  });
}

function loaded({ value }: FoundStep): Sheet | undefined {
  const kept = value() as PackedSheet | undefined;
  return kept && unpackedSheet(kept);
}

/** K and S of every colour by slug, or why there are none: all at once, since colours read alike share a surface and tell one another's whites. */
export function allFits(records: Records, kept: Keep = MADE_EACH_TIME): Fits {
  const sets = new Map(
    [...records.colours.values()].map((colour) => [colour.slug, drawdownSet(colour, records)]),
  );
  const fitted = kept({ modules: ["lib/optics/fit/fitted-colour.ts"], inputs: sets }, () =>
    fittedColours(sets, {}, (...inputs) =>
      kept({ modules: ["lib/optics/fit/surface-trial.ts"], inputs }, () => surfaceTrial(...inputs)),
    ),
  );
  return fitsAmongOthers(fitted);
}
