import type { AnyWords } from "../any-words.ts";
import type { PageWords } from "../en/pages.ts";
import { upperFirst } from "../letter-case.ts";
import { FORM_WORDS, inGerman, SIGNAL_WORDS } from "./closed-sets.ts";
import { listed, namesWithin } from "./phrases.ts";

/** What a plain part of a sheet is called, by its path; the first that fits. */
const FACTS: readonly (readonly [RegExp, string])[] = [
  [/^cautions\.signalWord$/, "Signalwort"],
  [/^cautions\.(?:dryPigment\..*\.)?hazardStatements$/, "Gefahrenhinweise"],
  [/^cautions\.supplemental$/, "Ergänzende Hinweise"],
  [/^cautions\.notForSale$/, "Märkte, in denen mangels Rechtsgrundlage kein Verkauf erlaubt ist"],
  [/^cautions\.unknown$/, "Bestandteile ohne Gefahrendaten"],
  [/^cautions\.restrictions$/, "Vorschriften der Märkte"],
  [/^cautions\.basis$/, "Kennzeichnungselemente"],
  [/^pigments$/, "Pigmente"],
  [/^additions$/, "Zusätze zum Öl"],
  [/^permanence\.basis$/, "Grundlage der Lichtechtheit"],
  [/^dispersion$/, "Anreiben"],
  [/^family$/, "Familie"],
  [/^vehicle\.oil$/, "Öl"],
  [/^vehicle\.(?:name|slug)$/, "Bindemittel"],
  [/\.colourIndexName$/, "Colour-Index-Name"],
  [/^drying\.layering$/, "Schichten"],
  [/^drying\.filmHealth$/, "Film"],
  [/^drying\.grounds$/, "Malgründe"],
  [/^permanence\.sensitivities$/, "Andere Risiken"],
  [/^permanence\.reasons$/, "Gründe der Lichtechtheit"],
  [/^permanence\.weakest$/, "Am schwächsten im Licht"],
  [/^cautions\.notClassified$/, "Enthalten, ohne dass es eingestuft wäre"],
];

