import type { Complaint } from "../diagnostics/complaint.ts";
import type { Diagnostic } from "../diagnostics/diagnostic.ts";
import { oilIndexOfShare } from "../formulation/oil-share.ts";
import type { Statement } from "../quantities/statement.ts";
import type { ColourRecord } from "../records/schema/colour.ts";
import type { RecordPath } from "../records/yaml-record.ts";
import { isKnown } from "../quantities/figure.ts";
import { statementText } from "../present/statement-text.ts";
import type { Words } from "../words/words.ts";
import { SHOWS_GROUND } from "../optics/tints/tint-statement.ts";
import type { Records, TintReading } from "../records/records.ts";
import { tintContrast } from "../sheet/tints/films-over-both.ts";
import { bookOf } from "../sheet/lots/lot-book.ts";
import type { Sheet } from "../sheet/sheet.ts";
import { trialsToldBetter } from "./trials-told-better.ts";

/** In a day. */
const HOURS = 24;
/** Mean square of residual over noise that no honest drawdowns leave, however little the model fits the paint. Our own limit. */
const RESIDUAL_OF_A_SLIP = 300;

/** A complaint about a key of a colour's record, or of a lot's or a trial's; on what line it stands, the record knows. */
export interface SheetComplaint extends Complaint {
  readonly slug: string;
  /** The lot's, where its record is meant. */
  readonly lot?: string;
  /** The trial's, where its record is meant. */
  readonly trial?: string;
  readonly path: RecordPath;
}

/** What sheets found against their records, each at the line of the key that it is about. */
export function sheetWarnings(
  sheets: readonly Sheet[],
  records: Records,
  words: Words,
): Diagnostic[] {
  return sheets.flatMap((sheet) => sheetComplaints(sheet, records, words)).map(placedIn(records));
}

/** Lines move with every note, and no complaint is another for it: so they are looked up anew. */
export function placedIn({
  colours,
  lots,
  trials,
}: Records): (complaint: SheetComplaint) => Diagnostic {
  return ({ slug, lot, trial, path, ...complaint }) => {
    const record =
      lot !== undefined
        ? lots.get(lot)
        : trial !== undefined
          ? trials.get(trial)
          : colours.get(slug);
    return {
      ...complaint,
      place: record?.place(path) ?? { file: lot ?? trial ?? slug, line: 1, column: 1, path: "" },
    };
  };
}

/**
 * What a sheet found against its record: a measurement against an estimate, a
 * drawdown against the others, the maker's label against the reckoning, and, as an error, a market of the workshop's where
 * the colour may not be sold without a legal basis on record.
 */
