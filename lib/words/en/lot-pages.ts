/** What the workshop's pages of lots, batch sheets and trials say. */
export const LOT_PAGES = {
  /** On published pages: which lots the figures are of. */
  describes: (standard: string | undefined, others: readonly string[]) =>
    [
      ...(standard === undefined ? [] : [`The figures describe lot ${standard}.`]),
      ...(others.length === 0
        ? []
        : [
            `${others.length === 1 ? "Lot" : "Lots"} ${others.join(", ")} ${others.length === 1 ? "agrees" : "agree"} with ${standard === undefined ? "the standard" : "it"} within tolerance.`,
          ]),
    ].join(" "),
  recalled: (number: string, since: string) =>
    `Lot ${number} was recalled on ${since}: do not use it, and write to us.`,
  conceded: (number: string) =>
    `Lot ${number} is sold by concession, though it lies outside tolerance.`,
  reply: "Lots",
  verdicts: { pass: "Pass", near: "Near", fail: "Fail", none: "Not judged" },
  index: {
    heading: "Lots",
    lead: "Every lot beside its standard, the newest first.",
    description: "Lots of the workshop beside their standards.",
    none: "No lot is on record yet. A lot is a file in lots/.",
    outcome: "How they came out",
    caption: "Lots, the newest first",
    columns: {
      lot: "Lot",
      colour: "Colour",
      date: "Date",
      verdict: "Verdict",
      letDown: "Let-down, \u0394E00",
      strength: "Strength, %",
    },
    recalled: "recalled",
    conceded: "conceded",
    standard: "Standard",
    planned: "Planned",
    spreadHeading: "How well we repeat ourselves",
    spread: (colour: string, strength: string, degrees: number) =>
      `The same lot let down and read again differs by ${colour} \u0394E*ab and ${strength} % of strength (standard deviation, ${degrees} ${degrees === 1 ? "degree" : "degrees"} of freedom).`,
    spreadUsed: "Verdicts go by that, twice over.",
    spreadNotUsed: "That is too few to go by: verdicts go by the instrument's own noise.",
    spreadOfReadings:
      "The \u00b1 of every reading of the same instrument that states none is drawn towards what these and all other replicates show.",
    spreadNone:
      "No lot has a let-down that was made or read twice, so that verdicts go by the instrument's own noise.",
  },
  lot: {
    heading: (number: string, colour: string) => `Lot ${number}, ${colour}`,
    description: (number: string, colour: string) =>
      `Lot ${number} of ${colour} beside its standard.`,
    back: "All lots",
    ruled: (since: string, why: string) => `Since ${since}: ${why}`,
    lead: {
      pass: "It passes.",
      near: "It lies so near to a limit that it neither passes nor fails yet.",
      unjudged: "Not judged: not all that was read of it can be held against the standard.",
      fail: "It fails.",
      none: "Not judged: neither its masstone nor its let-down has been read as a spectrum.",
      standard: "The retained standard: later lots are held against it.",
      recalled: "Recalled: none of it is to be sold or used.",
      conceded: "Conceded: it is sold though it does not pass.",
      planned: "Planned, and not made yet.",
    },
    sections: {
      verdict: "Against the standard",
      seen: "Side by side",
      parts: "The difference in parts",
      correction: "What would bring it back",
      planned: "As it is planned",
      batch: "As it was made",
      next: "Next",
    },
    judgedCaption: "Each criterion with its tolerance",
    judgedColumns: {
      what: "Criterion",
      found: "Found",
      tolerance: "Tolerance",
      verdict: "Verdict",
    },
    customary:
      "Tolerances are our own choice where neither the workshop nor the colour names them.",
    seenRows: ["Standard", "Lot"],
    seenDescription: (number: string) =>
      `The standard above lot ${number}, as masstone and as let-down.`,
    masstone: "Masstone",
    letDown: (white: string, ratio: string) => `${ratio} in ${white}`,
    partsCaption: "Lot less standard, \u0394E00 (D65, 10\u00b0)",
    partsColumns: {
      of: "What",
      total: "\u0394E00",
      L: "\u0394L\u2032",
      C: "\u0394C\u2032",
      H: "\u0394H\u2032",
    },
    equal: "Let-down at equal strength",
    strength: (percent: string, nm: number, weighted: string) =>
      `Strength ${percent} % at ${nm} nm, where the standard absorbs most; ${weighted} % weighted by what the eye takes of daylight.`,
    correctionLead: (best: string, grams: string) =>
      `Work ${grams} g of ${best} into each 100 g of the lot.`,
    correctionForeign: (name: string, pigments: string) =>
      `With ${name} it holds ${pigments} as well, which neither its name nor its label says.`,
    correctionNone:
      "Nothing that we tried would halve the difference: no white, no extender, no other lot, and no colour that was read in the same way. What was never let down, nor read alone and in films over a bare chart that was read itself, could not be tried.",
    correctionUnread: "There is nothing to correct before it has been read rightly.",
    correctionCaption: "To 100 g of the lot, and what would then be read",
    correctionColumns: {
      what: "Addition",
      grams: "To 100 g, g",
      masstone: "Masstone, \u0394E00",
      letDown: "Let-down, \u0394E00",
      strength: "Strength, %",
    },
    correctionNote:
      "In brackets what it may come to with a dose 5 % off, or as far off as what is added is known, and the reading's uncertainty. Try it on 20 g first: what theory leaves out is not in the range.",
    kinds: { white: "white", extender: "extender", colour: "colour", lot: "lot" },
    plannedCaption: "To be weighed in",
    batchCaption: "Weighed in, and what came out",
    batchColumns: { what: "What", amount: "Amount" },
    rows: {
      yield: "Yield",
      loss: "Lost",
      tubes: (ml: string) => `Tubes of ${ml} ml`,
      packed: (ml: string) => `Tubes of ${ml} ml must hold on the mean`,
      packedMean: (grams: string) => `${grams} or more`,
      packedFew: "Only few of them may hold less than",
      packedGross: (net: string, gross: string) => `${net}; with the empty tube ${gross}`,
      packedShort: (found: string, ml: string) =>
        `On the mean they hold ${found} ml, and ${ml} ml stands on them: they may not be sold as such (Directive 76/211/EEC).`,
      tubeMass: (ml: string) => `In one of ${ml} ml`,
      fineness: "Fineness of grind",
      density: "Density of the paint",
      retained: "Retained sample",
      passes: "Passes",
      note: "Note",
    },
    /** What comes next, by how the lot stands. */
    steps: {
      recalled: (number: string) => [
        `What went out of it, to be called back: npm run check -- --uses ${number}.`,
        "No labels of it are printed.",
      ],
      conceded: (number: string, howMany: string) => [
        `Its labels: npm run labels -- --lot ${number} ${howMany}.`,
      ],
      planned: () => [
        "Once it is made: put the weights into its record as they were, and take out planned: true.",
        "Draw down masstone and let-down, read them; npm run read -- FILE keeps the readings and says the lines for its record.",
      ],
      none: () => [
        "Draw down masstone and let-down, read them; npm run read -- FILE keeps the readings and says the lines for its record.",
      ],
      pass: (number: string, howMany: string) => [
        `Its labels: npm run labels -- --lot ${number} ${howMany}.`,
      ],
      standard: (number: string, howMany: string) => [
        `Its labels: npm run labels -- --lot ${number} ${howMany}.`,
      ],
      unjudged: () => [
        "Let it down in the white and at the ratio of the standard, and read it as the standard was read; or let the retained standard down as this lot was.",
      ],
      near: () => [
        "Draw it down and read it once more: with a smaller \u00b1 it may be clear whether it passes.",
      ],
      fail: () => [
        "Correct it by its sheet, or keep it back. What was corrected is read again, as a lot of its own.",
      ],
      kept: () => ["Keep it back: nothing that was read here would bring it to its standard."],
    },
    ownSheet: (number: string) => `Batch sheet of lot ${number}`,
    correctionSheet: (number: string) => `Sheet for the correction of lot ${number}`,
    reply: (colour: string) => `A reply about ${colour}`,
    batchSheet: (colour: string) => `Batch sheet of ${colour}`,
    colourPage: (colour: string) => `${colour} in the workshop`,
  },
  chart: {
    of: {
      strength: {
        title: (colour: string) => `Strength of ${colour}, lot by lot`,
        ranges: (colour: string) => `Strength of ${colour}: from each lot to the next`,
        value: "Tinting strength, % of the standard",
        range: "Difference of two neighbours, %",
        column: "Strength, %",
      },
      letDown: {
        title: (colour: string) => `Let-down of ${colour} beside the standard, lot by lot`,
        ranges: (colour: string) => `Let-down of ${colour}: from each lot to the next`,
        value: "\u0394E00 of the let-down from the standard",
        range: "Difference of two neighbours, \u0394E00",
        column: "Let-down, \u0394E00",
      },
      masstone: {
        title: (colour: string) => `Masstone of ${colour} beside the standard, lot by lot`,
        ranges: (colour: string) => `Masstone of ${colour}: from each lot to the next`,
        value: "\u0394E00 of the masstone from the standard",
        range: "Difference of two neighbours, \u0394E00",
        column: "Masstone, \u0394E00",
      },
    },
    description: (numbers: string) => `In order of date: ${numbers}.`,
    order: "Lots in order of date",
    lines: { mean: "mean", limits: "control limits", limit: "limit", tolerance: "tolerance" },
    provisional: (count: number) =>
      `Limits of ${count} lots are provisional: the next few will move them. Twenty make them firm.`,
    quiet: "No lot lies beyond the limits, and none of the runs is long enough to tell.",
    points: "Which lot each mark is",
    columns: { place: "Mark", lot: "Lot", date: "Date" },
    one: "One lot makes no chart.",
    apart:
      "None of these lots could be held against the standard in colour or strength, so that there is no chart.",
  },
  correctionSheet: {
    heading: (number: string) => `Correction of lot ${number}`,
    description: (number: string) => `What to weigh to bring lot ${number} back to its standard.`,
    rows: {
      trialLot: "Trial: of the lot",
      trialAdded: (name: string) => `Trial: ${name}`,
      restLot: "Then: the rest of the lot",
      restAdded: (name: string) => `Then: ${name}`,
    },
    predicted: (masstone: string, letDown: string, strength: string) =>
      `Should then read: masstone \u0394E00 ${masstone}, let-down \u0394E00 ${letDown}, strength ${strength} %.`,
    dose: (grams: string, name: string) => `${grams} g of ${name} to 100 g of the lot.`,
    ofYield: (grams: string) =>
      `For the ${grams} g that came out: of what is in tubes already, that much less.`,
    ofWeighed: (grams: string) =>
      `For the ${grams} g that were weighed in: the record gives no yield.`,
    order: [
      "Work the trial together on the slab with the knife until no streak is left.",
      "Draw it down beside the standard, masstone and let-down, and read both.",
      "Not within tolerance: write down what was read, and leave the lot as it is.",
      "Within tolerance: work the rest in by thirds, and give the whole one pass more.",
      "Draw down the whole, read it, and fill a new sample jar.",
      "Write it down as a lot of its own, with all that went in.",
    ],
    cautions: "Before it is mixed",
    classified: (name: string, statements: string) =>
      `${name} is classified (${statements}): its label's cautions hold at the slab, and the lot wants a label of its own.`,
    fields: {
      masstone: "Trial, masstone \u0394E00",
      letDown: "Trial, let-down \u0394E00",
      strength: "Trial, strength %",
    },
  },
  batchSheet: {
    heading: (colour: string) => `Batch sheet: ${colour}`,
    description: (colour: string) =>
      `What to weigh for a lot of ${colour}, to print and take to the slab.`,
    back: (colour: string) => `${colour} in the workshop`,
    backToLot: (number: string) => `Lot ${number}`,
    wanted: "What is wanted",
    units: { tubes: (ml: string) => `tubes of ${ml} ml`, pigmentG: "g of pigment" },
    amount: "How many, or how much",
    fault: "Give an amount above 0.",
    print: "Print",
    caption: "What to weigh",
    columns: { what: "What", planned: "Planned,\u00a0g", weighed: "Weighed,\u00a0g" },
    rows: { first: "Oil to begin with", held: "Oil held back", paint: "Paint in all" },
    comesOut: (from: string, to: string) => `${from} to ${to} ml should come out.`,
    loss: {
      learnt: (from: string, to: string, count: number) =>
        `Loss ${from} to ${to} %, as ${count === 1 ? "one lot" : `${count} lots`} of it lost.`,
      customary: (from: string, to: string) =>
        `Loss ${from} to ${to} %, as is customary: no lot of it is on record.`,
    },
    fill: (ml: string, really: string) =>
      `Reckon ${really} ml to each tube of ${ml} ml: that is what earlier ones came to hold.`,
    packed: (ml: string, mean: string, few: string, none: string, density: string) =>
      `By law tubes of ${ml} ml must hold ${mean} g of paint or more on the mean: enough for ${ml} ml up to a density of ${density} g/cm\u00b3. Few of a lot (2 in 100 by German law) may hold less than ${few} g, and none less than ${none} g (Directive 76/211/EEC).`,
    gross: (ml: string, mean: string, few: string, none: string, tare: string) =>
      `On the balance, with an empty tube of ${ml} ml of ${tare} g: ${mean} g, ${few} g and ${none} g.`,
    tareless: "The empty tube with its cap comes on top: weigh one, and write it down as tareG.",
    densityFirst: "Weigh the density of the lot first: the masses go with it.",
    rubbedOut: (pigment: string, number: string, figure: string) =>
      `${pigment}, delivery ${number}: rub-out ${figure} g/100 g, by which the oil held back goes here.`,
    step: (grams: string) => `Weights to ${grams} g, the step of the balance.`,
    order: {
      heading: "Order of work",
      mulled: [
        "Weigh the pigment with the extractor on, as said below, and close the jar.",
        "Oil to begin with: work it in with the knife until no dry pigment is left.",
        "Mull in portions; scrape together and turn after each pass.",
        "Oil held back: drop by drop, only as far as the paste asks for it. Write down what is left.",
        "Driers and mediums last, and mix them through.",
        "Draw down masstone and let-down, fill the sample jar, then the tubes.",
      ],
      milled: [
        "Weigh the pigment with the extractor on, as said below, and close the jar.",
        "Oil to begin with: mix to a stiff paste, and let it stand until it is wet through.",
        "Mill with the rolls wide, then closer at each pass; read the gauge after each.",
        "Oil held back: between passes, only as far as the paste asks for it. Write down what is left.",
        "Driers and mediums in the last pass.",
        "Draw down masstone and let-down, fill the sample jar, then the tubes.",
      ],
    },
    cautions: "Before the pigment is paint",
    defer: "The suppliers' safety data sheets and local rules come first.",
    fields: {
      heading: "To fill in",
      lot: "Lot",
      name: "Made by",
      date: "Date",
      passes: "Passes",
      fineness: "Fineness, \u00b5m",
      left: "Oil left over, g",
      yield: "Yield, g",
      tubes: "Tubes filled",
      sample: "Sample number",
    },
    none: "Nothing can be weighed out:",
  },
  labels: {
    heading: "Labels to stick",
    description: "Labels of the workshop for tubes and jars.",
    lead: "One label of each colour in each size that it is put up in, at real size. A label is a draft for whoever signs it: the law of each market decides what it has to carry.",
    sections: {
      print: "To print",
      refused: "Without a label",
      remarks: "About the labels that are printed",
    },
    list: "Colour, size, and why",
    caption: "Labels by size",
    columns: { size: "Size", measures: "Label, mm", colours: "Colours" },
    measures: (width: number, height: number) => `${width} \u00d7 ${height}`,
    pdf: (pages: number) =>
      `labels.pdf, ${pages} ${pages === 1 ? "page" : "pages"}, to print at full size`,
    none: "workshop.yaml gives no labels: a list of { name, kind, ml } says which there are.",
    nothing: "No colour that is put up in one of these sizes has a label yet.",
    command:
      "For one lot, and as many as tubes were filled: npm run labels -- --lot NUMBER --filled.",
  },
  trials: {
    heading: "Trials",
    lead: "Exposures and drying trials as far as they have gone.",
    description: "Trials of the workshop as dated series.",
    none: "No trial is on record as a series. A trial is a file in trials/.",
    due: "Due next",
    dueCaption: "When to look again",
    dueColumns: { what: "Trial", date: "Look on" },
    ended: "Ended",
    exposure: (colour: string, form: string) => `${colour}, ${form}, exposed`,
    drying: (colour: string) => `${colour}, drying`,
    soFar: (category: string, deltaEab: string, days: number) =>
      `Category ${category} so far: \u0394E*ab ${deltaEab} after ${days} ${days === 1 ? "day" : "days"}. It says nothing of what is to come.`,
    over: (category: string, deltaEab: string, days: number) =>
      `Category ${category}: \u0394E*ab ${deltaEab} after ${days} ${days === 1 ? "day" : "days"}.`,
    unread: "Not read yet.",
    touch: (from: number, to: number) => `Dry to the touch between day ${from} and day ${to}.`,
    through: (from: number, to: number) => `Dry through between day ${from} and day ${to}.`,
    notYet: "Not dry to the touch yet.",
    never: "Not dry to the touch when it ended.",
    day: "Days from the start",
    change: "\u0394E*ab from the half kept dark",
    state: "Wet 0, tacky 1, dry to the touch 2, through 3",
    limit: (category: string) => `end of ${category}`,
    next: (date: string) => `Look again on ${date}.`,
    table: "Each reading",
    columns: { date: "Date", day: "Day", found: "Found" },
  },
} as const;
