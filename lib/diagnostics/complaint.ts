import type { Diagnostic } from "./diagnostic.ts";

/** A diagnostic still without its place: the record's reader knows that. */
export type Complaint = Omit<Diagnostic, "place">;