export function sheetComplaints(sheet: Sheet, records: Records, words: Words): SheetComplaint[] {
  const { slug } = sheet;
  const { found } = words.pages;
  const colour = records.colours.get(slug);
  const shown = letDownsThatShowGround(colour?.tints ?? []);
  const warning = (
    rule: Diagnostic["rule"],
    path: RecordPath,
    message: string,
    hint?: string,
  ): SheetComplaint => ({
    severity: "warning",
    rule,
    slug,
    path,
    message,
    hint,
  });
  const contradictions: readonly Statement[] = [
    // Of a mixture weighed from tubes the oil is theirs, and told of the tube that it is wrong of.
    ...(colour?.record.oilIndexGPer100g === undefined
      ? sheet.oil.contradictions.filter(({ rule }) => !rule.startsWith("oil-index-"))
      : sheet.oil.contradictions),
    ...sheet.drying.contradictions,
    ...sheet.permanence.contradictions,
    ...sheet.optics.reasons.filter(({ rule }) => rule === "opacity-unlike-its-pigment"),
  ];
  const residual = sheet.optics.fit?.weightedResidual;
  const beyond = sheet.mixture?.beyondReach;
  return [
    ...sheet.cautions.restrictions
      .filter(({ effect, met }) => effect === "forbidden unless" && !met)
      .map((act): SheetComplaint => ({
        ...warning(
          "sheet/not-for-sale",
          ["legalBasis"],
          found.notForSale(act.market),
          statementText(act, words),
        ),
        severity: "error",
      })),
    ...unneededBases(sheet, records).map(({ market, path }) =>
      warning("sheet/legal-basis", path, found.legalBasisUnneeded(market)),
    ),
    ...sheet.cautions.checks.map((check) =>
      warning(
        "sheet/label-differs",
        ["label"],
        found.labelDiffers(unended(statementText(check, words))),
      ),
    ),
    ...contradictions.map((ruling) =>
      warning(
        "sheet/contradiction",
        contradictedPath(ruling, colour?.record),
        found.differ(unended(statementText(ruling, words))),
        contradictionHint(ruling, colour?.record, words),
      ),
    ),
    ...trialsToldBetter(sheet, records, words).map(({ trial, path, message }) => ({
      ...warning("sheet/trial-worse", path, message),
      trial,
    })),
    ...lotsInAnotherWhite(slug, records, words),
    ...suspectComplaints(sheet, shown, records, words, warning),
    ...(beyond === undefined
      ? []
      : [
          warning(
            "sheet/mixture-reading",
            ["masstone"],
            found.beyondReach(beyond.recorded, beyond.nearest, beyond.deltaE00, beyond.p90),
            beyond.inAnyParts ? found.hints.inNoParts : found.hints.inTheseParts,
          ),
        ]),
    ...(residual !== undefined && isKnown(residual) && residual.value > RESIDUAL_OF_A_SLIP
      ? [
          warning(
            "sheet/fit-misses",
            ["tints"],
            found.fitMisses(Math.round(Math.sqrt(residual.value))),
            shown[0] === undefined ? found.hints.misses : groundHint(shown[0], records, words),
          ),
        ]
      : []),
  ];
}

/** Legal bases of a colour for markets of the workshop that forbid nothing of it. */
function unneededBases(
  { slug, cautions }: Sheet,
  { colours, workshop: { markets = [] } }: Records,
): { readonly market: string; readonly path: RecordPath }[] {
  const forbidding = new Set(
    cautions.restrictions
      .filter(({ effect }) => effect === "forbidden unless")
      .map(({ market }) => market),
  );
  return (colours.get(slug)?.record.legalBasis ?? []).flatMap(({ market }, i) =>
    markets.includes(market) && !forbidding.has(market)
      ? [{ market, path: ["legalBasis", i, "market"] }]
      : [],
  );
}

/** Lots whose let-down reads as their standard's does in another white than their records say. */
function lotsInAnotherWhite(slug: string, records: Records, words: Words): SheetComplaint[] {
  return (bookOf(slug, records)?.lots ?? []).flatMap(({ lot, comparison: { remarks } }) =>
    remarks
      .filter(({ rule }) => rule === "reads-as-in-another-white")
      .map((remark) => ({
        severity: "warning",
        rule: "sheet/lot-white",
        slug,
        lot: lot.slug,
        path: ["tints", 0],
        message: words.pages.found.lotNotJudged(
          lot.record.number,
          unended(statementText(remark, words)),
        ),
        hint: undefined,
      })),
  );
}

function suspectComplaints(
  { slug, tints }: Sheet,
  shown: readonly ShownGround[],
  records: Records,
  words: Words,
  warning: (
    rule: Diagnostic["rule"],
    path: RecordPath,
    message: string,
    hint?: string,
  ) => SheetComplaint,
): SheetComplaint[] {
  const recorded = records.colours.get(slug)?.record.tints ?? [];
  return tints.flatMap(({ white, steps }) =>
    steps.flatMap(({ massRatio, suspect }) => {
      if (suspect === undefined) return [];
      const isAlone = suspect.rule === "suspect-drawdown";
      const index = recorded.findIndex(
        (one) => one.white === white.slug && one.massRatio === massRatio,
      );
      const film = shown.find(
        (one) =>
          one.white === white.slug &&
          // Of two that contradict each other either may be the film.
          (one.massRatio === massRatio || !isAlone),
      );
      const { suspectAlone, suspectPair } = words.pages.found;
      return [
        warning(
          "sheet/suspect-drawdown",
          index < 0 ? ["tints"] : ["tints", index],
          (isAlone ? suspectAlone : suspectPair)(massRatio, white.name),
          film && groundHint(film, records, words),
        ),
      ];
    }),
  );
}

