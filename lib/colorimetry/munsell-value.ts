import { domainError } from "../diagnostics/diagnostic.ts";

/**
 * Luminance factor of a Munsell value.
 *
 *     Y% = 1.1914 V - 0.22533 V^2 + 0.23352 V^3 - 0.020484 V^4 + 0.00081939 V^5
 *
 * @param value V [1], 0 <= V <= 10.
 * @returns Y [1], perfect diffuser 100, under illuminant C.
 * @throws RangeError when V is outside the scale or NaN.
 * @source astm-d1535 : value function
 * @example luminanceOfValue(5) // 19.271844
 */
export function luminanceOfValue(value: number): number {
  const V = value;
  if (!(V >= 0 && V <= 10)) throw domainError("Munsell value", V, "0 <= V <= 10");
  return V * (1.1914 + V * (-0.22533 + V * (0.23352 + V * (-0.020484 + V * 0.00081939))));
}

/**
 * Munsell value of a luminance factor; inverse of {@link luminanceOfValue}, which
 * rises throughout, by halving.
 *
 * @param luminance Y [1], 0 <= Y <= 100 (a rounding error above 100 is taken as 100), illuminant C.
 * @returns V [1], 0 <= V <= 10.
 * @throws RangeError when Y is outside the scale or NaN: the scale ends at the perfect diffuser.
 * @source astm-d1535 : value function
 * @example munsellValue(11.700751) // 4
 */
export function munsellValue(luminance: number): number {
  if (!(luminance >= 0 && luminance <= 100 + 1e-6))
    throw domainError("luminance factor Y", luminance, "0 <= Y <= 100");
  let [low, high] = [0, 10];
  while (high - low > 1e-12) {
    const middle = (low + high) / 2;
    if (luminanceOfValue(middle) < luminance) low = middle;
    else high = middle;
  }
  return luminance === 0 ? 0 : high;
}
