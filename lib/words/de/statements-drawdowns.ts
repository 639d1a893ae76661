import type { DrawdownStatement } from "../../optics/statements.ts";
import type { WordingsOf } from "../../quantities/statement.ts";
import { GEOMETRY_NAMES } from "./geometry-names.ts";
import { inGerman } from "./closed-sets.ts";
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
    "Der Vollton wurde nicht gemessen; Aufhellungen allein sagen nicht, was eine Farbe absorbiert und was sie streut.",
  "no-tint": () =>
    "Keine Aufhellung in einem Weiß wurde gemessen, und ein Vollton allein sagt keine vorher.",
  "masstone-without-spectrum": () =>
    "Nichts wird angepasst: der Vollton wurde ohne Spektrum gemessen, und Absorption und Streuung brauchen eines.",
  "tint-without-spectrum": (v) =>
    `${letDown(v)} geht nicht in die Anpassung ein: sie wurde ohne Spektrum gemessen.`,
  "white-without-masstone": (v) =>
    `${letDown(v)} geht nicht in die Anpassung ein: vom Weiß allein ist kein Spektrum aufgezeichnet.`,
  "ratio-kind-missing": (v) =>
    `${letDown(v)} geht nicht in die Anpassung ein: ob trockenes Pigment oder Farbe gewogen wurde, ist nicht aufgezeichnet.`,
  "ratio-kinds-mixed": (v) =>
    `${letDown(v)} geht nicht in die Anpassung ein: von den Aufhellungen in diesem Weiß wurden einige als trockenes Pigment und einige als Farbe gewogen.`,
  "ratio-not-positive": (v) =>
    `${letDown(v)} geht nicht in die Anpassung ein: ihr Verhältnis von Farbe zu Weiß liegt nicht über 0.`,
  "masstone-lighter-than-tint": (v) =>
    `${letDown(v)} geht nicht in die Anpassung ein: sie misst dunkler als der Vollton (${luminances(v.tintY, v.masstoneY)}), und das kann keine Aufhellung in einem Weiß.`,
  "tint-lighter-than-white": (v) =>
    `${letDown(v)} geht nicht in die Anpassung ein: sie misst heller als ihr Weiß (${luminances(v.tintY, v.whiteY)}), und das kann keine Aufhellung darin.`,
  "white-lighter-than-tint": (v) =>
    `${letDown(v)} geht nicht in die Anpassung ein: sie misst dunkler als ihr Weiß (${luminances(v.tintY, v.whiteY)}), obwohl die Farbe die hellere der beiden ist.`,
  "tint-lighter-than-masstone": (v) =>
    `${letDown(v)} geht nicht in die Anpassung ein: sie misst heller als der Vollton (${luminances(v.tintY, v.masstoneY)}), obwohl ihr Weiß das dunklere der beiden ist.`,
  "geometry-mixed": (v) =>
    `Die Aufstriche wurden in verschiedenen Geometrien gemessen (${listed(v.geometries.map(geometry))}), und die aufgezeichneten Oberflächenkonstanten bringen sie nicht zusammen.`,
  "geometry-needs-surface": (v) =>
    `Ohne Konstanten der Oberfläche sagt eine Messung (${geometry(v.from)}) nicht, was der Glanz hinzufügt.`,
  "surfaces-differ": () =>
    "Die Aufstriche sind mit verschiedenen Oberflächenkonstanten aufgezeichnet, daher werden sie nicht zusammen angepasst.",
  "reflectance-not-above-surface": (v) =>
    `Nichts wird angepasst: die Messung ${drawdown(v.drawdown)} liegt nicht über dem, was die Oberfläche zurückwirft (${percent(v.reflectance)} bei ${decimals(v.wavelengthNm, 0)}\u00a0nm, k1 ${decimals(v.k1, 3)}); Geometrie oder Oberfläche sind also nicht wie aufgezeichnet.`,
  "masstone-not-told-from-surface": (v) =>
    `Bei ${wavelengths(v.wavelengths)} misst der Vollton nicht mehr, als die Oberfläche zurückwirft (k1 ${decimals(v.k1, 3)}); was dort unter der Oberfläche liegt, lässt sich nicht sagen.`,
  "masstone-near-its-surface": (v) =>
    `Mit Glanz gemessen liegt der Vollton so nah an dem, was die Oberfläche allein zurückwirft (k1 ${decimals(v.k1, 3)}), dass sich nicht sagen lässt, wie tief er ohne Glanz ist.`,

  "suspect-drawdown": (v) =>
    `${letDown(v)} ist zweifelhaft: die anderen verfehlen sie um ${deltaE00Text(v.leaveOneOutDeltaE00)} (Grenze ${decimals(v.limit, 1)})${v.othersDeltaE00 === undefined ? "" : ` und stimmen untereinander auf ${decimals(v.othersDeltaE00, 1)} überein`}; sie wird gezeigt und nicht verwendet.`,
  "drawdowns-disagree": (v) =>
    `${letDown(v)} und die andere in diesem Weiß widersprechen sich (${deltaE00Text(v.leaveOneOutDeltaE00)}; Grenze ${decimals(v.limit, 1)}), und nichts sagt, welche falsch ist.`,
  "fit-needs-masstone": () =>
    "Der Vollton lässt sich nicht auslassen, denn auf ihm ruht die Anpassung.",
  "only-let-down-in-its-white": (v) =>
    `Die einzige Aufhellung in ${within(v.white)}: ausgelassen, würde nichts sie vorhersagen.`,
  "surface-stated": (v) =>
    `Oberfläche abgezogen nach den Konstanten, die mit den Messungen aufgezeichnet sind (${surfaceConstants(v)}).`,
  "surface-by-leave-one-out": (v) =>
    `Oberfläche abgezogen wie die eines Ölfilms (${surfaceConstants(v)}): so werden ausgelassene Aufhellungen aller gleich gemessenen Farben besser vorhergesagt als ohne.`,
  "surface-by-default": (v) =>
    `Oberfläche abgezogen wie die eines Ölfilms (${surfaceConstants(v)}), wie für diese Geometrie üblich.`,
  "surface-under-darkest": (v) =>
    `Oberfläche abgezogen wie die eines Ölfilms, ihr Anteil am äußeren Licht unter der dunkelsten Messung der Werkstatt gehalten (${surfaceConstants(v)}).`,
  "no-surface-by-leave-one-out": (v) =>
    `Keine Oberfläche abgezogen (${surfaceConstants(v)}): so werden ausgelassene Aufhellungen aller gleich gemessenen Farben besser vorhergesagt als mit den Konstanten eines Ölfilms.`,
  "no-surface-by-default": (v) =>
    `Keine Oberfläche abgezogen (${surfaceConstants(v)}), wie ohne Glanz üblich; keine Aufhellung ließ sich auslassen, um andere zu erproben.`,
  "fit-has-none-to-spare": () =>
    "Jedes Weiß hat eine Aufhellung: die Anpassung geht durch alle, und nichts sagt, wie gut sie ist.",
  "fit-within-noise": (v) =>
    `Die Anpassung trifft die Aufstriche so gut, wie Messen und Wiegen zulassen (gewichtete Abweichung ${significant(v.weightedResidual, 2)}).`,
  "fit-misses-more-than-noise": (v) =>
    `Die Anpassung verfehlt die Aufstriche um mehr, als Messen und Wiegen erklären (gewichtete Abweichung ${significant(v.weightedResidual, 2)}; nahe 1 läge es an ihnen allein).`,
  "scattering-known": (v) =>
    `Wie stark sie gegenüber ihren Weiß streut, ist auf etwa ${percent(v.relativeUncertainty, 1)} bekannt.`,
  "scattering-is-bound": (v) =>
    `Bekannt ist nur eine Grenze dafür, wie stark sie streut: der Vollton reflektiert ${percent(v.masstoneY)}, und die Anpassung lässt es auf \u00b1\u00a0${percent(v.relativeUncertainty, 1)} offen.`,

  "ladder-does-not-reach": (v) =>
    "palest" in v
      ? `Keine Aufhellung erreicht L* ${decimals(v.L, 0)}: die Reihe geht von L* ${decimals(v.darkest, 0)} bis ${decimals(v.palest, 0)}.`
      : `Keine Aufhellung erreicht L* ${decimals(v.L, 0)}: es ist keine aufgezeichnet.`,
  "neighbours-too-far-apart": (v) =>
    `L* ${decimals(v.L, 0)} liegt zwischen Aufhellungen, die ${decimals(v.gap, 0)} L* auseinander sind; mehr als ${decimals(v.limit, 0)} wird ohne Anpassung nicht überbrückt.`,
  "film-needs-masstone-or-two-grounds": () =>
    "Ein Film allein sagt nicht, was er absorbiert und was er streut: ein Vollton oder Filme über zwei Gründen würden es sagen.",
  "film-tells-nothing": (v) =>
    `Bei ${wavelengths(v.wavelengths)} ändert der Film seinen Grund zu wenig, um zu sagen, was er absorbiert und streut.`,
  "no-such-white": (v) => `In ${within(v.white)} wurde nichts aufgehellt.`,
};

type NamedTint = { readonly tint: string; readonly white: string };

/** "titanium-white 1:20" as "Die Aufhellung 1:20 in titanium white". */
function letDown({ tint, white }: NamedTint): string {
  return tint.startsWith(`${white} `)
    ? `Die Aufhellung ${tint.slice(white.length + 1)} in ${within(white)}`
    : `Die Aufhellung ${tint}`;
}

/** After "die Messung": whose it is. */
function drawdown(name: string): string {
  const [, white, ratio] = /^(\S+) (\S+)$/.exec(name) ?? [];
  if (white !== undefined && ratio !== undefined)
    return `der Aufhellung ${ratio} in ${within(white)}`;
  return name === "masstone" ? "des Volltons" : `von ${within(name)}`;
}

function geometry(of: string): string {
  return inGerman(GEOMETRY_NAMES, of);
}

function wavelengths(count: number): string {
  return `${count} Wellenlänge${count === 1 ? "" : "n"}`;
}

function luminances(one: number, other: number): string {
  return `Y ${percent(one)} gegen ${significant(other * 100, 2)}`;
}
