/** Words at the start of a heading that say what a column holds; the grower's own word may be any other. */

export const BEDS = /^(?:bed|block|replicate|rep)s?\b/i;
export const PLANTS = /^(?:plant|label|tag)s?\b/i;
export const DATES = /^(?:date|day|picked|harvested)\b/i;
