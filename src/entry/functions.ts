import { theDesk } from "../answers/theDesk";
import { doors } from "../functions/doors";
import { readBlanksWith } from "../host/blanks";
import { excelBlanks } from "../host/excel/excelBlanks";
import { excelFormats } from "../host/excel/excelFormats";
import { formatsShownWhen } from "../host/formats";
import { leaveVersion } from "./version";

for (const [id, door] of Object.entries(doors)) CustomFunctions.associate(id, door);
readBlanksWith(excelBlanks());
formatsShownWhen(excelFormats);
leaveVersion();

// the pane is a bundle of its own and asks the same desk, so that the statistics are in the page once
(globalThis as { [key: symbol]: unknown })[Symbol.for("fairbed.desk")] = theDesk;
