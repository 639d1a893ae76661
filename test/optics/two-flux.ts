/**
 * The two-flux differential equations solved by brute force: a path to a film's
 * reflectance that shares no algebra with lib/optics.
 *
 *     di/dx = -(K + S) i + S j,  -dj/dx = -(K + S) j + S i,  R = j/i
 *     so, from the ground up: dR/dX = S - 2 (K + S) R + S R^2
 *
 * Fourth-order Runge-Kutta with enough steps that each is shorter than a
 * fortieth of the light's mean free path.
 *
 * @source kubelka-munk-1931 : the differential equations
 */
export function integratedReflectance(K: number, S: number, X: number, ground: number): number {
  const slope = (R: number): number => S - 2 * (K + S) * R + S * R * R;
  const steps = Math.max(200, Math.ceil(40 * (K + S) * X));
  const h = X / steps;
  let R = ground;
  for (let step = 0; step < steps; step++) {
    const k1 = slope(R);
    const k2 = slope(R + (h * k1) / 2);
    const k3 = slope(R + (h * k2) / 2);
    const k4 = slope(R + h * k3);
    R += (h * (k1 + 2 * k2 + 2 * k3 + k4)) / 6;
  }
  return R;
}

/** By K and S: masstones of one pigment are asked for again and again. */
const known = new Map<string, number>();

/** The same for a film so thick that another tenth of it changes nothing. */
export function integratedMasstone(K: number, S: number): number {
  const key = `${K} ${S}`;
  const attenuation = Math.sqrt(K * (K + 2 * S));
  const R =
    known.get(key) ??
    integratedReflectance(K, S, attenuation === 0 ? 1e4 / S : 12 / attenuation, 0.5);
  known.set(key, R);
  return R;
}
