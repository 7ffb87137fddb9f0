/**
 * Maritime identification digits by country (ISO 3166-1 alpha-2). Read in two public listings that agree. Digits that are
 * not here may have been given out since: nothing is concluded from them.
 */
import type { Citation } from '../bibliography.js'
import type { CountryCode } from './countries.js'

const digitsByCountry: Readonly<Record<CountryCode, readonly number[]>> = {
  AL: [201], AD: [202], AT: [203], PT: [204, 255, 263], BE: [205], BY: [206], BG: [207], VA: [208], CY: [209, 210, 212], DE: [211, 218],
  GE: [213], MD: [214], MT: [215, 229, 248, 249, 256], AM: [216], DK: [219, 220], ES: [224, 225], FR: [226, 227, 228], FI: [230], FO: [231],
  GB: [232, 233, 234, 235], GI: [236], GR: [237, 239, 240, 241], HR: [238], MA: [242], HU: [243], NL: [244, 245, 246], IT: [247], IE: [250],
  IS: [251], LI: [252], LU: [253], MC: [254], NO: [257, 258, 259], PL: [261], ME: [262], RO: [264], SE: [265, 266], SK: [267], SM: [268],
  CH: [269], CZ: [270], TR: [271], UA: [272], RU: [273], MK: [274], LV: [275], EE: [276], LT: [277], SI: [278], RS: [279],
  AI: [301], US: [303, 338, 366, 367, 368, 369], AG: [304, 305], AW: [307], BS: [308, 309, 311], BM: [310], BZ: [312], BB: [314], CA: [316],
  KY: [319], CR: [321], CU: [323], DM: [325], DO: [327], GP: [329], GD: [330], GL: [331], GT: [332], HN: [334], HT: [336], JM: [339], KN: [341],
  LC: [343], MX: [345], MQ: [347], MS: [348], NI: [350], PA: [351, 352, 353, 354, 355, 356, 357, 370, 371, 372, 373], PR: [358],
  SV: [359], PM: [361], TT: [362], TC: [364], VC: [375, 376, 377], VG: [378], VI: [379],
  AF: [401], SA: [403], BD: [405], BH: [408], BT: [410], CN: [412, 413, 414], TW: [416], LK: [417], IN: [419], IR: [422], AZ: [423], IQ: [425],
  IL: [428], JP: [431, 432], TM: [434], KZ: [436], UZ: [437], JO: [438], KR: [440, 441], PS: [443], KP: [445], KW: [447], LB: [450], KG: [451],
  MO: [453], MV: [455], MN: [457], NP: [459], OM: [461], PK: [463], QA: [466], SY: [468], AE: [470, 471], TJ: [472], YE: [473, 475], HK: [477],
  BA: [478],
  AU: [503], MM: [506], BN: [508], FM: [510], PW: [511], NZ: [512], KH: [514, 515], CX: [516], CK: [518], FJ: [520], CC: [523], ID: [525],
  KI: [529], LA: [531], MY: [533], MP: [536], MH: [538], NC: [540], NU: [542], NR: [544], PF: [546], PH: [548], PG: [553], PN: [555], SB: [557],
  AS: [559], WS: [561], SG: [563, 564, 565, 566], TH: [567], TO: [570], TV: [572], VN: [574], VU: [576, 577], WF: [578],
  ZA: [601], AO: [603], DZ: [605], BI: [609], BW: [611], CF: [612], CG: [615], KM: [616, 620], CV: [617], CI: [619], DJ: [621], EG: [622],
  ET: [624], ER: [625], GA: [626], GH: [627], GM: [629], GW: [630], GQ: [631], GN: [632], BF: [633], KE: [634], LR: [636, 637], SS: [638], LY: [642],
  LS: [644], MU: [645], MG: [647], ML: [649], MZ: [650], MR: [654], MW: [655], NE: [656], NG: [657], NA: [659], RE: [660], RW: [661], SD: [662],
  SN: [663], SC: [664], SH: [665], SO: [666], SL: [667], ST: [668], SZ: [669], TD: [670], TG: [671], TN: [672], TZ: [674, 677], UG: [675],
  CD: [676], ZM: [678], ZW: [679],
  AR: [701], BR: [710], BO: [720], CL: [725], CO: [730], EC: [735], FK: [740], GF: [745], GY: [750], PY: [755], PE: [760], SR: [765], UY: [770],
  VE: [775],
}

const countryByDigits: ReadonlyMap<number, CountryCode> = new Map(
  Object.entries(digitsByCountry).flatMap(([country, digits]) => digits.map(mid => [mid, country] as const)),
)

/** The country whose digits these are, or null where the table does not say. */
export const countryOfMid = (midNumber: number): CountryCode | null => countryByDigits.get(midNumber) ?? null

export const midCitation: Citation = { source: 'itu-mid', place: 'table of maritime identification digits' }
