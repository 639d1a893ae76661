/**
 * At most six precautionary statements, chosen by severity and use.
 *
 * Each statement is worth the sum, over the hazards it answers, of the hazard's
 * gravity times how strongly it is recommended. The worthiest is taken, and what
 * it answered counts half from then on for statements of its kind (prevention,
 * response, storage): so a second hazard is answered before the first is answered
 * twice, and what to do after counts beside what to do before. For the public,
 * children and disposal come first.
 *
 * @source clp-article-28 : six, and one on disposal for the public
 * @source echa-label-guidance-memory : recommendations; the halving is this project's rule
 */
import type { StatementOf } from "../../quantities/statement.ts";
import type { Finding } from "../classify/finding.ts";
import { classElements } from "../classify/hazard-class.ts";
import type { Composition } from "../classify/composition.ts";
import {
  choosablePrecautions,
  type PrecautionaryCode,
  type PrecautionRow,
  type Recommendation,
} from "../texts/precautionary-statement.ts";

export const PRECAUTIONS_AT_MOST = 6;

/** In which frame, in which form, to whom. */
export type Use = Pick<Composition, "frame" | "form" | "publicSale">;

interface Answers {
  /** Hazard statements that it answers. */
  readonly answers: readonly string[];
}

/** Why a precautionary statement was chosen. */
export type PrecautionStatement =
  | StatementOf<"children-first", Answers>
  | StatementOf<"disposal-for-the-public", Answers>
  | StatementOf<"by-severity", Answers>;

/** What P280 means on a label: the options of its official text. */
export type Protection = "gloves" | "eyes" | "gloves and eyes" | "gloves and clothing";

export type ChosenPrecaution = PrecautionStatement & {
  readonly statement: PrecautionaryCode;
  /** Of P280 where fewer than all its options are meant. */
  readonly protection?: Protection;
};

/** Statements that say the same more strongly: when the first is chosen, the others add nothing. */
const SAID_BY: Readonly<Record<PrecautionaryCode, readonly PrecautionaryCode[]>> = {
  P260: ["P261"],
  P102: ["P405"],
  P405: ["P102"],
  "P301+P310": ["P301+P312", "P310"],
  "P301+P316": ["P301+P317", "P316"],
  "P301+P330+P331": ["P331"],
  P331: ["P301+P330+P331"],
  P310: ["P312"],
  P316: ["P317"],
  P201: ["P202"],
  "P308+P313": ["P314"],
  P318: ["P319"],
  "P403+P233": ["P233"],
};

/** Taken before anything else where aspiration threatens. */
const SWALLOWED_OIL: readonly PrecautionaryCode[] = ["P301+P310", "P301+P316", "P331"];

/** Weight of a recommendation: highly recommended counts twice recommended, that twice optional. */
const WEIGHTS: Readonly<Record<Recommendation, number>> = { 0: 0, 1: 1, 2: 2, 3: 4 };
/** A general statement weighs less than anything that answers a hazard. */
const GENERAL_WORTH = 0.001;

interface Answer {
  readonly finding: Finding;
  readonly worth: number;
}

/** Names under which a hazard may stand in the table of answers, the most exact first. */
function namesOf({ hazardClass, route }: Finding): string[] {
  const { family } = classElements(hazardClass);
  const exposure = route === "dust" || route === "vapour" ? "inhalation" : route;
  const plain = hazardClass.replace(/^(Skin Corr\. 1)[ABC]$/, "$1");
  return [
    ...(exposure === undefined ? [] : [`${plain} ${exposure}`, `${family} ${exposure}`]),
    plain,
    family,
    "any",
  ];
}

interface Named {
  readonly finding: Finding;
  readonly names: readonly string[];
}

function answers({ answers: table = {} }: PrecautionRow, findings: readonly Named[]): Answer[] {
  return findings.flatMap(({ finding, names }) => {
    const name = names.find((each) => Object.hasOwn(table, each));
    const recommended = name === undefined ? undefined : table[name];
    if (recommended === undefined) return [];
    return [
      {
        finding,
        worth:
          name === "any"
            ? GENERAL_WORTH
            : WEIGHTS[recommended] * classElements(finding.hazardClass).gravity,
      },
    ];
  });
}

