/** Was man von einer angenommenen Liste wissen soll: was davon ausgelassen und was angenommen wurde. */
import { listed } from '../../engine/index.ts';
import type * as En from '../en/texts.ts';
import { wayName } from './kinds.ts';
import { inGerman } from './lists.ts';

export const threadsLeftOut: typeof En.threadsLeftOut = (wrong, kept, why) =>
  `Ausgelassen: ${wrong.map((name) => inGerman('taps', name)).join(', ')}; ${kept === 1 ? 'das andere wird' : `die anderen ${kept} werden`} behalten. ${why}`;
export const TOO_LONG_FOR_LINK =
  'Zu lang für die Adresse: Ein Link trägt es nicht und holt es nur in diesem Browser zurück.';
export const withoutPrice: typeof En.withoutPrice = (names) =>
  `Ohne Preis: ${names.map((name) => inGerman('parts', name)).join(', ')}.`;
export const waysLeftOut: typeof En.waysLeftOut = (unknown, ways) =>
  `Ausgelassen: ${unknown.map((name) => inGerman('prices', name)).join(', ')}; die Arten heißen ${ways.map(wayName).join(', ')}.`;
export const columnsLeftOut: typeof En.columnsLeftOut = (names) =>
  `Ausgelassen: ${listed(names.map((name) => inGerman('runs', name)))}.`;
export const positionsSupposed: typeof En.positionsSupposed = (unit) =>
  `Der Kopf nennt keine Einheit für die Stellungen; ${unit} angenommen.`;
export const readingsSupposed: typeof En.readingsSupposed = (unit) =>
  `Der Kopf nennt keine Einheit für die Ablesungen; ${unit} angenommen.`;
export const columnsSupposed: typeof En.columnsSupposed = (position, reading) =>
  `Kein Kopf: Stellungen in ${position} und Ablesungen in ${reading} angenommen.`;

export const weighs: typeof En.weighs = (v) =>
  v.mass ? `${v.typed} ist eine Masse; sie wiegt ${v.newtons}, mit g = 9,80665 m/s².` : `${v.typed} sind ${v.newtons}.`;
