import { upperFirst } from "../letter-case.ts";
import { listed, namesWithin } from "./phrases.ts";

/** Headings, captions and sentences of answers, their claims and replies. */
export const ANSWER_PAGES = {
  heading: "Questions",
  lead: "What painters ask us: the answer first, then why.",
  themes: {
    whites: "Whites and mixing",
    choice: "Choosing a colour",
    drying: "Drying and layers",
    lasting: "Will it last",
    tube: "What is in the tube",
    safety: "Safety and law",
    others: "Others",
  },
  none: "No question has been answered yet.",
  all: "All answers",
  description: (summary: string) =>
    summary.length <= 300 ? summary : `${summary.slice(0, 297).replace(/\s+\S*$/, "")}...`,
  claims: {
    checked: (count: number, date: string | undefined) =>
      `${count} ${count === 1 ? "statement" : "statements"} checked against our records${date === undefined ? "" : ` to ${date}`}`,
    caption: "What the answer says, and what our records say today",
    columns: { statement: "Statement", today: "Today", records: "Records to" },
    undated: "undated",
    broken: "does not hold today",
    every: (but: readonly string[]) =>
      but.length === 0 ? "All colours" : `All colours but ${listed(but)}`,
    about: (colour: string, statement: string) => `${colour}: ${statement}`,
    below: (name: string, limit: string) => `${name} is below ${limit}`,
    above: (name: string, limit: string) => `${name} is above ${limit}`,
    belowBy: (name: string, limit: string, by: string) =>
      `${name} is at least ${by} below ${limit}`,
    aboveBy: (name: string, limit: string, by: string) =>
      `${name} is at least ${by} above ${limit}`,
    other: (colour: string, name: string) => `that of ${colour}${name === "" ? "" : `, ${name}`}`,
    between: (name: string, from: string, to: string) => `${name} lies between ${from} and ${to}`,
    is: (name: string, value: string) => `${name} is ${value}`,
    family: (name: string) => `the ${name.toLowerCase()}`,
    lowest: (name: string, rivals: string) => `${name} is the lowest of ${rivals}`,
    highest: (name: string, rivals: string) => `${name} is the highest of ${rivals}`,
    by: (statement: string, by: string) => `${statement}, by ${by} at least`,
    includes: (name: string, value: string) => `${name}: ${value} is among them`,
    lacks: (name: string, value: string) => `${name}: ${value} is not among them`,
    among: "among them",
    notAmong: "not among them",
    count: (name: string, count: number) => `${name}: ${count === 0 ? "none" : `${count} of them`}`,
    standing: (statement: string, standing: string) => `${statement} (${standing} throughout)`,
    none: "none",
    nothing: "none",
    yes: "yes",
    no: "no",
  },
  place: {
    inWhite: (white: string) => `in ${white}`,
    atL: (level: string) => `at L* ${level}`,
    at: (ratio: string) => `at ${ratio}`,
    masstone: "of the masstone",
    under: (viewing: string) => `under ${viewing}`,
    of: (name: string) => `of ${name}`,
    form: (form: string) => `as a ${form}`,
  },
  /** What a plain part of a sheet is called, by its path; the first that fits. */
  facts: [
    [/^cautions\.signalWord$/, "Signal word"],
    [/^cautions\.(?:dryPigment\..*\.)?hazardStatements$/, "Hazard statements"],
    [/^cautions\.supplemental$/, "Supplemental statements"],
    [/^cautions\.notForSale$/, "Markets where it may not be sold for want of a legal basis"],
    [/^cautions\.unknown$/, "Ingredients without hazard data"],
    [/^cautions\.restrictions$/, "Acts of its markets"],
    [/^cautions\.basis$/, "Label elements"],
    [/^pigments$/, "Pigments"],
    [/^additions$/, "Added to the oil"],
    [/^permanence\.basis$/, "Ground of the lightfastness"],
    [/^dispersion$/, "Ground by"],
    [/^family$/, "Family"],
    [/^vehicle\.oil$/, "Made with"],
    [/^vehicle\.(?:name|slug)$/, "Vehicle"],
    [/\.colourIndexName$/, "Colour Index name"],
    [/^drying\.layering$/, "Layers"],
    [/^drying\.filmHealth$/, "Film"],
    [/^drying\.grounds$/, "Grounds"],
    [/^permanence\.sensitivities$/, "Other risks"],
    [/^permanence\.reasons$/, "Grounds of the lightfastness"],
    [/^permanence\.weakest$/, "Weakest in light"],
    [/^cautions\.notClassified$/, "Contains, though not classified for it"],
  ] as readonly (readonly [RegExp, string])[],
  fact: (path: string): string => {
    const ofPigment = /^cautions\.dryPigment\.[^.]+\.(.+)$/.exec(path)?.[1];
    if (ofPigment !== undefined)
      return `${ANSWER_PAGES.fact(`cautions.${ofPigment}`)} of the dry pigment`;
    const named = ANSWER_PAGES.facts.find(([form]) => form.test(path))?.[1];
    const last = path.split(".").at(-1) ?? path;
    return (
      named ?? upperFirst(last).replace(/(?<=[a-z])[A-Z]/g, (letter) => ` ${letter.toLowerCase()}`)
    );
  },
  table: { colour: "Colour", caption: "Colours side by side", none: "not on this sheet" },
  picture: {
    swatchesTitle: (level: string, white: string) =>
      `Mixed with ${white} to one lightness, L*\u00a0${level}`,
    swatchesAxis: (level: string, white: string) => `With ${white}, at L*\u00a0${level}`,
    swatchDescription: (name: string, a: string, b: string) => `${name}, a* ${a}, b* ${b}`,
    trailTitle: (white: string) => `Where ${white} takes each of them: a* and b* of the mixtures`,
    ladderTitle: (name: string, white: string) => `${name} mixed with ${white}`,
  },
  answered: (date: string | undefined, newest: string | undefined) =>
    [
      ...(date === undefined ? [] : [`Answered on ${date}.`]),
      ...(newest === undefined ? [] : [`By our records to ${newest}.`]),
    ].join(" "),
  coloursHeading: "Colours that it names",
  /** Under a tile, of its lower part. */
  tintIn: (white: string) => `below: a tint with ${namesWithin([white])}`,
  coloursNote: (whites: readonly string[]) =>
    `Each alone, then as a middle tone with ${namesWithin(whites)}.`,
  reply: {
    heading: "A reply to send",
    lead: "Plain text, ready to paste into a letter. The figures are those of the sheets.",
    text: "Reply",
    copy: "Copy the reply",
    copied: "Copied.",
    notCopied: "It could not be copied: select the text and copy it by hand.",
    question: "What was asked",
    colours: "Colours",
    figures: "Figures",
    thanks: "Thank you for asking.",
    asked: "You asked:",
    sheetQuestion: (name: string) => `What should I know of ${name}?`,
    line: (name: string, value: string, standing: string) => `${name}: ${value} (${standing})`,
    notStated: (name: string) => `${name}: not stated`,
    lightfastness: "Lightfastness",
    caution: (name: string, signalWord: string, statements: readonly string[]) =>
      `Label of ${name}: ${[signalWord, ...statements].filter((part) => part !== "").join(" ")}`,
    cautionLine: "The label, the safety data sheet and your local rules come first.",
    more: (address: string) => `In full, with how each figure is known: ${address}`,
    closing: "With kind regards,",
    invented: "(A demonstration: workshop, colours and readings are invented.)",
  },
};
