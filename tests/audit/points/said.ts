/** What the words of a row must say for each misconception: the auditor knows the idea by its own words, whatever else is said. */
const SAID: Readonly<Record<string, RegExp>> = {
  'EP-ADD': /\badded\b/,
  'EP-SIGN-DROPPED': /signs? (?:was|were)? ?(?:left out|dropped)|left out the signs?/,
  'EP-REVERSED': /other way round|turned round|reversed/,
  'EP-MULTIPLIED': /multiplied/,
  'EP-STRENGTH-REVERSED': /more positive/,
  'EP-LEFT-IS-ANODE': /written first|left/,
  'EP-ELECTRONS-IN-SOLUTION': /electrons .*(?:salt bridge|solution)/,
  'EP-BRIDGE-DIRECTION': /positive ions .*negative electrode/,
  'HE-ADD-UNSCALED': /as they stand/,
  'HE-SCALE-OWN': /its own (?:number of )?electrons/,
  'HE-H-NOT-CANCELLED': /left .*(?:hydrogen ions|water)|(?:hydrogen ions|water).* left/,
  'LD-STOPS-EARLY': /stopped after the first step/,
  'LD-GOES-TOO-FAR': /too far/,
  'LD-COLOURS-SWAPPED': /swapped/,
  'ON-ION-CHARGE': /charge of the (?:whole )?ion/,
  'TI-RATIO-ONE': /1 : 1/,
  'TI-RATIO-INVERTED': /upside down|inverted/,
  'TI-CM3-AS-DM3': /left the volume/,
  'TI-FLASK-VOLUME': /whole flask/,
  'TI-ALIQUOT-NOT-SCALED': /diluted solution/,
  'TI-ALIQUOT-INVERTED': /wrong way/,
  'TI-WATER-COUNTED': /volume of acid/,
  'TI-OXALATE-ONE-E': /one electron/,
  'TI-ENDPOINT-REVERSED': /other way round/,
};

/** False when the words are not those of the misconception, or the auditor knows none for it. */
export function saysSlip(id: string, happened: string): boolean {
  return SAID[id]?.test(happened) ?? false;
}
