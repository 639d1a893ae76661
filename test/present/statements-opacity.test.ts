import { opacityContradiction } from "../../lib/optics/films/expected-opacity.ts";
import { opacityRuling } from "../../lib/optics/films/opacity.ts";
import { OPACITY_RULINGS } from "../../lib/words/rulings/opacity.ts";
import { holdSentences } from "./statements-held.ts";

const film = { filmUm: 75, luminance: 0.8, contrastRatio: 0.9, scatteringPower: undefined };
const dark = { filmUm: 75, luminance: 0.02, contrastRatio: 1 };

holdSentences(
  "sentences of opacity",
  OPACITY_RULINGS,
  [
    ...[0.985, 0.93, 0.7, 0.2].map((contrastRatio) => ({ ...film, contrastRatio })),
    { ...film, contrastRatio: 0.975, contrastUncertainty: 0.01 },
    { ...film, filmUm: 120 },
    { ...dark, scatteringPower: undefined },
    ...(
      [
        [0.4, 0.6],
        [2.6, 4.7],
        [10, 20],
      ] as const
    ).map((scatteringPower) => ({
      ...dark,
      scatteringPower,
    })),
  ].flatMap((each) => {
    const { reason } = opacityRuling(each);
    const contradicted = reason && opacityContradiction(reason, "opaque");
    return [reason ?? [], contradicted ?? []].flat();
  }),
);
