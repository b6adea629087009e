/** The few functions we use of jstat 1.9.6, which ships no types. Arguments outside a domain may give NaN or false. */
declare module "jstat" {
  interface JStat {
    readonly studentt: { inv(p: number, df: number): number; cdf(t: number, df: number): number };
    readonly normal: { inv(p: number, mean: number, deviation: number): number };
    readonly chisquare: { inv(p: number, df: number): number; cdf(x: number, df: number): number };
    erfcinv(p: number): number;
    gammapinv(p: number, a: number): number;
    ibetainv(p: number, a: number, b: number): number;
    ibeta(x: number, a: number, b: number): number;
    loggam(x: number): number;
  }
  const jStat: JStat;
  export = jStat;
}
