/** What to multiply a film's thickness by to have it in um, tried in this order. */
const UNITS = [
  { unit: "mil", times: 25.4 },
  { unit: "mm", times: 1000 },
  { unit: "nm", times: 0.001 },
] as const;
/** What films are drawn down at [um]. Common practice. */
const USUAL_UM = [10, 500] as const;

/**
 * What a thickness that no film has was most likely given in; nothing where no unit makes it one.
 * @param um as recorded, out of reach.
 * @example filmUnitHint(0.075) // "75 um if it was given in mm"
 */
export function filmUnitHint(um: number): string | undefined {
  const slip = UNITS.find(({ times }) => um * times >= USUAL_UM[0] && um * times <= USUAL_UM[1]);
  return slip && `${Number((um * slip.times).toPrecision(3))} um if it was given in ${slip.unit}`;
}
