/**
 * Efficiencies of a sphere by a path of its own, to hold lorenz-mie.ts against:
 * each logarithmic derivative by a continued fraction by itself (Lentz 1976, Applied
 * Optics 15, 668), the Bessel functions of x by Miller's downward recurrence
 * normalised by Sum (2n+1) j_n^2 = 1 (Abramowitz & Stegun 10.1.50), those of the second
 * kind upward; complex arithmetic written out in pairs.
 */
type Complex = readonly [number, number];
const mul = ([a, b]: Complex, [c, d]: Complex): Complex => [a * c - b * d, a * d + b * c];
const div = ([a, b]: Complex, [c, d]: Complex): Complex => [
  (a * c + b * d) / (c * c + d * d),
  (b * c - a * d) / (c * c + d * d),
];
const add = ([a, b]: Complex, [c, d]: Complex): Complex => [a + c, b + d];
const sub = ([a, b]: Complex, [c, d]: Complex): Complex => [a - c, b - d];
const scale = (k: number, [a, b]: Complex): Complex => [k * a, k * b];

/** D_n(z) = -n/z + J_(n-1/2)(z)/J_(n+1/2)(z), the ratio by Lentz's two running fractions. */
function derivativeByFraction(n: number, z: Complex): Complex {
  const term = (k: number): Complex =>
    scale((k % 2 === 1 ? 1 : -1) * 2 * (n + k - 0.5), div([1, 0], z));
  let numerator = add(term(2), div([1, 0], term(1)));
  let denominator = term(2);
  let value = mul(term(1), div(numerator, denominator));
  for (let k = 3; k < 200_000; k++) {
    numerator = add(term(k), div([1, 0], numerator));
    denominator = add(term(k), div([1, 0], denominator));
    const ratio = div(numerator, denominator);
    value = mul(value, ratio);
    if (Math.hypot(ratio[0] - 1, ratio[1]) < 1e-14) return sub(value, scale(n, div([1, 0], z)));
  }
  throw new Error("continued fraction did not settle");
}

/** psi_n(x) = x j_n(x), n = 0 to count, by Miller's downward recurrence. */
function besselDownward(x: number, count: number): number[] {
  const start = Math.ceil(Math.max(count, x) + 15 * Math.cbrt(x) + 60);
  const j = new Array<number>(start + 2).fill(0);
  j[start] = 1e-100;
  for (let n = start; n > 0; n--) {
    j[n - 1] = ((2 * n + 1) / x) * (j[n] ?? 0) - (j[n + 1] ?? 0);
    if (Math.abs(j[n - 1] ?? 0) > 1e100)
      for (let i = n - 1; i <= start; i++) j[i] = (j[i] ?? 0) * 1e-200;
  }
  const norm = Math.sqrt(j.reduce((sum, value, n) => sum + (2 * n + 1) * value * value, 0));
  // Its sign from j_0 or j_1, whichever is the larger.
  const [j0, j1] = [Math.sin(x) / x, Math.sin(x) / (x * x) - Math.cos(x) / x];
  const sign =
    Math.abs(j0) > Math.abs(j1) ? Math.sign(j0 * (j[0] ?? 0)) : Math.sign(j1 * (j[1] ?? 0));
  return j.slice(0, count + 1).map((value) => (sign * x * value) / norm);
}

export function efficienciesByFractions(
  x: number,
  n: number,
  k: number,
): { ext: number; sca: number; g: number } {
  const m: Complex = [n, k];
  const count = Math.ceil(x + 4.3 * Math.cbrt(x) + 4);
  const psi = besselDownward(x, count);
  const y = [-Math.cos(x), -Math.cos(x) / x - Math.sin(x)];
  for (let i = 2; i <= count; i++)
    y.push(((2 * i - 1) / x) * (y[i - 1] ?? NaN) - (y[i - 2] ?? NaN));
  const coefficient = (factor: Complex, i: number): Complex => {
    const xi = (order: number): Complex => [psi[order] ?? NaN, y[order] ?? NaN];
    const inner = add(factor, [i / x, 0]);
    return div(
      sub(scale(psi[i] ?? NaN, inner), [psi[i - 1] ?? NaN, 0]),
      sub(mul(inner, xi(i)), xi(i - 1)),
    );
  };
  const pairs = Array.from({ length: count }, (_, j): readonly [Complex, Complex] => {
    const D = derivativeByFraction(j + 1, scale(x, m));
    return [coefficient(div(D, m), j + 1), coefficient(mul(D, m), j + 1)];
  });
  const dot = ([a, b]: Complex, [c, d]: Complex): number => a * c + b * d;
  let [ext, sca, asymmetry] = [0, 0, 0];
  for (const [j, [a, b]] of pairs.entries()) {
    const i = j + 1;
    ext += (2 * i + 1) * (a[0] + b[0]);
    sca += (2 * i + 1) * (dot(a, a) + dot(b, b));
    const next = pairs[j + 1] ?? [
      [0, 0],
      [0, 0],
    ];
    asymmetry +=
      ((i * (i + 2)) / (i + 1)) * (dot(a, next[0]) + dot(b, next[1])) +
      ((2 * i + 1) / (i * (i + 1))) * dot(a, b);
  }
  return { ext: (2 * ext) / (x * x), sca: (2 * sca) / (x * x), g: (2 * asymmetry) / sca };
}
