/** Parts on a slider of a thousand steps: none at its left end, then by equal ratios to a hundred. */
const [LEAST, MOST, END] = [0.05, 100, 1000];

export function partsOfSlider(at: number): number {
  if (!(at > 0)) return 0;
  const parts = LEAST * (MOST / LEAST) ** ((at - 1) / (END - 1));
  return Number(parts.toPrecision(parts < 1 ? 2 : 3));
}

export function sliderOfParts(parts: number): number {
  if (!(parts > 0)) return 0;
  const share = Math.log(parts / LEAST) / Math.log(MOST / LEAST);
  return Math.round(Math.min(Math.max(1 + share * (END - 1), 1), END));
}
