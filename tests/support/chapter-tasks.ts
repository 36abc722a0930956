/**
 * What the text round each figure asks its reader to do, and what must be read then: a row a widget. The engine says what is
 * right; the hands are told by labels only, so that the same task is done by keys alone and by single taps alone.
 */

import { buildOrder } from '../../widgets/assembly/adjuster/build-order.ts';
import { readAdjuster } from '../../widgets/assembly/adjuster/text.ts';
import { type Stack, searchDrawer } from '../../widgets/assembly/drawer/stacks.ts';
import {
  axialPlayA,
  axialPlayC,
  type BatchLaw,
  calibrate,
  clearanceOfPieces,
  contactForces,
  correctionAt,
  couplingAt,
  fitOfThread,
  heightAt,
  levelPlate,
  mm,
  nextRound,
  type PitchZones,
  plateModes,
  playBatch,
  readingsAfter,
  relationNamed,
  runToEnd,
  type Thread,
} from '../../widgets/engine/index.ts';
import { readThread } from '../../widgets/input/designation.ts';
import { readFeet, readReadings, readRounds, writeRounds } from '../../widgets/input/levelling-table.ts';
import { parseReadings } from '../../widgets/input/readings-table.ts';
import { neighbourOf } from '../../widgets/input/thread-step.ts';
import { ADJUSTERS, CHAPTERS } from './chapters.ts';
import { valueIn } from './results.ts';

/** How a reader works a figure. Names are those that assistive technology is given. */
export interface Hands {
  /** Steps of a field up (+) or down (−). */
  readonly step: (label: string, by: number) => Promise<void>;
  readonly choose: (option: string) => Promise<void>;
  readonly press: (button: string) => Promise<void>;
}

export interface Task {
  readonly widget: string;
  readonly page: string;
  /** The figure in which its numbers are set, where it leaves them to another one. */
  readonly fieldsOf?: string;
  /** Which of several figures of the widget on the page; the first unless told. */
  readonly index?: number;
  readonly asks: string;
  readonly work: (hands: Hands) => Promise<void>;
  /** What the sentence says then; each group is a number of `is`, to half a unit of the last digit shown. */
  readonly says: RegExp;
  readonly is: () => readonly number[];
  /** What can be dragged in the picture, by name, with the field that sets the same. */
  readonly drags?: Readonly<Record<string, string>>;
}

const A = 'Thread A, base to turned part';
const C = 'Thread C, turned part to carried part';
const TURNS = 'Turns, clockwise seen from above';

const thread = (text: string): Thread => valueIn(readThread(text));

/** A relation of the engine, worked. */
const out = (name: string, inputs: Record<string, number>): Record<string, number> => {
  const relation = relationNamed(name);
  if (!relation) throw new Error(`no relation ${name}`);
  return valueIn(relation.of(inputs));
};
const one = (name: string, inputs: Record<string, number>): number => {
  const [value] = Object.values(out(name, inputs));
  if (value === undefined) throw new Error(`${name} gives nothing`);
  return value;
};
/** What the drawer of its chapter can build. */
/** Motion that the lock of the Riser takes on a reversal, on the card as it opens, mm. */
const lockOnCard = (): number => {
  const riser = valueIn(readAdjuster(ADJUSTERS.get('riser') ?? ''));
  const bench = { eps_A: 0.001, eps_C: 0.001, theta_h: (1.5 * Math.PI) / 180, e_g: 0.001, mu: 0.15 };
  const last = valueIn(buildOrder(riser, bench)).at(-1);
  if (last?.do !== 'reverse') throw new Error('the card does not end with a reversal');
  return last.lock;
};

const drawerStacks = (): readonly Stack[] => {
  const listed = CHAPTERS.map(({ text }) => /^hardware = (.*)$/m.exec(text)?.[1]).find((text) => text !== undefined);
  return valueIn(runToEnd(searchDrawer(listed ?? '', 0.8))).stacks;
};
const micrometres = (length: number): number => length * 1000;

const pair = (a: string, c: string) => ({ a: thread(a), c: thread(c) });
const FOOT = pair('M10x1.5', '3/8-16 UNC');
const STOP = pair('M12x1.5', 'M8x1.25');
const FINE = pair('M4x0.7', '8-36 UNF');
const leads = ({ a, c }: typeof FOOT) => ({ h_A: a.h, L_A: a.L, h_C: c.h, L_C: c.L });
const net = (of: typeof FOOT): number => one('net-lead', leads(of));

