import { calledFunctions, outsideTexts } from "./pieces";

/** Functions younger than Excel's file form, which it stores with a mark (Microsoft's list of _xlfn. functions). */
const young: ReadonlySet<string> = new Set(
  `ACOT ACOTH AGGREGATE ARABIC ARRAYTOTEXT BASE BETA.DIST BETA.INV BINOM.DIST BINOM.DIST.RANGE BINOM.INV BITAND
  BITLSHIFT BITOR BITRSHIFT BITXOR BYCOL BYROW CEILING.MATH CEILING.PRECISE CHISQ.DIST CHISQ.DIST.RT CHISQ.INV
  CHISQ.INV.RT CHISQ.TEST CHOOSECOLS CHOOSEROWS COMBINA CONCAT CONFIDENCE.NORM CONFIDENCE.T COT COTH COVARIANCE.P
  COVARIANCE.S CSC CSCH DAYS DECIMAL DROP ERF.PRECISE ERFC.PRECISE EXPAND EXPON.DIST F.DIST F.DIST.RT F.INV F.INV.RT
  F.TEST FILTERXML FLOOR.MATH FLOOR.PRECISE FORECAST.ETS FORECAST.LINEAR FORMULATEXT GAMMA GAMMA.DIST GAMMA.INV
  GAMMALN.PRECISE GAUSS HSTACK HYPGEOM.DIST IFNA IFS IMCOSH IMCOT IMCSC IMCSCH IMSEC IMSECH IMSINH IMTAN ISFORMULA
  ISOMITTED ISOWEEKNUM LAMBDA LET LOGNORM.DIST LOGNORM.INV MAKEARRAY MAP MAXIFS MINIFS MODE.MULT MODE.SNGL MUNIT
  NEGBINOM.DIST NORM.DIST NORM.INV NORM.S.DIST NORM.S.INV NUMBERVALUE PDURATION PERCENTILE.EXC PERCENTILE.INC
  PERCENTRANK.EXC PERCENTRANK.INC PERMUTATIONA PHI POISSON.DIST QUARTILE.EXC QUARTILE.INC RANDARRAY RANK.AVG RANK.EQ
  REDUCE RRI SCAN SEC SECH SEQUENCE SHEET SHEETS SKEW.P SORTBY STDEV.P STDEV.S SWITCH T.DIST T.DIST.2T T.DIST.RT T.INV
  T.INV.2T T.TEST TAKE TEXTAFTER TEXTBEFORE TEXTJOIN TEXTSPLIT TOCOL TOROW UNICHAR UNICODE UNIQUE VALUETOTEXT VAR.P
  VAR.S VSTACK WEIBULL.DIST WRAPCOLS WRAPROWS XLOOKUP XMATCH XOR Z.TEST`.split(/\s+/),
);
const youngest: ReadonlySet<string> = new Set(["FILTER", "SORT"]);

/** Functions whose own names Excel stores in a way that is not written here. */
const naming: ReadonlySet<string> = new Set(["LET", "LAMBDA"]);

/**
 * A formula of the grid in the form in which Excel stores it, without "=": our calls as `_xldudf_FAIRBED_…`, younger
 * functions with their marks.
 *
 * @returns undefined of a formula with names of its own (LET, LAMBDA)
 */
export function fileFormula(formula: string, own: ReadonlySet<string>): string | undefined {
  if (calledFunctions(formula).some((name) => naming.has(name))) return undefined;
  return outsideTexts(formula.replace(/^=/, ""), (piece) =>
    piece.replaceAll(/(?<![\w.])([A-Za-z][\w.]*)(?=\s*\()/g, (name: string) => storedName(name, own)),
  );
}

/** Whether a formula of the grid calls our functions, or names them in a text. */
export function holdsOurs(formula: string): boolean {
  return /FAIRBED\./i.test(formula);
}

function storedName(name: string, own: ReadonlySet<string>): string {
  const capitals = name.toUpperCase();
  if (capitals.startsWith("FAIRBED.") && own.has(capitals.slice(8))) return `_xldudf_FAIRBED_${capitals.slice(8)}`;
  if (youngest.has(capitals)) return `_xlfn._xlws.${name}`;
  return young.has(capitals) ? `_xlfn.${name}` : name;
}
