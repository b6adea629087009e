/** The few functions we use, or measure ours against, of jstat 1.9.6, which ships no types. Arguments outside a domain may give NaN or false. */
declare module "jstat" {
  interface JStat {
    readonly studentt: { inv(p: number, df: number): number; cdf(t: number, df: number): number };
    readonly normal: {
      inv(p: number, mean: number, deviation: number): number;
      cdf(x: number, mean: number, deviation: number): number;
    };
    readonly chisquare: { inv(p: number, df: number): number; cdf(x: number, df: number): number };
    readonly centralF: { cdf(x: number, d1: number, d2: number): number };
    mean(x: readonly number[]): number;
    variance(x: readonly number[], sample: boolean): number;
    erfcinv(p: number): number;
    gammapinv(p: number, a: number): number;
    ibetainv(p: number, a: number, b: number): number;
    ibeta(x: number, a: number, b: number): number;
    loggam(x: number): number;
  }
  const jStat: JStat;
  export = jStat;
}
