import { isKnown, weakestRoot, type Amount, type Known } from "../quantities/figure.ts";
import type { ClaimRecord } from "../records/schema/answer.ts";
import type { Family } from "../records/schema/terms.ts";
import {
  comparisonFault,
  quantityOf,
  rankFault,
  type Compared,
  type NumberClaim,
} from "./comparison.ts";
import { factAt, type Fact } from "./fact-at.ts";
import {
  lostHint,
  pathParts,
  type FigureIndex,
  type LostPath,
  type RangeFigure,
} from "./figure-index.ts";
import { plainText, type ClaimFault, type Verdict } from "./verdict.ts";

type FigureClaim = Extract<ClaimRecord, { figure: string }>;
type FactClaim = Extract<ClaimRecord, { fact: string }>;
type RangeClaim = Extract<ClaimRecord, { every: string }>;

/** Hold one claim against the sheets of a range. A claim that cannot be held at all has a fault like one that no longer holds. */
export function claimVerdict(claim: ClaimRecord, index: FigureIndex): Verdict {
  if ("every" in claim) return rangeVerdict(claim, index);
  return "fact" in claim ? factVerdict(claim, index) : figureVerdict(claim, index);
}

function figureVerdict(claim: FigureClaim, index: FigureIndex): Verdict {
  const faults: ClaimFault[] = [];
  const figures: RangeFigure[] = [];

  function known(path: string, key: string): Known<Amount> | undefined {
    const found = index.figure(path);
    if ("lost" in found) {
      faults.push(lostFault(path, key, found));
      return undefined;
    }
    figures.push(found);
    const { figure } = found.leaf;
    if (isKnown(figure)) return figure;
    if (!("is" in claim && claim.is === "not stated"))
      faults.push({
        rule: "claims/not-stated",
        key,
        message: `${path} is not stated, and the claim needs its figure`,
        actual: "not stated",
        expected: "a figure that is stated",
        hint: figure.reason,
      });
    return undefined;
  }

  function compared(path: string, key: string): Compared | undefined {
    const figure = known(path, key);
    const value = figure === undefined ? undefined : quantityOf(figure);
    if (figure !== undefined && value === undefined)
      faults.push({
        rule: "claims/kind",
        key,
        message: `${path} is ${plainText(figure.value)}, and only a number can be compared`,
        actual: plainText(figure.value),
        expected: "a figure that is a number",
      });
    return value === undefined ? undefined : { path, value };
  }

  if ("is" in claim) faults.push(...wordFaults(claim, known(claim.figure, "figure")));
  else {
    const own = compared(claim.figure, "figure");
    faults.push(
      ...("lowestOf" in claim || "highestOf" in claim
        ? rankFaults(claim, own, index, compared)
        : numberFaults(claim, own, compared)),
    );
  }
  faults.push(...standingFaults(claim, figures));
  return { claim, figures, colours: [...new Set(figures.map(({ sheet }) => sheet.slug))], faults };
}

function wordFaults(
  { figure: path, is }: Extract<FigureClaim, { is: unknown }>,
  figure: Known<Amount> | undefined,
): ClaimFault[] {
  if (figure === undefined || String(figure.value) === String(is)) return [];
  const actual = plainText(figure.value);
  return [
    {
      rule: "claims/word",
      key: "is",
      message: `${path} is ${actual}; the claim says ${is}`,
      actual,
      expected: String(is),
    },
  ];
}

/** A figure that can be compared, by its path; where there is none, what is wrong is noted at the key. */
type Comparing = (path: string, key: string) => Compared | undefined;

function rankFaults(
  claim: Extract<FigureClaim, { lowestOf: unknown } | { highestOf: unknown }>,
  own: Compared | undefined,
  index: FigureIndex,
  compared: Comparing,
): ClaimFault[] {
  if (own === undefined) return [];
  const [side, rivals] =
    "lowestOf" in claim
      ? (["lowestOf", claim.lowestOf] as const)
      : (["highestOf", claim.highestOf] as const);
  const against = rivalPaths(own.path, rivals, index).flatMap((path) => compared(path, side) ?? []);
  return against.length > 0
    ? optional(rankFault(side, own, against, claim.by))
    : [
        {
          rule: "claims/rank",
          key: side,
          message: `No other colour has the figure, so ${own.path} can't be ranked`,
          actual: "none",
          expected: `a colour beside ${pathParts(own.path).colour} that has the figure`,
        },
      ];
}

function numberFaults(
  claim: NumberClaim,
  own: Compared | undefined,
  compared: Comparing,
): ClaimFault[] {
  const [key, wanted] =
    "below" in claim
      ? (["below", claim.below] as const)
      : ["above", "above" in claim ? claim.above : undefined];
  const other = typeof wanted === "string" ? compared(wanted, key) : undefined;
  return own === undefined || (typeof wanted === "string" && other === undefined)
    ? []
    : optional(comparisonFault(claim, own, other));
}

/** Of a family those alone that have the figure; of named colours all of them, so that one without it is told. */
function rivalPaths(
  path: string,
  rivals: Family | readonly string[],
  { sheets, figure: at }: FigureIndex,
): string[] {
  const { colour, figure } = pathParts(path);
  if (typeof rivals !== "string")
    return rivals.filter((slug) => slug !== colour).map((slug) => `${slug}.${figure}`);
  return sheets
    .filter(({ slug, family }) => family === rivals && slug !== colour)
    .map(({ slug }) => `${slug}.${figure}`)
    .filter((other) => {
      const found = at(other);
      return "leaf" in found && isKnown(found.leaf.figure);
    });
}

