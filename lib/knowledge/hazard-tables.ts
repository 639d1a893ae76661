import { z } from "zod";
import { ACT_KEYS, HAZARD_MARKETS, type Act } from "../hazard/classify/legislation.ts";
import { SUBSTANCE_NAMES } from "../hazard/classify/substance.ts";
import {
  classElements,
  HAZARD_CLASS_NAMES,
  isHazardClass,
} from "../hazard/classify/hazard-class.ts";
import { HAZARD_FRAMES, PAINT_FORMS } from "../hazard/classify/frame.ts";
import { RECOMMENDATIONS } from "../hazard/texts/precautionary-statement.ts";
import type { HazardKnowledge } from "../hazard/hazard-knowledge.ts";
import { CLAIM_KINDS, forbiddenWordFinder } from "../hazard/label/forbidden-words.ts";
import { ATOMIC_WEIGHTS, METALS, type Element } from "../hazard/studio/metal-content.ts";
import {
  STATEMENT_LANGUAGES,
  statementTexts,
  type StatementTextRow,
} from "../hazard/texts/statement-texts.ts";
import { casCell, evidence, listCell, numberCell, patternCell, wording } from "./cells.ts";
import type { EvidencedRow, RowOf, TableForm } from "./loaded-table.ts";

const note = wording.optional();
const yes = z.enum(["yes", "no"]).transform((word) => word === "yes");
const formula = z
  .string()
  .regex(/^([A-Z][a-z]?\d*)+$/, "a formula without brackets, such as Pb3C2O8H2")
  .refine(
    (text) => [...text.matchAll(/[A-Z][a-z]?/g)].every(([symbol]) => symbol in ATOMIC_WEIGHTS),
    { error: "elements that have an atomic weight in lib/hazard/studio/metal-content.ts" },
  );
const texts = {
  en: wording,
  fr: wording.optional(),
  de: wording.optional(),
  es: wording.optional(),
};

function form<Row extends EvidencedRow>(table: TableForm<Row>): TableForm<Row> {
  return table;
}

/** What a precaution can answer: a class, its family, of acute toxicity a route too, or any hazard. */
const answerable = z.string().refine(
  (name) => {
    const plain = name.replace(/ (oral|dermal|inhalation)$/, "");
    return (
      name === "any" ||
      isHazardClass(plain) ||
      HAZARD_CLASS_NAMES.some((of) => classElements(of).family === plain)
    );
  },
  { error: "a hazard class, a family of classes, or any" },
);

