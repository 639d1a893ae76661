import type { DrierRow } from "../../drying/added-drier.ts";
import type { DryingCause } from "../../drying/chemistry-drying.ts";
import type { MediumChange } from "../../drying/medium-in-paint.ts";
import type { DryingStatement } from "../../drying/statements.ts";
import { ends } from "../../quantities/interval.ts";
import type { ValuesOf, WordingsOf } from "../../quantities/statement.ts";
import { CHEMISTRY_NAMES, DRYING_WORDS, inGerman, METAL_NAMES, OIL_NAMES } from "./closed-sets.ts";
import {
  bracketed,
  dayCount,
  degrees,
  listed,
  micrometres,
  namesWithin,
  percent,
  sentence,
  significant,
  timesTheDays,
  within,
  withUnit,
} from "./phrases.ts";

/** Why a pigment slows drying, after a colon. */
const CAUSES: Readonly<Record<DryingCause, string>> = {
  "catalyses oxidation": "es hilft dem Öl, Sauerstoff aufzunehmen",
  "takes no part": "es ist unbeteiligt",
  "binds into soaps": "es bildet mit dem Öl Seifen",
  "takes up radicals":
    "sein Kohlenstoff fängt die Radikale, durch die Öl trocknet, und nimmt Trockenstoff auf",
  "brings no drying metal": "es bringt kein Metall mit, das Öl trocknet",
};

const ACTS: Readonly<Record<DrierRow["acts"], string>> = {
  surface: "trocknet von der Oberfläche her",
  through: "trocknet durch",
  auxiliary: "hilft den anderen Trockenstoffen",
};

const CONDITIONS = { filmThicknessUm: "Filmdicke", temperatureC: "Temperatur" } as const;

const CHANGES: Readonly<Record<MediumChange, string>> = {
  drying: "die Trocknung",
  finish: "den Glanzgrad",
  "fat over lean": "fett auf mager",
  yellowing: "die Vergilbung",
};

type Of<R extends DryingStatement["rule"]> = ValuesOf<DryingStatement, R>;

