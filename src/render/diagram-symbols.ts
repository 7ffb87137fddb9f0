/**
 * Small symbols for boxes, drawn left of the tag in a field of 36 by 22 units; in idea those of IEC 60617. A box has
 * one when it is of the class of that name (`F1:::fuse`) and its tag leaves room.
 */
export const diagramSymbols = {
  battery: 'M0 11H13M13 1V21M21 6V16M21 11H36',
  fuse: 'M0 11H36M5 5H31V17H5Z',
  breaker: 'M0 11H10L27 1M27 11H36M24 8L30 14M24 14L30 8',
  switch: 'M0 11H10L27 1M27 11H36',
  generator: 'M29 11A11 11 0 1 1 7 11A11 11 0 1 1 29 11ZM22 8A5 5 0 1 0 23 12H18.5',
  motor: 'M29 11A11 11 0 1 1 7 11A11 11 0 1 1 29 11ZM13 16V6L18 12.5L23 6V16',
  lamp: 'M29 11A11 11 0 1 1 7 11A11 11 0 1 1 29 11ZM10.2 3.2L25.8 18.8M10.2 18.8L25.8 3.2',
  converter: 'M7 0H29V22H7ZM7 22L29 0',
} as const
