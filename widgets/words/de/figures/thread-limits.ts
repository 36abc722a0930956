/** Wörter der Grenzmaße einer Schraube und einer Mutter. */
import { spokenNumber } from '../../../engine/index.ts';
import type * as En from '../../en/figures/thread-limits.ts';
import type { Same } from '../../same.ts';

const FIT = {
  clear: 'jede solche Mutter geht auf jede solche Schraube',
  'may bind': 'ob eine Mutter aufgeht, hängt von den Stücken ab',
  'never goes': 'keine solche Mutter geht auf eine solche Schraube',
};

const comesFrom = (byFormula: readonly string[], standard: string, measured: boolean): string =>
  measured
    ? `Die gemessenen Flankendurchmesser sind wie eingegeben; die anderen Grenzmaße sind die der ${standard}.`
    : byFormula.length === 0
      ? `Jedes Grenzmaß ist das veröffentlichte der ${standard}.`
      : byFormula.length === 6
        ? `Jedes Grenzmaß folgt den Formeln und der Rundung der ${standard}.`
        : `Nach Formel und Rundung: ${byFormula.join('; ')}; das Übrige aus den veröffentlichten Tabellen.`;

const LIES = { within: 'in den', below: 'unter den', above: 'über den' };

export const WORDS: Same<typeof En.WORDS> = {
  title: 'Grenzmaße einer Schraube und einer Mutter',
  drawing: (thread) =>
    `Schraube und Mutter ${spokenNumber(thread)} an ihren Grenzmaßen, maßstäblich, die Mutter über der Schraube`,
  pitchLine: 'Flankenlinie',
  nut: (cls) => `Mutter ${cls}`,
  screw: (cls) => `Schraube ${cls}`,
  lens: (times) => `Eine Flanke an der Flankenlinie, noch ${times}-mal vergrößert: kleinstes und größtes Flankenspiel`,
  lensWords: (times) =>
    `Eine Flanke an der Flankenlinie, noch ${times}-mal größer; Abstände gelten hier auf dem Radius.`,
  levels: {
    nutLargest: 'Mutter max.',
    nutSmallest: 'Mutter min.',
    screwLargest: 'Schraube max.',
    screwSmallest: 'Schraube min.',
  },
  spans: { least: 'min.', most: 'max.' },
  limits: 'Grenzmaße',
  range: (low, high) => `${low} bis ${high}`,
  screwAsClass: (cls) => `Toleranzklasse ${cls} für die Schraube`,
  nutAsClass: (cls) => `Toleranzklasse ${cls} für die Mutter`,
  everyday: (classes) => `Keine Toleranzklasse geschrieben, darum die übliche genommen: ${classes.join(' und ')}.`,
  readout: {
    pitchLeast: 'Flankenspiel im Durchmesser, kleinstes',
    pitchMost: 'Flankenspiel im Durchmesser, größtes',
    major: 'über der Spitze der Schraube, mindestens',
    minor: 'unter der Spitze der Mutter, mindestens',
    overlap: 'gemeinsame Gewindetiefe, auf dem Radius',
    hole: (share) => `Bohrung für ${share} Gewinde`,
    lies: 'diese Bohrung liegt',
    drills: 'nächste Bohrer',
  },
  lies: (lies) => `${LIES[lies]} Grenzmaßen des Kerndurchmessers der Mutter`,
  drill: (name, share) => `${spokenNumber(name)} (${share})`,
  noDrill: 'keiner innerhalb von 2\u00a0%',
  caption: (v) =>
    `Toleranzklasse ${v.screwClass} in Toleranzklasse ${v.nutClass}: Flankendurchmesser der Schraube ${v.screwPitch}, der Mutter ${v.nutPitch}, also ${v.clearance} Flankenspiel im Durchmesser; ${FIT[v.fit]}. ${comesFrom(v.byFormula, v.standard, v.measured)}`,
  head: ['Durchmesser', 'kleinster', 'größter', 'Toleranz', 'kommt aus'],
  diameters: {
    screwMajor: 'Schraube, Außendurchmesser',
    screwPitch: 'Schraube, Flankendurchmesser',
    screwMinor: 'Schraube, Kerndurchmesser',
    nutMajor: 'Mutter, Außendurchmesser',
    nutPitch: 'Mutter, Flankendurchmesser',
    nutMinor: 'Mutter, Kerndurchmesser',
  },
  noLimit: 'keine Grenze',
  byTable: (standard) => `Tabelle, ${standard}`,
  byFormula: (standard) => `Formel, ${standard}`,
  asMeasured: 'wie gemessen',
  fromAbove: 'aus den Grenzmaßen darüber',
};
