/** The range as a reader's browser mixes with it: fits, films and what is known of each paint. */
import type { Grain } from "../kept/followed.ts";
import { toldStep } from "../kept/kept-steps.ts";
import type { Told } from "../kept/step-book.ts";
import { packedFit, FIT_FORMAT } from "../mixing/fits/packed-fit.ts";
import { packedNumbers, REFLECTANCE_STEPS, RELATIVE_STEPS } from "../mixing/fits/packed-numbers.ts";
import type {
  MixingData,
  MixingPaint,
  PackedFilm,
  PackedReading,
  PaintFacts,
} from "../mixing/mixing-paint.ts";
import type { Metal } from "../hazard/studio/metal-content.ts";
import type { StudioOperation } from "../hazard/studio/studio-cautions.ts";
import { opacityRank } from "../optics/films/opacity.ts";
import type { Measurement } from "../optics/fit/measurement.ts";
import { EXPECTATIONS } from "../permanence/expected-lightfastness.ts";
import { figureText } from "../present/figure-text.ts";
import { lightfastnessWord } from "../present/lightfastness-word.ts";
import type { SheetTexts } from "../present/sheet-texts.ts";
import { statementText } from "../present/statement-text.ts";
import { isKnown, type Figure } from "../quantities/figure.ts";
import { ends, midpoint, type Quantity } from "../quantities/interval.ts";
import { paintAsMade } from "../sheet/paint-as-made.ts";
import { isStatement } from "../quantities/statement.ts";
import { remembered } from "../quantities/remembered.ts";
import type { Colour } from "../records/records.ts";
import { dryingParts } from "../sheet/drying/drying-parts.ts";
import {
  coefficientsOfFilms,
  filmGrid,
  opacityChart,
  spectralFilms,
} from "../sheet/optics/opacity-chart.ts";
import type { Sheet } from "../sheet/sheet.ts";
import { opticsReading } from "../sheet/tints/optics-reading.ts";
import type { PageContext } from "./page-context.ts";
import { ownColour } from "./screen-swatch.ts";
import { wordedSheet } from "./worded-sheet.ts";
import { knownLab } from "../sheet/notations/known-lab.ts";

/** Whether a colour of the range can be mixed at all: else there are no pages to mix on. */
export function hasMixing({ fits }: Pick<PageContext, "fits">): boolean {
  return someFit(fits);
}

const someFit = remembered((fits: PageContext["fits"]): boolean => {
  for (const { kind } of fits.values()) if (kind === "fit") return true;
  return false;
});

/** Of most fits it is asked alone in what whites they are. */
const FIT_PARTS = {
  keys: { whites: { members: { keys: { slug: "always" } } } },
} as const satisfies Grain;

const MODULES = ["lib/pages/mixing-data.ts", "lib/words/languages.ts"];

/** What paints are mixed by, told apart from what is known of them besides: an edit of a drying trial moves no mixture. */
export const MIXING_PARTS = {
  paints: {
    members: { keys: { slug: "always", facts: { keys: {} }, fit: FIT_PARTS } },
  },
} as const satisfies Readonly<Record<string, Grain>>;

type MixedOf = Omit<PageContext, "mixing">;

/** Everything that is mixed with, as plain data. */
export function mixingData(context: MixedOf): MixingData {
  const { records, sheets } = context;
  const { name, currency, observer, strengthReference } = records.workshop;
  const grounds = groundsOf(context);
  return {
    format: FIT_FORMAT,
    // Asked for where it is sent: it is another with every sheet.
    get revision() {
      return context.revision;
    },
    workshop: name,
    ...(currency !== undefined && { currency }),
    observer: observer ?? "CIE 1964",
    ...(strengthReference !== undefined && { usual: strengthReference }),
    paints: sheets.map((worded) => toldPaint(worded, context).value),
    ...(grounds !== undefined && { grounds }),
  };
}

