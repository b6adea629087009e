import { column, type Matrix, nested } from "./trial";

/** A made-up pick log, one row a pick. Work for a clock; nothing is read off it. */
export interface PickLog {
  readonly plants: Matrix;
  readonly treatments: Matrix;
  readonly dates: Matrix;
  /** One in ten has its unit typed behind it. */
  readonly amounts: Matrix;
  /** The same amounts, all plain numbers. */
  readonly plainAmounts: Matrix;
}

/** 1 July 2024 as a worksheet holds it. */
const FIRST_DAY = 45_474;
const DAYS_BETWEEN = 3;

/** Every plant picked so many times. */
export function pickLog(plants: number, picks: number, seed: number): PickLog {
  const rows = Array.from({ length: plants * picks }, (_, at) => ({
    plant: at % plants,
    pick: Math.floor(at / plants),
  }));
  const plain = column(rows.length, seed);
  const amounts = plain.map((value, at) => (at % 10 === 9 ? `${Math.round(value)} g` : value));
  return {
    plants: rows.map(({ plant }) => [`P${plant + 1}`]),
    treatments: rows.map(({ plant }) => [`way ${plant % 4}`]),
    dates: nested(rows.map(({ pick }) => FIRST_DAY + DAYS_BETWEEN * pick)),
    amounts: amounts.map((amount) => [amount]),
    plainAmounts: nested(plain),
  };
}
