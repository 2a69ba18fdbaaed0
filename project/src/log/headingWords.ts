import type { LogQuantity } from './quantities.ts';

/** By which words of a heading, in small letters, a quantity is known. A place beyond the first is for a person to name. */
export const headingWords: Readonly<Partial<Record<LogQuantity, RegExp>>> = {
  supply: /supply|vorlauf|leaving|discharge/,
  return: /return|r(ü|ue)cklauf|entering/,
  outdoor: /outdoor|outside|exterior|ambient|aussen|außen|ext(?![a-z])|\boat\b|weather.*temp/,
  indoor: /indoor|inside|interior|innen|room|living|hall(?!e)|bed|kitchen|thermostat|zone|house.*temp|\biat\b/,
  heat: /^heat(?!.?pump)|heat.?(meter|output|delivered|flow)|thermal|w(ä|ae)rme(?!pumpe)|heater/,
  unitPower: /heat.?pump|\bhp\b|compressor|outdoor.?unit|\bunit\b|hvac|w(ä|ae)rmepumpe|air.?con/,
  sunPower: /\bpv\b|solar.*(w|power|energy)|panel|inverter|photovolt/,
  battery: /batter|akku/,
  housePower: /house|total|mains|grid|main|consumption|verbrauch|load|meter/,
  flow: /air.?flow|\bflow\b|volum/,
  sun: /irradi|\bghi\b|radiation|pyran|solar|sun/,
  wind: /wind(?!.*dir)/,
  humidity: /humid|\brh\b|feuchte/,
};
