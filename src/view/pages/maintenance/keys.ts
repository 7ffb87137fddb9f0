/** Addresses of the maintenance pages below the first. */
import { fixedPages } from '../../site-map.js'
import type { PageKey } from '../../view-model.js'

export const maintenanceKeys = {
  spring: `${fixedPages.maintenance}/spring`,
  autumn: `${fixedPages.maintenance}/autumn`,
  beforeAPassage: `${fixedPages.maintenance}/before-a-passage`,
  how: `${fixedPages.maintenance}/how`,
  parts: `${fixedPages.maintenance}/parts`,
  log: `${fixedPages.maintenance}/log`,
} as const satisfies Record<string, PageKey>

export const maintenanceTrail = [{ text: 'Maintenance', to: fixedPages.maintenance }]