/** The steps by which a thread field comes from one standard thread to another. */
const away = (from: string, to: string): number => {
  const goal = thread(to);
  let at = thread(from);
  const sign = goal.d > at.d || (goal.d === at.d && goal.P > at.P) ? 1 : -1;
  let steps = 0;
  for (; at.designation !== goal.designation; steps++) {
    const next = neighbourOf(at, sign);
    if (next === at) throw new Error(`${to} is not met from ${from}`);
    at = next;
  }
  return sign * steps;
};

/** A text that a chapter gives to a list of a figure. */
const given = (chapter: string, name: string): string => {
  const found = CHAPTERS.find((c) => c.file.includes(chapter))?.text.match(
    new RegExp(`^${name} = (.*?)(?: # .*)?$`, 'm'),
  );
  return found?.[1] ?? '';
};

/** Torque at the head of a pair that raises a load. */
const effort = (of: typeof FOOT, F: number, mu: number): number => {
  const slope = (t: Thread, name: 'a' | 'c') => {
    const d_2 = one('pitch-diameter', { d: t.d, P: t.P });
    return {
      d_2,
      slope: one(`slope-met-${name}`, { ...leads(of), Delta: net(of), [`d_2${name.toUpperCase()}`]: d_2 }),
    };
  };
  const [a, c] = [slope(of.a, 'a'), slope(of.c, 'c')];
  const rho = one('friction-angle', { mu, beta_f: Math.PI / 6 });
  return one('effort', { F, d_2A: a.d_2, d_2C: c.d_2, zeta_A: a.slope, zeta_C: c.slope, rho });
};

const zones = (t: Thread): PitchZones => {
  const { screw, nut } = valueIn(fitOfThread(t));
  return { d2min: screw.pitch.min, d2max: screw.pitch.max, D2min: nut.pitch.min, D2max: nut.pitch.max };
};
const CLASSED = pair('M10x1.5-6H/6g', '3/8-16 UNC-2B/2A');
const middlingPlay = (t: Thread, name: 'A' | 'C'): number => {
  const c = clearanceOfPieces(valueIn(fitOfThread(t)), 'middling');
  return name === 'A' ? valueIn(axialPlayA.of({ c_A: c })).j_A : valueIn(axialPlayC.of({ c_C: c })).j_C;
};

/** What is left of a thread to use up where half a diameter is to stay engaged. */
const usable = (l_s: number, d: number): number => one('usable-thread', { l_s, d, q_e: 0.5 });

const plate = () => {
  const feet = valueIn(readFeet(given('three-feet', 'feet')));
  return { feet, readings: valueIn(readReadings(given('three-feet', 'readings'))) };
};

