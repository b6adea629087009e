/** The units that can be read beside a number. */
export type Unit = "g" | "kg" | "lb" | "oz" | "ml" | "l" | "cm" | "m" | "in" | "ft";

/** What a unit measures, how big it is in g, ml or cm, and how growers write it (letter case aside). */
interface UnitFacts {
  readonly kind: "mass" | "volume" | "length";
  readonly size: number;
  readonly spellings: string;
}

/**
 * Sizes of pound, ounce, inch and foot are exact by definition.
 *
 * Source: NIST Special Publication 811 (2008), appendix B.8; NIST Handbook 44, appendix C.
 */
const UNITS: Readonly<Record<Unit, UnitFacts>> = {
  g: { kind: "mass", size: 1, spellings: "g gr grs gm gms gram grams gramme grammes" },
  kg: { kind: "mass", size: 1000, spellings: "kg kgs kilo kilos kilogram kilograms kilogramme kilogrammes" },
  lb: { kind: "mass", size: 453.59237, spellings: "lb lbs pound pounds" },
  oz: { kind: "mass", size: 28.349523125, spellings: "oz ozs ounce ounces" },
  ml: { kind: "volume", size: 1, spellings: "ml mls millilitre millilitres milliliter milliliters" },
  l: { kind: "volume", size: 1000, spellings: "l ltr ltrs litre litres liter liters" },
  cm: { kind: "length", size: 1, spellings: "cm cms centimetre centimetres centimeter centimeters" },
  m: { kind: "length", size: 100, spellings: "m mtr mtrs metre metres meter meters" },
  in: { kind: "length", size: 2.54, spellings: 'in ins inch inches "' },
  ft: { kind: "length", size: 30.48, spellings: "ft foot feet '" },
};

const BY_SPELLING = new Map(
  (Object.keys(UNITS) as Unit[]).flatMap((unit) =>
    UNITS[unit].spellings.split(" ").map((spelling) => [spelling, unit] as const),
  ),
);

/** The unit that a word stands for, with or without a full stop: "lbs", "Oz."; null for any other word. */
export function unitOf(word: string): Unit | null {
  return BY_SPELLING.get(word.toLowerCase().replace(/\.$/, "")) ?? null;
}

/**
 * A value in another unit, to the 15 digits that a sheet holds (1.005 kg are 1005 g); null where the two measure
 * different things (grams and centimetres).
 */
export function convert(value: number, from: Unit, to: Unit): number | null {
  if (from === to) return value;
  const [given, wanted] = [UNITS[from], UNITS[to]];
  return given.kind === wanted.kind ? Number(((value * given.size) / wanted.size).toPrecision(15)) : null;
}
