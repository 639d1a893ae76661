import { tristimulus } from "../colorimetry/tristimulus.ts";
import type { Diagnostic } from "../diagnostics/diagnostic.ts";
import { certain } from "../quantities/at.ts";
import { errorAt } from "./fault.ts";
import type { Parsed } from "./parsed-record.ts";
import type { ChartGrounds } from "./records.ts";
import type { ReadingResolver } from "./resolved-readings.ts";
import type { WorkshopRecord } from "./schema/workshop.ts";

/** The halves of the workshop's opacity chart as they were read; complains of one without a spectrum, and of two that are exchanged. */
export function resolvedGrounds(
  workshop: Parsed<WorkshopRecord> | undefined,
  { resolve }: Pick<ReadingResolver, "resolve">,
  diagnostics: Diagnostic[],
): ChartGrounds | undefined {
  const forms = workshop?.record.grounds;
  if (workshop === undefined || forms === undefined) return undefined;
  const { place } = workshop.yaml;
  const [black, white] = (["black", "white"] as const).map((ground) =>
    resolve(forms[ground], workshop.yaml, ["grounds", ground]),
  );
  for (const [ground, reading] of Object.entries({ black, white }))
    if (reading !== undefined && reading.form !== "spectrum")
      diagnostics.push(
        errorAt(place(["grounds", ground]), "records/ground", {
          message: `The chart's ${ground} half is read as L*a*b*, and contrast ratios take its spectrum`,
          actual: "L*a*b*",
          expected: "a spectrum",
        }),
      );
  if (black?.form !== "spectrum" || white?.form !== "spectrum") return undefined;
  const [darker, lighter] = [black, white].map(
    ({ spectrum }) => tristimulus(spectrum, "D65/10").Y / 100,
  );
  if (certain(darker) < certain(lighter)) return { black, white };
  diagnostics.push(
    errorAt(place(["grounds", "black"]), "records/grounds-exchanged", {
      message: `The chart's black half reads Y ${darker?.toFixed(2) ?? ""}, and its white half ${lighter?.toFixed(2) ?? ""}`,
      actual: "black no darker than white",
      expected: "a black half darker than the white one",
      hint: "the two columns are exchanged",
    }),
  );
  return undefined;
}
