import { statSync } from "node:fs";
import { fileState } from "./file-state.ts";

/** Values that this process read or kept last, each by its file: while the file is the same, it is not read again. */
export interface HeldValues {
  /** @param read reads the file, of which undefined says that it can't be used. */
  readonly of: (file: string, read: () => unknown) => unknown;
  /** A value is kept in a file. @param now the file, or the one aside that is moved into its place. */
  readonly hold: (file: string, value: unknown, now: string) => void;
}

export function heldValues(): HeldValues {
  const held = new Map<string, { readonly state: string; readonly value: unknown }>();
  const holdAs = (file: string, state: string | undefined, value: unknown): void => {
    if (state === undefined || value === undefined) held.delete(file);
    else held.set(file, { state, value });
  };
  return {
    hold: (file, value, now) => holdAs(file, stateOf(now), value),
    of: (file, read) => {
      const state = stateOf(file);
      const known = held.get(file);
      if (state !== undefined && known?.state === state) return known.value;
      const value = read();
      // Told by what it was before it was read: a file that took its place meanwhile is another.
      holdAs(file, state, value);
      return value;
    },
  };
}

/** Another after every writing: a file that is kept is never written in its place. */
function stateOf(file: string): string | undefined {
  const found = statSync(file, { bigint: true, throwIfNoEntry: false });
  return found && fileState(found);
}
