/** Editions: one model, several readers. What an edition must not carry is taken out of the vessel, once, before anything is shown. */
import type { Credential, Edition, Vessel } from './vessel.js'

export const editions = ['owner', 'service', 'yard'] as const satisfies readonly Edition[]

/** Of a credential that names none. */
export const usualEditions: readonly Edition[] = ['owner']

export const editionTitles: Readonly<Record<Edition, string>> = { owner: 'owner’s edition', service: 'service edition', yard: 'yard edition' }

/** The vessel as an edition may know it: that there is something to log in to, and where the secret is kept, stays. */
export const vesselForEdition = (vessel: Vessel, edition: Edition): Vessel =>
  ({ ...vessel, credentials: vessel.credentials.map(credential => credentialFor(credential, edition)) })

function credentialFor(credential: Credential, edition: Edition): Credential {
  const { editions: may, user, secret } = credential
  return may.includes(edition) || (user === null && secret === null) ? credential : { ...credential, user: null, secret: null, withheld: true }
}
