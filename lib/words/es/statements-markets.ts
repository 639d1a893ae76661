import type { InForce, MarketStatement } from "../../hazard/markets/market-statements.ts";
import type { WordingsOf } from "../../quantities/statement.ts";
import { wordOf } from "./closed-words.ts";
import { NUMBERS, dateWords, listed, namesWithin, percent, sentence, withUnit } from "./phrases.ts";
import { metalWord } from "./statements-studio.ts";

/** Substances that the acts are named after, as the tables have them; another stands as it is. */
const SUBSTANCES: Readonly<Record<string, string>> = {
  "lead carbonates": "carbonatos de plomo",
  "lead sulphates": "sulfatos de plomo",
  "lead compounds of very high concern": "compuestos de plomo extremadamente preocupantes",
  "lead chromate pigments": "pigmentos de cromato de plomo",
  "chromates under authorisation": "cromatos sujetos a autorización",
  "titanium dioxide": "dióxido de titanio",
  "carbon black": "negro de carbono",
};

/** What the acts of one market say of a sale there; the market stands beside the sentence. */
export const MARKET_WORDINGS: WordingsOf<MarketStatement> = {
  "lead-compound-not-as-paint": ({ names, substance, entry, ...act }) =>
    forbidden(
      act,
      `contiene ${namesWithin(names)}; estas sustancias (${wordOf(SUBSTANCES, substance)}) no pueden comercializarse ni usarse como pintura ${inForce(act, `entrada ${entry}`)}`,
    ),
  "lead-compound-not-identified": ({ names, ...act }) =>
    forbidden(
      act,
      `qué compuesto de plomo contiene ${namesWithin(names)} no está registrado, y los carbonatos y sulfatos de plomo no pueden comercializarse ni usarse como pintura ${inForce(act)}`,
    ),
  "leaded-paint-by-declaration": (act) =>
    sentence(
      `no hay licencia: el comprador firma una declaración de uso, el proveedor la envía con un aviso al organismo de patrimonio competente y puede suministrar tres semanas después como muy pronto, salvo que ese organismo se oponga; solo para restaurar o mantener obras de arte anteriores a 1992, edificios protegidos de los grados más altos y monumentos protegidos ${inForce(act)}`,
    ),
  "lead-limits-at-work": ({ airMgPerM3, bloodUgPer100Ml, until, bloodAfterUgPer100Ml, ...act }) =>
    sentence(
      `en el trabajo, el plomo en el aire queda por debajo de ${withUnit(NUMBERS.plain(airMgPerM3), "mg/m\u00b3")} en ocho horas y en la sangre por debajo de ${withUnit(NUMBERS.plain(bloodUgPer100Ml), "\u00b5g/100 ml")} hasta el ${dateWords(until)}, de ${withUnit(NUMBERS.plain(bloodAfterUgPer100Ml), "\u00b5g/100 ml")} desde entonces ${inForce(act)}; un país puede fijar un límite más bajo`,
    ),
  "substance-of-very-high-concern": ({ names, ...act }) =>
    sentence(
      `${namesWithin(names)} está en la lista de sustancias extremadamente preocupantes ${inForce(act)}: la ficha de datos de seguridad lo dice a quien lo compra para trabajar`,
    ),
  "cadmium-in-other-paints": ({ names, limit, ...act }) =>
    sentence(
      `contiene ${namesWithin(names)}; la entrada 23 prohíbe el ${percent(limit)} y más de cadmio en pinturas de los códigos arancelarios 3208 y 3209 ${inForce(act)}, y los colores para artistas en tubos y tarros tienen su propio código, 3213: haga confirmar el código de su pintura antes de venderla`,
    ),
  "cmr-not-to-the-public": ({ statements, ...act }) =>
    forbidden(
      act,
      `un pigmento seco que lleva ${listed(statements)} no puede suministrarse al público ${inForce(act)}`,
    ),
  "needs-authorisation": ({ names, ...act }) =>
    forbidden(
      act,
      `${namesWithin(names)} solo puede comercializarse y usarse con una autorización ${inForce(act)}`,
    ),
  "cmr-artists-paint-exempt": ({ statements, ...act }) =>
    sentence(
      `${listed(statements)} lo apartaría del público ${inForce(act)}; que las pinturas para artistas están exentas se cita de memoria`,
    ),
  "restricted-to-professional-users": ({ statements, ...act }) =>
    sentence(
      `reservado a usuarios profesionales, puesto que lleva ${listed(statements)} ${inForce(act)}`,
    ),
  "titanium-dioxide-without-h351": (act) =>
    sentence(`el dióxido de titanio no lleva aquí H351: su entrada ya no vale ${since(act)}`),
  "offer-names-hazards": ({ statements, ...act }) =>
    sentence(
      `si se vende al público por correo o en línea, el anuncio debe mostrar sus peligros ${inForce(act)}: ${listed(statements)}`,
    ),
  "formula-identifier-wanted": (act) =>
    sentence(
      `los centros de toxicología piden un identificador único de fórmula, UFI ${inForce(act)}; no hay ninguno registrado`,
    ),
  "us-artists-paint-exempt-labelled": ({ names, limit, ...act }) =>
    sentence(
      `contiene plomo (${namesWithin(names)}); las pinturas para artistas están exentas de la prohibición de pinturas con más del ${percent(limit)} de plomo ${inForce(act)}, pero deben etiquetarse`,
    ),
  "us-review-on-record": (act) =>
    sentence(
      `los materiales para artistas necesitan que un toxicólogo revise la fórmula ${inForce(act)}; hay una revisión registrada`,
    ),
  "us-review-wanted": (act) =>
    sentence(
      `los materiales para artistas necesitan que un toxicólogo revise la fórmula ${inForce(act)}; no hay ninguna registrada`,
    ),
  "proposition-65": ({ substances, ...act }) =>
    sentence(
      `California incluye en su lista ${listed(substances.map(substanceWord))} ${inForce(act, "Proposition 65")}, y puede hacer falta una advertencia`,
    ),
  "acts-not-known-here": () =>
    "No conocemos las normas en otros lugares: pregunte antes de ofrecerlo allí.",
};

function substanceWord(substance: string): string {
  return wordOf(SUBSTANCES, metalWord(substance));
}

/** Since when, and whether the act was read. */
function since({ since: from, standing }: InForce, ...before: readonly string[]): string {
  const recalled = standing === "memory" ? ", citado de memoria" : "";
  return `(${[...before, `desde el ${dateWords(from)}`].join(" ")}${recalled})`;
}

function inForce(act: InForce, entry?: string): string {
  return since(act, entry === undefined ? "en vigor" : `${entry}, en vigor`);
}

/** Legal basis and buyers as the record words them, which may be a sentence of its own. */
function forbidden({ basis, buyers }: InForce, words: string): string {
  const plain = (text: string): string => text.trim().replace(/\.$/, "");
  const unless =
    basis === undefined || buyers === undefined
      ? "no hay ninguna base legal registrada, así que aquí no se ofrece"
      : `se vende solo a: ${plain(buyers)}; base legal: ${plain(basis)}`;
  return sentence(`${words}; ${unless}`);
}
