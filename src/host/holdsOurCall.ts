/** Whether a formula names our namespace, and so may hold one of our calls. */
export function holdsOurCall(formula: string): boolean {
  return /\bfairbed\./i.test(formula);
}
