/** The web fonts that assets/styles/fonts.css names: Latin subsets and Greek ones for single letters, from the packages that carry them with their licence. */
export const FONT_FILES: readonly string[] = [
  "@fontsource/source-serif-4/files/source-serif-4-latin-400-normal.woff2",
  "@fontsource/source-serif-4/files/source-serif-4-latin-400-italic.woff2",
  "@fontsource/source-sans-3/files/source-sans-3-latin-400-normal.woff2",
  "@fontsource/source-sans-3/files/source-sans-3-latin-600-normal.woff2",
  "@fontsource/source-serif-4/files/source-serif-4-greek-400-normal.woff2",
  "@fontsource/source-sans-3/files/source-sans-3-greek-400-normal.woff2",
];

/** Their licence, the SIL Open Font License, which goes where the fonts go. */
export const FONT_LICENCES: readonly (readonly [string, string])[] = [
  ["source-serif-4", "@fontsource/source-serif-4/LICENSE"],
  ["source-sans-3", "@fontsource/source-sans-3/LICENSE"],
];
