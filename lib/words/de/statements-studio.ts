import { STATED_QUARTZ } from "../../hazard/studio/quartz.ts";
import { hazardEffects } from "../../hazard/texts/hazard-effect.ts";
import type { StudioStatement } from "../../hazard/statements.ts";
import type { BenchTestUse } from "../../hazard/studio/bench-test.ts";
import type { Quantity } from "../../quantities/interval.ts";
import type { WordingsOf } from "../../quantities/statement.ts";
import { upperFirst } from "../letter-case.ts";
import { inGerman, METAL_NAMES } from "./closed-sets.ts";
import { HAZARD_EFFECTS } from "./hazard-effects.ts";
import { bracketed, listed, micrometres, namesWithin, significant, withUnit } from "./phrases.ts";

const DUSTINESS = {
  "very dusty": "Ein stark staubendes Pulver",
  dusty: "Ein staubendes Pulver",
  "less dusty": "Ein schweres Pulver, das weniger staubt als die meisten",
  "not known":
    "Wie stark das Pulver staubt, ist nicht aufgezeichnet; behandeln Sie es als stark staubend",
} as const;
const NATURES = {
  "fine carbon": "Der Staub von feinem Kohlenstoff kann brennen.",
  organic: "Der Staub eines organischen Pigments kann brennen.",
  "not known": "Ob der Staub brennen kann, ist nicht bekannt; behandeln Sie ihn, als könnte er es.",
} as const;

/** What may hold quartz, as the table names it, after "Das ist". */
const QUARTZ_HOLDERS: Readonly<Record<string, string>> = {
  "natural sienna or umber": "natürliche Siena oder Umbra",
  "natural ochre": "natürlicher Ocker",
  "natural red earth": "natürliche rote Erde",
  "green earth": "Grüne Erde",
  "natural chalk or limestone": "natürliche Kreide oder Kalkstein",
  kaolin: "Kaolin",
  mica: "Glimmer",
  gypsum: "Gips",
  talc: "Talk",
  silica: "Kieselsäure",
};

/** Cautions of studio and workshop, then the reasons that stand after them, each a sentence of its own. */
export const STUDIO_WORDINGS: WordingsOf<StudioStatement> = {
  "captured-exhaust-first": (v) =>
    `${upperFirst(pigments(v))} nur dort abwiegen und anreiben, wo eine Absaugung den Staub erfasst, oder unter einer Abdeckung; eine Maske kommt noch dazu.`,
  "no-draught-across-powder": (v) =>
    `Keine Zugluft und kein Ventilator über dem Pulver: ${pigments(v)}.`,
  "respirator-ffp2": (v) =>
    `Bei ${pigmentsDative(v)} eine dicht sitzende Maske tragen, mindestens FFP2 oder N95, zusätzlich zur Absaugung und nie an ihrer Stelle.`,
  "respirator-p3": (v) =>
    `Bei ${pigmentsDative(v)} ein dicht sitzendes Atemschutzgerät mit P3- oder P100-Filter oder eine Maske FFP3 tragen, zusätzlich zur Absaugung und nie an ihrer Stelle.`,
  "no-ignition-source": (v) =>
    `Keine Flamme, keine Funken und keine andere Zündquelle in der Nähe: ${it(v)}.`,
  gloves: ({ pigments: of }) =>
    of === undefined ? "Handschuhe tragen." : `Handschuhe tragen bei ${namesWithin(of)}.`,
  "eye-protection": (v) => `Augen schützen vor ${itDative(v)}.`,
  "pregnant-or-nursing-keep-away": (v) =>
    `Wer schwanger ist oder sein kann oder stillt, hält sich fern von ${itDative(v)}.`,
  "workplace-lead-rules": (v) =>
    `Es gelten die Arbeitsschutzvorschriften für Blei (${it(v)}); örtliche Vorschriften und zugelassene Fachleute gehen vor.`,
  "children-keep-away": (v) => `Kinder fernhalten von ${itDative(v)}.`,
  "no-food-in-the-room": (v) =>
    `Nicht essen, trinken oder rauchen im selben Raum mit ${itDative(v)}.`,
  "no-food-no-brush-in-mouth": () =>
    "Kein Essen und Trinken neben der Farbe, und den Pinsel nicht mit dem Mund spitzen.",
  "not-on-skin-or-food": () =>
    "Nicht für den Gebrauch durch Kinder; nicht auf die Haut, nicht auf Lebensmittel oder was Lebensmittel berührt. Deckel schließen.",
  "work-clothes-apart": (v) =>
    `Kleidung, die bei der Arbeit mit ${pigmentsDative(v)} getragen wird, bleibt in der Werkstatt: vor dem Heimgehen umziehen, getrennt waschen und den Staub weder ausschütteln noch ausblasen.`,
  "fresh-air": () => "Den Raum lüften, während Sie malen und während die Farbe trocknet.",
  "no-dry-sanding": () => "Den Film nicht trocken schleifen: nass schleifen und aufwischen.",
  "never-sand-dry": () => "Den Film niemals trocken schleifen.",
  "no-spraying-no-heating": () => "Niemals sprühen und niemals erhitzen.",
  "spray-only-with-captured-exhaust": () =>
    "Nur sprühen, wo eine Absaugung den Nebel erfasst, und zusätzlich mit dicht sitzendem Atemschutz.",
  "no-heating-of-oil": () => "Weder Öl noch Farbe erhitzen.",
  "wet-wipe-no-sweeping": () =>
    "Nass aufwischen: nicht trocken fegen und keinen Haushaltsstaubsauger, nur einen mit Filter der Klasse H.",
  "wash-hands": () => "Nach der Arbeit und vor dem Essen Hände waschen.",
  "oily-rags": () =>
    "Lappen, Papier und Filter, mit trocknendem Öl getränkt, können sich selbst entzünden: einzeln im Freien ausbreiten, bis sie hart trocken sind, oder in Wasser in einer geschlossenen Metalldose aufbewahren, die täglich geleert wird; niemals in den Abfalleimer oder auf einen Haufen.",
  "not-down-the-drain": () => "Weder Farbe noch Öl noch Spülwasser gehören in den Ausguss.",
  "hazardous-waste": () =>
    "Reste sind gefährlicher Abfall: nach den örtlichen Vorschriften abgeben.",

  dustiness: ({
    class: of,
    bulkDensityLooseGPerMl: loose,
    bulkDensityTappedGPerMl: tapped,
    particleSizeUm,
  }) =>
    `${DUSTINESS[of]}${bracketed(bulk(loose, "lose"), bulk(tapped, "gestampft"), grain(particleSizeUm))}.`,
  "nuisance-dust": () => "Jeder feine Staub schadet der Lunge.",
  "dust-can-burn": ({ nature }) => NATURES[nature],
  "dust-goes-up-again": () => "Fegen bringt den Staub wieder in die Luft.",
  "film-turns-to-dust": () => "Schleifen macht den Film zu Staub.",
  "droplets-are-breathed-in": () => "Sprühnebel wird eingeatmet.",
  "holds-metal": ({ metals }) => `Enthält ${listed(metals.map(metalWord))}.`,
  "states-hazard": ({ statements }) => `${upperFirst(effects(statements))}.`,
  "hazard-data-missing": ({ ingredients }) =>
    `Keine Gefahrendaten aufgezeichnet für ${namesWithin(ingredients)}; als gefährlich behandeln.`,
  "holds-sensitiser": ({ names }) =>
    `Enthält ${namesWithin(names)}; dagegen kann die Haut allergisch werden.`,
  "may-hold-quartz": ({ what }) =>
    what === STATED_QUARTZ
      ? "Nach dem Papier des Lieferanten enthält es alveolengängigen Quarz, der die Lunge vernarbt und Krebs erzeugen kann."
      : `Das ist ${inGerman(QUARTZ_HOLDERS, what)}. Der Staub kann alveolengängigen Quarz enthalten, der die Lunge vernarbt und Krebs erzeugen kann, wenn nicht ein Papier des Lieferanten sagt, dass keiner darin ist.`,
  "quartz-in-the-paint": ({ pigments: of, known }) =>
    known === "stated"
      ? `In ${namesWithin(of)} ist alveolengängiger Quarz: eingeatmet vernarbt er die Lunge und kann Krebs erzeugen.`
      : `In ${namesWithin(of)} kann alveolengängiger Quarz sein: eingeatmet vernarbt er die Lunge und kann Krebs erzeugen.`,
  "hazard-of-its-dust": ({ pigments: of, statements }) =>
    `Der Staub von ${namesWithin(of)} ${effects(statements)}.`,
  "bench-test-with-care": ({ uses }) =>
    `${uses.map((use) => BENCH_CARE[use]).join(" ")} Eine Prise genügt; Augenschutz, und nichts in der Nähe, was brennt oder gegessen wird.`,
  "paint-is-no-food": () => "Farbe nicht verschlucken.",
  "drying-oil": () => "Ein trocknendes Öl nimmt Sauerstoff auf und erwärmt sich von selbst.",
  "paint-and-oil-foul-water": () => "Farbe und Öl verschmutzen das Wasser.",
};

