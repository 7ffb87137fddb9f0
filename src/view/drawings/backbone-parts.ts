/** What the drawing of a backbone consists of: stations in their order and the cables between them, as finished words. */
import type { PageKey } from '../view-model.js'

/** A word that may lead to a page. */
export interface Label { readonly text: string; readonly to: PageKey | null }

export interface DrawnStation {
  readonly kind: 'terminator' | 'tee' | 'power' | 'isolator'
  readonly tag: string
  /** Beneath the tag: what arrives there, or the resistance of a terminator. */
  readonly beneath: string | null
  /** Key and name of the zone it is in. */
  readonly zone: { readonly key: string; readonly name: string } | null
  /** On the drop: cable and length, then device or circuit. Null for what has nothing hanging on it. */
  readonly hung: { readonly cable: Label | null; readonly length: string | null; readonly item: Label; readonly beside: string | null; readonly name: string } | null
  /** In place of it: "free", what an isolator does. */
  readonly words: string | null
}
export interface DrawnCable { readonly cable: Label; readonly facts: string }
/** `spans[i]` leads to station i; one more leads on from the last. */
export interface DrawnBackbone {
  readonly title: string
  readonly stations: readonly DrawnStation[]
  readonly spans: readonly (readonly DrawnCable[])[]
}
