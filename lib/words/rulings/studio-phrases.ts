import type { GasOfPigments } from "../../hazard/studio/studio-material.ts";
import type { GasGivenOff } from "../../hazard/studio/gas-given-off.ts";
import type { StudioStatement } from "../../hazard/statements.ts";
import type { BenchTestUse } from "../../hazard/studio/bench-test.ts";
import { hazardEffects } from "../../hazard/texts/hazard-effect.ts";
import type { Quantity } from "../../quantities/interval.ts";
import type { ValuesOf } from "../../quantities/statement.ts";
import { METALS, wordOf } from "../closed-sets.ts";
import { HAZARD_EFFECTS } from "../hazard-effects.ts";
import type { InEach } from "../in-each.ts";
import { de, en, es, fr, inEach } from "../phrases-in-each.ts";

interface OfPigments {
  readonly pigments?: readonly string[];
}

export const DUSTINESS = {
  "very dusty": {
    en: "A very dusty powder",
    de: "Ein stark staubendes Pulver",
    fr: "Une poudre qui dégage beaucoup de poussière",
    es: "Un pigmento que levanta mucho polvo",
  },
  dusty: {
    en: "A dusty powder",
    de: "Ein staubendes Pulver",
    fr: "Une poudre qui dégage de la poussière",
    es: "Un pigmento que levanta polvo",
  },
  "less dusty": {
    en: "A heavy powder, less dusty than most",
    de: "Ein schweres Pulver, das weniger staubt als die meisten",
    fr: "Une poudre lourde, qui dégage moins de poussière que la plupart",
    es: "Un pigmento pesado, que levanta menos polvo que la mayoría",
  },
  "not known": {
    en: "How dusty the powder is has not been recorded; treat it as very dusty",
    de: "Wie stark das Pulver staubt, ist nicht aufgezeichnet; behandeln Sie das Pigment als stark staubend",
    fr: "On n’a pas consigné combien la poudre dégage de poussière\u202f; la traiter comme si elle en dégageait beaucoup",
    es: "No está registrado cuánto polvo levanta; tratarlo como si levantara mucho",
  },
} as const satisfies Readonly<Record<string, InEach>>;

const GAS_WORDS: Readonly<Record<GasGivenOff["gas"], InEach>> = {
  "hydrogen cyanide": {
    en: "hydrogen cyanide, a deadly gas",
    de: "Blausäure, ein tödliches Gas,",
    fr: "du cyanure d’hydrogène, un gaz mortel",
    es: "cianuro de hidrógeno, un gas mortal",
  },
  "hydrogen sulphide": {
    en: "hydrogen sulphide, a deadly gas",
    de: "Schwefelwasserstoff, ein tödliches Gas,",
    fr: "du sulfure d’hydrogène, un gaz mortel",
    es: "sulfuro de hidrógeno, un gas mortal",
  },
  "hydrogen sulphide and hydrogen selenide": {
    en: "hydrogen sulphide and hydrogen selenide, deadly gases",
    de: "Schwefelwasserstoff und Selenwasserstoff, tödliche Gase,",
    fr: "du sulfure et du séléniure d’hydrogène, des gaz mortels",
    es: "sulfuro y seleniuro de hidrógeno, gases mortales",
  },
};

const RELEASE_WORDS: Readonly<Record<GasGivenOff["release"], InEach>> = {
  "strong heat or strong acid": {
    en: "Strongly heated or under strong acid",
    de: "Stark erhitzt oder mit starker Säure",
    fr: "Fortement chauffée ou au contact d’un acide fort",
    es: "Muy calentada o con un ácido fuerte",
  },
  "strong acid": {
    en: "Under strong acid",
    de: "Mit starker Säure",
    fr: "Au contact d’un acide fort",
    es: "Con un ácido fuerte",
  },
  "any acid": {
    en: "Under acid, even a weak one,",
    de: "Mit Säure, auch mit schwacher,",
    fr: "Au contact d’un acide, même faible",
    es: "Con un ácido, aunque sea débil",
  },
};

