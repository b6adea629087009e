import { near } from "../near";

/** Fails unless actual, rounded to as many decimals as the printed number shows, may be that number. */
export function printed(what: string, actual: number, shown: string): void {
  const decimals = shown.split(".")[1]?.length ?? 0;
  near(what, actual, Number(shown), { absolute: 0.5000001 * 10 ** -decimals, relative: 0 });
}
