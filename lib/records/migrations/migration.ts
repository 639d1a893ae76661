import type { ContentFile } from "../content-tree.ts";
import type { TextEdit } from "./text-edit.ts";

/** One thing of a record that another version writes otherwise: where it stands, and what is to be done about it. */
export type Change = {
  /** Offset in the text that was looked at. */
  readonly at: number;
} & (
  | { readonly edits: readonly TextEdit[] }
  /** Why it can't be rewritten, as a sentence without its full stop. */
  | { readonly refused: string }
);

/**
 * What is to be done to a record's text: the YAML of a record, between its `---` lines where it has them, or a CSV.
 * A text that is in the new form already has no changes: so a folder that is half in either form can be rewritten.
 */
export type Rewriting = (text: string) => readonly Change[];

/** One text in the older form, what it becomes, and what that becomes on the way back where it is not the older text again. */
interface MigrationExample {
  readonly of: string;
  readonly older: string;
  readonly newer: string;
  readonly back?: string;
}

/** How records of one version become those of the next, and back. */
export interface Migration {
  /** The version that records are of afterwards. */
  readonly to: number;
  readonly folder: ContentFile["folder"];
  /** What becomes of each place, as a sentence without its full stop. */
  readonly words: { readonly up: string; readonly down: string };
  readonly up: Rewriting;
  readonly down: Rewriting;
  /** Its tests. */
  readonly examples: readonly MigrationExample[];
}
