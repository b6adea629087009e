/**
 * The level at which comparisons of several treatments are judged, and for which plans are made: all ranges together
 * miss the truth in one trial of 20 (METHODS 8.5 and 5.2).
 */
export const ALPHA = 0.05;
