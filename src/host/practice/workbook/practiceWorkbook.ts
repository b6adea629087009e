import { type IWorkbookData, LocaleType } from "@univerjs/core";
import { beforePlanting } from "./beforePlanting";
import { cleanPicks } from "./cleanPicks";
import { doesItPay } from "./doesItPay";
import { luckInClass } from "./luckInClass";
import { manyCrops } from "./manyCrops";
import { messyPicks } from "./messyPicks";
import { plantByPlant } from "./plantByPlant";
import { sheetData } from "./sheetData";
import { theTrial } from "./theTrial";
import { totalsKept } from "./totalsKept";
import { tryYourOwn } from "./tryYourOwn";
import { twoPlantsEach } from "./twoPlantsEach";

const plans = [
  theTrial,
  plantByPlant,
  messyPicks,
  cleanPicks,
  twoPlantsEach,
  totalsKept,
  manyCrops,
  doesItPay,
  beforePlanting,
  luckInClass,
  tryYourOwn,
];

/** The workbook that the practice sheet opens with; every number in it is invented. */
export function practiceWorkbook(): IWorkbookData {
  return {
    id: "fairbed-practice",
    name: "Fairbed practice",
    appVersion: "0.25.1",
    locale: LocaleType.EN_US,
    styles: {},
    sheetOrder: plans.map((plan) => plan.id),
    sheets: Object.fromEntries(plans.map((plan) => [plan.id, sheetData(plan)])),
  };
}
