/** A pigment's name, and after it in brackets its Colour Index name where it has one: "Bone black (PBk 9)". */
export function pigmentName({
  name,
  colourIndexName,
}: {
  readonly name: string;
  readonly colourIndexName?: string | undefined;
}): string {
  return colourIndexName === undefined ? name : `${name} (${colourIndexName})`;
}