/** What makes each kind of test hold no harm. */
const BENCH_CARE: Readonly<Record<BenchTestUse, string>> = {
  heat: "Mit Hitze: unter Absaugung oder im Freien, auf einem Metalllöffel, mit der Zange gehalten, und niemals mit einem Pigment aus Blei, Cadmium, Quecksilber, Arsen, Chromat, Antimon oder Kupfer.",
  acid: "Mit Säure: ein Tropfen und nicht mehr, an frischer Luft, mit Handschuhen; niemals auf ein Sulfid-, Cyanid- oder Arsenpigment, in keiner Menge.",
  lye: "Mit Lauge oder Soda: mit Handschuhen, und nicht in die Nähe der Augen.",
  peroxide:
    "Mit Peroxid: drei Prozent und nicht stärker, mit Handschuhen, niemals in einem geschlossenen Gefäß.",
  solvent: "Mit Lösemittel: an frischer Luft, und keine Flamme im Raum.",
};

/** What the hazards of a label do, after a subject. */
function effects(statements: readonly string[]): string {
  return listed(hazardEffects(statements).map((effect) => HAZARD_EFFECTS[effect]));
}

interface OfPigments {
  readonly pigments?: readonly string[];
}

function pigments({ pigments: of }: OfPigments): string {
  return of === undefined ? "Das Pigment" : namesWithin(of);
}

function pigmentsDative({ pigments: of }: OfPigments): string {
  return of === undefined ? "dem Pigment" : namesWithin(of);
}

/** The pigments that a caution names, or the paint when it names none. */
function it({ pigments: of }: OfPigments): string {
  return of === undefined ? "die Farbe" : namesWithin(of);
}

function itDative({ pigments: of }: OfPigments): string {
  return of === undefined ? "der Farbe" : namesWithin(of);
}

/** As a reader knows it. */
export function metalWord(metal: string): string {
  return inGerman(METAL_NAMES, metal);
}

function bulk(density: Quantity | undefined, how: string): string | undefined {
  return density === undefined ? undefined : `${withUnit(significant(density, 2), "g/ml")} ${how}`;
}

function grain(um: Quantity | undefined): string | undefined {
  return um === undefined ? undefined : `Korn ${micrometres(um)}`;
}