/** What tells a colour's paint from what it was. */
export function paintIdentity(slug: string, context: MixedOf): string | undefined {
  const worded = wordedSheet(slug, context);
  return worded && toldPaint(worded, context).identity;
}

function toldPaint(worded: SheetTexts, context: MixedOf): Told<MixingPaint> {
  const step = { modules: MODULES, name: "paints that mix", of: worded.sheet.slug };
  return toldStep(context.steps, step, () => mixingPaint(worded, context));
}

function mixingPaint(worded: SheetTexts, context: MixedOf): MixingPaint {
  const { sheet } = worded;
  const { records, fits, words } = context;
  const colour = records.colours.get(sheet.slug);
  const fit = fits.get(sheet.slug);
  const screen = ownColour(sheet.notations.masstone);
  const lab = knownLab(sheet.notations.masstone?.lab["D65/10"]);
  const masstone =
    colour?.masstone?.form === "spectrum"
      ? packedReading(opticsReading(colour.masstone))
      : undefined;
  const film = colour && packedFilm(colour, context);
  const [fraction, density] = [
    middle(sheet.oil.pigmentMassFraction),
    middle(sheet.oil.paintDensityGPerCm3),
  ];
  const filmDensity = colour && middle(paintAsMade(colour, records).inFilm.paintDensityGPerCm3);
  return {
    slug: sheet.slug,
    name: sheet.name,
    kind: sheet.family === "white" ? "white" : sheet.family === "extender" ? "medium" : "colour",
    index: sheet.pigments.flatMap(({ colourIndexName }) => colourIndexName ?? []),
    ...(screen !== undefined && {
      screen: {
        hex: screen.hex,
        ...(screen.displayP3 !== undefined && { displayP3: screen.displayP3 }),
      },
    }),
    ...(lab !== undefined && { lab: [lab.L, lab.a, lab.b] }),
    ...(masstone !== undefined && { masstone }),
    ...(fit?.kind === "fit" && { fit: packedFit(fit) }),
    ...(fit?.kind === "refused" && {
      refusal: fit.reasons.map((reason) => statementText(reason, words)).join(" "),
    }),
    ...(sheet.optics.notPredicted !== undefined && { isNotPredicted: true }),
    ...(fraction !== undefined && { pigmentMassFraction: fraction }),
    ...(density !== undefined && { densityGPerCm3: density }),
    ...(filmDensity === undefined || filmDensity === density
      ? {}
      : { filmDensityGPerCm3: filmDensity }),
    ...(film !== undefined && { film }),
    facts: paintFacts(worded, context),
    ...(sheet.discontinued !== undefined && { isDiscontinued: true }),
  };
}

function packedReading({ spectrum, geometry }: Measurement): PackedReading {
  return {
    grid: spectrum.grid,
    geometry,
    values: packedNumbers(spectrum.values, REFLECTANCE_STEPS),
  };
}

/** Of whites and mediums alone: others' K and S come from their let-downs. */
function packedFilm(colour: Colour, { records }: MixedOf): PackedFilm | undefined {
  const { family } = colour.record;
  const grid = filmGrid(colour, records);
  if (grid === undefined || (family !== "white" && family !== "extender")) return undefined;
  const found = coefficientsOfFilms(colour, opacityChart(grid, records), records);
  if (found === undefined || isStatement(found)) return undefined;
  return {
    grid,
    K: packedNumbers(found.K, RELATIVE_STEPS),
    S: packedNumbers(found.S, RELATIVE_STEPS),
    surface: found.surface,
    scaleUncertainty: found.scaleUncertainty,
  };
}

function groundsOf({ records }: MixedOf): MixingData["grounds"] {
  const first = [...records.colours.values()].flatMap((colour) => spectralFilms(colour))[0];
  if (first === undefined) return undefined;
  const { grounds } = opacityChart(first.reading.spectrum.grid, records);
  return { black: packedReading(grounds.black), white: packedReading(grounds.white) };
}

