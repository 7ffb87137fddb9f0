/** What is taken where nothing is recorded. Common practice, no source; the pages say so where it is used. */

/**
 * Share that an inverter, converter or charger gives of what it takes, on average: 85 to 92 %. Design currents take the
 * least of that range, since they are to be on the safe side; a day's energy takes what is usual.
 */
export const typicalEfficiencyPercent = 88
/** Share of its rating that a standard alternator gives when hot: 70 to 80 %. */
export const hotAlternatorPercent = 75
/** Voltage of a 12 V battery while the sun charges it: the sum of the handbook divides by 12.8 V. In proportion for other nominal voltages. */
export const solarVoltageFactor = 12.8 / 12
/** Performance ratio of panels that lie flat on a boat: 0.60 to 0.70. */
export const flatPanelsFactor = 0.65
/** Share of the hours of daylight with sunshine. */
export const usualSunshinePercent = 50
/** Days that a bank is to last with nothing charging it. */
export const autonomyDays = 2
