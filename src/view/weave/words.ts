/** Facts of the vessel that general text may name in a line, as `{{ vessel }}`. */
import type { ViewContext } from '../context.js'

export const wovenWords: Readonly<Record<string, (context: ViewContext) => string>> = {
  'vessel': ({ vessel }) => vessel.identity.name,
  'call-sign': ({ vessel }) => vessel.identity.callSign ?? 'call sign not recorded',
  'mmsi': ({ vessel }) => vessel.identity.mmsi ?? 'MMSI not recorded',
  'installer': ({ vessel }) => vessel.document.installer ?? 'the installer',
}
