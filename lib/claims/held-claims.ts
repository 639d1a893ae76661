import type { Diagnostic } from "../diagnostics/diagnostic.ts";
import { errorAt } from "../records/fault.ts";
import type { Answer, Records } from "../records/records.ts";
import { claimVerdict } from "./claim-verdict.ts";
import { isPrivatePath } from "../sheet/figure-table.ts";
import { pathParts, type FigureIndex } from "./figure-index.ts";
import { distinctRoots, type RecordRoot, type RootsOf } from "./record-roots.ts";
import { newestRoot, type DatedRoot } from "./root-dates.ts";
import type { Verdict } from "./verdict.ts";

/** One claim of an answer, held against today's sheets, with the records that it rests on. */
export interface HeldClaim extends Verdict {
  /** What it speaks of, colour first. */
  readonly paths: readonly string[];
  readonly roots: readonly RecordRoot[];
  /** Whether it speaks of what is the workshop's alone: held as any other, and not published. */
  readonly isPrivate: boolean;
  /** The newest of them; absent where none is dated. */
  readonly newest?: DatedRoot;
}

/** An answer with its claims held. */
export interface HeldAnswer {
  readonly answer: Answer;
  readonly claims: readonly HeldClaim[];
}

export function heldAnswer(
  answer: Answer,
  index: FigureIndex,
  rootsOf: RootsOf,
  records: Records,
): HeldAnswer {
  return {
    answer,
    claims: (answer.record.claims ?? []).map((claim) => {
      const verdict = claimVerdict(claim, index);
      const paths =
        "every" in claim
          ? index.sheets.map(({ slug }) => `${slug}.${claim.every}`)
          : "fact" in claim
            ? [claim.fact]
            : verdict.figures.map(({ sheet, leaf }) => `${sheet.slug}.${leaf.path}`);
      const roots = distinctRoots(paths.flatMap((path) => rootsOf(path)));
      const newest = newestRoot(roots, records);
      const isPrivate = paths.some((path) => isPrivatePath(pathParts(path).figure));
      return { ...verdict, paths, roots, isPrivate, ...(newest !== undefined && { newest }) };
    }),
  };
}

/** What is wrong with its claims, which is little and names no line. */
export interface FaultsOfAnswer extends Pick<HeldAnswer, "answer"> {
  readonly claims: readonly Pick<HeldClaim, "faults" | "newest">[];
}

/** Every claim that does not hold, at its line, with the newest record that it rests on: there something has changed. */
export function claimDiagnostics({ answer, claims }: FaultsOfAnswer): Diagnostic[] {
  return claims.flatMap(({ faults, newest }, i) =>
    faults.map(({ rule, key, hint, ...fault }): Diagnostic =>
      errorAt(answer.place(["claims", i, key]), rule, {
        ...fault,
        hint:
          hint ??
          (newest &&
            `newest record that it rests on: ${newest.root.kind} ${newest.root.slug}, ${newest.date}`),
      }),
    ),
  );
}
