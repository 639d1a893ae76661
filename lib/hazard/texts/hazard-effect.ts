/**
 * What the hazards that a studio goes by do, a short word for several statements: the official
 * texts stand on the label, and a reason beside a caution is no place for them.
 *
 * @source clp-statements-2025 : the statements that each one shortens
 */
const ROWS = [
  { effect: "fatal when swallowed", of: ["H300"] },
  { effect: "fatal on skin", of: ["H310"] },
  { effect: "fatal when inhaled", of: ["H330"] },
  { effect: "cancer", of: ["H350", "H350i"] },
  { effect: "genes", of: ["H340"] },
  {
    effect: "unborn child or fertility",
    of: ["H360", "H360D", "H360F", "H360FD", "H360Fd", "H360Df"],
  },
  { effect: "damages organs", of: ["H370", "H372"] },
  { effect: "toxic when swallowed", of: ["H301"] },
  { effect: "toxic on skin", of: ["H311"] },
  { effect: "toxic when inhaled", of: ["H331"] },
  { effect: "burns skin and eyes", of: ["H314"] },
  { effect: "asthma", of: ["H334"] },
  { effect: "cancer suspected", of: ["H351"] },
  { effect: "genes suspected", of: ["H341"] },
  { effect: "unborn child or fertility suspected", of: ["H361", "H361d", "H361f", "H361fd"] },
  { effect: "nursed children", of: ["H362"] },
  { effect: "may damage organs", of: ["H371", "H373"] },
  { effect: "hormones", of: ["EUH380"] },
  { effect: "hormones suspected", of: ["EUH381"] },
  { effect: "damages eyes", of: ["H318"] },
  { effect: "harmful on skin", of: ["H312"] },
  { effect: "harmful when inhaled", of: ["H332"] },
  { effect: "skin allergy", of: ["H317"] },
  { effect: "irritates skin", of: ["H315"] },
  { effect: "irritates eyes", of: ["H319"] },
  { effect: "irritates airways", of: ["H335"] },
  { effect: "makes drowsy", of: ["H336"] },
  { effect: "catches fire", of: ["H222", "H223", "H224", "H225", "H226", "H228"] },
  { effect: "heats by itself", of: ["H251", "H252"] },
  { effect: "very toxic to water", of: ["H400", "H410"] },
  { effect: "toxic to water", of: ["H401", "H411"] },
  { effect: "harmful to water", of: ["H402", "H412", "H413"] },
  { effect: "hormones of animals", of: ["EUH430", "EUH431"] },
  { effect: "stays in nature", of: ["EUH440", "EUH441", "EUH450", "EUH451"] },
] as const;

/** The gravest first. */
export type HazardEffect = (typeof ROWS)[number]["effect"];

/**
 * What statements come to, each effect once, the gravest first.
 * @returns none for a statement that no caution of the studio goes by.
 * @example hazardEffects(["H410", "H373", "H372"]) // ["damages organs", "may damage organs", "very toxic to water"]
 */
export function hazardEffects(statements: readonly string[]): HazardEffect[] {
  return ROWS.filter(({ of }) => of.some((code) => statements.includes(code))).map(
    ({ effect }) => effect,
  );
}
