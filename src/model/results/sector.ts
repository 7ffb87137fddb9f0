/** A stretch of bearings: clockwise from `fromDeg`, relative to the bow, over `widthDeg`. */
export interface Sector { readonly fromDeg: number; readonly widthDeg: number }
