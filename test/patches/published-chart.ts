/**
 * Twenty-four patches of a colour chart: chromaticity and Y under illuminant C, 2 degree, as printed in McCamy, Marcus
 * and Davidson (1976), A color-rendition chart, Journal of Applied Photographic Engineering 2, 95-99; taken from a public copy of its table.
 */
export const CHART_1976: readonly (readonly [name: string, x: number, y: number, Y: number])[] = [
  ["dark skin", 0.4002, 0.3504, 0.1005],
  ["light skin", 0.3773, 0.3446, 0.3582],
  ["blue sky", 0.247, 0.2514, 0.1933],
  ["foliage", 0.3372, 0.422, 0.1329],
  ["blue flower", 0.2651, 0.24, 0.2427],
  ["bluish green", 0.2608, 0.343, 0.4306],
  ["orange", 0.506, 0.407, 0.3005],
  ["purplish blue", 0.211, 0.175, 0.12],
  ["moderate red", 0.4533, 0.3058, 0.1977],
  ["purple", 0.2845, 0.202, 0.0656],
  ["yellow green", 0.38, 0.4887, 0.4429],
  ["orange yellow", 0.4729, 0.4375, 0.4306],
  ["blue", 0.1866, 0.1285, 0.0611],
  ["green", 0.3046, 0.4782, 0.2339],
  ["red", 0.5385, 0.3129, 0.12],
  ["yellow", 0.448, 0.4703, 0.591],
  ["magenta", 0.3635, 0.2325, 0.1977],
  ["cyan", 0.1958, 0.2519, 0.1977],
  ["white", 0.3101, 0.3163, 0.9001],
  ["neutral 8", 0.3101, 0.3163, 0.591],
  ["neutral 6.5", 0.3101, 0.3163, 0.362],
  ["neutral 5", 0.3101, 0.3163, 0.1977],
  ["neutral 3.5", 0.3101, 0.3163, 0.09],
  ["black", 0.3101, 0.3163, 0.0313],
];