/**
 * The statements of a label for the hazards found, in the order of a label.
 * @returns none without a hazard; each with the H statements that it answers.
 */
export function chosenPrecautions(
  findings: readonly Finding[],
  use: Use,
  rows: readonly PrecautionRow[],
): ChosenPrecaution[] {
  if (findings.length === 0) return [];
  const named = findings.map((finding) => ({ finding, names: namesOf(finding) }));
  const open = new Map(
    choosablePrecautions(rows)
      .filter((row) => stands(row, use))
      .map((row) => [row.code, answers(row, named)] as const)
      .filter(([, found]) => found.length > 0),
  );
  const spent = new Map<string, number>();
  const left = (code: PrecautionaryCode, { statement, route }: Finding): number =>
    0.5 ** (spent.get(spentKey(code, statement, route)) ?? 0);
  const chosen: ChosenPrecaution[] = [];

  function take(code: PrecautionaryCode, rule: PrecautionStatement["rule"], spends: boolean): void {
    const found = open.get(code) ?? [];
    chosen.push({
      statement: code,
      rule,
      values: { answers: [...new Set(found.map(({ finding }) => finding.statement))] },
      source: "echa-label-guidance-memory",
      ...(code === "P280" ? protectionMeant(found.map(({ finding }) => finding)) : {}),
    });
    if (spends) {
      for (const {
        finding: { statement, route },
      } of found) {
        const key = spentKey(code, statement, route);
        spent.set(key, (spent.get(key) ?? 0) + 1);
      }
    }
    [code, ...(SAID_BY[code] ?? [])].forEach((said) => open.delete(said));
  }

  if (use.publicSale) {
    if (open.has("P102")) take("P102", "children-first", false);
    if (open.has("P501")) take("P501", "disposal-for-the-public", false);
  }
  // Of what can be drawn into the lungs: vomit is the very thing that kills, and help is called at once.
  if (open.has("P331"))
    for (const code of SWALLOWED_OIL) if (open.has(code)) take(code, "by-severity", true);
  while (chosen.length < PRECAUTIONS_AT_MOST) {
    let best: { readonly code: PrecautionaryCode; readonly worth: number } | undefined;
    for (const [code, found] of open) {
      const worth = found.reduce(
        (sum, answer) => sum + answer.worth * left(code, answer.finding),
        0,
      );
      if (best === undefined || worth > best.worth) best = { code, worth };
    }
    if (best === undefined) break;
    take(best.code, "by-severity", true);
  }
  return chosen.toSorted((one, other) => (one.statement < other.statement ? -1 : 1));
}

/** Gloves for the skin, goggles for the eyes; of what burns the skin all that the statement lists. */
function protectionMeant(findings: readonly Finding[]): { readonly protection?: Protection } {
  const statements = new Set(findings.map(({ statement }) => statement));
  if (statements.has("H314")) return {};
  const eyes = statements.has("H318") || statements.has("H319");
  const skin = ["H310", "H311", "H312", "H315", "H317"].some((code) =>
    statements.has(code as Finding["statement"]),
  );
  if (eyes) return { protection: skin ? "gloves and eyes" : "eyes" };
  return { protection: skin ? "gloves" : "gloves and clothing" };
}

/** A hazard answered by one kind of statement: P2xx prevention, P3xx response, P4xx storage. */
function spentKey(code: PrecautionaryCode, statement: string, route: string | undefined): string {
  return [code.slice(0, 2), statement, route].join(" ");
}

function stands(
  { buyer, frame: only, forms, replacedIn }: PrecautionRow,
  { frame, form, publicSale }: Use,
): boolean {
  if (forms !== undefined && !forms.includes(form)) return false;
  const forBuyer = buyer === undefined || (buyer === "public") === publicSale;
  return forBuyer && (only === undefined || only === frame) && replacedIn?.[frame] === undefined;
}