/** What each gas is set free by, a sentence a gas. */
export function gasSentences(gases: readonly GasOfPigments[]): InEach {
  const sentences = gases.map(({ gas, release, names }): InEach => {
    const [when, what] = [RELEASE_WORDS[release], GAS_WORDS[gas]];
    return {
      en: `${when.en} it can give off ${what.en} (${en.namesWithin(names)}).`,
      de: `${when.de} kann die Farbe ${what.de} abgeben (${de.namesWithin(names)}).`,
      fr: `${when.fr}, la peinture peut dégager ${what.fr} (${fr.namesWithin(names)}).`,
      es: `${when.es}, la pintura puede desprender ${what.es} (${es.namesWithin(names)}).`,
    };
  });
  return inEach((_, language) => sentences.map((sentence) => sentence[language]).join(" "));
}

export const NATURES = {
  "fine carbon": {
    en: "The dust of fine carbon can burn.",
    de: "Der Staub von feinem Kohlenstoff kann brennen.",
    fr: "La poussière de carbone fin peut brûler.",
    es: "El polvo de carbono fino puede arder.",
  },
  organic: {
    en: "The dust of an organic pigment can burn.",
    de: "Der Staub eines organischen Pigments kann brennen.",
    fr: "La poussière d’un pigment organique peut brûler.",
    es: "El polvo de un pigmento orgánico puede arder.",
  },
  "not known": {
    en: "Whether its dust can burn is not known; treat it as if it could.",
    de: "Ob der Staub brennen kann, ist nicht bekannt; behandeln Sie ihn, als könnte er es.",
    fr: "On ne sait pas si sa poussière peut brûler\u202f; la traiter comme si elle le pouvait.",
    es: "No se sabe si su polvo puede arder; tratarlo como si pudiera.",
  },
} as const satisfies Readonly<Record<string, InEach>>;

/** What makes each kind of test hold no harm. */
export const BENCH_CARE: Readonly<Record<BenchTestUse, InEach>> = {
  heat: {
    en: "With heat: under captured exhaust or outdoors, on a metal spoon held with tongs, and never with a pigment of lead, cadmium, mercury, arsenic, chromate, antimony or copper.",
    de: "Mit Hitze: unter Absaugung oder im Freien, auf einem Metalllöffel, den eine Zange hält, und niemals mit einem Pigment aus Blei, Cadmium, Quecksilber, Arsen, Chromat, Antimon oder Kupfer.",
    fr: "À la chaleur\u202f: sous aspiration à la source ou dehors, sur une cuiller métallique tenue à la pince, et jamais avec un pigment de plomb, de cadmium, de mercure, d’arsenic, de chromate, d’antimoine ou de cuivre.",
    es: "Con calor: bajo extracción localizada o al aire libre, en una cuchara metálica sujeta con pinzas, y nunca con un pigmento de plomo, cadmio, mercurio, arsénico, cromato, antimonio o cobre.",
  },
  acid: {
    en: "With acid: a drop and no more, in fresh air, gloves on; never on a sulphide, a cyanide or an arsenic pigment in any quantity.",
    de: "Mit Säure: ein Tropfen und nicht mehr, an frischer Luft, mit Handschuhen; niemals auf ein Sulfid-, Cyanid- oder Arsenpigment, auch nicht in kleinster Menge.",
    fr: "À l’acide\u202f: une goutte et pas plus, dans un endroit bien aéré, avec des gants\u202f; jamais sur un sulfure, un cyanure ou un pigment d’arsenic, en quelque quantité que ce soit.",
    es: "Con ácido: una gota y no más, en un lugar bien ventilado, con guantes; nunca sobre un sulfuro, un cianuro o un pigmento de arsénico, sea cual sea la cantidad.",
  },
  lye: {
    en: "With lye or soda: gloves on, and not near the eyes.",
    de: "Mit Lauge oder Soda: mit Handschuhen, und nicht in die Nähe der Augen.",
    fr: "À la soude caustique ou au carbonate de soude\u202f: avec des gants, et loin des yeux.",
    es: "Con sosa cáustica o carbonato sódico: con guantes, y lejos de los ojos.",
  },
  peroxide: {
    en: "With peroxide: three per cent and no stronger, gloves on, never in a closed vessel.",
    de: "Mit Peroxid: höchstens dreiprozentig, mit Handschuhen, niemals in einem geschlossenen Gefäß.",
    fr: "À l’eau oxygénée\u202f: à trois pour cent, pas davantage, avec des gants, jamais dans un récipient fermé.",
    es: "Con agua oxigenada: al tres por ciento y no más concentrada, con guantes, nunca en un recipiente cerrado.",
  },
  solvent: {
    en: "With a solvent: in fresh air, and no flame in the room.",
    de: "Mit Lösemittel: an frischer Luft, und keine Flamme im Raum.",
    fr: "Au solvant\u202f: dans une pièce bien aérée, sans aucune flamme.",
    es: "Con un disolvente: sala bien ventilada y ninguna llama.",
  },
};

