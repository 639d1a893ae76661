import type { MarketStatement } from "../../hazard/markets/market-statements.ts";
import { SUBSTANCES, wordOf } from "../closed-sets.ts";
import * as en from "../en/phrases.ts";
import * as enMarket from "../en/market-phrases.ts";
import * as enStudio from "../en/studio-phrases.ts";
import * as de from "../de/phrases.ts";
import * as deMarket from "../de/market-phrases.ts";
import * as deStudio from "../de/studio-phrases.ts";
import * as fr from "../fr/phrases.ts";
import * as frMarket from "../fr/market-phrases.ts";
import * as es from "../es/phrases.ts";
import * as esMarket from "../es/market-phrases.ts";
import type { RulingsInEach } from "./rulings-in-each.ts";

/** What the acts of one market say of a sale there; the market stands beside the sentence. */
export const MARKET_RULINGS: RulingsInEach<MarketStatement> = {
  "lead-compound-not-as-paint": ({ names, substance, entry, ...act }) => ({
    en: enMarket.forbidden(
      act,
      `it holds ${en.namesWithin(names)}, and ${substance} may not be placed on the market or used as paint ${enMarket.inForce(act, `entry ${entry}`)}`,
    ),
    de: deMarket.forbidden(
      act,
      `enthält ${de.namesWithin(names)}, und ${SUBSTANCES[substance].de} dürfen weder in Verkehr gebracht noch als Farbe verwendet werden ${deMarket.inForce(act, `Eintrag ${entry.replace(/^entry /, "")}`)}`,
    ),
    fr: frMarket.forbidden(
      act,
      `contient ${fr.namesWithin(names)}\u202f; ces substances (${wordOf(SUBSTANCES, substance, "fr")}) ne peuvent être mises sur le marché ni utilisées comme peinture ${frMarket.inForce(act, `entrée ${entry}`)}`,
    ),
    es: esMarket.forbidden(
      act,
      `contiene ${es.namesWithin(names)}; estas sustancias (${wordOf(SUBSTANCES, substance, "es")}) no pueden comercializarse ni usarse como pintura ${esMarket.inForce(act, `entrada ${entry}`)}`,
    ),
  }),
  "lead-compound-not-identified": ({ names, ...act }) => ({
    en: enMarket.forbidden(
      act,
      `which compound of lead ${en.namesWithin(names)} holds is not recorded, and carbonates and sulphates of lead may not be placed on the market or used as paint ${enMarket.inForce(act)}`,
    ),
    de: deMarket.forbidden(
      act,
      `welche Bleiverbindung ${de.namesWithin(names)} ${names.length > 1 ? "enthalten" : "enthält"}, ist nicht aufgezeichnet, und Carbonate und Sulfate des Bleis dürfen weder in Verkehr gebracht noch als Farbe verwendet werden ${deMarket.inForce(act)}`,
    ),
    fr: frMarket.forbidden(
      act,
      `on n’a pas consigné quel composé du plomb contient ${fr.namesWithin(names)}, et les carbonates et sulfates de plomb ne peuvent être mis sur le marché ni utilisés comme peinture ${frMarket.inForce(act)}`,
    ),
    es: esMarket.forbidden(
      act,
      `no está registrado qué compuesto de plomo contiene ${es.namesWithin(names)}, y los carbonatos y sulfatos de plomo no pueden comercializarse ni usarse como pintura ${esMarket.inForce(act)}`,
    ),
  }),
  "leaded-paint-by-declaration": (act) => ({
    en: en.sentence(
      `there is no licence: the buyer signs a declaration of the use, the supplier sends it with a notice to the competent heritage body and may supply three weeks later at the earliest, unless that body objects; only to restore or maintain works of art made before 1992, listed buildings of the highest grades and scheduled monuments ${enMarket.inForce(act)}`,
    ),
    de: de.sentence(
      `eine Lizenz gibt es nicht: Der Käufer unterschreibt eine Erklärung über die Verwendung, der Lieferant sendet sie mit einer Anzeige an die zuständige Denkmalbehörde und darf frühestens drei Wochen später liefern, wenn sie nicht widerspricht; nur zum Restaurieren oder Erhalten von Kunstwerken aus der Zeit vor 1992, denkmalgeschützten Gebäuden der höchsten Stufen und geschützten Denkmälern ${deMarket.inForce(act)}`,
    ),
    fr: fr.sentence(
      `il n’y a pas de licence\u202f: l’acheteur signe une déclaration d’usage, le fournisseur l’envoie avec un avis à l’autorité compétente du patrimoine et peut livrer trois semaines plus tard au plus tôt, sauf opposition de cette autorité\u202f; uniquement pour restaurer ou entretenir des œuvres d’art antérieures à 1992, des bâtiments protégés des plus hautes catégories et des monuments classés ${frMarket.inForce(act)}`,
    ),
    es: es.sentence(
      `no hay licencia: el comprador firma una declaración de uso, el proveedor la envía con un aviso al organismo de patrimonio competente y puede suministrar tres semanas después como muy pronto, salvo que ese organismo se oponga; solo para restaurar o mantener obras de arte anteriores a 1992, edificios protegidos de los grados más altos y monumentos protegidos ${esMarket.inForce(act)}`,
    ),
  }),
  "lead-limits-at-work": ({
    airMgPerM3,
    bloodUgPer100Ml,
    until,
    bloodAfterUgPer100Ml,
    ...act
  }) => ({
    en: en.sentence(
      `at work, lead in the air stays below ${en.withUnit(String(airMgPerM3), "mg/m\u00b3")} over eight hours and in blood below ${en.withUnit(String(bloodUgPer100Ml), "\u00b5g/100 ml")} until ${en.dateWords(until)}, ${en.withUnit(String(bloodAfterUgPer100Ml), "\u00b5g/100 ml")} from then on ${enMarket.inForce(act)}; a country may set a lower limit`,
    ),
    de: de.sentence(
      `bei der Arbeit muss Blei in der Luft über acht Stunden unter ${de.withUnit(de.NUMBERS.plain(airMgPerM3), "mg/m\u00b3")} bleiben und im Blut unter ${de.withUnit(de.NUMBERS.plain(bloodUgPer100Ml), "\u00b5g/100\u00a0ml")} bis zum ${de.dateWords(until)}, danach unter ${de.withUnit(de.NUMBERS.plain(bloodAfterUgPer100Ml), "\u00b5g/100\u00a0ml")} ${deMarket.inForce(act)}; einzelne Länder können niedrigere Grenzwerte festlegen`,
    ),
    fr: fr.sentence(
      `au travail, le plomb dans l’air doit rester au-dessous de ${fr.withUnit(fr.NUMBERS.plain(airMgPerM3), "mg/m\u00b3")} sur huit heures, et dans le sang au-dessous de ${fr.withUnit(fr.NUMBERS.plain(bloodUgPer100Ml), "\u00b5g/100\u00a0ml")} jusqu’au ${fr.dateWords(until)}, de ${fr.withUnit(fr.NUMBERS.plain(bloodAfterUgPer100Ml), "\u00b5g/100\u00a0ml")} ensuite ${frMarket.inForce(act)}\u202f; un pays peut fixer une limite plus basse`,
    ),
    es: es.sentence(
      `en el trabajo, el plomo en el aire debe quedar por debajo de ${es.withUnit(es.NUMBERS.plain(airMgPerM3), "mg/m\u00b3")} en ocho horas y en la sangre por debajo de ${es.withUnit(es.NUMBERS.plain(bloodUgPer100Ml), "\u00b5g/100\u00a0ml")} hasta el ${es.dateWords(until)}, de ${es.withUnit(es.NUMBERS.plain(bloodAfterUgPer100Ml), "\u00b5g/100\u00a0ml")} desde entonces ${esMarket.inForce(act)}; un país puede fijar un límite más bajo`,
    ),
  }),
  "substance-of-very-high-concern": ({ names, ...act }) => ({
    en: en.sentence(
      `${en.namesWithin(names)} is on the list of substances of very high concern ${enMarket.inForce(act)}: the safety data sheet says so to whoever buys it for work`,
    ),
    de: de.sentence(
      `${de.namesWithin(names)} ${names.length > 1 ? "stehen" : "steht"} auf der Liste der besonders besorgniserregenden Stoffe ${deMarket.inForce(act)}: Das Sicherheitsdatenblatt informiert jeden, der beruflich kauft`,
    ),
    fr: fr.sentence(
      `${fr.namesWithin(names)} figure sur la liste des substances extrêmement préoccupantes ${frMarket.inForce(act)}\u202f: la fiche de données de sécurité le dit à qui l’achète pour son travail`,
    ),
    es: es.sentence(
      `${es.namesWithin(names)} está en la lista de sustancias extremadamente preocupantes ${esMarket.inForce(act)}: la ficha de datos de seguridad lo dice a quien la compra para su trabajo`,
    ),
  }),
  "cadmium-in-other-paints": ({ names, limit, ...act }) => ({
    en: en.sentence(
      `it holds ${en.namesWithin(names)}; entry 23 keeps ${en.percent(limit)} and more of cadmium out of paints of the tariff codes 3208 and 3209 ${enMarket.inForce(act)}, and artists' colours in tubes and jars have a code of their own, 3213, which the customs have to confirm of this one`,
    ),
    de: de.sentence(
      `enthält ${de.namesWithin(names)}; Eintrag 23 verbietet ${de.percent(limit)} und mehr Cadmium in Farben der Zolltarifnummern 3208 und 3209 ${deMarket.inForce(act)}, doch Künstlerfarben in Tuben und Gläsern haben eine eigene Nummer, 3213, die der Zoll für diese Farbe bestätigen muss`,
    ),
    fr: fr.sentence(
      `contient ${fr.namesWithin(names)}\u202f; l’entrée 23 interdit ${fr.percent(limit)} et plus de cadmium dans les peintures des codes douaniers 3208 et 3209 ${frMarket.inForce(act)}, et les couleurs pour artistes en tubes et en pots ont leur propre code, 3213, que la douane doit confirmer pour celle-ci`,
    ),
    es: es.sentence(
      `contiene ${es.namesWithin(names)}; la entrada 23 prohíbe el ${es.percent(limit)} y más de cadmio en pinturas de los códigos arancelarios 3208 y 3209 ${esMarket.inForce(act)}, y los colores para artistas en tubos y tarros tienen su propio código, 3213, que la aduana tiene que confirmar para este`,
    ),
  }),
  "cmr-not-to-the-public": ({ statements, ...act }) => ({
    en: enMarket.forbidden(
      act,
      `a dry pigment that carries ${en.listed(statements)} may not be supplied to the public ${enMarket.inForce(act)}`,
    ),
    de: deMarket.forbidden(
      act,
      `ein trockenes Pigment, das ${de.listed(statements)} trägt, darf nicht an die breite Öffentlichkeit abgegeben werden ${deMarket.inForce(act)}`,
    ),
    fr: frMarket.forbidden(
      act,
      `un pigment sec qui porte ${fr.listed(statements)} ne peut être fourni au grand public ${frMarket.inForce(act)}`,
    ),
    es: esMarket.forbidden(
      act,
      `un pigmento seco que lleva ${es.listed(statements)} no puede suministrarse al público ${esMarket.inForce(act)}`,
    ),
  }),
  "needs-authorisation": ({ names, ...act }) => ({
    en: enMarket.forbidden(
      act,
      `${en.namesWithin(names)} may be placed on the market and used only under an authorisation ${enMarket.inForce(act)}`,
    ),
    de: deMarket.forbidden(
      act,
      `${de.namesWithin(names)}: nur mit Zulassung in Verkehr zu bringen und zu verwenden ${deMarket.inForce(act)}`,
    ),
    fr: frMarket.forbidden(
      act,
      `${fr.namesWithin(names)} ne peut être mis sur le marché ni utilisé que sous autorisation ${frMarket.inForce(act)}`,
    ),
    es: esMarket.forbidden(
      act,
      `${es.namesWithin(names)} solo puede comercializarse y usarse con una autorización ${esMarket.inForce(act)}`,
    ),
  }),
  "cmr-artists-paint-exempt": ({ statements, ...act }) => ({
    en: en.sentence(
      `${en.listed(statements)} would keep it from the public ${enMarket.inForce(act)}; that artists' paints are exempt is quoted from memory`,
    ),
    de: de.sentence(
      `${de.listed(statements)} würde die Abgabe an die breite Öffentlichkeit verbieten ${deMarket.inForce(act)}; dass Künstlerfarben ausgenommen sind, ist aus dem Gedächtnis zitiert`,
    ),
    fr: fr.sentence(
      `${fr.listed(statements)} en interdirait la vente au grand public ${frMarket.inForce(act)}\u202f; l’exemption des peintures pour artistes est citée de mémoire`,
    ),
    es: es.sentence(
      `${es.listed(statements)} impediría su venta al público ${esMarket.inForce(act)}; la exención de las pinturas para artistas se cita de memoria`,
    ),
  }),
  "restricted-to-professional-users": ({ statements, ...act }) => ({
    en: en.sentence(
      `restricted to professional users, since it carries ${en.listed(statements)} ${enMarket.inForce(act)}`,
    ),
    de: de.sentence(
      `nur für gewerbliche Verwender, da das Etikett ${de.listed(statements)} trägt ${deMarket.inForce(act)}`,
    ),
    fr: fr.sentence(
      `vente réservée aux utilisateurs professionnels, en raison de ${fr.listed(statements)} ${frMarket.inForce(act)}`,
    ),
    es: es.sentence(
      `venta reservada a usuarios profesionales, por llevar ${es.listed(statements)} ${esMarket.inForce(act)}`,
    ),
  }),
  "titanium-dioxide-without-h351": (act) => ({
    en: en.sentence(
      `titanium dioxide bears no warning of cancer (H351) here: its entry no longer stands ${enMarket.since(act)}`,
    ),
    de: de.sentence(
      `Titandioxid trägt hier keinen Krebshinweis (H351): Der Eintrag gilt nicht mehr ${deMarket.since(act)}`,
    ),
    fr: fr.sentence(
      `le dioxyde de titane ne porte pas ici de mention de cancer (H351)\u202f: son entrée ne vaut plus ${frMarket.since(act)}`,
    ),
    es: es.sentence(
      `el dióxido de titanio no lleva aquí aviso de cáncer (H351): su entrada ya no vale ${esMarket.since(act)}`,
    ),
  }),
  "offer-names-hazards": ({ statements, ...act }) => ({
    en: en.sentence(
      `if it is sold to the public by post or online, the listing must show its hazards ${enMarket.inForce(act)}: ${en.listed(statements)}`,
    ),
    de: de.sentence(
      `wird die Farbe im Versand oder online an die breite Öffentlichkeit verkauft, muss das Angebot ihre Gefahren nennen ${deMarket.inForce(act)}: ${de.listed(statements)}`,
    ),
    fr: fr.sentence(
      `en cas de vente au grand public par correspondance ou en ligne, l’annonce doit montrer les dangers ${frMarket.inForce(act)}\u202f: ${fr.listed(statements)}`,
    ),
    es: es.sentence(
      `si se vende al público por correo o en línea, el anuncio debe mostrar sus peligros ${esMarket.inForce(act)}: ${es.listed(statements)}`,
    ),
  }),
  "formula-identifier-wanted": (act) => ({
    en: en.sentence(
      `poison centres ask for a unique formula identifier, UFI ${enMarket.inForce(act)}; none is recorded`,
    ),
    de: de.sentence(
      `die Giftinformationszentren verlangen einen eindeutigen Rezepturidentifikator, UFI ${deMarket.inForce(act)}; keiner ist aufgezeichnet`,
    ),
    fr: fr.sentence(
      `les centres antipoison demandent un identifiant unique de formulation, UFI ${frMarket.inForce(act)}\u202f; aucun n’est consigné`,
    ),
    es: es.sentence(
      `los centros de toxicología piden un identificador único de fórmula, UFI ${esMarket.inForce(act)}; no hay ninguno registrado`,
    ),
  }),
  "us-artists-paint-exempt-labelled": ({ names, limit, ...act }) => ({
    en: en.sentence(
      `it holds lead (${en.namesWithin(names)}); artists' paints are exempt from the ban on paint with more than ${en.percent(limit)} of it ${enMarket.inForce(act)}, but have to be labelled`,
    ),
    de: de.sentence(
      `enthält Blei (${de.namesWithin(names)}); Künstlerfarben sind vom Verbot von Farbe mit mehr als ${de.percent(limit)} davon ausgenommen ${deMarket.inForce(act)}, müssen aber gekennzeichnet sein`,
    ),
    fr: fr.sentence(
      `contient du plomb (${fr.namesWithin(names)})\u202f; les peintures pour artistes sont exemptées de l’interdiction des peintures qui en ont plus de ${fr.percent(limit)} ${frMarket.inForce(act)}, mais doivent être étiquetées`,
    ),
    es: es.sentence(
      `contiene plomo (${es.namesWithin(names)}); las pinturas para artistas están exentas de la prohibición de pinturas con más del ${es.percent(limit)} de plomo ${esMarket.inForce(act)}, pero deben etiquetarse`,
    ),
  }),
  "us-review-on-record": (act) => ({
    en: en.sentence(
      `art materials need a toxicologist's review of the formulation ${enMarket.inForce(act)}; one is on record`,
    ),
    de: de.sentence(
      `bei Künstlermaterial muss ein Toxikologe die Rezeptur prüfen ${deMarket.inForce(act)}; eine Prüfung liegt vor`,
    ),
    fr: fr.sentence(
      `le matériel pour artistes demande l’examen de la formule par un toxicologue ${frMarket.inForce(act)}\u202f; un examen est consigné`,
    ),
    es: es.sentence(
      `los materiales para artistas necesitan que un toxicólogo revise la fórmula ${esMarket.inForce(act)}; hay una revisión registrada`,
    ),
  }),
  "us-review-wanted": (act) => ({
    en: en.sentence(
      `art materials need a toxicologist's review of the formulation before they are sold there ${enMarket.inForce(act)}; of this colour none is recorded`,
    ),
    de: de.sentence(
      `bei Künstlermaterial muss ein Toxikologe die Rezeptur prüfen, bevor es dort verkauft wird ${deMarket.inForce(act)}; für diese Farbe ist keine Prüfung aufgezeichnet`,
    ),
    fr: fr.sentence(
      `le matériel pour artistes demande l’examen de la formule par un toxicologue avant d’y être vendu ${frMarket.inForce(act)}\u202f; pour cette couleur, aucun n’est consigné`,
    ),
    es: es.sentence(
      `los materiales para artistas necesitan que un toxicólogo revise la fórmula antes de venderse allí ${esMarket.inForce(act)}; de este color no hay ninguna revisión registrada`,
    ),
  }),
  "proposition-65": ({ substances, ...act }) => ({
    en: en.sentence(
      `California lists ${en.listed(substances.map(enStudio.metalWord))} ${enMarket.inForce(act, "Proposition 65")}, and a warning may be due`,
    ),
    de: de.sentence(
      `Kalifornien führt ${de.listed(substances.map((each) => wordOf(SUBSTANCES, deStudio.metalWord(each), "de")))} auf ${deMarket.inForce(act, "Proposition 65")}, und ein Warnhinweis kann nötig sein`,
    ),
    fr: fr.sentence(
      `la Californie inscrit sur sa liste ${fr.listed(substances.map(frMarket.substanceWord))} ${frMarket.inForce(act, "Proposition 65")}, et un avertissement peut être dû`,
    ),
    es: es.sentence(
      `California incluye en su lista ${es.listed(substances.map(esMarket.substanceWord))} ${esMarket.inForce(act, "Proposition 65")}, y puede hacer falta una advertencia`,
    ),
  }),
  "acts-not-known-here": {
    en: "We do not know the rules elsewhere.",
    de: "Die Vorschriften in anderen Ländern kennen wir nicht.",
    fr: "Nous ne connaissons pas les règles ailleurs.",
    es: "No conocemos las normas en otros lugares.",
  },
};
