/** Where the sun stands, by FAO-56: what the sums by day and by hour have in common. Angles in radians. */

/** 0.0820 MJ/m² a minute, in kWh/m² an hour. */
export const solarConstantKWhPerM2 = (0.082 * 60) / 3.6

export interface Sun {
  readonly declination: number
  /** Angle of the hour at sunset; 0 in the polar night, π where the sun does not set. */
  readonly sunset: number
  /** Inverse relative distance from the earth. */
  readonly distance: number
  /** sin φ · sin δ */
  readonly upright: number
  /** cos φ · cos δ */
  readonly level: number
}

export function sunOn(latitudeDeg: number, dayNumber: number): Sun {
  const latitude = (latitudeDeg * Math.PI) / 180
  const year = (2 * Math.PI * dayNumber) / 365
  const declination = 0.409 * Math.sin(year - 1.39)
  const sunsetCosine = -Math.tan(latitude) * Math.tan(declination)
  return {
    declination,
    sunset: Math.acos(Math.max(-1, Math.min(1, sunsetCosine))),
    distance: 1 + 0.033 * Math.cos(year),
    upright: Math.sin(latitude) * Math.sin(declination),
    level: Math.cos(latitude) * Math.cos(declination),
  }
}

/** Day of the year in the middle of each month, by which a month is reckoned. */
export const middleOfMonth: readonly number[] = [15, 46, 74, 105, 135, 166, 196, 227, 258, 288, 319, 349]
