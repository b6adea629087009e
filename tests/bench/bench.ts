import { againstR } from "./againstR";
import { certifiedDigits } from "./certified";
import { againstLibraries, longColumns, shuffles } from "./methods";
import { practicePage } from "./practicePage";
import { records } from "./records";
import { say } from "./report";
import { startUp } from "./startUp";
import { workbookFiles } from "./workbookFiles";
import { severalTreatments, worksheetFunctions } from "./worksheetFunctions";

say(
  `Node ${process.version}. Ratios of processor time, ours / theirs: the median of 15 alternating rounds (the middle half of them).`,
);
worksheetFunctions();
records();
workbookFiles();
severalTreatments();
longColumns();
shuffles();
againstLibraries();
startUp();
certifiedDigits();
againstR();
const [, , address = "", program = ""] = process.argv;
void practicePage(address, program);
