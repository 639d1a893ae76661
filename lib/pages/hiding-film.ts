import { isKnown } from "../quantities/figure.ts";
import { ends } from "../quantities/interval.ts";
import { evidenceOf } from "../sheet/figure-places.ts";
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

/** Whether a colour surely has little body, by which its class goes, though a film of it hides a chart. */
export function glazesThoughItHides({
  optics: { opacityClass, scatteringPower },
}: Pick<Sheet, "optics">): boolean {
  return (
    isKnown(opacityClass) &&
    [opacityClass.value, ...(opacityClass.reaches ?? [])].every((word) =>
      ["transparent", "semi-transparent"].includes(word),
    ) &&
    evidenceOf(opacityClass).includes(scatteringPower)
  );
}
