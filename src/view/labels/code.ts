/** The code on an item's label. */
import encodeQR from 'qr'
import type { Tag } from '../../model/vessel.js'
import { leastModuleMm, quietZoneModuleCount } from '../../references/tables/label-practice.js'
import type { ViewContext } from '../context.js'

/** What a camera reads off the label: the address of the thing's page, or without an address of the manual, tag and name in words. */
export function codeContent({ vessel: { document, identity }, addressOf, nameOf }: ViewContext, tag: Tag): string {
  const page = addressOf(tag)
  if (document.manualAddress !== null && page !== null) return `${document.manualAddress}${page}/`
  return [`${tag} ${nameOf(tag) ?? ''}`.trim(), identity.name].join(', ')
}

/** Dark modules row by row, quiet zone included. */
export type CodeModules = readonly (readonly boolean[])[]

/**
 * Source   iso-18004: error correction M (about 15 % may be lost), four modules of quiet zone
 * Errors   null where a module would be smaller than a label printer prints cleanly
 */
export function codeModules(content: string, sideMm: number): CodeModules | null {
  const modules = encodeQR(content, 'raw', { ecc: 'medium', border: quietZoneModuleCount, scale: 1 })
  return sideMm / modules.length < leastModuleMm ? null : modules
}
