import { derived, practised, read, recalled, type Bibliography } from "./source.ts";

/** Texts and libraries that colorimetry rests on. */
export const COLORIMETRY_SOURCES = {
  "cie-15-2004": read(
    "CIE 15:2004. Colorimetry, 3rd edition. Commission Internationale de l'Eclairage, Vienna.",
    "Tables of the standard observers and illuminants, in public copies.",
  ),
  "cie-15-2018": read(
    "CIE 15:2018. Colorimetry, 4th edition. Commission Internationale de l'Eclairage, Vienna.",
    "White points read, and the lamps LED-B3 and FL11 in a public copy; the clauses on summation, interpolation and extrapolation from memory.",
  ),
  "cie-170-2": derived(
    "CIE 170-2:2015. Fundamental chromaticity diagram with physiological axes, Part 2. Commission Internationale de l'Eclairage, Vienna.",
    "Colour-matching functions for 10 degrees and their chromaticities, in public copies of the tables of the Colour and Vision Research Laboratory; the report itself was not read.",
  ),
  "macadam-1935": recalled(
    "MacAdam, D. L. (1935). Maximum visual efficiency of colored materials. Journal of the Optical Society of America, 25, 361-367.",
    "The solid of colours that a reflecting surface can have; worked out here as a sum of segments.",
  ),
  "finlayson-2015": recalled(
    "Finlayson, G. D., Mackiewicz, M., Hurlbert, A. (2015). Color correction using root-polynomial regression. IEEE Transactions on Image Processing, 24, 1460-1470.",
    "The terms of the second and third degree from memory.",
  ),
  "heckbert-1989": recalled(
    "Heckbert, P. S. (1989). Fundamentals of texture mapping and image warping. Master's thesis, University of California, Berkeley.",
    "The projective map of a square on a quadrilateral.",
  ),
  "iso-11664-6": recalled(
    "ISO/CIE 11664-6:2022. Colorimetry - Part 6: CIEDE2000 colour-difference formula.",
  ),
  "sharma-2005": read(
    "Sharma, G., Wu, W. & Dalal, E. N. (2005). The CIEDE2000 color-difference formula: implementation notes, supplementary test data, and mathematical observations. Color Research and Application, 30(1), 21-30.",
    "Table 1: 34 pairs of colours.",
  ),
  "li-2017": recalled(
    "Li, C., Li, Z., Wang, Z., Xu, Y., Luo, M. R., Cui, G., Melgosa, M., Brill, M. H. & Pointer, M. (2017). Comprehensive color solutions: CAM16, CAT16, and CAM16-UCS. Color Research and Application, 42(6), 703-718.",
    "Matrix of CAT16, the same in an independent library.",
  ),
  "newhall-1943": read(
    "Newhall, S. M., Nickerson, D. & Judd, D. B. (1943). Final report of the O.S.A. subcommittee on the spacing of the Munsell colors. Journal of the Optical Society of America, 33(7), 385-418.",
    "Table I, the renotation: x, y and Y under illuminant C, 2 degree.",
  ),
  "astm-d1535": read(
    "ASTM D1535. Standard Practice for Specifying Color by the Munsell System. ASTM International.",
    "The value function, in two copies; the near-neutral form of a designation from memory.",
  ),
  "nbs-sp-440": read(
    "Kelly, K. L. & Judd, D. B. (1976). Color: Universal Language and Dictionary of Names. National Bureau of Standards Special Publication 440.",
    "The 932 blocks with their 267 names, from a transcription under CC0 1.0.",
  ),
  "css-color-4": recalled(
    "CSS Color Module Level 4. World Wide Web Consortium.",
    "Display P3, OKLCH and gamut mapping, as culori carries them out.",
  ),
  "iec-61966-2-1": recalled(
    "IEC 61966-2-1:1999. Multimedia systems and equipment - Colour measurement and management - Part 2-1: Default RGB colour space - sRGB.",
  ),
  "python-colormath": read(
    "python-colormath 3.0.0, as packaged by Debian. BSD-3-Clause licence.",
    "The 10 nm tables of observers and illuminants that are carried here.",
  ),
  "colour-science": read(
    "colour-science 0.4, PyPI. BSD-3-Clause licence.",
    "The 5 nm tables of the lamps LED-B3 and FL11 that are carried here.",
  ),
  "munsell-npm": read(
    "munsell 1.1.6, npm. MPL-2.0 licence.",
    "Renotation data and their inversion, interpolated in LCHab.",
  ),
  "culori-npm": read(
    "culori 4.0.2, npm. MIT licence.",
    "Screen colour spaces, gamut mapping, CIEDE2000.",
  ),
  "metamerism-practice": practised(
    "Common practice in the colour industries; no text.",
    "From about ΔE00 1 two colours side by side are seen to differ, from about 3 at a glance; the bands of lamplight and metamerism (2, 4) are our own, drawn wider because nobody sees both lights at once.",
  ),
  "masstone-reaches-memory": recalled(
    "Where masstones of each family of colours lie on CIELAB, from memory of the trade.",
    "Wide, and only what a reading is doubted by.",
  ),
  "reading-noise-practice": practised(
    "Common practice with hand-held spectrophotometers; no text.",
    "Zero error and repeatability together, 0.0002-0.001 of reflectance factor.",
  ),
} as const satisfies Bibliography;