/** Headings, captions and sentences of answers, their claims and replies. */
export const ANSWER_PAGES: AnyWords<PageWords["answers"]> = {
  heading: "Fragen",
  lead: "Was Malerinnen und Maler uns fragen: erst die Antwort, dann warum.",
  themes: {
    whites: "Weiß und Mischen",
    choice: "Eine Farbe wählen",
    drying: "Trocknung und Schichten",
    lasting: "Ob sie hält",
    tube: "Was in der Tube ist",
    safety: "Sicherheit und Recht",
    others: "Weitere",
  },
  none: "Noch keine Frage beantwortet.",
  all: "Alle Antworten",
  description: (summary: string) =>
    summary.length <= 300 ? summary : `${summary.slice(0, 297).replace(/\s+\S*$/, "")}...`,
  claims: {
    checked: (count: number, date: string | undefined) =>
      `${count} ${count === 1 ? "Aussage" : "Aussagen"} an unseren Aufzeichnungen${date === undefined ? "" : ` bis ${date}`} geprüft`,
    caption: "Was die Antwort sagt, und was unsere Aufzeichnungen heute sagen",
    columns: { statement: "Aussage", today: "Heute", records: "Aufzeichnungen bis" },
    undated: "ohne Datum",
    broken: "gilt heute nicht",
    every: (but: readonly string[]) =>
      but.length === 0 ? "Alle Farben" : `Alle Farben außer ${listed(but)}`,
    about: (colour: string, statement: string) => `${colour}: ${statement}`,
    below: (name: string, limit: string) => `${name} liegt unter ${limit}`,
    above: (name: string, limit: string) => `${name} liegt über ${limit}`,
    belowBy: (name: string, limit: string, by: string) =>
      `${name} liegt mindestens ${by} unter ${limit}`,
    aboveBy: (name: string, limit: string, by: string) =>
      `${name} liegt mindestens ${by} über ${limit}`,
    other: (colour: string, name: string) =>
      `dem Wert von ${colour}${name === "" ? "" : `, ${name}`}`,
    between: (name: string, from: string, to: string) => `${name} liegt zwischen ${from} und ${to}`,
    is: (name: string, value: string) => `${name} ist ${value}`,
    family: (name: string) => `der Familie ${name}`,
    lowest: (name: string, rivals: string) =>
      `${name} ist am niedrigsten im Vergleich mit ${rivals}`,
    highest: (name: string, rivals: string) => `${name} ist am höchsten im Vergleich mit ${rivals}`,
    by: (statement: string, by: string) => `${statement}, um mindestens ${by}`,
    includes: (name: string, value: string) => `${name}: ${value} ist dabei`,
    lacks: (name: string, value: string) => `${name}: ${value} ist nicht dabei`,
    among: "dabei",
    notAmong: "nicht dabei",
    count: (name: string, count: number) => `${name}: ${count === 0 ? "keine" : `${count} davon`}`,
    standing: (statement: string, standing: string) => `${statement} (durchweg ${standing})`,
    none: "keine",
    nothing: "nichts",
    yes: "ja",
    no: "nein",
  },
  place: {
    inWhite: (white: string) => `in ${white}`,
    atL: (level: string) => `bei L* ${level}`,
    at: (ratio: string) => `bei ${ratio}`,
    masstone: "des Volltons",
    under: (viewing: string) => `unter ${viewing}`,
    of: (name: string) => `von ${name}`,
    form: (form: string) => `als ${inGerman(FORM_WORDS, form)}`,
  },
  facts: FACTS,
  fact: (path: string): string => {
    const ofPigment = /^cautions\.dryPigment\.[^.]+\.(.+)$/.exec(path)?.[1];
    if (ofPigment !== undefined)
      return `${ANSWER_PAGES.fact(`cautions.${ofPigment}`)} des trockenen Pigments`;
    const named = FACTS.find(([form]) => form.test(path))?.[1];
    const last = path.split(".").at(-1) ?? path;
    return (
      named ?? upperFirst(last).replace(/(?<=[a-z])[A-Z]/g, (letter) => ` ${letter.toLowerCase()}`)
    );
  },
  table: {
    colour: "Farbe",
    caption: "Farben nebeneinander",
    none: "nicht auf diesem Blatt",
  },
  picture: {
    swatchesTitle: (level: string, white: string) =>
      `Mit ${white} auf eine Helligkeit gemischt, L*\u00a0${level}`,
    swatchesAxis: (level: string, white: string) => `Mit ${white}, bei L*\u00a0${level}`,
    swatchDescription: (name: string, a: string, b: string) => `${name}, a* ${a}, b* ${b}`,
    trailTitle: (white: string) => `Wohin ${white} jede führt: a* und b* der Mischungen`,
    ladderTitle: (name: string, white: string) => `${name} mit ${white} gemischt`,
  },
  answered: (date: string | undefined, newest: string | undefined) =>
    [
      ...(date === undefined ? [] : [`Beantwortet am ${date}.`]),
      ...(newest === undefined ? [] : [`Nach unseren Aufzeichnungen bis ${newest}.`]),
    ].join(" "),
  coloursHeading: "Farben, die sie nennt",
  /** Under a tile, of its lower part. */
  tintIn: (white: string) => `unten: eine Aufhellung mit ${namesWithin([white])}`,
  coloursNote: (whites: readonly string[]) =>
    `Jede allein, dann als mittlerer Ton mit ${namesWithin(whites)}.`,
  reply: {
    heading: "Eine Antwort zum Verschicken",
    lead: "Reiner Text, fertig zum Einfügen in einen Brief. Die Werte sind die der Blätter.",
    text: "Antwort",
    copy: "Antwort kopieren",
    copied: "Kopiert.",
    notCopied:
      "Das Kopieren ist nicht gelungen: markieren Sie den Text und kopieren Sie ihn von Hand.",
    question: "Was gefragt wurde",
    colours: "Farben",
    figures: "Werte",
    thanks: "Danke für Ihre Frage.",
    asked: "Sie fragten:",
    sheetQuestion: (name: string) => `Was sollte ich über ${name} wissen?`,
    line: (name: string, value: string, standing: string) => `${name}: ${value} (${standing})`,
    notStated: (name: string) => `${name}: keine Angabe`,
    lightfastness: "Lichtechtheit",
    caution: (name: string, signalWord: string, statements: readonly string[]) =>
      `Etikett von ${name}: ${[inGerman(SIGNAL_WORDS, signalWord), ...statements].filter((part) => part !== "").join(" ")}`,
    cautionLine:
      "Das Etikett, das Sicherheitsdatenblatt und Ihre örtlichen Vorschriften gehen vor.",
    more: (address: string) => `Ausführlich, mit der Herkunft jedes Werts: ${address}`,
    closing: "Mit freundlichen Grüßen",
    invented: "(Eine Demonstration: Werkstatt, Farben und Messungen sind erfunden.)",
  },
};
