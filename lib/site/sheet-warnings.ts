import type { Diagnostic } from "../diagnostics/diagnostic.ts";
import { isKnown } from "../quantities/figure.ts";
import { statementText } from "../present/statement-text.ts";
import type { Words } from "../words/words.ts";
import { SHOWS_GROUND } from "../optics/tints/tint-statement.ts";
import type { Records, TintReading } from "../records/records.ts";
import { tintContrast } from "../sheet/tints/films-over-both.ts";
import type { Sheet } from "../sheet/sheet.ts";

/** Mean square of residual over noise that no honest drawdowns leave, however little the model fits the paint. Our own limit. */
const RESIDUAL_OF_A_SLIP = 300;

/**
 * What a sheet found against its record: a measurement against an estimate, a
 * drawdown against the others, the maker's label against the reckoning, and, as an error, a market of the workshop's where
 * the colour may not be sold without a legal basis on record.
 */
export function sheetWarnings(
  sheets: readonly Sheet[],
  records: Records,
  words: Words,
): Diagnostic[] {
  return sheets.flatMap((sheet) => {
    const shown = letDownsThatShowGround(records.colours.get(sheet.slug)?.tints ?? []);
    const file = records.colours.get(sheet.slug)?.file ?? sheet.slug;
    const place = { file, line: 1, column: 1, path: "" };
    const warning = (rule: Diagnostic["rule"], message: string): Diagnostic => ({
      severity: "warning",
      rule,
      place,
      message,
    });
    const contradictions = [
      ...sheet.oil.contradictions,
      ...sheet.drying.contradictions,
      ...sheet.permanence.contradictions,
    ];
    const suspects = sheet.tints.flatMap((tint) =>
      tint.steps.flatMap(({ massRatio, suspect }) =>
        suspect === undefined
          ? []
          : [
              {
                name: `${massRatio} in ${tint.white.name}`,
                rule: suspect.rule,
                shows: shown.find(
                  (one) =>
                    one.white === tint.white.slug &&
                    // Of two that contradict each other either may be the film.
                    (one.massRatio === massRatio || suspect.rule !== "suspect-drawdown"),
                ),
              },
            ],
      ),
    );
    const residual = sheet.optics.fit?.weightedResidual;
    return [
      ...sheet.cautions.restrictions
        .filter(({ effect, met }) => effect === "forbidden unless" && !met)
        .map((act): Diagnostic => ({
          ...warning(
            "sheet/not-for-sale",
            `The colour may not be sold in ${act.market} without a legal basis and a class of buyer under legalBasis`,
          ),
          severity: "error",
          hint: statementText(act, words),
        })),
      ...sheet.cautions.checks.map((check): Diagnostic => ({
        ...warning(
          "sheet/label-differs",
          `The maker's label and the reckoning differ: ${unended(statementText(check, words))}`,
        ),
        place: records.colours.get(sheet.slug)?.place(["label"]) ?? {
          file,
          line: 1,
          column: 1,
          path: "",
        },
      })),
      ...contradictions.map((ruling) =>
        warning(
          "sheet/contradiction",
          `Record and estimate differ: ${unended(statementText(ruling, words))}`,
        ),
      ),
      ...suspects.map(({ name, rule, shows }): Diagnostic => ({
        ...warning(
          "sheet/suspect-drawdown",
          rule === "suspect-drawdown"
            ? `The drawdown ${name} does not agree with the others: it is shown and not used`
            : `The drawdown ${name} and the other in that white contradict each other, and both are used`,
        ),
        ...(shows === undefined ? {} : { hint: groundHint(shows, records) }),
      })),
      ...(residual !== undefined && isKnown(residual) && residual.value > RESIDUAL_OF_A_SLIP
        ? [
            {
              ...warning(
                "sheet/fit-misses",
                `The fit misses the drawdowns by ${Math.round(Math.sqrt(residual.value))} times what reading and weighing explain`,
              ),
              place: records.colours.get(sheet.slug)?.place(["tints"]) ?? place,
              hint:
                shown[0] === undefined
                  ? "let-downs in each other's columns, a ratio written white to colour, or a masstone of another paint"
                  : groundHint(shown[0], records),
            },
          ]
        : []),
    ];
  });
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
function groundHint({ massRatio, white, contrast }: ShownGround, { grounds }: Records): string {
  const wanted =
    grounds === undefined
      ? "grounds in workshop.yaml, the chart's two halves read bare, would tell a coat that hides"
      : "a thicker film would tell more";
  return `${massRatio} in ${white} lets its ground show (contrast ratio ${contrast.toFixed(2)}), and no coat that hides reads so; ${wanted}`;
}

/** A sentence without its full stop, to end another. */
function unended(sentence: string): string {
  return sentence.replace(/\.$/, "");
}
