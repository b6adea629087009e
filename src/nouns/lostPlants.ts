/** How lost plants are counted: as plants that are not there, or as plants that bore nothing. */
export type LostPlants = "leave out" | "count as zero";
