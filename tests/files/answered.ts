import { type FileProblem, isFileProblem } from "../../src/files/fileProblem";

/** The answer, of something that must have been possible. */
export function answered<Answer extends object>(answer: Answer | FileProblem): Answer {
  if (isFileProblem(answer)) throw new Error(`refused: ${answer.problem}`);
  return answer;
}
