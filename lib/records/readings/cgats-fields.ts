import type { Scale } from "../schema/terms.ts";
import type { CgatsToken } from "./cgats-lines.ts";
import type { FaultList } from "./fault-list.ts";
import type { WrittenCell } from "./reading-column.ts";

/** Where in a set the parts of a reading stand, as indices of fields. */
export interface CgatsFields {
  readonly id?: number;
  readonly name?: number;
  /** One field a wavelength: the wavelength as written in the field's name, at the field's place. */
  readonly spectral: readonly { readonly index: number; readonly wavelength: WrittenCell }[];
  /** A field for the wavelength and one for its value, over and over. */
  readonly pairs: readonly { readonly wavelengthIndex: number; readonly index: number }[];
  readonly pairScale?: Scale;
  readonly lab?: readonly [number, number, number];
  readonly xyz?: readonly [number, number, number];
}

/** SPECTRAL_NM400, SPECTRAL_NM_400, SPEC_400, nm400 and the like. */
const SPECTRAL_FIELD = /^(?:SPECTRAL_NM_?|SPECTRAL_|SPEC_?|NM_?)(\d{3,4}(?:[.,]\d{1,4})?)$/i;
const PAIR_SCALES: Readonly<Record<string, Scale>> = {
  SPECTRAL_PCT: "percent",
  SPECTRAL_DEC: "factor",
};

/** What the fields of a table are; complains of a field that comes twice and of pairs that are none. */
export function cgatsFields(fields: readonly CgatsToken[], faults: FaultList): CgatsFields {
  const names = fields.map((field) => field.text.toUpperCase());
  const seen = new Map<string, CgatsToken>();
  const spectral: { index: number; wavelength: WrittenCell }[] = [];
  const pairs: { wavelengthIndex: number; index: number }[] = [];
  let pairScale: Scale | undefined;

  fields.forEach((field, index) => {
    const name = names[index] ?? "";
    const nm = SPECTRAL_FIELD.exec(name)?.[1];
    const scale = PAIR_SCALES[name];
    if (scale !== undefined) {
      if (names[index - 1] !== "SPECTRAL_NM")
        faults.error("cgats-pairs", field, {
          message: `The field ${field.text} needs SPECTRAL_NM just before it`,
          actual: field.text,
          expected: "SPECTRAL_NM before it",
        });
      else pairs.push({ wavelengthIndex: index - 1, index });
      pairScale ??= scale;
      if (scale !== pairScale)
        faults.error("cgats-pairs", field, {
          message: `The field ${field.text} mixes two scales in one table: use SPECTRAL_PCT or SPECTRAL_DEC throughout`,
          actual: field.text,
          expected: "one scale in a table, SPECTRAL_PCT or SPECTRAL_DEC",
        });
    } else if (name === "SPECTRAL_NM") {
      if (PAIR_SCALES[names[index + 1] ?? ""] === undefined)
        faults.error("cgats-pairs", field, {
          message: `The field ${field.text} needs SPECTRAL_PCT or SPECTRAL_DEC just after it`,
          actual: field.text,
          expected: "SPECTRAL_PCT or SPECTRAL_DEC after it",
        });
    } else if (nm !== undefined) {
      spectral.push({ index, wavelength: { text: nm, line: field.line, column: field.column } });
    } else {
      const twin = seen.get(name);
      if (twin)
        faults.error("duplicated-column", field, {
          message: `The table has the field ${field.text} twice`,
          actual: field.text,
          expected: `\`${twin.text}\` once in a table`,
        });
      seen.set(name, field);
    }
  });
  const [firstSpectral] = spectral;
  if (firstSpectral && pairs.length > 0) {
    faults.error("cgats-pairs", firstSpectral.wavelength, {
      message: `The table gives ${firstSpectral.wavelength.text} nm a field of its own and also lists SPECTRAL_NM with its value: only one of the two can be read`,
      actual: firstSpectral.wavelength.text,
      expected: "either one field a wavelength or SPECTRAL_NM with its value",
    });
  }
  const id = names.indexOf("SAMPLE_ID");
  const name = names.indexOf("SAMPLE_NAME");
  const lab = triple(names, ["LAB_L", "LAB_A", "LAB_B"]);
  const xyz = triple(names, ["XYZ_X", "XYZ_Y", "XYZ_Z"]);
  return {
    spectral,
    pairs,
    ...(id >= 0 && { id }),
    ...(name >= 0 && { name }),
    ...(pairScale !== undefined && { pairScale }),
    ...(lab !== undefined && { lab }),
    ...(xyz !== undefined && { xyz }),
  };
}

function triple(
  names: readonly string[],
  wanted: readonly [string, string, string],
): readonly [number, number, number] | undefined {
  const [one, two, three] = wanted;
  const found = [names.indexOf(one), names.indexOf(two), names.indexOf(three)] as const;
  return found.some((index) => index < 0) ? undefined : found;
}
