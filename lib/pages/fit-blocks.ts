import type { Block } from "../blocks/block.ts";
import { columns, lists, plots } from "../blocks/section-blocks.ts";
import { knownValue, type Figure } from "../quantities/figure.ts";
import type { ListView, PictureView } from "../present/views.ts";
import { coefficientCurves, type CoefficientCurve } from "../plots/coefficient-curves.ts";
import type { CoefficientFigures, FitFigures } from "../sheet/tints/fit-figures.ts";
import { ownColour } from "./screen-swatch.ts";
import { reasons, type SheetPage } from "./page-of-sheet.ts";

/** K and S, and how they were fitted. */
export function fitBlocks(page: SheetPage): Block[] {
  return [...plots(coefficientPictures(page)), ...columns(lists(fitLists(page)))];
}

/** K and S as drawn for the evidence, in each white: nothing without a fit, or without a colour to draw in. */
function coefficientPictures({ sheet, words }: SheetPage): PictureView[] {
  const { fit } = sheet.optics;
  const colour = ownColour(sheet.notations.masstone);
  if (fit === undefined || colour === undefined) return [];
  const text = words.pages.optics.fit;
  const curve = (
    label: string,
    values: readonly number[],
    relative: readonly number[],
  ): CoefficientCurve => ({
    label,
    colour,
    standing: "derived",
    grid: fit.grid,
    values,
    bounds: values.map((value, i) => [
      value / (1 + 2 * (relative[i] ?? 0)),
      value * (1 + 2 * (relative[i] ?? 0)),
    ]),
  });
  const absorption = fit.whites.map((one) =>
    curve(one.white.name, series(one.K), series(one.KUncertainty)),
  );
  const scattering = fit.whites.map((one) =>
    scatteringCurve(one, fit, one.white.name, curve, colour),
  );
  const isBound = fit.whites.some(({ SUpper }) => SUpper !== undefined);
  return [
    {
      svg: coefficientCurves({
        idPrefix: "coefficients",
        title: text.title,
        wavelengthLabel: text.wavelength,
        description: text.description(
          fit.whites.map(({ white, K }) => {
            const values = series(K);
            const [least, greatest] = [Math.min(...values), Math.max(...values)];
            return text.part(
              white.name,
              words.numbers.significant(least, 2),
              words.numbers.significant(greatest, 2),
            );
          }),
        ),
        absorption: { axisLabel: text.K, curves: absorption },
        scattering: { axisLabel: isBound ? text.SUpper : text.S, curves: scattering },
      }),
      caption: text.title,
    },
  ];
}

function scatteringCurve(
  { S, SUncertainty, SUpper }: CoefficientFigures,
  { grid }: FitFigures,
  label: string,
  curve: (
    label: string,
    values: readonly number[],
    relative: readonly number[],
  ) => CoefficientCurve,
  colour: CoefficientCurve["colour"],
): CoefficientCurve {
  if (S !== undefined && SUncertainty !== undefined)
    return curve(label, series(S), series(SUncertainty));
  return {
    label,
    colour,
    standing: "derived",
    grid,
    values: undefined,
    bounds: series(SUpper).map((upper) => [0, upper]),
  };
}

/** Which surface was taken off, how well the fit meets the drawdowns, what of S is known, and what was left out. */
function fitLists(page: SheetPage): ListView[] {
  const { fit } = page.sheet.optics;
  if (fit === undefined) return [];
  const text = page.words.pages.optics.fit;
  return [
    ...reasons(page, text.list, [fit.surface, fit.quality, fit.scattering, ...fit.remarks]),
    ...reasons(page, text.leftOut, fit.leftOut),
  ];
}

function series(figure: Figure<readonly number[]> | undefined): readonly number[] {
  return knownValue(figure) ?? [];
}
