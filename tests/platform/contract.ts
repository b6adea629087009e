/**
 * What growers' workbooks rely on: every function's id and its parameters in order, "?" for one that may be left out.
 * A line may be added; no line may change after a release.
 */
export const contract: Readonly<Record<string, string>> = {
  UPDOWN: "usual new show? confidence?",
  PERPLANT: "amounts show? planted? lost_plants?",
  UNEVENNESS: "amounts show? treatments? beds?",
  COMPARETWO: "usual new show? how? worthwhile? confidence? lost_plants?",
  COMPAREMANY: "amounts treatments show? beds? usual? how? worthwhile? lost_plants?",
  TOTALSONLY: "usual_total usual_plants new_total new_plants show? unevenness? measure?",
  PLANTSNEEDED: "change unevenness show? treatments? beds? chance? losses? worthwhile?",
  SMALLESTCHANGE: "plants_each unevenness show? treatments? beds? chance? direction?",
  CHANCETOSEE: "change plants_each unevenness show? treatments? beds? worthwhile?",
  WORTHIT: "usual new price extra_cost show? how? next_plants?",
  MANYTRIALS: "usual_averages new_averages show? names?",
  DRAWLOTS: "treatments plants_each draw_number show? beds?",
  TALLYPICKS: "plants dates amounts show? treatments? beds? all_plants? unit? loss_notes?",
  PICKCURVE: "treatments dates amounts show? plants_each? days?",
  HALFPICKED: "plants dates amounts show? start?",
  LOOKOVER: "cells show? kind? lowest_ok? highest_ok?",
  PLAINNUMBER: "cells unit?",
};