/** Days to touch dry, layers, and the film with age. */
export const DRYING_RULINGS: WordingsOf<DryingStatement> = {
  "drying-class": ({ dryingClass, ...days }) =>
    sentence(`${DRYING_WORDS[dryingClass]}: ${classed(days)}`),
  "drying-class-by-the-middle": ({ dryingClass, ...days }) =>
    sentence(`${DRYING_WORDS[dryingClass]}, nach der Mitte des Bereichs: ${classed(days)}`),
  "pigment-chemistry-unknown": ({ pigments }) =>
    pigments.length === 0
      ? "Kein Pigment ist aufgezeichnet, die Trocknung lässt sich daher nicht errechnen."
      : `Wie ${namesWithin(pigments)} auf die Trocknung des Öls wirkt, wissen wir nicht.`,
  "linseed-oil-alone": ({ days }) =>
    `Leinöl allein ist in ${dayCount(days, "dative")} grifftrocken.`,
  "linseed-sets-the-days": (oil) => sentence(`${oilShare(oil)} gibt die Tage vor`),
  "oil-slower-than-linseed": ({ days, acting, ...oil }) =>
    `${sentence(`${oilShare(oil)} trocknet langsamer als Leinöl (allein ${dayCount(days)})`)}${acting === undefined ? "" : ` Davon zählen ${percent(acting)}: die Pigmente bremsen die Farbe schon, und beides vervielfacht sich nicht.`}`,
  "vehicle-not-stated": ({ factor }) =>
    `Das Öl ist nicht aufgezeichnet: Leinöl ist das schnellste, und das langsamste ergibt ${timesTheDays(factor)}.`,
  "pigment-speeds-drying": (v) => speeds(pigmentShare(v), v),
  "white-speeds-drying": (v) => speeds(theWhite(v), v),
  "pigment-slows-drying": (v) => slows(pigmentShare(v), v),
  "white-slows-drying": (v) => slows(theWhite(v), v),
  "pigment-takes-no-part-in-drying": (v) => takesNoPart(pigmentShare(v), v),
  "white-takes-no-part-in-drying": (v) => takesNoPart(theWhite(v), v),
  "brown-earth-not-told": (v) =>
    sentence(
      `${pigmentShare(v)} kann eine Umbra oder eine Siena sein, und ob Mangan darin ist, das Öl trocknet, ist nicht aufgezeichnet: die Tage umfassen beides (${alone(v)})`,
    ),
  "pigment-parts-not-recorded": ({ pigments, daysInLinseed }) =>
    `Wie viel von ${namesWithin(pigments)} darin ist, ist nicht aufgezeichnet: die Tage reichen von denen des schnelleren allein bis zu denen des langsameren (in Leinöl ${dayCount(daysInLinseed)}).`,
  "part-as-tried": (v) =>
    sentence(
      `${partShare(v)}: allein in ${dayCount(v.daysAlone, "dative")} grifftrocken, wie hier erprobt`,
    ),
  "part-by-the-rules": (v) =>
    sentence(
      `${partShare(v)}: allein in ${dayCount(v.daysAlone, "dative")} grifftrocken, nach Faustregel`,
    ),
  "added-drier": (v) => sentence(`${drier(v)} ${ACTS[v.acts]}`),
  "carbon-takes-up-drier": (v) =>
    sentence(`${drier(v)} ${ACTS[v.acts]}, doch Kohlenstoff nimmt bis zur Hälfte davon auf`),
  "film-as-classed": ({ filmThicknessUm }) =>
    `Errechnet für einen Nassfilm von ${micrometres(filmThicknessUm)}.`,
  "thick-film-slows": (v) => film(v),
  "thin-film-speeds": (v) => film(v),
  "temperature-as-classed": ({ temperatureC }) => `Errechnet für ${degrees(temperatureC)}.`,
  "cold-slows": (v) => room(v),
  "warmth-speeds": (v) => room(v),
  "trial-decides": (v) => sentence(trial(v)),
  "trial-decides-for-its-own-film": (v) =>
    sentence(`${trial(v)}; das gilt für diesen Film und diesen Raum`),
  "trial-without-conditions": (v) =>
    sentence(
      `${trial(v)}; ${listed(v.wanting.map((key) => CONDITIONS[key]))} nicht aufgezeichnet, daher wissen wir nicht, wofür das gilt`,
    ),
  "trial-slower-than-expected": (v) =>
    `Der Versuch war langsamer als die Faustregel: ${beside(v)}.`,
  "trial-faster-than-expected": (v) =>
    `Der Versuch war schneller als die Faustregel: ${beside(v)}.`,
  "touch-dry-is-not-through-dry": ({ monthsBeforeVarnish }) =>
    `Nach altem Brauch wartet ein Bild ${significant(monthsBeforeVarnish, 2)} Monate auf seinen Firnis. Auch dann ändert es sich noch.`,
  "skins-and-stays-soft": (v) =>
    sentence(
      `${pigmentShare(v)} bildet eine Haut und bleibt darunter weich, ein dicker Strich kann daher runzeln`,
    ),
  "driers-customary": ({ pigment }) =>
    `Bei ${within(pigment)} setzen Hersteller oft Trockenstoff zu; in dieser Farbe ist keiner aufgezeichnet.`,
  "drier-is-lost-in-the-tube": ({ metals }) =>
    `In der Tube nimmt Kohlenstoff weiter Trockenstoff auf (${listed(metals.map((metal) => METAL_NAMES[metal]))}): lange gelagerte Farbe kann langsamer trocknen als frische.`,
  "holds-medium-not-known": ({ mediums, changes }) =>
    `Wie sich ${namesWithin(mediums)} auf ${CHANGES[changes]} auswirkt, wissen wir nicht.`,

  "lean-film": (v) => `Mager${oilOfFilm(v)}.`,
  "medium-fat-film": (v) => `Mittelfett${oilOfFilm(v)}.`,
  "fat-film": (v) => `Fett${oilOfFilm(v)}.`,
  "zinc-out-of-underlayers": () =>
    "Nicht für untere Schichten; in den oberen Schichten dünn auftragen.",
  "fast-and-fat-thinly-below": () =>
    "Für untere Schichten, dünn: sie trocknet schnell, ist aber fett; was darüber kommt, muss ebenso fett oder fetter sein.",
  "fast-for-lower-layers": () => "Für untere Schichten: sie trocknet schnell.",
  "medium-for-any-layer": () =>
    "Für jede Schicht über trockener Farbe. In den oberen Schichten etwas Malmittel zugeben, damit jede so fett ist wie die darunter.",
  "slow-but-lean-dry-it-through": () =>
    "Für obere Schichten: durchtrocknen lassen, bevor darüber gemalt wird, und über fetterer Farbe etwas Malmittel zugeben.",
  "slow-for-last-layers": () =>
    "Für die letzten Schichten: bis sie durchgetrocknet ist, nichts darüber, was schneller trocknet.",
  "oil-over-acrylic-ground": () =>
    "Einen Acrylgrund einige Tage trocknen lassen, bevor Sie in Öl darauf malen; grifftrocken genügt nicht.",
  "never-acrylic-over-oil": () => "Niemals Acryl über Öl malen.",
  "oil-ground-through-dry-first": () =>
    "Einen Ölgrund durchtrocknen lassen, bevor Sie darauf malen.",
  "absorbent-ground-draws-oil": () =>
    "Ein Grund aus Leim und Kreide zieht Öl aus der Farbe, und die Farbe schlägt ein.",
  "rigid-support-for-brittle-ground": () =>
    "Ein Grund aus Leim und Kreide ist spröde: auf einem starren Malgrund verwenden.",

  "zinc-makes-brittle": (v) => sentence(`${pigmentShare(v)} macht den Film mit dem Alter spröde`),
  "zinc-soaps-may-part-layers": (v) =>
    sentence(
      `${pigmentShare(v)} bildet mit dem Öl Seifen, und Farbe über unteren Schichten mit Zink ist schon gerissen und abgeblättert`,
    ),
  "lead-makes-tough": (v) => sentence(`${pigmentShare(v)} macht den Film zäh und biegsam`),
  "lead-soaps": (v) =>
    sentence(
      `${pigmentShare(v)} bildet mit dem Öl Seifen, die den Film mit dem Alter durchscheinender machen, Körner durch ihn treiben oder ihn mit einem weißen Schleier trüben können`,
    ),
  "oil-rich-wrinkles-when-thick": ({ oilVolumeFraction, from }) =>
    `${ends(oilVolumeFraction)[0] < from ? "Sie kann reich an Öl sein" : "Reich an Öl"} (${percent(oilVolumeFraction)} des trockenen Films nach Volumen): ab ${percent(from)} kann ein dicker Strich runzeln.`,
  "sinks-in-on-absorbent-ground-alone": () => `Sie schlägt nur auf saugendem Grund ein.`,
  "sinks-in-easily": () => `Sie schlägt leicht ein, in matten Flecken: sie hat wenig Öl übrig.`,
  "may-sink-in": () =>
    `Sie kann einschlagen, in matten Flecken, wenn sie so wenig Öl hat, wie die Schätzung zulässt.`,
  "dull-of-itself": () => `Sie ist von Natur aus matt: Einölen macht sie nicht glänzend.`,
  "may-be-dull-of-itself": () =>
    `Sie kann von Natur aus matt sein, wenn sie so wenig Öl hat, wie die Schätzung zulässt; dann macht Einölen sie nicht glänzend.`,
  "oiling-out": () =>
    "Wo sie beim Malen eingeschlagen ist, bringt Einölen die Tiefe zurück: ein wenig Öl auf den trockenen Film reiben und abwischen. Ein Bild nicht so abschließen, sondern mit Firnis.",
  "yellows-most": ({ oil }) =>
    `${OIL_NAMES[oil]} vergilbt von den trocknenden Ölen am meisten und gibt den zähesten Film.`,
  "yellows-less": ({ oil }) => `${OIL_NAMES[oil]} vergilbt weniger als gewöhnliches Leinöl.`,
  "yellows-least": ({ oil }) =>
    `${OIL_NAMES[oil]} gehört zu den Ölen, die am wenigsten vergilben, und gibt einen schwächeren, langsamer trocknenden Film.`,
  "drier-above-customary": ({ metal, percentOnOil, customaryPercent }) =>
    `${withUnit(significant(percentOnOil, 2), "%")} ${METAL_NAMES[metal]} auf Öl ist mehr als die üblichen ${withUnit(significant(customaryPercent, 2), "%")}: der Film kann eine Haut bilden und runzeln.`,
  "surface-drier-alone": ({ metals }) =>
    `${listed(metals.map((metal) => METAL_NAMES[metal]))} ${metals.length > 1 ? "trocknen" : "trocknet"} von der Oberfläche her, ohne einen Trockenstoff, der durchtrocknet: ein dicker Strich kann runzeln.`,
};

