/** Why a figure is missing and what would be needed, in German. */
import type { NotStated } from "../../quantities/figure.ts";
import { upperFirst } from "../letter-case.ts";

/** Reasons as the sections of a sheet give them; one that is not here stands as it is given. */
const REASONS: Readonly<Record<string, string>> = {
  "not in the records": "nicht in den Aufzeichnungen",
  "no oil in the records": "kein Öl in den Aufzeichnungen",
  "not exposed here": "hier nicht belichtet",
  "not exposed here, and no category is stated":
    "hier nicht belichtet, und keine Kategorie ist angegeben",
  "no blue wool reference is stated": "keine Stufe der Blauwollskala ist angegeben",
  "nothing is known of its pigments in light":
    "über das Verhalten der Pigmente im Licht ist nichts bekannt",
  "not needed: it was exposed, or is stated": "nicht nötig: belichtet oder angegeben",
  "no drawdown of known thickness over black and white":
    "kein Aufstrich bekannter Dicke über Schwarz und Weiß",
  "it was drawn down over black and white, but the thickness of that film is not recorded":
    "über Schwarz und Weiß aufgestrichen, doch die Dicke dieses Films ist nicht aufgezeichnet",
  "its films tell nothing of hiding": "die Filme sagen nichts über das Decken",
  "the workshop names no colour to reckon strength against":
    "die Werkstatt nennt keine Bezugsfarbe für die Farbstärke",
  "what a white or an extender does shows in a dark colour let down in it":
    "was ein Weiß oder ein Füllstoff tut, zeigt eine dunkle Farbe, die damit aufgehellt ist",
  "no let-downs from which strength can be fitted":
    "keine Aufhellungen, aus denen sich die Farbstärke anpassen ließe",
  "no let-down in a white of the reference": "keine Aufhellung in einem Weiß der Bezugsfarbe",
  "not even 5 mm hides": "nicht einmal 5 mm decken",
  "its let-downs tell how much it scatters beside its whites, and not how much a film of it does":
    "die Aufhellungen sagen, wie stark sie gegenüber ihren Weiß streut, und nicht, wie stark ein Film von ihr",
  "neither its films nor let-downs tell how much it scatters":
    "weder Filme noch Aufhellungen sagen, wie stark sie streut",
  "too dark for a class by contrast ratio, and how much it scatters is not told":
    "zu dunkel für eine Klasse nach Kontrastverhältnis, und wie stark sie streut, ist nicht bekannt",
  "how much metal is in it is not recorded": "wie viel Metall darin ist, ist nicht aufgezeichnet",
  "its paints were not weighed": "die Farben darin wurden nicht gewogen",
  "how its pigment acts on drying oil is not known here":
    "wie das Pigment auf trocknendes Öl wirkt, ist hier nicht bekannt",
  "the white is recorded as a pigment, not as a paint":
    "das Weiß ist als Pigment aufgezeichnet, nicht als Farbe",
  "its estimate reaches from gloss to matte": "die Schätzung reicht von glänzend bis matt",
  "it was weighed as paint, and how much of each paint is pigment is not recorded":
    "gewogen wurde Farbe, und wie viel Pigment in jeder ist, ist nicht aufgezeichnet",
  "the parts of its pigments are not in the record":
    "die Teile der Pigmente sind nicht aufgezeichnet",
  "the mixture itself was not let down in this white":
    "die Mischung selbst wurde in diesem Weiß nicht aufgehellt",
  "no trial to through dry": "kein Versuch bis durchgetrocknet",
};

/** Reasons that name something of the records. */
const NAMING: readonly (readonly [RegExp, (name: string) => string])[] = [
  [
    /^its strength does not compare with (.+)'s$/,
    (name) => `die Farbstärke lässt sich nicht mit der von ${name} vergleichen`,
  ],
  [/^no paint is made of (.+) alone$/, (name) => `aus ${name} allein ist keine Farbe gemacht`],
  [
    /^how (.+) stands in light is not known, and a mixture is as good as its weakest$/,
    (names) =>
      `das Verhalten von ${names} im Licht ist nicht bekannt, und eine Mischung ist so gut wie ihr schwächstes Pigment`,
  ],
];

/** Fields of records, as a path ends. */
const FIELDS: Readonly<Record<string, string>> = {
  densityGPerCm3: "Dichte",
  densityGPerMl: "Dichte",
  oilAbsorptionGPer100g: "Ölzahl",
  oilIndexGPer100g: "Ölindex",
  bulkDensityLooseGPerMl: "Schüttdichte, lose",
  bulkDensityTappedGPerMl: "Stampfdichte",
  sizeUm: "Teilchengröße",
  particleSizeUm: "Teilchengröße",
  finenessOfGrindUm: "Mahlfeinheit",
  gloss60: "Glanz bei 60\u00b0",
  parts: "Teile",
  tints: "Aufhellungen",
  films: "Filme",
  masstone: "Vollton",
  dryingTrials: "Trockenversuche",
  touchDryDays: "Tage bis grifftrocken",
  throughDryDays: "Tage bis durchgetrocknet",
  exposures: "Belichtungen",
  lightfastness: "Lichtechtheit",
  blueWool: "Blauwollskala",
  colours: "Farben",
  colourIndexName: "Colour-Index-Name",
  pigments: "Pigmente",
  vehicle: "Bindemittel",
  formula: "Formel",
  mineral: "Mineral",
  year: "Jahr",
  price: "Preis",
  body: "Konsistenz",
  oilSeparation: "Ölabscheidung",
  dispersion: "Anreiben",
};

/** A reason of several is joined by semicolons. */
export function absence({ reason, wanting }: Pick<NotStated, "reason" | "wanting">): string {
  const why = upperFirst(reason.split("; ").map(reasonInGerman).join("; "));
  return wanting.length === 0
    ? `${why}.`
    : `${why}; es fehlt: ${wanting.map(fieldWords).join(", ")}.`;
}

function reasonInGerman(reason: string): string {
  for (const [form, worded] of NAMING) {
    const [, name] = form.exec(reason) ?? [];
    if (name !== undefined) return worded(name);
  }
  return REASONS[reason] ?? reason;
}

/** The last part of a record path as words: `pigments.lamp-black.densityGPerCm3` is "Dichte (lamp black)". */
function fieldWords(path: string): string {
  const parts = path.split(".");
  const last = parts.at(-1) ?? path;
  const owner =
    parts.length > 2 && parts[0] === "pigments"
      ? ` (${(parts[1] ?? "").replaceAll("-", " ")})`
      : "";
  return `${FIELDS[last] ?? last}${owner}`;
}
