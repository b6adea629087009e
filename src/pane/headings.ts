/** Words at the start of a heading that say what a column holds; the grower's own word may be any other. */

/** A bed, or what statisticians call so. */
export const BEDS = /^(?:bed|block|replicate|rep)s?\b/i;
/** A place of another name, which may be a bed. */
export const PLACES = /^(?:row|strip|plot|side|site|garden|place|spot)s?\b/i;
/** A plant by its label. */
export const PLANTS = /^(?:plant|label|tag)s?\b/i;
/** A day of picking. */
export const DATES = /^(?:date|day|picked|harvested)\b/i;
