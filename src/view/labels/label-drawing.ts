/** A label as it is printed: SVG in millimetres, its upper left corner at the origin. */
import type { SignalWord } from '../../model/content.js'
import type { Label, TextBand } from '../../model/results/labels.js'
import { wholeHeightMm } from '../../model/label-sheet.js'
import type { LabelSize } from '../../model/vessel.js'
import { capitalHeightFactor, linePitchFactor } from '../../references/tables/letter-advances.js'
import { element, escaped } from '../drawings/svg.js'
import type { CodeModules } from './code.js'

/** A thousandth of a millimetre: the same bytes for the same place. */
export const mm = (value: number): string => String(Math.round(value * 1000) / 1000)

/** Colours of signal word panels by ANSI Z535.4 and ISO 3864, as on the pages; the symbol has the colour of the word. */
const signalColours: Readonly<Record<SignalWord, { readonly panel: string; readonly ink: string; readonly symbol: boolean }>> = {
  DANGER: { panel: '#c8102e', ink: '#ffffff', symbol: true },
  WARNING: { panel: '#ff8200', ink: '#000000', symbol: true },
  CAUTION: { panel: '#ffd100', ink: '#000000', symbol: true },
  NOTICE: { panel: '#0051ba', ink: '#ffffff', symbol: false },
}
const faces = { tag: "'IBM Plex Mono', monospace", words: "'IBM Plex Sans Condensed', sans-serif" } as const

export function labelDrawing({ layout, signal }: Label, modules: CodeModules | null): string {
  const bands = layout.bands.map(band => (band.kind === 'signal' && signal !== null ? signalBand(band, signal) : lines(band, '#000000')))
  return bands.join('') + (layout.code === null || modules === null ? '' : code(layout.code, modules))
}

/** At its real size, with the outline of what is stuck on, of a wrap-around label the clear tail too. For the page, not for the sheet. */
export function framedLabel(label: Label, size: LabelSize, modules: CodeModules | null): string {
  const height = wholeHeightMm(size)
  const frame = (y: number, h: number, fill: string) => element('rect', { x: '0', y: mm(y), width: mm(size.labelWidthMm), height: mm(h), rx: '1', style: `fill:${fill};stroke:#5b6b75;stroke-width:0.2` })
  const tail = size.clearTailMm > 0 ? frame(size.labelHeightMm, size.clearTailMm, '#eef2f4') : ''
  return element('svg', {
    xmlns: 'http://www.w3.org/2000/svg', class: 'label', viewBox: `-0.5 -0.5 ${mm(size.labelWidthMm + 1)} ${mm(height + 1)}`, role: 'img',
    width: `${mm(size.labelWidthMm + 1)}mm`, height: `${mm(height + 1)}mm`,
  }, frame(0, size.labelHeightMm, '#ffffff') + tail + labelDrawing(label, modules))
}

/** In the middle of its band by height; lines stand with their capitals in the middle of their pitch. */
function lines({ leftMm, topMm, heightMm, lines: texts, face, fit: { textSizeMm } }: TextBand, ink: string): string {
  const pitch = linePitchFactor * textSizeMm
  const first = topMm + (heightMm - texts.length * pitch) / 2 + pitch / 2 + (capitalHeightFactor * textSizeMm) / 2
  const style = `font:600 ${mm(textSizeMm)}px ${faces[face]};font-kerning:none;font-variant-ligatures:none;white-space:pre;fill:${ink}`
  return texts.map((text, i) => element('text', { x: mm(leftMm), y: mm(first + i * pitch), style }, escaped(text))).join('')
}

function signalBand(band: TextBand, signal: SignalWord): string {
  const { panel, ink, symbol } = signalColours[signal]
  const { leftMm, topMm, widthMm, heightMm } = band
  const square = leftMm - heightMm
  return element('rect', { x: mm(square), y: mm(topMm), width: mm(widthMm + heightMm), height: mm(heightMm), style: `fill:${panel}` })
    + (symbol ? alertSymbol(square, topMm, heightMm, panel, ink) : '')
    + lines(band, ink)
}

/** Safety alert symbol: an exclamation mark in a triangle. */
function alertSymbol(x: number, y: number, side: number, panel: string, ink: string): string {
  const at = (across: number, down: number) => `${mm(x + across * side)} ${mm(y + down * side)}`
  const triangle = `M${at(0.5, 0.16)}L${at(0.9, 0.84)}L${at(0.1, 0.84)}Z`
  const stroke = `M${at(0.46, 0.4)}L${at(0.54, 0.4)}L${at(0.525, 0.63)}L${at(0.475, 0.63)}Z`
  return element('path', { d: triangle, style: `fill:${ink};stroke:${ink};stroke-width:${mm(side * 0.05)};stroke-linejoin:round` })
    + element('path', { d: stroke, style: `fill:${panel}` })
    + element('circle', { cx: mm(x + 0.5 * side), cy: mm(y + 0.73 * side), r: mm(0.045 * side), style: `fill:${panel}` })
}

/** One path, dark runs row by row. */
function code({ leftMm, topMm, sideMm }: NonNullable<Label['layout']['code']>, modules: CodeModules): string {
  const module = sideMm / modules.length
  const runs = modules.flatMap((row, y) => row.flatMap((dark, x) => {
    if (!dark || row[x - 1] === true) return []
    const end = row.findIndex((other, i) => i > x && !other)
    return [`M${x} ${y}h${(end === -1 ? row.length : end) - x}v1H${x}z`]
  }))
  return element('path', { d: runs.join(''), transform: `translate(${mm(leftMm)} ${mm(topMm)}) scale(${String(module)})`, style: 'fill:#000000' })
}
