/** Secrets that stand where every edition of the pack carries them. */
import { find, type Finding } from '../../findings/finding.js'
import { inWords } from '../../findings/words.js'
import type { Vessel } from '../../model/vessel.js'
import { secretAmongSettings, secretElsewhere } from './findings.js'

/** A shorter one stands in other words by chance. */
const shortestLength = 6

export function secretFindings(vessel: Vessel): readonly Finding[] {
  return [
    ...vessel.settings.filter(({ name }) => secretName.test(name)).map(({ itemTag, name }) => find(secretAmongSettings, {
      subject: { kind: 'setting', id: itemTag }, field: null, evidence: {}, limit: null, context: { name },
    })),
    ...vessel.credentials.flatMap(({ itemTag, name, secret }) => {
      const places = secret === null || secret.length < shortestLength ? [] : placesOf(vessel, secret)
      return places.length === 0 ? [] : [find(secretElsewhere, {
        subject: { kind: 'credential', id: itemTag }, field: null, evidence: {}, limit: null, context: { name, places: inWords(places) },
      })]
    }),
  ]
}

const secretName = /\b(password|passphrase|pass phrase|passcode|PIN|PIN code|(wpa\d?|network|wi-?fi|pre-shared|security) key)$/i

/** What holds the text anywhere in its entry, by what it is called. */
function placesOf(vessel: Vessel, secret: string): readonly string[] {
  const written = JSON.stringify(secret).slice(1, -1)
  const holds = (value: unknown): boolean => JSON.stringify(value).includes(written)
  const { credentials, identity, document, ...others } = vessel
  const lists = Object.values(others).filter(Array.isArray).flat() as readonly Readonly<Record<string, unknown>>[]
  const named = lists.filter(holds).map(entry => String(entry['tag'] ?? entry['itemTag'] ?? entry['number'] ?? entry['issue'] ?? 'another entry'))
  return [...new Set([
    ...(holds([identity, document]) ? ['the vessel’s own entry'] : []),
    ...named,
    ...credentials.filter(({ name, keptAt }) => holds([name, keptAt])).map(({ itemTag }) => `what is told of the login of ${itemTag}`),
  ])]
}