function classed({
  touchDryDays,
  filmThicknessUm,
  temperatureC,
}: Omit<Of<"drying-class">, "dryingClass">): string {
  return `grifftrocken in ${dayCount(touchDryDays, "dative")} (Nassfilm von ${micrometres(filmThicknessUm)} bei ${degrees(temperatureC)})`;
}

function oilShare({ oil, massFraction }: Of<"linseed-sets-the-days">): string {
  return `${OIL_NAMES[oil]}${shareOf(massFraction, "des Öls")}`;
}

function shareOf(massFraction: number | undefined, whole: string): string {
  return massFraction !== undefined && massFraction < 1
    ? bracketed(`${percent(massFraction)} ${whole}`)
    : "";
}

type NamedShare = Pick<Acting, "pigment" | "massFraction">;

function pigmentShare({ pigment, massFraction }: NamedShare): string {
  return `${within(pigment)}${shareOf(massFraction, "des Pigments")}`;
}

function partShare({ part, ...share }: Of<"part-as-tried">): string {
  return pigmentShare({ ...share, pigment: part });
}

function theWhite({ pigment, massFraction }: NamedShare): string {
  return `das Weiß${bracketed(
    within(pigment),
    massFraction === undefined ? undefined : `${percent(massFraction)} des Pigments`,
  )}`;
}

