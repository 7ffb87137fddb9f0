/** Folders that come with the program. */
import { fileURLToPath } from 'node:url'

export const starterFolder = fileURLToPath(new URL('../../starter-vessel', import.meta.url))
