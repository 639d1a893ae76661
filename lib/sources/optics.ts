import type { Bibliography } from "./source.ts";

export const OPTICS_SOURCES = {
  "kubelka-munk-1931": {
    citation:
      "Kubelka, P. & Munk, F. (1931). Ein Beitrag zur Optik der Farbanstriche. Zeitschrift für technische Physik, 12, 593-601.",
    standing: "derived",
    note: "Two-flux differential equations and the masstone's K/S.",
  },
  "kubelka-1948": {
    citation:
      "Kubelka, P. (1948). New contributions to the optics of intensely light-scattering materials. Part I. Journal of the Optical Society of America, 38, 448-457.",
    standing: "derived",
    note: "The film of finite thickness over a ground.",
  },
  "saunderson-1942": {
    citation:
      "Saunderson, J. L. (1942). Calculation of the color of pigmented plastics. Journal of the Optical Society of America, 32, 727-736.",
    standing: "derived",
    note: "Surface constants k1 and k2. The 45/0 form is worked out from Fresnel's equations.",
  },
  fresnel: {
    short: "Fresnel",
    citation:
      "Fresnel's equations for a smooth surface between two clear media, unpolarised light; any textbook of optics.",
    standing: "derived",
  },
  "walsh-1926": {
    citation:
      "Walsh, J. W. T. (1926). The reflection factor of a polished glass surface for diffused light. Illumination Research Technical Paper 2. HMSO, London.",
    standing: "memory",
    note: "Closed form of the hemispherical mean; held against quadrature of Fresnel's equations in the tests.",
  },
  "duncan-1940": {
    citation:
      "Duncan, D. R. (1940). The colour of pigment mixtures. Proceedings of the Physical Society, 52, 390-401.",
    standing: "memory",
    note: "K and S of a mixture are the sums of those of its parts.",
  },
  "allen-1974": {
    citation:
      "Allen, E. (1974). Basic equations used in computer color matching, II. Tristimulus match, two-constant theory. Journal of the Optical Society of America, 64, 991-993.",
    standing: "memory",
    note: "Amounts of paints for a colour: a start by spectrum, then steps on the tristimulus values.",
  },
  "walowit-1987": {
    citation:
      "Walowit, E., McCarthy, C. J. & Berns, R. S. (1987). An algorithm for the optimization of Kubelka-Munk absorption and scattering coefficients. Color Research and Application, 12, 340-343.",
    standing: "memory",
    note: "K and S by least squares over many let-downs.",
  },
  "centore-2013": {
    citation:
      "Centore, P. (2013). Perceptual reflectance weighting for estimating Kubelka-Munk coefficients. Manuscript.",
    standing: "memory",
    note: "Why a fit weights by relative reflectance and never by raw K/S.",
  },
  "oil-paint-outs": {
    short: "oil paint-outs",
    citation:
      "A trial of two-constant prediction on one research group's oil paint-outs: 8 pigments, masstone, 1:1 and 1:2 in titanium white, spectral.",
    standing: "derived",
    note: "The only ground for the uncertainty of a predicted let-down; the readings themselves are not carried here.",
  },
  "drawdown-practice": {
    short: "common practice at the bench",
    citation: "Common practice with let-downs and drawdowns; no text.",
    standing: "practice",
    note: "A let-down of some grams weighed to a hundredth, with what stays on the knife: 1 to 5 % of its mass ratio. A film from an applicator: 3 to 10 % of its thickness.",
  },
  "reconstructed-oil-paints": {
    short: "reconstructed oil paints",
    citation:
      "Geldof, M., Proaño Gaibor, A., Kirchner, E. & Ligterink, F. (2018). Reconstructing Van Gogh's palette to determine the optical characteristics of his paints. Heritage Science, 6, 17. doi 10.1186/s40494-018-0181-6. Readings CC0.",
    standing: "derived",
    note: "Readings of oil paints let down in zinc white and mixed with bone black: how far predictions lie from paint.",
  },
  "agglomerate-strength": {
    short: "Lorenz-Mie calculation",
    citation:
      "Lorenz-Mie calculation (Bohren, C. F. & Huffman, D. R. (1983). Absorption and Scattering of Light by Small Particles. Wiley) of carbon left in lumps, against fully dispersed.",
    standing: "derived",
    note: "An estimate: shape, porosity and index of a lump are guessed.",
  },
  "bohren-huffman-1983": {
    citation:
      "Bohren, C. F. & Huffman, D. R. (1983). Absorption and Scattering of Light by Small Particles. Wiley.",
    standing: "derived",
    note: "Lorenz-Mie theory of the sphere; the recurrence is begun further out than printed there.",
  },
  "wiscombe-1979": {
    citation:
      "Wiscombe, W. J. (1979). Mie scattering calculations: advances in technique and fast, vector-speed computer codes. NCAR/TN-140+STR.",
    standing: "derived",
    note: "Its test cases, and how many terms the series needs.",
  },
  "gate-1974": {
    citation:
      "Gate, L. F. (1974). Comparison of the photon diffusion model and Kubelka-Munk equation with the exact solution of the radiative transport equation. Applied Optics, 13, 236-238.",
    standing: "memory",
    note: "K = 2 mu_a, S = 3/4 mu_s (1 - g).",
  },
  "thennadil-2008": {
    citation:
      "Thennadil, S. N. (2008). Relationship between the Kubelka-Munk scattering and radiative transfer coefficients. Journal of the Optical Society of America A, 25, 1480-1485.",
    standing: "memory",
  },
  "hatch-choate-1929": {
    citation:
      "Hatch, T. & Choate, S. P. (1929). Statistical description of the size properties of non-uniform particulate substances. Journal of the Franklin Institute, 207, 369-387.",
    standing: "derived",
    note: "From number mean to median by volume of a log-normal.",
  },
  "halton-1960": {
    citation:
      "Halton, J. H. (1960). On the efficiency of certain quasi-random sequences of points in evaluating multi-dimensional integrals. Numerische Mathematik, 2, 84-90.",
    standing: "derived",
    note: "How the unknowns of a first-principles figure are drawn, alike in every run.",
  },
  "devore-1951": {
    citation:
      "DeVore, J. R. (1951). Refractive indices of rutile and sphalerite. Journal of the Optical Society of America, 41, 416-419.",
    standing: "read",
    note: "In a public database of refractive indices. Stated for 430-1530 nm and carried on below; the absorption edge near 400 nm is left out.",
  },
  "bond-1965": {
    citation:
      "Bond, W. L. (1965). Measurement of the refractive indices of several crystals. Journal of Applied Physics, 36, 1674-1677.",
    standing: "read",
    note: "In a public database of refractive indices: zincite, from 450 nm, carried on below.",
  },
  "ghosh-1999": {
    citation:
      "Ghosh, G. (1999). Dispersion-equation coefficients for the refractive index and birefringence of calcite and quartz crystals. Optics Communications, 163, 95-102.",
    standing: "read",
    note: "In a public database of refractive indices: the ordinary index; the extraordinary is taken as 1.488.",
  },
  "basic-lead-carbonate-index": {
    short: "mineral data",
    citation:
      "Mineral data of hydrocerussite, basic lead carbonate: refractive indices 1.94 and 2.09, mean 2.04.",
    standing: "read",
    note: "No dispersion is published: none, and a weak one, are both tried.",
  },
  "huffman-stapp-1973": {
    citation:
      "Huffman, D. R. & Stapp, J. L. (1973). Optical measurements on solids of possible interstellar importance. In Interstellar Dust and Related Topics, 297-301. Reidel.",
    standing: "read",
    note: "Magnetite, as tabulated second-hand.",
  },
  "bergstrom-1973": {
    citation:
      "Bergstrom, R. W. (1973). Extinction and absorption coefficients of the atmospheric aerosol as a function of particle size. Beiträge zur Physik der Atmosphäre, 46, 223-234.",
    standing: "read",
    note: "Carbon, as tabulated second-hand.",
  },
  "chang-charalampopoulos-1990": {
    citation:
      "Chang, H. & Charalampopoulos, T. T. (1990). Determination of the wavelength dependence of refractive indices of flame soot. Proceedings of the Royal Society A, 430, 577-591.",
    standing: "read",
    note: "Flame soot, as tabulated second-hand.",
  },
  "dalzell-sarofim-1969": {
    citation:
      "Dalzell, W. H. & Sarofim, A. F. (1969). Optical constants of soot and their application to heat-flux calculations. Journal of Heat Transfer, 91, 100-104.",
    standing: "read",
    note: "Acetylene soot, one value for the visible, as tabulated second-hand.",
  },
  "bone-char-index": {
    citation:
      "No measurement of charred bone: calcium phosphate of index 1.64 with 10 to 20 % of carbon by mass spread finely through it, indices added by volume.",
    standing: "memory",
    note: "A guess, to be used for the direction only.",
  },
  "stated-index": {
    citation:
      "The refractive index that a pigment's record states, taken alike at every wavelength.",
    standing: "practice",
  },
  "oil-index": {
    citation: "Refractive index of linseed oil, 1.48 fresh to 1.52 aged.",
    standing: "memory",
  },
  "particle-spread": {
    citation:
      "How widely the particles of pigments vary in size: geometric standard deviation 1.2 to 2.",
    standing: "memory",
  },
  "iso-6504-1": {
    citation:
      "ISO 6504-1:1983. Paints and varnishes. Determination of hiding power. Part 1: Kubelka-Munk method for white and light-coloured paints.",
    standing: "read",
    note: "Its summary limits the method to films of a tristimulus value Y of 70 and more.",
  },
  "iso-18314-2": {
    citation:
      "ISO 18314-2:2023. Analytical colorimetry. Part 2: Saunderson correction, solutions of the Kubelka-Munk equation, tinting strength, depth of shade and hiding power.",
    standing: "derived",
    note: "Its scope was read in public catalogues: tinting strength with the residual colour difference, by criteria such as the depth of shade. Its clauses were not: that K/S is taken at the greatest absorption, and weighted over the spectrum for greys, is ours.",
  },
  "iso-6504-3": {
    citation:
      "ISO 6504-3. Paints and varnishes. Determination of hiding power. Part 3: Determination of contrast ratio of light-coloured paints at a fixed spreading rate.",
    standing: "memory",
    note: "For films of a tristimulus value Y above 25: a darker film hides by what it absorbs, and its contrast ratio tells nothing of its transparency. ASTM D2805 sets a like limit near Y 15 (memory).",
  },
  "astm-e991": {
    short: "ASTM E991",
    citation:
      "ASTM E991-21. Standard Practice for Color Measurement of Fluorescent Specimens Using the One-Monochromator Method.",
    standing: "read",
    note: "Its significance and use were read in a public catalogue: the radiance factor is the sum of a reflected and a fluorescent part, and the second goes by the lamp's light at shorter wavelengths. That K and S of a reading with both do not follow is our conclusion.",
  },
  "flake-pigments-km": {
    short: "flakes and Kubelka-Munk",
    citation:
      "First-order goniospectrophotometric spectral modeling of isotropic and anisotropic colorant mixtures. Abstract; and McCarty, W. H. & Jones, K. A. (1975). Color matching surface coatings containing metallic pigments. US patent 3916168.",
    standing: "read",
    note: "The abstract: Kubelka-Munk theory is designed for isotropic systems that absorb and scatter, and has been considered inadequate for interference pigments, whose colour is mirrored and goes by the angle. The patent: flakes lie flat and send back a flux of their own that goes by the angle.",
  },
  "optics-practice": {
    citation: "Common practice of the trade, as this workshop reads it; no text.",
    standing: "practice",
    note: "Limits of opacity classes, of hue words and of what counts as a bad drawdown.",
  },
} as const satisfies Bibliography;
