import { isKnown } from "../quantities/figure.ts";
import { ends } from "../quantities/interval.ts";
import type { Sheet } from "../sheet/sheet.ts";

/** Dried thickness [um] beyond which nobody lays a coat so that it hides. Our own limit. */
const THICKEST_COAT_UM = 500;

/** Whether the film that hides is thicker than any that is laid to hide. */
export function isMoreThanACoat({ optics: { hidingFilmUm } }: Pick<Sheet, "optics">): boolean {
  return (
    isKnown(hidingFilmUm) &&
    hidingFilmUm.bound !== "at most" &&
    ends(hidingFilmUm.value)[0] > THICKEST_COAT_UM
  );
}
