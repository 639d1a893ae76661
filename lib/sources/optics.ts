import { derived, practised, read, recalled, type Bibliography } from "./source.ts";

export const OPTICS_SOURCES = {
  "kubelka-munk-1931": derived(
    "Kubelka, P. & Munk, F. (1931). Ein Beitrag zur Optik der Farbanstriche. Zeitschrift für technische Physik, 12, 593-601.",
    "Two-flux differential equations and the masstone's K/S.",
  ),
  "kubelka-1948": derived(
    "Kubelka, P. (1948). New contributions to the optics of intensely light-scattering materials. Part I. Journal of the Optical Society of America, 38, 448-457.",
    "The film of finite thickness over a ground.",
  ),
  "saunderson-1942": derived(
    "Saunderson, J. L. (1942). Calculation of the color of pigmented plastics. Journal of the Optical Society of America, 32, 727-736.",
    "Surface constants k1 and k2. The 45/0 form is worked out from Fresnel's equations.",
  ),
  fresnel: derived(
    "Fresnel's equations for a smooth surface between two clear media, unpolarised light; any textbook of optics.",
    undefined,
    "Fresnel",
  ),
  "walsh-1926": recalled(
    "Walsh, J. W. T. (1926). The reflection factor of a polished glass surface for diffused light. Illumination Research Technical Paper 2. HMSO, London.",
    "Closed form of the hemispherical mean; held against quadrature of Fresnel's equations in the tests.",
  ),
  "duncan-1940": recalled(
    "Duncan, D. R. (1940). The colour of pigment mixtures. Proceedings of the Physical Society, 52, 390-401.",
    "K and S of a mixture are the sums of those of its parts.",
  ),
  "allen-1974": recalled(
    "Allen, E. (1974). Basic equations used in computer color matching, II. Tristimulus match, two-constant theory. Journal of the Optical Society of America, 64, 991-993.",
    "Amounts of paints for a colour: a start by spectrum, then steps on the tristimulus values.",
  ),
  "walowit-1987": recalled(
    "Walowit, E., McCarthy, C. J. & Berns, R. S. (1987). An algorithm for the optimization of Kubelka-Munk absorption and scattering coefficients. Color Research and Application, 12, 340-343.",
    "K and S by least squares over many let-downs.",
  ),
  "centore-2013": recalled(
    "Centore, P. (2013). Perceptual reflectance weighting for estimating Kubelka-Munk coefficients. Manuscript.",
    "Why a fit weights by relative reflectance and never by raw K/S.",
  ),
  "oil-paint-outs": derived(
    "A trial of two-constant prediction on one research group's oil paint-outs: 8 pigments, masstone, 1:1 and 1:2 in titanium white, spectral.",
    "The only ground for the uncertainty of a predicted let-down; the readings themselves are not carried here.",
    "oil paint-outs",
  ),
  "drawdown-practice": practised(
    "Common practice with let-downs and drawdowns; no text.",
    "A let-down of some grams weighed to a hundredth, with what stays on the knife: 1 to 5 % of its mass ratio. A film from an applicator: 3 to 10 % of its thickness.",
    "common practice at the bench",
  ),
  "reconstructed-oil-paints": derived(
    "Geldof, M., Proaño Gaibor, A., Kirchner, E. & Ligterink, F. (2018). Reconstructing Van Gogh's palette to determine the optical characteristics of his paints. Heritage Science, 6, 17. doi 10.1186/s40494-018-0181-6. Readings CC0.",
    "Readings of oil paints let down in zinc white and mixed with bone black: how far predictions lie from paint.",
    "reconstructed oil paints",
  ),
  "agglomerate-strength": derived(
    "Lorenz-Mie calculation (Bohren, C. F. & Huffman, D. R. (1983). Absorption and Scattering of Light by Small Particles. Wiley) of carbon left in lumps, against fully dispersed.",
    "An estimate: shape, porosity and index of a lump are guessed.",
    "Lorenz-Mie calculation",
  ),
  "bohren-huffman-1983": derived(
    "Bohren, C. F. & Huffman, D. R. (1983). Absorption and Scattering of Light by Small Particles. Wiley.",
    "Lorenz-Mie theory of the sphere; the recurrence is begun further out than printed there.",
  ),
  "wiscombe-1979": derived(
    "Wiscombe, W. J. (1979). Mie scattering calculations: advances in technique and fast, vector-speed computer codes. NCAR/TN-140+STR.",
    "Its test cases, and how many terms the series needs.",
  ),
  "gate-1974": recalled(
    "Gate, L. F. (1974). Comparison of the photon diffusion model and Kubelka-Munk equation with the exact solution of the radiative transport equation. Applied Optics, 13, 236-238.",
    "K = 2 mu_a, S = 3/4 mu_s (1 - g).",
  ),
  "thennadil-2008": recalled(
    "Thennadil, S. N. (2008). Relationship between the Kubelka-Munk scattering and radiative transfer coefficients. Journal of the Optical Society of America A, 25, 1480-1485.",
  ),
  "hatch-choate-1929": derived(
    "Hatch, T. & Choate, S. P. (1929). Statistical description of the size properties of non-uniform particulate substances. Journal of the Franklin Institute, 207, 369-387.",
    "From number mean to median by volume of a log-normal.",
  ),
  "halton-1960": derived(
    "Halton, J. H. (1960). On the efficiency of certain quasi-random sequences of points in evaluating multi-dimensional integrals. Numerische Mathematik, 2, 84-90.",
    "How the unknowns of a first-principles figure are drawn, alike in every run.",
  ),
  "devore-1951": read(
    "DeVore, J. R. (1951). Refractive indices of rutile and sphalerite. Journal of the Optical Society of America, 41, 416-419.",
    "In a public database of refractive indices. Stated for 430-1530 nm and carried on below; the absorption edge near 400 nm is left out.",
  ),
  "bond-1965": read(
    "Bond, W. L. (1965). Measurement of the refractive indices of several crystals. Journal of Applied Physics, 36, 1674-1677.",
    "In a public database of refractive indices: zincite, from 450 nm, carried on below.",
  ),
  "ghosh-1999": read(
    "Ghosh, G. (1999). Dispersion-equation coefficients for the refractive index and birefringence of calcite and quartz crystals. Optics Communications, 163, 95-102.",
    "In a public database of refractive indices: the ordinary index; the extraordinary is taken as 1.488.",
  ),
  "basic-lead-carbonate-index": read(
    "Mineral data of hydrocerussite, basic lead carbonate: refractive indices 1.94 and 2.09, mean 2.04.",
    "No dispersion is published: none, and a weak one, are both tried.",
    "mineral data",
  ),
  "huffman-stapp-1973": read(
    "Huffman, D. R. & Stapp, J. L. (1973). Optical measurements on solids of possible interstellar importance. In Interstellar Dust and Related Topics, 297-301. Reidel.",
    "Magnetite, as tabulated second-hand.",
  ),
  "bergstrom-1973": read(
    "Bergstrom, R. W. (1973). Extinction and absorption coefficients of the atmospheric aerosol as a function of particle size. Beiträge zur Physik der Atmosphäre, 46, 223-234.",
    "Carbon, as tabulated second-hand.",
  ),
  "chang-charalampopoulos-1990": read(
    "Chang, H. & Charalampopoulos, T. T. (1990). Determination of the wavelength dependence of refractive indices of flame soot. Proceedings of the Royal Society A, 430, 577-591.",
    "Flame soot, as tabulated second-hand.",
  ),
  "dalzell-sarofim-1969": read(
    "Dalzell, W. H. & Sarofim, A. F. (1969). Optical constants of soot and their application to heat-flux calculations. Journal of Heat Transfer, 91, 100-104.",
    "Acetylene soot, one value for the visible, as tabulated second-hand.",
  ),
  "bone-char-index": recalled(
    "No measurement of charred bone: calcium phosphate of index 1.64 with 10 to 20 % of carbon by mass spread finely through it, indices added by volume.",
    "A guess, to be used for the direction only.",
  ),
  "stated-index": practised(
    "The refractive index that a pigment's record states, taken alike at every wavelength.",
  ),
  "oil-index": recalled("Refractive index of linseed oil, 1.48 fresh to 1.52 aged."),
  "particle-spread": recalled(
    "How widely the particles of pigments vary in size: geometric standard deviation 1.2 to 2.",
  ),
  "iso-6504-1": read(
    "ISO 6504-1:1983. Paints and varnishes. Determination of hiding power. Part 1: Kubelka-Munk method for white and light-coloured paints.",
    "Its summary limits the method to films of a tristimulus value Y of 70 and more.",
  ),
  "iso-18314-2": derived(
    "ISO 18314-2:2023. Analytical colorimetry. Part 2: Saunderson correction, solutions of the Kubelka-Munk equation, tinting strength, depth of shade and hiding power.",
    "Its scope was read in public catalogues: tinting strength with the residual colour difference, by criteria such as the depth of shade. Its clauses were not: that K/S is taken at the greatest absorption, and weighted over the spectrum for greys, is ours.",
  ),
  "iso-6504-3": recalled(
    "ISO 6504-3. Paints and varnishes. Determination of hiding power. Part 3: Determination of contrast ratio of light-coloured paints at a fixed spreading rate.",
    "For films of a tristimulus value Y above 25: a darker film hides by what it absorbs, and its contrast ratio tells nothing of its transparency. ASTM D2805 sets a like limit near Y 15 (memory).",
  ),
  "astm-e991": read(
    "ASTM E991-21. Standard Practice for Color Measurement of Fluorescent Specimens Using the One-Monochromator Method.",
    "Its significance and use were read in a public catalogue: the radiance factor is the sum of a reflected and a fluorescent part, and the second goes by the lamp's light at shorter wavelengths. That K and S of a reading with both do not follow is our conclusion.",
    "ASTM E991",
  ),
  "flake-pigments-km": read(
    "First-order goniospectrophotometric spectral modeling of isotropic and anisotropic colorant mixtures. Abstract; and McCarty, W. H. & Jones, K. A. (1975). Color matching surface coatings containing metallic pigments. US patent 3916168.",
    "The abstract: Kubelka-Munk theory is designed for isotropic systems that absorb and scatter, and has been considered inadequate for interference pigments, whose colour is mirrored and goes by the angle. The patent: flakes lie flat and send back a flux of their own that goes by the angle.",
    "flakes and Kubelka-Munk",
  ),
  "optics-practice": practised(
    "Common practice of the trade, as this workshop reads it; no text.",
    "Limits of opacity classes, of hue words and of what counts as a bad drawdown.",
  ),
} as const satisfies Bibliography;
