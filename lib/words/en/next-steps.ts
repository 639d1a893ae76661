import { listed } from "./phrases.ts";

const RECORD = { pigment: "pigments", vehicle: "vehicles", colour: "colours" } as const;
const ENDING = { pigment: "yaml", vehicle: "yaml", colour: "md" } as const;

/** What the page What to do next, and its command, say. */
export const NEXT_STEPS = {
  heading: "What to do next",
  lead: "Each line was tried: a plausible value went into the records, the sheets were worked out again, and what they gained was counted. The best gain for an hour of work comes first; hours are of hands, not of waiting, and our own guess.",
  steps: "What clears most",
  stepsCaption: "What to find out, what the sheets gain, and the work it takes",
  columns: {
    what: "What",
    gain: "Each gains",
    hours: "Work",
    record: "To write",
  },
  none: "Nothing that a workshop could find out would clear or firm up a line.",
  due: "What falls due",
  dueCaption: "What time has made due",
  dueColumns: { what: "What", where: "Record" },
  nothingDue: "Nothing falls due.",
  open: "Left open",
  openCaption: "What labels and lots still want, on no day",
  things: {
    densityGPerCm3: "Density",
    oilAbsorptionGPer100g: "Oil absorption by rub-out",
    bulkDensities: "A measure of the powder weighed, poured and tapped",
    lightfastness: "Lightfastness as the supplier states it",
    hazards: "The supplier's safety data sheet",
    parts: "Parts of its pigments, from the batch book",
    oilIndexGPer100g: "Oil weighed into the next batch",
    masstone: "A drawdown of the masstone, read",
    tints: "Three let-downs in a white, read",
    films: "Films of known thickness over black and white, read",
    dryingTrials: "A drying trial",
    exposures: "An exposure under glass, masstone and tint",
    gloss60: "Gloss of a drawdown at 60\u00b0",
    finenessOfGrindUm: "Fineness on the gauge",
    bodyAndSeparation: "Body and oil separation, looked at",
  },
  of: (thing: string, names: readonly string[]) =>
    `${thing}: ${listed(names.length > 4 ? [...names.slice(0, 4), `${names.length - 4} more`] : names)}`,
  gain: (cleared: number, firmer: number, added: number, claims: number) =>
    [
      ...(cleared === 0
        ? []
        : [`${lines(cleared)} stated that ${cleared === 1 ? "is" : "are"} missing now`]),
      ...(firmer === 0
        ? []
        : [`${lines(firmer)} firm that ${firmer === 1 ? "is an estimate" : "are estimates"} now`]),
      ...(added === 0 ? [] : [`${lines(added)} that ${added === 1 ? "is" : "are"} new`]),
      ...(claims === 0 ? [] : [`${claims} ${claims === 1 ? "claim" : "claims"} of answers`]),
    ].join(", "),
  triedOn: (tried: number, all: number) =>
    `found on ${tried} of the ${all} colours and taken to be alike on the others`,
  mask: "with a P3 mask and the extractor on",
  maskFor: (names: string) => `with a P3 mask and the extractor on for ${names}`,
  hours: (hours: number) => (hours < 1 ? `${Math.round(60 * hours)} min` : `${hours} h`),
  file: (kind: keyof typeof RECORD, slug: string) => `${RECORD[kind]}/${slug}.${ENDING[kind]}`,
  /** Where no manifest of the last printing was named, nobody knows which cards are out of date. */
  reprintsUnknown:
    "Which shelf cards are to be printed again is known once cards has printed them: what they said then is kept beside the records, in printed-cards.json.",
  dueLines: {
    reprint: (changes: readonly string[]) => `Shelf card to print again: ${changes.join("; ")}`,
    "old-paper": (name: string, date: string) =>
      `The hazards of ${name} are of ${date}, more than three years ago: ask the supplier for the safety data sheet of today`,
    trial: (name: string, date: string) => `${name}: to be looked at on ${date}`,
    "exposure-result": (name: string, date: string, deltaEab: string, category: string) =>
      `${name}: it ended on ${date} at \u0394E*ab ${deltaEab} (category\u00a0${category}), and the colour\u2019s record does not have it: write it under exposures`,
    "drying-result": (name: string, date: string, from: number, to: number) =>
      `${name}: it ended on ${date}, dry to the touch between day ${from} and day ${to}, and the colour\u2019s record does not have it: write it under dryingTrials`,
    "second-lot": (lots: 0 | 1, colours: string) =>
      lots === 0
        ? `These have no lot recorded yet, so that nothing tells how their lots differ: ${colours}`
        : `Of these one lot is recorded; a second would tell how their lots differ: ${colours}`,
    "lot-planned": (number: string) =>
      `Lot ${number} is planned and not made: its batch sheet is ready`,
    "lot-unread": (number: string) =>
      `Lot ${number} is held against nothing yet: draw it down and read it`,
    "lot-unjudged": (number: string) =>
      `Lot ${number} was read, and not as its standard was: its page says what to let down or read again`,
    "lot-recalled": (number: string) => `Lot ${number} is recalled: call back what went out of it`,
    "lot-conceded": (number: string) =>
      `Lot ${number} is sold by concession: see that the next one passes`,
    "lot-failed": (number: string) =>
      `Lot ${number} fails against its standard: its page says why, and what to do`,
    "undated-paper": (name: string) =>
      `The hazards of ${name} bear no date: write down of what day the supplier's paper is`,
  },
} as const;

function lines(count: number): string {
  return `${count} ${count === 1 ? "line" : "lines"}`;
}
