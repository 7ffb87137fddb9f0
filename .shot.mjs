import puppeteer from 'puppeteer-core'
import chromium from '@sparticuz/chromium'
const [,, url, out, width, clip] = process.argv
const b = await puppeteer.launch({ executablePath: await chromium.executablePath(), args: chromium.args, headless: 'shell' })
const p = await b.newPage(); await p.setViewport({ width: +width, height: 900 })
await p.goto('file://' + url); await new Promise(r => setTimeout(r, 500))
const h = await p.evaluate(() => document.documentElement.scrollHeight)
console.log('height', h, 'overflow', await p.evaluate(() => document.documentElement.scrollWidth))
const top = +(clip ?? 0)
await p.screenshot({ path: out, clip: { x: 0, y: top, width: +width, height: Math.min(2200, h - top) }, captureBeyondViewport: true })
await b.close()
