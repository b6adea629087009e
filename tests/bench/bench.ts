import { againstR } from "./againstR";
import { certifiedDigits } from "./certified";
import { againstJstat, longColumns, shuffles } from "./methods";
import { say } from "./report";
import { startUp } from "./startUp";
import { severalTreatments, worksheetFunctions } from "./worksheetFunctions";

say(
  `Node ${process.version}. Ratios of processor time, ours / theirs: the median of 15 alternating rounds (the middle half of them).`,
);
say("No second statistics library is installed: @stdlib and simple-statistics would be the ones to hold ours against.");
worksheetFunctions();
severalTreatments();
longColumns();
shuffles();
againstJstat();
startUp();
certifiedDigits();
againstR();