/** A figure whose root is weaker than the prose can bear. */
function standingFaults(
  { standing: needed, figure: own }: FigureClaim,
  figures: readonly RangeFigure[],
): ClaimFault[] {
  if (needed === undefined) return [];
  return figures.flatMap(({ sheet, leaf: { path, figure } }): ClaimFault[] => {
    if (!isKnown(figure) || weakestRoot([figure.restsOn, needed]) === needed) return [];
    const actual =
      figure.standing === figure.restsOn
        ? figure.standing
        : `${figure.standing}, rests on a figure that is ${figure.restsOn}`;
    const expected = needed === "measured" ? "measured to the root" : `${needed} or better`;
    return [
      {
        rule: "claims/standing",
        key: "standing",
        message: `${sheet.slug}.${path} is ${actual}; the claim needs it ${expected}`,
        actual,
        expected,
        ...(`${sheet.slug}.${path}` !== own && { hint: `compared with ${own}` }),
      },
    ];
  });
}

function factVerdict(claim: FactClaim, index: FigureIndex): Verdict {
  const { colour, figure: path } = pathParts(claim.fact);
  const sheet = index.sheet(colour);
  if (sheet === undefined) {
    const found = index.figure(claim.fact);
    return {
      claim,
      figures: [],
      colours: [],
      faults: "lost" in found ? [lostFault(claim.fact, "fact", found)] : [],
    };
  }
  const at = factAt(sheet, path);
  const fault = "lost" in at ? lostFault(claim.fact, "fact", at) : factFault(claim, at.fact);
  return { claim, figures: [], colours: [colour], faults: optional(fault) };
}

/** No colour has it but those named, and each of these does. */
function rangeVerdict(claim: RangeClaim, index: FigureIndex): Verdict {
  const { every, lacks, but = [] } = claim;
  const unknown = but.filter((slug) => index.sheet(slug) === undefined);
  const faults = [
    ...unknown.map((slug) => lostFault(slug, "but", { lost: "colour" })),
    ...index.sheets.flatMap((sheet): ClaimFault[] => {
      const at = factAt(sheet, every);
      if ("lost" in at) return [lostFault(`${sheet.slug}.${every}`, "every", at)];
      const isExcepted = but.includes(sheet.slug);
      if ((Array.isArray(at.fact) && at.fact.includes(lacks)) === isExcepted) return [];
      return [
        otherFact(
          `${sheet.slug}.${every}`,
          isExcepted ? "but" : "lacks",
          printedFact(at.fact),
          isExcepted
            ? `${lacks} among them`
            : `no ${lacks} among them${but.length === 0 ? "" : ` in any colour but ${but.join(", ")}`}`,
        ),
      ];
    }),
  ];
  return { claim, figures: [], colours: but, faults };
}

function printedFact(fact: Fact): string {
  if (fact === null) return "nothing";
  if (typeof fact !== "object") return plainText(fact);
  return fact.length === 0 ? "none" : fact.join(", ");
}

function factFault(claim: FactClaim, fact: Fact): ClaimFault | undefined {
  const list = typeof fact === "object" && fact !== null ? fact : undefined;
  const printed = printedFact(fact);
  const fault = (key: string, actual: string, expected: string): ClaimFault =>
    otherFact(claim.fact, key, actual, expected);
  if ("is" in claim)
    return list === undefined && fact === claim.is
      ? undefined
      : fault("is", printed, claim.is === null ? "nothing" : String(claim.is));
  if ("count" in claim)
    return list?.length === claim.count
      ? undefined
      : fault(
          "count",
          list === undefined ? printed : `${list.length}: ${printed}`,
          String(claim.count),
        );
  if ("includes" in claim)
    return list?.includes(claim.includes) === true
      ? undefined
      : fault("includes", printed, `${claim.includes} among them`);
  return list?.includes(claim.lacks) === false
    ? undefined
    : fault("lacks", printed, `no ${claim.lacks} among them`);
}

function otherFact(path: string, key: string, actual: string, expected: string): ClaimFault {
  return {
    rule: "claims/fact",
    key,
    message: `${path} is ${actual}; the claim wants ${expected}`,
    actual,
    expected,
  };
}

function lostFault(path: string, key: string, found: LostPath): ClaimFault {
  const { colour, figure } = pathParts(path);
  const told = {
    colour: {
      rule: "claims/unknown-colour",
      message: `There is no colour ${colour} in colours/`,
      actual: colour,
      expected: "a file of colours/, without its ending",
    },
    member: {
      rule: "claims/absent-figure",
      message: `The sheet of ${colour} has no figure ${figure}`,
      actual: path,
      expected: `a figure that the sheet of ${colour} has`,
    },
    figure: {
      rule: "claims/unknown-figure",
      message: `No sheet has a figure ${path}`,
      actual: path,
      expected: "a figure path, as in the evidence of sheet.json",
    },
  } as const;
  return { key, ...told[found.lost], hint: lostHint(found) };
}

function optional<T>(value: T | undefined): T[] {
  return value === undefined ? [] : [value];
}
