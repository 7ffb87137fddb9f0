declare module 'tar-fs' {
  import type { Writable } from 'node:stream'
  /** A stream that unpacks the tar archive written to it into a folder. */
  export function extract(folder: string): Writable
}
