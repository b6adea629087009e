import type { Theme } from "../sheet";

/** Office's own theme; where it has none to tell, the browser's. */
export function excelTheme(): Theme {
  const theme: Partial<Office.OfficeTheme> | undefined = Office.context.officeTheme;
  if (theme?.isDarkTheme !== undefined) return { dark: theme.isDarkTheme };
  const dark = isDark(theme?.bodyBackgroundColor ?? "");
  return { dark: dark ?? matchMedia("(prefers-color-scheme: dark)").matches };
}

/** Whether a colour ("#212121") is dark; null for anything else. */
function isDark(colour: string): boolean | null {
  const [, red, green, blue] =
    /^#([\da-f]{2})([\da-f]{2})([\da-f]{2})$/i.exec(colour)?.map((part) => Number.parseInt(part, 16)) ?? [];
  if (red === undefined || green === undefined || blue === undefined) return null;
  return 0.299 * red + 0.587 * green + 0.114 * blue < 128;
}