/** What the hazards of a label do, after a subject. */
export function effects(statements: readonly string[]): InEach {
  return inEach((p, language) =>
    p.listed(hazardEffects(statements).map((effect) => HAZARD_EFFECTS[effect][language])),
  );
}

/** The pigments that a caution names, or the paint when it names none. */
export function it({ pigments: of }: OfPigments): InEach {
  return of === undefined
    ? { en: "the paint", de: "die Farbe", fr: "la peinture", es: "la pintura" }
    : inEach((p) => p.namesWithin(of));
}

/** The same of a caution on the powder. */
export function powder({ pigments: of }: OfPigments): InEach {
  return of === undefined
    ? { en: "the pigment", de: "das Pigment", fr: "le pigment", es: "el pigmento" }
    : inEach((p) => p.namesWithin(of));
}

/** A German caution, and behind it the pigments that it is of: their names are not bent, and so stand by themselves. */
export function germanCaution({ pigments: of = [] }: OfPigments, text: string): string {
  return de.sentence(`${text}${de.bracketed(de.namesWithin(of))}`);
}

/** As a reader knows it. */
export function metalWord(metal: string): InEach {
  return inEach((_, language) =>
    language === "en" ? (ENGLISH_METALS[metal] ?? metal) : wordOf(METALS, metal, language),
  );
}

/** Those that are not called as a record has them. */
const ENGLISH_METALS: Readonly<Record<string, string>> = {
  chromate: "hexavalent chromium",
  barium: "soluble barium",
};

/** @param how it was weighed. */
function bulk(density: Quantity | undefined, how: InEach): Partial<InEach> {
  return density === undefined
    ? {}
    : inEach((p, language) => `${p.withUnit(p.significant(density, 2), "g/ml")} ${how[language]}`);
}

function grain(um: Quantity | undefined): Partial<InEach> {
  return um === undefined ? {} : inEach((p, language) => `${GRAIN[language]} ${p.micrometres(um)}`);
}

const GRAIN: InEach = { en: "grain", de: "Korn", fr: "grain", es: "grano" };

/** What is known of a powder that tells how dusty it is, in brackets. */
export function dustFacts({
  bulkDensityLooseGPerMl: loose,
  bulkDensityTappedGPerMl: tapped,
  particleSizeUm,
}: DustFacts): InEach {
  const facts = [bulk(loose, AS_POURED), bulk(tapped, TAPPED), grain(particleSizeUm)];
  return inEach((p, language) => p.bracketed(...facts.map((fact) => fact[language])));
}

type DustFacts = Omit<ValuesOf<StudioStatement, "dustiness">, "class">;

const AS_POURED: InEach = {
  en: "as poured",
  de: "lose",
  fr: "sans tassement",
  es: "sin compactar",
};
const TAPPED: InEach = {
  en: "tapped",
  de: "gestampft",
  fr: "après tassement",
  es: "compactado",
};
