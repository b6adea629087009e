/** A p-value within this factor of its bar, either way, is close to it: there the label swap has a say (C22). */
export const CLOSE = 1.4;
