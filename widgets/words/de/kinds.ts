/** Arten von Teilen, Werkstoffe und Arten der Bewegung, die Links und Kapitel englisch behalten, wie Bilder und Listen sie nennen. */
export const PARTS: Readonly<Record<string, string>> = {
  'tapped block': 'Gewindeblock',
  'coupling nut': 'Langmutter',
  nut: 'Mutter',
  screw: 'Schraube',
  stud: 'Gewindebolzen',
  sleeve: 'Gewindehülse',
  spindle: 'Spindel',
  adapter: 'Adapter',
  'double nut': 'Doppelmutter',
  cap: 'Kappe',
  'socket screw': 'Zylinderschraube',
  'flange screw': 'Flanschschraube',
};
export const MATERIALS: Readonly<Record<string, string>> = {
  steel: 'Stahl',
  brass: 'Messing',
  aluminium: 'Aluminium',
  bronze: 'Bronze',
  plastic: 'Kunststoff',
};
export const WAYS: Readonly<Record<string, string>> = {
  'plain screw': 'einfache Schraube',
  wedge: 'Keil',
  lever: 'Hebel',
  'squeezed balls': 'zusammengedrückte Kugeln',
  'differential screw': 'Differenzialschraube',
};
const SOFTEST: Readonly<Record<string, string>> = {
  'its shank': 'ihr Schaft',
  'its thread': 'ihr Gewinde',
  'the wedge, squeezed': 'der gedrückte Keil',
  'the drive screw': 'die Antriebsschraube',
  'the thread of the drive': 'das Gewinde des Antriebs',
  'its pivot': 'sein Drehpunkt',
  'the bar, bent': 'der gebogene Balken',
  'where the balls touch each other': 'wo sich die Kugeln berühren',
  'where they stand': 'wo sie stehen',
  'the shank of thread A': 'der Schaft von Gewinde A',
  'the shank of thread C': 'der Schaft von Gewinde C',
  'thread A': 'Gewinde A',
  'thread C': 'Gewinde C',
};

export const partKind = (kind: string): string => PARTS[kind] ?? kind;
export const materialName = (name: string): string => MATERIALS[name] ?? name;
export const wayName = (name: string): string => WAYS[name] ?? name;
/** Was an einer Art der Bewegung am meisten nachgibt. */
export const softestPart = (name: string): string => SOFTEST[name] ?? name;
