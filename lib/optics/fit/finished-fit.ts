/** A fit made of a tried surface: suspects left out, verdicts on every drawdown. */
import { deltaE00 } from "../../colorimetry/difference.ts";
import type { SurfaceChoice } from "../surface/workshop-surface.ts";
import { shares } from "../tints/tint-reading.ts";
import type { ColourFit, DrawdownVerdict, FittedMasstone, FittedWhite } from "./colour-fit.ts";
import { allFilms, type UsableDrawdowns } from "./drawdown.ts";
import { plainLab, setFit, type ReadySet, type SetFit } from "./fitted-drawdown-set.ts";
import { scatteringAlone } from "./film-scattering.ts";
import { leftOutFits, leftOutTints, type LeftOutFit } from "./leave-one-out.ts";
import { isUsed, suspects, type SuspectStatement } from "./outlier-drawdown.ts";
import { scatteringRuling } from "./scattering-statement.ts";
import type { SurfaceTrial } from "./surface-trial.ts";
import type { LeftOutStatement } from "./usable-drawdowns.ts";
import { drawnDoubts, workshopExperience } from "./workshop-experience.ts";
import { at } from "../../quantities/at.ts";

export function finishedFit(
  usable: UsableDrawdowns,
  chosen: SurfaceTrial,
  surface: SurfaceChoice,
  leftOut: readonly LeftOutStatement[],
): ColourFit {
  const { set } = chosen;
  const held = leftOutTints(set, chosen.leftOut);
  const masstone: FittedMasstone = {
    measured: set.masstone.measured,
    lab: set.masstone.lab,
    internal: [],
    ...(set.masstoneContrast !== undefined && { filmContrast: set.masstoneContrast }),
  };
  // Other let-downs of its own white tell a let-down as well without films.
  const doubts = drawnDoubts({ masstone }, { hasFilms: true });
  const found = new Map(
    set.whites.flatMap((white) => [
      ...suspects(
        held.filter((one) => one.white === white.slug && isCoat(set, white, one.tint)),
        doubts,
      ),
    ]),
  );
  const used = set.tints.filter(({ tint }) => isUsed({ suspect: found.get(tint.id) }));
  const fit = setFit(set, used);
  const verdicts = used.length === set.tints.length ? chosen.leftOut : leftOutFits(set, used);
  return {
    kind: "fit",
    grid: set.grid,
    geometry: usable.masstone.geometry,
    surface,
    masstone: { ...masstone, internal: [...fit.solution.masstone] },
    whites: fittedWhites(usable, set, fit, found),
    drawdowns: drawdownVerdicts(set, fit, verdicts, found),
    scattering: scatteringRuling(usable.masstone, fit.solution),
    experience: workshopExperience([]),
    ...(set.choices.carriedShare !== undefined && { carriedShare: set.choices.carriedShare }),
    chiSquare: fit.solution.chiSquare,
    remarks: chosen.remarks,
    leftOut,
  };
}

/** Contrast ratio under which a film shows so much of its ground that no let-down is judged by it. */
const COAT_CONTRAST = 0.8;

/** Whether a let-down, its colour and its white are coats, as far as anybody read them over both grounds. */
function isCoat(set: ReadySet, white: ReadySet["whites"][number], tint: string): boolean {
  const own = set.tints.find((one) => one.tint.id === tint);
  return [set.masstone, white, own].every(
    (drawdown) => (drawdown?.filmContrast ?? 1) >= COAT_CONTRAST,
  );
}

function fittedWhites(
  usable: UsableDrawdowns,
  set: ReadySet,
  { solution, models }: SetFit,
  found: ReadonlyMap<string, SuspectStatement>,
): FittedWhite[] {
  const inflation = Math.max(1, solution.chiSquare);
  const fitted = set.whites.filter(({ slug }) => models.has(slug));
  return fitted.flatMap((white, j): FittedWhite[] => {
    const own = solution.whites[j];
    const tints = set.tints.filter(({ tint }) => tint.white === white.slug);
    const ratioKind = tints[0]?.tint.ratioKind;
    if (own === undefined || ratioKind === undefined) return [];
    const S = Array.from(own.extinction, (E, i) => E * shares(at(solution.masstone, i)).s);
    const SUncertainty = Array.from(own.varianceS, (variance) => Math.sqrt(variance * inflation));
    return [
      {
        slug: white.slug,
        ratioKind,
        hasFilms: hasFilms(usable, white.slug),
        measured: white.measured,
        whiteRatio: [...white.ratio],
        lab: white.lab,
        S,
        SUncertainty,
        ...(white.scattering !== undefined && {
          SAlone: scatteringAlone(set.grid, S, SUncertainty, white.scattering),
        }),
        K: Array.from(own.extinction, (E, i) => E * shares(at(solution.masstone, i)).k),
        KUncertainty: Array.from(own.varianceK, (variance) => Math.sqrt(variance * inflation)),
        SUpper: S.map((value, i) => value * Math.exp(2 * at(SUncertainty, i))),
        steps: tints.map(({ tint, measured, hiding, lab }) => {
          const suspect = found.get(tint.id);
          return {
            tint: tint.id,
            massRatio: tint.massRatio,
            measured,
            ...(hiding !== undefined && { hiding }),
            lab,
            ...(suspect !== undefined && { suspect }),
          };
        }),
      },
    ];
  });
}

/** Whether films of the colour and of a white are at hand. */
function hasFilms(usable: UsableDrawdowns, slug: string): boolean {
  const white = usable.whites.find((one) => one.slug === slug);
  return allFilms(usable).length > 0 && white !== undefined && allFilms(white).length > 0;
}

function drawdownVerdicts(
  set: ReadySet,
  { models }: SetFit,
  leftOut: readonly LeftOutFit[],
  found: ReadonlyMap<string, SuspectStatement>,
): DrawdownVerdict[] {
  const anyModel = [...models.values()][0];
  const masstone: DrawdownVerdict[] =
    anyModel === undefined
      ? []
      : [
          {
            drawdown: "masstone",
            residualDeltaE00: deltaE00(set.masstone.fittedLab, plainLab(set, anyModel, Infinity)),
            leaveOneOutDeltaE00: { rule: "fit-needs-masstone", values: {} },
          },
        ];
  const tints = set.tints.flatMap(({ tint, fittedLab }): DrawdownVerdict[] => {
    const model = models.get(tint.white);
    if (model === undefined) return [];
    const suspect = found.get(tint.id);
    const residual = deltaE00(fittedLab, plainLab(set, model, tint.massRatio));
    const own = leftOut.find(({ left }) => left.tint.id === tint.id)?.deltaE00;
    return [
      {
        drawdown: tint.id,
        white: tint.white,
        massRatio: tint.massRatio,
        residualDeltaE00: residual,
        // A suspect is left out of the fit already: its residual is its leave-one-out figure.
        leaveOneOutDeltaE00: isUsed({ suspect })
          ? (own ?? { rule: "only-let-down-in-its-white", values: { white: tint.white } })
          : residual,
        ...(suspect !== undefined && { suspect }),
      },
    ];
  });
  return [...masstone, ...tints];
}
