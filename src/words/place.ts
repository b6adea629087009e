import type { Place } from "../nouns/place";

/** A place as a grower finds it: "D10"; without an address "row 3 of usual" or "row 3, column 2 of usual". */
export function placeText({ argument, row, column, cell }: Place): string {
  if (cell !== null) return cell;
  return column === null ? `row ${row} of ${argument}` : `row ${row}, column ${column} of ${argument}`;
}

/** A place after a preposition that fits both kinds: "cell D10" or "row 3 of usual". */
export function placeNamed(place: Place): string {
  return place.cell === null ? placeText(place) : `cell ${place.cell}`;
}
