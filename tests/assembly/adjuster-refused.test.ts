/** What can’t be an adjuster: one sentence that names the part to change, and the last good adjuster stays in its field. */
import { beforeEach, describe, expect, it, vi } from 'vitest';
import { readAdjuster } from '../../widgets/assembly/adjuster/text.ts';
import { readInput } from '../../widgets/assembly/numbers.ts';
import { createStore } from '../../widgets/client/store.ts';
import { reasonOf } from '../../widgets/words/reason.ts';

const GOOD =
  'base = tapped block M10x1.5, 20 mm | turned = stud M10x1.5 20 mm, M8x1.25 20 mm | carried = cap M8x1.25, thread 12 mm';
const RISER =
  'base = coupling nut M10x1.5, 30 mm | turned = adapter M10x1.5 external 15 mm, M8x1.25 internal 15 mm blind, body 18 mm | carried = socket screw M8x1.25, thread 20 mm';
const INPUT = { kind: 'text', name: 'adjuster', label: 'parts', start: GOOD } as const;

const BAD: readonly (readonly [what: string, text: string, code: string, part: RegExp])[] = [
  [
    'ends of other threads',
    GOOD.replace('stud M10x1.5', 'stud M10x1.25'),
    'ends-do-not-meet',
    /tapped block and the stud/,
  ],
  [
    'two screws',
    GOOD.replace('tapped block M10x1.5, 20 mm', 'screw M10x1.5'),
    'ends-do-not-meet',
    /the screw and the stud/,
  ],
  [
    'a class of the other side',
    GOOD.replace('cap M8x1.25', 'cap M8x1.25-6g'),
    'limits-of-other-side',
    /thread of the cap/,
  ],
  [
    'a thread longer than its block',
    GOOD.replace('block M10x1.5, 20 mm', 'block M10x1.5 30 mm, 20 mm'),
    'thread-longer-than-part',
    /in the tapped block is 30 mm/,
  ],
  [
    'a thread longer than its nut',
    GOOD.replace('cap M8x1.25, thread 12 mm', 'nut M8x1.25, thread 20 mm, height 12 mm'),
    'thread-longer-than-part',
    /in the nut is 20 mm/,
  ],
  [
    'a thread as long as its cap',
    GOOD.replace('thread 12 mm', 'thread 12 mm, height 12 mm'),
    'thread-longer-than-part',
    /in the cap is 12 mm/,
  ],
  [
    'a blind bore deeper than the part',
    RISER.replace('internal 15 mm blind', 'internal 34 mm blind'),
    'thread-longer-than-part',
    /in the adapter is 34 mm/,
  ],
  [
    'a blind bore without a floor',
    GOOD.replace('block M10x1.5, 20 mm', 'block M10x1.5 20 mm blind, 20 mm'),
    'thread-longer-than-part',
    /in the tapped block/,
  ],
  [
    'a bore that breaks into the thread outside',
    RISER.replaceAll('M8x1.25', 'M9x1.25').replace('internal 15 mm', 'internal 25 mm'),
    'threads-break-through',
    /threads of the adapter/,
  ],
  [
    'two threads that meet in one nut',
    'base = screw M10x1.5 | turned = double nut M10x1.5 15 mm, M8x1.25 15 mm, height 20 mm | carried = socket screw M8x1.25',
    'threads-meet-inside',
    /In the double nut/,
  ],
  [
    'a hexagon narrower than its bore',
    RISER.replace('body 18 mm', 'body 18 mm, hexagon 7 mm'),
    'hexagon-too-narrow',
    /The adapter is 7 mm wide/,
  ],
  [
    'a stack that stands on the ground',
    RISER.replace('30 mm |', '10 mm |').replace('external 15 mm', 'external 26 mm'),
    'joint-without-room',
    /adapter.*ground/,
  ],
  [
    'a thread shorter than what is kept',
    GOOD.replace('stud M10x1.5 20 mm', 'stud M10x1.5 9 mm'),
    'joint-too-short',
    /its screw is 9 mm/,
  ],
  [
    'nothing left of the stroke',
    `${GOOD} | assembled = both screwed home`,
    'no-turns-left',
    /thread A is home.*thread C is home/,
  ],
  [
    'a size that the part does not have',
    GOOD.replace('thread 12 mm', 'thread 12 mm, neck 3 mm'),
    'part-size-unused',
    /A cap has no neck/,
  ],
  [
    'a length of springs, whose number could be a count',
    `${GOOD} | springs = 40 mm`,
    'row-phrase-unread',
    /^Read “40 mm” in the row springs/,
  ],
  [
    'springs spoken of in two rows',
    `${GOOD} | lock = springs, 40 mm | springs = 2 between base and carried, 8 N`,
    'springs-in-two-rows',
    /^Read “40 mm” in the row lock/,
  ],
];

beforeEach(() => {
  vi.stubGlobal('requestAnimationFrame', () => 0);
});

describe('an adjuster that can’t be', () => {
  it('is told from one that can', () => {
    for (const text of [GOOD, RISER]) expect(readInput(INPUT, text, 'metric').ok).toBe(true);
  });

  it.each(BAD)('%s', (_, text, code, part) => {
    const read = readInput(INPUT, text, 'metric');
    expect(read).toMatchObject({ ok: false, code });
    if (read.ok) return;
    const sentence = reasonOf(read);
    expect(sentence).toMatch(part);
    expect(sentence).toMatch(/^[A-Z“\d][^\n]*\.$/);
    expect(sentence).not.toMatch(/NaN|undefined|Infinity/);

    const store = createStore([{ id: 'mine', inputs: [INPUT] }], () => undefined, 'metric');
    const before = store.numbers('mine').texts?.adjuster;
    store.type('mine', 'adjuster', text);
    expect(store.field('mine', 'adjuster')?.reason).toBe(sentence);
    expect(store.numbers('mine').texts?.adjuster).toBe(before);
    expect(readAdjuster(before ?? '').ok).toBe(true);
  });
});