function alone({ daysInLinseed }: Pick<Acting, "daysInLinseed">): string {
  return `allein in Leinöl ${dayCount(daysInLinseed)}`;
}

type Acting = Of<"pigment-speeds-drying" | "white-speeds-drying" | "pigment-slows-drying">;

function speeds(subject: string, v: Acting): string {
  return sentence(
    `${subject} beschleunigt die Trocknung (${inGerman(CHEMISTRY_NAMES, v.chemistry)}): ${CAUSES[v.cause]} (${alone(v)})`,
  );
}

function slows(subject: string, v: Acting): string {
  return sentence(`${subject} verlangsamt die Trocknung: ${CAUSES[v.cause]} (${alone(v)})`);
}

function takesNoPart(subject: string, v: Acting): string {
  return sentence(`${subject} ist an der Trocknung unbeteiligt (${alone(v)})`);
}

function drier({ metal, percentOnOil }: Of<"added-drier">): string {
  return `${METAL_NAMES[metal]}-Trockenstoff (${withUnit(significant(percentOnOil, 2), "%")} Metall auf Öl)`;
}

function film({ filmThicknessUm, classFilmUm, factor }: Of<"thick-film-slows">): string {
  return `Ein Film von ${micrometres(filmThicknessUm)} statt ${micrometres(classFilmUm)}: ${timesTheDays(factor)}.`;
}

function room({ temperatureC, classTemperatureC, factor }: Of<"cold-slows">): string {
  return `Bei ${degrees(temperatureC)} statt ${degrees(classTemperatureC)}: ${timesTheDays(factor)}.`;
}

function trial({
  touchDryDays,
  throughDryDays,
  filmThicknessUm,
  temperatureC,
  humidityPercent,
  toldBy,
}: Of<"trial-decides">): string {
  const through =
    throughDryDays === undefined
      ? ""
      : `, durchgetrocknet in ${dayCount(throughDryDays, "dative")}`;
  const whose =
    toldBy === undefined ? "eigener Versuch der Werkstatt" : "Versuch nach Angabe anderer";
  return `${whose}: grifftrocken in ${dayCount(touchDryDays, "dative")}${through}${bracketed(
    filmThicknessUm === undefined ? undefined : micrometres(filmThicknessUm),
    temperatureC === undefined ? undefined : degrees(temperatureC),
    humidityPercent === undefined
      ? undefined
      : `${withUnit(significant(humidityPercent, 2), "%")} Luftfeuchte`,
  )}`;
}

function beside({ touchDryDays, expectedDays }: Of<"trial-slower-than-expected">): string {
  return `grifftrocken in ${dayCount(touchDryDays, "dative")} gegen ${significant(expectedDays, 2)}`;
}

function oilOfFilm({ oilVolumeFraction }: Of<"lean-film">): string {
  const judged = typeof oilVolumeFraction === "number" ? "" : ", nach der Mitte der Schätzung";
  return `${judged}: Öl ${percent(oilVolumeFraction)} des trockenen Films nach Volumen`;
}
