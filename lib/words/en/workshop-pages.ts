import { listed } from "./phrases.ts";

/** What the workshop's own pages say, which nobody outside reads. */
export const WORKSHOP_PAGES = {
  heading: "The workshop",
  lead: "For the workshop alone: costs, suppliers, batches, replies and labels in draft. None of it stands on the public site.",
  name: (workshop: string) => `${workshop}, the workshop`,
  notice: "Not published",
  nav: { colours: "Colours", lots: "Lots", labels: "Labels", trials: "Trials", answers: "Replies" },
  home: {
    colours: "Colours",
    coloursCaption: "What a batch costs, and how much of a sheet is still open",
    /** Beside a cost, what it leaves out. */
    costWithout: (names: readonly string[]) => `without ${listed(names)}, unpriced`,
    columns: {
      colour: "Colour",
      cost: (pigmentG: number, currency: string) =>
        `Batch of ${pigmentG}\u00a0g of pigment, ${currency}`,
      wanting: "Not stated",
      suppliers: "Suppliers",
    },
    answers: "Replies",
    answersNone: "No question is answered yet.",
    faults: "What does not agree",
    faultsLead: "Found when the sheets were worked out.",
    noFaults: "Nothing contradicts itself.",
    faultsCaption: "What was found, and where",
    faultColumns: { what: "What", where: "Where" },
  },
  colour: {
    heading: (name: string) => `${name} in the workshop`,
    description: (name: string) =>
      `${name}: batch, costs, suppliers, what is missing, label, reply.`,
    back: "The workshop",
    sections: {
      batch: "A batch",
      costs: "Costs and suppliers",
      gaps: "Not stated",
      answers: "What customers ask",
      label: "Label text",
      reply: "A reply to send",
      lots: "Lots",
    },
    batchSheet: "Batch sheet to print",
    costsCaption: "From whom we buy it, and for how much",
    costColumns: {
      what: "What",
      supplier: "Supplier",
      price: (currency: string) => `${currency}/kg`,
      date: "Record of",
    },
    gapsLead: (count: number) =>
      count === 1
        ? "One figure of the sheet is not stated."
        : `${count} figures of the sheet are not stated.`,
    noGaps: "Every figure of the sheet is stated.",
    gapsCaption: "What is missing, why, and what would give it",
    gapColumns: { figure: "Figure", reason: "Why", wanting: "What would give it" },
  },
  answer: {
    description: (question: string) => `A reply to send, and what the answer rests on: ${question}`,
    claims: "What the answer rests on",
    privateClaims: "Held, and kept out of the published answer",
    back: "The workshop",
  },
} as const;
