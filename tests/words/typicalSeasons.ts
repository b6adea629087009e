import type { Finding } from "../../src/nouns/finding";
import { manyTrials } from "../../src/questions/manyTrials";
import { totalsOnly } from "../../src/questions/totalsOnly";
import { worthIt } from "../../src/questions/worthIt";
import { found, given } from "../questions/range";

/*
 * Typical answers to what a season's totals say. The questions answer themselves here: their figures are checked
 * against R in tests/functions, and what stands approved is how they are told.
 */

const totals = (named: Parameters<typeof given>[0]) => found(totalsOnly(given(named)));
/** Strawberries under netting at Marlpit Corner: fruit from one row each. */
const berries = { usual_total: ["No net", 412], usual_plants: 30, new_total: ["Coarse net", 655], new_plants: 30 };

const worth = (named: Parameters<typeof given>[0]) => found(worthIt(given(named)));
/** Kilograms of courgettes per plant at Marlpit Corner. */
const courgettes = {
  usual: ["Bare soil (kg)", 2.1, 3.4, 2.9, 3.3, 2.7, 3.6],
  new: ["Straw (kg)", 4.4, 3.9, 5.1, 4.2, 3.7, 4.8],
};

const trials = (named: Parameters<typeof given>[0]) => found(manyTrials(given(named)));
/** Two plants each of six crops at Marlpit Corner, averages in kilograms. */
const crops = {
  usual_averages: ["Bare soil", 3.1, 0.9, 2.2, 1.4, 4.8, 0.6],
  new_averages: ["Straw", 4.4, 1.1, 3.3, 1.3, 6.9, 0.8],
  names: ["Crop", "courgettes", "runner beans", "beetroot", "leeks", "squash", "chard"],
};

/** By the title of the approved file's section. */
export const typicalSeasons: Readonly<Record<string, Finding>> = {
  "TOTALSONLY berries under a coarse net": totals(berries),
  "TOTALSONLY berries where plants differ by 20 %": totals({ ...berries, unevenness: 0.2 }),
  "TOTALSONLY berries under two nets": totals({
    usual_total: ["Coarse net", 655],
    usual_plants: 30,
    new_total: ["Fine net", 640],
    new_plants: 29,
  }),
  "TOTALSONLY beans from two plants each": totals({ usual_total: 24, usual_plants: 2, new_total: 72, new_plants: 2 }),
  "TOTALSONLY level": totals({ usual_total: 100, usual_plants: 10, new_total: 50, new_plants: 5 }),
  "TOTALSONLY weights": totals({
    usual_total: ["Bare soil (kg)", 24.147],
    usual_plants: 8,
    new_total: ["Straw (kg)", 30.454],
    new_plants: 7,
    unevenness: 0.25,
  }),
  "TOTALSONLY no fruit on the usual": totals({ usual_total: 0, usual_plants: 2, new_total: 5, new_plants: 2 }),
  "TOTALSONLY no fruit on the new": totals({ usual_total: 5, usual_plants: 2, new_total: 0, new_plants: 2 }),
  "TOTALSONLY no fruit at all": totals({ usual_total: 0, usual_plants: 2, new_total: 0, new_plants: 2 }),
  "TOTALSONLY no weight on the usual": totals({
    usual_total: 0,
    usual_plants: 2,
    new_total: 5.5,
    new_plants: 2,
    measure: "weight",
  }),
  "MANYTRIALS six crops": trials(crops),
  "MANYTRIALS not settled": trials({ usual_averages: [3, 4, 5], new_averages: [4, 3.5, 6] }),
  "MANYTRIALS two seasons": trials({
    usual_averages: ["Old", 3, 4],
    new_averages: ["New", 5, 6.7],
    names: ["Year", 2022, 2023],
  }),
  "MANYTRIALS behind": trials({
    usual_averages: crops.new_averages,
    new_averages: crops.usual_averages,
    names: crops.names,
  }),
  "MANYTRIALS one row, one left out": trials({ usual_averages: [3, 0], new_averages: [4, 2] }),
  "MANYTRIALS all alike": trials({ usual_averages: [3, 6], new_averages: [4, 8] }),
  "WORTHIT straw pays": worth({ ...courgettes, price: 2.5, extra_cost: 0.5, next_plants: 120 }),
  "WORTHIT straw may or may not pay": worth({ ...courgettes, price: 2.5, extra_cost: 3 }),
  "WORTHIT straw does not pay": worth({ ...courgettes, price: 0.5, extra_cost: 4, how: "pairs" }),
  "WORTHIT a cheaper way with less harvest": worth({
    ...courgettes,
    usual: courgettes.new,
    new: courgettes.usual,
    price: 2.5,
    extra_cost: -1,
  }),
  "WORTHIT two averages": worth({ usual: 3, new: 4.2, price: 2.5, extra_cost: 1.1 }),
  "WORTHIT no extra": worth({ usual: 3, new: 3, price: 2.5, extra_cost: 0 }),
  "WORTHIT one plant against two": worth({ usual: [3], new: [4, 5], price: 2.5, extra_cost: 1.1 }),
  "TOTALSONLY a total not recorded": totals({ ...berries, new_total: "forgot" }),
};
