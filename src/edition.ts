/** What an edition of the pack must not carry is taken out here, once: after the calculation, before anything is shown or written. */
import type { Examined } from './build.js'
import { textsWithoutSecrets } from './load/secrets.js'
import { type SourceNode, valueAt, wordsOf } from './load/source-folder.js'
import { usualEditions, vesselForEdition } from './model/edition.js'
import type { Edition } from './model/vessel.js'

/** What may be shown to the readers of an edition: pages and record are made of nothing else. */
export interface ForEdition extends Omit<Examined, 'source' | 'models'> {
  readonly edition: Edition
  /** Text of the data files, what is withheld cut out. */
  readonly sourceTexts: ReadonlyMap<string, string>
}

export function forEdition({ source, models: _models, vessel, ...examined }: Examined, edition: Edition): ForEdition {
  return { ...examined, edition, vessel: vesselForEdition(vessel, edition), sourceTexts: textsWithoutSecrets(source, credential => !editionsOf(credential).includes(edition)) }
}

function editionsOf(credential: SourceNode): readonly string[] {
  const written = wordsOf(valueAt(credential, 'editions')).map(({ word }) => word)
  return written.length === 0 ? usualEditions : written
}
