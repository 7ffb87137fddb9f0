/** Exact conversions between the units of the two systems. The definitions are those of the international yard and pound (1959). */
export const mPerFt = 0.3048
export const mmPerIn = 25.4
export const kgPerLb = 0.45359237
/** International nautical mile (1929). */
export const kmPerNmi = 1.852
/** A circular mil is the area of a circle of 0.001 in diameter. */
export const mm2PerCmil = (Math.PI / 4) * 0.0254 ** 2

export const ftFromM = (lengthM: number): number => lengthM / mPerFt
export const inFromMm = (lengthMm: number): number => lengthMm / mmPerIn
export const lbFromKg = (massKg: number): number => massKg / kgPerLb
export const fahrenheitFromC = (temperatureC: number): number => (temperatureC * 9) / 5 + 32
export const celsiusFromF = (temperatureF: number): number => ((temperatureF - 32) * 5) / 9
export const cmilFromMm2 = (areaMm2: number): number => areaMm2 / mm2PerCmil
