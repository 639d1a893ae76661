import type { Bibliography } from "./source.ts";

export const OPTICS_SOURCES = {
  "kubelka-munk-1931": {
    citation: "Kubelka, P. & Munk, F. (1931). Ein Beitrag zur Optik der Farbanstriche. Zeitschrift für technische Physik, 12, 593-601.",
    standing: "derived", note: "Two-flux differential equations and the masstone's K/S.",
  },
  "kubelka-1948": {
    citation: "Kubelka, P. (1948). New contributions to the optics of intensely light-scattering materials. Part I. Journal of the Optical Society of America, 38, 448-457.",
    standing: "derived", note: "The film of finite thickness over a ground.",
  },
  "saunderson-1942": {
    citation: "Saunderson, J. L. (1942). Calculation of the color of pigmented plastics. Journal of the Optical Society of America, 32, 727-736.",
    standing: "derived", note: "Surface constants k1 and k2. The 45/0 form is worked out from Fresnel's equations.",
  },
  "fresnel": {
    short: "Fresnel", citation: "Fresnel's equations for a smooth surface between two clear media, unpolarised light; any textbook of optics.",
    standing: "derived",
  },
  "walsh-1926": {
    citation: "Walsh, J. W. T. (1926). The reflection factor of a polished glass surface for diffused light. Illumination Research Technical Paper 2. HMSO, London.",
    standing: "memory", note: "Closed form of the hemispherical mean; held against quadrature of Fresnel's equations in the tests.",
  },
  "duncan-1940": {
    citation: "Duncan, D. R. (1940). The colour of pigment mixtures. Proceedings of the Physical Society, 52, 390-401.",
    standing: "memory", note: "K and S of a mixture are the sums of those of its parts.",
  },
  "walowit-1987": {
    citation: "Walowit, E., McCarthy, C. J. & Berns, R. S. (1987). An algorithm for the optimization of Kubelka-Munk absorption and scattering coefficients. Color Research and Application, 12, 340-343.",
    standing: "memory", note: "K and S by least squares over many let-downs.",
  },
  "centore-2013": {
    citation: "Centore, P. (2013). Perceptual reflectance weighting for estimating Kubelka-Munk coefficients. Manuscript.",
    standing: "memory", note: "Why a fit weights by relative reflectance and never by raw K/S.",
  },
  "oil-paint-outs": {
    short: "oil paint-outs", citation: "A trial of two-constant prediction on one research group's oil paint-outs: 8 pigments, masstone, 1:1 and 1:2 in titanium white, spectral.",
    standing: "derived", note: "The only ground for the uncertainty of a predicted let-down; the readings themselves are not carried here.",
  },
  "agglomerate-strength": {
    short: "Lorenz-Mie calculation", citation: "Lorenz-Mie calculation (Bohren, C. F. & Huffman, D. R. (1983). Absorption and Scattering of Light by Small Particles. Wiley) of carbon left in lumps, against fully dispersed.",
    standing: "derived", note: "An estimate: shape, porosity and index of a lump are guessed.",
  },
  "optics-practice": {
    citation: "Common practice of the trade, as this workshop reads it; no text.",
    standing: "practice", note: "Limits of opacity classes, of hue words and of what counts as a bad drawdown.",
  },
} as const satisfies Bibliography;
