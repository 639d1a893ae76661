import type { Colour, LabReading, Reading, SpectrumReading } from "../records/records.ts";

/** One reading that other programs may load: a masstone or a tint, as it was read. */
export interface ColourSample {
  /** "Lamp Black" of a masstone, "Lamp Black 1:5 in Titanium White" of a tint; each once in a file. */
  readonly name: string;
  readonly reading: SpectrumReading | LabReading;
}

/**
 * Masstone and tints of a colour that were read, in the order of the record. A chip judged by eye is no reading of an
 * instrument, and is left out.
 * @param nameOf a white's name by its slug
 */
export function colourSamples(
  { record, masstone, tints }: Colour,
  nameOf: (slug: string) => string,
): ColourSample[] {
  const found: readonly (readonly [string, Reading | undefined])[] = [
    [record.name, masstone],
    ...tints.map(
      ({ white, massRatio, reading }) =>
        [`${record.name} ${massRatio} in ${nameOf(white)}`, reading] as const,
    ),
  ];
  const count = new Map<string, number>();
  return found.flatMap(([name, reading]) => {
    if (reading === undefined || reading.form === "chip") return [];
    const times = (count.get(name) ?? 0) + 1;
    count.set(name, times);
    return [{ name: times === 1 ? name : `${name} (${times})`, reading }];
  });
}

/** Reflectance factors to 1e-6, which no instrument reaches. */
export function factorText(factor: number): string {
  return factor.toFixed(6);
}
