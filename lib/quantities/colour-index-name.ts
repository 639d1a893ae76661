/** What a pigment's Colour Index name is a variant of by its suffix: "PB 15" of "PB 15:3", and any other name itself. */
export function parentName(colourIndexName: string): string {
  return colourIndexName.replace(/:\d+$/, "");
}

/** The rows of a table for a pigment: those of its own name, else of what it is a variant of; none without a name. */
export function rowsNamed<Row extends { readonly colourIndexName: string }>(
  rows: readonly Row[],
  name: string | undefined,
): readonly Row[] {
  if (name === undefined) return [];
  const of = (wanted: string): readonly Row[] =>
    rows.filter(({ colourIndexName }) => colourIndexName === wanted);
  const own = of(name);
  return own.length > 0 ? own : of(parentName(name));
}
