import { describe, expect, test } from "vitest";
import {
  opacityContradiction,
  type ExpectedOpacity,
} from "../../lib/optics/films/expected-opacity.ts";
import {
  opacityRuling,
  type OpaqueFilm,
  type OpacityStatement,
} from "../../lib/optics/films/opacity.ts";

/** Judged by the limits in opacity.ts: from .60 semi-transparent, from .90 semi-opaque; S X from 3 and from 17/3. */
function judged(film: Partial<OpaqueFilm>): OpacityStatement {
  const { reason } = opacityRuling({
    filmUm: 75,
    luminance: 0.5,
    contrastRatio: undefined,
    scatteringPower: undefined,
    ...film,
  });
  if (reason === undefined) throw new Error("the film has a class");
  return reason;
}
const told = (film: Partial<OpaqueFilm>, expected: ExpectedOpacity): string | undefined =>
  opacityContradiction(judged(film), expected)?.values.class;

describe("a class beside what is expected of the pigment", () => {
  test("contradicts it from two steps on, either way", () => {
    expect(told({ contrastRatio: 0.7 }, "opaque")).toBe("semi-transparent");
    expect(told({ contrastRatio: 0.95 }, "opaque")).toBeUndefined();
    expect(told({ contrastRatio: 0.95 }, "transparent")).toBe("semi-opaque");
    expect(told({ contrastRatio: 0.7 }, "transparent")).toBeUndefined();
  });

  test("does not where the figure is a bound, and the true one may be as expected", () => {
    expect(told({ contrastRatio: 0.7, bound: "at least" }, "opaque")).toBeUndefined();
    expect(told({ contrastRatio: 0.7, bound: "at most" }, "opaque")).toBe("semi-transparent");
  });

  test("does not where the range of a dark film's scattering reaches near", () => {
    const dark = { luminance: 0.1, contrastRatio: 0.995 };
    expect(told({ ...dark, scatteringPower: [2, 3.5] }, "opaque")).toBe("transparent");
    expect(told({ ...dark, scatteringPower: [1, 6] }, "opaque")).toBeUndefined();
  });

  test("says nothing of a film that has no class", () => {
    const film = { luminance: 0.1, contrastRatio: 0.7 };
    expect(opacityContradiction(judged(film), "opaque")).toBeUndefined();
  });
});