/** The key whose figure an estimate contradicts. */
function contradictedPath(
  { rule, values }: Statement,
  record: ColourRecord | undefined,
): RecordPath {
  if (rule.startsWith("oil-index-")) return ["oilIndexGPer100g"];
  if (rule.startsWith("exposure-")) return ["exposures"];
  if (rule.startsWith("lots-")) return ["pigments"];
  if (rule.startsWith("opacity-")) return [(record?.films ?? []).length > 0 ? "films" : "tints"];
  if (!rule.startsWith("trial-")) return ["gloss60"];
  const tried = JSON.stringify(values["touchDryDays"]);
  const index = (record?.dryingTrials ?? []).findIndex(
    ({ touchDryDays }) =>
      JSON.stringify(typeof touchDryDays === "number" ? touchDryDays : touchDryDays.value) ===
      tried,
  );
  return index < 0 ? ["dryingTrials"] : ["dryingTrials", index, "touchDryDays"];
}

/** The slip by which a figure is off just so. */
function contradictionHint(
  { rule, values }: Statement,
  record: ColourRecord | undefined,
  words: Words,
): string | undefined {
  const { hints } = words.pages.found;
  const { touchDryDays, expectedDays, oilIndexGPer100g, oilAbsorptionGPer100g } = values;
  if (rule === "opacity-unlike-its-pigment" && (record?.films ?? []).length === 0)
    return hints.opacityByTints;
  if (rule === "opacity-unlike-its-pigment") return hints.opacityByFilms;
  if (
    rule === "trial-slower-than-expected" &&
    typeof touchDryDays === "number" &&
    typeof expectedDays === "object" &&
    touchDryDays / HOURS <= Number(expectedDays[1]) &&
    touchDryDays / HOURS >= Number(expectedDays[0])
  )
    return hints.timedInHours(Number((touchDryDays / HOURS).toPrecision(2)));
  if (
    rule === "oil-index-below-rub-out" &&
    typeof oilIndexGPer100g === "number" &&
    oilIndexGPer100g < 100 &&
    oilIndexOfShare(oilIndexGPer100g) >= Number(oilAbsorptionGPer100g)
  )
    return hints.inPercentOfPaint(oilIndexOfShare(oilIndexGPer100g));
  return undefined;
}

interface ShownGround {
  readonly massRatio: string;
  readonly white: string;
  readonly contrast: number;
}

/** Let-downs that were read over both halves of a chart and let it through, the plainest first. */
function letDownsThatShowGround(tints: readonly TintReading[]): ShownGround[] {
  return tints
    .flatMap((tint): ShownGround[] => {
      const contrast = tintContrast(tint);
      return contrast !== undefined && contrast < SHOWS_GROUND
        ? [{ massRatio: tint.massRatio, white: tint.white, contrast }]
        : [];
    })
    .toSorted((one, other) => one.contrast - other.contrast);
}

/** What is likelier than a slip where a film shows its ground, and what would help. */
function groundHint(
  { massRatio, white, contrast }: ShownGround,
  { grounds }: Records,
  words: Words,
): string {
  return words.pages.found.hints.showsGround(
    massRatio,
    white,
    words.numbers.decimal(contrast, 2),
    grounds !== undefined,
  );
}

/** A sentence without its full stop, to end another. */
function unended(sentence: string): string {
  return sentence.replace(/\.$/, "");
}
