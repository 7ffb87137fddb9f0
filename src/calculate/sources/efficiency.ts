/** Share that a converter, inverter or charger gives of what it takes, where none is recorded. Common practice, 85 to 92 %: the least. */
export const usualEfficiencyPercent = 85
