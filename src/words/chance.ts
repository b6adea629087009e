/** A probability as a number of times in 100, for "turns up … ": "about 5 times", "about once", "every time". */
export function timesInHundred(probability: number): string {
  const times = Math.round(probability * 100);
  if (probability < 0.01) return "less than once";
  if (times === 100) return probability === 1 ? "every time" : "nearly every time";
  return times === 1 ? "about once" : `about ${times} times`;
}

/** A probability as a share of 100 trials: "80", "fewer than 1", "more than 99". */
export function outOfHundred(probability: number): string {
  if (probability < 0.01) return "fewer than 1";
  return probability >= 0.995 && probability < 1 ? "more than 99" : `${Math.round(probability * 100)}`;
}

/** The other trials of the hundred, which together with `outOfHundred` make 100: "20" of 0.8. */
export function othersOfHundred(probability: number): string {
  if (probability < 0.01) return "more than 99";
  return probability >= 0.995 ? "fewer than 1" : `${100 - Math.round(probability * 100)}`;
}

/** The same where it is an estimate: "about 80", but "fewer than 1" and "more than 99" as they are. */
export function aboutOutOfHundred(probability: number): string {
  const share = outOfHundred(probability);
  return /^\d/.test(share) ? `about ${share}` : share;
}
