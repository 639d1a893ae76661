/** What the trade calls a thing in a language. One word stands for one thing on pages, papers, cards and labels. */
export interface Term {
  readonly english: string;
  readonly said: string;
  /** Words for the same thing that no text uses. */
  readonly instead: RegExp;
}

/** What a language's print looks like where it is not set as its rules have it, by the name of the fault. */
export type Setting = readonly (readonly [fault: string, RegExp])[];

/** Where a text has another word than the glossary's, or is not set as print. */
export function glossaryFaults(
  text: string,
  glossary: readonly Term[],
  setting: Setting,
): string[] {
  return [
    ...glossary
      .filter(({ instead }) => instead.test(text))
      .map(({ said }) => `another word for ${said}: ${text}`),
    ...setting.filter(([, pattern]) => pattern.test(text)).map(([fault]) => `${fault}: ${text}`),
  ];
}
