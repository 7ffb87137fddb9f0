/**
 * Small symbols for boxes, drawn left of the tag in a field of 36 by 22 units; in idea those of IEC 60617. A box has
 * one when it is of the class of that name (`Q1:::switch`) and its tag leaves room.
 */
export const diagramSymbols = {
  switch: 'M0 11H10L27 1M27 11H36',
} as const
