import { answer } from "./answer";

/**
 * Adds up a log of picks: one row per pick in, one row per plant out, with what was left out or needs a look.
 * @customfunction TALLYPICKS
 * @requiresParameterAddresses
 * @param plants The plant of each pick
 * @param dates The date of each pick, as tall as the plants; may be left empty
 * @param amounts What was picked, as tall as the plants; "lost" for a plant that was lost
 * @param [show] "answer" (the table), "words", "cautions", "left out", a plant's name for its total, or a column such as "Total"
 * @param [treatments] The treatment of each pick's plant, as tall as the plants
 * @param [beds] The bed of each pick's plant, as tall as the plants
 * @param [all_plants] Every plant set out, in one to three columns: plant, treatment, bed
 * @param [unit] The unit of the totals: g, kg, lb, oz, count, ml, l, cm, m, in, ft
 * @param [loss_notes] A column in which "lost" or "dead" stands where the amounts are empty, as tall as the plants
 * @param invocation the call's place and its arguments' addresses
 * @returns the table: one row per plant
 */
export function tallyPicks(
  plants: any[][],
  dates: any[][],
  amounts: any[][],
  show: any,
  treatments: any[][],
  beds: any[][],
  all_plants: any[][],
  unit: any,
  loss_notes: any[][],
  invocation: CustomFunctions.Invocation,
): any[][] {
  return answer(
    "TALLYPICKS",
    [plants, dates, amounts, show, treatments, beds, all_plants, unit, loss_notes],
    invocation,
  );
}
