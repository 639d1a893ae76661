import { z } from "zod";
import { isoDate, text } from "./amount.ts";
import { optional } from "./keys-and-lists.ts";
import { LEAST_UNCERTAINTY } from "./reach.ts";
import { GEOMETRIES, ILLUMINANTS, SCALES } from "./terms.ts";

/** Surface constants of Saunderson's correction that go with a reading: outer k1 and inner k2 reflectance. */
export const surface = z.strictObject({
  k1: z
    .number()
    .min(0)
    .max(0.2)
    .describe("share of light that the surface throws back from outside"),
  k2: z
    .number()
    .min(0)
    .max(0.95)
    .describe("share of light that the surface throws back from inside"),
});

const fileName = z
  .string()
  .regex(
    /^[A-Za-z0-9][A-Za-z0-9._-]*$/,
    "a file name in readings/ of letters, digits, dots, hyphens and low lines, without blanks or a path",
  )
  .max(120);

/** A spectrum in readings/, with the fields that only one kind of reading has. */
function spectralForm<T extends z.ZodRawShape>(further: T) {
  return z.strictObject({
    reading: fileName.describe("name of a file in readings/"),
    column: z
      .union([text, z.array(text).min(1).max(50)])
      .describe("column or sample name; several are averaged"),
    scale: optional(z.enum(SCALES), "needed unless workshop.yaml says it for all"),
    geometry: optional(z.enum(GEOMETRIES), "needed unless workshop.yaml says it for all"),
    illuminant: optional(
      z.enum(ILLUMINANTS),
      "of a file that holds L*a*b* alone and does not say it",
    ),
    observer: z.union([z.literal(2), z.literal(10)]).optional(),
    surface: surface.optional(),
    uncertainty: optional(
      z.number().min(LEAST_UNCERTAINTY).max(0.1),
      "standard uncertainty of a reflectance factor",
    ),
    date: isoDate.optional(),
    calibration: optional(
      isoDate,
      "day of the instrument's calibration that it was read under; without it `date`",
    ),
    ...further,
  });
}

export const spectralReading = spectralForm({});

/**
 * The three ways in which a workshop can say what colour a film has, each with
 * the same further fields: a spectrum in readings/, a Lab, or a Munsell chip by eye;
 * and fields that go with a spectrum alone.
 */
export function readingForms<T extends z.ZodRawShape, U extends z.ZodRawShape>(
  further: T,
  ofSpectrum: U,
) {
  return z.union([
    spectralForm({ ...further, ...ofSpectrum }),
    z.strictObject({
      lab: z.tuple([
        z.number().min(0).max(100),
        z.number().min(-150).max(150),
        z.number().min(-150).max(150),
      ]),
      illuminant: z.enum(ILLUMINANTS),
      observer: z.union([z.literal(2), z.literal(10)]),
      geometry: z.enum(GEOMETRIES),
      uncertainty: optional(
        z.number().min(LEAST_UNCERTAINTY).max(10),
        "standard uncertainty of each of L*, a*, b*",
      ),
      date: isoDate.optional(),
      ...further,
    }),
    z.strictObject({
      munsell: text.describe('nearest chip by eye, such as "5PB 3/1" or "N 2/"'),
      date: isoDate.optional(),
      ...further,
    }),
  ]);
}

/** A drawdown over both halves of a chart: the reading itself is then the one over white. */
const overBoth = {
  overBlack: optional(
    spectralReading,
    "the same drawdown over the black half of the chart; `reading` is then over the white half",
  ),
};

/** A drawdown in one of the three ways. */
export function drawdownForms<T extends z.ZodRawShape>(further: T) {
  return readingForms(further, overBoth);
}

export const plainReading = drawdownForms({});
export type ReadingForm = z.infer<typeof plainReading>;
