/**
 * Precautionary statements, chosen by severity and use: six, and more where a hazard kills,
 * poisons, or causes cancer, harm to the genes or to an unborn child.
 *
 * Each statement is worth the sum, over the hazards it answers, of the hazard's
 * gravity times how strongly it is recommended. The worthiest is taken, and what
 * it answered counts half from then on for statements of its kind (prevention,
 * response, storage): so a second hazard is answered before the first is answered
 * twice, and what to do after counts beside what to do before. For the public,
 * children and disposal come first.
 *
 * Of a grave hazard all that is highly recommended stands, before anything is weighed (the
 * severity); and where six places are then filled, fire, health and the environment each still
 * have what is most recommended for them (the nature).
 *
 * @source clp-article-28 : six "unless necessary to reflect the nature and the severity of the
 *   hazards", what is redundant left out, and one on disposal for the public
 * @source echa-label-guidance-memory : recommendations; the halving, and what is necessary beyond
 *   six, are this project's rules
 */
import type { StatementOf } from "../../quantities/statement.ts";
import type { Finding } from "../classify/finding.ts";
import { classElements, type HazardClass } from "../classify/hazard-class.ts";
import type { Composition } from "../classify/composition.ts";
import {
  choosablePrecautions,
  type PrecautionaryCode,
  type PrecautionRow,
  type Recommendation,
} from "../texts/precautionary-statement.ts";

/** Unless a hazard is grave: {@link isGrave}. */
export const PRECAUTIONS_AT_MOST = 6;

/** Hazards that more than six statements are let stand for. */
const GRAVE_CATEGORIES: Readonly<Record<string, number>> = {
  "acute toxicity": 3,
  carcinogenicity: 1,
  mutagenicity: 1,
  reproduction: 1,
};

/** Whether a class is fatal or toxic, or harms genes, an unborn child or causes cancer for certain. */
export function isGrave(hazardClass: HazardClass): boolean {
  const { family, rank } = classElements(hazardClass);
  return rank <= (GRAVE_CATEGORIES[family] ?? 0);
}

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
  "P301+P310": ["P301+P312"],
  "P301+P316": ["P301+P317"],
  "P301+P330+P331": ["P331"],
  P331: ["P301+P330+P331"],
  P310: ["P311", "P312"],
  P311: ["P312"],
  P316: ["P317"],
  P201: ["P202"],
  "P308+P311": ["P311", "P312", "P314"],
  "P308+P313": ["P314"],
  "P308+P316": ["P316", "P317", "P319"],
  P318: ["P319"],
  "P361+P364": ["P362+P364"],
  "P403+P233": ["P233"],
};
/** Out of children's reach is as good as locked up, unless what is in there is grave. */
const SAID_BY_REACH: readonly PrecautionaryCode[] = ["P405"];

/** Taken before anything else where aspiration threatens. */
const SWALLOWED_OIL: readonly PrecautionaryCode[] = ["P301+P310", "P301+P316", "P331"];

/** Weight of a recommendation: highly recommended counts twice recommended, that twice optional. */
const WEIGHTS: Readonly<Record<Recommendation, number>> = { 0: 0, 1: 1, 2: 2, 3: 4 };
/** A general statement weighs less than anything that answers a hazard. */
const GENERAL_WORTH = 0.001;

interface Answer {
  readonly finding: Finding;
  readonly recommended: Recommendation;
  readonly worth: number;
}

/** Names under which a hazard may stand in the table of answers, the most exact first. */
function namesOf({ hazardClass, route }: Pick<Finding, "hazardClass" | "route">): string[] {
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

/**
 * How strongly a statement is recommended for a hazard.
 * @returns undefined where the law does not give it to the hazard; a general one says so by `name`.
 */
export function recommendation(
  { answers: table = {} }: PrecautionRow,
  hazard: Pick<Finding, "hazardClass" | "route">,
): { readonly name: string; readonly recommended: Recommendation } | undefined {
  const name = namesOf(hazard).find((each) => Object.hasOwn(table, each));
  const recommended = name === undefined ? undefined : table[name];
  return name === undefined || recommended === undefined ? undefined : { name, recommended };
}

function answers(row: PrecautionRow, findings: readonly Finding[]): Answer[] {
  return findings.flatMap((finding) => {
    const found = recommendation(row, finding);
    if (found === undefined) return [];
    const { name, recommended } = found;
    return {
      finding,
      recommended,
      worth:
        name === "any"
          ? GENERAL_WORTH
          : WEIGHTS[recommended] * classElements(finding.hazardClass).gravity,
    };
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
  const grave = findings.filter(({ hazardClass }) => isGrave(hazardClass));
  const open = new Map(
    choosablePrecautions(rows)
      .filter((row) => stands(row, use))
      .map((row) => [row.code, answers(row, findings)] as const)
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
    [code, ...saidBy(code, grave.length > 0)].forEach((said) => open.delete(said));
  }

  function takeWorthiest(isMeant: (found: readonly Answer[]) => boolean = () => true): boolean {
    let best: { readonly code: PrecautionaryCode; readonly worth: number } | undefined;
    for (const [code, found] of open) {
      if (!isMeant(found)) continue;
      const worth = found.reduce(
        (sum, answer) => sum + answer.worth * left(code, answer.finding),
        0,
      );
      if (best === undefined || worth > best.worth) best = { code, worth };
    }
    if (best === undefined) return false;
    take(best.code, "by-severity", true);
    return true;
  }

  if (use.publicSale) {
    if (open.has("P102")) take("P102", "children-first", false);
    if (open.has("P501")) take("P501", "disposal-for-the-public", false);
  }
  // Of what can be drawn into the lungs: vomit is the very thing that kills, and help is called at once.
  if (open.has("P331"))
    for (const code of SWALLOWED_OIL) if (open.has(code)) take(code, "by-severity", true);
  while (takeWorthiest((found) => found.some(isEssential)));
  while (chosen.length < PRECAUTIONS_AT_MOST && takeWorthiest());
  if (grave.length > 0)
    for (const nature of natures(findings)) {
      if (chosen.some((each) => speaksOf(each, nature))) continue;
      takeWorthiest((found) =>
        found.some(
          ({ recommended, finding }) => recommended === 3 && natureOf(finding.statement) === nature,
        ),
      );
    }
  return chosen.toSorted((one, other) => (one.statement < other.statement ? -1 : 1));
}

/** Statements that add nothing to one that was chosen. */
function saidBy(code: PrecautionaryCode, isGraveLabel: boolean): readonly PrecautionaryCode[] {
  if (code === "P102") return isGraveLabel ? [] : SAID_BY_REACH;
  return SAID_BY[code] ?? [];
}

/** What a grave hazard may not do without. */
function isEssential({ recommended, finding }: Answer): boolean {
  return recommended === 3 && isGrave(finding.hazardClass);
}

/** "H2" of fire, "H3" of health, "H4" of the environment. */
function natureOf(statement: string): string {
  return statement.slice(0, 2);
}

function speaksOf({ rule, values }: ChosenPrecaution, nature: string): boolean {
  return rule === "by-severity" && values.answers.some((code) => natureOf(code) === nature);
}

function natures(findings: readonly Finding[]): ReadonlySet<string> {
  return new Set(findings.map(({ statement }) => natureOf(statement)));
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
