import type { DrawdownStatement } from "../../optics/statements.ts";
import type { WordingsOf } from "../../quantities/statement.ts";
import {
  decimals,
  deltaE00Text,
  listed,
  percent,
  significant,
  surfaceConstants,
  within,
} from "./phrases.ts";

/** Why drawdowns carry no fit, or less than one would like; which are doubtful; how far a ladder reaches. */
export const DRAWDOWN_RULINGS: WordingsOf<DrawdownStatement> = {
  "no-masstone": () =>
    "The masstone has not been read; let-downs alone do not tell what a colour absorbs from what it scatters.",
  "no-tint": () => "No let-down in a white has been read, and a masstone alone predicts none.",
  "masstone-without-spectrum": () =>
    "Nothing is fitted: the masstone was read without a spectrum, and absorption and scattering need one.",
  "tint-without-spectrum": (v) => `${letDown(v)} is not fitted: it was read without a spectrum.`,
  "white-without-masstone": (v) =>
    `${letDown(v)} is not fitted: no spectrum of its white by itself is recorded.`,
  "ratio-kind-missing": (v) =>
    `${letDown(v)} is not fitted: whether dry pigment or paint was weighed is not recorded.`,
  "ratio-kinds-mixed": (v) =>
    `${letDown(v)} is not fitted: of the let-downs in that white some were weighed as dry pigment and some as paint.`,
  "ratio-not-positive": (v) =>
    `${letDown(v)} is not fitted: its ratio of colour to white is not above 0.`,
  "masstone-lighter-than-tint": (v) =>
    `${letDown(v)} is not fitted: it reads darker than the masstone (${luminances(v.tintY, v.masstoneY)}), which nothing let down in a white can.`,
  "tint-lighter-than-white": (v) =>
    `${letDown(v)} is not fitted: it reads lighter than its white (${luminances(v.tintY, v.whiteY)}), which nothing let down in it can.`,
  "white-lighter-than-tint": (v) =>
    `${letDown(v)} is not fitted: it reads darker than its white (${luminances(v.tintY, v.whiteY)}), though the colour is the lighter of the two.`,
  "tint-lighter-than-masstone": (v) =>
    `${letDown(v)} is not fitted: it reads lighter than the masstone (${luminances(v.tintY, v.masstoneY)}), though its white is the darker of the two.`,
  "geometry-mixed": (v) =>
    `The drawdowns were read in different geometries (${listed(v.geometries)}), and the surface constants recorded do not bring them together.`,
  "geometry-needs-surface": (v) =>
    `Without constants of its surface, a reading (${v.from}) does not tell what gloss adds to it.`,
  "surfaces-differ": () =>
    "The drawdowns are recorded with different surface constants, so they are not fitted together.",
  "reflectance-not-above-surface": (v) =>
    `Nothing is fitted: the reading of ${drawdown(v.drawdown)} is no more than its surface reflects (${percent(v.reflectance)} at ${decimals(v.wavelengthNm, 0)}\u00a0nm, k1 ${decimals(v.k1, 3)}), so its geometry or its surface is not as recorded.`,
  "masstone-not-told-from-surface": (v) =>
    `At ${wavelengths(v.wavelengths)} the masstone reads no more than its surface reflects (k1 ${decimals(v.k1, 3)}), so we cannot say what lies under the surface there.`,
  "masstone-near-its-surface": (v) =>
    `Read with its gloss included, the masstone lies so near what the surface alone throws back (k1 ${decimals(v.k1, 3)}) that we cannot say how deep it is without gloss.`,

  "suspect-drawdown": (v) =>
    `${letDown(v)} is doubtful: the others miss it by ${deltaE00Text(v.leaveOneOutDeltaE00)} (${decimals(v.limit, 1)} is the limit)${v.othersDeltaE00 === undefined ? "" : ` and agree among themselves within ${decimals(v.othersDeltaE00, 1)}`}; it is shown and not used.`,
  "drawdowns-disagree": (v) =>
    `${letDown(v)} and the other in that white contradict each other (${deltaE00Text(v.leaveOneOutDeltaE00)}; ${decimals(v.limit, 1)} is the limit), and nothing tells which is wrong.`,
  "fit-needs-masstone": () => "The masstone cannot be left out, since the fit rests on it.",
  "only-let-down-in-its-white": (v) =>
    `The only let-down in ${within(v.white)}: left out, nothing would predict it.`,
  "surface-stated": (v) =>
    `Surface taken off by the constants recorded with the readings (${surfaceConstants(v)}).`,
  "surface-by-leave-one-out": (v) =>
    `Surface taken off as an oil film's (${surfaceConstants(v)}): by these constants let-downs that are left out, of all colours read alike, are predicted better than by none.`,
  "surface-by-default": (v) =>
    `Surface taken off as an oil film's (${surfaceConstants(v)}), as is usual for the geometry.`,
  "surface-under-darkest": (v) =>
    `Surface taken off as an oil film's, its share of outer light kept under the darkest reading of the workshop (${surfaceConstants(v)}).`,
  "no-surface-by-leave-one-out": (v) =>
    `No surface taken off (${surfaceConstants(v)}): so let-downs that are left out, of all colours read alike, are predicted better than with an oil film's constants.`,
  "no-surface-by-default": (v) =>
    `No surface taken off (${surfaceConstants(v)}), as is usual with gloss excluded; no let-down could be left out to try others.`,
  "fit-has-none-to-spare": () =>
    "Each white has one let-down, so the fit passes through all of them and nothing tells how good it is.",
  "fit-within-noise": (v) =>
    `The fit meets the drawdowns as well as reading and weighing allow (weighted residual ${significant(v.weightedResidual, 2)}).`,
  "fit-misses-more-than-noise": (v) =>
    `The fit misses the drawdowns by more than reading and weighing explain (weighted residual ${significant(v.weightedResidual, 2)}; near 1 would be theirs alone).`,
  "scattering-known": (v) =>
    `How much it scatters beside its whites is known to about ${percent(v.relativeUncertainty, 1)}.`,
  "scattering-is-bound": (v) =>
    `We know only a bound of how much it scatters: the masstone reflects ${percent(v.masstoneY)}, and the fit leaves it open to \u00b1\u00a0${percent(v.relativeUncertainty, 1)}.`,

  "ladder-does-not-reach": (v) =>
    "palest" in v
      ? `No let-down reaches L* ${decimals(v.L, 0)}: the ladder runs from L* ${decimals(v.darkest, 0)} to ${decimals(v.palest, 0)}.`
      : `No let-down reaches L* ${decimals(v.L, 0)}: none is recorded.`,
  "neighbours-too-far-apart": (v) =>
    `L* ${decimals(v.L, 0)} lies between let-downs ${decimals(v.gap, 0)} of L* apart; more than ${decimals(v.limit, 0)} is not bridged without a fit.`,
  "film-needs-masstone-or-two-grounds": () =>
    "One film by itself does not tell what it absorbs from what it scatters: a masstone, or films over two grounds, would.",
  "film-tells-nothing": (v) =>
    `At ${wavelengths(v.wavelengths)} the film changes its ground too little to tell what it absorbs and scatters.`,
  "no-such-white": (v) => `Nothing was let down in ${within(v.white)}.`,
};

type NamedTint = { readonly tint: string; readonly white: string };

/** "titanium-white 1:20" as "The let-down 1:20 in titanium white". */
function letDown({ tint, white }: NamedTint): string {
  return tint.startsWith(`${white} `)
    ? `The let-down ${tint.slice(white.length + 1)} in ${within(white)}`
    : `The let-down ${tint}`;
}

function drawdown(name: string): string {
  const [, white, ratio] = /^(\S+) (\S+)$/.exec(name) ?? [];
  return white === undefined || ratio === undefined
    ? `the ${name === "masstone" ? name : within(name)}`
    : `the let-down ${ratio} in ${within(white)}`;
}

function wavelengths(count: number): string {
  return `${count} wavelength${count === 1 ? "" : "s"}`;
}

function luminances(one: number, other: number): string {
  return `Y ${percent(one)} against ${significant(other * 100, 2)}`;
}