export const TASKS: readonly Task[] = [
  {
    widget: 'ramp',
    page: 'one-screw.html',
    asks: 'turn the knob to a quarter of a turn',
    work: (hands) => hands.step('Angle turned', 3),
    says: /turned 90° clockwise the screw moves down ([\d.]+) µm/,
    is: () => [-micrometres(one('advance', { h: 1, L: thread('M10x1.5').L, n: 0.25 }))],
    drags: { 'Screw head, from above': 'Angle turned' },
  },
  {
    widget: 'section',
    page: 'two-screws.html',
    asks: 'turn the hexagon by a whole turn more, flat by flat',
    work: (hands) => hands.step(TURNS, 6),
    says: /turned part goes down ([\d.]+) mm, the carried part goes up ([\d.]+) µm/,
    is: () => [1.5 * FOOT.a.L, micrometres(one('net-motion', { Delta: net(FOOT), n: 1.5 }))],
    drags: { 'Turned part, from above': TURNS },
  },
  {
    widget: 'motion-plot',
    page: 'two-screws.html',
    asks: 'put a finer thread A in and see the small motion grow',
    work: (hands) => hands.step(A, away('M10x1.5', 'M10x1.25')),
    says: /turned part moves −([\d.]+) mm, the carried part on it \+([\d.]+) mm, and the carried part itself only \+([\d.]+) mm/,
    is: () => [4 * 1.25, 4 * FOOT.c.L, 4 * net(pair('M10x1.25', '3/8-16'))],
  },
  {
    widget: 'divided-turn',
    page: 'per-flat.html',
    asks: 'take a twelve-point wrench and turn by one point',
    work: async (hands) => {
      await hands.choose('twelve points');
      await hands.step(TURNS, 1);
    },
    says: /one point of 12 is ([\d.]+) µm; here turned 7 points: \+([\d.]+) µm/,
    is: () => [micrometres(one('per-step', { Delta: net(FOOT), k: 12 })), micrometres((7 / 12) * net(FOOT))],
    drags: { 'Head of the turned part, from above': TURNS },
  },
  {
    widget: 'thread-eaten',
    page: 'why-fine-means-short.html',
    asks: 'give thread C more length, until thread A runs out first',
    work: (hands) => hands.step('Usable length of thread C', 2),
    says: /Thread A runs out first, after ([\d.]+) turns/,
    is: () => [one('turns-available', { X_A: 10, L_A: FOOT.a.L, X_C: 12, L_C: FOOT.c.L })],
  },
  {
    widget: 'rounding-cost',
    page: 'round-last.html',
    asks: 'try the Foot',
    work: async (hands) => {
      await hands.step(A, away('M4x0.7', 'M10x1.5'));
      await hands.step(C, away('8-36 UNF', '3/8-16 UNC'));
    },
    says: /exact net lead is ([\d.]+) µm; leads rounded to a thousandth of a millimetre give ([\d.]+) µm/,
    is: () => [micrometres(net(FOOT)), micrometres(1.588 - 1.5)],
  },
  {
    widget: 'pair-map',
    page: 'finding-a-pair.html',
    asks: 'set “threads from” to anywhere, and five pairs more appear',
    work: (hands) => hands.choose('anywhere'),
    says: /^(\d+) of .* pairs pass .* is #6-32 UNC with M5×0.8, ([\d.]+) µm a turn/,
    is: () => [3 + 5, Math.abs(micrometres(net(pair('6-32', 'M5x0.8'))))],
  },
  {
    widget: 'drawer',
    page: 'from-your-parts.html',
    asks: 'list the lowest first, and read how high it is',
    work: (hands) => hands.choose('lowest'),
    says: /^(\d+) of \d+ adjusters .* ([\d.]+) mm high/,
    is: () => {
      const met = drawerStacks().filter((s) => Math.abs(s.Delta) / 50 <= 0.015 && s.stroke >= 0.2 && s.height <= 90);
      return [met.length, Math.min(...met.map((s) => s.height))];
    },
  },
  {
    widget: 'bench-card',
    page: 'bench-card.html',
    asks: 'an indicator that may be off by more lets more pass',
    work: (hands) => hands.step('How far one reading of the indicator may be off', 10),
    says: /A reversal may differ by ([\d.]+) µm/,
    // Twice what the hand sets and twice the reading, which ten steps make 2 µm, and what the key of the Riser lets go.
    is: () => [2 * (micrometres(0.0875) * (1.5 / 360) + 2) + micrometres(lockOnCard())],
  },
  {
    widget: 'printed-spring',
    page: 'printed-springs.html',
    asks: 'print in PC and read what is left of the force',
    work: (hands) => hands.choose('PC'),
    says: /Of its force ([\d.]+) N are left after/,
    // A year in tenfold times of a minute, at the middle of the span of PC.
    is: () => [out('retained-force', { F_0: 6, q_r: 0.045, t: 8760, t_0: 1 / 60 }).F_t ?? Number.NaN],
  },
  {
    widget: 'part-files',
    page: 'bench-card.html',
    asks: 'save the carried part, and the files follow the rows on the card',
    work: (hands) => hands.press('Save carried part: socket screw as STL'),
    says: /^(\d+) parts from the rows above; the highest is the turned part: adapter, ([\d.]+) mm/,
    // 15 mm of screw under 18 mm of body.
    is: () => [3, 33],
  },
  {
    widget: 'passport',
    page: 'bench-card.html',
    asks: 'add a row for today, and read which piece is farthest off its threads',
    work: (hands) => hands.press('Add a row for today'),
    says: /^(\d+) pieces have a passport; farthest off its threads is 1 with ([\d.]+) µm a turn, \+([\d.]+) %/,
    // A copy of the last lead, that of the second piece, is added; the first is still the farthest.
    is: () => [2, 88.5, 100 * (88.5 / 87.5 - 1)],
  },
  {
    widget: 'part-drawings',
    page: 'bench-card.html',
    asks: 'choose the turned part and read at what scale it stands on the paper',
    work: (hands) => hands.choose('turned part'),
    says: /^Turned part: adapter on A4 upright, ([\d.]+) : 1: (\d+) sizes as stated/,
    // 33 mm and a hexagon of 19.6 over corners: twice their size is 105 mm on 200. Body, two threads along it, hexagon, and two notes.
    is: () => [2, 6],
  },
  {
    widget: 'ladder',
    page: 'parts-that-hold.html',
    asks: 'the piece goes into the next rung: holes print narrower by a step more',
    work: (hands) => hands.step('Rung that just takes the piece, from the cut corner', 1),
    says: /^Rung (\d+), drawn ([\d.]+) mm/,
    is: () => [6, 12.9 + 5 * 0.05],
  },
  {
    widget: 'printed-parts',
    page: 'parts-that-hold.html',
    asks: 'make the arm longer until it may be clipped again and again',
    work: (hands) => hands.step('Length of the arm', 3),
    says: /are strained by ([\d.]+) %/,
    is: () => [(100 * 3 * 2 * 0.8) / (2 * 19 ** 2)],
  },
  {
    widget: 'ball-in-socket',
    page: 'tip-and-base.html',
    asks: 'press the ball in further, and it stands out by less',
    work: (hands) => hands.step('How far it was pressed in', 5),
    says: /it stands ([\d.]+) mm out/,
    is: () => [6.35 / 2 + Math.sqrt(3.175 ** 2 - 3.04 ** 2) - 1],
  },
  {
    widget: 'foot-on-plane',
    page: 'tip-and-base.html',
    asks: 'push until the arrow leaves the core',
    work: (hands) => hands.step('Push from the side', 1),
    says: /meets the ground ([\d.]+) mm off the axis: one side of its ring has lifted/,
    is: () => [(10 * 40) / 70],
  },
  {
    widget: 'beside-bought',
    page: 'design-sheet.html',
    asks: 'raise the load, and read which thread goes first and what it carries',
    work: (hands) => hands.step('Load to be carried', 3),
    says: /moves ([\d.]+) times less than a turn of the bought screw/,
    is: () => [25.4 / 80 / 0.0875],
  },
  {
    widget: 'lead-error',
    page: 'lead-error.html',
    asks: 'choose “the same error” and slide it: the line hardly moves',
    work: async (hands) => {
      await hands.choose('the same error');
      await hands.step('Lead error of thread A', 20);
    },
    says: /both threads ([\d.]+) % long, by the same share: a turn moves ([\d.]+) µm/,
    is: () => [0.1, micrometres(one('true-net-lead', { Delta: net(FOOT), eps: 0.001 }))],
    drags: {
      'Lead error of thread A': 'Lead error of thread A',
      'Lead error of thread C': 'Lead error of thread C',
      Turns: TURNS,
    },
  },
  {
    widget: 'drunken-thread',
    page: 'periodic-error.html',
    asks: 'slide a phase by a quarter of a turn',
    work: (hands) => hands.step('Phase of thread C', 5),
    says: /at their phases together ([\d.]+) µm/,
    is: () => [
      micrometres(one('joint-amplitude', { a_A: 0.0005, a_C: 0.0005, phi_A: 0, phi_C: 0.25, h_A: 1, h_C: 1 })),
    ],
    drags: {
      'Amplitude of thread A': 'Amplitude of thread A',
      'Amplitude of thread C': 'Amplitude of thread C',
      'Phase of thread C': 'Phase of thread C',
      Turns: TURNS,
    },
  },
  {
    widget: 'torque-bars',
    page: 'effort-and-feel.html',
    asks: 'set the friction to nought',
    work: (hands) => hands.step('Coefficient of friction, both threads', -3),
    says: /with friction 0 takes ([\d.]+) N·mm/,
    is: () => [Math.abs(one('frictionless-torque', { F: 200, Delta: net(STOP) }))],
  },
  {
    widget: 'friction-curve',
    page: 'how-much-friction.html',
    asks: 'move the mark to a smaller friction',
    work: (hands) => hands.step('Coefficient of friction, both threads', -2),
    says: /Here, at 0.05, the pair takes ([\d.]+) N·mm/,
    is: () => [effort(STOP, 200, 0.05)],
    drags: { 'Coefficient of friction': 'Coefficient of friction, both threads' },
  },
  {
    widget: 'hand-force',
    page: 'the-hand.html',
    asks: 'make the key stiffer, until the hand decides',
    work: (hands) => hands.step('Twisting stiffness of hand and key, per radian', 1),
    says: /The jump of ([\d.]+) µm is smaller, so the hand decides: ([\d.]+) µm/,
    is: () => {
      const theta = one('stick-slip', {
        M_s: effort(STOP, 200, 0.2),
        M_k: effort(STOP, 200, 0.15),
        kappa_d: 10_000,
        Delta: net(STOP),
      });
      const perAngle = (angle: number) => micrometres(one('per-angle', { Delta: net(STOP), theta: angle }));
      return [perAngle(theta), perAngle((1.5 * Math.PI) / 180)];
    },
  },
  {
    widget: 'flanks-under-load',
    page: 'which-flank.html',
    asks: 'take the force down past nought: thread C lets go, thread A has not stirred',
    work: (hands) => hands.step('Force on the carried part, towards the base is plus', -5),
    says: /With −(\d+) N across thread C the pulled flank of the carried part touches; with \+(\d+) N across thread A the pressed flank of the turned part touches\. The carried part is ([\d.]+) µm below/,
    is: () => [2, 3, micrometres((middlingPlay(CLASSED.a, 'A') - middlingPlay(CLASSED.c, 'C')) / 2)],
    drags: {
      'Force on the carried part, towards the base is plus': 'Force on the carried part, towards the base is plus',
    },
  },
  {
    widget: 'reversal-loop',
    page: 'turns-lost.html',
    asks: 'set the force to less than the friction and turn out: the loop opens again',
    work: async (hands) => {
      await hands.step('Force on the carried part, towards the base is plus', -4);
      await hands.press('Turn out');
    },
    says: /follows after ([\d.]+) turns .* With (\d+) N on it, the load does not overcome the friction/,
    is: () => [
      one('turns-lost', {
        j_A: middlingPlay(CLASSED.a, 'A'),
        j_C: middlingPlay(CLASSED.c, 'C'),
        Delta: net(CLASSED),
      }),
      0,
    ],
    drags: { 'Turned part, from above': 'Turns, clockwise' },
  },
  {
    widget: 'play-batch',
    page: 'measured-parts.html',
    asks: 'draw the batch with pieces spread evenly',
    work: async (hands) => {
      await hands.choose('uniform');
      await hands.press('Draw 1');
    },
    says: /1 000 000 assemblies drawn.*less play than ([\d.]+) µm/,
    is: () => {
      const law: BatchLaw = { kind: 'uniform' };
      const threads = [zones(CLASSED.a), zones(CLASSED.c)];
      const { drawn } = valueIn(playBatch({ threads, count: 1e6, seed: 2026, law, shares: [0.5] }));
      return [micrometres(drawn?.quantiles[0]?.play ?? Number.NaN)];
    },
  },
  {
    widget: 'force-chain',
    page: 'preload-and-lock.html',
    asks: 'move the spring to base and carried part, and read the two verdicts',
    work: (hands) => hands.choose('base and carried'),
    says: /Thread A: the pressed flank of the turned part touches .*? with ([\d.]+) N or more. Thread C: the pressed flank of the carried part touches .*? with ([\d.]+) N/,
    is: () => {
      const { F_A = 0, F_C = 0 } = out('force-chain', { F_o: -20, W_c: 8, W_t: 0.6, f_c: 30, f_t: 0 });
      const rub = one('guide-friction', { mu_g: 0.2, Q_s: 10 });
      return [F_A - rub, F_C - rub];
    },
    drags: { 'place in the stroke': 'Place in the stroke' },
  },
  {
    widget: 'spring-days',
    page: 'spring-strength.html',
    asks: 'play with the share lost per tenfold time',
    work: (hands) => hands.step('Share lost per tenfold time (stated)', 1),
    says: /After 1000 d, ([\d.]+) N is left/,
    is: () => [one('retained-force', { F_0: 30, q_r: 0.08, t: 24_000, t_0: 1 })],
  },
  {
    widget: 'lock-error',
    page: 'the-lock.html',
    asks: 'change the pair to the Fine foot and see what the same lock does there',
    work: async (hands) => {
      await hands.step(A, away('M12x1.5', 'M4x0.7'));
      await hands.step(C, away('M8x1.25', '8-36 UNF'));
    },
    says: /the key allows ([\d.]+) µm, .* divisions of ([\d.]+) µm/,
    is: () => [
      micrometres(one('lock-slop-motion', { L_C: FINE.c.L, g_k: 0.05, r_k: 8 })),
      micrometres(one('per-step', { Delta: net(FINE), k: 50 })),
    ],
  },
  {
    widget: 'pushed-jack',
    page: 'jack-as-built.html',
    asks: 'take the push away: then the tip is moved by nothing',
    work: async (hands) => {
      await hands.step('Push from the side', -2);
    },
    says: /Under ([\d.]+) N, a push of [\d.]+ N at ([\d.]+) mm moves the tip sideways by ([\d.]+) µm/,
    is: () => [50, 82.7, 0],
  },
  {
    widget: 'jack-solid',
    page: 'jack-as-built.html',
    asks: 'turn on to one turn and take the push away, and read where the tip is then',
    work: async (hands) => {
      await hands.step('Turns of the run', 3);
      await hands.step('Push from the side', -2);
    },
    says: /^Nothing pushes from the side, and over (\d) turns the path of the tip is [\d.]+ µm wide\. After (\d) turns? the tip is/,
    is: () => [2, 1],
  },
  {
    widget: 'which-part',
    page: 'jack-as-built.html',
    asks: 'ask for the place sideways',
    work: async (hands) => {
      await hands.choose('the place sideways');
    },
    says: /^Of (\d+) assemblies, 95 in 100 are off its place/,
    is: () => [16],
  },
  {
    widget: 'settling-log',
    page: 'heat-and-creep.html',
    asks: 'begin the law of creep an hour later: the log settles all the same',
    work: async (hands) => {
      await hands.step('Starting time of the law of creep (assumption)', 2);
    },
    says: /^It settles: ([\d.]+) µm down in all/,
    is: () => [1.3],
  },
  {
    widget: 'coated-thread',
    page: 'play-and-flanks.html',
    asks: 'make the coat a step thinner: more of the play is left',
    work: async (hands) => {
      await hands.step('Thickness of the coat on the flanks of the screw (measured)', -1);
    },
    says: /^With a coat of ([\d.]+) µm on the screw, ([\d.]+) µm of the ([\d.]+) µm of play are left/,
    // 32 µm less four coats, times the tangent of 30°.
    is: () => [4.9, (32 - 4 * 4.9) / Math.sqrt(3), 32 / Math.sqrt(3)],
  },
  {
    widget: 'leads-in-nut',
    page: 'lead-error.html',
    asks: 'make the screw a step longer: less play is left',
    work: async (hands) => {
      await hands.step('Lead deviation over the engagement (assumption)', 1);
    },
    says: /^The screw is ([\d.]+) µm too long for its nut, .* Of the play of ([\d.]+) µm, ([\d.]+) µm are left/,
    is: () => [20, 60 / Math.sqrt(3), 60 / Math.sqrt(3) - 20],
  },
  {
    widget: 'waves-in-nut',
    page: 'periodic-error.html',
    asks: 'make the nut wave a step less: less of the wave comes through',
    work: async (hands) => {
      await hands.step('Wave of the nut (assumption)', -1);
    },
    says: /^Kept upright, the motion waves by ([\d.]+) µm/,
    is: () => [0],
  },
  {
    widget: 'plate-modes',
    page: 'staying-on-three-feet.html',
    asks: 'make the plate narrower along x: it swings faster about its line',
    work: async (hands) => {
      await hands.step('Width of the plate along x', -1);
    },
    says: /^The slowest swing is [a-z ]+ at (\d+) Hz; the others are [a-z ]+ at (\d+) Hz and [a-z ]+ at (\d+) Hz/,
    is: () =>
      valueIn(
        plateModes({
          feet: plate().feet,
          weight: 60,
          centre: { x: 130, y: 70 },
          wide: { x: 299, y: 220 },
          stiffness: 20_000,
        }),
      ).map(({ frequency }) => frequency),
  },
  {
    widget: 'plate-on-feet',
    page: 'three-feet.html',
    asks: 'let foot 2 stay, and read how much higher the plate is over the other two',
    work: (hands) => hands.choose('foot 2'),
    says: /over foot 1 it is ([\d.]+) µm too high, over foot 2 it is level, over foot 3 it is ([\d.]+) µm too high/,
    is: () => {
      const { feet, readings } = plate();
      const { plane } = valueIn(
        levelPlate({
          feet: feet.map((f) => ({ ...f, Delta: mm(net(FOOT)), k: 6 })),
          readings,
          keep: { kind: 'foot', name: '2' },
        }),
      );
      const [a = 0, b = 0, c = 0] = feet.map((foot) => heightAt(plane, foot));
      return [micrometres(a - b), micrometres(c - b)];
    },
  },
  {
    widget: 'levelling-plate',
    page: 'three-feet.html',
    asks: 'press “Turn them”, with feet that move as designated',
    work: async (hands) => {
      await hands.step('Feet move more (+) or less (−) than nominal by', 2);
      await hands.press('Turn them');
    },
    says: /^Round (\d): the plate has a tilt of ([\d.]+) µm\/m/,
    is: () => {
      const { feet, readings } = plate();
      const Delta = mm(net(FOOT));
      const job = {
        feet: feet.map((f) => ({ ...f, Delta, k: 6 })),
        readings,
        keep: { kind: 'foot', name: '1' } as const,
      };
      const turned = valueIn(levelPlate(job)).moves.map((move) => move.wholeSteps);
      // The indicator is read to a tenth of a micrometre.
      const after = valueIn(readingsAfter(job.feet, turned, readings)).map((point) => point.z);
      const [read = []] = valueIn(readRounds(writeRounds([after])));
      const next = nextRound(
        job,
        turned,
        readings.map((point, i) => ({ ...point, z: read[i] ?? mm(0) })),
      );
      return [2, valueIn(next).levelling.tilt.micrometresPerMetre];
    },
  },
  {
    widget: 'vee-coupling',
    page: 'staying-on-three-feet.html',
    asks: 'raise the side force until a flank opens',
    work: (hands) => hands.step('Side force', 1),
    says: /^Flank 1a would have to pull ([\d.]+) N: it opens/,
    is: () => {
      const balls = couplingAt(plate().feet, Math.PI / 4, 'to the middle');
      const turn = Math.PI / 6;
      const found = valueIn(
        contactForces(balls, [
          { force: [0, 0, -60], at: [130, 70, 0] },
          { force: [300 * Math.cos(turn), 300 * Math.sin(turn), 0], at: [130, 70, 20] },
        ]),
      );
      return [-(found[0]?.force ?? 0)];
    },
  },
  {
    widget: 'lead-error',
    page: 'lead-error.html',
    asks: 'slide one error alone: it is magnified by the gain',
    work: (hands) => hands.step('Lead error of thread A', 10),
    says: /a turn moves ([\d.]+) µm/,
    is: () => {
      const eps = one('net-lead-error', { ...leads(FOOT), eps_A: 0, eps_C: 0.001, Delta: net(FOOT) });
      return [micrometres(one('true-net-lead', { Delta: net(FOOT), eps }))];
    },
  },
  {
    widget: 'thread-limits',
    page: 'what-a-class-allows.html',
    asks: 'read the limits of another thread from the tables',
    work: (hands) => hands.step('Thread and fit: class of the nut, class of the screw', 1),
    says: /pitch diameter of the screw ([\d.]+) mm to ([\d.]+) mm, of the nut ([\d.]+) mm to ([\d.]+) mm/,
    is: () => {
      const { d2min, d2max, D2min, D2max } = zones(neighbourOf(thread('M10x1.5-6H/6g'), 1));
      return [d2min, d2max, D2min, D2max];
    },
  },
  {
    widget: 'fit-section',
    page: 'how-far-it-goes.html',
    asks: 'switch to “both screwed home”: it can’t turn at all',
    work: (hands) => hands.choose('both screwed home'),
    says: /it can’t turn at all: .* give ([\d.]+) turns and ([\d.]+) µm of stroke/,
    is: () => {
      const n = one('turns-available', { X_A: 20 - FOOT.a.d, L_A: FOOT.a.L, X_C: 20 - FOOT.c.d, L_C: FOOT.c.L });
      return [n, micrometres(one('stroke', { Delta: net(FOOT), n_max: n }))];
    },
    drags: { 'Turned part, from above': TURNS },
  },
  {
    widget: 'fit-section',
    page: 'does-it-fit.html',
    asks: 'ask for less engagement, and read the longer travel',
    work: (hands) => hands.step('Length of engagement to keep, in diameters', -5),
    says: /: ([\d.]+) turns and .* of stroke, set by thread A/,
    is: () => [one('turns-available', { X_A: usable(20, 12), L_A: STOP.a.L, X_C: usable(24, 8), L_C: STOP.c.L })],
    drags: { 'Turned part, from above': TURNS },
  },
  {
    widget: 'solid',
    page: 'three-parts.html',
    asks: 'turn the head one turn clockwise: it sinks by thread A, and the top rises by the net lead',
    work: (hands) => hands.step(TURNS, 6),
    says: /The turned part has gone down ([\d.]+) mm, and the carried part has gone up ([\d.]+) µm/,
    is: () => [FOOT.a.L, micrometres(net(FOOT))],
    drags: { 'Turned part, from above': TURNS },
  },
  {
    widget: 'adjuster',
    page: 'from-your-parts.html',
    asks: 'turn it two turns clockwise: it stops where thread C has only its least engagement left',
    work: (hands) => hands.step(TURNS, 2),
    says: /It goes ([\d.]+) turns clockwise, .*: ([\d.]+) µm of stroke\. Its tip is/,
    is: () => [2.5 / 1.5, micrometres(one('stroke', { Delta: 1.5 - 25.4 / 16, n_max: 5 / 1.5 }))],
    drags: { 'Turned part, from above': TURNS },
  },
  {
    widget: 'ball-and-seat',
    page: 'contact-heat-creep.html',
    asks: 'try a larger ball: it sinks in less',
    work: (hands) => hands.step('Radius of the ball', 1),
    says: /sinks by ([\d.]+) µm/,
    is: () => [micrometres(sunk(50, 4))],
  },
  {
    widget: 'drift-bars',
    page: 'heat-and-creep.html',
    asks: 'change the pair: the bars stay the same, and only the step that measures them changes',
    work: (hands) => hands.step(C, 1),
    says: /^Compared with one flat of ([\d.]+) µm, the largest is this: the tip sinks in, ([\d.]+) µm, which is ([\d.]+) flats/,
    is: () => {
      const flat = Math.abs(one('per-step', { Delta: net({ a: FINE.a, c: neighbourOf(FINE.c, 1) }), k: 6 }));
      return [micrometres(flat), micrometres(sunk(20, 3)), sunk(20, 3) / flat];
    },
  },
  {
    widget: 'other-ways',
    page: 'other-ways.html',
    asks: 'set the friction to nought: the efforts fall into the order of the motions',
    work: (hands) => hands.step('Coefficient of friction, threads and wedge', -3),
    says: /lightest to turn is the differential screw with ([\d.]+) N·mm/,
    is: () => [one('frictionless-torque', { F: 50, Delta: net(FOOT) })],
  },
  {
    widget: 'fault-bench',
    page: 'calibrate.html',
    asks: 'turn the jack on the bench up by a turn: its indicator should have gone by the net lead',
    work: (hands) => hands.step('Turns of the head', 4),
    says: /by 1 turn: .* has moved ([\d.]+) µm/,
    is: () => [micrometres(net(FOOT))],
    drags: { 'Head of the jack, from above': 'Turns of the head' },
  },
  {
    widget: 'calibration',
    page: 'calibrate.html',
    asks: 'set the dial at the next flat and read the correction',
    work: (hands) => hands.step('Turns at which the dial stands', 1),
    says: /net lead of ([\d.]+) µm .* At ([\d.]+) turns the correction is −([\d.]+) µm/,
    is: () => {
      const table = valueIn(parseReadings(given('calibrate', 'runs').replaceAll(' | ', '\n'), { stepsPerTurn: 6 }));
      const found = valueIn(calibrate(table.rows, { nominal: mm(net(FOOT)) }));
      return [micrometres(found.lead), 5 / 6, -micrometres(valueIn(correctionAt(found.model, 5 / 6, 'up')).correction)];
    },
  },
  {
    widget: 'certificate',
    page: 'calibrate.html',
    fieldsOf: 'calibration',
    asks: 'allow the stated lead errors by root-sum-square',
    work: (hands) => hands.choose('root-sum-square'),
    says: /and the stated lead error of ([\d.]+) µm/,
    is: () => [
      micrometres(net(FOOT) * one('rss-lead-error', { ...leads(FOOT), eps_A: 0.001, eps_C: 0.001, Delta: net(FOOT) })),
    ],
  },
  {
    widget: 'design-sheet',
    page: 'design-sheet.html',
    asks: 'divide the head as a knob, and ask for more stroke than the threads have',
    work: async (hands) => {
      await hands.choose('knob');
      await hands.step('Wanted stroke', 30);
    },
    says: /: ([\d.]+) µm a turn, ([\d.]+) µm a division. 12 of 15 judged passed; .* a stroke of [\d.]+ µm; ([\d.]+) µm was wanted/,
    is: () => [micrometres(net(FOOT)), micrometres(one('per-step', { Delta: net(FOOT), k: 50 })), 600],
  },
];

/** How far a hardened ball sinks into hardened steel, as chapter and seat have them: E 210 000 MPa, ν 0.3 on both sides. */
const sunk = (F: number, R: number): number => {
  const E_s = one('contact-modulus', { E_1: 210_000, nu_1: 0.3, E_2: 210_000, nu_2: 0.3 });
  return out('ball-on-flat', { F, R, E_s }).delta ?? Number.NaN;
};