/** The tables of the hazard room, each beside the rules that go by it. */
export const HAZARD_TABLES = {
  hazardStatements: form({
    file: "hazard/texts/clp-statements.csv",
    row: z.object({
      code: wording,
      ...texts,
      it: wording.optional(),
      nl: wording.optional(),
      ...evidence,
    }),
    names: ({ code }) => [code],
  }),
  labelWordings: form({
    file: "hazard/texts/label-wordings.csv",
    row: z.strictObject({ code: wording, option: wording.optional(), ...texts, ...evidence, note }),
    names: ({ code, option }) => [`${code} ${option ?? ""}`],
  }),
  precautions: form({
    file: "hazard/texts/precautions.yaml",
    row: z.strictObject({
      code: z.string().regex(/^P\d{3}(\+P\d{3})*$/, "a code such as P280 or P301+P310"),
      answers: z.record(answerable, z.literal(RECOMMENDATIONS)).optional(),
      buyer: z.enum(["public", "trade"]).optional(),
      forms: listCell(z.enum(PAINT_FORMS)).optional(),
      frame: z.enum(HAZARD_FRAMES).optional(),
      replacedIn: z.partialRecord(z.enum(HAZARD_FRAMES), z.string()).optional(),
      ...evidence,
      note,
    }),
    names: ({ code }) => [code],
  }),
  substances: form({
    file: "hazard/classify/substances.csv",
    row: z.strictObject({
      substance: z.enum(SUBSTANCE_NAMES),
      casNumbers: listCell(casCell),
      colourIndexNames: listCell(z.string().min(1)).optional(),
      ...evidence,
      note,
    }),
    names: ({ substance }) => [substance],
  }),
  harmonised: form({
    file: "hazard/classify/harmonised.csv",
    row: z.strictObject({
      what: wording,
      casNumbers: listCell(casCell),
      colourIndexNames: listCell(z.string().min(1)),
      statements: listCell(z.string().regex(/^H\d{3}[A-Za-z]*$/, "an H-statement")),
      ...evidence,
    }),
    names: ({ what }) => [what],
  }),
  substanceNames: form({
    file: "hazard/texts/substance-names.csv",
    row: z.strictObject({
      casNumber: casCell,
      en: wording,
      fr: wording,
      de: wording,
      es: wording,
      ...evidence,
    }),
    names: ({ casNumber, en }) => [casNumber, en],
  }),
  metals: form({
    file: "hazard/studio/metals.csv",
    row: z.strictObject({
      metal: z.enum(METALS),
      element: z.enum(Object.keys(ATOMIC_WEIGHTS) as [Element, ...Element[]]),
      countsFrom: numberCell(0.0001, 0.1, "of the mass"),
      dust: z.enum(["grave", "ordinary"]),
      heat: z.enum(["never", "with exhaust"]),
      skin: yes,
      unborn: yes,
      waste: z.enum(["special", "ordinary"]),
      ...evidence,
      note,
    }),
    names: ({ metal }) => [metal],
  }),
  metalsByColourIndex: form({
    file: "hazard/studio/metals-by-colour-index.csv",
    row: z.strictObject({
      colourIndexName: wording,
      metal: z.enum(METALS),
      ...evidence,
      note,
    }),
    names: ({ colourIndexName, metal }) => [`${colourIndexName} ${metal}`],
  }),
  metalsByCasNumber: form({
    file: "hazard/studio/metals-by-cas-number.csv",
    row: z.strictObject({
      casNumber: casCell,
      substance: wording,
      formula: formula.optional(),
      metals: listCell(z.enum(METALS)),
      ...evidence,
    }),
    names: ({ casNumber }) => [casNumber],
  }),
  quartz: form({
    file: "hazard/studio/quartz-by-colour-index.csv",
    row: z.strictObject({ colourIndexName: wording, holds: wording, ...evidence }),
    names: ({ colourIndexName }) => [colourIndexName],
  }),
  forbiddenWords: form({
    file: "hazard/label/forbidden-words.yaml",
    row: z.strictObject({
      language: z.enum(STATEMENT_LANGUAGES),
      claim: z.enum(CLAIM_KINDS),
      words: listCell(patternCell),
      allowed: listCell(patternCell).optional(),
      ...evidence,
    }),
    names: ({ language, claim }) => [`${language}, ${claim}`],
    all: STATEMENT_LANGUAGES.flatMap((of) => CLAIM_KINDS.map((claim) => `${of}, ${claim}`)),
  }),
  acts: form({
    file: "hazard/markets/acts.csv",
    row: z.strictObject({
      act: z.enum(ACT_KEYS),
      markets: listCell(z.enum(HAZARD_MARKETS)),
      since: z.iso.date(),
      ...evidence,
    }),
    names: ({ act }) => [act],
  }),
};

export type HazardTables = {
  readonly [Name in keyof typeof HAZARD_TABLES]: readonly RowOf<(typeof HAZARD_TABLES)[Name]>[];
};

/** What the rules of the hazard room go by, out of its tables. */
export function hazardKnowledge(tables: HazardTables): HazardKnowledge {
  return {
    texts: statementTexts([...tables.hazardStatements, ...tables.labelWordings].map(textRow)),
    substances: tables.substances,
    harmonised: tables.harmonised,
    precautions: tables.precautions,
    substanceNames: tables.substanceNames,
    metals: {
      metals: tables.metals,
      byColourIndex: tables.metalsByColourIndex,
      byCasNumber: tables.metalsByCasNumber,
    },
    quartz: tables.quartz,
    forbiddenWords: forbiddenWordFinder(tables.forbiddenWords),
    acts: tables.acts.map(({ standing, ...act }): Act => ({
      ...act,
      standing: standing === "published" ? "read" : "memory",
    })),
  };
}

type TextCells = {
  readonly [L in (typeof STATEMENT_LANGUAGES)[number]]?: string | undefined;
} & {
  readonly code: string;
  readonly option?: string | undefined;
  readonly standing: string;
};

function textRow({ code, option, standing, ...cells }: TextCells): StatementTextRow {
  return {
    code,
    ...(option !== undefined && { option }),
    texts: Object.fromEntries(
      STATEMENT_LANGUAGES.flatMap((language) => {
        const text = cells[language];
        return text === undefined ? [] : [[language, text]];
      }),
    ),
    provenance:
      standing === "published" ? "read" : standing === "practice" ? "completed" : "memory",
  };
}
