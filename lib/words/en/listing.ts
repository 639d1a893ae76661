/** What goes along with pictures of a colour into a shop. */
export const LISTING = {
  made: "Made of",
  sizes: "Sizes and prices",
  noSizes: "No size is on record.",
  label: "On the label",
  said: "What may be said of the colour",
  pictures: "Pictures",
  screen:
    "The swatches show a reading of the dry paint as a screen can show it, and no screen shows paint exactly: judge and match by the paint itself, never by a picture.",
  estimated:
    "No instrument has read the colour. It was estimated from a photograph: say so wherever it is shown.",
  outside: "The colour lies beyond what sRGB holds: screens show it duller than it is.",
  predicted: "Let-downs that were not painted out are predicted.",
  alone: (name: string) => `${name}, the colour alone.`,
  strip: (name: string, white: string) =>
    `${name}, alone and let down in ${white}, from strong to pale.`,
  beside: (names: readonly string[]) => `${names.join(", ")}, beside each other.`,
};
