/** What is added to the project by its kind: which files it is, and what tells whether something of it is missing. */
export interface AddedKind {
  readonly name: string;
  /** A file that makes it one of this kind. */
  readonly isOf: RegExp;
  /** Where the compiler complains of words that are missing, though these files were not edited. */
  readonly wordsIn?: string;
  /** A program that writes what follows from it. */
  readonly writer?: string;
  /** As `npx vitest run --project units` takes them. */
  readonly tests: readonly string[];
}

/** What it is printed as: sentences and rows may push a sheet onto a third page. */
const ON_SHEETS = ["test/sheet/statements-list.test.ts", "test/print/sheet-layout.test.ts"];

export const RULE: AddedKind = {
  name: "a rule",
  isOf: /^lib\/(?:drying|formulation|lots|permanence|hazard\/studio|words\/rulings)\/.*\.ts$/,
  wordsIn: "lib/words/rulings",
  tests: ["test/present/statements-", "test/hazard/studio-cautions.test.ts", ...ON_SHEETS],
};

export const ADDED_KINDS: readonly AddedKind[] = [
  {
    name: "a pigment, or a table's row",
    isOf: /^lib\/.*\.(?:csv|yaml)$/,
    tests: ["test/knowledge/"],
  },
  {
    name: "a figure",
    isOf: /^lib\/(?:sheet|words\/figures)\/|^lib\/words\/(?:methods|absence|units)\.ts$/,
    wordsIn: "lib/words/figures",
    writer: "test/package/write-contract.ts",
    tests: [
      "test/sheet/found.test.ts",
      "test/sheet/by-hand.test.ts",
      "test/sheet/shared-roots.test.ts",
      "test/sheet/filled-figures.test.ts",
      "test/sheet/rests-on-records.test.ts",
      "test/words/methods.test.ts",
      "test/package/contract-changes.test.ts",
      ...ON_SHEETS,
    ],
  },
  RULE,
  {
    name: "a section",
    isOf: /^lib\/sheet\/sheet\.ts$|^lib\/pages\/(?:bench-page|sheet-sections)\.ts$/,
    tests: ["test/pages/section-table.test.ts", "test/print/sheet-layout.test.ts"],
  },
  {
    name: "a page",
    isOf: /^lib\/(?:pages\/text-pages|site\/all-pages|workshop\/workshop-pages)\.ts$|^templates\/pages\//,
    tests: ["test/templates/hostile-text.test.ts", "test/package/readme-reference.test.ts"],
  },
  {
    name: "a page's text",
    isOf: /^lib\/(?:pages|words\/pages)\//,
    tests: ["french", "german", "spanish"].map((language) => `test/words/${language}.test.ts`),
  },
];

/** Kinds of what was edited. */
export function addedKinds(edited: readonly string[]): readonly AddedKind[] {
  return ADDED_KINDS.filter(({ isOf }) => edited.some((file) => isOf.test(file)));
}

/** How many files were edited, and of what kinds they are. */
export function whatIsAdded(edited: readonly string[], kinds: readonly AddedKind[]): string {
  const count = `${edited.length} ${edited.length === 1 ? "file" : "files"}`;
  return kinds.length === 0
    ? `${count}, of no kind that has tests of its own: types, lint and edited tests alone`
    : `${count}: ${kinds.map(({ name }) => name).join("; ")}`;
}

/** The part of vitest's JSON report that says what failed. */
export interface FaultReport {
  readonly testResults: readonly {
    readonly name: string;
    readonly message: string;
    readonly status: string;
    readonly assertionResults: readonly {
      readonly status: string;
      readonly title: string;
      readonly failureMessages?: readonly string[];
    }[];
  }[];
}

/** What is missing, a line each: the test's file, its name and what it found. */
export function faultLines({ testResults }: FaultReport): string[] {
  return testResults.flatMap(({ name, message, status, assertionResults }) => {
    const file = name.replace(/^.*\/(?=test\/)/, "").replace(/\.js$/, "");
    const failed = assertionResults.filter((one) => one.status === "failed");
    if (failed.length === 0) return status === "failed" ? [`${file}: ${inOneLine(message)}`] : [];
    return failed.map(
      ({ title, failureMessages: [told = ""] = [] }) => `${file}: ${title}: ${inOneLine(told)}`,
    );
  });
}

/** What an error says, without where it was thrown: on one line, as long as one that is read. */
function inOneLine(text: string): string {
  const [said = ""] = text.split(/\n\n|\n +at /);
  return said
    .replace(/^\w*Error: /, "")
    .replace(/\s+/g, " ")
    .slice(0, 400);
}
