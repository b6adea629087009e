/**
 * The sheet's own name for a cell: row 10 of column 4 is "D10".
 *
 * @param row from 1
 * @param column from 1
 */
export function cellName(row: number, column: number): string {
  return `${columnLetters(column)}${row}`;
}

function columnLetters(column: number): string {
  const before = Math.floor((column - 1) / 26);
  const letter = String.fromCharCode(65 + ((column - 1) % 26));
  return before > 0 ? columnLetters(before) + letter : letter;
}
