/**
 * Gathers what is asked in one tick, so that it is answered together.
 *
 * @param answerAll gets the different questions of a tick in the order in which they were asked; may not reject
 * @returns asks one question; null where `answerAll` gave no answer to it
 */
export function oneTick<Answer>(
  answerAll: (questions: readonly string[]) => Promise<readonly (Answer | null)[]>,
): (question: string) => Promise<Answer | null> {
  let asked: { readonly questions: Set<string>; readonly answers: Promise<readonly (Answer | null)[]> } | null = null;
  const begin = () => {
    const questions = new Set<string>();
    const answers = Promise.resolve().then(() => {
      asked = null;
      return answerAll([...questions]);
    });
    return { questions, answers };
  };
  return async (question) => {
    asked ??= begin();
    const { questions, answers } = asked;
    questions.add(question);
    const found = await answers;
    return found[[...questions].indexOf(question)] ?? null;
  };
}
