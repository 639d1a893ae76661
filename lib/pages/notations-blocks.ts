import type { Block } from "../blocks/block.ts";
import { blocksOf } from "../blocks/section-blocks.ts";
import { isKnown } from "../quantities/figure.ts";
import { wavelengthNm } from "../quantities/spectrum.ts";
import { given } from "../quantities/given.ts";
import { SHOWN_VIEWINGS } from "../colorimetry/viewing.ts";
import { coordinateOf } from "../present/coordinate-text.ts";
import { statementText } from "../present/statement-text.ts";
import type { PictureView, TableView } from "../present/views.ts";
import { numberColumns, tableView } from "../present/table-view.ts";
import { spectralCurve } from "../plots/spectral-curve.ts";
import { colourAsRead, ownColour } from "./screen-swatch.ts";
import { NO_VALUE } from "../words/no-value.ts";
import { sectionTable, textOf, type SheetPage } from "./page-of-sheet.ts";

/** Every notation that follows from the reading, each with its light, observer and geometry. */
export function notationsBlocks(page: SheetPage): Block[] {
  const { sheet, words } = page;
  const { masstone } = sheet.notations;
  const text = words.pages.notations;
  if (masstone === undefined) return blocksOf({ summary: [text.none] });
  const glossExcluded = textOf(page, "notations.masstone.glossExcludedL");
  const shown = masstone.glossExcluded ?? masstone;
  return blocksOf({
    summary: given([
      howKnown(masstone, words),
      howSure(masstone, words),
      glossExcluded !== undefined && text.included(glossExcluded),
      masstone.lamplight !== undefined && statementText(masstone.lamplight.sentence, words),
      shown.srgb !== undefined &&
        ownColour(masstone) !== undefined &&
        !shown.srgb.inGamut &&
        words.pages.sheet.outOfGamut,
      masstone.srgb?.hex.standing === "estimated" && words.pages.sheet.approximateColour,
    ]),
    properties: sectionTable(page, text.caption, ["notations"]),
    tables: [labTable(page)],
    pictures: curvePicture(page),
  });
}

function labTable({ sheet, words }: SheetPage): TableView {
  const text = words.pages.notations;
  const masstone = sheet.notations.masstone;
  return tableView({
    caption: text.labCaption,
    columns: [text.light, ...numberColumns("L*", "a*", "b*", "X", "Y", "Z")],
    rows: SHOWN_VIEWINGS.flatMap((viewing) => {
      const lab = masstone?.lab[viewing];
      const xyz = masstone?.xyz[viewing];
      if (lab === undefined || xyz === undefined) return [];
      return [
        [
          text.viewings[viewing] ?? viewing,
          ...[lab.L, lab.a, lab.b].map((figure) => coordinateOf(figure, words.numbers)),
          ...[xyz.X, xyz.Y, xyz.Z].map((figure) =>
            isKnown(figure) ? words.numbers.significant(figure.value, 3) : NO_VALUE,
          ),
        ],
      ];
    }),
  });
}

/** The masstone's curve, and without its gloss; none where no curve was read. */
function curvePicture({ sheet, words }: SheetPage): PictureView[] {
  const { masstone } = sheet.notations;
  const colour = colourAsRead(masstone);
  if (masstone?.curve === undefined || colour === undefined) return [];
  const text = words.pages.notations;
  const { grid, values } = masstone.curve;
  const at = (value: number): string => String(wavelengthNm(grid, values.indexOf(value)));
  const [lowest, highest] = [Math.min(...values), Math.max(...values)];
  const svg = spectralCurve({
    decimalMark: words.numbers.mark,
    idPrefix: "curve",
    title: text.curveTitle,
    description: text.curveDescription(
      words.numbers.significant(lowest, 2),
      words.numbers.significant(highest, 2),
      at(lowest),
      at(highest),
    ),
    curves: given([
      {
        label: text.curveLabel(masstone.geometry ?? ""),
        spectrum: masstone.curve,
        colour,
        standing: masstone.standing,
      },
      masstone.glossExcludedCurve !== undefined && {
        label: text.excludedLabel,
        spectrum: masstone.glossExcludedCurve,
        colour: ownColour(masstone) ?? colour,
        standing: "derived" as const,
      },
    ]),
    wavelengthLabel: text.wavelength,
    reflectanceLabel: (end) =>
      end < 1 ? text.reflectanceTo(words.numbers.plain(end)) : text.reflectance,
  });
  return [{ svg: svg, caption: text.curveTitle }];
}

/** What the \u00b1 of a spectrum in daylight comes to, and what it leaves open. */
function howSure(
  { curve, lab }: NonNullable<SheetPage["sheet"]["notations"]["masstone"]>,
  { pages, numbers }: SheetPage["words"],
): string | undefined {
  const daylight = lab["D65/10"];
  if (curve === undefined || daylight === undefined) return undefined;
  const [L, a, b] = [daylight.L, daylight.a, daylight.b].map((figure) =>
    isKnown(figure) && figure.uncertainty !== undefined
      ? numbers.decimal(figure.uncertainty, 1)
      : undefined,
  );
  return L !== undefined && a !== undefined && b !== undefined
    ? pages.notations.howSure(L, a, b)
    : undefined;
}

function howKnown(
  { standing, geometry }: NonNullable<SheetPage["sheet"]["notations"]["masstone"]>,
  words: SheetPage["words"],
): string {
  const text = words.pages.notations;
  if (standing === "estimated") return words.pages.photographs.notation;
  return geometry === undefined ? text.byEye : text.readBy(geometry);
}
