import type { TrialNotes } from "../nouns/trialNotes";

/**
 * The lines on safety that a trial's texts call for (METHODS 7): for products with a label, for manure and the like,
 * for materials that may hold poison, and then where to ask. They are shown beside a result and never change it.
 *
 * @param texts treatment names, headings and notes, as typed
 * @returns nothing where no trigger word stands in them
 */
export function safetyLines(texts: Iterable<string>): readonly string[] {
  const read = [...texts].map((text) => text.replaceAll(falseFriends, " "));
  const lines = hazards.flatMap(({ words, line }) => (read.some((text) => words.test(text)) ? [line] : []));
  return lines.length === 0 ? [] : [...lines, askThere];
}

/**
 * The texts of a trial's notes that may name what was used; a place or a season may be called anything ("Ash Farm").
 */
export function notesToSearch({ crop, measure }: TrialNotes): readonly string[] {
  return [crop, measure];
}

/** What calls for a line on safety. */
interface Hazard {
  readonly words: RegExp;
  readonly line: string;
}

/** Harmless things whose names hold a trigger word. */
const falseFriends = new RegExp(wholeWords("green manures?", "leaf litters?"), "giu");

const hazards: readonly Hazard[] = [
  {
    words: wholeWords(
      "spray(s|ed|ing)?",
      "(pest|insect|fung|herb)icides?",
      "weed killers?",
      "weedkillers?",
      "feed(s|ing)?",
      "fertil\\p{L}*",
      "dos(es?|ed|ing)",
      "double rates?",
      "×2",
      "slug pellets?",
      "neem",
      "soaps?",
      "chelated",
    ),
    line: "Follow the product label: which crop, how much, how many days before harvest. Do not copy a result from above the label rate.",
  },
  {
    words: wholeWords(
      "manure[sd]?",
      "mucks?",
      "dung",
      "droppings?",
      "slurr(y|ies)",
      "guanos?",
      "compost teas?",
      "litters?",
      "biosolids?",
      "humanures?",
      "urine",
      "chicken pellets?",
      "nettle teas?",
    ),
    line:
      "Raw manure can carry germs that make people ill. US organic rules ask for 120 days from raw manure to harvest " +
      "if the crop touches the soil. They ask for 90 days if it does not. Many trials are shorter than that. " +
      "Composted manure is treated differently. Check the food-safety rules where you live. " +
      "Do not serve food from a trial you are unsure of.",
  },
  {
    words: wholeWords(
      "t[yi]res?",
      "creosoted?",
      "sleepers?",
      "pressure treated",
      "treated (wood|timber)",
      "sludges?",
      "ash(es)?",
      "coals?",
    ),
    line: "Ask your extension service before eating the crop.",
  },
];

const askThere =
  "For advice that costs money or affects health, ask your local extension or advisory service; they know local rules and soils.";

/** Finds any of these in any letter case, but within no longer word; a space may be a hyphen, or several spaces. */
function wholeWords(...words: readonly string[]): RegExp {
  const any = words.join("|").replaceAll(" ", "[\\s-]+");
  return new RegExp(`(?<![\\p{L}\\p{N}])(?:${any})(?![\\p{L}\\p{N}])`, "iu");
}
