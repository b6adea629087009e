/** What the tests' grid works out. */
export const knowing = {
  own: new Set(["COMPARETWO", "UPDOWN"]),
  known: new Set(["SUM", "AVERAGE", "IF", "SORT", "XLOOKUP", "LOG10", "FAIRBED.COMPARETWO", "FAIRBED.UPDOWN"]),
};
