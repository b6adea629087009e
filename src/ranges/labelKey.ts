/** "plant" labels also disregard spaces round - _ and /: "B1 - 1" is "B1-1". */
export type LabelKind = "name" | "plant";

/**
 * What two labels have in common when they mean the same: letter case, spaces round them and repeated spaces do not
 * count (METHODS 3). Different words stay different: "bare" is not "Bare soil".
 */
export function labelKey(label: string, kind: LabelKind): string {
  const folded = label.trim().replace(/\s+/g, " ").normalize("NFC").toLowerCase();
  return kind === "plant" ? folded.replace(/ ?([-_/]) ?/g, "$1") : folded;
}
