/** The words that say a plant was lost; the pane shows them (METHODS 4.1). */
export const LOST_WORDS = ["lost", "dead", "died", "stolen", "broken", "missing plant"] as const;
