/** A colour as somebody writes it down: a Munsell notation, L*a*b*, or what a screen is told. */
import { uncertaintyDeltaE00 } from "../../colorimetry/difference.ts";
import { xyzToLab } from "../../colorimetry/lab.ts";
import { labUnder } from "../../colorimetry/lab-under.ts";
import { labOfMunsell } from "../../colorimetry/munsell-inversion.ts";
import { parseMunsell } from "../../colorimetry/munsell-notation.ts";
import type { Lab, LabViewing } from "../../colorimetry/viewing.ts";
import { isStatement, type StatementOf } from "../../quantities/statement.ts";
import type { Target } from "./target.ts";

export type TargetStatement =
  | StatementOf<"no-colour-notation", { readonly text: string }>
  | StatementOf<"no-surface-colour", { readonly text: string }>;

/** Steps of a chart [V, C] that an eye places a chip within, as a standard uncertainty of L* and of a*, b*. */
const CHIP: Lab = { L: 1, a: 1, b: 1 };

/**
 * @param text "5PB 3/1", "L* 52, a* -3, b* 7" or "52 -3 7" (D65, 10 degree), "#6b6f76" (sRGB).
 * @source astm-d1535, iec-61966-2-1
 */
export function targetOfText(text: string): Target | TargetStatement {
  const tidy = text
    .trim()
    .replace(/\u2212/g, "-")
    .replace(/\u00a0/g, " ");
  const munsell = parseMunsell(tidy);
  if (munsell !== undefined)
    return carried(tidy, "munsell", () => labOfMunsell(munsell), "C/2", CHIP);
  const hex = /^#?([0-9a-f]{6})$/i.exec(tidy);
  if (hex !== null)
    return carried(`#${hex[1] ?? ""}`, "screen", () => labOfScreen(hex[1] ?? ""), "D65/2");
  const lab = labOfText(tidy);
  if (lab !== undefined) return carried(labName(lab), "lab", () => lab, "D65/10");
  return { rule: "no-colour-notation", values: { text: tidy.slice(0, 60) } };
}

function carried(
  name: string,
  origin: Target["origin"],
  known: () => Lab,
  from: LabViewing,
  own: Lab = { L: 0, a: 0, b: 0 },
): Target | TargetStatement {
  const refused: TargetStatement = { rule: "no-surface-colour", values: { text: name } };
  let given: Lab;
  try {
    given = known();
  } catch (error) {
    if (!(error instanceof RangeError)) throw error;
    return refused;
  }
  const under = labUnder(given, from, "D65/10");
  if (isStatement(under) || !(under.lab.L >= 0 && under.lab.L <= 100)) return refused;
  const { lab, uncertainty } = under;
  // Half of what adapting costs lies along each of a* and b*.
  const each = uncertainty / Math.SQRT2;
  return {
    name,
    origin,
    lab,
    p68: uncertaintyDeltaE00(lab, {
      L: Math.min(own.L, 100 - lab.L),
      a: Math.hypot(own.a, each),
      b: Math.hypot(own.b, each),
    }),
  };
}

function labOfText(text: string): Lab | undefined {
  const found =
    /^(?:L\*?\s*[:=]?\s*)?(-?\d+(?:\.\d+)?)[\s,;/]+(?:a\*?\s*[:=]?\s*)?(-?\d+(?:\.\d+)?)[\s,;/]+(?:b\*?\s*[:=]?\s*)?(-?\d+(?:\.\d+)?)$/i.exec(
      text,
    );
  if (found === null) return undefined;
  const [L = NaN, a = NaN, b = NaN] = found.slice(1).map(Number);
  return L >= 0 && L <= 100 && Math.hypot(a, b) <= 200 ? { L, a, b } : undefined;
}

function labName({ L, a, b }: Lab): string {
  return `L* ${L}, a* ${a}, b* ${b}`.replaceAll("-", "\u2212");
}

/** sRGB to XYZ (D65, 2 degree), IEC 61966-2-1, its white set to the CIE's. */
function labOfScreen(hex: string): Lab {
  const [r = 0, g = 0, b = 0] = [0, 2, 4].map((at) => {
    const channel = parseInt(hex.slice(at, at + 2), 16) / 255;
    return channel <= 0.04045 ? channel / 12.92 : ((channel + 0.055) / 1.055) ** 2.4;
  });
  const X = (0.4124 * r + 0.3576 * g + 0.1805 * b) / 0.9505;
  const Y = 0.2126 * r + 0.7152 * g + 0.0722 * b;
  const Z = (0.0193 * r + 0.1192 * g + 0.9505 * b) / 1.089;
  return xyzToLab({ X: 95.04 * X, Y: 100 * Y, Z: 108.88 * Z }, "D65/2");
}
