import type { MarketStatement } from "../../hazard/markets/market-statements.ts";
import { SUBSTANCES, wordOf } from "../closed-sets.ts";
import { de, en, es, fr, sentences } from "../phrases-in-each.ts";
import { alike } from "../texts.ts";
import { forbidden, inForce, since } from "./market-phrases.ts";
import type { RulingsInEach } from "./rulings-in-each.ts";
import { metalWord } from "./studio-phrases.ts";

/** What the acts of one market say of a sale there; the market stands beside the sentence. */
export const MARKET_RULINGS: RulingsInEach<MarketStatement> = {
  "lead-compound-not-as-paint": ({ names, substance, entry, ...act }) => {
    const since = inForce(act, {
      en: `entry ${entry}`,
      de: `Eintrag ${entry}`,
      fr: `entrée ${entry}`,
      es: `entrada ${entry}`,
    });
    const { de: deName, fr: frName, es: esName } = SUBSTANCES[substance];
    return forbidden(act, {
      en: `it holds ${en.namesWithin(names)}, and ${substance} may not be placed on the market or used as paint ${since.en}`,
      de: `enthält ${de.namesWithin(names)}, und ${deName} dürfen weder in Verkehr gebracht noch als Farbe verwendet werden ${since.de}`,
      fr: `contient ${fr.namesWithin(names)}\u202f; ces substances (${frName}) ne peuvent être mises sur le marché ni utilisées comme peinture ${since.fr}`,
      es: `contiene ${es.namesWithin(names)}; estas sustancias (${esName}) no pueden comercializarse ni usarse como pintura ${since.es}`,
    });
  },
  "lead-compound-not-identified": ({ names, ...act }) =>
    forbidden(act, {
      en: `which compound of lead ${en.namesWithin(names)} holds is not recorded, and carbonates and sulphates of lead may not be placed on the market or used as paint ${inForce(act).en}`,
      de: `welche Bleiverbindung ${de.namesWithin(names)} ${names.length > 1 ? "enthalten" : "enthält"}, ist nicht aufgezeichnet, und Carbonate und Sulfate des Bleis dürfen weder in Verkehr gebracht noch als Farbe verwendet werden ${inForce(act).de}`,
      fr: `on n’a pas consigné quel composé du plomb contient ${fr.namesWithin(names)}, et les carbonates et sulfates de plomb ne peuvent être mis sur le marché ni utilisés comme peinture ${inForce(act).fr}`,
      es: `no está registrado qué compuesto de plomo contiene ${es.namesWithin(names)}, y los carbonatos y sulfatos de plomo no pueden comercializarse ni usarse como pintura ${inForce(act).es}`,
    }),
  "leaded-paint-by-declaration": (act) => ({
    en: `There is no licence. The buyer signs a declaration of the use; the supplier sends it with a notice to the competent heritage body and may supply after three weeks, unless that body objects. Only to restore or maintain works of art made before 1992, listed buildings of the highest grades and scheduled monuments ${inForce(act).en}.`,
    de: `Eine Lizenz gibt es nicht. Der Käufer unterschreibt eine Erklärung über die Verwendung; der Lieferant sendet sie mit einer Anzeige an die zuständige Denkmalbehörde und darf nach drei Wochen liefern, wenn diese nicht widerspricht. Nur zum Restaurieren oder Erhalten von Kunstwerken aus der Zeit vor 1992, denkmalgeschützten Gebäuden der höchsten Stufen und geschützten Denkmälern ${inForce(act).de}.`,
    fr: `Il n’y a pas de licence. L’acheteur signe une déclaration d’usage\u202f; le fournisseur l’envoie avec un avis à l’autorité compétente du patrimoine et peut livrer au bout de trois semaines, sauf opposition de cette autorité. Uniquement pour restaurer ou entretenir des œuvres d’art antérieures à 1992, des bâtiments protégés des plus hautes catégories et des monuments classés ${inForce(act).fr}.`,
    es: `No hay licencia. El comprador firma una declaración de uso; el proveedor la envía con un aviso al organismo de patrimonio competente y puede suministrar pasadas tres semanas, salvo que ese organismo se oponga. Solo para restaurar o mantener obras de arte anteriores a 1992, edificios protegidos de los grados más altos y monumentos protegidos ${inForce(act).es}.`,
  }),
  "lead-limits-at-work": ({
    airMgPerM3,
    bloodUgPer100Ml,
    until,
    bloodAfterUgPer100Ml,
    ...act
  }) => ({
    en: `At work, lead in the air stays below ${en.withUnit(String(airMgPerM3), "mg/m\u00b3")} over eight hours and in blood below ${en.withUnit(String(bloodUgPer100Ml), "\u00b5g/100 ml")} until ${en.dateWords(until)}, ${en.withUnit(String(bloodAfterUgPer100Ml), "\u00b5g/100 ml")} from then on ${inForce(act).en}; a country may set a lower limit.`,
    de: `Bei der Arbeit muss Blei in der Luft über acht Stunden unter ${de.withUnit(de.NUMBERS.plain(airMgPerM3), "mg/m\u00b3")} bleiben und im Blut unter ${de.withUnit(de.NUMBERS.plain(bloodUgPer100Ml), "\u00b5g/100\u00a0ml")} bis zum ${de.dateWords(until)}, danach unter ${de.withUnit(de.NUMBERS.plain(bloodAfterUgPer100Ml), "\u00b5g/100\u00a0ml")} ${inForce(act).de}; einzelne Länder können niedrigere Grenzwerte festlegen.`,
    fr: `Au travail, le plomb dans l’air doit rester au-dessous de ${fr.withUnit(fr.NUMBERS.plain(airMgPerM3), "mg/m\u00b3")} sur huit heures, et dans le sang au-dessous de ${fr.withUnit(fr.NUMBERS.plain(bloodUgPer100Ml), "\u00b5g/100\u00a0ml")} jusqu’au ${fr.dateWords(until)}, de ${fr.withUnit(fr.NUMBERS.plain(bloodAfterUgPer100Ml), "\u00b5g/100\u00a0ml")} ensuite ${inForce(act).fr}\u202f; un pays peut fixer une limite plus basse.`,
    es: `En el trabajo, el plomo en el aire debe quedar por debajo de ${es.withUnit(es.NUMBERS.plain(airMgPerM3), "mg/m\u00b3")} en ocho horas y en la sangre por debajo de ${es.withUnit(es.NUMBERS.plain(bloodUgPer100Ml), "\u00b5g/100\u00a0ml")} hasta el ${es.dateWords(until)}, de ${es.withUnit(es.NUMBERS.plain(bloodAfterUgPer100Ml), "\u00b5g/100\u00a0ml")} desde entonces ${inForce(act).es}; un país puede fijar un límite más bajo.`,
  }),
  "substance-of-very-high-concern": ({ names, ...act }) =>
    sentences({
      en: `${en.namesWithin(names)} is on the list of substances of very high concern ${inForce(act).en}: the safety data sheet says so to whoever buys it for work`,
      de: `${de.namesWithin(names)} ${names.length > 1 ? "stehen" : "steht"} auf der Liste der besonders besorgniserregenden Stoffe ${inForce(act).de}: Das Sicherheitsdatenblatt informiert jeden, der beruflich kauft`,
      fr: `${fr.namesWithin(names)} figure sur la liste des substances extrêmement préoccupantes ${inForce(act).fr}\u202f: la fiche de données de sécurité le dit à qui l’achète pour son travail`,
      es: `${es.namesWithin(names)} está en la lista de sustancias extremadamente preocupantes ${inForce(act).es}: la ficha de datos de seguridad lo dice a quien la compra para su trabajo`,
    }),
  "cadmium-in-other-paints": ({ names, limit, ...act }) => ({
    en: `It holds ${en.namesWithin(names)}. Entry 23 bans ${en.percent(limit)} of cadmium or more from paints of the tariff codes 3208 and 3209 ${inForce(act).en}. Artists' colours in tubes and jars have a code of their own, 3213; for this one the customs have to confirm it.`,
    de: `Enthält ${de.namesWithin(names)}. Eintrag 23 verbietet ${de.percent(limit)} und mehr Cadmium in Farben der Zolltarifnummern 3208 und 3209 ${inForce(act).de}. Künstlerfarben in Tuben und Gläsern haben eine eigene Nummer, 3213; für diese Farbe muss der Zoll sie bestätigen.`,
    fr: `Contient ${fr.namesWithin(names)}. L’entrée 23 interdit ${fr.percent(limit)} et plus de cadmium dans les peintures des codes douaniers 3208 et 3209 ${inForce(act).fr}. Les couleurs pour artistes en tubes et en pots ont leur propre code, 3213\u202f; pour celle-ci, la douane doit le confirmer.`,
    es: `Contiene ${es.namesWithin(names)}. La entrada 23 prohíbe el ${es.percent(limit)} y más de cadmio en pinturas de los códigos arancelarios 3208 y 3209 ${inForce(act).es}. Los colores para artistas en tubos y tarros tienen su propio código, 3213; para este, la aduana tiene que confirmarlo.`,
  }),
  "cmr-not-to-the-public": ({ statements, ...act }) =>
    forbidden(act, {
      en: `a dry pigment that carries ${en.listed(statements)} may not be supplied to the public ${inForce(act).en}`,
      de: `ein trockenes Pigment, das ${de.listed(statements)} trägt, darf nicht an die breite Öffentlichkeit abgegeben werden ${inForce(act).de}`,
      fr: `un pigment sec qui porte ${fr.listed(statements)} ne peut être fourni au grand public ${inForce(act).fr}`,
      es: `un pigmento seco que lleva ${es.listed(statements)} no puede suministrarse al público ${inForce(act).es}`,
    }),
  "needs-authorisation": ({ names, ...act }) =>
    forbidden(act, {
      en: `${en.namesWithin(names)} may be placed on the market and used only under an authorisation ${inForce(act).en}`,
      de: `${de.namesWithin(names)}: nur mit Zulassung in Verkehr zu bringen und zu verwenden ${inForce(act).de}`,
      fr: `${fr.namesWithin(names)} ne peut être mis sur le marché ni utilisé que sous autorisation ${inForce(act).fr}`,
      es: `${es.namesWithin(names)} solo puede comercializarse y usarse con una autorización ${inForce(act).es}`,
    }),
  "cmr-artists-paint-exempt": ({ statements, ...act }) =>
    sentences({
      en: `${en.listed(statements)} would keep it from the public ${inForce(act).en}, but artists' paints are exempt (from memory)`,
      de: `${de.listed(statements)} würde die Abgabe an die breite Öffentlichkeit verbieten ${inForce(act).de}, doch Künstlerfarben sind ausgenommen (aus dem Gedächtnis)`,
      fr: `${fr.listed(statements)} en interdirait la vente au grand public ${inForce(act).fr}, mais les peintures pour artistes en sont exemptées (de mémoire)`,
      es: `${es.listed(statements)} impediría su venta al público ${inForce(act).es}, pero las pinturas para artistas están exentas (de memoria)`,
    }),
  "restricted-to-professional-users": ({ statements, ...act }) => ({
    en: `Restricted to professional users, since it carries ${en.listed(statements)} ${inForce(act).en}.`,
    de: `Nur für gewerbliche Verwender, da das Etikett ${de.listed(statements)} trägt ${inForce(act).de}.`,
    fr: `Vente réservée aux utilisateurs professionnels, en raison de ${fr.listed(statements)} ${inForce(act).fr}.`,
    es: `Venta reservada a usuarios profesionales, por llevar ${es.listed(statements)} ${inForce(act).es}.`,
  }),
  "titanium-dioxide-without-h351": (act) => ({
    en: `Titanium dioxide bears no warning of cancer (H351) here: its entry no longer stands ${since(act).en}.`,
    de: `Titandioxid trägt hier keinen Krebshinweis (H351): Der Eintrag gilt nicht mehr ${since(act).de}.`,
    fr: `Le dioxyde de titane ne porte pas ici de mention de cancer (H351)\u202f: son entrée ne vaut plus ${since(act).fr}.`,
    es: `El dióxido de titanio no lleva aquí aviso de cáncer (H351): su entrada ya no vale ${since(act).es}.`,
  }),
  "offer-names-hazards": ({ statements, ...act }) => ({
    en: `If it is sold to the public by post or online, the listing must show its hazards ${inForce(act).en}: ${en.listed(statements)}.`,
    de: `Wird die Farbe im Versand oder online an die breite Öffentlichkeit verkauft, muss das Angebot ihre Gefahren nennen ${inForce(act).de}: ${de.listed(statements)}.`,
    fr: `En cas de vente au grand public par correspondance ou en ligne, l’annonce doit montrer les dangers ${inForce(act).fr}\u202f: ${fr.listed(statements)}.`,
    es: `Si se vende al público por correo o en línea, el anuncio debe mostrar sus peligros ${inForce(act).es}: ${es.listed(statements)}.`,
  }),
  "formula-identifier-wanted": (act) => ({
    en: `Poison centres ask for a unique formula identifier, UFI ${inForce(act).en}; none is recorded.`,
    de: `Die Giftinformationszentren verlangen einen eindeutigen Rezepturidentifikator, UFI ${inForce(act).de}; keiner ist aufgezeichnet.`,
    fr: `Les centres antipoison demandent un identifiant unique de formulation, UFI ${inForce(act).fr}\u202f; aucun n’est consigné.`,
    es: `Los centros de toxicología piden un identificador único de fórmula, UFI ${inForce(act).es}; no hay ninguno registrado.`,
  }),
  "us-artists-paint-exempt-labelled": ({ names, limit, ...act }) => ({
    en: `It holds lead (${en.namesWithin(names)}); artists' paints are exempt from the ban on paint with more than ${en.percent(limit)} of it ${inForce(act).en}, but have to be labelled.`,
    de: `Enthält Blei (${de.namesWithin(names)}); Künstlerfarben sind vom Verbot von Farbe mit mehr als ${de.percent(limit)} davon ausgenommen ${inForce(act).de}, müssen aber gekennzeichnet sein.`,
    fr: `Contient du plomb (${fr.namesWithin(names)})\u202f; les peintures pour artistes sont exemptées de l’interdiction des peintures qui en ont plus de ${fr.percent(limit)} ${inForce(act).fr}, mais doivent être étiquetées.`,
    es: `Contiene plomo (${es.namesWithin(names)}); las pinturas para artistas están exentas de la prohibición de pinturas con más del ${es.percent(limit)} de plomo ${inForce(act).es}, pero deben etiquetarse.`,
  }),
  "us-review-on-record": (act) => ({
    en: `Art materials need a toxicologist's review of the formulation ${inForce(act).en}; one is on record.`,
    de: `Bei Künstlermaterial muss ein Toxikologe die Rezeptur prüfen ${inForce(act).de}; eine Prüfung liegt vor.`,
    fr: `Le matériel pour artistes demande l’examen de la formule par un toxicologue ${inForce(act).fr}\u202f; un examen est consigné.`,
    es: `Los materiales para artistas necesitan que un toxicólogo revise la fórmula ${inForce(act).es}; hay una revisión registrada.`,
  }),
  "us-review-wanted": (act) => ({
    en: `Art materials need a toxicologist's review of the formulation before they are sold there ${inForce(act).en}; of this colour none is recorded.`,
    de: `Bei Künstlermaterial muss ein Toxikologe die Rezeptur prüfen, bevor es dort verkauft wird ${inForce(act).de}; für diese Farbe ist keine Prüfung aufgezeichnet.`,
    fr: `Le matériel pour artistes demande l’examen de la formule par un toxicologue avant d’y être vendu ${inForce(act).fr}\u202f; pour cette couleur, aucun n’est consigné.`,
    es: `Los materiales para artistas necesitan que un toxicólogo revise la fórmula antes de venderse allí ${inForce(act).es}; de este color no hay ninguna revisión registrada.`,
  }),
  "proposition-65": ({ substances, ...act }) => ({
    en: `California lists ${en.listed(substances.map((one) => metalWord(one).en))} ${inForce(act, alike("Proposition 65")).en}, and a warning may be due.`,
    de: `Kalifornien führt ${de.listed(substances.map((each) => wordOf(SUBSTANCES, metalWord(each).de, "de")))} auf ${inForce(act, alike("Proposition 65")).de}, und ein Warnhinweis kann nötig sein.`,
    fr: `La Californie inscrit sur sa liste ${fr.listed(substances.map((one) => wordOf(SUBSTANCES, metalWord(one).fr, "fr")))} ${inForce(act, alike("Proposition 65")).fr}, et un avertissement peut être dû.`,
    es: `California incluye en su lista ${es.listed(substances.map((one) => wordOf(SUBSTANCES, metalWord(one).es, "es")))} ${inForce(act, alike("Proposition 65")).es}, y puede hacer falta una advertencia.`,
  }),
  "acts-not-known-here": {
    en: "We do not know the rules elsewhere.",
    de: "Die Vorschriften in anderen Ländern kennen wir nicht.",
    fr: "Nous ne connaissons pas les règles ailleurs.",
    es: "No conocemos las normas en otros lugares.",
  },
};
