/** A point of a picture [px], from its top left corner. */
export type Point = readonly [x: number, y: number];

/** Four corners: top left, top right, bottom right, bottom left, as the eye sees them. */
export type Quadrilateral = readonly [Point, Point, Point, Point];

/**
 * Where a point of the unit square lies in a quadrilateral seen in perspective: the projective map
 * that takes the square's corners to the four given ones.
 * @param quad convex.
 * @throws RangeError when no two sides span an area.
 * @source heckbert-1989
 */
export function projected(quad: Quadrilateral): (u: number, v: number) => Point {
  const [[x0, y0], [x1, y1], [x2, y2], [x3, y3]] = quad;
  const [dx1, dx2, dx3] = [x1 - x2, x3 - x2, x0 - x1 + x2 - x3];
  const [dy1, dy2, dy3] = [y1 - y2, y3 - y2, y0 - y1 + y2 - y3];
  const area = dx1 * dy2 - dx2 * dy1;
  if (!(Math.abs(area) > 0)) throw new RangeError("Four corners that span no area");
  const g = (dx3 * dy2 - dx2 * dy3) / area;
  const h = (dx1 * dy3 - dx3 * dy1) / area;
  return (u, v) => {
    const depth = g * u + h * v + 1;
    return [
      ((x1 - x0 + g * x1) * u + (x3 - x0 + h * x3) * v + x0) / depth,
      ((y1 - y0 + g * y1) * u + (y3 - y0 + h * y3) * v + y0) / depth,
    ];
  };
}

/**
 * The patches of a chart by the corners of all of it, row by row.
 * @param across, down how many; they fill the quadrilateral in equal parts.
 */
export function gridOf(quad: Quadrilateral, across: number, down: number): Quadrilateral[] {
  const at = projected(quad);
  return Array.from({ length: across * down }, (_, i) => {
    const [column, row] = [i % across, Math.floor(i / across)];
    const corner = (u: number, v: number): Point => at((column + u) / across, (row + v) / down);
    return [corner(0, 0), corner(1, 0), corner(1, 1), corner(0, 1)];
  });
}

/** Whether its corners go round one way and never turn back. */
export function isConvex(quad: Quadrilateral): boolean {
  const turns = quad.map(([x, y], i) => {
    const [nextX, nextY] = quad[(i + 1) % 4] ?? [NaN, NaN];
    const [thenX, thenY] = quad[(i + 2) % 4] ?? [NaN, NaN];
    return (nextX - x) * (thenY - nextY) - (nextY - y) * (thenX - nextX);
  });
  return turns.every((turn) => turn > 0);
}
