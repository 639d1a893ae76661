/** An estimate: its lower and upper end, in the unit of the figure; lower <= upper. */
export type Interval = readonly [number, number];

/** A figure that can be computed with: one number, or an estimate's two ends. */
export type Quantity = number | Interval;

/** Whether a quantity is an estimate's two ends. */
export function isInterval(amount: unknown): amount is Interval {
  return (
    Array.isArray(amount) && amount.length === 2 && amount.every((end) => typeof end === "number")
  );
}

/** Both ends of a quantity; a single number is both of its own ends. */
export function ends(quantity: Quantity): Interval {
  return typeof quantity === "number" ? [quantity, quantity] : quantity;
}

/** From the least lower end of several estimates, one or more, to the greatest upper one. */
export function spanning(intervals: readonly Interval[]): Interval {
  return [
    Math.min(...intervals.map(([lower]) => lower)),
    Math.max(...intervals.map(([, upper]) => upper)),
  ];
}

/** The middle of a quantity, for ordering and drawing only: never shown as the figure. */
export function midpoint(quantity: Quantity): number {
  const [lower, upper] = ends(quantity);
  return (lower + upper) / 2;
}