function paintFacts(worded: SheetTexts, context: MixedOf): PaintFacts {
  const { sheet } = worded;
  const { cautions, offer } = sheet;
  const lightfastness = lightfastnessOf(worded, context);
  const drying = dryingOf(worded, context);
  const opacity = opacityOf(worded, context);
  const oil = oilOf(worded, context);
  const size = offer?.sizes[0];
  return {
    ...(lightfastness !== undefined && { lightfastness }),
    ...(drying !== undefined && { drying }),
    ...(opacity !== undefined && { opacity }),
    ...(oil !== undefined && { oil }),
    warning: {
      signal: cautions.signalWord,
      statements: [...cautions.hazardStatements, ...cautions.supplemental],
      isUnknown: cautions.unknown.length > 0,
    },
    metals: metalsIn(sheet),
    ...(size?.price !== undefined && { pricePerMl: size.price / size.ml }),
    isRestricted: (offer?.withheldFor.length ?? 0) > 0 || cautions.onLegalBasis.length > 0,
  };
}

/** Metals that a paint is known to hold, each once; of an operation those for whose sake it asks for care. */
export function metalsIn({ cautions }: Sheet, at?: StudioOperation): Metal[] {
  const metals = cautions.studio.flatMap(({ operation, reason }) =>
    reason.rule === "holds-metal" && (at === undefined || operation === at)
      ? reason.values.metals
      : [],
  );
  return [...new Set(metals)];
}

function lightfastnessOf(
  { sheet: { permanence } }: SheetTexts,
  { words }: MixedOf,
): PaintFacts["lightfastness"] {
  const { category, expectation } = permanence;
  const rank = EXPECTATIONS.findIndex((row) =>
    isKnown(category)
      ? row.category === category.value
      : isKnown(expectation) && row.expectation === expectation.value,
  );
  const said = lightfastnessWord(permanence, words);
  if (rank < 0 || said === undefined) return undefined;
  // What was seen in an exposure and what a category is called are words of two scales: the category makes them one.
  const { factDetail } = words.pages.sheet;
  const named = permanence.basis === "own exposure" ? factDetail.asCategory : factDetail.category;
  const text = isKnown(category) ? `${said.word}, ${named(category.value)}` : said.word;
  return { rank: rank + 1, text };
}

function dryingOf(worded: SheetTexts, { records, words }: MixedOf): PaintFacts["drying"] {
  const { touchDryDays } = worded.sheet.drying;
  if (!isKnown(touchDryDays)) return undefined;
  const shares = dryingParts(worded.sheet.pigments, records).map(
    ({ chemistry }) => chemistry?.fullFromMassFraction ?? 1,
  );
  const { row } = worded.leaf("drying.touchDryDays");
  const [earlier, later] = ends(touchDryDays.value);
  return {
    days: [earlier, later],
    isTried: touchDryDays.standing === "measured",
    fullFrom: Math.min(1, ...shares),
    text: figureText(row, touchDryDays, words),
  };
}

function opacityOf({ sheet }: SheetTexts, { words }: MixedOf): PaintFacts["opacity"] {
  const { opacityClass } = sheet.optics;
  if (!isKnown(opacityClass)) return undefined;
  const { value } = opacityClass;
  const rank = opacityRank(value);
  return rank === 0 ? undefined : { rank, text: words.terms[value] ?? value };
}

function oilOf(worded: SheetTexts, { words }: MixedOf): PaintFacts["oil"] {
  const { oilVolumeFraction } = worded.sheet.oil;
  if (!isKnown(oilVolumeFraction)) return undefined;
  const { row } = worded.leaf("oil.oilVolumeFraction");
  return {
    volumeFraction: ends(oilVolumeFraction.value),
    text: figureText(row, oilVolumeFraction, words),
  };
}

function middle(figure: Figure<Quantity>): number | undefined {
  return isKnown(figure) ? Number(midpoint(figure.value).toPrecision(6)) : undefined;
}
