/**
 * Whether an amount reaches a limit that is closed at its lower end (">= .3 %").
 * Sums of fractions carry rounding noise in the last digits, and .1 % + .2 % must
 * reach .3 % whichever way they are added: one part in 10^9 counts as reached.
 */
export function reaches(amount: number, limit: number): boolean {
  return amount >= limit * (1 - 1e-9);
}

/** Whether an amount passes a limit that still belongs to the lower side ("exceeding .15 %"). */
export function passes(amount: number, limit: number): boolean {
  return amount > limit * (1 + 1e-9);
}
