import type { Known } from "./known";
import type { Place } from "./place";

/** How many of a treatment's plants were lost. */
export interface Loss {
  readonly name: string | null;
  readonly role: "usual" | "new";
  readonly lost: number;
  readonly setOut: number;
}

/** Something a grower should look out for (METHODS 9.2): its code and the facts its sentence needs. */
export type Caution =
  | {
      readonly caution: "C01";
      readonly plants: readonly [usual: number, tried: number];
      readonly pairs: boolean;
      readonly mostOneSided: number;
    }
  | { readonly caution: "C02"; readonly listedTwice?: true }
  | {
      readonly caution: "C03";
      readonly losses: readonly Loss[];
      readonly change: Known;
      readonly changeLostAsZero: Known;
      readonly strong: boolean;
      readonly countedAsZero: boolean;
    }
  | { readonly caution: "C04" }
  | { readonly caution: "C05"; readonly because: "little" | "unsteady" }
  | { readonly caution: "C06"; readonly places: readonly Place[] }
  | { readonly caution: "C07"; readonly name: string | null; readonly role: "usual" | "new" }
  | { readonly caution: "C09"; readonly name: string | null; readonly share: number }
  | { readonly caution: "C10" }
  | { readonly caution: "C11" }
  | { readonly caution: "C12" }
  | { readonly caution: "C13" }
  | { readonly caution: "C14"; readonly count: number }
  | { readonly caution: "C15"; readonly zeros: number }
  | { readonly caution: "C16"; readonly change: number }
  | { readonly caution: "C17" }
  | { readonly caution: "C18" }
  | { readonly caution: "C20"; readonly count: number }
  | { readonly caution: "C21"; readonly place: Place }
  | { readonly caution: "C22" }
  | { readonly caution: "C25" }
  | { readonly caution: "C27"; readonly unevenness: number }
  | { readonly caution: "C28" }
  | { readonly caution: "C29" }
  | { readonly caution: "C30" }
  | { readonly caution: "C31" }
  | { readonly caution: "C32" }
  | { readonly caution: "C34" }
  | { readonly caution: "C35"; readonly place: Place }
  | { readonly caution: "C36"; readonly comparisons: number }
  | { readonly caution: "C37" }
  | { readonly caution: "C38"; readonly places: readonly Place[] }
  | { readonly caution: "C39" };
