/** Secrets that stand where every edition of the pack carries them. */
import { find, type Finding } from '../../findings/finding.js'
import { inWords } from '../../findings/words.js'
import type { Vessel } from '../../model/vessel.js'
import { secretAmongSettings, secretElsewhere } from './findings.js'

/** A shorter one stands in other words by chance. */
const shortestLength = 6

export function secretFindings(vessel: Vessel): readonly Finding[] {
  const secrets = vessel.credentials.filter(({ secret }) => secret !== null && secret.length >= shortestLength)
  const placesOf = secrets.length === 0 ? () => [] : entriesHolding(vessel)
  return [
    ...vessel.settings.filter(({ name }) => secretName.test(name)).map(({ itemTag, name }) => find(secretAmongSettings, {
      subject: { kind: 'setting', id: itemTag }, field: null, evidence: {}, limit: null, context: { name },
    })),
    ...secrets.flatMap(({ itemTag, name, secret }) => {
      const places = placesOf(secret!)
      return places.length === 0 ? [] : [find(secretElsewhere, {
        subject: { kind: 'credential', id: itemTag }, field: null, evidence: {}, limit: null, context: { name, places: inWords(places) },
      })]
    }),
  ]
}

const secretName = /\b(password|passphrase|pass phrase|passcode|PIN|PIN code|(wpa\d?|network|wi-?fi|pre-shared|security) key)$/i

/** By a text: what holds it anywhere in its entry, by what it is called. Every entry is written out once, every text looked for once. */
function entriesHolding(vessel: Vessel): (text: string) => readonly string[] {
  const { credentials, identity, document, ...others } = vessel
  const lists = Object.values(others).filter(Array.isArray).flat() as readonly Readonly<Record<string, unknown>>[]
  const entries = [
    { called: 'the vessel’s own entry', text: JSON.stringify([identity, document]) },
    ...lists.map(entry => ({ called: String(entry['tag'] ?? entry['itemTag'] ?? entry['number'] ?? entry['issue'] ?? 'another entry'), text: JSON.stringify(entry) })),
    ...credentials.map(({ itemTag, name, keptAt }) => ({ called: `what is told of the login of ${itemTag}`, text: JSON.stringify([name, keptAt]) })),
  ]
  const known = new Map<string, readonly string[]>()
  return text => {
    const written = JSON.stringify(text).slice(1, -1)
    const places = known.get(text) ?? [...new Set(entries.filter(entry => entry.text.includes(written)).map(({ called }) => called))]
    known.set(text, places)
    return places
  }
}
