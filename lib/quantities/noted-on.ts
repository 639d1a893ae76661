/** Gives back what it is handed, so that a class below it puts its private field on that. */
const Given = function (of: object): object {
  return of;
} as unknown as new (of: object) => object;

/** One note on each of some things: it goes with the thing, and shows in nothing that is made of it, no copy, text or clone. */
export interface NotesOn<Of extends object, V> {
  readonly has: (of: object) => boolean;
  readonly get: (of: Of) => V | undefined;
  /** A later note takes the place of the one before. */
  readonly set: (of: Of, note: V) => void;
}

/**
 * Notes in a private field of the things themselves. A range has a million figures, and in a WeakMap of
 * so many each sweep of the heap goes through all of them, again and again until nothing more is found alive.
 */
export function notesOn<Of extends object, V>(): NotesOn<Of, V> {
  class Noted extends Given {
    #note: V;

    constructor(of: object, note: V) {
      super(of);
      this.#note = note;
    }

    static has(of: object): boolean {
      return #note in of;
    }

    static get(of: object): V | undefined {
      return #note in of ? of.#note : undefined;
    }

    static set(of: object, note: V): void {
      if (#note in of) of.#note = note;
      else new Noted(of, note);
    }
  }
  return Noted;
}
