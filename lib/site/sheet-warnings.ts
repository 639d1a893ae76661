import type { Diagnostic } from "../diagnostics/diagnostic.ts";
import { isKnown } from "../quantities/figure.ts";
import { statementText } from "../present/statement-text.ts";
import type { Words } from "../words/words.ts";
import type { Records } from "../records/records.ts";
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
          : [{ name: `${massRatio} in ${tint.white.name}`, rule: suspect.rule }],
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
      ...suspects.map(({ name, rule }) =>
        warning(
          "sheet/suspect-drawdown",
          rule === "suspect-drawdown"
            ? `The drawdown ${name} does not agree with the others: it is shown and not used`
            : `The drawdown ${name} and the other in that white contradict each other, and both are used`,
        ),
      ),
      ...(residual !== undefined && isKnown(residual) && residual.value > RESIDUAL_OF_A_SLIP
        ? [
            {
              ...warning(
                "sheet/fit-misses",
                `The fit misses the drawdowns by ${Math.round(Math.sqrt(residual.value))} times what reading and weighing explain`,
              ),
              place: records.colours.get(sheet.slug)?.place(["tints"]) ?? place,
              hint: "let-downs in each other's columns, a ratio written white to colour, or a masstone of another paint",
            },
          ]
        : []),
    ];
  });
}

/** A sentence without its full stop, to end another. */
function unended(sentence: string): string {
  return sentence.replace(/\.$/, "");
}
