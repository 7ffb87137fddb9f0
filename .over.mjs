import puppeteer from 'puppeteer-core'; import chromium from '@sparticuz/chromium'
const b = await puppeteer.launch({ executablePath: await chromium.executablePath(), args: chromium.args, headless: 'shell' })
const p = await b.newPage(); await p.setViewport({ width: 360, height: 900 })
for (const f of process.argv.slice(2)) { await p.goto('file://' + f); console.log(f, await p.evaluate(() => [...document.querySelectorAll('main *')].filter(e => e.getBoundingClientRect().right > 360 && !e.closest('.scroll,.formula,.drawing')).slice(0,6).map(e => e.tagName+'.'+e.className+' '+Math.round(e.getBoundingClientRect().right)+' '+(e.textContent||'').slice(0,60)))) }
await b.close()
