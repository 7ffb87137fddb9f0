/**
 * The address of a thing's page comes from its tag alone: it is printed in QR codes and letters and must not change from one
 * issue of the pack to the next. Lower case; anything but a-z, 0-9, dot and dash becomes a dash. The check stage refuses
 * tags that would come out alike.
 */
export const slug = (tag: string): string => tag.toLowerCase().replace(/[^a-z0-9.-]+/g, '-')
