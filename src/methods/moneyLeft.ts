/** Extra harvest per plant, new − usual, in the unit that the price is for; a range's ends likewise. */
export interface ExtraPerPlant {
  readonly extra: number;
  /** Null where nothing tells how far luck reaches. */
  readonly range: { readonly low: number; readonly high: number } | null;
  readonly usualMean: number;
}

/** What the market and the new way ask. */
export interface Costs {
  /** Money per unit of the harvest, above 0. */
  readonly price: number;
  /** Extra money per plant for the new way; below 0 when it is cheaper. */
  readonly extraCost: number;
}

/** Money per plant, and what just pays. */
export interface MoneyLeft {
  readonly worth: number;
  readonly left: number;
  readonly leftRange: { readonly low: number; readonly high: number } | null;
  /** Extra cost over extra harvest; NaN when there is no extra harvest. */
  readonly costOfExtra: number;
  /** The extra harvest per plant that just pays; below 0 when the new way is cheaper. */
  readonly breakEvenExtra: number;
  /** The same as a fraction of the usual average; NaN when that is not above 0. */
  readonly breakEvenChange: number;
}

/**
 * What is left per plant when the extra harvest is sold and the extra cost paid. Price and cost are taken as certain, so
 * the range is the harvest's, stretched and moved.
 *
 * Source: common practice in farm extension, where it is called a partial budget.
 */
export function moneyLeft({ extra, range, usualMean }: ExtraPerPlant, { price, extraCost }: Costs): MoneyLeft {
  const left = (amount: number): number => price * amount - extraCost;
  const breakEvenExtra = extraCost / price;
  return {
    worth: price * extra,
    left: left(extra),
    leftRange: range === null ? null : { low: left(range.low), high: left(range.high) },
    costOfExtra: extra > 0 ? extraCost / extra : Number.NaN,
    breakEvenExtra,
    breakEvenChange: usualMean > 0 ? breakEvenExtra / usualMean : Number.NaN,
  };
}
