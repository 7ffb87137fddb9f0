/** A conductor's cross-section with the designation the cable is sold by: tables are entered by designation. */
export type ConductorSize =
  | { readonly system: 'mm2'; readonly designation: string; readonly crossSectionMm2: number }
  | { readonly system: 'awg'; readonly designation: string; readonly crossSectionMm2: number }
