/** How many cells the grid takes at once. */
export const mostCells = 600_000;
